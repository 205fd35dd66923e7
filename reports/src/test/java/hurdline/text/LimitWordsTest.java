package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.BottleneckRow;
import hurdline.answer.Outline;
import hurdline.sample.SampleAnswer;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class LimitWordsTest {
  private static final Outline OUTLINE = SampleAnswer.year().outline();

  private static BottleneckRow limit(String cause, double share) {
    return new BottleneckRow(
        "base", "stalk_line", cause, 2048 * share, share, share - 0.005, share + 0.005, "student");
  }

  private static String said(List<String> together, BottleneckRow... rows) {
    return new LimitWords(
            List.of(rows),
            OUTLINE.lines().get(0),
            40,
            new SpokenNames(OUTLINE.titles()),
            new Spoken(new Wording(UnitSystem.US, Locale.ROOT)),
            together)
        .sentence()
        .orElseThrow();
  }

  @Test
  void machinesThatStopTogetherAreTheBottleneckWhereTogetherTheyHoldTheLineLongest() {
    BottleneckRow[] rows = {
      limit("feeder", 0.33),
      limit("mill", 0.30),
      limit("hurd_bagger.package_change", 0.15),
      limit("stalk_saw.choke", 0.05)
    };
    assertThat(said(List.of("mill", "hurd_bagger"), rows))
        .isEqualTo(
            "The mill and the hurd bagger are the bottleneck: they limit the stalk line in 45 of"
                + " 100 scheduled hours, stops and changes included");
    assertThat(said(List.of(), rows)).startsWith("The feeder is the bottleneck");
    assertThat(said(List.of("mill"), rows)).startsWith("The feeder is the bottleneck");
  }

  @Test
  void oneOfThemThatHoldsTheLineLongestByItselfIsNamedAlone() {
    assertThat(
            said(
                List.of("mill", "hurd_bagger"),
                limit("mill", 0.40),
                limit("feeder", 0.30),
                limit("hurd_bagger.package_change", 0.15)))
        .isEqualTo(
            "The mill is the bottleneck: it limits the stalk line in 40 of 100 scheduled hours");
    assertThat(
            said(
                List.of("mill", "hurd_bagger"),
                limit("feeder", 0.50),
                limit("mill", 0.30),
                limit("hurd_bagger.package_change", 0.15)))
        .startsWith("The feeder is the bottleneck");
  }
}
