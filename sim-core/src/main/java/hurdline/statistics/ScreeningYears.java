package hurdline.statistics;

import java.util.Arrays;
import java.util.List;

/**
 * How many years choose the first leader, and how many new ones each round judges by; said before
 * anything is simulated, since the chance of an error is divided by the number of rounds.
 *
 * @param choosing years before the first round, at least 1
 * @param rounds new years of each round, at least 2 in each
 */
public record ScreeningYears(int choosing, List<Integer> rounds) {
  private static final int USUAL_CHOOSING = 10;
  private static final List<Integer> USUAL_ROUNDS = List.of(10, 20, 40, 80, 160, 320);

  public ScreeningYears {
    rounds = List.copyOf(rounds);
    if (!(choosing >= 1)) {
      throw new IllegalArgumentException("choosing is " + choosing + "; expected at least 1");
    }
    if (rounds.isEmpty() || rounds.stream().anyMatch(years -> !(years >= 2))) {
      throw new IllegalArgumentException(
          "rounds are " + rounds + "; expected one or more of at least 2 years each");
    }
  }

  /** 10 years, then rounds of 10, 20, 40, 80, 160 and 320. */
  public static ScreeningYears usual() {
    return new ScreeningYears(USUAL_CHOOSING, USUAL_ROUNDS);
  }

  /** The same rounds after other years that choose. */
  public ScreeningYears choosing(int years) {
    return new ScreeningYears(years, rounds);
  }

  /** Years before a round; rounds count from 0, and after the last one this is all years. */
  public int before(int round) {
    return choosing + rounds.subList(0, round).stream().mapToInt(Integer::intValue).sum();
  }

  /** The new years of a round out of all of a plan's years. */
  double[] of(int round, double[] years) {
    return Arrays.copyOfRange(years, before(round), before(round + 1));
  }
}
