package hurdline.study.option;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.BreakEvenRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.CompareFact;
import hurdline.answer.LifeTerms;
import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.ServiceLifeRow;
import hurdline.answer.TornadoRow;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.TestPlant;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.compare.Compare;
import hurdline.study.compare.CompareAsk;
import hurdline.study.replicate.ReplicationBudget;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Lives whose years open with what the year before left. */
class ServiceLivesInChainsTest {
  /**
   * A day a year. Four loads of ten half-tonne bales come at 9, 10, 11 and 12; a shift from six to
   * two feeds at the line's rate. A tonne costs 20 USD and brings 50, so a year's margin is 30 USD
   * for each tonne fed, stock being worth its price.
   */
  private static PlantOrigin day(String rate, String faster, String onHand, String every) {
    return Studied.source(
        TestPlant.oneLine()
            .shift("2027-03-01", "2027-03-01", "06:00", "14:00")
            .says(
                "calendar",
                "{from: 2027-03-01, to: 2027-03-01, repeats: yearly, shifts: {always: {from: \"06:00\", to: \"14:00\"}}}")
            .says("products", "{tow: {price: 50 USD/t}}")
            .feeds(rate)
            .says("yard", "{%splaces: {open: {holds: 900 bales}}}", onHand)
            .says(
                "deliveries",
                "{stalk: {loads: {every: %s, bales: 10, hours: {from: \"08:00\", to: \"12:30\"}}}}",
                every)
            .says("money", "{currency: USD, crop_prices: {stalk: 20 USD/t}, discount_rate: 0 %/yr}")
            .says(
                "options",
                """
                faster: {cost: 100 USD, life: 3 yr, with: {lines: {stalk_line: {steps: {feeder: {rate: %1$s}}}}}}
                dearer: {cost: 100 USD, life: 3 yr, with: {products: {tow: {price: 60 USD/t}}}}
                hired: {cost: 100 USD, life: 2 yr, with: {lines: {stalk_line: {steps: {feeder: {rate: %1$s}}}}}}
                """,
                faster));
  }

  private static CompareAnswer simulated(
      PlantOrigin source, int replications, AtomicInteger simulations) {
    return simulated(source, replications, 2, simulations, "faster");
  }

  private static CompareAnswer simulated(
      PlantOrigin source, int replications, int lives, AtomicInteger simulations, String... among) {
    return new Compare(
            source, PlantChanges.base(), asked(lives, among), Studied.effort(replications, 2))
        .simulate((done, of) -> simulations.set(done), () -> false)
        .orElseThrow();
  }

