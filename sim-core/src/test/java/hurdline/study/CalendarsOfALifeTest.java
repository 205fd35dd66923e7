package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.CashRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.plant.Calendar;
import hurdline.plant.Change;
import hurdline.study.compare.Compare;
import hurdline.study.compare.CompareAsk;
import hurdline.study.replicate.LifeCalendar;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A life is made of calendars laid over its time, with money at its dates. */
class CalendarsOfALifeTest {
  private static final Path EXACT = Path.of("../line-configs/exact");
  private static final LocalDate FIRST = LocalDate.of(2027, 3, 1);
  private static final double DAY = 1 / 365.25;

  private static LifeCalendar of(LocalDate to, Calendar.Repeats repeats) {
    return LifeCalendar.of(
            new Calendar(FIRST, to, List.of(), Set.of(), Optional.ofNullable(repeats)))
        .orElseThrow();
  }

  private static List<Double> ends(LifeCalendar calendar, double lifeYr) {
    return calendar.shares(lifeYr).stream()
        .map(share -> Math.rint(share.toYr() * 1e6) / 1e6)
        .toList();
  }

  private static double parts(LifeCalendar calendar, double lifeYr) {
    return calendar.shares(lifeYr).stream().mapToDouble(LifeCalendar.Share::part).sum();
  }

  /** 90 days are 0.246407 yr. */
  @Test
  void aSeasonIsWorkedOnceAYear() {
    LifeCalendar season = of(FIRST.plusDays(89), Calendar.Repeats.YEARLY);
    assertThat(season.calendars(2)).isEqualTo(2);
    assertThat(ends(season, 2)).containsExactly(0.246407, 1.246407);
    assertThat(season.idleS()).isCloseTo((365.25 - 90) * 86_400, within(1e-3));
    assertThat(season.calendars(2.1)).isEqualTo(3);
    assertThat(ends(season, 2.1)).containsExactly(0.246407, 1.246407, 2.1);
    assertThat(parts(season, 2.1)).isCloseTo(2 + 0.1 / 0.246407, within(1e-5));
  }

  @Test
  void aSeasonMayFollowItselfEndToEnd() {
    LifeCalendar season = of(FIRST.plusDays(89), Calendar.Repeats.END_TO_END);
    assertThat(season.calendars(1)).isEqualTo(5);
    assertThat(ends(season, 1)).containsExactly(0.246407, 0.492813, 0.73922, 0.985626, 1.0);
    assertThat(parts(season, 1)).isCloseTo(365.25 / 90, within(1e-9));
    assertThat(season.idleS()).isZero();
  }

  /** Whether it has a 29 February or not, a year is a year. */
  @Test
  void aWholeYearNeedsNoWord() {
    for (LocalDate last : List.of(LocalDate.of(2028, 2, 29), FIRST.plusYears(1).minusDays(1))) {
      LifeCalendar year = of(last, null);
      assertThat(year.calendars(12)).isEqualTo(12);
      assertThat(ends(year, 2.5)).containsExactly(1.0, 2.0, 2.5);
      assertThat(year.idleS()).isZero();
    }
    Calendar aDayShort =
        new Calendar(FIRST, LocalDate.of(2028, 2, 28), List.of(), Set.of(), Optional.empty());
    assertThat(LifeCalendar.of(aDayShort)).as("a day short of a year").isEmpty();
  }

  @Test
  void aCalendarOfSeveralYearsIsCutIntoYears() {
    LifeCalendar ten = of(FIRST.plusYears(10).minusDays(1), null);
    assertThat(ten.calendars(12)).isEqualTo(2);
    assertThat(ends(ten, 12))
        .containsExactly(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0, 12.0);
    assertThat(ten.shares(12).get(11)).isEqualTo(new LifeCalendar.Share(1, 1, 11, 12, 1));
    LifeCalendar more = of(FIRST.plusYears(1).plusDays(89), null);
    assertThat(ends(more, 2)).containsExactly(1.0, 1.246407, 2.0);
    assertThat(more.shares(2).get(2).part()).isCloseTo(0.753593, within(1e-6));
  }

