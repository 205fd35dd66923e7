package hurdline.command;

import hurdline.study.Swing;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads inputs such as {@code products.fiber.price=20%} or {@code money.wage=20 USD/h..30 USD/h}. */
final class SwingReader {
  private static final Pattern SHARE = Pattern.compile("([0-9]*\\.?[0-9]+)\\s*%");

  private SwingReader() {}

  /** Inputs with commas between them; none for the empty text. */
  static List<Swing> of(String text) {
    return text.isBlank() ? List.of() : Arrays.stream(text.split(",", -1)).map(SwingReader::one).toList();
  }

  private static Swing one(String text) {
    int equals = text.indexOf('=');
    if (equals <= 0) {
      throw wrong(text, "is no input");
    }
    String key = text.substring(0, equals).strip();
    String by = text.substring(equals + 1).strip();
    Matcher share = SHARE.matcher(by);
    if (share.matches()) {
      double part = Double.parseDouble(share.group(1)) / 100;
      if (!(part > 0 && part < 1)) {
        throw wrong(text, "has no share between 0 and 100 %");
      }
      return Swing.around(key, part);
    }
    int dots = by.indexOf("..");
    if (dots > 0 && Swing.areEnds(by.substring(0, dots), by.substring(dots + 2))) {
      return new Swing(key, by.substring(0, dots).strip(), by.substring(dots + 2).strip());
    }
    throw wrong(text, "has no two ends in one unit");
  }

  private static CallException wrong(String text, String said) {
    return new CallException(
        "--tornado \""
            + text.strip()
            + "\" "
            + said
            + "; expected KEY=20% or KEY=LOW..HIGH, such as products.fiber.price=20% or"
            + " money.wage=20USD/h..30USD/h");
  }
}
