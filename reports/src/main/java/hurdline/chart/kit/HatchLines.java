package hurdline.chart.kit;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * The lines of a hatch within a box, as lines and not as a pattern to be repeated: browsers print a
 * pattern as a picture as large as the drawing, once for each shape that has it.
 */
final class HatchLines {
  private static final double APART = 8;
  private static final double DASH = 2;

  private final Path2D lines = new Path2D.Double();
  private final Rectangle2D box;

  private HatchLines(Rectangle2D box) {
    this.box = box;
  }

  static Path2D of(Hatch.Kind kind, Rectangle2D box) {
    HatchLines lines = new HatchLines(box);
    switch (kind) {
      case RISING -> lines.rising();
      case FALLING -> lines.falling();
      case LEVEL -> lines.level();
      case UPRIGHT -> lines.upright();
      case CROSSED -> {
        lines.rising();
        lines.falling();
      }
      case DOTTED -> {
        lines.dashes(1.5, 2.5);
        lines.dashes(5.5, 6.5);
      }
    }
    return lines.lines;
  }

  /** Least value from a start on, in steps, that is not under a bound. */
  private static double first(double from, double step, double least) {
    return from + step * Math.ceil((least - from) / step);
  }

  private void line(double x1, double y1, double x2, double y2) {
    lines.moveTo(x1, y1);
    lines.lineTo(x2, y2);
  }

  /** Where x + y is a multiple of the step. */
  private void rising() {
    double last = box.getMaxX() + box.getMaxY();
    for (double sum = first(0, APART, box.getMinX() + box.getMinY()); sum < last; sum += APART) {
      double left = Math.max(box.getMinX(), sum - box.getMaxY());
      double right = Math.min(box.getMaxX(), sum - box.getMinY());
      line(left, sum - left, right, sum - right);
    }
  }

  /** Where x - y is a multiple of the step. */
  private void falling() {
    double last = box.getMaxX() - box.getMinY();
    for (double less = first(0, APART, box.getMinX() - box.getMaxY()); less < last; less += APART) {
      double left = Math.max(box.getMinX(), less + box.getMinY());
      double right = Math.min(box.getMaxX(), less + box.getMaxY());
      line(left, left - less, right, right - less);
    }
  }

  private void level() {
    for (double y = first(2, APART / 2, box.getMinY()); y < box.getMaxY(); y += APART / 2) {
      line(box.getMinX(), y, box.getMaxX(), y);
    }
  }

  private void upright() {
    for (double x = first(2, APART / 2, box.getMinX()); x < box.getMaxX(); x += APART / 2) {
      line(x, box.getMinY(), x, box.getMaxY());
    }
  }

  private void dashes(double atX, double atY) {
    for (double y = first(atY, APART, box.getMinY()); y < box.getMaxY(); y += APART) {
      for (double x = first(atX, APART, box.getMinX() - DASH); x < box.getMaxX(); x += APART) {
        line(Math.max(x, box.getMinX()), y, Math.min(x + DASH, box.getMaxX()), y);
      }
    }
  }
}
