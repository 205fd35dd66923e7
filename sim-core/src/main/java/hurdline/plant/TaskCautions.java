package hurdline.plant;

import hurdline.plant.Calendar.Shift;
import hurdline.plant.SeasonEntry.Campaign;
import hurdline.plant.SeasonEntry.Changeover;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/** Changeovers whose tasks do not fit into their days. */
final class TaskCautions {
  private static final double HOUR_S = 3600;

  private final Plant plant;
  private final Names names;
  private final Problems found;

  TaskCautions(Plant plant, Names names, Problems found) {
    this.plant = plant;
    this.names = names;
    this.found = found;
  }

  void look() {
    Campaign before = null;
    for (int i = 0; i < plant.season().size(); i++) {
      SeasonEntry entry = plant.season().get(i);
      if (entry instanceof Campaign campaign) {
        before = campaign;
      } else if (entry instanceof Changeover changeover && before != null) {
        look("season." + i, changeover, before);
      }
    }
  }

  private void look(String path, Changeover changeover, Campaign before) {
    Problems broken = new Problems();
    TaskRules.check(path, changeover, broken);
    List<Shift> shifts =
        before.shifts().stream().map(names.shifts::get).filter(Objects::nonNull).toList();
    if (changeover.tasks().isEmpty() || !broken.all().isEmpty() || shifts.isEmpty()) {
      return;
    }
    double lastsS = new TaskPlan(changeover).lastsS();
    Shift earliest = shifts.stream().min(Comparator.comparingInt(Shift::fromS)).orElseThrow();
    double workedS =
        earliest.lengthS() - earliest.rests().stream().mapToDouble(Calendar.Rest::lastsS).sum();
    int days = (int) Math.ceil(lastsS / workedS - 1e-9);
    if (days > changeover.days()) {
      found.add(
          path + ".changeover",
          "its tasks take "
              + hours(lastsS)
              + " with its hands, "
              + days
              + " days of shift \""
              + earliest.name()
              + "\" with "
              + hours(workedS)
              + " each, and only "
              + changeover.days()
              + (changeover.days() == 1 ? " is given" : " are given"),
          "more days or hands, or tasks that may go on side by side");
    }
  }

  private static String hours(double seconds) {
    return Math.round(seconds / HOUR_S * 10) / 10.0 + " h";
  }
}
