package hurdline.study.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.ChooseAnswer;
import hurdline.answer.SimulatedBlock;
import hurdline.measure.Measure;
import hurdline.plant.InputDraws;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.PlantFile;
import hurdline.simulation.TestPlant;
import hurdline.statistics.ScreeningYears;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.replicate.IndifferenceZone;
import hurdline.study.replicate.ReplicationRange;
import hurdline.study.replicate.RunSettings;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Each year of a choosing takes a fresh row of draws, the same for all plans.
 *
 * <p>The plant is worked out by hand: for two days of 8 h it feeds at the drawn rate, up to the
 * choice's rate where that is set.
 */
class ChooseDrawsTest {
  private static final String RATE = "lines.stalk_line.steps.feeder.rate";
  private static final String FED = Measure.MASS_FED.of("stalk");
  private static final int LOOKS = 320;

  /** Two plans that differ in nothing that is fed by. */
  private static TestPlant plant() {
    return TestPlant.oneLine()
        .shift("2027-01-01", "2027-01-02", "06:00", "14:00")
        .says("resources", "{loader: {count: 1}}")
        .says("choices", "{loader: {key: resources.loader.count, values: [1, 2]}}");
  }

  private static InputDraws rates(int rows) {
    return new InputDraws(
        "draws.csv",
        List.of(RATE),
        IntStream.rangeClosed(1, rows)
            .mapToObj(row -> List.of((1.9 + row / 1000.0) + " t/h"))
            .toList());
  }

  private static RunSettings effort(Optional<InputDraws> draws) {
    return new RunSettings(6, Optional.empty(), 1, 2, Optional.empty(), draws);
  }

  private static Choose choose(TestPlant plant, Optional<InputDraws> draws, boolean eachGap) {
    PlantFile file = plant.file();
    PlantOrigin source =
        new PlantOrigin(file.variants(), "test.yaml", file.contentHash(), "0", List.of());
    IndifferenceZone zone = new IndifferenceZone(FED, 1, false, FED + ":1t");
    return new Choose(
        source,
        PlantChanges.base(),
        file.choices(),
        new ChooseAsk(List.of(), zone, false, List.of(), List.of(), eachGap, 0, false),
        effort(draws));
  }

  private static SimulatedBlock block(TestPlant plant, InputDraws draws, int from, int to) {
    PlantFile file = plant.file();
    PlantOrigin source =
        new PlantOrigin(file.variants(), "test.yaml", file.contentHash(), "0", List.of());
    PlanRecipe recipe = choose(plant, Optional.of(draws), false).recipe();
    PlanBlock block =
        new PlanBlock(0, 0, List.of(0, 1), new ReplicationRange(from, to), false, false);
    return PlanSimulator.of(source, file.choices(), recipe)
        .block(block, () -> {}, () -> false)
        .orElseThrow();
  }

  /** 16 h at 1.9 + k/1000 t/h in year k. */
  @Test
  void eachYearTakesARowOfItsOwnTheSameForAllPlans() {
    SimulatedBlock block = block(plant(), rates(400), 3, 8);
    for (SimulatedBlock.Plan plan : block.plans()) {
      double[] fedT = plan.measured().get(0).values();
      for (int at = 0; at < fedT.length; at++) {
        assertThat(fedT[at]).isCloseTo(16 * (1.9 + (3 + at) / 1000.0), within(1e-6));
      }
    }
  }

  /** What a choice sets is not drawn: the draws are of what it replaces. */
  @Test
  void whatAChoiceSetsIsNotDrawn() {
    TestPlant faster = plant().says("choices", "{rate: {key: %s, values: [1.7 t/h, 2 t/h]}}", RATE);
    SimulatedBlock block = block(faster, rates(400), 1, 4);
    assertThat(block.plans().get(0).measured().get(0).values())
        .containsExactly(new double[] {16 * 1.7, 16 * 1.7, 16 * 1.7}, within(1e-6));
  }

  @Test
  void aFileOfFewRowsAllowsFewRoundsAndNoneTwice() {
    ScreeningYears usual = ScreeningYears.usual();
    ChooseInputs of200 =
        new ChooseInputs(plant().plant(), effort(Optional.of(rates(200))), false, usual);
    assertThat(of200.years().orElseThrow().rounds()).containsExactly(10, 20, 40, 80);
    assertThat(of200.lastYears(6).from()).isEqualTo(161);
    assertThat(of200.lastYears(6).to() - 1).isLessThanOrEqualTo(200);
    ChooseInputs of30 =
        new ChooseInputs(plant().plant(), effort(Optional.of(rates(30))), false, usual);
    assertThat(of30.years().orElseThrow().rounds()).containsExactly(10);
  }

  @Test
  void rowsThatAreTooFewForOneRoundAreRefused() {
    assertThatThrownBy(() -> choose(plant(), Optional.of(rates(25)), false))
        .isInstanceOf(ProblemsException.class)
        .satisfies(
            e ->
                assertThat(((ProblemsException) e).lines())
                    .containsExactly(
                        "test.yaml: draws.csv has 25 rows, and each simulated year takes one of its"
                            + " own; expected 26 rows or more"));
    assertThatThrownBy(() -> choose(plant(), Optional.of(rates(200)), true))
        .hasMessageContaining("expected 346 rows or more"); // all against all takes 320 more
  }

  @Test
  void ofADoubtEveryYearHasItsRow() {
    TestPlant doubted = plant().says("doubt", "[{value: %s, give_or_take: 20 %%}]", RATE);
    ScreeningYears usual = ScreeningYears.usual();
    ChooseInputs inputs = new ChooseInputs(doubted.plant(), effort(Optional.empty()), true, usual);
    assertThat(inputs.years()).contains(usual);
    List<List<String>> rows = inputs.draws().orElseThrow().rows();
    assertThat(rows.size()).isGreaterThanOrEqualTo(inputs.lastYears(6).to() - 1);
    assertThat(new HashSet<>(rows).size()).isGreaterThan(rows.size() * 9 / 10);
  }

  @Test
  void withoutDrawsYearsAreNumberedAsEver() {
    ScreeningYears usual = ScreeningYears.usual();
    ChooseInputs inputs = new ChooseInputs(plant().plant(), effort(Optional.empty()), false, usual);
    assertThat(inputs.draws()).isEmpty();
    assertThat(inputs.lastYears(6).from()).isEqualTo(1 + 640 + LOOKS);
  }

  @Test
  void theAnswerSaysWhereTheDrawsAreFromAndKeptBlocksAreOfThem() {
    Choose drawn = choose(plant(), Optional.of(rates(200)), false);
    Choose others = choose(plant(), Optional.of(rates(199)), false);
    assertThat(drawn.settings()).isNotEqualTo(others.settings());
    assertThat(choose(plant(), Optional.empty(), false).settings())
        .noneMatch(line -> line.startsWith("draws"));
    BlockStore none =
        new BlockStore() {
          @Override
          public Optional<SimulatedBlock> kept(int stage, int number) {
            return Optional.empty();
          }

          @Override
          public void keep(SimulatedBlock block) {}
        };
    ChooseProgress silent =
        new ChooseProgress() {
          @Override
          public void done(int done, int of) {}

          @Override
          public void stage(Stage said) {}
        };
    ChooseAnswer answer = drawn.simulate(none, silent, () -> false, () -> false).orElseThrow();
    assertThat(answer.inputs()).isEqualTo("draws.csv");
    assertThat(answer.terms().rounds()).hasSize(4);
    assertThat(answer.chosen().get(0).mean())
        .isCloseTo(16 * (1.9 + 163.5 / 1000), within(1e-6)); // years 161 to 166
  }
}
