package hurdline.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/**
 * Writes a number with no more digits than its interval supports.
 *
 * <p>The last digit shown is that of the first digit of the interval's half-width; if that digit is
 * a 1, the one after it, since rounding would then be coarse against the interval. A number without
 * an interval gets four digits, none gets more than five. Common practice, no source.
 */
final class Digits {
  private static final int WITHOUT_INTERVAL = 4;
  private static final int AT_MOST = 5;
  private static final int AXIS_DECIMALS = 3;
  private static final double POWERS_FROM = 1e15;

  private final DecimalFormatSymbols symbols;

  Digits(Locale locale) {
    symbols = DecimalFormatSymbols.getInstance(locale);
  }

  /** The decimal place of the last digit to show: 0 for units, 1 for tens, −1 for tenths. */
  static int lastPlace(double value, double low, double high) {
    double halfWidth = (high - low) / 2;
    double largest = Math.max(Math.abs(value), halfWidth > 0 ? halfWidth : 0);
    if (!(largest > 0)) {
      return 0;
    }
    int first = place(largest);
    if (!(halfWidth > 0) || Double.isInfinite(halfWidth)) {
      return Math.min(0, first - WITHOUT_INTERVAL + 1);
    }
    int last = place(halfWidth);
    if (halfWidth < 2 * Math.pow(10, last)) {
      last--;
    }
    return Math.max(last, first - AT_MOST + 1);
  }

  private static int place(double positive) {
    return (int) Math.floor(Math.log10(positive) + 1e-12);
  }

  /** The number rounded to a decimal place, grouped by thousands; "not defined" for NaN. */
  String at(double value, int lastPlace) {
    if (!Double.isFinite(value)) {
      return "not defined";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(-lastPlace, RoundingMode.HALF_EVEN);
    int decimals = Math.max(0, -lastPlace);
    DecimalFormat format = new DecimalFormat("#,##0", symbols);
    format.setMinimumFractionDigits(decimals);
    format.setMaximumFractionDigits(decimals);
    // Not "-0": a reader would look for the loss.
    return format.format(rounded.signum() == 0 ? BigDecimal.ZERO : rounded);
  }

  /** A decimal point as the locale has it. */
  String marks(String number) {
    return number.replace('.', symbols.getDecimalSeparator());
  }

  /**
   * Grouped by thousands, as many decimals as an axis' ticks need; by powers of ten where thousands
   * would fill the sheet.
   *
   * @param length of the axis, above 0
   */
  DecimalFormat axisFormat(double length) {
    if (length >= POWERS_FROM) {
      return new DecimalFormat("0.###E0", symbols);
    }
    DecimalFormat format = new DecimalFormat("#,##0", symbols);
    format.setMaximumFractionDigits(Math.max(AXIS_DECIMALS, 2 - place(length)));
    return format;
  }
}
