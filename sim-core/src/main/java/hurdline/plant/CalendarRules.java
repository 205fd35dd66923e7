package hurdline.plant;

import hurdline.plant.Calendar.Rest;
import hurdline.plant.Calendar.Shift;
import java.time.DayOfWeek;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The horizon, shifts and their rests. */
final class CalendarRules {
  private static final int DAY_S = 86_400;
  private static final int WEEK_S = 7 * DAY_S;
  private static final long LONGEST_DAYS = 50 * 366L;

  private CalendarRules() {}

  static void check(Plant plant, Problems found) {
    Calendar calendar = plant.calendar();
    if (calendar.to().isBefore(calendar.from())) {
      found.add(
          "calendar.to",
          calendar.to() + " is before the calendar's first day",
          "a date from " + calendar.from() + " on");
    } else if (ChronoUnit.DAYS.between(calendar.from(), calendar.to()) > LONGEST_DAYS) {
      found.add(
          "calendar.to",
          "the calendar is longer than 50 years",
          "a last day within 50 years of " + calendar.from());
    }
    if (calendar.repeats().equals(Optional.of(Calendar.Repeats.YEARLY))
        && calendar.years().size() > 1) {
      found.add(
          "calendar.repeats",
          "a calendar of "
              + calendar.days()
              + " days is longer than a year and cannot begin again every year",
          "\"end-to-end\", or a calendar of a year or less");
    }
    if (calendar.shifts().isEmpty()) {
      found.add(
          "calendar.shifts",
          "there is no shift, so nothing would ever work",
          "at least one, such as \"day: {from: \"06:00\", to: \"14:30\"}\"");
    }
    calendar.shifts().forEach(shift -> rests(shift, found));
  }

  private static void rests(Shift shift, Problems found) {
    List<double[]> taken = new ArrayList<>();
    for (int i = 0; i < shift.rests().size(); i++) {
      Rest rest = shift.rests().get(i);
      if (rest.atS() >= 0) {
        rest(shift, rest, "calendar.shifts." + shift.name() + ".rests." + i, taken, found);
      }
    }
    double rested = taken.stream().mapToDouble(span -> span[1] - span[0]).sum();
    if (rested >= shift.lengthS()) {
      found.add(
          "calendar.shifts." + shift.name() + ".rests",
          "the rests fill the whole shift",
          "a shift with some hours to work");
    }
  }

  private static void rest(
      Shift shift, Rest rest, String path, List<double[]> taken, Problems found) {
    double from = Math.floorMod(rest.atS() - shift.fromS(), DAY_S);
    double to = from + rest.lastsS();
    if (to > shift.lengthS()) {
      found.add(
          path,
          "the rest lies outside its shift",
          "a rest that begins and ends between the shift's \"from\" and \"to\"");
    } else if (taken.stream().anyMatch(span -> from < span[1] && span[0] < to)) {
      found.add(path, "the rest overlaps another rest of the shift", "rests one after the other");
    } else {
      taken.add(new double[] {from, to});
    }
  }

  /** The first two of these shifts that would be worked at once in some week, or none. */
  static List<String> overlapping(List<Shift> shifts) {
    List<Span> spans = new ArrayList<>();
    for (Shift shift : shifts) {
      for (DayOfWeek day : shift.days()) {
        long from = (day.getValue() - 1L) * DAY_S + shift.fromS();
        spans.add(new Span(shift.name(), from, from + shift.lengthS()));
        spans.add(new Span(shift.name(), from + WEEK_S, from + WEEK_S + shift.lengthS()));
      }
    }
    spans.sort(Comparator.comparingLong(Span::from));
    for (int i = 1; i < spans.size(); i++) {
      if (spans.get(i).from() < spans.get(i - 1).to()) {
        return List.of(spans.get(i - 1).shift(), spans.get(i).shift());
      }
    }
    return List.of();
  }

  private record Span(String shift, long from, long to) {}
}
