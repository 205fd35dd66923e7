package hurdline.spark;

import hurdline.study.choose.PlanBlock;
import java.util.ArrayList;
import java.util.List;

/** How many blocks make a task, by how long years took so far. */
final class TaskPace {
  /** A task costs a cluster some milliseconds, and a lost one is simulated again as a whole. */
  private static final double TASK_S = 15;

  /** So that no core waits long for the last one. */
  private static final int TASKS_A_CORE = 3;

  /** After so many the pace is looked at again. */
  private static final int MOST_TASKS_A_CORE = 40;

  /** Values that come back at once stay well below what Spark hands over: 1 GB unless told. */
  private static final int MOST_YEARS = 5_000_000;

  private final int cores;
  private double secondsAYear;

  TaskPace(int cores, double secondsAYear) {
    this.cores = cores;
    this.secondsAYear = secondsAYear;
  }

  /** Later years are quicker, so they count for more. */
  void took(double seconds, int years) {
    if (years > 0) {
      secondsAYear = (secondsAYear + seconds / years) / 2;
    }
  }

  /** The next tasks, from one block on. */
  List<List<PlanBlock>> wave(List<PlanBlock> blocks, int from) {
    int left = blocks.size() - from;
    double blockS = Math.max(1e-9, blocks.get(from).planYears() * secondsAYear);
    int most = Math.max(1, (left + cores * TASKS_A_CORE - 1) / (cores * TASKS_A_CORE));
    int each = (int) Math.max(1, Math.min(most, Math.round(TASK_S / blockS)));
    List<List<PlanBlock>> tasks = new ArrayList<>();
    long years = 0;
    int at = from;
    while (at < blocks.size() && tasks.size() < cores * MOST_TASKS_A_CORE && years < MOST_YEARS) {
      List<PlanBlock> task = blocks.subList(at, Math.min(blocks.size(), at + each));
      years += task.stream().mapToLong(PlanBlock::planYears).sum();
      tasks.add(task);
      at += task.size();
    }
    return tasks;
  }
}
