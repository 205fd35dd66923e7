package hurdline.study.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.ChoiceEffect;
import hurdline.answer.ChoiceRow;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.ChooseTerms;
import hurdline.answer.ChosenRow;
import hurdline.answer.FrontierRow;
import hurdline.answer.SimulatedBlock;
import hurdline.economics.CapitalRecovery;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.replicate.IndifferenceZone;
import hurdline.study.replicate.RunSettings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

class ChooseTest {
  private static final String MARGIN = "money.margin";

  /** A mill that limits, a second loader that changes nothing, a feeder rate beyond sense. */
  private static final String OPEN =
      """

      choices:
        mill: {key: machines.mill.power, values: [15 hp, 25 hp, 40 hp], cost: [0 USD, 20000 USD, 45000 USD], life: 10 yr}
        loader: {key: resources.loader.count, values: [1, 2], cost: [0 USD, 9000 USD], life: 8 yr}
        rate: {key: lines.stalk_line.steps.feeder.rate, values: [0.9 t/h, 2.2 t/h]}
        never: [{mill: 15 hp, loader: 2}]
      """;

  /** The plant to start from, for two days. */
  private static PlantFile small(String more) {
    try {
      String text = Files.readString(Path.of("../line-configs/small.yaml"));
      return PlantFile.of("small.yaml", text.replace("2027-05-28", "2027-03-02") + more);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What is asked; all else is as the command has it. */
  private record Asked(
      String more,
      double band,
      boolean worth,
      List<ChooseTerms.Bound> bounds,
      List<Double> budgets,
      boolean eachGap,
      long mostYears,
      boolean independent,
      ChoiceChange... narrowed) {
    static Asked of(double band) {
      return new Asked(OPEN, band, false, List.of(), List.of(), false, 0, false);
    }

    Choose choose(int threads) {
      return choose(threads, MARGIN);
    }

    Choose choose(int threads, String measure) {
      PlantFile file = small(more);
      PlantOrigin source =
          new PlantOrigin(file.variants(), "small.yaml", file.contentHash(), "0", List.of());
      IndifferenceZone zone =
          new IndifferenceZone(measure, band, false, measure + ":" + band + " USD");
      return new Choose(
          source,
          PlantChanges.base(),
          file.choices(),
          new ChooseAsk(
              List.of(narrowed), zone, worth, bounds, budgets, eachGap, mostYears, independent),
          new RunSettings(6, Optional.empty(), 1, threads, Optional.empty()));
    }

    ChooseAnswer answer() {
      return simulate(choose(2), new InMemory(), () -> false).orElseThrow();
    }
  }

  private static final class InMemory implements BlockStore {
    private final Map<String, SimulatedBlock> kept = new TreeMap<>();

    @Override
    public Optional<SimulatedBlock> kept(int stage, int number) {
      return Optional.ofNullable(kept.get(stage + " " + number));
    }

    @Override
    public void keep(SimulatedBlock block) {
      assertThat(kept.put(block.stage() + " " + block.number(), block)).isNull();
    }
  }

  private static final ChooseProgress SILENT =
      new ChooseProgress() {
        @Override
        public void done(int done, int of) {
          assertThat(done).isBetween(1, of);
        }

        @Override
        public void stage(Stage said) {
          assertThat(said.round()).isBetween(0, said.of());
        }
      };

  private static Optional<ChooseAnswer> simulate(
      Choose choose, BlockStore store, BooleanSupplier stop) {
    return choose.simulate(store, SILENT, stop, () -> false);
  }

  private static ChoiceRow row(ChooseAnswer answer, String... values) {
    return answer.plans().stream()
        .filter(plan -> answer.value(plan, 0).equals(values[0]))
        .filter(plan -> answer.value(plan, 1).equals(values[1]))
        .filter(plan -> answer.value(plan, 2).equals(values[2]))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void thePlanOfTheGreatestMarginIsNamedAndSlowOnesGoOut() {
    ChooseAnswer answer = Asked.of(500).answer();
    ChoiceRow named = answer.plans().get(answer.best().plan());
    assertThat(answer.value(named, 2)).isEqualTo("2.2 t/h");
    assertThat(answer.best().gap()).isBetween(0.0, 500.0);
    assertThat(row(answer, "15 hp", "2", "2.2 t/h").status()).isEqualTo(ChoiceRow.Status.NEVER);
    ChoiceRow slow = row(answer, "25 hp", "1", "0.9 t/h");
    assertThat(slow.status()).isEqualTo(ChoiceRow.Status.OUT);
    assertThat(slow.limit()).isNegative();
    assertThat(slow.difference()).isLessThan(slow.limit());
    assertThat(answer.rounds().get(slow.round()).leader()).isEqualTo(slow.against());
  }

  @Test
  void theAnswerIsTheSameOnAnyNumberOfThreadsAndAfterAStop() {
    Asked asked = Asked.of(150);
    ChooseAnswer whole = asked.answer();
    assertThat(simulate(asked.choose(1), new InMemory(), () -> false)).contains(whole);
    InMemory store = new InMemory();
    AtomicInteger allowed = new AtomicInteger(25);
    while (true) {
      allowed.set(25);
      Optional<ChooseAnswer> found =
          simulate(asked.choose(2), store, () -> allowed.decrementAndGet() < 0);
      if (found.isPresent()) {
        assertThat(found).contains(whole);
        return;
      }
      allowed.set(0);
      int kept = store.kept.size();
      allowed.set(500);
      Optional<ChooseAnswer> further =
          simulate(asked.choose(3), store, () -> allowed.decrementAndGet() < 0);
      assertThat(further.isPresent() || store.kept.size() > kept).isTrue();
      if (further.isPresent()) {
        assertThat(further).contains(whole);
        return;
      }
    }
  }

  @Test
  void withWorthTheYearlyCostOfCapitalIsTakenOff() {
    ChooseAnswer plain = Asked.of(500).answer();
    ChooseAnswer worth = new Asked(OPEN, 500, true, List.of(), List.of(), false, 0, false).answer();
    ChoiceRow before = row(plain, "40 hp", "2", "2.2 t/h");
    ChoiceRow after = row(worth, "40 hp", "2", "2.2 t/h");
    double each =
        45_000 * CapitalRecovery.factor(0.09, 10) + 9_000 * CapitalRecovery.factor(0.09, 8);
    assertThat(after.yearlyCost()).isCloseTo(each, within(1e-9));
    assertThat(before.yearlyCost()).isNaN();
    ChosenRow named = worth.chosen(worth.best().plan()).orElseThrow();
    assertThat(row(worth, "15 hp", "1", "2.2 t/h").plan()).isEqualTo(named.plan());
  }

  @Test
  void everyBudgetHasItsBestAmongThePlansThatCostNoMore() {
    ChooseAnswer answer =
        new Asked(OPEN, 500, false, List.of(), List.of(0.0, 21_000.0), false, 0, false).answer();
    assertThat(answer.frontier()).hasSize(3);
    FrontierRow nothing = answer.frontier().get(1);
    assertThat(nothing.of()).isEqualTo(2);
    assertThat(answer.plans().get(nothing.plan()).cost()).isZero();
    assertThat(answer.plans().get(answer.frontier().get(2).plan()).cost())
        .isLessThanOrEqualTo(21_000);
    assertThat(answer.chosen(nothing.plan())).isPresent();
  }

  @Test
  void aBoundLeavesOutPlansThatDoNotMeetItInEnoughOfTheYearsThatChoose() {
    ChooseTerms.Bound fed = new ChooseTerms.Bound("mass.stalk.fed", "", true, 15.5, 0.9);
    ChooseAnswer answer =
        new Asked(OPEN, 500, false, List.of(fed), List.of(), false, 0, false).answer();
    assertThat(answer.terms().choosing()).isEqualTo(20);
    ChoiceRow slow = row(answer, "25 hp", "1", "0.9 t/h");
    assertThat(slow.status()).isEqualTo(ChoiceRow.Status.BOUND);
    assertThat(slow.reason()).isEqualTo("mass.stalk.fed");
    assertThat(answer.chosen(answer.best().plan()).orElseThrow().met()).containsExactly(1.0);
  }

  @Test
  void aPlanWithProblemsIsListedWithItsReason() {
    String open =
        """

        choices:
          rest: {key: calendar.shifts.day.rests.0.lasts, values: [30 min, 20 h]}
          mill: {key: machines.mill.power, values: [15 hp, 25 hp]}
        """;
    ChooseAnswer answer =
        new Asked(open, 500, false, List.of(), List.of(), false, 0, false).answer();
    List<ChoiceRow> broken =
        answer.plans().stream().filter(plan -> answer.value(plan, 0).equals("20 h")).toList();
    assertThat(broken).hasSize(2);
    assertThat(broken)
        .allSatisfy(
            plan -> {
              assertThat(plan.status()).isEqualTo(ChoiceRow.Status.PROBLEM);
              assertThat(plan.reason()).contains("small.yaml", "rests");
              assertThat(plan.years()).isZero();
            });
  }

  @Test
  void allAgainstAllGivesEachPlanLeftItsOwnGap() {
    ChooseAnswer answer =
        new Asked(OPEN, 100, false, List.of(), List.of(), true, 0, false).answer();
    List<ChoiceRow> left =
        answer.plans().stream()
            .filter(
                plan ->
                    plan.status() == ChoiceRow.Status.LEFT
                        || plan.status() == ChoiceRow.Status.NAMED)
            .toList();
    assertThat(left).hasSizeGreaterThan(1);
    assertThat(left)
        .allSatisfy(
            plan ->
                assertThat(answer.chosen(plan.plan()).orElseThrow().gap())
                    .isGreaterThanOrEqualTo(answer.best().gap()));
  }

  /**
   * Each plan has draws of its own, so those that are alike have other years; all but the quickest
   * are far enough below.
   */
  @Test
  void inTwoStagesEachPlanHasDrawsAndYearsOfItsOwn() {
    Asked asked = new Asked(OPEN, 40, false, List.of(), List.of(), false, 0, true);
    ChooseAnswer answer = asked.answer();
    assertThat(answer.best().gap()).isEqualTo(40);
    assertThat(answer.rounds()).isEmpty();
    ChoiceRow named = answer.plans().get(answer.best().plan());
    assertThat(answer.value(named, 2)).isEqualTo("2.2 t/h");
    ChoiceRow one = row(answer, "40 hp", "1", "2.2 t/h");
    ChoiceRow alike = row(answer, "40 hp", "2", "2.2 t/h");
    assertThat(one.mean()).isNotCloseTo(alike.mean(), within(1e-6));
    assertThat(answer.plans())
        .filteredOn(plan -> plan.status() != ChoiceRow.Status.NEVER)
        .allMatch(plan -> plan.years() >= 20 && plan.years() % 10 == 0);
    assertThat(answer.plans()).extracting(ChoiceRow::years).anyMatch(years -> years > 40);
    InMemory store = new InMemory();
    AtomicInteger allowed = new AtomicInteger(250);
    assertThat(simulate(asked.choose(2), store, () -> allowed.decrementAndGet() < 0)).isEmpty();
    assertThat(store.kept).isNotEmpty();
    assertThat(simulate(asked.choose(1), store, () -> false)).contains(answer);
    ChooseAnswer ended =
        new Asked(OPEN, 40, false, List.of(), List.of(), false, 210, true).answer();
    assertThat(ended.best().gap()).isNaN();
    assertThat(ended.plans()).allMatch(plan -> plan.years() == 20 || plan.years() == 0);
  }

  /** A round of 80 years comes in two parts of 40, of which one is done when time is up. */
  @Test
  void ofARoundThatIsNotWholeNoYearIsTaken() {
    Asked asked = Asked.of(0.001);
    InMemory store = new InMemory();
    ChooseAnswer answer =
        asked
            .choose(1)
            .simulate(store, SILENT, () -> false, () -> store.kept.containsKey("4 0"))
            .orElseThrow();
    assertThat(answer.plans()).extracting(ChoiceRow::years).isSubsetOf(0, 20, 80).contains(80);
  }

  /** The years end before the second round, of which nothing may be said. */
  @Test
  void noRoundIsBegunThatTheYearsDoNotReach() {
    Asked asked = new Asked(OPEN, 0.001, false, List.of(), List.of(), false, 210, false);
    ChooseAnswer answer = asked.answer();
    assertThat(answer.rounds()).hasSize(1);
    assertThat(answer.best().rounds()).isEqualTo(1);
    assertThatThrownBy(
            () -> new Asked(OPEN, 1, false, List.of(), List.of(), false, 100, false).choose(1))
        .hasMessageContaining(
            "--years 100 ends before the first round is judged; expected at least 200 for 10 plans");
  }

  @Test
  void effectsAreOfOneOtherValueOnTheSameYears() {
    ChooseAnswer answer = Asked.of(500).answer();
    for (ChoiceEffect effect : answer.effects()) {
      ChosenRow named = answer.chosen(answer.best().plan()).orElseThrow();
      ChosenRow other = answer.chosen(effect.plan()).orElseThrow();
      assertThat(effect.difference()).isCloseTo(other.mean() - named.mean(), within(1e-6));
      assertThat(other.limits()).isNotEmpty();
    }
    assertThat(answer.effects()).extracting(ChoiceEffect::choice).contains(0, 1, 2);
  }

  @Test
  void whatCannotBeIsToldAllAtOnceBeforeAnythingIsSimulated() {
    String open =
        """

        choices:
          rest: {key: calendar.shifts.day.rests.0.lasts, values: [20 h, 21 h]}
          mill: {key: machines.mill.power, values: [0 hp]}
        """;
    Asked asked = new Asked(open, 1, true, List.of(), List.of(), false, 0, false);
    assertThatThrownBy(() -> asked.choose(1, "mass.stalk.fedd"))
        .hasMessageContaining("20 h")
        .hasMessageContaining("0 hp")
        .hasMessageContaining("the plant has no measure \"mass.stalk.fedd\"");
    assertThatThrownBy(
            () -> new Asked("", 1, false, List.of(), List.of(), false, 0, false).choose(1))
        .hasMessageContaining("the file has no choices");
  }

  @Test
  void aChoiceOfTheCallNarrowsOneOfTheFileOrOpensAKey() {
    Asked asked =
        new Asked(
            OPEN,
            500,
            false,
            List.of(),
            List.of(),
            false,
            0,
            false,
            new ChoiceChange("mill", List.of("25hp")),
            new ChoiceChange("loader", List.of("1")),
            new ChoiceChange("money.wage", List.of("24 USD/h", "x1.2")));
    assertThat(asked.choose(1).plans()).isEqualTo(4);
    Asked wrong =
        new Asked(
            OPEN,
            500,
            false,
            List.of(),
            List.of(),
            false,
            0,
            false,
            new ChoiceChange("mil", List.of("25 hp")),
            new ChoiceChange("mill", List.of("26 hp")),
            new ChoiceChange("machines.mill.power", List.of("26 hp")));
    assertThatThrownBy(() -> wrong.choose(1))
        .hasMessageContaining("--choice \"mil\" is no choice of this file")
        .hasMessageContaining("--choice \"26 hp\" is no value of choice \"mill\"")
        .hasMessageContaining("is the key of choice \"mill\"");
  }

  /**
   * By hand, from line-configs/exact/cut_night.md: 9 hours of feeding at 10 USD a ton, 10 hours of
   * pay at 10 USD for each hand. Nothing varies, so plans stay until 30 years have been simulated.
   */
  @Test
  void withoutChanceTheAnswerIsTheOneByHand() throws IOException {
    String text =
        Files.readString(Path.of("../line-configs/exact/cut_night.yaml"))
                .replace("tow: {}", "tow: {price: 10 USD/t}")
            + """

            choices:
              rate: {key: lines.stalk_line.steps.feeder.rate, values: [1 t/h, 2 t/h, 3 t/h]}
              hands: {key: crews.stalk_line.night, values: [1, 2]}
            """;
    PlantFile file = PlantFile.of("cut_night.yaml", text);
    PlantOrigin source =
        new PlantOrigin(file.variants(), "cut_night.yaml", file.contentHash(), "0", List.of());
    IndifferenceZone zone = new IndifferenceZone(MARGIN, 1, false, "money.margin:1 USD");
    Choose choose =
        new Choose(
            source,
            PlantChanges.base(),
            file.choices(),
            new ChooseAsk(List.of(), zone, false, List.of(), List.of(), false, 0, false),
            new RunSettings(2, Optional.empty(), 1, 2, Optional.empty()));
    ChooseAnswer answer = simulate(choose, new InMemory(), () -> false).orElseThrow();
    ChosenRow named = answer.chosen(answer.best().plan()).orElseThrow();
    assertThat(answer.plans().get(named.plan()).at()).containsExactly(2, 0);
    assertThat(named.mean()).isCloseTo(3 * 9 * 10 - 100, within(1e-9));
    assertThat(answer.best()).isEqualTo(new FrontierRow(Double.NaN, 4, 0, 1, 6, 2));
    assertThat(answer.effects())
        .extracting(effect -> Math.rint(1e6 * effect.difference()) / 1e6)
        .containsExactly(-180.0, -90.0, -100.0);
    assertThat(answer.plans())
        .filteredOn(plan -> plan.status() == ChoiceRow.Status.OUT)
        .hasSize(5)
        .allMatch(plan -> plan.round() == 1 && plan.years() == 40)
        .allMatch(plan -> plan.difference() == plan.limit());
  }
}
