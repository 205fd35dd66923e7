package hurdline.study.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.PeakRow;
import hurdline.answer.SafetyFact;
import hurdline.answer.Samples;
import hurdline.answer.SummaryRow;
import hurdline.answer.YardAnswer;
import hurdline.answer.YardFact;
import hurdline.answer.YardSizeRow;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.PlantFile;
import hurdline.simulation.TestPlant;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.replicate.Precision;
import hurdline.study.replicate.RunSettings;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;

class YardSizingTest {

  /**
   * Loads of 10 come in a window of some days; the line takes 8 bales an hour by day and night, or
   * nothing.
   */
  private static String yard(String every, String feeds, String places) {
    return TestPlant.oneLine()
        .days("2027-03-01", "2027-03-09")
        .feeds("4 t/h")
        .says("season", "[{line: stalk_line, from: %s, to: 2027-03-09, shifts: [always]}]", feeds)
        .says("yard", "{places: %s}", places)
        .says(
            "deliveries",
            "{stalk: {loads: {every: %s, bales: 10, from: 2027-03-01, to: 2027-03-05}}}",
            every)
        .says("money", "{currency: USD, crop_prices: {stalk: 100 USD/t}}")
        .text();
  }

  private static YardAnswer simulated(String yaml, RunSettings effort, double overflow) {
    return simulated(yaml, effort, YardAsk.of(overflow));
  }

