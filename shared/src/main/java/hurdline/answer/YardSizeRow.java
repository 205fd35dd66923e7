package hurdline.answer;

/**
 * What a yard of one size comes to; a row of {@code yard_sizes.csv}.
 *
 * @param bales that all places of the crop hold together, in the crop's unit of count
 * @param areaM2 ground for its stacks and lanes; NaN where the file does not say how it is stacked
 * @param chance share of seasons in which something found no room
 * @param low95 lower end of the chance's 95 % interval
 * @param heldAtField mean of the most that lay baled at the fields
 * @param lostT mean dry matter lost at field and in the yard
 * @param waitingD mean days that trucks and loads waited for room, added up
 * @param cost a year; {@link Cost#none()} where the file has no money
 */
public record YardSizeRow(
    double bales,
    double areaM2,
    double chance,
    double low95,
    double high95,
    double heldAtField,
    double lostT,
    double waitingD,
    Cost cost) {

  /**
   * What a size costs a year.
   *
   * @param perYear mean of ground, waiting and the margin below that of a yard without limit
   * @param low95 lower end of its 95 % interval
   * @param ground of all places, spread over its life
   * @param waiting mean of what trucks and loads cost that waited for room
   * @param marginBelow mean of what the plant's margin lies below that with a yard without limit,
   *     season by season
   * @param receiving mean wages of receiving the crop; in the margin already
   */
  public record Cost(
      double perYear,
      double low95,
      double high95,
      double ground,
      double waiting,
      double marginBelow,
      double receiving,
      Above above) {
    public static Cost none() {
      double no = Double.NaN;
      return new Cost(no, no, no, no, no, no, no, new Above(no, no, no, false));
    }

    /**
     * How far a size is dearer than the cheapest.
     *
     * @param money a year, by pairs of seasons; 0 for the cheapest itself
     * @param low lower end of its interval, which holds for all sizes together
     * @param significant whether that interval leaves 0 out
     */
    public record Above(double money, double low, double high, boolean significant) {}
  }

  /** Whether it is the cheapest of the sizes. */
  public boolean isCheapest() {
    return cost.above().money() == 0;
  }
}
