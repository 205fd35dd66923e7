package hurdline.command;

import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.text.NumberFormat;
import java.util.IllformedLocaleException;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine;

/** For whom an answer is written: units, order of dates, marks of numbers. */
final class ReadersFlags {
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
      description =
          "Whose order dates and whose marks numbers have on terminal and page, such as en-US, de or"
              + " fr-CA. Default: the system's; 2027-01-31 and 1,234.5 where it has none.")
  private String locale;

  /**
   * @param usual the locale where none was asked for
   */
  Wording wording(Locale usual) {
    return new Wording(units, locale == null ? usual : wanted());
  }

  private Locale wanted() {
    try {
      Locale wanted = new Locale.Builder().setLanguageTag(locale).build();
      if (!isLanguage(wanted.getLanguage())) {
        throw unknown("is no language that is known here");
      }
      if (!wanted.getCountry().isEmpty() && !isCountry(wanted.getCountry())) {
        throw unknown("names no country that is known here");
      }
      return wanted;
    } catch (IllformedLocaleException e) {
      throw unknown("is no language tag");
    }
  }

  private static boolean isLanguage(String code) {
    return known().anyMatch(known -> known.getLanguage().equals(code));
  }

  /** Digits are a part of the world, as in es-419. */
  private static boolean isCountry(String code) {
    return known().anyMatch(known -> known.getCountry().equals(code))
        || Set.of(Locale.getISOCountries()).contains(code);
  }

  private static Stream<Locale> known() {
    return Stream.of(NumberFormat.getAvailableLocales());
  }

  private CallException unknown(String said) {
    String meant =
        known()
            .filter(known -> isMeant(known, locale))
            .findFirst()
            .map(known -> "perhaps \"" + known.toLanguageTag() + "\"")
            .orElse("one such as en-US, de or fr-CA");
    return new CallException("--locale \"" + locale + "\" " + said + "; expected " + meant);
  }

  /** As other programs spell it, de_DE.UTF-8, or the English name of a language. */
  private static boolean isMeant(Locale known, String said) {
    return !known.toString().isEmpty()
        && (known.toString().equalsIgnoreCase(said.replaceFirst("\\..*", ""))
            || known.getDisplayName(Locale.ENGLISH).equalsIgnoreCase(said));
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
