package hurdline.plant;

import hurdline.random.Distribution;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.Year;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How a crop comes in: from fields by truck, as a stream of loads, or both.
 *
 * @param fields empty where there are only loads
 * @param balers absent where each field has its own
 * @param hours receiving hours; where there are only loads these are the stream's
 * @param weather always dry where the file names none
 * @param weigh absent where nothing is weighed
 * @param rejects by what loads are rejected as they are weighed in
 * @param release how loads are kept apart once they are unloaded; absent where they are not
 * @param unload a job of no time where the file names none
 * @param waitingPerS money for each truck or load that waits for room in the yard
 * @param hands paid in the receiving hours of days with an arrival
 */
public record Delivery(
    String crop,
    List<Field> fields,
    OptionalInt balers,
    Distribution seasonFactor,
    Weather weather,
    DayHours hours,
    Optional<Trucks> trucks,
    Optional<Loads> loads,
    Optional<Job> weigh,
    List<Limit> rejects,
    Optional<Release> release,
    Job unload,
    int hands,
    double waitingPerS) {
  /** Whether some day may be wet. */
  public boolean mayRain() {
    return weather instanceof PastYears
        || weather instanceof WetChain chain
            && Stream.concat(Stream.of(chain.usual()), chain.byMonth().values().stream())
                .anyMatch(wetness -> wetness.wetDay() > 0);
  }

  public Delivery {
    fields = List.copyOf(fields);
    rejects = List.copyOf(rejects);
    Check.count(0, "hands", hands);
    Check.notBelow0("waitingPerS", waitingPerS);
  }

  /**
   * Beyond what a load's mean is refused.
   *
   * @param by moisture, or the name of one of the crop's attributes
   */
  public record Limit(String by, OptionalDouble above, OptionalDouble below) {
    public Limit {
      above.ifPresent(share -> Check.share("above", share));
      below.ifPresent(share -> Check.share("below", share));
    }
  }

  /**
   * How loads are kept apart until they are tested.
   *
   * @param afterS for how long, drawn for each load
   * @param failShare chance that a load fails; it is not paid then and leaves the yard
   * @param costPerFailed what each load that fails costs
   */
  public record Release(Distribution afterS, double failShare, double costPerFailed) {
    public Release {
      Check.share("failShare", failShare);
      Check.notBelow0("costPerFailed", costPerFailed);
    }

    public boolean mayFail() {
      return failShare > 0;
    }
  }

  /**
   * @param yieldKgPerM2 as-is mass at baling
   * @param readySdDays standard deviation of the day it is ready
   * @param balesPerDay that its baler makes
   */
  public record Field(
      String name,
      double areaM2,
      Distribution yieldKgPerM2,
      LocalDate ready,
      double readySdDays,
      double balesPerDay,
      Bale bale) {
    public Field {
      Check.above0("areaM2", areaM2);
      Check.notBelow0("readySdDays", readySdDays);
      Check.above0("balesPerDay", balesPerDay);
    }
  }

  /** Which days are wet: a chain of chances, or years that have been. */
  public sealed interface Weather permits WetChain, PastYears {
    /** Dry days that must come before one of baling. */
    int dryDays();
  }

  /**
   * A two-state chain by day.
   *
   * @param usual in months that have none of their own
   * @param byMonth of the day that is drawn
   */
  public record WetChain(Wetness usual, int dryDays, Map<Month, Wetness> byMonth)
      implements Weather {
    public WetChain {
      byMonth = InOrder.copy(byMonth);
      Check.count(0, "dryDays", dryDays);
    }

    /** The same in every month. */
    public static WetChain always(double wetDay, double wetAfterWet, int dryDays) {
      return new WetChain(new Wetness(wetDay, wetAfterWet), dryDays, Map.of());
    }

    public Wetness in(Month month) {
      return byMonth.getOrDefault(month, usual);
    }
  }

  /**
   * How wet days are, and how they keep together.
   *
   * @param wetDay long-run share w of wet days
   * @param wetAfterWet chance q of a wet day after a wet one
   */
  public record Wetness(double wetDay, double wetAfterWet) {
    public Wetness {
      Check.share("wetDay", wetDay);
      Check.share("wetAfterWet", wetAfterWet);
    }

    /** Chance of a wet day after a dry one, w(1 − q)/(1 − w); above 1 where there is none such. */
    public double wetAfterDry() {
      return wetDay < 1 ? wetDay * (1 - wetAfterWet) / (1 - wetDay) : 1;
    }

    /** Chance of a wet day after another. */
    public double after(boolean wet) {
      return wet ? (wetDay < 1 ? wetAfterWet : 1) : wetAfterDry();
    }
  }

  /**
   * Whole years of the past, of which one is drawn for each calendar year of the horizon.
   *
   * @param years at least one
   */
  public record PastYears(List<PastYear> years, int dryDays) implements Weather {
    public PastYears {
      years = List.copyOf(years);
    }
  }

  /** The wet days of one calendar year; 29 February may be among them in a leap year only. */
  public record PastYear(int year, Set<MonthDay> wet) {
    private static final MonthDay LEAP_DAY = MonthDay.of(2, 29);
    private static final MonthDay DAY_BEFORE = MonthDay.of(2, 28);

    public PastYear {
      wet = InOrder.copy(wet);
    }

    /** Whether that day of another year is wet; 29 February is as 28 where this year has none. */
    public boolean isWet(MonthDay day) {
      return wet.contains(day.equals(LEAP_DAY) && !Year.isLeap(year) ? DAY_BEFORE : day);
    }
  }

  /** Hours of a day on days of the week; {@code toS} up to 86,400, after {@code fromS}. */
  public record DayHours(int fromS, int toS, Set<DayOfWeek> days) {
    public DayHours {
      days = InOrder.copy(days);
    }
  }

  /**
   * @param bales a truck's worth
   * @param load a job of no time where the file names none
   * @param driveS one way
   */
  public record Trucks(int count, int bales, Job load, Distribution driveS) {
    public Trucks {
      Check.count(0, "count", count);
      Check.count(1, "bales", bales);
    }
  }

  /**
   * A stream of loads that comes by itself.
   *
   * @param recorded loads that did come, in the order of their times; where there are some, nothing
   *     is drawn of times and counts
   */
  public record Loads(
      Distribution everyS,
      int bales,
      LocalDate from,
      LocalDate to,
      DayHours hours,
      List<Recorded> recorded) {
    public Loads {
      Check.count(1, "bales", bales);
      recorded = List.copyOf(recorded);
    }

    public Loads(Distribution everyS, int bales, LocalDate from, LocalDate to, DayHours hours) {
      this(everyS, bales, from, to, hours, List.of());
    }
  }

  /**
   * A load that came.
   *
   * @param atS seconds since 00:00 of the calendar's first day
   */
  public record Recorded(double atS, int bales) {
    public Recorded {
      Check.notBelow0("atS", atS);
      Check.count(1, "bales", bales);
    }
  }
}
