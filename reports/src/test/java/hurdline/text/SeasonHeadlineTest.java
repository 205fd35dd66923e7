package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.DifferenceRow;
import hurdline.answer.PlanDifference;
import hurdline.answer.SeasonAnswer;
import hurdline.sample.SampleSeason;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class SeasonHeadlineTest {
  private static final Wording METRIC = new Wording(UnitSystem.METRIC, Locale.ROOT);

  private static List<String> said(SeasonAnswer answer) {
    return new SeasonHeadline(answer, METRIC).sentences();
  }

  @Test
  void thePlanThatEarnsTheMostAndTheOneThatMostSurelyFinishes() {
    assertThat(said(SampleSeason.two()))
        .containsExactly(
            "The plan \"two shifts\" earns the most: 40,000 USD more than the season as it stands, give or take 15,000; it leaves about"
                + " 100 bales of stalk.",
            "The plan \"two shifts\" most surely finishes all crops: in 31 of 40 simulated years, not significantly more often than the"
                + " season as it stands.");
  }

  @Test
  void aPlanThatLeavesMoreThanItGainsIsNotNamedBestWithoutSayingSo() {
    assertThat(said(SampleSeason.leavingCropOver(true)))
        .startsWith(
            "The season as it stands earns the most: 40,000 USD more than the plan \"two shifts\", give or take 15,000; it leaves about"
                + " 2,000 bales of stalk.",
            "With what that crop would have earned taken off, the plan \"two shifts\" is ahead by 50,000 USD, give or take 20,000.");
    assertThat(said(SampleSeason.leavingCropOver(false)).get(1))
        .isEqualTo(
            "With what that crop would have earned taken off, the plan \"two shifts\" is ahead by 50,000 USD, give or take 60,000; that"
                + " is not statistically significant.");
  }

  @Test
  void plansThatDoNotDifferAreNotRankedAndTheReplicationsThatWouldShowItAreNamed() {
    SeasonAnswer of = SampleSeason.two();
    DifferenceRow r = of.differences().get(1).row();
    DifferenceRow open =
        new DifferenceRow(
            r.option(),
            r.measure(),
            r.unit(),
            r.baseMean(),
            r.optionMean(),
            4_000,
            -6_000,
            14_000,
            -6_000,
            14_000,
            r.interval(),
            false,
            247,
            r.varianceRemoved(),
            40);
    SeasonAnswer.Verdict verdict =
        new SeasonAnswer.Verdict(
            "two_shifts", List.of("base"), "two_shifts", "two_shifts", List.of("base"));
    SeasonAnswer answer =
        new SeasonAnswer(
            of.header(),
            of.outline(),
            of.plans(),
            of.summary(),
            of.adjusted(),
            List.of(new PlanDifference("base", open)),
            of.months(),
            of.strips(),
            of.avoided(),
            verdict,
            of.assumptions(),
            of.cautions(),
            of.warnings(),
            of.samples());
    assertThat(said(answer).get(0))
        .isEqualTo(
            "Which plan earns the most is not decided between the plan \"two shifts\" and the season as it stands; about 250"
                + " replications would show which; the plan \"two shifts\" leaves about 100 bales of stalk.");
  }
}
