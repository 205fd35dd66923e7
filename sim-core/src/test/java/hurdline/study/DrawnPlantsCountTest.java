package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.InputUncertainty.Holds;
import hurdline.answer.InputUncertainty.Plants;
import hurdline.plant.InputDraws;
import hurdline.simulation.TestPlant;
import hurdline.study.compare.Compare;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.Run;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** In how many plants of the draws an option pays or a line is done, by hand and without chance. */
class DrawnPlantsCountTest {
  private static final int ROWS = 40;

  private static RunSettings effort(String key, String unit, IntToDoubleFunction value, int years) {
    InputDraws draws =
        new InputDraws(
            "draws.csv",
            List.of(key),
            IntStream.range(0, ROWS)
                .mapToObj(
                    i ->
                        List.of(
                            String.format(Locale.ROOT, "%.3f %s", value.applyAsDouble(i), unit)))
                .toList());
    return new RunSettings(years, Optional.empty(), 1, 1, Optional.empty()).with(draws);
  }

  private static PlantChanges changes(TestPlant plant) {
    return new PlantChanges(PlantChanges.baseName(), List.of(), plant.changes());
  }

  /**
   * A feeder of 2.5 in place of 2 t/h makes 60 t more in five days; its 60,000 USD over ten years
   * without interest are 6,000 a year, so it pays from 100 USD/t on: in 20 of 40 prices from 80.5
   * to 119.5.
   */
  @Test
  void anOptionPaysInThePlantsInWhichItEarnsMoreThanItsYearlyCost() {
    TestPlant plant =
        TestPlant.oneLine()
            .says(
                "calendar",
                "{from: 2027-01-01, to: 2027-01-05, repeats: yearly, shifts: {always: {from: \"00:00\", to: \"24:00\"}}}")
            .says(
                "season",
                "[{line: stalk_line, from: 2027-01-01, to: 2027-01-05, shifts: [always]}]")
            .says("products", "{tow: {price: 100 USD/t}}")
            .says("money", "{currency: USD}")
            .says(
                "options",
                "{faster: {cost: 60000 USD, life: 10 yr, with: {lines: {stalk_line: {steps: {feeder: {rate: 2.5 t/h}}}}}}}");
    for (int years : new int[] {ROWS, 2 * ROWS}) {
      Plants pays =
          new Compare(
                  Studied.source(plant),
                  changes(plant),
                  Studied.ask("faster"),
                  effort("products.tow.price", "USD/t", i -> 80.5 + i, years))
              .simulate((done, of) -> {}, () -> false)
              .orElseThrow()
              .inputs()
              .plants()
              .get(0);
      assertThat(pays.holds()).isEqualTo(Holds.PAYS);
      assertThat(pays.option()).isEqualTo("faster");
      assertThat(pays.costPerYr()).isCloseTo(6_000, within(1e-9));
      assertThat(pays.plants()).isEqualTo(ROWS);
      assertThat(pays.in()).isEqualTo(20);
      assertThat(pays.years()).isEqualTo(years / ROWS);
    }
  }

  /** 240 t in 120 h want 2 t/h, which a quarter of the drawn rates has. */
  @Test
  void aLineIsDoneInThePlantsThatAreFastEnough() {
    TestPlant plant =
        TestPlant.oneLine().days(5).feeds("2.2 t/h").with("yard.on_hand.stalk", "480 bales");
    Plants done =
        new Run(
                Studied.source(plant),
                changes(plant),
                effort(
                    "lines.stalk_line.steps.feeder.rate",
                    "t/h",
                    i -> i < 30 ? 1.6 + 0.01 * i : 2.2 + 0.01 * (i - 30),
                    ROWS))
            .simulate((finished, of) -> {}, () -> false)
            .orElseThrow()
            .inputs()
            .plants()
            .get(0);
    assertThat(done.holds()).isEqualTo(Holds.DONE);
    assertThat(done.line()).isEqualTo("stalk_line");
    assertThat(done.in()).isEqualTo(10);
    assertThat(done.plants()).isEqualTo(ROWS);
    assertThat(done.doneGiven()).isEqualTo(ROWS);
  }
}
