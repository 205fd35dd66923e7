package hurdline.audit;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Shifts and changeovers counted off the calendar, as one would with a pencil, for a season that
 * nothing cuts short.
 */
final class ShiftCalendar {
  private final PlantFacts plant;
  private final double horizonH;

  ShiftCalendar(PlantFacts plant) {
    this.plant = plant;
    horizonH = plant.horizonH();
  }

  /**
   * A shift on a date, in hours from the first day's midnight.
   *
   * @param restH of its length, its rests
   */
  private record Shift(String name, double fromH, double toH, double restH) {
    double lengthH() {
      return toH - fromH;
    }
  }

  /** Hours of the line's campaigns, rests left out. */
  double scheduledH(String line) {
    return shifts(line).stream().mapToDouble(shift -> shift.lengthH() - shift.restH()).sum();
  }

  /** Hours of the hands of the line's crews, rests included. */
  double handH(String line) {
    return shifts(line).stream()
        .mapToDouble(shift -> shift.lengthH() * plant.amount("crews." + line + "." + shift.name()))
        .sum();
  }

  private List<Shift> shifts(String line) {
    List<Shift> shifts = new ArrayList<>();
    for (PlantFacts entry : plant.list("season")) {
      if (entry.text("line").filter(line::equals).isPresent()) {
        for (LocalDate date = entry.date("from");
            !date.isAfter(entry.date("to"));
            date = date.plusDays(1)) {
          shifts.addAll(starting(date, entry));
        }
      }
    }
    return shifts;
  }

  /**
   * Hours of the hands of changeovers that follow a campaign of the line: the earliest shift of
   * each day it would work.
   */
  double changeoverHandH(String line) {
    double sum = 0;
    PlantFacts campaign = null;
    LocalDate next = null;
    for (PlantFacts entry : plant.list("season")) {
      if (entry.has("line")) {
        campaign = entry;
        next = entry.date("to").plusDays(1);
        continue;
      }
      for (int days = (int) Math.round(entry.amount("changeover") / 24);
          days > 0;
          next = next.plusDays(1)) {
        List<Shift> worked = starting(next, campaign);
        if (!worked.isEmpty()) {
          days--;
          double lengthH =
              worked.stream().min(Comparator.comparing(Shift::fromH)).orElseThrow().lengthH();
          sum +=
              campaign.text("line").orElseThrow().equals(line)
                  ? lengthH * entry.amount("hands")
                  : 0;
        }
      }
    }
    return sum;
  }

  /** The campaign's shifts that start on a date; none on a closed one. */
  private List<Shift> starting(LocalDate date, PlantFacts campaign) {
    List<Shift> starting = new ArrayList<>();
    if (!plant.texts("calendar.closed").contains(date.toString())) {
      String day = date.getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
      for (String name : campaign.texts("shifts")) {
        List<String> days = plant.texts("calendar.shifts." + name + ".days");
        if (days.isEmpty() || days.contains(day)) {
          starting.add(shift(name, 24.0 * (date.toEpochDay() - plant.firstDay().toEpochDay())));
        }
      }
    }
    return starting;
  }

  private Shift shift(String name, double midnightH) {
    String path = "calendar.shifts." + name;
    double from = clockH(plant.text(path + ".from").orElseThrow());
    double to = clockH(plant.text(path + ".to").orElseThrow());
    double end = Math.min(horizonH, midnightH + (to > from ? to : to + 24));
    double rest = 0;
    for (PlantFacts each : plant.list(path + ".rests")) {
      rest += each.amount("lasts");
    }
    return new Shift(name, midnightH + from, end, rest);
  }

  private static double clockH(String clock) {
    String[] parts = clock.split(":");
    return Integer.parseInt(parts[0]) + Integer.parseInt(parts[1]) / 60.0;
  }
}
