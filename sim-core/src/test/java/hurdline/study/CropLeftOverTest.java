package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.SeasonAnswer;
import hurdline.measure.Measure;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.season.Season;
import hurdline.study.season.SeasonAsk;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A plan that earns more and leaves crop over is not the best without a word. */
class CropLeftOverTest {
  /**
   * 60 bales of 500 kg. The day shift feeds 16 t, 32 bales: 1,600 USD of tow less 800 of crop and 5
   * · 8 · 10 of wages are 400. The late shift of the next day feeds the other 14 t with ten hands:
   * 1,400 less 700 less 800 is a loss of 100.
   */
  private static final String PLANT =
      """
      hurdline: 1
      plant: Two shifts of unlike cost
      calendar:
        from: 2027-03-01
        to: 2027-03-02
        shifts: {day: {from: "06:00", to: "14:00"}, late: {from: "14:00", to: "22:00"}}
      components: [fiber, lint]
      crops:
        stalk: {bale: {mass: 500 kg}, composition: {fiber: 100 %}}
        seed_cotton: {bale: {mass: 500 kg}, composition: {lint: 100 %}}
      machines: {feeder: {kind: bale-feeder}, gin_feeder: {kind: bale-feeder}}
      products: {tow: {price: 100 USD/t}, lint: {}}
      lines:
        stalk_line: {crop: stalk, feed: feeder, steps: {feeder: {rate: 2 t/h, to: tow}}}
        cotton_line: {crop: seed_cotton, feed: gin_feeder, steps: {gin_feeder: {rate: 2 t/h, to: lint}}}
      season:
        - {line: stalk_line, from: 2027-03-01, to: 2027-03-01, shifts: [day]}
      crews: {stalk_line: {day: 5, late: 10}}
      yard: {on_hand: {stalk: 60 bales}, places: {open: {holds: 100 bales}}}
      money: {currency: USD, wage: 10 USD/h, crop_prices: {stalk: 50 USD/t}}
      plans:
        both_days:
          with:
            season:
              - {line: stalk_line, from: 2027-03-01, to: 2027-03-01, shifts: [day]}
              - {line: stalk_line, from: 2027-03-02, to: 2027-03-02, shifts: [late]}
      """;

  private static SeasonAnswer simulated(String yaml) {
    PlantFile file = PlantFile.of("two.yaml", yaml);
    PlantOrigin source =
        new PlantOrigin(file.variants(), "two.yaml", file.contentHash(), "0", List.of());
    return new Season(
            List.of(source),
            new SeasonAsk(List.of(), false),
            PlantChanges.base(),
            (of, changes) -> List.of(),
            Studied.effort(2, 1))
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  /**
   * The 28 bales that base leaves over would add 28 · 400 / 32 = 350 USD at its own margin per
   * bale.
   */
  @Test
  void theBestMarginIsNotTheBestPlanWhereItLeavesOverMoreThanItGains() {
    SeasonAnswer answer = simulated(PLANT);
    assertThat(answer.mean("base", Measure.MONEY_MARGIN.of())).isCloseTo(400, within(1e-6));
    assertThat(answer.mean("both_days", Measure.MONEY_MARGIN.of())).isCloseTo(300, within(1e-6));
    assertThat(answer.mean("base", Measure.MONEY_MARGIN_LESS_FORGONE.of()))
        .isCloseTo(50, within(1e-6));
    assertThat(answer.mean("both_days", Measure.MONEY_MARGIN_LESS_FORGONE.of()))
        .isCloseTo(300, within(1e-6));
    assertThat(answer.verdict().margin()).isEqualTo("base");
    assertThat(answer.verdict().lessForgone()).isEqualTo("both_days");
  }

  @Test
  void withoutCropLeftOverTheBestMarginIsTheBestPlan() {
    SeasonAnswer answer = simulated(PLANT.replace("stalk: 60 bales", "stalk: 30 bales"));
    assertThat(answer.verdict().margin()).isEqualTo("base");
    assertThat(answer.verdict().lessForgone()).isEqualTo("base");
  }

  /** A line that loses money spares a sum by what it leaves over; that is no gain of the plan. */
  @Test
  void aLossSparedIsNotAddedToTheMargin() {
    SeasonAnswer answer = simulated(PLANT.replace("price: 100 USD/t", "price: 60 USD/t"));
    double margin = answer.mean("base", Measure.MONEY_MARGIN.of());
    assertThat(margin).isNegative();
    assertThat(answer.mean("base", Measure.MONEY_MARGIN_LESS_FORGONE.of())).isEqualTo(margin);
  }

  @Test
  void cropThatNoLineOfThePlanWorksIsNotFinishedAndItsWorthIsNotKnown() {
    SeasonAnswer answer =
        simulated(PLANT.replace("{stalk: 60 bales}", "{stalk: 30 bales, seed_cotton: 3 bales}"));
    assertThat(answer.mean("base", Measure.SEASON_LINE_FINISHED.of("stalk_line"))).isEqualTo(1);
    assertThat(answer.mean("base", Measure.SEASON_FINISHED.of())).isZero();
    assertThat(
            answer
                .find("base", Measure.MONEY_MARGIN_LESS_FORGONE.of())
                .orElseThrow()
                .replications())
        .isZero();
    assertThat(answer.verdict().lessForgone()).isEmpty();
  }

  /**
   * What the first line leaves over the second works off on the next day: the crop is finished, and
   * nothing is forgone.
   */
  @Test
  void aCropThatSeveralLinesWorkIsFinishedByTheLastOfThem() {
    String text =
        PLANT
            .replace(
                "cotton_line: {crop: seed_cotton, feed: gin_feeder,",
                "cotton_line: {crop: stalk, feed: feeder,")
            .replace("gin_feeder: {rate: 2 t/h, to: lint}", "feeder: {rate: 2 t/h, to: tow}")
            .replace(
                "{line: stalk_line, from: 2027-03-02, to: 2027-03-02",
                "{line: cotton_line, from: 2027-03-02, to: 2027-03-02");
    SeasonAnswer answer = simulated(text);
    assertThat(answer.mean("both_days", Measure.SEASON_LEFT_OVER.of("stalk_line"))).isEqualTo(28);
    assertThat(answer.mean("both_days", Measure.SEASON_LEFT_OVER.of("cotton_line"))).isZero();
    assertThat(answer.mean("both_days", Measure.SEASON_FINISHED.of())).isEqualTo(1);
    assertThat(answer.mean("both_days", Measure.MONEY_MARGIN_LESS_FORGONE.of()))
        .isEqualTo(answer.mean("both_days", Measure.MONEY_MARGIN.of()));
  }
}
