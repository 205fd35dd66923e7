package hurdline.plant.yaml;

import hurdline.plant.Delivery.PastYear;
import hurdline.problem.LocatedProblem;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;

/**
 * Past daily rain, as read: whole calendar years, or each thing that is wrong with it.
 *
 * @param mmByDay in millimetres
 */
record RainFile(NavigableMap<LocalDate, Double> mmByDay, List<LocatedProblem> problems) {
  static final String WANTED = "a CSV of past years' daily rain that begins with \"date,rain_mm\"";

  /** Of a metre: what the change of units may lose, far below what any gauge shows. */
  private static final double ROUNDING_M = 1e-9;

  static RainFile of(String name, String text) {
    return new RainLines(name).read(text);
  }

  boolean isRight() {
    return problems.isEmpty();
  }

  /** The years with the days on which that much or more fell. */
  List<PastYear> years(double wetFromM) {
    Map<Integer, Set<MonthDay>> wet = new TreeMap<>();
    mmByDay.forEach(
        (date, mm) -> {
          Set<MonthDay> ofYear = wet.computeIfAbsent(date.getYear(), y -> new LinkedHashSet<>());
          if (mm / 1000 >= wetFromM - ROUNDING_M) {
            ofYear.add(MonthDay.from(date));
          }
        });
    List<PastYear> years = new ArrayList<>();
    wet.forEach((year, days) -> years.add(new PastYear(year, days)));
    return years;
  }
}
