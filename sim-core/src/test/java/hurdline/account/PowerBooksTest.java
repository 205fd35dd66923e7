package hurdline.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.compiled.MeterSchedule;
import hurdline.compiled.Roster;
import hurdline.plant.Plant;
import hurdline.simulation.TestPlant;
import java.time.LocalDateTime;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Energy and quarter-hour peaks against sums over whole seconds. Fixed seed, whole watts: no false
 * alarms.
 */
class PowerBooksTest {
  private static final int QUARTER_S = 900;
  private static final int PERIODS = 3;
  private static final int PERIOD_S = 8 * QUARTER_S;

  @Test
  void energyAndPeaksAreThoseOfASumOverSeconds() {
    SplittableRandom chance = new SplittableRandom(7);
    PowerBooks books = new PowerBooks(2, PERIODS, MeterSchedule.plain());
    int peaksBelowTheHighestPower = 0;
    for (int trial = 0; trial < 60; trial++) {
      books.reset();
      int[][] watts = new int[2][PERIODS * PERIOD_S];
      simulate(books, watts, chance, trial % 3 == 0 ? 300 : 2_500);
      for (int m = 0; m < 2; m++) {
        double joules = java.util.Arrays.stream(watts[m]).asDoubleStream().sum();
        assertThat(books.joules(m, watts[m].length)).isCloseTo(joules, within(1e-6));
        assertThat(books.joules(m, watts[m].length + 10))
            .isCloseTo(joules + 10 * watts[m][watts[m].length - 1], within(1e-6));
      }
      assertThat(books.totalJ()).isCloseTo(sum(watts, 0, watts[0].length), within(1e-6));
      for (int period = 0; period < PERIODS; period++) {
        double peak = peakW(watts, period * PERIOD_S);
        assertThat(books.peakW(period))
            .as("trial %s, period %s", trial, period)
            .isCloseTo(peak, within(1e-9));
        peaksBelowTheHighestPower += peak < highest(watts, period * PERIOD_S) ? 1 : 0;
      }
    }
    assertThat(peaksBelowTheHighestPower).as("where a mean and a power differ").isGreaterThan(50);
  }

  /** Changes at whole seconds; some on the stroke of a quarter-hour, some of no machine at all. */
  private static void simulate(
      PowerBooks books, int[][] watts, SplittableRandom chance, int longestS) {
    int nowS = 0;
    int[] drawn = new int[2];
    while (nowS < watts[0].length) {
      for (int m = 0; m < 2; m++) {
        drawn[m] = chance.nextInt(3) == 0 ? drawn[m] : chance.nextInt(40);
        books.draws(m, drawn[m], nowS);
      }
      books.total(nowS);
      int nextS = nowS + 1 + chance.nextInt(longestS);
      nextS = chance.nextInt(4) == 0 ? (nextS / QUARTER_S + 1) * QUARTER_S : nextS;
      for (; nowS < Math.min(nextS, watts[0].length); nowS++) {
        watts[0][nowS] = drawn[0];
        watts[1][nowS] = drawn[1];
        if ((nowS + 1) % PERIOD_S == 0) {
          books.periodEnds(nowS + 1);
        }
      }
    }
    books.bookAll(watts[0].length);
  }

  private static double sum(int[][] watts, int fromS, int toS) {
    double sum = 0;
    for (int s = fromS; s < toS; s++) {
      sum += watts[0][s] + watts[1][s];
    }
    return sum;
  }

  private static double peakW(int[][] watts, int fromS) {
    double peak = 0;
    for (int s = fromS; s < fromS + PERIOD_S; s += QUARTER_S) {
      peak = Math.max(peak, sum(watts, s, s + QUARTER_S) / QUARTER_S);
    }
    return peak;
  }

  private static double highest(int[][] watts, int fromS) {
    double highest = 0;
    for (int s = fromS; s < fromS + PERIOD_S; s++) {
      highest = Math.max(highest, watts[0][s] + watts[1][s]);
    }
    return highest;
  }

