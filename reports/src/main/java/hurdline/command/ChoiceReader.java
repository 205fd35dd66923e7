package hurdline.command;

import hurdline.answer.ChooseTerms;
import hurdline.study.choose.ChoiceChange;
import hurdline.study.replicate.Precision;
import hurdline.unit.Amount;
import hurdline.unit.QuantityException;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code KEY=A|B|C}, and bounds such as {@code yard.stalk.peak:'4000 bales':90%}. */
final class ChoiceReader {
  private ChoiceReader() {}

  static ChoiceChange change(String text) {
    int equals = text.indexOf('=');
    String name = equals < 0 ? "" : text.substring(0, equals).strip();
    List<String> values = new ArrayList<>();
    for (String value : text.substring(equals + 1).split("\\|", -1)) {
      values.add(value.strip());
    }
    if (name.isEmpty() || values.stream().anyMatch(String::isEmpty)) {
      throw wrong(
          "--choice \"" + text + "\" is no choice",
          "KEY=A|B|C such as 'machines.mill.power=25 hp|45 hp'");
    }
    if (values.stream().distinct().count() < values.size()) {
      throw wrong("--choice \"" + text + "\" has a value twice", "each value once");
    }
    return new ChoiceChange(name, values);
  }

  /**
   * @param flag {@code --at-least} or {@code --at-most}
   */
  static ChooseTerms.Bound bound(String text, String flag) {
    int colon = text.lastIndexOf(':');
    boolean hasShare = colon > 0 && text.substring(colon + 1).strip().endsWith("%");
    double share = hasShare ? share(text, flag, text.substring(colon + 1).strip()) : 1;
    String rest = hasShare ? text.substring(0, colon) : text;
    Precision value = AimReader.of(rest, flag);
    if (value.relative()) {
      throw wrong(
          flag + " \"" + text + "\" has no amount for its bound",
          "a measure, an amount and perhaps a share of years, such as yard.stalk.peak:'4000 bales':90%");
    }
    return new ChooseTerms.Bound(
        value.measure(), "", flag.equals("--at-least"), value.halfWidth(), share);
  }

  private static double share(String text, String flag, String share) {
    try {
      double read = Amount.read(share).value() / 100;
      if (read > 0 && read <= 1) {
        return read;
      }
    } catch (QuantityException e) {
      // Falls through to the message that covers every way of being wrong.
    }
    throw wrong(flag + " \"" + text + "\" has no share of years", "one above 0 and up to 100 %");
  }

  /** Budgets, of which each is an amount in the plant's money. */
  static List<Double> budgets(List<String> texts) {
    List<Double> budgets = new ArrayList<>();
    for (String text : texts) {
      try {
        Amount amount = Amount.read(text.strip());
        if (amount.isBare() || amount.currency().isPresent()) {
          budgets.add(amount.value());
          continue;
        }
      } catch (QuantityException e) {
        // Falls through to the message that covers every way of being wrong.
      }
      throw wrong(
          "--budget \"" + text + "\" is no amount of money", "one such as 60000 or '60000 USD'");
    }
    return budgets;
  }

  private static CallException wrong(String said, String expected) {
    return new CallException(said + "; expected " + expected);
  }
}
