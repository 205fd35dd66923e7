package hurdline.chart.kit;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * How curves that share a chart are told apart: by colour, by the mark at each value and by dashes.
 */
public final class CurveStyles {
  private static final Color[] PAINTS = {
    Palette.BLUE, Palette.VERMILLION, Palette.GREEN, Palette.PURPLE, Palette.ORANGE, Palette.INK
  };
  private static final float[][] DASHES = {null, {8, 4}, {2, 3}, {10, 3, 2, 3}};

  private CurveStyles() {}

  public static Color paint(int curve) {
    return PAINTS[curve % PAINTS.length];
  }

  public static BasicStroke stroke(int curve) {
    return new BasicStroke(
        2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, DASHES[curve % DASHES.length], 0);
  }

  public static Shape shape(int curve) {
    return switch (curve % 4) {
      case 0 -> new Ellipse2D.Double(-4, -4, 8, 8);
      case 1 -> new Rectangle2D.Double(-4, -4, 8, 8);
      case 2 -> polygon(0, -5, 5, 4, -5, 4);
      default -> polygon(0, -5.5, 5.5, 0, 0, 5.5, -5.5, 0);
    };
  }

  private static Shape polygon(double... corners) {
    Path2D path = new Path2D.Double();
    path.moveTo(corners[0], corners[1]);
    for (int at = 2; at < corners.length; at += 2) {
      path.lineTo(corners[at], corners[at + 1]);
    }
    path.closePath();
    return path;
  }
}
