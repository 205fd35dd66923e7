package hurdline.command;

import hurdline.measure.Measure;
import hurdline.measure.Unit;
import hurdline.plant.Nearest;
import hurdline.study.Aim;
import hurdline.words.UnitSystem;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine;

/**
 * Reads an aim such as {@code mass.stalk.fed:2%} or {@code mass.stalk.fed:500ton}: how well a
 * measure is to be known.
 */
final class AimReader implements CommandLine.ITypeConverter<Aim> {
  private static final Pattern AIM = Pattern.compile("(.+):\\s*([0-9]*\\.?[0-9]+)\\s*(\\S*)");

  private final String flag;

  AimReader() {
    this("--until");
  }

  private AimReader(String flag) {
    this.flag = flag;
  }

  /** An aim of {@code --until}. */
  static Aim of(String text) {
    return of(text, "--until");
  }

  /**
   * A measure and an amount of it.
   *
   * @param flag that gave it, for messages
   */
  static Aim of(String text, String flag) {
    return new AimReader(flag).read(text);
  }

  private Aim read(String text) {
    Matcher parts = AIM.matcher(text);
    if (!parts.matches()) {
      throw wrong(
          text,
          "is no aim",
          "a measure and a half-width, such as mass.stalk.fed:2% or mass.stalk.fed:500t");
    }
    String name = parts.group(1);
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
                            Arrays.stream(Measure.values()).map(Measure::pattern).toList())))
            .measure();
    double number = Double.parseDouble(parts.group(2));
    if (!(number > 0)) {
      throw wrong(text, "can never be reached", "a half-width above 0");
    }
    if (parts.group(3).equals("%")) {
      return new Aim(name, number / 100, true, text);
    }
    return new Aim(name, number / shownPerOne(text, measure.unit(), parts.group(3)), false, text);
  }

  /** How many of the given unit make one of the measure's. */
  private double shownPerOne(String text, Unit due, String given) {
    boolean free = due == Unit.MONEY || due == Unit.MONEY_PER_TONNE || due == Unit.BALES;
    if (given.isEmpty() || free || given.equals(due.word())) {
      return 1;
    }
    if (given.equals(UnitSystem.US.shown(due.word()))) {
      return UnitSystem.US.amount(1, due.word());
    }
    throw wrong(text, "has another unit than its measure", "% or " + due.word());
  }

  private CallException wrong(String text, String said, String expected) {
    return new CallException(flag + " \"" + text + "\" " + said + "; expected " + expected);
  }

  @Override
  public Aim convert(String text) {
    try {
      return of(text);
    } catch (CallException e) {
      throw new CommandLine.TypeConversionException(e.getMessage());
    }
  }
}
