package hurdline.command;

import hurdline.words.UnitSystem;
import hurdline.words.Wording;
import java.util.IllformedLocaleException;
import java.util.Locale;
import picocli.CommandLine;

/** How an answer is shown. */
final class Shown {
  @CommandLine.Option(
      names = "--units",
      paramLabel = "us|metric",
      defaultValue = "us",
      converter = Units.class,
      description =
          "Units of terminal and page: us (short tons, pounds) or metric. Tables are metric always."
              + " Default: us.")
  private UnitSystem units;

  @CommandLine.Option(
      names = "--locale",
      paramLabel = "TAG",
      description = "Whose order dates and whose marks numbers have on terminal and page, such as en-US, de or"
              + " fr-CA. Default: the system's; 2027-01-31 and 1,234.5 where it has none.")
  private String locale;

  @CommandLine.Option(
      names = "--json",
      description = "Prints the answer as JSON on standard output, all else on standard error.")
  private boolean json;

  @CommandLine.Option(
      names = "--quiet",
      description = "Shows neither progress nor the answer in words.")
  private boolean quiet;

  private final Setting setting;

  Shown(Setting setting) {
    this.setting = setting;
  }

  boolean json() {
    return json;
  }

  boolean quiet() {
    return quiet;
  }

  Wording wording() {
    return new Wording(units, locale == null ? setting.locale() : wanted());
  }

  private Locale wanted() {
    try {
      return new Locale.Builder().setLanguageTag(locale).build();
    } catch (IllformedLocaleException e) {
      throw new CallException(
          "--locale \"" + locale + "\" is no language tag; expected one such as de or fr-CA");
    }
  }

  private static final class Units implements CommandLine.ITypeConverter<UnitSystem> {
    @Override
    public UnitSystem convert(String text) {
      return switch (text.toLowerCase(Locale.ROOT)) {
        case "us" -> UnitSystem.US;
        case "metric" -> UnitSystem.METRIC;
        default ->
            throw new CallException(
                "\"" + text + "\" is no system of units; expected us or metric");
      };
    }
  }
}
