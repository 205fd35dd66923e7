package hurdline.chart.kit;

import hurdline.text.Wording;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.data.Range;

/**
 * An axis of numbers that can be drawn whatever its data are: both ends are finite, and they lie so
 * far apart that its ticks differ. The library's own axis looks for ticks without end where the
 * data are all equal, all 0 or tiny.
 *
 * <p>Every change of the ends, by data or by call, ends in {@link #setRange(Range, boolean,
 * boolean)}.
 */
final class BoundedAxis extends NumberAxis {
  private static final long serialVersionUID = 1L;

  /** Of the greater end, so that the ticks of data that hardly differ have labels that do. */
  private static final double LEAST_SHARE = 0.02;

  /** Of whatever unit; data that reach no further from 0 are drawn as 0. */
  private static final double LEAST_END = 1e-9;

  /** Sums and differences of two ends must be finite. */
  private static final double GREATEST_END = 1e300;

  private final transient Wording wording;

  BoundedAxis(String label, Wording wording) {
    super(label);
    this.wording = wording;
    setAutoRangeMinimumSize(Double.MIN_NORMAL);
    setRange(getRange(), false, false);
  }

  @Override
  public void setRange(double low, double high) {
    setRange(drawn(low, high));
  }

  @Override
  public void setRange(Range range, boolean turnOffAutoRange, boolean notify) {
    Range drawn = drawn(range.getLowerBound(), range.getUpperBound());
    if (wording != null) {
      setNumberFormatOverride(wording.axisFormat(drawn.getLength()));
    }
    super.setRange(drawn, turnOffAutoRange, notify);
  }

  /** The range nearest to the wanted one that can be drawn; 0 to 1 where there is nothing but 0. */
  static Range drawn(double wantedLow, double wantedHigh) {
    double low = end(Math.min(wantedLow, wantedHigh));
    double high = end(Math.max(wantedLow, wantedHigh));
    double greater = Math.max(Math.abs(low), Math.abs(high));
    if (greater < LEAST_END) {
      return new Range(0, 1);
    }
    double least = LEAST_SHARE * greater;
    if (high - low >= least) {
      return new Range(low, high);
    }
    double middle = low / 2 + high / 2;
    return new Range(middle - least / 2, middle + least / 2);
  }

  private static double end(double wanted) {
    return Double.isNaN(wanted) ? 0 : Math.min(GREATEST_END, Math.max(-GREATEST_END, wanted));
  }
}
