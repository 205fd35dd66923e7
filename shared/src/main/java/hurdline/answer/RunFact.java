package hurdline.answer;

import java.time.LocalDate;
import java.util.List;

/** What the figures of every study take for granted. */
public sealed interface RunFact extends Fact {
  /** Inputs are the plant file's; which one, the header tells. */
  record Inputs() implements RunFact {}

  /** What the first minute begins with and the last one cuts. */
  record Horizon() implements RunFact {}

  /** Each source of randomness has draws of its own; the header has the seed. */
  record RandomDraws() implements RunFact {}

  /**
   * How often the calendar was simulated.
   *
   * @param stopped whether that is fewer than asked for
   */
  record Replications(int count, boolean stopped) implements RunFact {}

  /**
   * How far an aim of {@code --until} was followed.
   *
   * @param said as it was given
   * @param halfWidth of the 95 % interval; NaN where unknown
   * @param wanted the half-width that the aim allows
   * @param unit of both
   * @param needed about how many replications it takes; infinite where beyond counting
   * @param most how many are simulated at most
   * @param stopped whether the user ended it
   */
  record Aim(
      String said,
      Outcome outcome,
      double halfWidth,
      double wanted,
      String unit,
      double needed,
      int most,
      boolean stopped)
      implements RunFact {
    /** How it ended. */
    public enum Outcome {
      REACHED,
      NOT_REACHED,
      /** The measure has no value in any replication. */
      NO_VALUE
    }
  }

  /**
   * After the first replications: an aim cannot be reached.
   *
   * @param count the first replications
   * @param needed and {@code most} as of {@link Aim}
   */
  record AimOutOfReach(String said, int count, double needed, int most) implements RunFact {}

  /**
   * How the view after loan and tax is made, which stands beside the margin.
   *
   * @param loanYears 0 where nothing is borrowed
   * @param taxRate share of taxed income, 0 where no tax is looked at
   * @param writeOffYears 0 where nothing is written off
   * @param factor of declining balance; 0 for straight line
   */
  record LoanAndTax(
      double loanShare,
      double loanRate,
      int loanYears,
      double taxRate,
      int writeOffYears,
      double factor,
      boolean halfFirst)
      implements RunFact {}

  /**
   * What lies in bins and stores as a season under way goes on.
   *
   * @param notGiven begin empty, since no record says what lies there
   */
  record OpeningContents(List<Found> found, List<NotGiven> notGiven) implements RunFact {
    public OpeningContents {
      found = List.copyOf(found);
      notGiven = List.copyOf(notGiven);
    }

    /**
     * @param place bin or store
     * @param product in the store; empty for a bin
     */
    public record Found(
        String place, String product, double amount, String unit, LocalDate counted) {}

    /**
     * @param counted when it last was, before shifts were worked or trucks came; empty if never
     */
    public record NotGiven(String place, String product, String counted) {}
  }

  /** What flows evenly and what is followed one by one. */
  record EvenFlow() implements RunFact {}

  /** What is left out of every study. */
  record NotModeled() implements RunFact {}

  /** Which kinds of intervals the measures have; only what is not plain Student is named. */
  record Intervals(Group hall, Group skewed, Group cut) implements RunFact {}

  /**
   * Measures that are alike in something.
   *
   * @param first names of the first few, or of all
   */
  record Group(int count, List<String> first) {
    public Group {
      first = List.copyOf(first);
    }
  }
}
