package hurdline.chart.kit;

import hurdline.answer.Day;
import java.util.stream.IntStream;

/**
 * Means over windows of equal length, for a value that changes so often that a line of it would be
 * a blot.
 */
public final class WindowMeans {
  private static final int[] ROUND_MIN = {1, 2, 5, 10, 15, 20, 30, 60, 120, 240, 480, 1440};
  private static final int NARROWEST_PX = 4;

  /** More points than this to a window's width are too many to be told apart. */
  private static final double CROWDED = 1;

  private final double lengthH;
  private final int minutes;

  public WindowMeans(double lengthH, double widePx) {
    this.lengthH = lengthH;
    double least = 60 * lengthH * NARROWEST_PX / widePx;
    minutes =
        IntStream.of(ROUND_MIN)
            .filter(min -> min >= least)
            .findFirst()
            .orElse(ROUND_MIN[ROUND_MIN.length - 1]);
  }

  public int minutes() {
    return minutes;
  }

  public boolean isCrowded(Day.Curve curve) {
    return curve.of() == Day.Of.RATE
        && curve.hours().length > CROWDED * Math.ceil(60 * lengthH / minutes);
  }

  /** The curve itself, or its means where it is crowded. */
  public Day.Curve seen(Day.Curve curve) {
    return isCrowded(curve) ? means(curve) : curve;
  }

  private Day.Curve means(Day.Curve curve) {
    int count = (int) Math.ceil(60 * lengthH / minutes - 1e-9);
    double[] hours = new double[count + 1];
    double[] means = new double[count + 1];
    for (int at = 0; at <= count; at++) {
      hours[at] = Math.min(lengthH, at * minutes / 60.0);
    }
    for (int at = 0; at < count; at++) {
      means[at] = mean(curve, hours[at], hours[at + 1]);
    }
    means[count] = means[count - 1];
    return new Day.Curve(curve.of(), curve.name(), curve.unit(), hours, means);
  }

  private static double mean(Day.Curve curve, double fromH, double toH) {
    double sum = 0;
    double[] hours = curve.hours();
    for (int at = 1; at < hours.length; at++) {
      double lasts = Math.min(toH, hours[at]) - Math.max(fromH, hours[at - 1]);
      sum += lasts > 0 ? lasts * curve.values()[at - 1] : 0;
    }
    return sum / (toH - fromH);
  }
}
