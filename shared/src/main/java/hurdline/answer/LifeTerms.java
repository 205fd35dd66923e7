package hurdline.answer;

import java.util.List;

/**
 * How the service lives of options are made of simulated calendars.
 *
 * @param calendarDays length of the base's calendar
 * @param repeats how it repeats, as the file says; empty where it does not say
 * @param unrepeated options of which no worth can be given because a calendar shorter than a year
 *     does not say how it repeats
 * @param discount share a year; NaN where the file does not say
 * @param lives how many of each option are simulated; 0 where none is
 * @param carried what makes the first year unlike later ones
 */
public record LifeTerms(
    int calendarDays,
    String repeats,
    List<String> unrepeated,
    double discount,
    int lives,
    Carried carried) {
  public LifeTerms {
    unrepeated = List.copyOf(unrepeated);
  }

  /** What goes from one calendar to the next. */
  public enum Carried {
    NOTHING,
    CROP_LEFT,
    STOCK_ON_HAND
  }

  /** Of an answer without money. */
  public static LifeTerms none() {
    return new LifeTerms(0, "", List.of(), Double.NaN, 0, Carried.NOTHING);
  }
}
