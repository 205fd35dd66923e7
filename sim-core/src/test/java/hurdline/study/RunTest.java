package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.BottleneckRow;
import hurdline.answer.RunAnswer;
import hurdline.answer.RunFact;
import hurdline.answer.Samples;
import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.plant.ProblemsException;
import hurdline.statistics.Intervals;
import hurdline.study.replicate.Precision;
import hurdline.study.replicate.ProgressListener;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.Run;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The shipped example, simulated a few times. */
class RunTest {
  private static final int REPLICATIONS = 5;
  private static RunAnswer base;

  @BeforeAll
  static void simulate() {
    base = Studied.run(Studied.EXAMPLE, Studied.effort(REPLICATIONS, 2));
  }

  private static RunSettings until(
      String measure, double halfWidth, boolean relative, int threads) {
    Precision aim = new Precision(measure, halfWidth, relative, measure + ":aim");
    return new RunSettings(2, Optional.of(aim), 1, threads, Optional.empty());
  }

  @Test
  void theAnswerIsTheSameOnOneTwoAndEightThreads() {
    for (int threads : new int[] {1, 8}) {
      RunAnswer other = Studied.run(Studied.EXAMPLE, Studied.effort(REPLICATIONS, threads));
      assertThat(other.samples().values()).isDeepEqualTo(base.samples().values());
      for (RecordComponent part : RunAnswer.class.getRecordComponents()) {
        if (part.getType()
            != Samples.class) { // compared above; its arrays are equal only to themselves
          assertThat(value(part, other)).as(part.getName()).isEqualTo(value(part, base));
        }
      }
    }
  }

  private static Object value(RecordComponent part, RunAnswer answer) {
    try {
      return part.getAccessor().invoke(answer);
    } catch (ReflectiveOperationException notReadable) {
      throw new AssertionError(notReadable);
    }
  }

  @Test
  void anotherSeedGivesOtherFigures() {
    RunSettings other = new RunSettings(1, Optional.empty(), 2, 1, Optional.empty());
    double[] first = base.samples().values()[0];
    assertThat(Studied.run(Studied.EXAMPLE, other).samples().values()[0]).isNotEqualTo(first);
  }

  @Test
  void moreReplicationsBeginWithTheSameOnes() {
    RunAnswer fewer = Studied.run(Studied.EXAMPLE, Studied.effort(2, 1));
    assertThat(fewer.samples().values()).isDeepEqualTo(Arrays.copyOf(base.samples().values(), 2));
  }

  /** P6: within 1e-9 of the hours, which is rounding of some ten thousand sums. */
  @Test
  void holderHoursAddUpToTheScheduledHoursInEveryReplication() {
    for (int replication = 0; replication < REPLICATIONS; replication++) {
      for (String line : new String[] {"stalk_line", "cotton_line"}) {
        double held = sum(replication, "line." + line + ".hours.limited_by.");
        double scheduled = value(replication, Measure.LINE_HOURS_SCHEDULED.of(line));
        assertThat(scheduled).isPositive();
        assertThat(held).isCloseTo(scheduled, within(1e-9 * scheduled));
      }
    }
  }

  /** P5: 362 days of 24 hours. */
  @Test
  void machineStatesAddUpToTheHorizonInEveryReplication() {
    for (int replication = 0; replication < REPLICATIONS; replication++) {
      for (var machine : base.machines()) {
        double hours = sum(replication, "machine." + machine.machine() + ".hours.");
        assertThat(hours).as(machine.machine()).isCloseTo(362 * 24, within(1e-6));
      }
    }
  }

  @Test
  void noShareOfHoursReachesBelowNothingOrAboveAll() {
    assertThat(base.holders()).allMatch(row -> row.shareLow95() >= 0 && row.shareHigh95() <= 1);
    assertThat(base.holders())
        .as("some are so unsure that half of their interval reaches below nothing")
        .anyMatch(row -> row.shareHigh95() > 2 * row.share() && row.shareLow95() == 0);
  }

