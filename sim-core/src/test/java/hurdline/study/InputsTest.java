package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.CompareAnswer;
import hurdline.answer.DifferenceRow;
import hurdline.answer.InputUncertainty;
import hurdline.answer.RunAnswer;
import hurdline.answer.Samples;
import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Doubt;
import hurdline.plant.InputDraws;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.study.compare.Compare;
import hurdline.study.compare.CompareAsk;
import hurdline.study.compare.WhatIfChange;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Drawn inputs in the answers of studies, on the small plant's first days. */
class InputsTest {
  private static final String ENERGY = "machines.mill.grinding.energy";
  private static final String CHOKE = "machines.saw.stops.choke.every";
  private static final String FED = Measure.MASS_FED.of("stalk");
  private static final RunSettings FORTY =
      new RunSettings(40, Optional.empty(), 1, 2, Optional.empty());
  private static final PlantChanges DAYS = Studied.smallUntil("2027-03-12");

  private static InputDraws energies() {
    return new InputDraws(
        "draws.csv",
        List.of(ENERGY),
        IntStream.range(0, 50).mapToObj(i -> List.of((9 + 0.08 * i) + " kWh/t")).toList());
  }

  private static RunAnswer run(PlantChanges changes, RunSettings effort) {
    return new Run(Studied.source(Studied.SMALL), changes, effort)
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  @Test
  void meansStayAndIntervalsCoverTheInputs() {
    RunAnswer alone = run(DAYS, FORTY);
    RunAnswer drawn = run(DAYS, FORTY.with(energies()));
    SummaryRow before = alone.find(FED).orElseThrow();
    SummaryRow after = drawn.find(FED).orElseThrow();
    InputUncertainty.Row row = drawn.inputs().find("base", "", FED).orElseThrow();
    assertThat(alone.inputs().isGiven()).isFalse();
    assertThat(after.mean()).isEqualTo(before.mean());
    assertThat(row.chance()).isEqualTo((before.high95() - before.low95()) / 2);
    assertThat((after.high95() - after.low95()) / 2)
        .isCloseTo(Math.hypot(row.chance(), row.inputs()), within(1e-9));
    assertThat(row.inputs()).isGreaterThan(5 * row.chance());
    assertThat(after.interval()).endsWith(" inputs");
    assertThat(drawn.inputs().largest("base", "", FED)).extracting(s -> s.input()).contains(ENERGY);
  }

  /** Replication k with row k is the plant changed so, simulated alone. */
  @Test
  void eachReplicationIsThatOfThePlantWithItsRow() {
    RunSettings two = new RunSettings(2, Optional.empty(), 1, 1, Optional.empty());
    InputDraws draws =
        new InputDraws(
            "draws.csv", List.of(ENERGY), List.of(List.of("9 kWh/t"), List.of("13 kWh/t")));
    double first = fed(Studied.set(ENERGY, "9 kWh/t"), two)[0];
    double second = fed(Studied.set(ENERGY, "13 kWh/t"), two)[1];
    InputUncertainty.Row row =
        run(DAYS, two.with(draws)).inputs().find("base", "", FED).orElseThrow();
    assertThat(first).isGreaterThan(second);
    assertThat(row.p05()).isCloseTo(second + 0.05 * (first - second), within(1e-9));
    assertThat(row.p95()).isCloseTo(second + 0.95 * (first - second), within(1e-9));
  }

  private static double[] fed(PlantChanges more, RunSettings effort) {
    Samples samples = run(DAYS.and(more.changes()), effort).samples();
    int at = samples.measures().stream().map(Samples.Measured::measure).toList().indexOf(FED);
    return Arrays.stream(samples.values()).mapToDouble(of -> of[at]).toArray();
  }

  @Test
  void threadsDoNotShow() {
    RunSettings one = new RunSettings(10, Optional.empty(), 1, 1, Optional.empty());
    RunSettings three = new RunSettings(10, Optional.empty(), 1, 3, Optional.empty());
    assertThat(run(DAYS, three.with(energies())).inputs())
        .isEqualTo(run(DAYS, one.with(energies())).inputs());
  }

  private static WhatIfChange whatIf(String key, String value) {
    return new WhatIfChange(List.of(new Change.Value(key, value)));
  }

  /** Both plants have the same inputs, so what they owe to them cancels. */
  @Test
  void differencesArePairedOnTheSameInputs() {
    CompareAsk ask =
        new CompareAsk(
            List.of(),
            List.of(whatIf("machines.mill.power", "16 hp")),
            OptionalDouble.empty(),
            OptionalInt.empty(),
            false,
            Optional.empty(),
            List.of(),
            Optional.empty());
    CompareAnswer answer =
        new Compare(Studied.source(Studied.SMALL), DAYS, ask, FORTY.with(energies()))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
    String whatIf = answer.options().get(0).name();
    DifferenceRow row = answer.difference(whatIf, FED).orElseThrow();
    double ofBase = answer.inputs().find("base", "", FED).orElseThrow().inputs();
    double ofDifference = answer.inputs().find(whatIf, "base", FED).orElseThrow().inputs();
    assertThat(ofDifference).isPositive().isLessThan(ofBase / 5);
    assertThat(row.interval()).endsWith(" inputs");
    assertThat(row.significant()).isTrue();
    assertThat(row.high95() - row.low95())
        .isGreaterThan(2 * answer.inputs().find(whatIf, "base", FED).orElseThrow().chance());
  }

  @Test
  void whatAnOptionSetsItselfIsNotDrawn() {
    CompareAsk ask =
        new CompareAsk(
            List.of(),
            List.of(whatIf(ENERGY, "5 kWh/t")),
            OptionalDouble.empty(),
            OptionalInt.empty(),
            false,
            Optional.empty(),
            List.of(),
            Optional.empty());
    CompareAnswer answer =
        new Compare(Studied.source(Studied.SMALL), DAYS, ask, FORTY.with(energies()))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
    String whatIf = answer.options().get(0).name();
    assertThat(answer.inputs().find(whatIf, "", FED).orElseThrow().inputs()).isZero();
  }

  @Test
  void drawsOfOtherFiguresThanThePlantsAreRefused() {
    InputDraws off =
        new InputDraws(
            "draws.csv", List.of(ENERGY), List.of(List.of("20 kWh/t"), List.of("21 kWh/t")));
    assertThatThrownBy(() -> run(DAYS, FORTY.with(off)))
        .isInstanceOf(ProblemsException.class)
        .satisfies(
            e ->
                assertThat(((ProblemsException) e).lines())
                    .containsExactly(
                        "draws.csv: "
                            + ENERGY
                            + " is \"11 kWh/t\" in the plant, and draws are such as \"20 kWh/t\"; expected the"
                            + " figures that the draws belong to, such as --patch fitted.yaml, in the same form"
                            + " and unit"));
  }

  @Test
  void doubtOfTheFileIsDrawn() throws IOException {
    String text =
        Files.readString(Studied.SMALL)
            + "\ndoubt:\n  - {value: "
            + ENERGY
            + ", give_or_take: 20 %}\n  - {value: "
            + CHOKE
            + ", give_or_take: 30 %}\n";
    PlantFile file = PlantFile.of("small.yaml", text);
    assertThat(file.plant().doubts())
        .containsExactly(new Doubt(ENERGY, 0.2), new Doubt(CHOKE, 0.3));
    PlantOrigin source =
        new PlantOrigin(file.variants(), "small.yaml", file.contentHash(), "0", List.of());
    RunAnswer answer =
        new Run(source, DAYS, FORTY).simulate((done, of) -> {}, () -> false).orElseThrow();
    assertThat(answer.inputs().source()).isEqualTo("doubt");
    assertThat(answer.inputs().inputs()).containsExactly(ENERGY, CHOKE);
    assertThat(answer.inputs().find("base", "", FED).orElseThrow().inputs()).isPositive();
  }

  /** 95 of 100 factors lie between 1/1.2 and 1.2; with three standard errors of 10,000 draws. */
  @Test
  void aDoubtIsWhatItSays() {
    Doubt doubt = new Doubt(ENERGY, 0.2);
    var stream = new RandomStreams(1).of(1, "doubt");
    long within =
        IntStream.range(0, 10_000)
            .mapToDouble(i -> Double.parseDouble(doubt.factor(stream.nextNormal()).substring(1)))
            .filter(factor -> factor > 1 / 1.2 && factor < 1.2)
            .count();
    assertThat(within / 10_000.0).isBetween(0.943, 0.957);
  }

  @Test
  void aDoubtOfNothingIsAProblemWithItsLine() throws IOException {
    String text =
        Files.readString(Studied.SMALL)
            + "\ndoubt:\n  - {value: machines.mil.power, give_or_take: 20 %}\n  - {value: "
            + ENERGY
            + ", give_or_take: 0 %}\n";
    assertThatThrownBy(() -> PlantFile.of("small.yaml", text))
        .isInstanceOf(ProblemsException.class)
        .satisfies(
            e -> assertThat(((ProblemsException) e).lines()).anyMatch(l -> l.contains("0 %")));
  }
}
