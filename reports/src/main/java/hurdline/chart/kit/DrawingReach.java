package hurdline.chart.kit;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

/**
 * How far a drawing reaches: what lies far off its sheet is drawn at the limit, where nobody sees
 * it, and what has no place is not drawn. Viewers of SVG stop at a number that is none, and keep
 * too few digits for one that is huge.
 */
final class DrawingReach {
  /** In pixels; no sheet is so large. */
  private static final double FAR = 50_000;

  private static final int MOST_NUMBERS =
      6; // of one part of a path: a curve's two controls and its end

  private DrawingReach() {}

  static boolean has(double x, double y) {
    return Math.abs(x) <= FAR && Math.abs(y) <= FAR;
  }

  /** The shape itself wherever all of it is within reach. */
  static Shape of(Shape shape) {
    return isWithin(shape) ? shape : within(shape);
  }

  private static boolean isWithin(Shape shape) {
    double[] at = new double[MOST_NUMBERS];
    for (PathIterator parts = shape.getPathIterator(null); !parts.isDone(); parts.next()) {
      for (int number = 0; number < numbers(parts.currentSegment(at)); number++) {
        if (!(Math.abs(at[number]) <= FAR)) {
          return false;
        }
      }
    }
    return true;
  }

  private static int numbers(int part) {
    return switch (part) {
      case PathIterator.SEG_CLOSE -> 0;
      case PathIterator.SEG_QUADTO -> 4;
      case PathIterator.SEG_CUBICTO -> MOST_NUMBERS;
      default -> 2;
    };
  }

  /**
   * Straight from end to end of its parts: curves that go so far off are none that anybody sees.
   */
  private static Shape within(Shape shape) {
    Path2D near = new Path2D.Double();
    double[] at = new double[MOST_NUMBERS];
    boolean begun = false;
    for (PathIterator parts = shape.getPathIterator(null); !parts.isDone(); parts.next()) {
      int part = parts.currentSegment(at);
      int last = numbers(part) - 2;
      if (last < 0) {
        close(near, begun);
      } else if (Double.isNaN(at[last]) || Double.isNaN(at[last + 1])) {
        begun &= part != PathIterator.SEG_MOVETO;
      } else {
        go(
            near,
            begun && part != PathIterator.SEG_MOVETO,
            limited(at[last]),
            limited(at[last + 1]));
        begun = true;
      }
    }
    return near;
  }

  private static void close(Path2D near, boolean begun) {
    if (begun) {
      near.closePath();
    }
  }

  private static void go(Path2D near, boolean drawn, double x, double y) {
    if (drawn) {
      near.lineTo(x, y);
    } else {
      near.moveTo(x, y);
    }
  }

  private static double limited(double place) {
    return Math.min(FAR, Math.max(-FAR, place));
  }
}
