package hurdline.combined;

import hurdline.unit.Amount;
import hurdline.unit.Base;
import hurdline.unit.FileUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;

/** Quantities in the text of a plant file: scaled, or said in other units. */
final class Amounts {
  private static final Pattern AMOUNT =
      Pattern.compile("[-+]?[0-9.]+(?:e[-+]?[0-9]+)? ?[A-Za-z%][A-Za-z0-9%/]*");

  /** The path of what is no amount though it may read like one. */
  private static final Pattern WORDS = Pattern.compile(".*\\.(title|description)\\.");

  /** A unit, a smaller one, and how many of it make one. */
  private static final List<Map.Entry<String, Map.Entry<String, String>>> FINER =
      List.of(
          finer("t", "kg", "1000"),
          finer("ton", "lb", "2000"),
          finer("ton", "kg", "907.18474"),
          finer("lb", "kg", "0.45359237"),
          finer("d", "h", "24"),
          finer("h", "min", "60"),
          finer("h", "s", "3600"),
          finer("min", "s", "60"),
          finer("wk", "d", "7"),
          finer("kW", "W", "1000"),
          finer("ft", "in", "12"),
          finer("in", "mm", "25.4"),
          finer("m", "mm", "1000"),
          finer("ha", "m2", "10000"),
          finer("acre", "m2", "4046.8564224"));

  private Amounts() {}

  private static Map.Entry<String, Map.Entry<String, String>> finer(
      String unit, String smaller, String of) {
    return Map.entry(unit, Map.entry(smaller, of));
  }

  private static Optional<Amount> amount(String path, String text) {
    return WORDS.matcher(path).matches() || !AMOUNT.matcher(text).matches()
        ? Optional.empty()
        : Amount.find(text).filter(found -> !found.isBare() && isUnit(found.unit()));
  }

  private static boolean isUnit(String unit) {
    for (String part : unit.split("/")) {
      if (!part.matches("[A-Z]{3}") && FileUnit.of(part).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /** In SI, of an amount without a divisor. */
  static double si(String text) {
    Amount amount = Amount.read(text);
    return amount.number().doubleValue() * FileUnit.of(amount.unit()).orElseThrow().inSi();
  }

  /** Twice the money for all that is in money. */
  static String dearer(String path, String text) {
    return amount(path, text)
        .filter(found -> found.unit().matches("[A-Z]{3}(/.*)?"))
        .map(found -> said(found.number().multiply(BigDecimal.valueOf(2)), found.unit()))
        .orElse(text);
  }

  /** Twice the mass in all that has a mass in it. */
  static String heavier(String path, String text) {
    return amount(path, text)
        .map(
            found -> {
              BigDecimal number = found.number();
              String[] parts = found.unit().split("/");
              for (int at = 0; at < parts.length; at++) {
                boolean mass =
                    FileUnit.of(parts[at]).filter(u -> u.base() == Base.MASS).isPresent();
                number = mass ? number.multiply(new BigDecimal(at == 0 ? "2" : "0.5")) : number;
              }
              return said(number, found.unit());
            })
        .orElse(text);
  }

  /** The same in other units, where that has an end in decimals. */
  static String otherwise(String path, String text, Random random) {
    return amount(path, text)
        .filter(found -> !found.unit().startsWith("%") && !path.contains(".months."))
        .map(
            found -> {
              BigDecimal number = found.number();
              List<String> parts = new ArrayList<>(List.of(found.unit().split("/")));
              for (int at = 0; at < parts.size(); at++) {
                for (var step : FINER) {
                  String unit = at == 0 ? step.getKey() : step.getValue().getKey();
                  String other = at == 0 ? step.getValue().getKey() : step.getKey();
                  if (parts.get(at).equals(unit) && random.nextBoolean()) {
                    number = number.multiply(new BigDecimal(step.getValue().getValue()));
                    parts.set(at, other);
                    break;
                  }
                }
              }
              return number.abs().compareTo(new BigDecimal("1e14")) < 0
                  ? said(number, String.join("/", parts))
                  : text;
            })
        .orElse(text);
  }

  private static String said(BigDecimal number, String unit) {
    return number.stripTrailingZeros().toPlainString() + " " + unit;
  }
}
