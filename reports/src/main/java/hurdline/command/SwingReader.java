package hurdline.command;

import hurdline.study.option.InputRange;
import hurdline.unit.Amount;
import hurdline.unit.Level;
import hurdline.unit.QuantityException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Reads inputs such as {@code products.fiber.price=20%} or {@code money.wage=20 USD/h..30 USD/h}.
 */
final class SwingReader {
  private SwingReader() {}

  /** Inputs with commas between them; none for the empty text. */
  static List<InputRange> of(String text) {
    if (text.isBlank()) {
      return List.of();
    }
    List<String> inputs = Arrays.asList(text.split(",", -1));
    if (inputs.stream().skip(1).anyMatch(input -> !input.contains("="))) {
      throw wrong(text, " has a comma that no further KEY= follows, and numbers have none");
    }
    return inputs.stream().map(SwingReader::one).toList();
  }

  private static InputRange one(String text) {
    int equals = text.indexOf('=');
    if (equals <= 0) {
      throw wrong(text, " is no input");
    }
    String key = text.substring(0, equals).strip();
    String by = text.substring(equals + 1).strip();
    int dots = by.indexOf("..");
    return dots < 0
        ? around(text, key, by)
        : between(text, key, by.substring(0, dots), by.substring(dots + 2));
  }

  private static InputRange around(String text, String key, String by) {
    Optional<Amount> share =
        Optional.of(amount(text, by)).filter(amount -> amount.unit().equals("%"));
    if (share.isEmpty()) {
      throw wrong(text, " has no two ends in one unit");
    }
    double part = share.get().value() / 100;
    if (!(part > 0 && part < 1)) {
      throw wrong(text, " has no share between 0 and 100 %");
    }
    return InputRange.around(key, part);
  }

  private static InputRange between(String text, String key, String low, String high) {
    if (high.startsWith(".") || !level(text, low).unit().equals(level(text, high).unit())) {
      throw wrong(text, " has no two ends in one unit");
    }
    return new InputRange(key, low.strip(), high.strip());
  }

  private static Amount amount(String text, String by) {
    try {
      return Amount.read(by);
    } catch (QuantityException e) {
      throw wrong(text, ": " + e.getMessage());
    }
  }

  private static Level level(String text, String end) {
    try {
      return Level.read(end);
    } catch (QuantityException e) {
      throw wrong(text, ": " + e.getMessage());
    }
  }

  private static CallException wrong(String text, String said) {
    return new CallException(
        "--tornado \""
            + text.strip()
            + "\""
            + said
            + "; expected KEY=20% or KEY=LOW..HIGH, such as products.fiber.price=20% or"
            + " money.wage=20USD/h..30USD/h");
  }
}
