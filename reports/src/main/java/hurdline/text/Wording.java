package hurdline.text;

import hurdline.answer.Answer;
import hurdline.answer.BottleneckRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.GridAnswer;
import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import java.math.BigDecimal;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;

/** Amounts as people read them: unit system, locale, and the digits that they deserve. */
public final class Wording {
  private static final double ROUNDING = 1e-12;
  private static final double BEYOND_COUNTING = 1e9;

  private final UnitSystem units;
  private final Digits digits;
  private final Dates dates;
  private final Titles titles;

  public Wording(UnitSystem units, Locale locale) {
    this(units, new Digits(locale), new Dates(locale), Titles.none());
  }

  private Wording(UnitSystem units, Digits digits, Dates dates, Titles titles) {
    this.units = units;
    this.digits = digits;
    this.dates = dates;
    this.titles = titles;
  }

  /** The same for an answer, whose plant gives things titles. */
  public Wording reading(Answer answer) {
    return new Wording(
        units, digits, dates, answer.outline().titles().marking(alternatives(answer), this::marks));
  }

  private static List<String> alternatives(Answer answer) {
    return answer instanceof CompareAnswer compared
        ? compared.plants()
        : answer instanceof GridAnswer grid ? grid.plants() : List.of();
  }

  /** What is read in place of names; of an answer where {@link #reading} was asked for it. */
  public Titles titles() {
    return titles;
  }

  public UnitSystem units() {
    return units;
  }

  /** {@code 2,560 ton}. */
  public String amount(SummaryRow row) {
    return withUnit(number(row.mean(), row.low95(), row.high95(), row.unit()), row.unit());
  }

  /** {@code 2,560 ton (2,520 to 2,600)}; without the bracket where there is no interval. */
  public String withInterval(SummaryRow row) {
    return withInterval(row.mean(), row.low95(), row.high95(), row.unit());
  }

  /** The same of any value between two limits. */
  public String withInterval(double value, double low, double high, String unit) {
    return withUnit(number(value, low, high, unit), unit) + bracket(value, low, high, unit);
  }

  /** {@code 2,560 (2,520 to 2,600)}, for a cell whose column has the unit. */
  public String cell(double value, double low, double high, String unit) {
    return number(value, low, high, unit) + bracket(value, low, high, unit);
  }

  private String bracket(double value, double low, double high, String unit) {
    String range = interval(value, low, high, unit);
    return range.isEmpty() ? "" : " (" + range + ")";
  }

  /** {@code 57 % (54 to 60 %)} of a line's hours. */
  public String share(BottleneckRow row) {
    String range = interval(row.share(), row.shareLow95(), row.shareHigh95(), "share");
    String share =
        withUnit(number(row.share(), row.shareLow95(), row.shareHigh95(), "share"), "share");
    return range.isEmpty() ? share : share + " (" + range + " %)";
  }

  /** A number alone, digits by its interval. */
  public String number(double value, double low, double high, String unit) {
    if (high - low <= ROUNDING * Math.abs(value)) {
      return digits.at(shown(value, unit), lastPlace(value, Double.NaN, Double.NaN, unit));
    }
    return digits.at(shown(value, unit), lastPlace(value, low, high, unit));
  }

  /** A number with its unit, without an interval. */
  public String amount(double value, String unit) {
    return withUnit(number(value, Double.NaN, Double.NaN, unit), unit);
  }

  /** Three digits and the unit, for means of which no interval is told. */
  public String rough(double value, String unit) {
    return withUnit(roughly(value, unit), unit);
  }

  /** Three digits. */
  public String roughly(double value, String unit) {
    double shown = shown(value, unit);
    int last =
        shown == 0 || Double.isNaN(shown)
            ? 0
            : (int) Math.floor(Math.log10(Math.abs(shown)) + 1e-12) - 2;
    return digits.at(shown, last);
  }

