package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.ChoiceEffect;
import hurdline.answer.ChoiceRange;
import hurdline.answer.ChoiceRow;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.ChooseTerms;
import hurdline.answer.FrontierRow;
import hurdline.sample.Draft;
import hurdline.sample.SampleChoose;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class ChooseWordsTest {
  private static final Wording US = new Wording(UnitSystem.US, Locale.ROOT);

  @Test
  void theAnswerNamesAPlanSaysWhatIsCertainAndWhatBecameOfTheOthers() {
    ChooseAnswer answer = SampleChoose.budgets();
    assertThat(new ChooseHeadline(answer, US).sentences())
        .containsExactly(
            "Of 8 plans this one is named: mill 45.5 hp, rate of the mill x1, buy bigger<mill>, which costs 100,000 USD. It earns"
                + " 478,000 USD a year after the yearly cost of its capital, give or take 2,000.",
            "If the plant and the years are as the file says: among these 5 plans none earns on average over many years more than 4,300 USD"
                + " a year above this one, the yearly cost of capital taken off; that is 95 % sure, for all budgets together, the 5 % being"
                + " the luck of the simulated years.",
            "That is within the band of 5,000 USD, after 2 rounds and 12,345 simulated years.",
            "How right the file's figures are is in none of these numbers.");
    assertThat(new ChooseWords(answer, US).sentences())
        .containsExactly(
            "Of the others 1 more may be the best, 2 were judged to be below it, 1 is left out by the file, 1 does not meet a bound in enough"
                + " years, 2 cannot be simulated; screened_out.csv says why.",
            "With at most 60,000 USD: mill 25 hp, rate of the mill x1, buy bigger<mill>; how far below the best cannot be stated.",
            "With at most -1 USD there is no plan.");
  }

  @Test
  void aGapOfNothingIsSaidWithoutANumberAndAnUnknownOneNotAtAll() {
    ChooseAnswer ended = SampleChoose.ended();
    assertThat(certain(ended, 0))
        .contains(
            "none has on average over many years a stalk fed more than this one; that is 95 % sure");
    assertThat(certain(ended, Double.NaN))
        .isEqualTo("3 plans are left; how far they lie apart cannot be stated after so few years.");
    assertThat(new ChooseHeadline(ended, US).sentences().get(2))
        .contains(
            "after 1 round and 12,345 simulated years the years or the time that were given had run out");
  }

  @Test
  void twoStagesStateTheBandThatWasAskedForOrNothing() {
    ChooseAnswer ended = SampleChoose.ended();
    ChooseTerms terms =
        Draft.from(ended.terms())
            .with(ChooseTerms::rounds, List.of())
            .with(ChooseTerms::independent, true)
            .made();
    ChooseAnswer stages = Draft.from(ended).with(ChooseAnswer::terms, terms).made();
    assertThat(new ChooseHeadline(stages, US).sentences().get(2))
        .isEqualTo(
            "That is the band that was asked for, after two stages and 12,345 simulated years.");
    FrontierRow unknown = Draft.from(ended.best()).with(FrontierRow::gap, Double.NaN).made();
    ChooseAnswer cut = Draft.from(stages).with(ChooseAnswer::frontier, List.of(unknown)).made();
    assertThat(new ChooseHeadline(cut, US).sentences().get(2))
        .startsWith("The second stage, without which the band of ")
        .endsWith(
            " was not simulated to its end: the years or the time that were given had run out.");
  }

  private static String certain(ChooseAnswer of, double gap) {
    FrontierRow best = of.best();
    ChooseAnswer changed =
        Draft.from(of)
            .with(
                ChooseAnswer::frontier,
                List.of(
                    new FrontierRow(
                        best.budget(), best.plan(), gap, best.left(), best.of(), best.rounds())))
            .made();
    return new ChooseHeadline(changed, US).sentences().get(1);
  }

  /** Only where the value before the end is significantly worse. */
  @Test
  void anEndOfTheValuesIsNamedWhereItRisesUpToIt() {
    assertThat(withThreePowers(-10))
        .anyMatch(
            said ->
                said.equals("Mill 45.5 hp is an end of its values, and beyond it may be more."));
    assertThat(withThreePowers(10)).noneMatch(said -> said.contains("an end of its values"));
  }

  private static List<String> withThreePowers(double high) {
    ChooseAnswer sample = SampleChoose.budgets();
    List<ChoiceRange> choices =
        List.of(
            new ChoiceRange("mill", "key", List.of("45.5 hp", "50 hp", "60 hp")),
            sample.choices().get(1),
            sample.choices().get(2));
    ChooseAnswer changed =
        Draft.from(sample)
            .with(ChooseAnswer::choices, choices)
            .with(
                ChooseAnswer::plans,
                sample.plans().stream().map(ChooseWordsTest::atTheEnd).toList())
            .with(ChooseAnswer::effects, List.of(new ChoiceEffect(0, 1, 1, -20, -30, high, 0)))
            .made();
    return new ChooseWords(changed, US).sentences();
  }

  private static ChoiceRow atTheEnd(ChoiceRow plan) {
    return Draft.from(plan)
        .with(ChoiceRow::at, List.of(0, plan.at().get(1), plan.at().get(2)))
        .made();
  }
}
