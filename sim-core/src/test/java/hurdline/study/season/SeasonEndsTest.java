package hurdline.study.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.PlanDifference;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.SummaryRow;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** When a line's work ended, in a plan whose third campaign of stalks many years do not need. */
class SeasonEndsTest {
  private static SeasonAnswer answer;

  @BeforeAll
  static void simulate() throws IOException {
    Path shipped = Path.of("../line-configs/seasons/beside_cotton.yaml");
    String end = "{line: stalk_line, from: 2027-09-27, to: 2028-06-30, shifts: [day]}";
    String text = Files.readString(shipped);
    assertThat(text).contains(end);
    PlantFile file =
        PlantFile.of(
            "beside_cotton.yaml",
            text.replace(
                end,
                end.replace("2028-06-30", "2028-05-12")
                    + "\n        - "
                    + end.replace("2027-09-27", "2028-05-15")));
    PlantOrigin source =
        new PlantOrigin(file.variants(), "beside_cotton.yaml", file.contentHash(), "0", List.of());
    answer =
        new Season(
                List.of(source),
                new SeasonAsk(List.of("base", "beside_swing"), false),
                PlantChanges.base(),
                (of, changes) -> List.of(),
                Studied.effort(6, 2))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
  }

  private static SummaryRow row(String measure) {
    return answer.find("beside_swing", measure).orElseThrow();
  }

  /**
   * By hand from each year's campaigns: the crop was finished on days 262, 241, 229, 277 and 283,
   * and in the third year not before the last shift on day 334.
   */
  @Test
  void aLineEndedWhenItsLastWorkedShiftBeganInWhicheverCampaign() {
    SummaryRow ended = row("season.stalk_line.ended");
    assertThat(ended.replications()).isEqualTo(6);
    assertThat(ended.mean()).isCloseTo(271, within(1e-9));
    assertThat(ended.least()).isEqualTo(229);
    assertThat(ended.most()).isEqualTo(334);
  }

  @Test
  void theThirdCampaignKeepsItsOwnDateAndTheCountOfItsYears() {
    SummaryRow third = row("season.stalk_line.3.ended");
    assertThat(third.replications()).isEqualTo(1);
    assertThat(third.mean()).isEqualTo(334);
    SeasonAnswer.Plan plan = answer.plans().get(1);
    assertThat(plan.entries().stream().filter(entry -> entry.line().equals("stalk_line")))
        .extracting(SeasonAnswer.Entry::ended)
        .containsExactly(
            "season.stalk_line.1.ended", "season.stalk_line.2.ended", "season.stalk_line.3.ended");
  }

  @Test
  void aDifferenceSaysOnHowManyYearsItRests() {
    PlanDifference ended =
        answer.difference("beside_swing", "base", "season.stalk_line.ended").orElseThrow();
    assertThat(ended.row().replications()).isEqualTo(6);
    assertThat(ended.row().baseMean())
        .isCloseTo(answer.mean("base", "season.stalk_line.ended"), within(1e-9));
    assertThat(answer.differences().stream().map(PlanDifference::row))
        .filteredOn(row -> row.replications() < 6)
        .allSatisfy(row -> assertThat(row.replications()).isBetween(0, 5));
  }
}