  private static CompareAsk asked(int lives, String... among) {
    return new CompareAsk(
        List.of(among),
        OptionalDouble.empty(),
        OptionalInt.of(lives),
        false,
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  private static double value(CompareAnswer answer) {
    return answer.worth("faster", Quantity.NET_PRESENT_VALUE).orElseThrow().mean();
  }

  private static CompareFact.YearsOfLife yearsOfALife(CompareAnswer answer) {
    return answer.assumptions().stream()
        .filter(CompareFact.YearsOfLife.class::isInstance)
        .map(CompareFact.YearsOfLife.class::cast)
        .findFirst()
        .orElseThrow();
  }

  /**
   * At 2 t/h the first year feeds from 9 on 10 t and leaves 20 bales, later ones 16 t; at 5 t/h
   * each year feeds its 20 t and leaves none. So 30 · (10, 4, 4) are added. Years that stood alone
   * would add 30 · 10 each.
   */
  @Test
  void anOptionGainsWhatTheBaseCouldNotMakeUpInLaterYears() {
    AtomicInteger simulations = new AtomicInteger();
    CompareAnswer answer = simulated(day("2 t/h", "5 t/h", "", "1 h"), 7, simulations);
    assertThat(value(answer)).isCloseTo(300 + 120 + 120 - 100, within(1e-6));
    assertThat(answer.lives())
        .hasSize(2)
        .allSatisfy(life -> assertThat(life.netPresentValue()).isCloseTo(440, within(1e-6)));
    assertThat(simulations.get())
        .as("two plants alone, and two chains of three of each")
        .isEqualTo(2 * 7 + 2 * 6);
    assertThat(yearsOfALife(answer)).extracting("calendars", "simulated").containsExactly(12, 6);
  }

  /**
   * Twenty bales on hand: at 2 t/h all years feed 16 t, from six on; at 5 t/h the pile is gone in
   * the first year with 30 t fed, and later ones have their 20 t. The stock of the file is there
   * once only.
   */
  @Test
  void whatLiesThereOnTheFirstDayIsUsedUpOnce() {
    CompareAnswer answer =
        simulated(
            day("2 t/h", "5 t/h", "on_hand: {stalk: 20 bales}, ", "1 h"), 3, new AtomicInteger());
    assertThat(value(answer)).isCloseTo(30 * (14 + 4 + 4) - 100, within(1e-6));
  }

  /**
   * The shorter lives are the first years of the longer ones' chains, so the base has one set of
   * chains.
   */
  @Test
  void optionsOfUnlikeLivesShareTheYearsOfTheBase() {
    AtomicInteger simulations = new AtomicInteger();
    CompareAnswer answer =
        simulated(day("2 t/h", "5 t/h", "", "1 h"), 9, 3, simulations, "faster", "hired");
    assertThat(value(answer)).isCloseTo(440, within(1e-6));
    assertThat(answer.worth("hired", Quantity.NET_PRESENT_VALUE).orElseThrow().mean())
        .isCloseTo(320, within(1e-6));
    assertThat(simulations.get())
        .as("three plants alone; three chains of 3, 3 and 2 years")
        .isEqualTo(3 * 9 + 3 * (3 + 3 + 2));
    assertThat(yearsOfALife(answer)).extracting("calendars", "simulated").containsExactly(24, 9);
  }

  @Test
  void asManyLivesArePlayedAsAreAskedFor() {
    PlantOrigin source = day("2 t/h", "2.5 t/h", "", "{exponential: {mean: 1 h}}");
    CompareAnswer answer = simulated(source, 7, 5, new AtomicInteger(), "faster");
    assertThat(answer.lives()).hasSize(5);
    assertThat(answer.lives()).extracting(ServiceLifeRow::netPresentValue).doesNotHaveDuplicates();
    assertThat(yearsOfALife(answer).asked()).isTrue();
  }

  /**
   * Thirty, however few replications there are; the number of calendars is known before anything is
   * simulated.
   */
  @Test
  void thirtyLivesAreUsual() {
    PlantOrigin source = day("2 t/h", "2.5 t/h", "", "{exponential: {mean: 1 h}}");
    AtomicInteger simulations = new AtomicInteger();
    Compare compare =
        new Compare(source, PlantChanges.base(), CompareAsk.of("faster"), Studied.effort(4, 2));
    assertThat(compare.lives()).isEqualTo(30);
    assertThat(compare.livesSimulations()).isEqualTo(2 * 30 * 3);
    CompareAnswer answer =
        compare.simulate((done, of) -> simulations.set(done), () -> false).orElseThrow();
    assertThat(answer.lives()).hasSize(30);
    assertThat(simulations.get()).isEqualTo(compare.simulations()).isEqualTo(2 * 4 + 2 * 30 * 3);
    PaybackRow loss = answer.worth("faster", Quantity.CHANCE_OF_LOSS).orElseThrow();
    assertThat(loss.low95()).isLessThanOrEqualTo(loss.mean());
    assertThat(loss.high95() - loss.low95())
        .as("that of an exact interval of 30 independent lives")
        .isBetween(0.11, 0.38);
  }

  @Test
  void theAnswerDoesNotHangOnThreads() {
    PlantOrigin source = day("2 t/h", "2.5 t/h", "", "{exponential: {mean: 1 h}}");
    List<List<ServiceLifeRow>> lives =
        List.of(1, 3).stream()
            .map(
                threads ->
                    new Compare(
                            source,
                            PlantChanges.base(),
                            asked(3, "faster"),
                            Studied.effort(20, threads))
                        .simulate((done, of) -> {}, () -> false)
                        .orElseThrow()
                        .lives())
            .toList();
    assertThat(lives.get(0)).hasSize(3).isEqualTo(lives.get(1));
  }

  /**
   * Where nothing is left over a calendar that has been simulated as a replication is not simulated
   * again.
   */
  @Test
  void whereNothingIsLeftOverLivesAreMadeOfTheReplications() {
    PlantOrigin source = day("15 t/h", "20 t/h", "", "{uniform: {low: 30 min, high: 50 min}}");
    CompareAnswer answer = simulated(source, 8, new AtomicInteger());
    assertThat(yearsOfALife(answer)).extracting("calendars", "simulated").containsExactly(12, 0);
    assertThat(answer.terms().carried()).isEqualTo(LifeTerms.Carried.NOTHING);
    ReplicationBudget alone =
        new ReplicationBudget(Studied.effort(8, 1), (done, of) -> {}, () -> false);
    OptionPlants plants = new OptionPlants(source, PlantChanges.base());
    double[] base =
        alone.whole(CompiledPlant.of(plants.base()), 8).orElseThrow().series("money.margin");
    double[] faster =
        alone.whole(CompiledPlant.of(plants.of("faster")), 8).orElseThrow().series("money.margin");
    for (int life = 0; life < 2; life++) {
      double added = -100;
      for (int one = 3 * life; one < 3 * life + 3; one++) {
        added += faster[one] - base[one];
      }
      assertThat(answer.lives().get(life).netPresentValue()).isCloseTo(added, within(1e-6));
    }
  }

  /**
   * Twenty bales on hand and ten an hour from nine on: at 5 t/h all is fed each year and nothing is
   * left over, and yet the stock on hand is there in the first year only. At 10 USD/t more 30 t
   * bring 300 USD in the first year, 20 t 200 USD in each later one.
   */
  @Test
  void stockOnHandIsUsedOnceEvenIfNothingIsLeftOver() {
    CompareAnswer answer =
        simulated(
            day("5 t/h", "20 t/h", "on_hand: {stalk: 20 bales}, ", "1 h"),
            8,
            2,
            new AtomicInteger(),
            "dearer");
    assertThat(answer.terms().carried()).isEqualTo(LifeTerms.Carried.STOCK_ON_HAND);
    assertThat(mean(answer, "dearer", Quantity.ADDED_IN_FIRST_YEAR)).isCloseTo(300, within(1e-6));
    assertThat(mean(answer, "dearer", Quantity.ADDED_IN_EACH_LATER_YEAR))
        .isCloseTo(200, within(1e-6));
    assertThat(mean(answer, "dearer", Quantity.NET_PRESENT_VALUE))
        .isCloseTo(300 + 200 + 200 - 100, within(1e-6));
  }

  private static double mean(CompareAnswer answer, String option, Quantity quantity) {
    return answer.worth(option, quantity).orElseThrow().mean();
  }

  @Test
  void aLifeMayHaveMoreCalendarsThanThereAreReplications() {
    CompareAnswer answer = simulated(day("2 t/h", "5 t/h", "", "1 h"), 2, new AtomicInteger());
    assertThat(value(answer)).isCloseTo(440, within(1e-6));
  }

  /**
   * Asked at what price of stalk the option is worth nothing, the years follow each other there
   * too.
   */
  @Test
  void theBreakEvenIsOfYearsThatFollowEachOther() {
    AtomicInteger simulations = new AtomicInteger();
    CompareAnswer answer =
        hangsOn(
            day("2 t/h", "5 t/h", "", "1 h"),
            "money.crop_prices.stalk",
            3,
            4,
            PlantChanges.base(),
            simulations);
    double price = answer.further().breakEven().get(0).value();
    assertThat((50 - price) * 18 - 100)
        .as("18 t more are fed in three years")
        .isCloseTo(0, within(0.1));
    assertThat(simulations.get())
        .as("no more than the comparison itself")
        .isEqualTo(2 * 3 + 2 * 4 * 3);
  }

  private static CompareAnswer hangsOn(PlantOrigin source, String key, int lives) {
    return hangsOn(source, key, 3, lives, PlantChanges.base(), new AtomicInteger());
  }

  private static CompareAnswer hangsOn(
      PlantOrigin source,
      String key,
      int replications,
      int lives,
      PlantChanges base,
      AtomicInteger simulations) {
    CompareAsk ask =
        new CompareAsk(
            List.of("faster"),
            OptionalDouble.empty(),
            OptionalInt.of(lives),
            false,
            Optional.of(List.of(InputRange.around(key, 0.2))),
            List.of(key),
            Optional.empty());
    return new Compare(source, base, ask, Studied.effort(replications, 2))
        .simulate((done, of) -> simulations.set(done), () -> false)
        .orElseThrow();
  }

  /** Whatever is asked about an option's worth begins from the worth that is told of it. */
  @Test
  void allThatIsSaidOfAWorthIsOfTheSameLives() {
    for (String key : List.of("money.crop_prices.stalk", "lines.stalk_line.steps.feeder.rate")) {
      CompareAnswer answer =
          hangsOn(day("2 t/h", "2.5 t/h", "", "{exponential: {mean: 1 h}}"), key, 3);
      double worth = value(answer);
      assertThat(answer.further().tornado().get(0).netPresentValue()).isEqualTo(worth);
      assertThat(answer.further().breakEven().get(0).netPresentValue()).isEqualTo(worth);
    }
  }

  /**
   * A life is worth 30 USD for each tonne that it adds, less 100. So at a price a fifth lower it is
   * worth 4/30 of what it brings in more, and at which cost it is worth nothing is known as well as
   * what it is worth.
   */
  @Test
  void barsAndBreakEvensHaveIntervalsOverLives() {
    PlantOrigin source = day("2 t/h", "2.5 t/h", "", "{exponential: {mean: 1 h}}");
    CompareAnswer answer = hangsOn(source, "money.crop_prices.stalk", 15);
    PaybackRow worth = answer.worth("faster", Quantity.NET_PRESENT_VALUE).orElseThrow();
    double half = (worth.high95() - worth.low95()) / 2;
    assertThat(half).isGreaterThan(1);
    TornadoRow bar = answer.further().tornado().get(0);
    assertThat(bar.netPresentValueAtLow())
        .isCloseTo(worth.mean() + (worth.mean() + 100) * 4 / 30, within(1e-6));
    assertThat(bar.halfWidthAtLow()).isCloseTo(half * 4 / 30, within(1e-6));
    assertThat(bar.halfWidthAtHigh()).isCloseTo(half * 4 / 30, within(1e-6));
    BreakEvenRow cost = hangsOn(source, "options.faster.cost", 15).further().breakEven().get(0);
    assertThat(cost.value()).isCloseTo(worth.mean() + 100, within(2e-3 * cost.value()));
    assertThat((cost.high95() - cost.low95()) / 2).isCloseTo(half, within(1e-3 * half));
  }

  /**
   * The search looks at 1, 1.5 and 2.25 times what the file says. Where the answer lies within 2 %
   * of one of these, one more is asked for, so its interval is that of the worth as everywhere
   * else.
   */
  @Test
  void aBreakEvenNearTheEndOfWhatWasSearchedHasItsInterval() {
    PlantOrigin source = day("2 t/h", "2.5 t/h", "", "{exponential: {mean: 1 h}}");
    PaybackRow worth =
        hangsOn(source, "options.faster.cost", 15)
            .worth("faster", Quantity.NET_PRESENT_VALUE)
            .orElseThrow();
    double half = (worth.high95() - worth.low95()) / 2;
    for (double times : new double[] {1.51, 2.22}) {
      PlantChanges cheaper =
          Studied.set("options.faster.cost", (worth.mean() + 100) / times + " USD");
      CompareAnswer answer =
          hangsOn(source, "options.faster.cost", 3, 15, cheaper, new AtomicInteger());
      BreakEvenRow cost = answer.further().breakEven().get(0);
      assertThat(cost.value()).isCloseTo(worth.mean() + 100, within(2e-3 * cost.value()));
      assertThat((cost.high95() - cost.low95()) / 2)
          .as(times + " times")
          .isCloseTo(half, within(1e-3 * half));
    }
  }

  /**
   * With few lives Student's interval of a time is wide; what of it lies before the purchase is no
   * answer.
   */
  @Test
  void noPaybackLiesBeforeThePurchase() {
    CompareAnswer answer =
        simulated(day("2 t/h", "5 t/h", "", "{exponential: {mean: 1 h}}"), 12, new AtomicInteger());
    PaybackRow payback = answer.worth("faster", Quantity.SIMPLE_PAYBACK).orElseThrow();
    assertThat(payback.high95())
        .as("so wide that half of it would reach below nothing")
        .isGreaterThan(2 * payback.mean());
    assertThat(payback.low95()).isZero();
  }
}
