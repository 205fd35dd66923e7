package hurdline.chart.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.Day;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.WindowMeans;
import hurdline.sample.SampleDay;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class DayChartTest {
  private static final Chart DAY =
      new DayChart(SampleDay.day(), 3, new Wording(UnitSystem.METRIC, Locale.US)).figure();

  private static List<String> texts() {
    List<String> found = new ArrayList<>();
    Matcher text = Pattern.compile("<text[^>]*>([^<]*)</text").matcher(DAY.svg());
    while (text.find()) {
      found.add(text.group(1));
    }
    return found;
  }

  @Test
  void stopsAreNamedAndMachinesThatNobodyUsesLeftOut() {
    assertThat(texts())
        .contains("feeder", "mill", "cleaning", "choke and hammers", "hurd bin", "down", "starved")
        .doesNotContain("gin stands", "seed cotton", "unused", "blocked");
  }

  @Test
  void itsAxisHasRoundTimesAndTheDate() {
    assertThat(texts()).contains("06:00", "07:00", "14:00", "Jul 6").doesNotContain("06:30");
  }

  @Test
  void itsTitleSaysWhichReplicationAndWhen() {
    assertThat(DAY.title()).isEqualTo("Replication 3 from Jul 6, 2027 06:00 to Jul 6, 2027 14:00");
    assertThat(DAY.alternative())
        .contains("feeder is down for 0.5 h, mill is down for 2.0 h")
        .contains("of stalk the yard holds 812 bales at first and 848 at last");
  }

  @Test
  void itsTableCountsLoadsAtTheGateAsLoads() {
    assertThat(DAY.table().rows())
        .filteredOn(row -> row.get(0).endsWith("at the gate"))
        .isNotEmpty()
        .allSatisfy(row -> assertThat(row.get(1)).isEqualTo("loads"));
  }

  @Test
  void itsTableHasLeastMeanAndMost() {
    assertThat(DAY.table().rows())
        .contains(List.of("in hurd bin", "t", "1.00", "2.91", "4.00"))
        .contains(List.of("rate of feeder", "t/h", "0.00", "1.78", "3.00"))
        .contains(List.of("stalk in the yard", "bales", "812", "830", "848"));
  }

  @Test
  void aRateThatFlickersIsDrawnByItsMeans() {
    Day.Curve flicker = SampleDay.day().curves(Day.Of.RATE).get(1);
    WindowMeans windows = new WindowMeans(8, 528);
    assertThat(windows.minutes()).isEqualTo(5);
    assertThat(windows.isCrowded(flicker)).isTrue();
    Day.Curve seen = windows.seen(flicker);
    assertThat(seen.hours()).hasSize(97);
    for (double mean : seen.values()) {
      assertThat(mean).isEqualTo(1.5, within(1e-9));
    }
    assertThat(seen.mean()).isEqualTo(flicker.mean(), within(1e-9));
    assertThat(windows.isCrowded(SampleDay.day().curves(Day.Of.RATE).get(0))).isFalse();
    assertThat(texts()).contains("Rate, t/h; where it changes often, means of 5 min");
  }
}
