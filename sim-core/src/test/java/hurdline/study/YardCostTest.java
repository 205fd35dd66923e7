package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.RunAnswer;
import hurdline.answer.Samples;
import hurdline.answer.YardAnswer;
import hurdline.answer.YardSizeRow;
import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.PlantFile;
import hurdline.simulation.TestPlant;
import hurdline.statistics.PairedDifference;
import hurdline.study.run.Run;
import hurdline.study.yard.YardAsk;
import hurdline.study.yard.YardSizing;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Which place of a yard grows, and what each size costs. */
class YardCostTest {
  private static final int SEASONS = 12;
  private static final String STACKED = "stack: {long: 4, wide: 2, high: 5, lane: 6 m}";
  private static final String GROUND_THEN_ROOF =
      "{ground: {holds: 200 bales, loss: 30 %/month, "
          + STACKED
          + ", cost: 14 USD/m2}, roof: {holds: 100 bales}}";

  /**
   * A field of some 420 bales, hauled by two trucks to two hands; the line works 2 bales an hour
   * from the fifth day on.
   */
  private static String yard(String places) {
    return TestPlant.oneLine()
        .days("2027-03-01", "2027-03-14")
        .says("components", "[fiber, lint]")
        .says(
            "crops",
            """
            stalk: {bale: {mass: 500 kg, long: 2 m, wide: 1 m, high: 70 cm}, composition: {fiber: 100 %}}
            seed_cotton: {bale: {mass: 500 kg, long: 2 m, wide: 1 m, high: 70 cm}, composition: {lint: 100 %}}
            """)
        .says("products", "{tow: {price: 300 USD/t}}")
        .feeds("1 t/h")
        .says("season", "[{line: stalk_line, from: 2027-03-05, to: 2027-03-14, shifts: [always]}]")
        .says("yard", "{places: %s, field_loss: 40 %%/month}", places)
        .says(
            "deliveries",
            """
            stalk:
              fields: {bench: {area: 30 ha, yield: {normal: {mean: 7 t/ha, sd: 1 t/ha}}, ready: 2027-03-02, baling: 150 bales/d}}
              hours: {from: "07:00", to: "18:00"}
              hands: 2
              waiting_cost: 5 USD/h
              trucks: {count: 2, bales: 20, drive: {exponential: {mean: 40 min}}}
            """)
        .says("money", "{currency: USD, wage: 26 USD/h, crop_prices: {stalk: 100 USD/t}}")
        .text();
  }

  private static PlantOrigin source(String yaml) {
    PlantFile file = PlantFile.of("one.yaml", yaml);
    return new PlantOrigin(file.variants(), "one.yaml", file.contentHash(), "0", List.of());
  }

