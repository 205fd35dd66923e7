package hurdline.spark;

import java.io.Serializable;

/** What is made to go wrong in tasks: by tests only. */
@FunctionalInterface
interface TaskFault extends Serializable {
  /** Before a task begins, told its place in the job and how often it was tried before. */
  void before(int task, int attempt);
}
