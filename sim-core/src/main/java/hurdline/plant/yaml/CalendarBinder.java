package hurdline.plant.yaml;

import hurdline.plant.Calendar;
import hurdline.plant.Calendar.Rest;
import hurdline.plant.Calendar.Shift;
import hurdline.unit.Dimension;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads the calendar. */
final class CalendarBinder {
  private static final LocalDate SOME_DAY = LocalDate.of(2027, 1, 1);

  private CalendarBinder() {}

  static Calendar calendar(NodeReader at) {
    Fields f = at.fields(MapKeys.CALENDAR);
    LocalDate from = Dates.date(f.at("from")).orElse(SOME_DAY);
    LocalDate to = Dates.date(f.at("to")).orElse(from);
    List<Shift> shifts = f.at("shifts").each("shift", CalendarBinder::shift);
    return new Calendar(from, to, shifts, closed(f.at("closed")), repeats(f.at("repeats")));
  }

  private static Optional<Calendar.Repeats> repeats(NodeReader at) {
    Map<String, Optional<Calendar.Repeats>> choices = new LinkedHashMap<>();
    for (Calendar.Repeats one : Calendar.Repeats.values()) {
      choices.put(one.word(), Optional.of(one));
    }
    return Words.choice(at, choices, Optional.empty());
  }

  private static Set<LocalDate> closed(NodeReader at) {
    Set<LocalDate> closed = new HashSet<>();
    for (NodeReader item : at.items("dates")) {
      Dates.date(item).ifPresent(closed::add);
    }
    return closed;
  }

  private static Shift shift(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.SHIFT);
    int fromS = Dates.clock(f.at("from")).orElse(0);
    int toS = Dates.clock(f.at("to")).orElse(86_400);
    if (fromS == 86_400) {
      f.at("from")
          .wrong("a shift cannot begin at \"24:00\"", "\"00:00\", on the next day of the list");
      fromS = 0;
    }
    List<Rest> rests = f.at("rests").list("rests", CalendarBinder::rest);
    return new Shift(name, Dates.weekdays(f.at("days")), fromS, toS, rests);
  }

  private static Rest rest(NodeReader at) {
    Fields f = at.fields(MapKeys.REST);
    int atS = Dates.clock(f.at("at")).orElse(-1);
    double lastsS = Quantities.of(f.at("lasts"), Dimension.TIME, Range.ABOVE_0, 60);
    return new Rest(atS == 86_400 ? 0 : atS, lastsS);
  }
}