  private static YardAnswer simulated(String yaml, RunSettings effort, YardAsk ask) {
    PlantFile file = PlantFile.of("one.yaml", yaml);
    PlantOrigin source =
        new PlantOrigin(file.variants(), "one.yaml", file.contentHash(), "0", List.of());
    return new YardSizing(source, PlantChanges.base(), effort, ask)
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  /**
   * Fill and drain: the 194th and last load comes at 7,178 min; from 37 min on a bale is used up in
   * 7.5 min, so 952 are gone by then, one is being fed and two are on the table: 1,940 − 955 lie
   * there, and never more.
   */
  @Test
  void aKnownPlantNeedsTheYardThatIsWorkedOutByHand() {
    YardAnswer answer =
        simulated(
            yard("37 min", "2027-03-01", "{row: {holds: 900 bales}}"), Studied.effort(3, 1), 0.05);
    assertThat(answer.withoutLimit().bales()).isEqualTo(985);
    assertThat(answer.byRule().bales()).isEqualTo(985);
    assertThat(answer.at(985).orElseThrow().chance()).isZero();
    assertThat(answer.at(984).orElseThrow().chance()).isEqualTo(1);
    assertThat(answer.at(900).orElseThrow().chance()).isEqualTo(1);
    assertThat(answer.peaks()).extracting(PeakRow::value).containsOnly(985.0);
    assertThat(answer.byRule().high95()).as("three seasons give no limits").isNaN();
  }

  /** By one definition, wherever it stands: 5 and 19 of 20 of the peaks, and half of them. */
  @Test
  void aPercentileOfThePeakIsTheSameInEveryTable() {
    String yaml = yard("{exponential: {mean: 3 h}}", "2027-03-09", "{row: {holds: 500 bales}}");
    YardAnswer answer = simulated(yaml, Studied.effort(12, 2), 0.05);
    SummaryRow peak = answer.find(YardAnswer.noLimit(), "yard.stalk.peak").orElseThrow();
    assertThat(answer.peaks())
        .filteredOn(row -> List.of("p05", "p50", "p95").contains(row.quantile()))
        .extracting(PeakRow::value)
        .containsExactly(peak.p05(), peak.p50(), peak.p95());
    assertThat(peak.p95()).isNotEqualTo(answer.withoutLimit().bales());
  }

  /**
   * With nothing taken away the yard ends with 10 bales times a Poisson number of loads, mean 120 h
   * / 3 h.
   */
  @Test
  void poissonLoadsNeedWhatTheorySays() {
    String yaml = yard("{exponential: {mean: 3 h}}", "2027-03-09", "{row: {holds: 500 bales}}");
    PoissonDistribution loads = PoissonDistribution.of(40);
    int covered = 0;
    int asked = 0;
    for (int seed = 1; seed <= 5; seed++) {
      RunSettings effort = new RunSettings(100, Optional.empty(), seed, 2, Optional.empty());
      YardAnswer answer = simulated(yaml, effort, 0.1);
      for (PeakRow row : answer.peaks()) {
        double quantile = 10 * loads.inverseCumulativeProbability(percent(row) / 100.0);
        asked++;
        covered += row.low95() <= quantile && quantile <= row.high95() ? 1 : 0;
      }
      double chance = loads.survivalProbability(50);
      YardSizeRow file = answer.at(500).orElseThrow();
      assertThat(chance)
          .as("false alarm below 1 in 10,000 a seed")
          .isBetween(
              file.chance() - 4 * Math.sqrt(chance / 100),
              file.chance() + 4 * Math.sqrt(chance / 100));
      assertThat(answer.byRule().bales()).isEqualTo(answer.withoutLimit().bales());
    }
    assertThat(asked).isEqualTo(95);
    assertThat(covered)
        .as(
            "95 %% each; they hang together within a season's set; below 75 of 95 has not been seen in 200 other sets of seeds")
        .isGreaterThan(74);
  }

  private static int percent(PeakRow row) {
    return Integer.parseInt(row.quantile().substring(1));
  }

  @Test
  void theDirectCountAgreesWithWhatWasWantedWithoutLimit() {
    YardAnswer answer = simulated(trucks(), Studied.effort(20, 2), 0.2);
    List<SummaryRowValue> wanted = wanted(answer);
    assertThat(wanted).hasSize(20);
    for (YardSizeRow row : answer.capacity()) {
      long over = wanted.stream().filter(w -> w.value() > row.bales()).count();
      assertThat(row.chance()).as("at " + row.bales()).isCloseTo(over / 20.0, within(1e-12));
    }
    assertThat(answer.byRule().bales())
        .as("what is on the road is promised room")
        .isGreaterThanOrEqualTo(answer.withoutLimit().bales());
    assertThat(answer.capacity()).hasSizeGreaterThan(8);
  }

  private record SummaryRowValue(double value) {}

  private static List<SummaryRowValue> wanted(YardAnswer answer) {
    var samples = answer.samples().of().get(1);
    int at =
        samples.measures().stream()
            .map(m -> m.measure())
            .toList()
            .indexOf("yard.stalk.room_needed");
    return java.util.Arrays.stream(samples.values())
        .map(of -> new SummaryRowValue(of[at]))
        .toList();
  }

  private static String trucks() {
    return yard("20 h", "2027-03-08", "{row: {holds: 300 bales, loss: 2 %/month}}")
        .replace(
            "stalk: {loads",
            "stalk: {fields: {bench: {area: 30 ha, yield: {normal: {mean: 7 t/ha, sd: 1 t/ha}}, ready: 2027-03-03,"
                + " baling: 200 bales/d}}, hours: {from: \"07:00\", to: \"18:00\"}, trucks: {count: 2, bales: 20,"
                + " drive: {exponential: {mean: 40 min}}}, loads");
  }

  @Test
  void theCurveFallsInChanceAndTheCheapestIsTheLeastMean() {
    YardAnswer answer = simulated(trucks(), Studied.effort(20, 2), 0.2);
    for (int at = 1; at < answer.capacity().size(); at++) {
      assertThat(answer.capacity().get(at).chance())
          .isLessThanOrEqualTo(answer.capacity().get(at - 1).chance());
    }
    double least =
        answer.capacity().stream().mapToDouble(row -> row.cost().perYear()).min().orElseThrow();
    assertThat(answer.cheapest().orElseThrow().cost().perYear()).isEqualTo(least);
    YardSizeRow last = answer.capacity().get(answer.capacity().size() - 1);
    assertThat(last.waitingD()).isZero();
    assertThat(answer.capacity().get(0).waitingD()).isGreaterThan(5);
    assertThat(last.cost().perYear()).as("nothing waits, as in a yard without limit").isZero();
  }

  @Test
  void aStoppedSizingKeepsWhatIsWhole() {
    PlantFile file = PlantFile.of("one.yaml", trucks());
    PlantOrigin source =
        new PlantOrigin(file.variants(), "one.yaml", file.contentHash(), "0", List.of());
    AtomicInteger done = new AtomicInteger();
    YardAnswer answer =
        new YardSizing(source, PlantChanges.base(), Studied.effort(5, 1), YardAsk.of(0.2))
            .simulate((simulations, of) -> done.set(simulations), () -> done.get() >= 12)
            .orElseThrow();
    assertThat(answer.header().stopped()).isTrue();
    assertThat(answer.header().replications()).isEqualTo(5);
    assertThat(answer.capacity()).as("the file's own size").hasSize(1);
    assertThat(answer.byRule().bales()).isNaN();
  }

  /**
   * Without chance: 30 ha of 7 t/ha are 420 bales, baled 200 a day from the third of March; the
   * line begins on the eighth and works 8 bales an hour for two days, 384 bales, the loads add
   * nothing here.
   */
  @Test
  void theAcresThatCanBeFinishedAreThoseThatTheLineCanWork() {
    String yaml =
        trucks()
            .replace("yield: {normal: {mean: 7 t/ha, sd: 1 t/ha}}", "yield: 7 t/ha")
            .replace("{exponential: {mean: 40 min}}", "40 min")
            .replaceAll(", loads: \\{.*\\}\\}\\}", "}}")
            .replace("holds: 300 bales, loss: 2 %/month", "holds: 2000 bales");
    YardAnswer answer =
        simulated(
            yaml,
            Studied.effort(2, 1),
            new YardAsk(Optional.empty(), Optional.empty(), 0.2, OptionalDouble.of(0.9), 0, false));
    double most = 384.0 / 420;
    assertThat(answer.land().times()).isBetween(most - 0.02, most);
    assertThat(answer.acresAt(answer.land().times()).orElseThrow().chance()).isEqualTo(1);
    assertThat(answer.acresAt(1).orElseThrow().chance()).isZero();
    assertThat(answer.acresAt(1).orElseThrow().acres()).isCloseTo(74.1316, within(1e-4));
    assertThat(answer.acresAt(1).orElseThrow().leftOver()).isBetween(420.0 - 384, 420.0 - 384 + 4);
    YardAnswer carried =
        simulated(
            yaml,
            Studied.effort(2, 1),
            new YardAsk(
                Optional.empty(), Optional.empty(), 0.2, OptionalDouble.of(0.9), 20, false));
    double more = (384.0 + 20) / 420;
    assertThat(carried.land().times()).isBetween(more - 0.02, more + 0.005);
    assertThat(carried.land().carryOver()).isEqualTo(20);
    assertThat(carried.acresAt(carried.land().times()).orElseThrow().leftOver())
        .isBetween(10.0, 20.0);
  }

  /**
   * What a season's fields bring is in proportion to their acres and the line works 384 bales, so
   * each season finishes up to 384 over its bales; the answer and its limits are three of these by
   * their order. Of 40 seasons four may be left over: the fifth least; the limits are the least and
   * the ninth, for P(B = 0) = 0.015 and P(B ≥ 9) = 0.015 where B is binomial (40, 0.1).
   */
  @Test
  void theIntervalOfTheAcresLiesBetweenTwoSeasons() {
    String yaml =
        trucks()
            .replace("{exponential: {mean: 40 min}}", "40 min")
            .replaceAll(", loads: \\{.*\\}\\}\\}", "}}")
            .replace("holds: 300 bales, loss: 2 %/month", "holds: 2000 bales");
    YardAnswer answer =
        simulated(
            yaml,
            Studied.effort(40, 2),
            new YardAsk(Optional.empty(), Optional.empty(), 0.2, OptionalDouble.of(0.9), 0, false));
    double[] fed = series(answer, "intake.stalk.fed");
    double[] left = series(answer, "season.stalk_line.left_over");
    double[] limits = new double[40];
    for (int season = 0; season < 40; season++) {
      limits[season] = 384 / (fed[season] + left[season]);
    }
    Arrays.sort(limits);
    assertThat(answer.land().times()).isCloseTo(limits[4], within(0.02));
    assertThat(answer.land().low95()).isCloseTo(limits[0], within(0.02));
    assertThat(answer.land().high95()).isCloseTo(limits[8], within(0.02));
    assertThat(limits[8] - limits[0])
        .as("so that the three could be significantly different")
        .isGreaterThan(0.05);
    assertThat(answer.acresAt(answer.land().low95()).orElseThrow().chance()).isEqualTo(1);
    assertThat(answer.acresAt(answer.land().high95()).orElseThrow().chance()).isLessThan(0.8);
  }

  private static double[] series(YardAnswer answer, String measure) {
    Samples samples = answer.samples().of().get(0);
    int at = samples.measures().stream().map(Samples.Measured::measure).toList().indexOf(measure);
    return Arrays.stream(samples.values()).mapToDouble(of -> of[at]).toArray();
  }

  /** With six seasons the least of them may well lie above the acres that nine of ten finish. */
  @Test
  void fewSeasonsGiveNoLowerLimitOfTheAcres() {
    YardAnswer answer =
        simulated(
            trucks(),
            Studied.effort(6, 2),
            new YardAsk(Optional.empty(), Optional.empty(), 0.2, OptionalDouble.of(0.9), 0, false));
    assertThat(answer.land().low95()).isNaN();
    assertThat(answer.land().high95()).isGreaterThan(answer.land().times());
    assertThat(answer.assumptions())
        .as("0.9 to the 36th power is 0.0225")
        .contains(new YardFact.Acres(6, 36, 0));
  }

  @Test
  void anAimIsForTheYardWithoutLimitAndAllSizesArePlayedAsOften() {
    Precision aim = new Precision("yard.stalk.peak", 0.03, true, "yard.stalk.peak:3%");
    YardAnswer answer =
        simulated(trucks(), new RunSettings(10, Optional.of(aim), 1, 2, Optional.empty()), 0.2);
    SummaryRow peak = answer.find(YardAnswer.noLimit(), "yard.stalk.peak").orElseThrow();
    assertThat((peak.high95() - peak.low95()) / 2).isLessThanOrEqualTo(0.03 * peak.mean());
    assertThat(answer.header().replications()).isGreaterThan(10).isEqualTo(peak.replications());
    assertThat(answer.find("base", "yard.stalk.peak").orElseThrow().replications())
        .isEqualTo(peak.replications());
    assertThat(answer.header().stopped()).isFalse();
  }

  @Test
  void anAimForNoMeasureIsToldWithTheNearestWord() {
    Precision aim = new Precision("yard.stalk.peek", 0.03, true, "yard.stalk.peek:3%");
    RunSettings effort = new RunSettings(10, Optional.of(aim), 1, 2, Optional.empty());
    assertThatThrownBy(() -> simulated(trucks(), effort, 0.2))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("yard.stalk.peek:3%")
        .hasMessageContaining("yard.stalk.peak");
  }

  @Test
  void whatShortensThePeakIsToldInPairs() {
    YardAnswer answer =
        simulated(
            trucks().replace("from: 2027-03-08", "from: 2027-03-02"),
            Studied.effort(6, 2),
            new YardAsk(Optional.empty(), Optional.empty(), 0.2, OptionalDouble.empty(), 0, true));
    assertThat(answer.gains())
        .extracting(row -> row.what() + ": " + row.more().kind() + " " + row.more().to())
        .startsWith("trucks: TRUCKS 3.0", "trucks: TRUCKS 1.0", "receiving: OPEN_TO 68400.0")
        .contains("feeder: RATE NaN");
    assertThat(answer.gains()).allMatch(row -> row.measure().equals("yard.stalk.peak"));
    assertThat(answer.gains()).anyMatch(row -> row.gain() != 0);
  }

  /**
   * Stacks of 4 · 2 · 5 = 40 bales of 2 m by 1 m: 8 m by 2 m, with a lane of 6 m (8 + 6) · (2 + 6)
   * = 112 m2 each. 985 bales are 25 stacks, the last one begun; at 14 USD/m2 over 10 years without
   * interest 3,920 USD a year.
   */
  @Test
  void groundAndItsMoneyAreDoneByHand() {
    String yaml =
        yard(
                "37 min",
                "2027-03-01",
                "{row: {holds: 900 bales, stack: {long: 4, wide: 2, high: 5, lane: 6 m}, cost: 14 USD/m2}}")
            .replace("{mass: 500 kg}", "{mass: 500 kg, long: 2 m, wide: 1 m, high: 70 cm}");
    YardAnswer answer = simulated(yaml, Studied.effort(2, 1), 0.05);
    assertThat(answer.byRule().areaM2()).isEqualTo(2_800);
    assertThat(answer.at(985).orElseThrow().areaM2()).isEqualTo(2_800);
    assertThat(answer.at(985).orElseThrow().cost().perYear())
        .as("nothing is lost")
        .isCloseTo(3_920, within(1e-9));
    assertThat(answer.grounds())
        .singleElement()
        .satisfies(
            plan -> {
              assertThat(plan.stacks()).isEqualTo(25);
              assertThat(plan.highM()).isCloseTo(3.5, within(1e-12));
            });
    assertThat(answer.questions())
        .containsExactly(new SafetyFact.StoredInPlace("row", 900, "bales", 450_000, 40, 6));
  }

  /**
   * Round bales of 1.5 m that are 1.2 m wide: 5 · (3 + 2 + 1) = 30 in a stack of 6 m by 4.5 m, with
   * a lane of 6 m 12 · 10.5 = 126 m2; three layers are 1.5 · (1 + 2 · 0.8660) = 4.098 m high. 985
   * are 33 stacks. In rows of one layer 5 · 3 = 15 are a stack of the same ground: 66 stacks.
   */
  @Test
  void roundBalesLieInTheHollowsOfTheLayerBelow() {
    for (int high : new int[] {3, 1}) {
      String yaml =
          yard(
                  "37 min",
                  "2027-03-01",
                  "{row: {holds: 900 bales, stack: {long: 5, wide: 3, high: "
                      + high
                      + ", lane: 6 m}, cost: 14 USD/m2}}")
              .replace("{mass: 500 kg}", "{mass: 500 kg, diameter: 1.5 m, width: 1.2 m}");
      YardAnswer answer = simulated(yaml, Studied.effort(2, 1), 0.05);
      double areaM2 = high == 3 ? 33 * 126 : 66 * 126;
      assertThat(answer.at(985).orElseThrow().areaM2()).isCloseTo(areaM2, within(1e-9));
      assertThat(answer.at(985).orElseThrow().cost().perYear())
          .isCloseTo(1.4 * areaM2, within(1e-9));
      assertThat(answer.grounds())
          .singleElement()
          .satisfies(
              plan -> {
                assertThat(plan.balesOfStack()).isEqualTo(high == 3 ? 30 : 15);
                assertThat(plan.longM()).isCloseTo(6, within(1e-12));
                assertThat(plan.wideM()).isCloseTo(4.5, within(1e-12));
                assertThat(plan.highM()).isCloseTo(high == 3 ? 4.098076 : 1.5, within(1e-6));
              });
    }
  }

  /**
   * A truck or load that waits costs 10 USD an hour; 900 bales take all but the last nine loads.
   */
  @Test
  void waitsCostWhatTheFileSays() {
    String plain = yard("37 min", "2027-03-01", "{row: {holds: 900 bales}}");
    String paid = plain.replace("stalk: {loads", "stalk: {waiting_cost: 10 USD/h, loads");
    double waitingD = simulated(paid, Studied.effort(2, 1), 0.05).at(900).orElseThrow().waitingD();
    assertThat(waitingD).isPositive();
    assertThat(simulated(paid, Studied.effort(2, 1), 0.05).at(900).orElseThrow().cost().perYear())
        .isCloseTo(waitingD * 240, within(1e-6));
    assertThat(simulated(plain, Studied.effort(2, 1), 0.05).at(900).orElseThrow().cost().perYear())
        .isZero();
  }

  @Test
  void theLoadsOfTheFirstSeasonAddUpToWhatWasWeighedIn() {
    YardAnswer answer = simulated(trucks(), Studied.effort(2, 1), 0.2);
    var first = answer.samples().of().get(0);
    List<String> measures = first.measures().stream().map(m -> m.measure()).toList();
    double[] values = first.values()[0];
    assertThat(answer.loads()).hasSizeGreaterThan(10);
    assertThat(answer.loads()).extracting(load -> load.field()).contains("bench", "");
    assertThat(answer.loads().stream().mapToInt(load -> load.bales()).sum())
        .isEqualTo((int) values[measures.indexOf("intake.stalk.weighed_in")]);
    assertThat(answer.loads().stream().mapToDouble(load -> load.dryT()).sum())
        .isCloseTo(values[measures.indexOf("mass.stalk.weighed_in_dry")], within(1e-9));
  }

  @Test
  void anUnknownCropIsToldWithTheNearestWord() {
    PlantFile file = PlantFile.of("one.yaml", trucks());
    PlantOrigin source =
        new PlantOrigin(file.variants(), "one.yaml", file.contentHash(), "0", List.of());
    assertThatThrownBy(
            () ->
                new YardSizing(
                    source,
                    PlantChanges.base(),
                    Studied.effort(1, 1),
                    new YardAsk(
                        Optional.of("stak"),
                        Optional.empty(),
                        0.05,
                        OptionalDouble.empty(),
                        0,
                        false)))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining(
            "one.yaml: \"stak\" is no crop of this file; expected a crop, perhaps \"stalk\"");
  }

  @Test
  void theAnswerDoesNotHangOnThreads() {
    YardAnswer one = simulated(trucks(), Studied.effort(7, 1), 0.2);
    YardAnswer three = simulated(trucks(), Studied.effort(7, 3), 0.2);
    assertThat(three.capacity()).isEqualTo(one.capacity());
    assertThat(three.levels()).isEqualTo(one.levels());
    assertThat(three.summary()).isEqualTo(one.summary());
  }
}