  @Test
  void theHoldersOfALineAddUpToItsScheduledHoursTheLongestFirst() {
    for (String line : new String[] {"stalk_line", "cotton_line"}) {
      var rows = base.holders().stream().filter(row -> row.line().equals(line)).toList();
      assertThat(rows.stream().mapToDouble(BottleneckRow::hours).sum())
          .isCloseTo(base.mean(Measure.LINE_HOURS_SCHEDULED.of(line)), within(1e-6));
      assertThat(rows.stream().mapToDouble(BottleneckRow::share).sum()).isCloseTo(1, within(1e-9));
      assertThat(rows).allMatch(row -> row.hours() > 0);
      assertThat(rows).isSortedAccordingTo((a, b) -> Double.compare(b.hours(), a.hours()));
    }
  }

  @Test
  void weeksAddUpToTheYear() {
    String fed = Measure.MASS_FED.of("stalk");
    double weeks =
        base.weeks().stream()
            .filter(row -> row.measure().equals(fed))
            .mapToDouble(row -> row.mean())
            .sum();
    assertThat(weeks).isCloseTo(base.mean(fed), within(1e-6));
    double months =
        base.months().stream()
            .filter(row -> row.measure().equals(Measure.ENERGY_TOTAL.of()))
            .mapToDouble(row -> row.mean())
            .sum();
    assertThat(months).isCloseTo(base.mean(Measure.ENERGY_TOTAL.of()), within(1e-3));
  }

  @Test
  void theHighestLevelOfAllDatesIsThePeak() {
    double mostAtOnce =
        base.levels().stream()
            .filter(row -> row.crop().equals("stalk") && row.isWholeYard())
            .mapToDouble(row -> row.p95())
            .max()
            .orElseThrow();
    SummaryRow peak = base.find(Measure.YARD_PEAK.of("stalk")).orElseThrow();
    assertThat(mostAtOnce).isLessThanOrEqualTo(peak.most()).isGreaterThan(0.9 * peak.least());
  }

  @Test
  void whatGoesIntoANodeOfTheFlowComesOut() {
    for (var flow : base.flows()) {
      for (var node : flow.nodes()) {
        double in =
            flow.edges().stream()
                .filter(e -> e.to().equals(node.name()))
                .mapToDouble(e -> e.tPerH())
                .sum();
        double out =
            flow.edges().stream()
                .filter(e -> e.from().equals(node.name()))
                .mapToDouble(e -> e.tPerH())
                .sum();
        if (in > 0 && out > 0) {
          // a bin may keep a few tonnes at the end of the year
          assertThat(out).as(flow.line() + " " + node.name()).isCloseTo(in, within(0.01 * in));
        }
      }
      double fed =
          flow.edges().stream()
              .filter(e -> e.from().equals("feeder"))
              .mapToDouble(e -> e.tPerH())
              .sum();
      assertThat(fed)
          .isCloseTo(base.mean(Measure.LINE_THROUGHPUT.of(flow.line())), within(0.05 * fed));
    }
  }

  @Test
  void theIntervalIsStudents() {
    SummaryRow row = base.find(Measure.MASS_FED.of("stalk")).orElseThrow();
    var known = Intervals.mean95(series(row.measure()));
    assertThat(row.low95()).isEqualTo(known.low());
    assertThat(row.high95()).isEqualTo(known.high());
    assertThat(row.replications()).isEqualTo(REPLICATIONS);
  }

  @Test
  void aLimitBelowNothingIsCutAndSaidToBeUnlessItIsMoney() {
    List<SummaryRow> students =
        base.summary().stream()
            .filter(row -> row.least() >= 0 && Intervals.mean95(series(row.measure())).low() < 0)
            .toList();
    assertThat(students).isNotEmpty();
    for (SummaryRow row : students) {
      boolean cut = row.interval().endsWith(" cut");
      assertThat(row.low95())
          .as(row.measure())
          .isEqualTo(cut ? 0 : Intervals.mean95(series(row.measure())).low());
      assertThat(cut || row.unit().startsWith("USD")).as(row.measure()).isTrue();
    }
    assertThat(base.assumptions())
        .filteredOn(RunFact.Intervals.class::isInstance)
        .singleElement()
        .satisfies(fact -> assertThat(((RunFact.Intervals) fact).cut().count()).isGreaterThan(0));
  }

