package hurdline.compiled;

import hurdline.plant.Calendar;
import hurdline.plant.Curve;
import hurdline.plant.Delivery;
import hurdline.plant.Job;
import hurdline.plant.Line;
import hurdline.plant.Plant;
import hurdline.plant.SeasonEntry;
import hurdline.plant.Step;
import hurdline.plant.Yard;
import hurdline.random.Constant;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A plant with nothing but what a roster reads. Dates are days of March 2027: the 1st is a Monday.
 */
final class Sketch {
  static final double H = 3600;
  static final double D = 86_400;

  private final int lastDate;
  private final List<Calendar.Shift> shifts = new ArrayList<>();
  private final Set<LocalDate> closed = new HashSet<>();
  private final List<SeasonEntry> season = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();
  private final List<Delivery> deliveries = new ArrayList<>();
  private int firstDate = 1;

  /** A horizon from March 1 to this date of March, inclusive. */
  Sketch(int lastDate) {
    this.lastDate = lastDate;
  }

  static LocalDate march(int date) {
    return LocalDate.of(2027, 3, 1).plusDays(date - 1L);
  }

  /**
   * @param days as in "Mon Tue", or "" for all @param rests their starts and lengths in turn, h
   */
  Sketch shift(String name, String days, double fromH, double toH, double... rests) {
    List<Calendar.Rest> all = new ArrayList<>();
    for (int i = 0; i < rests.length; i += 2) {
      all.add(new Calendar.Rest((int) (rests[i] * H), rests[i + 1] * H));
    }
    shifts.add(new Calendar.Shift(name, daysOf(days), (int) (fromH * H), (int) (toH * H), all));
    return this;
  }

  Sketch from(int date) {
    firstDate = date;
    return this;
  }

  Sketch closed(int date) {
    closed.add(march(date));
    return this;
  }

  Sketch campaign(String line, int from, int to, String... named) {
    season.add(new SeasonEntry.Campaign(line, march(from), march(to), List.of(named)));
    return this;
  }

  Sketch changeover(int days, int hands) {
    season.add(new SeasonEntry.Changeover(days, hands));
    return this;
  }

  /** A line with one bin that keeps its own hours; dates of 0 are left out. */
  Sketch ownHours(String line, String bin, int from, int to, String... named) {
    Step.OwnHours own = new Step.OwnHours(List.of(named), date(from), date(to));
    Step step =
        new Step(
            bin,
            OptionalDouble.empty(),
            List.of(),
            Optional.empty(),
            List.of(),
            0,
            Optional.of(own),
            OptionalInt.empty(),
            1,
            Curve.NONE,
            Curve.NONE,
            Map.of(),
            new Step.FirstScreen(),
            0,
            Map.of());
    lines.add(new Line(line, "stalk", "feeder", List.of(), List.of(step)));
    return this;
  }

  private static Optional<LocalDate> date(int of) {
    return of == 0 ? Optional.empty() : Optional.of(march(of));
  }

  Sketch loads(
      int from,
      int to,
      String days,
      double fromH,
      double toH,
      double streamFromH,
      double streamToH) {
    Delivery.DayHours stream =
        new Delivery.DayHours((int) (streamFromH * H), (int) (streamToH * H), daysOf(days));
    Delivery.DayHours receiving =
        new Delivery.DayHours((int) (fromH * H), (int) (toH * H), daysOf(days));
    deliveries.add(
        new Delivery(
            "stalk",
            List.of(),
            java.util.OptionalInt.empty(),
            new Constant(1),
            Delivery.WetChain.always(0, 0, 0),
            receiving,
            Optional.empty(),
            Optional.of(new Delivery.Loads(new Constant(H), 5, march(from), march(to), stream)),
            Optional.empty(),
            List.of(),
            Optional.empty(),
            new Job(new Constant(0), List.of()),
            0,
            0));
    return this;
  }

  Roster roster() {
    Calendar calendar =
        new Calendar(march(firstDate), march(lastDate), shifts, closed, Optional.empty());
    Yard yard = new Yard(Map.of(), List.of(), new Yard.OldestFirst(), false, 0, Map.of());
    return Roster.of(
        new Plant(
            "sketch",
            calendar,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            lines,
            season,
            List.of(),
            hurdline.plant.Hands.allCome(),
            List.of(),
            yard,
            deliveries,
            List.of(),
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            List.of()));
  }

  private static Set<DayOfWeek> daysOf(String names) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      if (names.isEmpty()
          || names.toUpperCase(java.util.Locale.ROOT).contains(day.name().substring(0, 3))) {
        days.add(day);
      }
    }
    return days;
  }
}