  private static YardAnswer sized(String yaml, int seasons, String... place) {
    YardAsk ask =
        new YardAsk(
            Optional.empty(),
            Arrays.stream(place).findFirst(),
            0.2,
            OptionalDouble.empty(),
            0,
            false);
    return new YardSizing(source(yaml), PlantChanges.base(), Studied.effort(seasons, 2), ask)
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  private static double[] series(RunAnswer answer, String measure) {
    Samples samples = answer.samples();
    int at = samples.measures().stream().map(Samples.Measured::measure).toList().indexOf(measure);
    return Arrays.stream(samples.values()).mapToDouble(of -> of[at]).toArray();
  }

  /** A run of the plant with the ground at another size, by a call of its own. */
  private static RunAnswer run(String yaml, double groundHolds) {
    String path = "yard.places.ground.holds";
    Change change = new Change.Value(path, (int) groundHolds + " bales");
    PlantChanges chosen = new PlantChanges(PlantChanges.baseName(), List.of(), List.of(change));
    return new Run(source(yaml), chosen, Studied.effort(SEASONS, 2))
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  /** Ten years without interest: a tenth of the price of each stack's 14 m by 8 m. */
  private static double groundPerYear(double bales) {
    return Math.ceil(bales / 40) * 112 * 14 / 10;
  }

  @Test
  void whatASizeCostsAgreesWithTheMarginsOfRuns() {
    String yaml = yard(GROUND_THEN_ROOF);
    YardAnswer answer = sized(yaml, SEASONS);
    YardSizeRow cheapest = answer.cheapest().orElseThrow();
    YardSizeRow other = answer.capacity().get(answer.capacity().size() - 1);
    assertThat(other.bales()).as("two sizes").isNotEqualTo(cheapest.bales());
    double[] ofCheapest = costs(yaml, cheapest.bales() - 100);
    double[] ofOther = costs(yaml, other.bales() - 100);
    PairedDifference pair = PairedDifference.of(ofCheapest, ofOther, answer.capacity().size() - 1);
    YardSizeRow.Cost.Above above = other.cost().above();
    assertThat(above.money()).isCloseTo(pair.difference(), within(1e-6)).isPositive();
    assertThat(above.low()).isCloseTo(pair.joint().low(), within(1e-6));
    assertThat(above.high()).isCloseTo(pair.joint().high(), within(1e-6));
    assertThat(above.significant()).isEqualTo(pair.significant());
  }

  private static double[] costs(String yaml, double groundHolds) {
    RunAnswer run = run(yaml, groundHolds);
    double[] margins = series(run, Measure.MONEY_MARGIN.of());
    double[] waited = series(run, Measure.TRUCKS_WAITED_FOR_ROOM.of("stalk"));
    double[] costs = new double[margins.length];
    for (int season = 0; season < costs.length; season++) {
      costs[season] = groundPerYear(groundHolds) + 5 * 24 * waited[season] - margins[season];
    }
    return costs;
  }

  /**
   * A small yard draws the trucking out over more days, and their hands are paid: that is a part of
   * what it costs.
   */
  @Test
  void wagesOfReceivingDifferBySizeAndAreInTheCost() {
    String yaml = yard(GROUND_THEN_ROOF);
    YardAnswer answer = sized(yaml, SEASONS);
    YardAnswer unpaid = sized(yaml.replace("wage: 26 USD/h", "wage: 0 USD/h"), SEASONS);
    YardSizeRow least = answer.capacity().get(0);
    YardSizeRow most = answer.capacity().get(answer.capacity().size() - 1);
    double wages = least.cost().receiving() - most.cost().receiving();
    assertThat(wages)
        .as("two hands for eleven hours on another day or more")
        .isGreaterThan(26 * 2 * 11);
    assertThat(least.cost().marginBelow() - unpaid.capacity().get(0).cost().marginBelow())
        .as("the largest size is as good as no limit")
        .isCloseTo(wages, within(1e-6));
    for (YardSizeRow row : answer.capacity()) {
      YardSizeRow.Cost cost = row.cost();
      assertThat(cost.perYear())
          .isCloseTo(cost.ground() + cost.waiting() + cost.marginBelow(), within(1e-6));
      assertThat(cost.waiting()).isCloseTo(5 * 24 * row.waitingD(), within(1e-6));
    }
  }

  @Test
  void theLastPlaceWhoseGroundHasAPriceGrowsAndGroundBalesAndCostAgree() {
    YardAnswer answer = sized(yard(GROUND_THEN_ROOF), 2);
    assertThat(answer.asked().place()).isEqualTo("ground");
    assertThat(answer.asked().others()).isEqualTo(100);
    for (YardSizeRow row : answer.capacity()) {
      double holds = row.bales() - 100;
      assertThat(row.areaM2()).isCloseTo(Math.ceil(holds / 40) * 112, within(1e-9));
      assertThat(row.cost().ground()).isCloseTo(groundPerYear(holds), within(1e-9));
    }
    assertThat(answer.grounds())
        .singleElement()
        .satisfies(
            plan -> {
              assertThat(plan.place()).isEqualTo("ground");
              assertThat(plan.bales()).isEqualTo((int) answer.byRule().bales() - 100);
            });
  }

  @Test
  void thePlaceThatIsAskedForGrows() {
    YardAnswer answer = sized(yard(GROUND_THEN_ROOF), 2, "roof");
    assertThat(answer.asked().place()).isEqualTo("roof");
    assertThat(answer.capacity())
        .allSatisfy(row -> assertThat(row.cost().ground()).isEqualTo(groundPerYear(200)));
    assertThat(answer.capacity().get(0).bales()).isEqualTo(200);
  }

  @Test
  void withoutAPriceOfGroundTheLastPlaceGrows() {
    assertThat(
            sized(yard("{shed: {holds: 200 bales}, row: {holds: 100 bales}}"), 1).asked().place())
        .isEqualTo("row");
  }

  @Test
  void aPlaceThatDoesNotTakeTheCropIsRefused() {
    assertThatThrownBy(() -> sized(yard(GROUND_THEN_ROOF), 1, "rof"))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining(
            "one.yaml: \"rof\" is no place that takes \"stalk\"; expected a place, perhaps \"roof\"");
  }

  /**
   * The shed takes stalks alone, so the 40 bales of cotton must go where the place that grows is.
   */
  @Test
  void thePlaceThatGrowsAlwaysHoldsWhatIsOnHandOnTheFirstDay() {
    String yaml =
        yard("{shed: {holds: 300 bales, crops: [stalk]}, ground: {holds: 200 bales, "
                + STACKED
                + ", cost: 14 USD/m2}}")
            .replace("yard: {", "yard: {on_hand: {stalk: 100 bales, seed_cotton: 40 bales}, ");
    YardAnswer answer = sized(yaml, 2);
    assertThat(answer.asked().place()).isEqualTo("ground");
    assertThat(answer.capacity().get(0).bales()).isEqualTo(340);
  }
}
