package hurdline.records;

import hurdline.unit.Amount;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the numbers of one column, in which a comma means one thing throughout: decimals where one
 * or two digits follow it, thousands where it stands before groups of three and the other cells are
 * whole or have a decimal point.
 */
final class NumberReader {
  private static final Pattern PARTS =
      Pattern.compile("([-+]?)([0-9][0-9.,' ]*|[.,][0-9]+)\\s*([A-Za-z%]*)");
  private static final Pattern GROUPS = Pattern.compile("[0-9]{1,3}(,[0-9]{3})+(\\.[0-9]*)?");
  private static final Pattern POINT_GROUPS = Pattern.compile("[0-9]{1,3}(\\.[0-9]{3})+(,[0-9]*)?");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("[0-9]*,[0-9]+");

  private final boolean decimalComma;
  private final boolean pointGroups;
  private String found = "";
  private String unit = "";

  private NumberReader(boolean decimalComma, boolean pointGroups) {
    this.decimalComma = decimalComma;
    this.pointGroups = pointGroups;
  }

  static NumberReader of(RecordTable table, String column) {
    return of(table.column(column), table.separator() == ';');
  }

  /**
   * @param semicolons whether semicolons part the columns, as they do where commas are decimals
   */
  static NumberReader of(List<String> cells, boolean semicolons) {
    boolean decimals =
        cells.stream()
            .map(NumberReader::digits)
            .anyMatch(d -> DECIMAL_COMMA.matcher(d).matches() && !GROUPS.matcher(d).matches());
    boolean both =
        cells.stream()
            .map(NumberReader::digits)
            .anyMatch(d -> POINT_GROUPS.matcher(d).matches() && d.contains(","));
    return new NumberReader(decimals || both || semicolons, both || semicolons);
  }

  /** What is to be said of the column; empty where nothing is. */
  String told(String column) {
    return decimalComma ? "column " + column + " has decimal commas" : "";
  }

  private static String digits(String cell) {
    Matcher parts = PARTS.matcher(cell.strip());
    return parts.matches() ? parts.group(2).replaceAll("[' ]", "") : "";
  }

  /** The number; empty where the cell is empty or none, of which {@link #found()} says why. */
  OptionalDouble read(String cell) {
    found = "";
    unit = "";
    String text = cell.strip();
    if (text.isEmpty()
        || text.equals("-")
        || text.equalsIgnoreCase("NA")
        || text.equalsIgnoreCase("n/a")) {
      return OptionalDouble.empty();
    }
    Matcher parts = PARTS.matcher(text);
    if (!parts.matches()) {
      found = "\"" + shortened(text) + "\" is no number";
      return OptionalDouble.empty();
    }
    unit = parts.group(3);
    String digits = parts.group(2).replaceAll("[' ]", "");
    if (decimalComma
        && !pointGroups
        && GROUPS.matcher(digits).matches()
        && !digits.contains(".")
        && digits.indexOf(',') == digits.lastIndexOf(',')) {
      found = "\"" + text + "\" may have a decimal comma or a thousands mark";
      return OptionalDouble.empty();
    }
    return Amount.find(parts.group(1) + plain(digits))
        .map(amount -> OptionalDouble.of(amount.value()))
        .orElseGet(() -> none(text));
  }

  private OptionalDouble none(String text) {
    found = "\"" + shortened(text) + "\" is no number";
    return OptionalDouble.empty();
  }

  private String plain(String digits) {
    if (GROUPS.matcher(digits).matches()
        && (!decimalComma
            || digits.contains(".")
            || digits.indexOf(',') != digits.lastIndexOf(','))) {
      return digits.replace(",", "");
    }
    if (pointGroups && POINT_GROUPS.matcher(digits).matches()) {
      return digits.replace(".", "").replace(',', '.');
    }
    return digits.replace(',', '.');
  }

  /** Why the last cell had no number; empty where it had one or was empty. */
  String found() {
    return found;
  }

  /** The unit behind the last number; empty where there was none. */
  String unit() {
    return unit;
  }

  /** Seconds in a unit of time as people write it; minutes where it is none. */
  static double secondsIn(String unit) {
    String plain = unit.toLowerCase(java.util.Locale.ROOT);
    return plain.startsWith("h") ? 3600 : plain.startsWith("s") ? 1 : 60;
  }

  /**
   * What one of a unit is in another, with the plurals that people write.
   *
   * @throws hurdline.unit.QuantityException if it is no unit of that kind
   */
  static double scale(String unit, String in) {
    String plain =
        unit.toLowerCase(java.util.Locale.ROOT)
            .replace("lbs", "lb")
            .replace("tons", "ton")
            .replace("tonnes", "t");
    return Amount.read("1 " + plain).in(in);
  }

  static String shortened(String text) {
    String line = text.replaceAll("\\s+", " ");
    return line.length() > 40 ? line.substring(0, 37) + "..." : line;
  }
}
