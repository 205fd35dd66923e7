package hurdline.study.replicate;

import hurdline.plant.Calendar;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A plant's calendars laid over the life of something bought, the first beginning as it is paid
 * for.
 *
 * <p>What a calendar earns is there at its end; one that is longer than a year is cut into years,
 * counted from its first day, each of which has its own earnings at its end. Whole years are years
 * exactly, other lengths are in years of 365.25 days.
 */
public final class LifeCalendar {
  private static final double YEAR_D = 365.25;
  private static final double DAY_S = 86_400;
  private static final double ROUNDING = 1e-9;

  private final double[] endsYr; // of its years, from its first day
  private final double strideYr;

  private LifeCalendar(double[] endsYr, double strideYr) {
    this.endsYr = endsYr;
    this.strideYr = strideYr;
  }

  /**
   * A year of one of the calendars, as far as the life reaches.
   *
   * @param calendar counts from 0
   * @param year of that calendar, from 0
   * @param part of that year's earnings that is within the life
   */
  public record Share(int calendar, int year, double fromYr, double toYr, double part) {}

  /** Empty where the calendar is shorter than a year and the file does not say how it repeats. */
  public static Optional<LifeCalendar> of(Calendar calendar) {
    if (calendar.isShorterThanAYear() && calendar.repeats().isEmpty()) {
      return Optional.empty();
    }
    double[] endsYr = endsYr(calendar);
    double lengthYr = endsYr[endsYr.length - 1];
    boolean yearly = calendar.repeats().equals(Optional.of(Calendar.Repeats.YEARLY));
    return Optional.of(new LifeCalendar(endsYr, yearly ? 1 : lengthYr));
  }

  private static double[] endsYr(Calendar calendar) {
    List<LocalDate> firsts = calendar.years();
    double[] endsYr = new double[firsts.size()];
    for (int year = 0; year < endsYr.length - 1; year++) {
      endsYr[year] = year + 1;
    }
    int last = endsYr.length - 1;
    LocalDate after = calendar.to().plusDays(1);
    boolean whole = after.equals(calendar.from().plusYears(endsYr.length));
    endsYr[last] =
        whole ? last + 1 : last + ChronoUnit.DAYS.between(firsts.get(last), after) / YEAR_D;
    return endsYr;
  }

  /** Years of one calendar, the last perhaps cut short. */
  public int years() {
    return endsYr.length;
  }

  /** Time from the first day of a calendar to that of the next. */
  public double strideYr() {
    return strideYr;
  }

  /** Calendars that begin within a life. */
  public int calendars(double lifeYr) {
    return Math.max(1, (int) Math.ceil(lifeYr / strideYr - ROUNDING));
  }

  /** Time between two calendars, in which nothing is worked. */
  public double idleS() {
    return (strideYr - endsYr[endsYr.length - 1]) * YEAR_D * DAY_S;
  }

  /** The years of all calendars in a life, in turn. */
  public List<Share> shares(double lifeYr) {
    List<Share> shares = new ArrayList<>();
    for (int calendar = 0; calendar < calendars(lifeYr); calendar++) {
      double beganYr = calendar * strideYr;
      for (int year = 0; year < endsYr.length; year++) {
        double fromYr = beganYr + (year == 0 ? 0 : endsYr[year - 1]);
        double wholeYr = beganYr + endsYr[year];
        if (fromYr < lifeYr - ROUNDING) {
          double toYr = wholeYr > lifeYr + ROUNDING ? lifeYr : wholeYr;
          shares.add(new Share(calendar, year, fromYr, toYr, (toYr - fromYr) / (wholeYr - fromYr)));
        }
      }
    }
    return shares;
  }
}
