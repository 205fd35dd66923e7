package hurdline.chart;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.Answer;
import hurdline.answer.GroundPlan;
import hurdline.chart.kit.Chart;
import hurdline.chart.yard.GroundChart;
import hurdline.sample.Altered;
import hurdline.sample.Draft;
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
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every chart of every verb with numbers that no plant should give and some plant gives some day:
 * none may take long, fail, or put a line where no drawing is.
 */
@Timeout(value = 60, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class OddValuesTest {
  /** No drawing is so wide or so high; in pixels. */
  private static final double FAR = 100_000;

  private static final Pattern PLACES =
      Pattern.compile(
          " (?:d|x|y|x1|y1|x2|y2|cx|cy|r|width|height|points|transform|stroke-width)=\"([^\"]*)\"");
  private static final Pattern NUMBER =
      Pattern.compile("-?(?:NaN|Infinity|[0-9.]+(?:[eE][-+]?[0-9]+)?)");

  static Map<String, Answer> answers() {
    Map<String, Answer> answers = new TreeMap<>();
    answers.put("run", SampleAnswer.year());
    answers.put("traced run", SampleDay.traced());
    answers.put("compare", SampleCompare.two());
    answers.put("season", SampleSeason.two());
    answers.put("yard", SampleYard.tooSmall());
    answers.put("line", SampleGrid.line());
    answers.put("tiles", SampleGrid.tiles());
    answers.put("budgets", SampleChoose.budgets());
    return answers;
  }

  private interface Change extends UnaryOperator<Record> {}

  /**
   * None changes the order of two numbers: an interval whose limits are the wrong way round is
   * refused elsewhere.
   */
  static Map<String, Change> changes() {
    Map<String, Change> changes = new TreeMap<>();
    changes.put("all 0", one -> Altered.numbers(one, value -> 0));
    changes.put("all equal", one -> Altered.numbers(one, value -> 7));
    changes.put("all NaN", one -> Altered.numbers(one, value -> Double.NaN));
    changes.put("every other NaN", OddValuesTest::everyOtherNaN);
    changes.put("huge", one -> Altered.numbers(one, value -> value * 1e294));
    changes.put("huge and below 0", one -> Altered.numbers(one, value -> -1e300 + value));
    changes.put("tiny", one -> Altered.numbers(one, value -> value * 1e-308));
    changes.put("all but equal", one -> Altered.numbers(one, value -> 1e6 + 1e-9 * value));
    changes.put(
        "a few huge among 0", one -> Altered.numbers(one, value -> value > 1000 ? 1e300 : 0));
    changes.put("one row", Altered::firstRows);
    changes.put("one row of 0", one -> Altered.numbers(Altered.firstRows(one), value -> 0));
    return changes;
  }

  /** 2,000,000,000 stacks, one by one, would fill the memory. */
  @Test
  void aGroundOfMoreStacksThanPixelsIsDrawnAsOne() {
    GroundPlan plan =
        Draft.of(GroundPlan.class)
            .with(GroundPlan::place, "open")
            .with(GroundPlan::bales, 2_000_000_000)
            .with(GroundPlan::stacks, 2_000_000_000)
            .each(1, GroundPlan::longBales, GroundPlan::wideBales, GroundPlan::highBales)
            .with(GroundPlan::longM, 2.4)
            .with(GroundPlan::wideM, 1.2)
            .with(GroundPlan::highM, 0.9)
            .with(GroundPlan::laneM, 6.1)
            .with(GroundPlan::areaM2, 5e10)
            .made();
    Chart figure =
        new GroundChart(SampleYard.tooSmall(), plan, new Wording(UnitSystem.US, Locale.ROOT))
            .figure();
    assertThat(figure.alternative())
        .startsWith("2000000000 stacks from above, too many to be drawn one by one, ");
    assertThat(figure.svg()).hasSizeLessThan(10_000);
    assertThat(placesOutside(figure)).isEmpty();
  }

  private static Record everyOtherNaN(Record record) {
    int[] seen = {0};
    return Altered.numbers(record, value -> seen[0]++ % 2 == 0 ? Double.NaN : value);
  }

  static Stream<Arguments> cases() {
    return changes().keySet().stream()
        .flatMap(change -> answers().keySet().stream().map(answer -> Arguments.of(answer, change)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyChartIsDrawnWithinItsSheet(String name, String change) {
    Record answer = changes().get(change).apply((Record) answers().get(name));
    List<Chart> figures = draw(answer);
    assertThat(figures).isNotEmpty();
    for (Chart figure : figures) {
      assertThat(placesOutside(figure)).as("%s, %s", figure.name(), change).isEmpty();
      assertThat(figure.svg()).hasSizeLessThan(2_000_000);
    }
  }

  private static List<Chart> draw(Record answer) {
    return AnswerFigures.of((Answer) answer, new Wording(UnitSystem.US, Locale.ROOT));
  }

  /** Numbers of the drawing that are none or lie far off. */
  private static List<String> placesOutside(Chart figure) {
    List<String> outside = new ArrayList<>();
    Matcher places = PLACES.matcher(figure.svg());
    while (places.find()) {
      Matcher numbers = NUMBER.matcher(places.group(1));
      while (numbers.find()) {
        if (!(Math.abs(Double.parseDouble(numbers.group())) < FAR)) {
          outside.add(places.group());
        }
      }
    }
    return outside;
  }
}