  /** A number that somebody typed, with its unit and no digits that were not typed. */
  public String asGiven(double value, String unit) {
    int decimals = 0;
    double shown = shown(value, unit);
    while (decimals < 4 && Math.abs(shown - Math.rint(shown)) > 1e-9) {
      decimals++;
      shown *= 10;
    }
    return withUnit(fixed(value, decimals, unit), unit);
  }

  /** A number of the plant file, as it stands there. */
  public String plain(double value) {
    if (!Double.isFinite(value)) {
      return digits.at(value, 0);
    }
    int decimals = Math.max(0, new BigDecimal(Double.toString(value)).stripTrailingZeros().scale());
    return digits.at(value, -decimals);
  }

  /** A number that is written already, with a point and without groups, in the reader's marks. */
  public String marks(String number) {
    return digits.marks(number);
  }

  /** A whole number, grouped by thousands. */
  public String count(double count) {
    return digits.at(count, 0);
  }

  /**
   * {@code about 1,600,000}: two digits are what an estimate of a number of replications deserves.
   */
  public String aboutAsMany(double needed) {
    if (!(needed < BEYOND_COUNTING)) {
      return "more than " + count(BEYOND_COUNTING);
    }
    double place = Math.pow(10, Math.max(0, Math.floor(Math.log10(needed)) - 1));
    return "about " + count(Math.ceil(needed / place) * place);
  }

  /** A number to a given count of decimals, for columns that line up. */
  public String fixed(double value, int decimals, String unit) {
    return digits.at(shown(value, unit), -decimals);
  }

  /** A number to a decimal place of the shown unit: 3 for thousands, −1 for tenths. */
  String rounded(double value, int lastPlace, String unit) {
    return digits.at(shown(value, unit), lastPlace);
  }

  /** Whether nothing of it is left when it is so rounded. */
  boolean isZero(double value, int lastPlace, String unit) {
    return Math.abs(shown(value, unit)) < 0.5 * Math.pow(10, lastPlace);
  }

  /** {@code 2,520 to 2,600}, or empty where there is no interval or none that shows. */
  public String interval(double value, double low, double high, String unit) {
    if (!(high - low > ROUNDING * Math.abs(value))) {
      return "";
    }
    int last = lastPlace(value, low, high, unit);
    String from = digits.at(shown(low, unit), last);
    String to = digits.at(shown(high, unit), last);
    return from.equals(to) ? "" : from + " to " + to;
  }

  /** The unit as it stands behind a number or at the head of a column. */
  public String unit(String unit) {
    return unit.equals("share") ? "%" : units.shown(unit);
  }

  /** The amount in the shown unit, for a picture. */
  public double shown(double value, String unit) {
    return unit.equals("share") ? 100 * value : units.amount(value, unit);
  }

  /** {@code 2027-07-06}, {@code Jul 6, 2027} or {@code 6 Jul 2027}. */
  public String date(LocalDate date) {
    return dates.date(date);
  }

  /** The date without its year. */
  public String day(LocalDate date) {
    return dates.day(date);
  }

  /** {@code 2027-07} or {@code Jul 2027}. */
  public String month(YearMonth month) {
    return dates.month(month);
  }

  /** {@code Jan 4, 2027 to Dec 31, 2027}. */
  public String span(LocalDate from, LocalDate to) {
    return date(from) + " to " + date(to);
  }

  /** How the numbers of an axis are written whose ends lie so far apart, in what it shows. */
  public NumberFormat axisFormat(double length) {
    return digits.axisFormat(length);
  }

  private int lastPlace(double value, double low, double high, String unit) {
    int last = Digits.lastPlace(shown(value, unit), shown(low, unit), shown(high, unit));
    boolean counted =
        unit.equals("bales")
            || unit.equals("modules")
            || unit.equals("pieces")
            || unit.equals("count");
    return counted ? Math.max(0, last) : last;
  }

  private String withUnit(String number, String unit) {
    return unit.equals("count") || number.equals("not defined")
        ? number
        : number + " " + unit(unit);
  }
}
