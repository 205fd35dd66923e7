package hurdline.chart.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class HatchLinesTest {
  private static final Rectangle2D BOX = new Rectangle2D.Double(-3.7, 11.2, 40.1, 18.9);

  private static List<double[]> ends(Rectangle2D box, Hatch.Kind kind) {
    List<double[]> ends = new ArrayList<>();
    for (PathIterator at = HatchLines.of(kind, box).getPathIterator(null);
        !at.isDone();
        at.next()) {
      double[] end = new double[6];
      at.currentSegment(end);
      ends.add(end);
    }
    return ends;
  }

  private static double length(Rectangle2D box, Hatch.Kind kind) {
    List<double[]> ends = ends(box, kind);
    double length = 0;
    for (int at = 0; at < ends.size(); at += 2) {
      length +=
          Math.hypot(ends.get(at)[0] - ends.get(at + 1)[0], ends.get(at)[1] - ends.get(at + 1)[1]);
    }
    return length;
  }

  @ParameterizedTest
  @EnumSource
  void noLineLeavesItsBox(Hatch.Kind kind) {
    assertThat(ends(BOX, kind))
        .hasSizeGreaterThan(8)
        .allSatisfy(
            end -> {
              assertThat(end[0]).isBetween(BOX.getMinX() - 1e-9, BOX.getMaxX() + 1e-9);
              assertThat(end[1]).isBetween(BOX.getMinY() - 1e-9, BOX.getMaxY() + 1e-9);
            });
  }

  @ParameterizedTest
  @EnumSource
  void theLinesOfTwoHalvesAreThoseOfTheWhole(Hatch.Kind kind) {
    Rectangle2D left = new Rectangle2D.Double(BOX.getX(), BOX.getY(), 17.3, BOX.getHeight());
    Rectangle2D right =
        new Rectangle2D.Double(left.getMaxX(), BOX.getY(), BOX.getWidth() - 17.3, BOX.getHeight());
    assertThat(length(left, kind) + length(right, kind)).isCloseTo(length(BOX, kind), within(1e-9));
  }

  @ParameterizedTest
  @EnumSource
  void aBarThinnerThanALetterStillHasLines(Hatch.Kind kind) {
    assertThat(length(new Rectangle2D.Double(100.3, 50, 8, 14), kind)).isGreaterThan(7);
  }
}
