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
 * @param mmByDay in millimetres; NaN where nothing was measured
 * @param leftOut what is said of years that are not used
 */
record RainFile(
    NavigableMap<LocalDate, Double> mmByDay, List<LocatedProblem> problems, List<String> leftOut) {
  static final String WANTED = "a CSV of past years' daily rain that begins with \"date,rain_mm\"";

  /** Of a metre: what the change of units may lose, far below what any gauge shows. */
  private static final double ROUNDING_M = 1e-9;

  static RainFile of(String name, String text) {
    return new RainLines(name).read(text);
  }

  boolean isRight() {
    return problems.isEmpty();
  }

  /**
   * The years with the days on which that much or more fell. A day without a measurement is as the
   * day before it, which leaves the share of wet days as it is; the first of all is dry.
   */
  List<PastYear> years(double wetFromM) {
    Map<Integer, Set<MonthDay>> wet = new TreeMap<>();
    boolean isWet = false;
    for (Map.Entry<LocalDate, Double> day : mmByDay.entrySet()) {
      LocalDate date = day.getKey();
      Set<MonthDay> ofYear = wet.computeIfAbsent(date.getYear(), y -> new LinkedHashSet<>());
      isWet = day.getValue().isNaN() ? isWet : day.getValue() / 1000 >= wetFromM - ROUNDING_M;
      if (isWet) {
        ofYear.add(MonthDay.from(date));
      }
    }
    List<PastYear> years = new ArrayList<>();
    wet.forEach((year, days) -> years.add(new PastYear(year, days)));
    return years;
  }
}
