package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.DifferenceRow;
import hurdline.answer.PlanDifference;
import hurdline.answer.SeasonAnswer;
import hurdline.sample.Draft;
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
        Draft.from(r)
            .with(DifferenceRow::difference, 4_000)
            .with(DifferenceRow::low95, -6_000)
            .with(DifferenceRow::high95, 14_000)
            .with(DifferenceRow::lowJoint, -6_000)
            .with(DifferenceRow::highJoint, 14_000)
            .with(DifferenceRow::significant, false)
            .with(DifferenceRow::replicationsNeeded, 247)
            .with(DifferenceRow::replications, 40)
            .made();
    SeasonAnswer.Verdict verdict =
        new SeasonAnswer.Verdict(
            "two_shifts", List.of("base"), "two_shifts", "two_shifts", List.of("base"));
    SeasonAnswer answer =
        Draft.from(of)
            .with(SeasonAnswer::differences, List.of(new PlanDifference("base", open)))
            .with(SeasonAnswer::verdict, verdict)
            .made();
    assertThat(said(answer).get(0))
        .isEqualTo(
            "Which plan earns the most is not decided between the plan \"two shifts\" and the season as it stands; about 250"
                + " replications would show which; the plan \"two shifts\" leaves about 100 bales of stalk.");
  }
}
