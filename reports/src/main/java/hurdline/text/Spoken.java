package hurdline.text;

/**
 * Amounts rounded as one says them: two or three digits, and behind them by how much they may be
 * off.
 *
 * <p>The last digit is the first one of the half-width of the 95 % interval, or the second one
 * where the first is a 1, but never beyond the third digit of the amount itself, and no decimals
 * from 10 on. Common practice, no source.
 */
final class Spoken {
  private static final int DIGITS = 3;
  private static final int ROUGH_DIGITS = 2;

  /** From here on nobody says decimals. */
  private static final double WHOLE_FROM = 10;

  /** Up to which multiple of what was simulated a number of replications is worth to be named. */
  private static final double MANY = 1_000;

  private static final double MONTHS_A_YEAR = 12;
  private static final double WEEKS_A_YEAR = 365.25 / 7;

  private final Wording wording;

  Spoken(Wording wording) {
    this.wording = wording;
  }

  /**
   * {@code 521,000 USD, give or take 6,000}; without the latter where there is no interval, or none
   * that shows.
   */
  String estimate(double value, double low, double high, String unit) {
    return amount(value, low, high, unit) + giveOrTake(value, low, high, unit);
  }

  /** {@code 521,000 USD}, the digits by the interval. */
  String amount(double value, double low, double high, String unit) {
    return withUnit(number(value, low, high, unit), unit);
  }

  /**
   * {@code about 2,000 bales}; without "about" where nothing is uncertain and nothing was rounded.
   */
  String about(double value, double low, double high, String unit) {
    return isExact(value, low, high, unit)
        ? amount(value, low, high, unit)
        : "about " + amount(value, low, high, unit);
  }

  /** {@code about 2.6 acres}: two digits, for what has no interval of its own. */
  String rough(double value, String unit) {
    return "about "
        + withUnit(
            wording.rounded(value, place(wording.shown(value, unit)) - ROUGH_DIGITS + 1, unit),
            unit);
  }

  /** A number of what needs no unit: {@code about 120}. */
  String about(double count) {
    String number = wording.rounded(count, Math.max(0, place(count) - ROUGH_DIGITS + 1), "count");
    return count < 10 ? number : "about " + number;
  }

  /**
   * A time given in years, in the unit that one would say it in: weeks up to a quarter, months
   * below two years.
   */
  String aboutYears(double years, double low, double high) {
    if (years >= 2) {
      return about(years, low, high, "yr");
    }
    double each = years < 0.25 ? WEEKS_A_YEAR : MONTHS_A_YEAR;
    String word = years < 0.25 ? " week" : " month";
    double count = Math.max(1, Math.rint(each * years));
    return "about " + wording.rounded(count, 0, "count") + word + (count == 1 ? "" : "s");
  }

  /** The number alone. */
  String number(double value, double low, double high, String unit) {
    return wording.rounded(value, lastPlace(value, low, high, unit), unit);
  }

  /** Hours out of hundred, as a whole number of at least 1 where there are any. */
  String ofHundred(double share) {
    long whole = Math.round(100 * share);
    return wording.rounded(whole == 0 && share > 0 ? 1 : whole, 0, "count");
  }

  /**
   * {@code , give or take 6,000}: the half-width of the interval, its wider side where they differ.
   * {@code , between 600 and 5,500} where that side is as wide as the value and the interval leaves
   * 0 out all the same, as one of skewed values can.
   */
  String giveOrTake(double value, double low, double high, String unit) {
    double half = Math.max(high - value, value - low);
    if (!(high - low > 1e-12 * Math.abs(value))) {
      return "";
    }
    if ((low > 0 || high < 0) && half >= Math.abs(value)) {
      return ", between "
          + end(low, value, low, high, unit)
          + " and "
          + end(high, value, low, high, unit);
    }
    String number = wording.rounded(half, lastPlace(value, low, high, unit), unit);
    return wording.isZero(half, lastPlace(value, low, high, unit), unit)
        ? ""
        : ", give or take " + number;
  }

  private String end(double end, double value, double low, double high, String unit) {
    double nearest =
        Math.min(Math.abs(wording.shown(low, unit)), Math.abs(wording.shown(high, unit)));
    return wording.rounded(end, Math.min(lastPlace(value, low, high, unit), place(nearest)), unit);
  }

  /**
   * How many would have decided, if the difference stays what it is and its spread too; in words.
   */
  static double needed(int replications, double difference, double halfWidth) {
    double ratio = halfWidth / Math.abs(difference);
    return Math.ceil(replications * ratio * ratio);
  }

  /** {@code ; about 120 replications would show which}, or that no number within reach would. */
  String wouldDecide(double needed, int replications, String what, String outcome) {
    return needed > 0 && needed <= MANY * replications
        ? about(needed) + " " + what + " would show " + outcome
        : "no number of " + what + " within reach would show " + outcome;
  }

  /** What a shown unit is called in a sentence. */
  String withUnit(String number, String unit) {
    boolean one = number.equals("1");
    String word =
        switch (unit) {
          case "t" -> wording.units().ton() + (one ? "" : "s");
          case "t/h" -> wording.units().ton() + (one ? "" : "s") + " an hour";
          case "bales", "modules", "pieces" -> one ? unit.substring(0, unit.length() - 1) : unit;
          case "yr" -> one ? "year" : "years";
          case "d" -> one ? "day" : "days";
          case "h" -> one ? "hour" : "hours";
          case "count" -> "";
          default -> wording.unit(unit);
        };
    return word.isEmpty() ? number : number + " " + word;
  }

  private boolean isExact(double value, double low, double high, String unit) {
    double shown = wording.shown(value, unit);
    double step = Math.pow(10, lastPlace(value, low, high, unit));
    return !(high > low) && Math.abs(shown / step - Math.rint(shown / step)) < 1e-4;
  }

  private int lastPlace(double value, double low, double high, String unit) {
    double shown = wording.shown(value, unit);
    double half = Math.abs(wording.shown(high, unit) - wording.shown(low, unit)) / 2;
    if (shown == 0 && !(half > 0)) {
      return 0;
    }
    int finest = place(Math.max(Math.abs(shown), half > 0 ? half : 0)) - DIGITS + 1;
    int last = finest;
    if (half > 0) {
      int first = place(half);
      last = Math.max(finest, half < (2 - 1e-9) * Math.pow(10, first) ? first - 1 : first);
    }
    boolean whole =
        unit.equals("bales")
            || unit.equals("modules")
            || unit.equals("pieces")
            || unit.equals("count")
            || Math.abs(shown) >= WHOLE_FROM;
    return whole ? Math.max(0, last) : last;
  }

  private static int place(double amount) {
    double positive = Math.abs(amount);
    return positive > 0 && !Double.isInfinite(positive)
        ? (int) Math.floor(Math.log10(positive) + 1e-12)
        : 0;
  }
}
