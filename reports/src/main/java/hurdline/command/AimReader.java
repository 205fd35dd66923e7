package hurdline.command;

import hurdline.measure.Measure;
import hurdline.measure.Unit;
import hurdline.plant.Nearest;
import hurdline.study.replicate.Precision;
import hurdline.unit.Amount;
import hurdline.unit.QuantityException;
import java.util.Arrays;
import java.util.Optional;
import picocli.CommandLine;

/**
 * Reads an aim such as {@code mass.stalk.fed:2%} or {@code mass.stalk.fed:500ton}: how well a
 * measure is to be known.
 */
final class AimReader implements CommandLine.ITypeConverter<Precision> {
  private final String flag;

  AimReader() {
    this("--until");
  }

  private AimReader(String flag) {
    this.flag = flag;
  }

  /** An aim of {@code --until}. */
  static Precision of(String text) {
    return of(text, "--until");
  }

  /**
   * A measure and an amount of it.
   *
   * @param flag that gave it, for messages
   */
  static Precision of(String text, String flag) {
    return new AimReader(flag).read(text);
  }

  private Precision read(String text) {
    int colon = text.lastIndexOf(':');
    if (colon <= 0) {
      throw wrong(
          text,
          "is no aim",
          "a measure and a half-width, such as mass.stalk.fed:2% or mass.stalk.fed:500t");
    }
    String name = text.substring(0, colon).strip();
    Amount width = width(text, text.substring(colon + 1));
    Measure measure =
        Measure.find(name)
            .orElseThrow(
                () ->
                    wrong(
                        text,
                        "names no measure",
                        Nearest.expected(
                                "a measure",
                                name,
                                Arrays.stream(Measure.values()).map(Measure::pattern).toList())
                            .text()))
            .measure();
    if (!(width.number().signum() > 0)) {
      throw wrong(text, "can never be reached", "a half-width above 0");
    }
    boolean relative = width.unit().equals("%");
    double halfWidth = relative ? width.value() / 100 : inUnitOf(measure.unit(), width, text);
    return new Precision(name, halfWidth, relative, text);
  }

  private Amount width(String text, String amount) {
    try {
      return Amount.read(amount);
    } catch (QuantityException e) {
      throw new CallException(
          flag
              + " \""
              + text
              + "\": "
              + e.getMessage()
              + "; expected a half-width behind the measure, such as mass.stalk.fed:2% or mass.stalk.fed:500t");
    }
  }

  /** The amount in the unit of its measure. */
  private double inUnitOf(Unit due, Amount given, String text) {
    if (given.isBare() || given.unit().equals(due.word())) {
      return given.value();
    }
    try {
      return switch (due) {
        case COUNT, SHARE -> throw otherUnit(text, due);
        case BALES -> given.in("bales");
        case MONEY, MONEY_PER_TONNE -> inMoney(due, given).orElseThrow(() -> otherUnit(text, due));
        default -> given.in(due.word());
      };
    } catch (QuantityException e) {
      throw otherUnit(text, due);
    }
  }

  private static Optional<Double> inMoney(Unit due, Amount given) {
    return given.currency().map(code -> given.in(due.word(due.word(), code)));
  }

  private CallException otherUnit(String text, Unit due) {
    return wrong(text, "has another unit than its measure", "% or " + due.word());
  }

  private CallException wrong(String text, String said, String expected) {
    return new CallException(flag + " \"" + text + "\" " + said + "; expected " + expected);
  }

  @Override
  public Precision convert(String text) {
    return of(text);
  }
}