  /** What draws from before the last period's end on is booked, whoever asks late. */
  @Test
  void whatIsDrawnWhileNothingChangesIsBookedAtTheEnd() {
    PowerBooks books = new PowerBooks(1, 1, MeterSchedule.plain());
    books.draws(0, 1_000, 100);
    books.total(100);
    books.bookAll(1_000);
    assertThat(books.totalJ()).isEqualTo(900_000);
    assertThat(books.joules(0, 1_000)).isEqualTo(900_000);
    assertThat(books.peakW(0))
        .as("the first quarter-hour alone")
        .isCloseTo(800_000.0 / 900, within(1e-9));
    books.periodEnds(1_800);
    assertThat(books.peakW(0)).as("the last period has no next").isEqualTo(1_000);
  }

  /** Nights of weekdays, a summer month and lights, over twelve days around the end of May. */
  private static final String TARIFF =
      "{periods: {summer: {months: [Jun], from: \"10:00\", to: \"18:30\", energy: 1 USD/kWh, demand: 1 USD/kW/month},"
          + " night: {days: [Mon, Wed, Fri], from: \"21:15\", to: \"05:45\", energy: 1 USD/kWh, demand: 1 USD/kW/month}}}";

  /** Power changes at odd seconds; each second's energy goes to the price of its hour. */
  @Test
  void energyByPriceAndDemandByWindowAreThoseOfASumOverSeconds() {
    Plant plant =
        TestPlant.twoLines()
            .with("calendar.from", "2027-05-26")
            .with("calendar.to", "2027-06-06")
            .with("season", "[{line: stalk_line, from: 2027-05-26, to: 2027-05-26, shifts: [day]}]")
            .with("money.electricity", TARIFF)
            .with(
                "base_loads", "{lights: {power: 7 W, days: [Sun], from: \"20:00\", to: \"06:30\"}}")
            .plant();
    PowerBooks books = new PowerBooks(1, 1, Roster.of(plant).meter());
    books.reset();
    SplittableRandom chance = new SplittableRandom(11);
    double[] priceJ = new double[3];
    double[] peakW = new double[3];
    double[] quarterJ = new double[3];
    int watts = 0;
    int changeS = 0;
    for (int s = 0; s < 12 * 86_400; s++) {
      if (s == changeS) {
        watts = chance.nextInt(40);
        books.draws(0, watts, s);
        books.total(s);
        changeS += 1 + chance.nextInt(30_000);
      }
      LocalDateTime at = LocalDateTime.of(2027, 5, 26, 0, 0).plusSeconds(s);
      int all = watts + (lights(at) ? 7 : 0);
      priceJ[summer(at) ? 1 : night(at) ? 2 : 0] += all;
      quarterJ[0] += all;
      quarterJ[1] += summer(at) ? all : 0;
      quarterJ[2] += night(at) ? all : 0;
      for (int w = 0; w < 3 && (s + 1) % QUARTER_S == 0; w++) {
        peakW[w] = Math.max(peakW[w], quarterJ[w] / QUARTER_S);
        quarterJ[w] = 0;
      }
    }
    books.bookAll(12 * 86_400);
    for (int k = 0; k < 3; k++) {
      assertThat(books.pricedJ(k)).as("price %s", k).isCloseTo(priceJ[k], within(1e-5));
      assertThat(books.peakW(0, k)).as("window %s", k).isCloseTo(peakW[k], within(1e-9));
    }
    assertThat(peakW[0]).as("windows differ").isGreaterThan(peakW[1]).isGreaterThan(peakW[2]);
    assertThat(books.totalJ()).isCloseTo(priceJ[0] + priceJ[1] + priceJ[2], within(1e-5));
  }

  private static boolean summer(LocalDateTime at) {
    int minute = at.getHour() * 60 + at.getMinute();
    return at.getMonthValue() == 6 && minute >= 600 && minute < 1_110;
  }

  /** Mondays, Wednesdays and Fridays from 21:15, and the mornings behind them. */
  private static boolean night(LocalDateTime at) {
    int minute = at.getHour() * 60 + at.getMinute();
    int evening =
        minute >= 1_275
            ? at.getDayOfWeek().getValue()
            : minute < 345 ? at.getDayOfWeek().getValue() - 1 : 0;
    return evening == 1 || evening == 3 || evening == 5;
  }

  private static boolean lights(LocalDateTime at) {
    int minute = at.getHour() * 60 + at.getMinute();
    return at.getDayOfWeek().getValue() == 7 && minute >= 1_200
        || at.getDayOfWeek().getValue() == 1 && minute < 390;
  }
}
