package hurdline.chart.kit;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.measure.State;
import java.awt.Color;
import java.awt.Paint;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whether a print in grey tells paints apart: by pattern, or by lightness. */
class PaletteTest {
  private static final double APART = 40;

  private static boolean areApart(Paint one, Paint other) {
    boolean samePattern = kind(one).equals(kind(other));
    return !samePattern || Math.abs(grey(one) - grey(other)) > APART;
  }

  private static String kind(Paint paint) {
    return paint instanceof Hatch hatch ? hatch.kind().name() : "";
  }

  /** Luma of ITU-R BT.601, 0 to 255, as printers and pdftoppm take it; from memory. */
  private static double grey(Paint paint) {
    Color color = paint instanceof Hatch hatch ? hatch.ground() : (Color) paint;
    return 0.299 * color.getRed() + 0.587 * color.getGreen() + 0.114 * color.getBlue();
  }

  private static void areAllApart(List<Paint> paints) {
    for (int one = 0; one < paints.size(); one++) {
      for (int other = 0; other < one; other++) {
        assertThat(areApart(paints.get(one), paints.get(other))).as(one + " and " + other).isTrue();
      }
    }
  }

  @Test
  void seriesAreToldApartInGrey() {
    areAllApart(IntStream.range(0, Palette.seriesCount()).mapToObj(Palette::series).toList());
  }

  @Test
  void statesAreToldApartInGrey() {
    areAllApart(Stream.of(State.values()).map(Palette::state).toList());
  }

  @Test
  void plainBlueAndPlainGreenAreNot() {
    assertThat(areApart(Palette.BLUE, Palette.GREEN)).isFalse();
  }
}