  @Test
  void anAimIsReachedByTheSameReplicationsOnAnyNumberOfThreads() {
    String fed = Measure.MASS_FED.of("stalk");
    RunAnswer wide = Studied.run(Studied.SMALL, until(fed, 0.5, true, 2));
    assertThat(wide.header().replications()).isEqualTo(40);
    double half = wide.find(fed).map(row -> (row.high95() - row.low95()) / 2).orElseThrow() * 0.85;
    RunAnswer one = Studied.run(Studied.SMALL, until(fed, half, false, 1));
    RunAnswer three = Studied.run(Studied.SMALL, until(fed, half, false, 3));
    assertThat(one.samples().values()).isDeepEqualTo(three.samples().values());
    assertThat(one.header().replications()).isGreaterThan(40);
    assertThat(one.find(fed).map(row -> (row.high95() - row.low95()) / 2).orElseThrow())
        .isLessThanOrEqualTo(half);
    assertThat(one.header().stopped()).isFalse();
    assertThat(aim(one).outcome()).isEqualTo(RunFact.Aim.Outcome.REACHED);
  }

  @Test
  void anAimOutOfReachIsToldAfterTheFirst40Replications() {
    List<String> told = new ArrayList<>();
    AtomicInteger finished = new AtomicInteger();
    ProgressListener progress =
        new ProgressListener() {
          @Override
          public void done(int done, int of) {
            finished.set(done);
          }

          @Override
          public void says(RunFact.AimOutOfReach fact) {
            told.add(
                finished
                    + " done: "
                    + fact.said()
                    + " takes over 10,000: "
                    + (fact.needed() > fact.most()));
          }
        };
    Run run =
        new Run(
            Studied.source(Studied.SMALL),
            PlantChanges.base(),
            until("mass.stalk.fed", 1e-6, true, 2));
    RunAnswer answer = run.simulate(progress, () -> finished.get() >= 60).orElseThrow();
    assertThat(told)
        .singleElement()
        .asString()
        .startsWith("40 done: mass.stalk.fed:aim takes over 10,000: true");
    assertThat(aim(answer).outcome()).isEqualTo(RunFact.Aim.Outcome.NOT_REACHED);
    assertThat(aim(answer).unit()).isEqualTo("t");
    assertThat(aim(answer).needed()).isGreaterThan(10_000);
  }

  private static RunFact.Aim aim(RunAnswer answer) {
    return answer.assumptions().stream()
        .filter(RunFact.Aim.class::isInstance)
        .map(RunFact.Aim.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void anAimForAnUnknownMeasureNamesTheNearest() {
    assertThatThrownBy(() -> Studied.run(Studied.EXAMPLE, until("mass.stalc.fed", 0.1, true, 1)))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("perhaps \"mass.stalk.fed\"");
  }

  @Test
  void stoppedByTheUserItRestsOnTheFinishedOnes() {
    AtomicInteger finished = new AtomicInteger();
    Run run =
        new Run(Studied.source(Studied.EXAMPLE), PlantChanges.base(), Studied.effort(1000, 2));
    RunAnswer answer =
        run.simulate((done, of) -> finished.set(done), () -> finished.get() >= 2).orElseThrow();
    int count = answer.header().replications();
    assertThat(count).isBetween(2, 4).isEqualTo(finished.get());
    assertThat(answer.header().stopped()).isTrue();
    assertThat(answer.header().replicationsAsked()).isEqualTo(1000);
    int both = Math.min(count, REPLICATIONS);
    assertThat(Arrays.copyOf(answer.samples().values(), both))
        .isDeepEqualTo(Arrays.copyOf(base.samples().values(), both));
  }

  @Test
  void stoppedBeforeTheFirstThereIsNoAnswer() {
    Run run = new Run(Studied.source(Studied.EXAMPLE), PlantChanges.base(), Studied.effort(3, 2));
    assertThat(run.simulate((done, of) -> {}, () -> true)).isEmpty();
  }

  private static double[] series(String measure) {
    int at = base.samples().measures().stream().map(m -> m.measure()).toList().indexOf(measure);
    return Arrays.stream(base.samples().values()).mapToDouble(values -> values[at]).toArray();
  }

  private static double value(int replication, String measure) {
    return series(measure)[replication];
  }

  /** Sum of all measures that begin so. */
  private static double sum(int replication, String head) {
    double sum = 0;
    int found = 0;
    for (int at = 0; at < base.samples().measures().size(); at++) {
      if (base.samples().measures().get(at).measure().startsWith(head)) {
        sum += base.samples().values()[replication][at];
        found++;
      }
    }
    assertThat(found).isGreaterThanOrEqualTo(State.values().length);
    return sum;
  }
}
