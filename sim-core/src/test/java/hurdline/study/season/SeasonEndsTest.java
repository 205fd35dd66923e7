package hurdline.study.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.PlanDifference;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.SummaryRow;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** When a line's work ended, in a plan whose third campaign of stalks most years do not need. */
class SeasonEndsTest {
  private static SeasonAnswer answer;

  @BeforeAll
  static void simulate() {
    PlantOrigin source = Studied.source(Path.of("../line-configs/seasons/beside_cotton.yaml"));
    answer =
        new Season(
                List.of(source),
                new SeasonAsk(List.of("base", "beside_summer"), false),
                PlantChanges.base(),
                (of, changes) -> List.of(),
                Studied.effort(6, 2))
            .play((done, of) -> {}, () -> false)
            .orElseThrow();
  }

  private static SummaryRow row(String measure) {
    return answer.find("beside_summer", measure).orElseThrow();
  }

  /**
   * By hand from each year's campaigns: the crop was finished on days 241, 239, 271, 233, 255 and
   * 255.
   */
  @Test
  void aLineEndedWhenItsLastWorkedShiftBeganInWhicheverCampaign() {
    SummaryRow ended = row("season.stalk_line.ended");
    assertThat(ended.replications()).isEqualTo(6);
    assertThat(ended.mean()).isCloseTo(249, within(1e-9));
    assertThat(ended.least()).isEqualTo(233);
    assertThat(ended.most()).isEqualTo(271);
  }

  @Test
  void theThirdCampaignKeepsItsOwnDateAndTheCountOfItsYears() {
    SummaryRow third = row("season.stalk_line.3.ended");
    assertThat(third.replications()).isEqualTo(1);
    assertThat(third.mean()).isEqualTo(271);
    SeasonAnswer.Plan plan = answer.plans().get(1);
    assertThat(plan.entries().stream().filter(entry -> entry.line().equals("stalk_line")))
        .extracting(SeasonAnswer.Entry::ended)
        .containsExactly(
            "season.stalk_line.1.ended", "season.stalk_line.2.ended", "season.stalk_line.3.ended");
  }

  @Test
  void aDifferenceSaysOnHowManyYearsItRests() {
    PlanDifference ended =
        answer.difference("beside_summer", "base", "season.stalk_line.ended").orElseThrow();
    assertThat(ended.row().replications()).isEqualTo(6);
    assertThat(ended.row().baseMean())
        .isCloseTo(answer.mean("base", "season.stalk_line.ended"), within(1e-9));
    assertThat(answer.differences().stream().map(PlanDifference::row))
        .filteredOn(row -> row.replications() < 6)
        .allSatisfy(row -> assertThat(row.replications()).isBetween(0, 5));
  }
}