  private static CompareAnswer life(String plant, PlantChanges base) {
    CompareAsk ask =
        new CompareAsk(
            List.of(),
            OptionalDouble.empty(),
            OptionalInt.of(2),
            false,
            Optional.empty(),
            List.of(),
            Optional.empty());
    return new Compare(
            Studied.source(EXACT.resolve(plant + ".yaml")), base, ask, Studied.effort(1, 2))
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  private static double mean(CompareAnswer answer, Quantity quantity) {
    return answer.worth(answer.options().get(0).name(), quantity).orElseThrow().mean();
  }

  /** By hand in day_each_year.md. */
  @Test
  void aDayEachYear() {
    CompareAnswer answer = life("day_each_year", PlantChanges.base());
    double due =
        -100
            + 420 * Math.pow(1.1, -DAY)
            + 120 * Math.pow(1.1, -1 - DAY)
            + 120 * Math.pow(1.1, -2 - DAY);
    assertThat(due).isCloseTo(528.10, within(0.005));
    assertThat(mean(answer, Quantity.NET_PRESENT_VALUE)).isCloseTo(due, within(1e-6));
    assertThat(mean(answer, Quantity.ADDED_IN_FIRST_YEAR)).isCloseTo(420, within(1e-6));
    assertThat(mean(answer, Quantity.ADDED_IN_EACH_LATER_YEAR)).isCloseTo(120, within(1e-6));
    assertThat(mean(answer, Quantity.SIMPLE_PAYBACK)).isCloseTo(100.0 / 420 * DAY, within(1e-9));
    assertThat(answer.cash())
        .extracting(CashRow::year)
        .containsExactly(0.0, DAY, 1.0, 1 + DAY, 2.0, 2 + DAY, 3.0);
  }

  /** By hand in day_each_year.md. */
  @Test
  void threeDaysEndToEnd() {
    PlantChanges endToEnd =
        new PlantChanges(
            PlantChanges.baseName(),
            List.of(),
            List.of(
                new Change.Value("calendar.repeats", "end-to-end"),
                new Change.Value("options.faster.life", "3 d")));
    CompareAnswer answer = life("day_each_year", endToEnd);
    double due =
        -100
            + 420 * Math.pow(1.1, -DAY)
            + 120 * Math.pow(1.1, -2 * DAY)
            + 120 * Math.pow(1.1, -3 * DAY);
    assertThat(mean(answer, Quantity.NET_PRESENT_VALUE)).isCloseTo(due, within(1e-6));
    assertThat(mean(answer, Quantity.ADDED_IN_FIRST_YEAR))
        .as("all of it")
        .isCloseTo(660, within(1e-6));
    assertThat(answer.worth("faster", Quantity.ADDED_IN_EACH_LATER_YEAR)).isEmpty();
  }

  /** By hand in two_years.md. */
  @Test
  void twoYearsAtOnce() {
    CompareAnswer answer = life("two_years", PlantChanges.base());
    double due = -100 + 526 / 1.1 + 505 / 1.21 + 566 / 1.331;
    assertThat(due).isCloseTo(1_220.78, within(0.005));
    assertThat(mean(answer, Quantity.NET_PRESENT_VALUE)).isCloseTo(due, within(1e-6));
    assertThat(mean(answer, Quantity.ADDED_IN_FIRST_YEAR)).isCloseTo(526, within(1e-6));
    assertThat(mean(answer, Quantity.ADDED_IN_EACH_LATER_YEAR))
        .isCloseTo((505 + 526) / 2.0, within(1e-6));
    assertThat(mean(answer, Quantity.INTERNAL_RATE_OF_RETURN)).isGreaterThan(4);
  }
}
