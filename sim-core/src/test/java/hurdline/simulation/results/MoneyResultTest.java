package hurdline.simulation.results;

import hurdline.simulation.Figures;
import hurdline.simulation.TestPlant;
import org.junit.jupiter.api.Test;

/**
 * What is earned and paid, by hand: 48 t of stalk give 28.8 t of tow and 19.2 t of hurds, 24 t of
 * cotton as much lint.
 */
class MoneyResultTest {

  /** Twenty bales come in at 50 USD/t; of 90 on hand and these 96 are used up and 14 left. */
  private static TestPlant priced() {
    return TestPlant.twoLines()
        .with("yard.on_hand.stalk", "90 bales")
        .with(
            "deliveries",
            "{stalk: {loads: {every: 25 h, bales: 10, from: 2027-03-01, to: 2027-03-03}}}")
        .with("packages", "{sack: {mass: 500 kg, change: 0 min, cost: 2 USD}}")
        .with("products.tow.package", "sack")
        .with(
            "products.lint.orders",
            "[{mass: 10 t, due: 2027-03-05, late_penalty: 20 USD/d, price: 1200 USD/t}]")
        .with(
            "machines.saw.stops",
            "{belt: {every: 10 h, counted: crewed, lasts: 0 min, cost: 100 USD}}")
        .with("money.electricity", "{energy: 0.2 USD/kWh, demand: 10 USD/kW/month}")
        .with("money.overhead", "24 USD/d")
        .with("money.crop_prices", "{stalk: 50 USD/t}");
  }

  /** The order of 10 t is met on Monday the 8th, on the third day begun after its date. */
  @Test
  void revenueIsAtTheOrdersPriceAndThenAtTheProducts() {
    Figures.of(priced())
        .give("product.tow.revenue", 28.8 * 400)
        .give("product.hurds.revenue", 19.2 * 100)
        .give("product.lint.revenue", 10 * 1200 + 14 * 1000)
        .give("money.revenue", 39_440)
        .give("money.late_penalties", 3 * 20);
  }

  @Test
  void cropIsPaidAsItComesInAndStockCountsAtItsPrice() {
    Figures.of(priced())
        .give("money.crop_cost", 10 * 50)
        .give("money.stock_change", (14 - 90) * 0.5 * 50);
  }

  /**
   * While up they draw 10 kW and 40 kW for 24 h, then 20 kW and 40 kW; the saw's count goes on from
   * line to line.
   */
  @Test
  void electricityPackagesStopsAndOverheadAreByHours() {
    Figures.of(priced())
        .give("money.demand", 60 * 10)
        .give("money.electricity", 0.2 * (50 * 24 + 60 * 24) + 600)
        .give("money.packages", 57 * 2)
        .give("money.stops", 4 * 100)
        .give("money.overhead", 12 * 24);
  }

  @Test
  void theMarginIsWhatAllThatLeaves() {
    Figures.of(priced())
        .give(
            "money.stalk_line.margin",
            28.8 * 400 + 19.2 * 100 - 1_900 - 500 - 10 * (96 + 24) - 114 - 200)
        .give("money.stalk_line.margin_per_tonne", 9_526 / 48.0)
        .give("money.cotton_line.margin", 26_000 - 10 * 48 - 200 - 60)
        .give("money.margin", 9_526 + 25_260 - 1_128 - 288);
  }

  /**
   * 12 USD a day for 12 days and 5 USD for each of 48 t; the owner has the power and the building.
   */
  @Test
  void aTenantPaysRentOutOfTheMarginOfItsLine() {
    Figures.of(priced().with("money.rent", "{line: stalk_line, fixed: 12 USD/d, fed: 5 USD/t}"))
        .give("money.rent", 144 + 240)
        .give("money.tenant.margin", 9_526 - 384)
        .give("money.owner.margin", 33_370 - 9_526 + 384)
        .give("money.margin", 33_370);
  }

  /** Both lines make tow: 28.8 t and 24 t, in 105 full sacks. */
  @Test
  void whatTwoLinesMakeIsSharedByMass() {
    Figures.of(priced().with("lines.cotton_line.steps.saw.to", "tow"))
        .give("money.stalk_line.revenue", 28.8 * 400 + 19.2 * 100)
        .give("money.cotton_line.revenue", 24 * 400)
        .give("money.packages", 105 * 2)
        .give("money.stalk_line.packages", 210 * 28.8 / 52.8)
        .give("money.cotton_line.packages", 210 * 24 / 52.8);
  }

  /**
   * One load, once both campaigns are over: nothing was fed, so each of the two lines of the crop
   * pays half.
   */
  @Test
  void aCropThatNobodyFedIsPaidByItsLinesInEqualParts() {
    Figures.of(
            priced()
                .with("lines.cotton_line.crop", "stalk")
                .with("yard.on_hand.stalk", "0 bales")
                .with("deliveries.stalk.loads.from", "2027-03-10")
                .with("deliveries.stalk.loads.to", "2027-03-11"))
        .give("mass.stalk.fed", 0)
        .give("money.crop_cost", 250)
        .give("money.stalk_line.crop_cost", 125)
        .give("money.cotton_line.crop_cost", 125);
  }
}
