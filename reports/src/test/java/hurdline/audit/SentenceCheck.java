package hurdline.audit;

import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What terminal and page say of purchases, purge, markets, hands and places in sentences: each
 * number is a figure of summary.csv, rounded, and no line with a number stands there that is none
 * of these sentences.
 */
final class SentenceCheck implements Check {
  static final String SENTENCES = "sentences are the tables, rounded";

  private static final String NUMBER = "([-+]?[0-9][0-9,]*(?:\\.[0-9]+)?)";
  private static final Pattern LINE =
      Pattern.compile("^(?:purchases|purge|market|moisture|covers|limits|hands) .*\\d.*$");

  /**
   * A sentence on each name of a measure.
   *
   * @param words with # for a number, in the order of the measures, and @ for what is named
   */
  private record Sentence(String section, String words, List<Measure> measures) {
    static Sentence of(String section, String words, Measure... measures) {
      return new Sentence(section, words, List.of(measures));
    }

    Pattern about(String title) {
      return Pattern.compile(
          words.replace("#", NUMBER).replace("@", "(?:the )?" + Pattern.quote(title)),
          Pattern.CASE_INSENSITIVE);
    }
  }

  private static final List<Sentence> ALL =
      List.of(
          Sentence.of(
              "crops",
              "Up to # \\S+ of @ were kept apart until their release",
              Measure.YARD_KEPT_APART),
          Sentence.of(
              "crops",
              "# \\S+ of @, # ton, failed their test and were not paid for; to be rid of them cost"
                  + " # USD",
              Measure.INTAKE_FAILED,
              Measure.MASS_FAILED,
              Measure.MONEY_CROP_FAILED),
          Sentence.of(
              "crops",
              "# \\S+ of @, # ton, were rejected at weigh-in",
              Measure.INTAKE_REJECTED,
              Measure.MASS_REJECTED),
          Sentence.of(
              "crops",
              "By its grades @ was paid # % of what its price alone would come to",
              Measure.MASS_PRICE_FACTOR),
          Sentence.of(
              "crops",
              "# USD of what @ cost was paid for the area of its fields",
              Measure.MONEY_CROP_AREA),
          Sentence.of("crops", "# USD was paid for fields of @ on contract", Measure.MONEY_ADVANCE),
          Sentence.of(
              "crops",
              "fields of @ on contract, # USD more than all bales of a field came to",
              Measure.MONEY_ADVANCE_SHORT),
          Sentence.of(
              "crops",
              "fields of @ on contract,.* # USD for bales that had not come by the end",
              Measure.MONEY_ADVANCE_OPEN),
          Sentence.of(
              "crops",
              "Until they were earned, advances on @ cost # USD interest",
              Measure.MONEY_ADVANCE_INTEREST),
          Sentence.of(
              "yard.places",
              "# stacks were covered in @, by hands for # h",
              Measure.YARD_PLACE_COVERED,
              Measure.YARD_PLACE_COVER_HOURS),
          Sentence.of("", "Covers of stacks cost # USD, hands included", Measure.MONEY_COVERS),
          Sentence.of(
              "yard.places",
              "Bales set on the table from @ had # % moisture, # % of them damp",
              Measure.YARD_PLACE_MOISTURE_MEAN,
              Measure.YARD_PLACE_DAMP),
          Sentence.of(
              "yard.places",
              "Up to # ton lay in @, above the limit that the file gives in # h, # times",
              Measure.YARD_PLACE_MASS_PEAK,
              Measure.YARD_PLACE_OVER_MASS,
              Measure.YARD_PLACE_TIMES_OVER_MASS),
          Sentence.of(
              "yard.places",
              "Up to # USD lay in @, above the limit that the file gives in # h, # times",
              Measure.YARD_PLACE_VALUE_PEAK,
              Measure.YARD_PLACE_OVER_VALUE,
              Measure.YARD_PLACE_TIMES_OVER_VALUE),
          Sentence.of(
              "products",
              "# ton of @ lay beyond what its market takes at the price, which cost # USD",
              Measure.PRODUCT_BEYOND_MARKET,
              Measure.PRODUCT_MARKET_COST),
          Sentence.of(
              "products",
              "# ton of @ were purge after changeovers, which cost # USD",
              Measure.PRODUCT_PURGE,
              Measure.PRODUCT_PURGE_COST),
          Sentence.of("lines", "Too few hands came for # h of shifts of @", Measure.CREW_SHORT),
          Sentence.of(
              "lines",
              "shifts? of @; hands missing in its other shifts come to # h",
              Measure.CREW_ABSENT));

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    String terminal = answer.terminal().replaceAll("\\n +", " ").replaceAll(" +", " ");
    List<Pattern> said = new ArrayList<>();
    for (Sentence sentence : ALL) {
      Samples samples = answer.samples(answer.options().get(0));
      for (String name : names(samples, sentence)) {
        Pattern words = sentence.about(title(answer, sentence, name));
        if (isSaid(answer, sentence, name)) {
          said.add(words);
          numbers(answer, sentence, name, "terminal", words, terminal, ledger);
          numbers(answer, sentence, name, "page", words, answer.prose(), ledger);
        }
      }
    }
    terminal
        .lines()
        .filter(line -> LINE.matcher(line).matches() && !isWithoutFigure(line))
        .forEach(
            line ->
                ledger.same(
                    SENTENCES, line, true, said.stream().anyMatch(of -> of.matcher(line).find())));
    ledger.same(SENTENCES, "the answer has a base", true, !answer.options().isEmpty());
  }

  private static List<String> names(Samples samples, Sentence of) {
    Measure first = of.measures().get(0);
    return of.section().isEmpty()
        ? samples.has(first.of()) ? List.of("") : List.of()
        : samples.names(first);
  }

  private static String title(WrittenAnswer answer, Sentence of, String name) {
    return of.section().isEmpty() ? "" : answer.names().shown(of.section(), name);
  }

  /** Only what happened is said with its numbers; what did not is said in other words. */
  private static boolean isSaid(WrittenAnswer answer, Sentence of, String name) {
    return of.measures().stream().allMatch(measure -> mean(answer, measure, name).value() > 0);
  }

  /** Sentences of what was not needed, or stayed within its limit, hold the rest of a row. */
  private static boolean isWithoutFigure(String line) {
    return line.contains("never above the limit")
        || line.contains("none of them damp")
        || line.matches("hands Enough .* come to 0 h\\.");
  }

  private static Figure mean(WrittenAnswer answer, Measure measure, String name) {
    String full = name.isEmpty() ? measure.of() : measure.of(name);
    String option = answer.options().get(0);
    return answer.samples(option).has(full)
        ? Figure.summary(answer, option, full)
        : Figure.alone(0, "");
  }

  private static void numbers(
      WrittenAnswer answer,
      Sentence sentence,
      String name,
      String where,
      Pattern words,
      String text,
      Ledger ledger) {
    Matcher found = words.matcher(text);
    boolean has = found.find();
    ledger.same(SENTENCES, where + " says " + words, true, has);
    for (int at = 0; has && at < sentence.measures().size(); at++) {
      Figure figure = mean(answer, sentence.measures().get(at), name);
      Shown shown = Shown.all(found.group(at + 1)).get(0);
      double expected = Shown.inUs(figure.value(), figure.unit());
      boolean rounded = shown.isRounded(expected, Shown.inUs(figure.halfWidth(), figure.unit()));
      ledger.near(
          SENTENCES,
          where + " " + found.group(),
          rounded ? shown.value() : expected,
          shown.value());
    }
  }
}
