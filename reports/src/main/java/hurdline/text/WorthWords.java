package hurdline.text;

import hurdline.answer.BreakEvenRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.KeyNames;
import hurdline.answer.TornadoRow;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** On which inputs the worth of an option hangs, and where it is nothing. */
public final class WorthWords {
  private static final int TOLD = 3;

  private final CompareAnswer answer;
  private final Wording wording;

  public WorthWords(CompareAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** The rows of an option, the input on which it hangs most first. */
  public List<TornadoRow> ranked(String option) {
    return answer.further().tornado().stream()
        .filter(row -> row.option().equals(option))
        .sorted(Comparator.comparingDouble(TornadoRow::swing).reversed())
        .toList();
  }

  /** {@code 0.8 to 1.2 times}, or {@code 20 to 30 USD/h}. */
  public String ends(TornadoRow row) {
    return plain(row.low()) + " to " + plain(row.high()) + " " + unit(row.unit());
  }

  /** An input as people read it: {@code price of fine hurd}. */
  public String input(String path) {
    return KeyNames.of(path, wording.titles());
  }

  private static String unit(String unit) {
    return unit.equals("x") ? "times" : unit;
  }

  private String plain(double value) {
    return wording.plain(value);
  }

  /** On what an option hangs most; empty where it was not asked. */
  public String hangsOn(String option) {
    return ranked(option).stream()
        .limit(TOLD)
        .filter(row -> row.swing() > 0)
        .map(
            row ->
                input(row.input())
                    + " ("
                    + money(row.netPresentValueAtLow())
                    + " to "
                    + money(row.netPresentValueAtHigh())
                    + " "
                    + currency()
                    + " from "
                    + ends(row)
                    + ")")
        .collect(Collectors.joining(", then "));
  }

  /** The rows of an option, in the order asked for. */
  public List<BreakEvenRow> breakEven(String option) {
    return answer.further().breakEven().stream()
        .filter(row -> row.option().equals(option))
        .toList();
  }

  /** Where an option is worth nothing; empty where it was not asked. */
  public String worthNothing(String option) {
    return breakEven(option).stream().map(this::told).collect(Collectors.joining("; "));
  }

  private String told(BreakEvenRow row) {
    if (row.found()) {
      return "at "
          + input(row.input())
          + " "
          + atZero(row)
          + " "
          + unit(row.unit())
          + (row.unit().equals("x")
              ? " what the file says"
              : " (the file says " + plain(row.inFile()) + " " + unit(row.unit()) + ")");
    }
    return "at no "
        + input(row.input())
        + " from "
        + roughly(row.from())
        + " to "
        + roughly(row.to())
        + " "
        + unit(row.unit())
        + (row.netPresentValue() > 0
            ? ", it is worth its price throughout"
            : ", it loses throughout");
  }

  /** {@code 201.5 (198 to 205)}: where it is worth nothing, with its interval if there is one. */
  public String atZero(BreakEvenRow row) {
    return Double.isNaN(row.low95())
        ? four(row.value())
        : within(row.value(), row.low95(), row.high95(), "");
  }

  /**
   * What an option is worth with an input at one end, and how surely that differs from what it is
   * worth as the file says.
   */
  public String atEnd(double value, double halfWidth) {
    return Double.isNaN(halfWidth)
        ? money(value)
        : within(value, value - halfWidth, value + halfWidth, currency());
  }

  private String within(double value, double low, double high, String unit) {
    String range = wording.interval(value, low, high, unit);
    return range.isEmpty()
        ? four(value)
        : wording.number(value, low, high, unit) + " (" + range + ")";
  }

  /** An end of what was searched, to a hundredth of itself. */
  private String roughly(double value) {
    return wording.number(value, 0.99 * value, 1.01 * value, "");
  }

  /** A value known to a thousandth of itself. */
  public String four(double value) {
    return wording.number(value, 0.999 * value, 1.001 * value, "");
  }

  /** An amount of money to a hundredth of itself or so, without its currency. */
  public String money(double value) {
    double known = Math.abs(value) / 100;
    return wording.number(value, value - known, value + known, currency());
  }

  private String currency() {
    return answer.header().currency();
  }
}
