package hurdline.plant.yaml;

import hurdline.unit.Level;
import hurdline.unit.QuantityException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code from}, {@code to} and {@code step}: amounts of one unit, or factors. */
final class SteppedValues {
  private static final int MOST = 1_000;

  private SteppedValues() {}

  /** The values as texts; none where something is wrong, which is then said. */
  static List<String> of(NodeReader from, NodeReader to, NodeReader step) {
    Optional<Level> first = level(from);
    Optional<Level> last = level(to);
    Optional<Level> by = level(step);
    if (first.isEmpty() || last.isEmpty() || by.isEmpty()) {
      return List.of();
    }
    if (!first.get().unit().equals(last.get().unit())
        || !first.get().unit().equals(by.get().unit())) {
      step.wrong(
          "\"from\", \"to\" and \"step\" have different units",
          "one unit in all three, such as 2000 bales, 6000 bales and 500 bales");
      return List.of();
    }
    BigDecimal way = last.get().number().subtract(first.get().number());
    if (way.signum() <= 0) {
      to.wrong(to.shown() + " is not above \"from\"", "a value above " + from.shown());
      return List.of();
    }
    return values(first.get(), way, by.get().number(), step);
  }

  private static List<String> values(Level first, BigDecimal way, BigDecimal by, NodeReader step) {
    if (by.signum() <= 0) {
      step.wrong(step.shown() + " never gets on", "a step above 0");
      return List.of();
    }
    BigDecimal[] steps = way.divideAndRemainder(by);
    if (steps[1].signum() != 0) {
      step.wrong(
          "steps of " + step.shown() + " do not reach \"to\"", "a step that comes out there");
      return List.of();
    }
    if (steps[0].compareTo(BigDecimal.valueOf(MOST)) >= 0) {
      step.wrong("it makes more than " + MOST + " values", "a longer step");
      return List.of();
    }
    List<String> values = new ArrayList<>();
    for (int at = 0; at <= steps[0].intValueExact(); at++) {
      values.add(first.with(first.number().add(by.multiply(BigDecimal.valueOf(at)))).text());
    }
    return values;
  }

  /** An amount or a factor; empty where none is given or it is wrong, which is then said. */
  static Optional<Level> level(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Level.read(Words.text(at)));
    } catch (QuantityException e) {
      at.wrong(e.getMessage(), "a number with a unit, a bare number, or a factor such as x0.8");
      return Optional.empty();
    }
  }
}
