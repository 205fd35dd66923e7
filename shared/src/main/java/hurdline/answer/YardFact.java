package hurdline.answer;

/** What the sizing of a yard takes for granted. */
public sealed interface YardFact extends Fact {
  /** The aim of {@code --until} is for the yard without limit. */
  record AimWithoutLimit() implements YardFact {}

  /**
   * Which place is made larger or smaller.
   *
   * @param shared whether other crops may lie in some of the places too
   */
  record SizesOfTheYard(String crop, String place, Why why, boolean shared) implements YardFact {
    /** Why this place. */
    public enum Why {
      ASKED,
      ONLY_PLACE,
      LAST_WITH_PRICE,
      LAST
    }
  }

  /**
   * When a season overflows.
   *
   * @param turnedAway whether loads without room are turned away, by the file's rule; else they
   *     wait
   */
  record Overflow(boolean turnedAway) implements YardFact {}

  /**
   * How far seasons tell quantiles.
   *
   * @param overflow share of seasons that may overflow
   * @param needed seasons from which that size has an upper limit
   */
  record SeasonQuantiles(int seasons, double overflow, int needed) implements YardFact {}

  /**
   * What a size costs.
   *
   * @param groundPriced whether the file has a price of ground
   */
  record MoneyOfTheYard(boolean groundPriced) implements YardFact {}

  /**
   * How the most acres are found.
   *
   * @param needed seasons from which they have a lower limit
   * @param carryOver bales that may be left over
   */
  record Acres(int seasons, int needed, int carryOver) implements YardFact {}

  /** What is tried to shorten the peak. */
  record PeakReductions() implements YardFact {}
}
