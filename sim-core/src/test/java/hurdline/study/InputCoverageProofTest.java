package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.InputUncertainty;
import hurdline.answer.RunAnswer;
import hurdline.measure.Measure;
import hurdline.plant.InputDraws;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import hurdline.simulation.ProofTable;
import hurdline.simulation.TestPlant;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whether the interval by chance and inputs holds the truth as often as it says: 1,000 times a log
 * of 25 stops is made from a known law, its mean estimated and put into the plant with draws of
 * T/Γ(n) around it, and the plant simulated. The truth is the mean of 4,000 replications with the
 * law that made the logs. Limits are three standard errors (2 %) beyond what was measured for a
 * right program; by chance alone the interval must fail, or the trial shows nothing.
 */
@Tag("proof")
class InputCoverageProofTest {
  private static final String EVERY = "machines.feeder.stops.choke.every";
  private static final String FED = Measure.MASS_FED.of("stalk");
  private static final double TRUE_H = 5;
  private static final int LOGGED = 25;
  private static final int WORLDS = 1_000;
  private static final int ROWS = 20;
  private static final ProofTable TABLE = ProofTable.PAGE;
  private static final int AT = 21;

  @BeforeAll
  static void begin() {
    TABLE.section(
        AT,
        "Intervals over inputs that a log leaves open",
        "1,000 times a log of 25 stops is drawn from a known law, its mean estimated, and the plant"
            + " simulated in 20 years, each once with that mean and once with a draw of what the log"
            + " leaves open. The reference is the share of 95 % intervals that should hold the mean of"
            + " 4,000 years with the law that made the logs; what pairing leaves of chance makes"
            + " them a little too wide, so more than that may: the run fails below 93 and above 99 %."
            + " By chance alone: the same years' intervals without the draws, of which the run fails"
            + " above 60 %. Method: Cheng and Holland 1997,"
            + " Barton, Nelson and Xie 2014 (from memory).");
  }

  @AfterAll
  static void write() {
    TABLE.writeIfWhole();
  }

  private static String every(double meanH) {
    return String.format(Locale.ROOT, "{exponential: {mean: %.6f h}}", meanH);
  }

  private static TestPlant plant(double meanH) {
    return TestPlant.oneLine()
        .days(7)
        .with("crops.stalk.bale.mass", "2 t")
        .with("yard.on_hand.stalk", "180 bales")
        .with(
            "machines.feeder.stops",
            "{choke: {every: " + every(meanH) + ", counted: running, lasts: 40 min}}");
  }

  private static RunAnswer run(TestPlant plant, RunSettings effort) {
    return new Run(
            Studied.source(plant),
            new PlantChanges(PlantChanges.baseName(), List.of(), plant.changes()),
            effort)
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  @Test
  void theIntervalHoldsTheTruthOfAThousandLogs() {
    RunSettings many = new RunSettings(4_000, Optional.empty(), 99, 2, Optional.empty());
    double truth = run(plant(TRUE_H), many).mean(FED);
    List<InputUncertainty.Row> worlds =
        IntStream.rangeClosed(1, WORLDS)
            .parallel()
            .mapToObj(InputCoverageProofTest::world)
            .toList();
    double held =
        worlds.stream().filter(row -> row.low95() <= truth && truth <= row.high95()).count();
    double alone =
        worlds.stream().filter(row -> Math.abs(row.mean() - truth) <= row.chance()).count();
    String claim =
        String.format(
            Locale.ROOT,
            "intervals by chance and inputs that hold the truth, where %.0f %% of those by chance alone do",
            100 * alone / WORLDS);
    TABLE.add(AT, new ProofTable.Measured(claim, "share", "0.95", held / WORLDS));
    assertThat(held / WORLDS).as("by chance and inputs").isBetween(0.93, 0.99);
    assertThat(alone / WORLDS).as("by chance alone").isLessThan(0.6);
  }

  private static InputUncertainty.Row world(int number) {
    RandomStream stream = new RandomStreams(31).of(number, "log");
    double meanH = 0;
    for (int stop = 0; stop < LOGGED; stop++) {
      meanH += -TRUE_H * Math.log(stream.next()) / LOGGED;
    }
    RunSettings effort = new RunSettings(ROWS, Optional.empty(), number, 1, Optional.empty());
    return run(plant(meanH), effort.with(draws(meanH, stream)))
        .inputs()
        .find("base", "", FED)
        .orElseThrow();
  }

  /** T/Γ(n): a sum of n exponential amounts of mean 1 is Γ(n). */
  private static InputDraws draws(double meanH, RandomStream stream) {
    List<List<String>> rows = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      double gamma = 0;
      for (int stop = 0; stop < LOGGED; stop++) {
        gamma -= Math.log(stream.next());
      }
      rows.add(List.of(every(meanH * LOGGED / gamma)));
    }
    return new InputDraws("draws.csv", List.of(EVERY), rows);
  }
}
