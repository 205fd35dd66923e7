package hurdline.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DrawsTest {
  private static final RandomStreams STREAMS = new RandomStreams(42);

  static List<Distributions.Case> all() {
    return Distributions.all();
  }

  /**
   * Fixed seed; with 10,000 draws the mean of a right distribution lies 4.5 standard errors off
   * once in 150,000.
   */
  @ParameterizedTest
  @MethodSource("all")
  void theMeanOfManyDrawsIsTheMean(Distributions.Case one) {
    Draws draws = new Draws(one.distribution(), STREAMS.of(1, one.name()));
    int count = 10_000;
    double sum = 0;
    double squares = 0;
    double mean = one.distribution().mean();
    for (int i = 0; i < count; i++) {
      double off = draws.next() - mean;
      sum += off;
      squares += off * off;
    }
    double error = Math.sqrt(squares) / count;
    assertThat(sum / count).isCloseTo(0, within(4.5 * error + 1e-12));
  }

  @Test
  void drawNIsTheStreamsNumberN() {
    Distribution exponential = Exponential.of(9);
    Draws draws = new Draws(exponential, STREAMS.of(1, "x"));
    RandomStream numbers = STREAMS.of(1, "x");
    for (int i = 0; i < 10; i++) {
      assertThat(draws.next()).isEqualTo(exponential.at(numbers.next()));
    }
  }

  @Test
  void aFixedAmountTakesNoNumber() {
    RandomStream stream = STREAMS.of(1, "x");
    assertThat(new Draws(new Constant(3), stream).next()).isEqualTo(3);
    assertThat(stream.next()).isEqualTo(STREAMS.of(1, "x").next());
  }

  @Test
  void whatIsDrawnBelowNothingCountsAsNothingAndAShareEndsAtTheWhole() {
    Draws wide = new Draws(new Uniform(-1, 3), STREAMS.of(1, "wide"));
    Draws shares = new Draws(new Uniform(-1, 3), STREAMS.of(1, "wide"));
    int nothing = 0;
    int whole = 0;
    for (int i = 0; i < 4000; i++) {
      double amount = wide.next();
      double share = shares.nextShare();
      assertThat(amount).isBetween(0.0, 3.0);
      assertThat(share).isEqualTo(Math.min(amount, 1));
      nothing += amount == 0 ? 1 : 0;
      whole += share == 1 ? 1 : 0;
    }
    assertThat(nothing).isBetween(860, 1140);
    assertThat(whole).isBetween(1850, 2150);
  }

  @Test
  void aNormalDrawAllocatesNothing() {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    Draws draws =
        new Draws(new Normal(1050, 70, 700, Double.POSITIVE_INFINITY), STREAMS.of(1, "mass"));
    double sum = manyDraws(draws);
    long before = threads.getCurrentThreadAllocatedBytes();
    sum += manyDraws(draws);
    long bytes = threads.getCurrentThreadAllocatedBytes() - before;
    assertThat(sum).isPositive();
    assertThat(bytes).isLessThan(10_000);
  }

  private static double manyDraws(Draws draws) {
    double sum = 0;
    for (int i = 0; i < 100_000; i++) {
      sum += draws.next();
    }
    return sum;
  }
}
