package hurdline.spark;

import hurdline.study.choose.BlockWatch;
import hurdline.study.choose.PlanSimulator;
import java.io.Serializable;

/** What is made to go wrong in tasks: by tests only. */
@FunctionalInterface
interface TaskFault extends Serializable {
  /** Nothing. */
  TaskFault NONE = (task, attempt) -> {};

  /** Before a task begins, told its place in the job and how often it was tried before. */
  void before(int task, int attempt);

  /** What simulates on a machine. */
  default BlockWatch watch(PlanSimulator simulator) {
    return new BlockWatch(simulator);
  }
}
