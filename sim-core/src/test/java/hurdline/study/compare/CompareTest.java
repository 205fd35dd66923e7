package hurdline.study.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.CashRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.CompareFact;
import hurdline.answer.DifferenceRow;
import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.RunAnswer;
import hurdline.answer.RunFact;
import hurdline.answer.Samples;
import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.replicate.Precision;
import hurdline.study.replicate.RunSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CompareTest {
  private static final Path SMALL = Path.of("../line-configs/small.yaml");
  private static final String MARGIN = "money.margin";
  private static final String LESS_OVERHEAD =
      "\n  less_overhead:\n    cost: 30000 USD\n    life: 4.5 yr\n    salvage: 1000 USD\n"
          + "    with: {money: {overhead: 80000 USD/yr}}\n";

  private static final PlantOrigin FOUR_WEEKS = Studied.fourWeeks();

  private static PlantOrigin small(String from, String to, String more) throws IOException {
    String text = Files.readString(SMALL);
    assertThat(text).contains(from);
    PlantFile file = PlantFile.of("small.yaml", text.replace(from, to) + more);
    return new PlantOrigin(file.variants(), "small.yaml", file.contentHash(), "0", file.warnings());
  }

  private static Compare compare(
      PlantOrigin source, int replications, int threads, String... among) {
    return new Compare(
        source,
        PlantChanges.base(),
        asked(OptionalDouble.empty(), among),
        Studied.effort(replications, threads));
  }

  /** Three lives, which is enough where money can be done by hand. */
  private static CompareAsk asked(OptionalDouble withinYr, String... among) {
    return new CompareAsk(
        List.of(among),
        withinYr,
        OptionalInt.of(3),
        false,
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  private static CompareAnswer simulated(Compare compare) {
    return compare.simulate((done, of) -> {}, () -> false).orElseThrow();
  }

  /** What the first 40 replications say, from which aims are taken; simulated once. */
  private static final class Forty {
    static final CompareAnswer ANSWER = simulated(compare(FOUR_WEEKS, 40, 2));
  }

  private static double[] series(Samples samples, String measure) {
    int at = samples.measures().stream().map(Samples.Measured::measure).toList().indexOf(measure);
    return Arrays.stream(samples.values()).mapToDouble(of -> of[at]).toArray();
  }

  @Test
  void differencesAreThoseOfTwoRunsOfTheSameChance() {
    CompareAnswer answer = simulated(compare(FOUR_WEEKS, 12, 2, "bigger_mill"));
    RunAnswer base = Studied.run(FOUR_WEEKS, PlantChanges.base(), Studied.effort(12, 1));
    RunAnswer option =
        Studied.run(FOUR_WEEKS, Studied.option("bigger_mill"), Studied.effort(12, 1));
    double[] before = series(base.samples(), MARGIN);
    double[] after = series(option.samples(), MARGIN);
    double mean =
        IntStream.range(0, 12).mapToDouble(r -> after[r] - before[r]).average().orElseThrow();
    DifferenceRow row = answer.difference("bigger_mill", MARGIN).orElseThrow();
    assertThat(row.difference()).isCloseTo(mean, within(1e-6 * Math.abs(mean)));
    assertThat(row.baseMean()).isEqualTo(base.mean(MARGIN));
    assertThat(row.optionMean()).isEqualTo(option.mean(MARGIN));
    assertThat(answer.summary().subList(0, base.summary().size())).isEqualTo(base.summary());
    assertThat(answer.holders()).containsAll(base.holders()).containsAll(option.holders());
    assertThat(row.lowJoint()).as("one option needs no widening").isEqualTo(row.low95());
  }

  @Test
  void withSeveralOptionsTheJointIntervalIsWiderAndDecides() {
    CompareAnswer answer = simulated(compare(FOUR_WEEKS, 8, 2));
    assertThat(answer.options())
        .extracting(CompareAnswer.Option::name)
        .containsExactly("bigger_mill", "second_spout");
    for (DifferenceRow row : answer.differences()) {
      if (row.high95() > row.low95()) {
        assertThat(row.highJoint() - row.lowJoint()).isGreaterThan(row.high95() - row.low95());
      }
      assertThat(row.significant()).isEqualTo(row.lowJoint() > 0 || row.highJoint() < 0);
    }
    assertThat(answer.differences())
        .anyMatch(DifferenceRow::significant)
        .anyMatch(row -> !row.significant());
  }

  @Test
  void theAnswerDoesNotHangOnThreads() {
    CompareAnswer one = simulated(compare(FOUR_WEEKS, 13, 1, "bigger_mill+second_spout"));
    CompareAnswer three = simulated(compare(FOUR_WEEKS, 13, 3, "bigger_mill+second_spout"));
    assertThat(three.summary()).isEqualTo(one.summary());
    assertThat(three.differences()).isEqualTo(one.differences());
    assertThat(three.payback()).isEqualTo(one.payback()).hasSize(8);
    assertThat(three.cash()).isEqualTo(one.cash());
    CompareAnswer.Option both = one.options().get(0);
    assertThat(both.cost()).isEqualTo(69_000);
    assertThat(both.lifeYr()).isEqualTo(12);
  }

  /**
   * The margin differs by the same known sum in every replication, so all money can be done by
   * hand.
   */
  @Test
  void aKnownDifferenceGivesTheMoneyThatIsDoneByHand() throws IOException {
    CompareAnswer answer =
        simulated(
            compare(
                small("discount_rate: 9 %/yr", "discount_rate: 8 %/yr", LESS_OVERHEAD),
                5,
                2,
                "less_overhead"));
    long days =
        1 + answer.header().from().until(answer.header().to(), java.time.temporal.ChronoUnit.DAYS);
    double yearly = answer.difference("less_overhead", MARGIN).orElseThrow().difference();
    assertThat(yearly).isCloseTo(10_000 * days / 365.0, within(0.002 * yearly));
    double value = -30_000 + 1_000 * Math.pow(1.08, -4.5);
    for (int calendar = 0; calendar < 5; calendar++) {
      value += yearly * Math.pow(1.08, -calendar - days / 365.25);
    }
    PaybackRow worth = answer.worth("less_overhead", Quantity.NET_PRESENT_VALUE).orElseThrow();
    assertThat(worth.mean()).isCloseTo(value, within(0.01));
    assertThat(worth.low95()).isCloseTo(value, within(0.01));
    assertThat(worth.p95()).isCloseTo(value, within(0.01));
    assertThat(answer.worth("less_overhead", Quantity.CHANCE_OF_LOSS).orElseThrow().mean())
        .isEqualTo(value < 0 ? 1 : 0);
    assertThat(answer.worth("less_overhead", Quantity.ADDED_IN_FIRST_YEAR).orElseThrow().mean())
        .isCloseTo(yearly, within(0.01));
    assertThat(
            answer.worth("less_overhead", Quantity.ADDED_IN_EACH_LATER_YEAR).orElseThrow().mean())
        .as("four calendars in three and a half years")
        .isCloseTo(yearly * 4 / 3.5, within(0.01));
    PaybackRow payback = answer.worth("less_overhead", Quantity.SIMPLE_PAYBACK).orElseThrow();
    assertThat(payback.gaps())
        .as("five times 2,437 USD")
        .isEqualTo(new PaybackRow.Gaps(3, 3, 0, Double.NaN, Double.NaN));
    assertThat(payback.mean()).isNaN();
    double end = days / 365.25;
    assertThat(answer.cash())
        .extracting(CashRow::year)
        .containsExactly(0.0, end, 1.0, 1 + end, 2.0, 2 + end, 3.0, 3 + end, 4.0, 4 + end, 4.5);
  }

  @Test
  void laterYearsAreAtPricesThatGrow() throws IOException {
    String option =
        "\n  less_paid:\n    cost: 0 USD\n    life: 2 yr\n    with: {money: {wage: 20 USD/h}}\n";
    CompareAnswer answer =
        simulated(
            compare(
                small("discount_rate: 9 %/yr", "escalation: {wages: 5 %/yr}", option),
                3,
                1,
                "less_paid"));
    double yearly = answer.difference("less_paid", MARGIN).orElseThrow().difference();
    assertThat(yearly).isPositive();
    assertThat(answer.worth("less_paid", Quantity.NET_PRESENT_VALUE).orElseThrow().mean())
        .isCloseTo(yearly * 2.05, within(1e-6 * yearly));
    assertThat(answer.worth("less_paid", Quantity.SIMPLE_PAYBACK).orElseThrow().gaps())
        .isEqualTo(PaybackRow.Gaps.nothingToPayBack());
  }

  @Test
  void theLastOfTheRunningSumsIsTheValue() {
    CompareAnswer answer = simulated(compare(FOUR_WEEKS, 14, 2, "bigger_mill"));
    CashRow last = answer.cash().get(answer.cash().size() - 1);
    PaybackRow worth = answer.worth("bigger_mill", Quantity.NET_PRESENT_VALUE).orElseThrow();
    assertThat(last.year()).isEqualTo(12);
    assertThat(last.mean()).isCloseTo(worth.mean(), within(1e-6 * Math.abs(worth.mean())));
    assertThat(worth.p95()).as("lives differ").isGreaterThan(worth.p05());
  }

  /** 89 days are no year; nobody but the user knows how many of them a life has. */
  @Test
  void aCalendarShorterThanAYearMustSayHowItRepeats() throws IOException {
    String yearly =
        "  repeats: yearly                    # over the life of an option: every year at this season\n";
    AtomicInteger simulations = new AtomicInteger();
    PlantOrigin source = small(yearly, "", "");
    CompareAnswer answer =
        compare(source, 2, 2)
            .simulate((done, of) -> simulations.set(done), () -> false)
            .orElseThrow();
    assertThat(answer.payback()).isEmpty();
    assertThat(answer.cash()).isEmpty();
    assertThat(answer.terms().unrepeated()).containsExactly("bigger_mill", "second_spout");
    assertThat(answer.terms().calendarDays()).isEqualTo(89);
    assertThat(simulations.get()).as("no life is simulated").isEqualTo(2 * 3);
    assertThat(answer.assumptions())
        .contains(new CompareFact.CalendarNotRepeated(List.of("bigger_mill", "second_spout")))
        .noneMatch(CompareFact.MoneyOverLife.class::isInstance);
    assertThat(answer.warnings())
        .anyMatch(warning -> warning.text().contains("repeats: end-to-end"));
    CompareAsk ask =
        new CompareAsk(
            List.of(),
            OptionalDouble.empty(),
            OptionalInt.empty(),
            false,
            Optional.empty(),
            List.of("money.wage"),
            Optional.empty());
    assertThatThrownBy(() -> new Compare(source, PlantChanges.base(), ask, Studied.effort(1, 1)))
        .hasMessage(
            "small.yaml: the calendar of 89 days is shorter than a year and does not say how it repeats over an option's life,"
                + " so no option is worth anything; expected \"repeats: yearly\" or \"repeats: end-to-end\" under calendar");
  }

  @Test
  void stoppedEarlyAllHaveTheSameReplications() {
    AtomicInteger done = new AtomicInteger();
    CompareAnswer answer =
        compare(FOUR_WEEKS, 500, 1)
            .simulate((simulations, of) -> done.set(simulations), () -> done.get() > 0)
            .orElseThrow();
    assertThat(answer.header().stopped()).isTrue();
    assertThat(answer.header().replications()).isPositive().isLessThan(500);
    assertThat(answer.samples().of())
        .hasSize(3)
        .allMatch(of -> of.values().length == answer.header().replications());
    assertThat(compare(FOUR_WEEKS, 5, 1).simulate((simulations, of) -> {}, () -> true)).isEmpty();
  }

  @Test
  void anOptionThatIsNotThereIsToldWithTheNearestWord() {
    assertThatThrownBy(() -> compare(FOUR_WEEKS, 1, 1, "second_spout+biger_mill"))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining(
            "small.yaml: \"biger_mill\" is no option of this file; expected an option, perhaps"
                + " \"bigger_mill\"");
  }

  @Test
  void anOptionAskedForTwiceIsRefusedInWhateverOrder() {
    assertThatThrownBy(
            () ->
                compare(
                    Studied.source(SMALL),
                    1,
                    1,
                    "bigger_mill+second_spout",
                    "second_spout+bigger_mill"))
        .hasMessageContaining("\"second_spout+bigger_mill\" is asked for twice");
  }

  /** The file itself may not have one; a changed key may make one of what was an option. */
  @Test
  void anOptionThatChangesNothingAnyMoreIsRefused() {
    PlantChanges base =
        new PlantChanges(
            "base",
            List.of("machines.bagger.spouts=2"),
            List.of(new Change.Value("machines.bagger.spouts", "2")));
    assertThatThrownBy(
            () -> new Compare(Studied.source(SMALL), base, CompareAsk.of(), Studied.effort(1, 1)))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("option \"second_spout\" changes nothing");
  }

  @Test
  void twoThatSetOneKeyDifferentlyAreRefusedByBothNames() throws IOException {
    PlantOrigin source =
        small("options:", "options:\n  small_mill: {with: {machines: {mill: {power: 10 hp}}}}", "");
    assertThatThrownBy(() -> compare(source, 1, 1, "small_mill+bigger_mill"))
        .hasMessageContaining("\"small_mill\"")
        .hasMessageContaining("\"bigger_mill\"");
  }

  private static Compare aimed(Precision aim, int threads) {
    return new Compare(
        FOUR_WEEKS,
        PlantChanges.base(),
        Studied.ask(),
        new RunSettings(10, Optional.of(aim), 1, threads, Optional.empty()));
  }

  @Test
  void withAnAimItGoesOnUntilTheWidestJointIntervalIsSoNarrow() {
    double widest = widestHalf(Forty.ANSWER);
    CompareAnswer answer =
        simulated(aimed(new Precision(MARGIN, 0.9 * widest, false, "money.margin:x"), 2));
    assertThat(answer.header().stopped()).isFalse();
    assertThat(widestHalf(answer)).isLessThanOrEqualTo(0.9 * widest);
    assertThat(answer.header().replications()).isGreaterThan(40);
    assertThat(answer.samples().of())
        .allMatch(of -> of.values().length == answer.header().replications());
    assertThat(answer.assumptions())
        .anyMatch(
            fact -> fact instanceof RunFact.Aim aim && aim.outcome() == RunFact.Aim.Outcome.REACHED)
        .contains(new CompareFact.AimOfDifferences("money.margin:x", false));
    CompareAnswer one =
        simulated(aimed(new Precision(MARGIN, 0.9 * widest, false, "money.margin:x"), 1));
    assertThat(one.differences()).isEqualTo(answer.differences());
  }

  private static double widestHalf(CompareAnswer answer) {
    return answer.differences().stream()
        .filter(row -> row.measure().equals(MARGIN))
        .mapToDouble(row -> (row.highJoint() - row.lowJoint()) / 2)
        .max()
        .orElseThrow();
  }

  @Test
  void aRelativeAimIsAShareOfTheBase() {
    double base =
        Forty.ANSWER.differences().stream()
            .filter(row -> row.measure().equals("mass.stalk.fed"))
            .findFirst()
            .orElseThrow()
            .baseMean();
    CompareAnswer answer =
        simulated(aimed(new Precision("mass.stalk.fed", 0.02, true, "mass.stalk.fed:2%"), 2));
    assertThat(answer.header().replications()).isEqualTo(40);
    assertThat(
            answer.differences().stream()
                .filter(row -> row.measure().equals("mass.stalk.fed"))
                .mapToDouble(row -> (row.highJoint() - row.lowJoint()) / 2))
        .allMatch(half -> half <= 0.02 * base);
  }

  @Test
  void anAimForAMeasureThatThePlantLacksIsRefused() {
    Compare compare = aimed(new Precision("mass.stak.fed", 0.02, true, "mass.stak.fed:2%"), 1);
    assertThatThrownBy(() -> simulated(compare))
        .hasMessageContaining(
            "\"mass.stak.fed:2%\" asks for a measure that this plant does not have")
        .hasMessageContaining("mass.stalk.fed");
  }

  /** 5000 USD come back after 5000 / yearly = a little more than 2 years, in every life. */
  @Test
  void theChanceOfPaybackIsThatWithinTheTimeAskedFor() throws IOException {
    PlantOrigin source =
        small(
            "  overhead: 90000 USD/yr",
            "  overhead: 90000 USD/yr",
            LESS_OVERHEAD.replace("30000", "5000"));
    for (double within : new double[] {2, 2.5}) {
      CompareAsk ask = asked(OptionalDouble.of(within), "less_overhead");
      CompareAnswer answer =
          simulated(new Compare(source, PlantChanges.base(), ask, Studied.effort(5, 2)));
      assertThat(answer.worth("less_overhead", Quantity.SIMPLE_PAYBACK).orElseThrow().mean())
          .as("early in the third season")
          .isBetween(2.001, 2.1);
      assertThat(answer.worth("less_overhead", Quantity.CHANCE_OF_PAYBACK).orElseThrow().mean())
          .isEqualTo(within == 2 ? 0 : 1);
      assertThat(answer.further().withinYr()).isEqualTo(within);
    }
  }

  /**
   * No chance: after slow_mill.md hurd, 60 % of 3 t/h, fills the 5 t of bin, then the mill holds
   * the feed to its rate over 0.6. 22 kW mill 1.32 t/h; 10 t of bin are full only after 50/3 h.
   */
  @Test
  void withoutChanceTwoOptionsDifferByWhatIsDoneByHand() throws IOException {
    String text = Files.readString(Path.of("../line-configs/exact/slow_mill.yaml"));
    PlantFile file =
        PlantFile.of(
            "slow_mill.yaml",
            text
                + "\noptions:\n  more_power: {with: {machines: {mill: {power: 22 kW}}}}\n"
                + "  more_room: {with: {machines: {hurd_bin: {holds: 10 t}}}}\n");
    PlantOrigin source = new PlantOrigin(file.variants(), "slow_mill.yaml", "", "0", List.of());
    CompareAnswer answer = simulated(compare(source, 3, 2));
    double before = 25 + 2 * (39.95 - 25 / 3.0);
    double fullAt = 5 / (1.8 - 1.32);
    DifferenceRow power = answer.difference("more_power", "mass.stalk.fed").orElseThrow();
    DifferenceRow room = answer.difference("more_room", "mass.stalk.fed").orElseThrow();
    assertThat(power.difference())
        .isCloseTo(3 * fullAt + 2.2 * (39.95 - fullAt) - before, within(1e-6));
    assertThat(room.difference()).isCloseTo(50 + 2 * (39.95 - 50 / 3.0) - before, within(1e-6));
    assertThat(power.highJoint() - power.lowJoint()).isCloseTo(0, within(1e-9));
    assertThat(power.significant() && room.significant()).isTrue();
    assertThat(
            answer
                .difference("more_room", "line.stalk_line.hours.scheduled")
                .orElseThrow()
                .significant())
        .as("what is the same is not significantly different")
        .isFalse();
  }
}
