package hurdline.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
    PowerBooks books = new PowerBooks(2, PERIODS);
    int peaksBelowTheHighestPower = 0;
    for (int trial = 0; trial < 60; trial++) {
      books.reset();
      int[][] watts = new int[2][PERIODS * PERIOD_S];
      play(books, watts, chance, trial % 3 == 0 ? 300 : 2_500);
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
  private static void play(PowerBooks books, int[][] watts, SplittableRandom chance, int longestS) {
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
    PowerBooks books = new PowerBooks(1, 1);
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
}
