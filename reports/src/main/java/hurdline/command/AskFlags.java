package hurdline.command;

import hurdline.study.CompareAsk;
import hurdline.unit.Dimension;
import hurdline.unit.FileUnit;
import hurdline.unit.Quantity;
import hurdline.unit.QuantityException;
import java.util.List;
import java.util.OptionalDouble;
import picocli.CommandLine;

/** What is asked of a comparison besides the differences. */
final class AskFlags {
  @CommandLine.Option(
      names = "--within",
      paramLabel = "TIME",
      converter = Years.class,
      description =
          "How likely is it that an option has paid back after this time, such as 5yr? Default: in"
              + " its life.")
  private Double withinYr;

  @CommandLine.Option(
      names = "--gain",
      description =
          "What would 10 %% more of each thing bring: the rate of each machine, the power of a mill,"
              + " the room of a bin, one more of a resource, a longer shift?")
  private boolean gain;

  /** @param among options; none for each of the file alone */
  CompareAsk ask(List<String> among) {
    return new CompareAsk(
        among, withinYr == null ? OptionalDouble.empty() : OptionalDouble.of(withinYr), gain);
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
        throw new CommandLine.TypeConversionException(
            e.getMessage() + "; expected a time such as 5yr");
      }
      throw new CommandLine.TypeConversionException(
          "\"" + text + "\" is no time to pay back in; expected a time above 0 such as 5yr");
    }
  }
}
