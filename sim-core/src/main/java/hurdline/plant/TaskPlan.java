package hurdline.plant;

import hurdline.plant.SeasonEntry.Changeover;
import hurdline.plant.SeasonEntry.Task;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A changeover's tasks laid one after another in working time, by the order that they need and the
 * hands that there are.
 *
 * <p>Whenever hands come free, of the tasks that may begin the one with the longest way to the end
 * is begun first (list scheduling by critical path); that is good and not always the shortest there
 * is. The critical path is the longest chain by order alone: no number of hands makes the
 * changeover shorter.
 *
 * @see "Kelley, The critical-path method: resources planning and scheduling (1963); from memory"
 */
public final class TaskPlan {
  private final Changeover changeover;
  private final Map<String, Task> tasks = new LinkedHashMap<>();
  private final Map<String, Double> wayS = new HashMap<>();
  private final Map<String, Double> beginS = new LinkedHashMap<>();

  /**
   * @param changeover whose tasks follow one another without a circle, none with more hands than it
   *     has
   */
  public TaskPlan(Changeover changeover) {
    this.changeover = changeover;
    changeover.tasks().forEach(task -> tasks.put(task.name(), task));
    tasks.values().forEach(this::way);
    layOut();
  }

  /** Working time from the begin of a task to the end of the longest chain behind it. */
  private double way(Task task) {
    Double known = wayS.get(task.name());
    if (known != null) {
      return known;
    }
    double behind = 0;
    for (Task other : tasks.values()) {
      if (other.after().contains(task.name())) {
        behind = Math.max(behind, way(other));
      }
    }
    wayS.put(task.name(), task.lastsS() + behind);
    return task.lastsS() + behind;
  }

  private void layOut() {
    List<Task> waiting = new ArrayList<>(tasks.values());
    waiting.sort(Comparator.comparingDouble((Task task) -> -wayS.get(task.name())));
    double nowS = 0;
    while (!waiting.isEmpty()) {
      double at = nowS;
      int free = changeover.hands() - busy(at);
      for (Task task : List.copyOf(waiting)) {
        if (task.hands() <= free && task.after().stream().allMatch(name -> isDone(name, at))) {
          beginS.put(task.name(), at);
          waiting.remove(task);
          free -= task.hands();
        }
      }
      nowS = nextEnd(at);
    }
  }

  private int busy(double atS) {
    return beginS.keySet().stream()
        .filter(name -> !isDone(name, atS))
        .mapToInt(name -> tasks.get(name).hands())
        .sum();
  }

  private boolean isDone(String name, double atS) {
    return beginS.containsKey(name) && endS(name) <= atS;
  }

  private double nextEnd(double afterS) {
    return beginS.keySet().stream()
        .mapToDouble(this::endS)
        .filter(end -> end > afterS)
        .min()
        .orElse(afterS);
  }

  /** Working time from the begin of the changeover to that of a task. */
  public double beginS(String task) {
    return beginS.get(task);
  }

  public double endS(String task) {
    return beginS.get(task) + tasks.get(task).lastsS();
  }

  /** Working time that the tasks take with the hands that there are. */
  public double lastsS() {
    return tasks.keySet().stream().mapToDouble(this::endS).max().orElse(0);
  }

  /** The longest chain, from its first task to its last. */
  public List<String> criticalPath() {
    List<String> path = new ArrayList<>();
    Task next = longest(tasks.values().stream().filter(task -> task.after().isEmpty()).toList());
    while (next != null) {
      path.add(next.name());
      String before = next.name();
      next =
          longest(tasks.values().stream().filter(task -> task.after().contains(before)).toList());
    }
    return path;
  }

  private Task longest(List<Task> some) {
    return some.stream()
        .max(Comparator.comparingDouble(task -> wayS.get(task.name())))
        .orElse(null);
  }

  /** Working time of the longest chain. */
  public double criticalS() {
    return wayS.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }
}
