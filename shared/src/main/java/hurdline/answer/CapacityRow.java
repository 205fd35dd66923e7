package hurdline.answer;

/**
 * What a yard of one size comes to; a row of {@code capacity.csv}.
 *
 * @param bales that all places of the crop hold together, in the crop's unit of count
 * @param areaM2 ground for its stacks and lanes; NaN where the file does not say how it is stacked
 * @param chance share of seasons in which something found no room
 * @param low95 lower end of the chance's 95 % interval
 * @param heldAtField mean of the most that lay baled at the fields
 * @param lostT mean dry matter lost at field and in the yard
 * @param waitingD mean days that trucks and loads waited for room, added up
 * @param moneyPerYear mean of loss, waiting and places; NaN where the file has no money
 * @param moneyLow95 lower end of its 95 % interval
 * @param aboveCheapest money a year above that of the cheapest size, by pairs of seasons; 0 for the cheapest itself
 * @param aboveLow lower end of its interval, which holds for all sizes together
 * @param toldApart whether it is dearer than the cheapest by more than chance explains
 */
public record CapacityRow(
    double bales,
    double areaM2,
    double chance,
    double low95,
    double high95,
    double heldAtField,
    double lostT,
    double waitingD,
    double moneyPerYear,
    double moneyLow95,
    double moneyHigh95,
    double aboveCheapest,
    double aboveLow,
    double aboveHigh,
    boolean toldApart) {}
