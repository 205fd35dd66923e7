package hurdline.command;

import hurdline.study.compare.CompareAsk;
import hurdline.study.compare.WhatIfChange;
import hurdline.study.replicate.IndifferenceZone;
import hurdline.study.replicate.Precision;
import hurdline.unit.Dimension;
import hurdline.unit.FileUnit;
import hurdline.unit.Quantity;
import hurdline.unit.QuantityException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import picocli.CommandLine;

/** What is asked of a comparison besides the differences. */
final class AskFlags {
  private static final String LEAST = ":least";

  @CommandLine.Option(
      names = "--within",
      paramLabel = "TIME",
      converter = Years.class,
      description =
          "How likely is it that an option has paid back after this time, such as 5yr? Default: in"
              + " its life.")
  private Double withinYr;

  @CommandLine.Option(
      names = "--service-lives",
      paramLabel = "N",
      description =
          "How many service lives of each option are simulated, each calendar of which opens with the crop"
              + " that the one before left. Default: 30, or more where half as many calendars as there are"
              + " replications hold more.")
  private Integer lives;

  @CommandLine.Option(
      names = "--best",
      paramLabel = "MEASURE:BAND",
      description =
          "Which of base and options is the best in a measure, if it is better by this band or more,"
              + " such as money.margin:10000? Runs on until one is left. The greatest is the best;"
              + " MEASURE:BAND:least picks the least.")
  private String best;

  @CommandLine.Option(
      names = "--gain",
      description =
          "What would 10 %% more of each thing bring: the rate of each machine, the power of a mill,"
              + " the room of a bin, one more of a resource, a longer shift?")
  private boolean gain;

  @CommandLine.Option(
      names = "--tornado",
      paramLabel = "KEY=20%,...",
      arity = "0..1",
      fallbackValue = "",
      description =
          "Sensitivity: which inputs move the net present value of an option? Each is put a share lower and higher, or"
              + " to both ends of KEY=LOW..HIGH. Without keys: prices, yields, energy, wages and stops,"
              + " 20 %% each.")
  private String tornado;

  @CommandLine.Option(
      names = "--break-even",
      paramLabel = "KEY",
      split = ",",
      description =
          "Break-even: at which value of this key is an option's net present value zero, such as money.crop_prices.stalk,"
              + " deliveries.stalk.fields.*.area or options.bigger_mill.cost? May be given several"
              + " times.")
  private List<String> breakEven = new ArrayList<>();

  /**
   * @param among options; none for each of the file alone, or for no option where there are
   *     what-ifs
   */
  CompareAsk ask(List<String> among, List<WhatIfChange> whatIfs) {
    return new CompareAsk(
        among,
        whatIfs,
        withinYr == null ? OptionalDouble.empty() : OptionalDouble.of(withinYr),
        lives(),
        gain,
        Optional.ofNullable(tornado).map(SwingReader::of),
        breakEven.stream().map(String::strip).toList(),
        Optional.ofNullable(best).map(AskFlags::zone));
  }

  private OptionalInt lives() {
    if (lives == null) {
      return OptionalInt.empty();
    }
    if (!(lives >= CompareAsk.fewestLives())) {
      throw new CallException(
          "--service-lives is "
              + lives
              + "; expected a whole number from "
              + CompareAsk.fewestLives()
              + " on");
    }
    return OptionalInt.of(lives);
  }

  private static IndifferenceZone zone(String text) {
    boolean least = text.endsWith(LEAST);
    Precision aim =
        AimReader.of(least ? text.substring(0, text.length() - LEAST.length()) : text, "--best");
    if (aim.relative()) {
      throw new CallException(
          "--best \""
              + text
              + "\" has a share for its band; expected an amount, settled before anything is known");
    }
    return new IndifferenceZone(aim.measure(), aim.halfWidth(), least, text);
  }

  private static final class Years implements CommandLine.ITypeConverter<Double> {
    @Override
    public Double convert(String text) {
      try {
        double years = FileUnit.YEAR.fromSi(Quantity.read(text, Dimension.TIME).si());
        if (years > 0) {
          return years;
        }
      } catch (QuantityException e) {
        throw new CallException(e.getMessage() + "; expected a time such as 5yr");
      }
      throw new CallException(
          "\"" + text + "\" is no time to pay back in; expected a time above 0 such as 5yr");
    }
  }
}
