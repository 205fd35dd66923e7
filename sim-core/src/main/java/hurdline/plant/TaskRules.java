package hurdline.plant;

import hurdline.plant.SeasonEntry.Changeover;
import hurdline.plant.SeasonEntry.Task;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Tasks of a changeover: whom they follow, and whose hands they need. */
final class TaskRules {
  private TaskRules() {}

  /**
   * @param path of the changeover in the season
   */
  static void check(String path, Changeover changeover, Problems found) {
    List<String> names = changeover.tasks().stream().map(Task::name).toList();
    boolean sound = true;
    for (Task task : changeover.tasks()) {
      String at = path + ".tasks." + task.name();
      for (int i = 0; i < task.after().size(); i++) {
        String before = task.after().get(i);
        found.known(
            at + ".after." + i, before, Set.copyOf(names), "no task", "a task of this changeover");
        sound &= names.contains(before);
      }
      if (task.hands() > changeover.hands()) {
        found.add(
            at + ".hands",
            task.hands() + " hands are more than the changeover has, " + changeover.hands(),
            "as many as under \"hands\" of the changeover, or fewer");
      }
    }
    if (sound && hasCircle(changeover.tasks())) {
      found.add(
          path + ".tasks",
          "the tasks wait for one another in a circle",
          "an order in which one of them can be the first");
    }
  }

  private static boolean hasCircle(List<Task> tasks) {
    Set<String> done = new HashSet<>();
    int before = -1;
    while (done.size() > before) {
      before = done.size();
      tasks.stream()
          .filter(task -> done.containsAll(task.after()))
          .forEach(t -> done.add(t.name()));
    }
    return done.size() < tasks.size();
  }
}
