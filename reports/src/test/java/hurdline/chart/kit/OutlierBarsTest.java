package hurdline.chart.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.CompareAnswer;
import hurdline.chart.compare.CompareCharts;
import hurdline.sample.SampleCompare;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class OutlierBarsTest {
  private static final double NONE = Double.NaN;

  @Test
  void aBarFarAboveTheOthersIsCutALittleAboveTheHighestOfThem() {
    assertThat(OutlierBars.axisEnd(new double[] {20, NONE, 16, 640, 18}))
        .isCloseTo(25, within(1e-9));
  }

  @Test
  void barsOfOneOrderKeepTheirHeight() {
    assertThat(OutlierBars.axisEnd(new double[] {20, 16, 60, 18})).isInfinite();
    assertThat(OutlierBars.axisEnd(new double[] {640})).isInfinite();
    assertThat(OutlierBars.axisEnd(new double[] {NONE, 0})).isInfinite();
  }

  @Test
  void aMillThatRanNearlyEmptyHasItsFigureInTheTitle() {
    Chart cut = milling(SampleCompare.idleMill());
    Chart whole = milling(SampleCompare.two());
    assertThat(cut.title())
        .isEqualTo(
            "Electricity of the mill for what it mills, by month (bars cut: bigger mill 2027-03 625)");
    assertThat(cut.table().rows()).hasSize(3);
    assertThat(cut.table().rows().get(2)).contains("625");
    assertThat(whole.title()).doesNotContain("cut");
    assertThat(highestMark(cut)).isLessThan(20);
    assertThat(highestMark(whole)).isBetween(10.0, 20.0);
  }

  private static Chart milling(CompareAnswer answer) {
    return new CompareCharts(answer, new Wording(UnitSystem.METRIC, Locale.ROOT))
        .all().stream()
            .filter(figure -> figure.name().equals("milling-mill"))
            .findFirst()
            .orElseThrow();
  }

  /** The highest of the bare numbers along the axis. */
  private static double highestMark(Chart figure) {
    Matcher mark = Pattern.compile(">\\s*([0-9.]+)\\s*</").matcher(figure.file());
    double highest = 0;
    while (mark.find()) {
      highest = Math.max(highest, Double.parseDouble(mark.group(1)));
    }
    return highest;
  }
}
