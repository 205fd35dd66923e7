package hurdline.page;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.Answer;
import hurdline.answer.BreakEvenRow;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.GridAnswer;
import hurdline.answer.GridKey;
import hurdline.chart.AnswerFigures;
import hurdline.chart.kit.Chart;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleChoose;
import hurdline.sample.SampleCompare;
import hurdline.sample.SampleDay;
import hurdline.sample.SampleGrid;
import hurdline.sample.SampleSeason;
import hurdline.sample.SampleYard;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every sentence, table and drawing of every page is in the reader's units and has his marks,
 * whatever the page is of.
 */
class ReadersUnitsTest {
  private static final Pattern STYLE = Pattern.compile("<style.*?</style>", Pattern.DOTALL);

  /** The published cases are quoted as their sources have them. */
  private static final Pattern CASES =
      Pattern.compile("<summary>Every case.*?</details>", Pattern.DOTALL);

  /** What is no amount, names things outside the answer, or is quoted from the call. */
  private static final Pattern AS_TYPED =
      Pattern.compile(
          "version [0-9.]+|hurdline [0-9.]+|Student's t|[Tt]ables? beside this page[^\n]*in metric units, a t being 1000 kg"
              + "|\\S+\\.\\.\\S+\\.\\.\\S+");

  private static final Pattern TAG = Pattern.compile("<[^>]*>");
  private static final Pattern NUMBER = Pattern.compile("\\d[\\d.,]*[.,]\\d+");
  private static final Pattern US_UNIT =
      Pattern.compile(
          "(?i)[^<>\\n]{0,60}(?<![\\w-])(?:tons?|lbs?|ft|ft2|ft3|feet|acres?|acre)(?![\\w-])[^<>\\n]{0,40}");
  private static final Pattern METRIC_UNIT =
      Pattern.compile(
          "[^<>\\n]{0,60}(?<![\\w.-])(?:t|kg|m|m2|m3|ha|tonnes?|meters?|metres?)(?![\\w'-])[^<>\\n]{0,40}");

  private static final List<Answer> ANSWERS =
      List.of(
          SampleAnswer.year(),
          SampleAnswer.richYears(),
          SampleDay.traced(),
          SampleAnswer.paper(),
          SampleCompare.two(),
          SampleSeason.two(),
          SampleYard.tooSmall(),
          SampleGrid.line(),
          SampleGrid.tiles(),
          SampleChoose.budgets(),
          SampleChoose.ended());

  /** Pages for readers in the US, which both tests look at. */
  private static final Map<Answer, Map<UnitSystem, String>> ENGLISH = new IdentityHashMap<>();

  static List<Answer> answers() {
    return ANSWERS;
  }

  private static String english(Answer answer, UnitSystem units) {
    return ENGLISH
        .computeIfAbsent(answer, of -> new EnumMap<>(UnitSystem.class))
        .computeIfAbsent(units, in -> text(answer, in, Locale.US));
  }

  private static String text(Answer answer, UnitSystem units, Locale locale) {
    Wording wording = new Wording(units, locale);
    // As single files, which keep their text as text.
    String drawn =
        AnswerFigures.of(answer, wording).stream()
            .map(Chart::file)
            .collect(Collectors.joining("\n"));
    String html = ReportPage.html(answer, wording) + drawn;
    String text =
        TAG.matcher(CASES.matcher(STYLE.matcher(html).replaceAll("")).replaceAll(""))
            .replaceAll("\n");
    return AS_TYPED
        .matcher(text)
        .replaceAll("")
        .replace("&#39;", "'")
        .replace("&quot;", "\"")
        .replace("&amp;", "&");
  }

  /**
   * The same page in both: a number that is the same in German as in English has marks that one of
   * both misreads.
   */
  @ParameterizedTest
  @MethodSource("answers")
  void everyNumberHasTheMarksOfTheLocale(Answer answer) {
    for (UnitSystem units : UnitSystem.values()) {
      List<String> english = english(answer, units).lines().toList();
      List<String> german = text(answer, units, Locale.GERMANY).lines().toList();
      assertThat(german).hasSameSizeAs(english);
      List<String> foreign = new ArrayList<>();
      for (int at = 0; at < english.size(); at++) {
        List<String> swapped =
            numbers(english.get(at)).stream().map(ReadersUnitsTest::swapped).toList();
        if (!numbers(german.get(at)).equals(swapped)) {
          foreign.add(german.get(at));
        }
      }
      assertThat(foreign).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("answers")
  void noUnitIsOfTheOtherSystem(Answer answer) {
    assertThat(found(US_UNIT, without(keyUnits(answer), english(answer, UnitSystem.METRIC))))
        .isEmpty();
    assertThat(found(METRIC_UNIT, without(keyUnits(answer), english(answer, UnitSystem.US))))
        .isEmpty();
  }

  /** Values of a key are in the unit in which the file or the call has them. */
  private static List<String> keyUnits(Answer answer) {
    if (answer instanceof GridAnswer grid) {
      return grid.keys().stream().map(GridKey::unit).filter(unit -> !unit.isEmpty()).toList();
    }
    if (answer instanceof ChooseAnswer) {
      return List.of("hp");
    }
    return answer instanceof CompareAnswer compare
        ? compare.further().breakEven().stream().map(BreakEvenRow::unit).toList()
        : List.of();
  }

  private static String without(List<String> units, String text) {
    String left = text;
    for (String unit : units) {
      left = left.replaceAll("(?<=[\\d,)] |\\n)" + Pattern.quote(unit) + "(?![\\w/])", "");
    }
    return left;
  }

  @Test
  void aForeignUnitIsSeen() {
    assertThat(found(METRIC_UNIT, "lanes of 7.62 m.\nsome 1,429 t, \nUSD/t")).hasSize(3);
    assertThat(found(US_UNIT, "983 acres\nlanes of 25 ft\nton/h")).hasSize(3);
    assertThat(found(METRIC_UNIT, "25 ft, 2 ton, 7 t-shirts")).isEmpty();
  }

  private static List<String> numbers(String text) {
    return found(NUMBER, text);
  }

  private static String swapped(String number) {
    return number.replace('.', ';').replace(',', '.').replace(';', ',');
  }

  private static List<String> found(Pattern pattern, String text) {
    return pattern.matcher(text).results().map(MatchResult::group).toList();
  }
}
