package hurdline.chart.run;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.AfterTaxRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.RunAnswer;
import hurdline.chart.compare.CompareCharts;
import hurdline.chart.kit.Chart;
import hurdline.sample.Draft;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleCompare;
import hurdline.sample.SampleDay;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class RunChartsTest {
  private static final RunAnswer YEAR = SampleAnswer.year();
  private static final List<Chart> ALL = draw();

  private static List<Chart> draw() {
    return new RunCharts(YEAR, new Wording(UnitSystem.US, Locale.ROOT)).all();
  }

  private static final List<Chart> COMPARED =
      new CompareCharts(SampleCompare.two(), new Wording(UnitSystem.US, Locale.ROOT)).all();

  static List<Chart> figures() {
    Wording wording = new Wording(UnitSystem.US, Locale.ROOT);
    Chart day = new DayChart(SampleDay.day(), 1, wording).figure();
    return Stream.of(ALL, COMPARED, List.of(day)).flatMap(List::stream).toList();
  }

  @Test
  void aComparisonGivesItsCharts() {
    assertThat(COMPARED)
        .extracting(Chart::name)
        .containsExactly(
            "difference-bigger_mill",
            "difference-bigger_mill-hand",
            "bottlenecks-stalk_line",
            "gain-mass.stalk.fed",
            "gain-money.margin",
            "milling-mill",
            "peaks",
            "payback-bigger_mill",
            "payback-bigger_mill-hand",
            "cash-bigger_mill",
            "cash-bigger_mill-hand",
            "tornado-bigger_mill");
    assertThat(COMPARED.get(1).alternative()).contains("(no significant difference)");
    assertThat(COMPARED.get(0).alternative()).contains("stalk fed 24 %").doesNotContain("not told");
  }

  @Test
  void aPurchaseAfterLoanAndTaxHasItsYears() {
    CompareAnswer answer =
        Draft.from(SampleCompare.two())
            .with(
                CompareAnswer::afterTax,
                List.of(
                    new AfterTaxRow("bigger_mill", 1, "USD", 640, 0, 50, 232, 333, 77, 281),
                    new AfterTaxRow("bigger_mill", 1.5, "USD", 640, 200, 38, 768, 667, 40, -6)))
            .made();
    List<Chart> charts =
        new CompareCharts(answer, new Wording(UnitSystem.US, Locale.ROOT)).afterTax();
    assertThat(charts).extracting(Chart::name).containsExactly("after-tax-bigger_mill");
    assertThat(charts.get(0).alternative())
        .endsWith("year 1 281.0 USD left, year 1.5 -6.000 USD left.");
    assertThat(charts.get(0).file()).contains("left after loan and tax");
  }

  private static Document parse(Chart figure) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(figure.file())));
  }

  @Test
  void aYearGivesEveryChart() {
    assertThat(ALL)
        .extracting(Chart::name)
        .containsExactly(
            "limited-stalk_line",
            "limited-cotton_line",
            "flow-stalk_line",
            "flow-cotton_line",
            "time",
            "fed-stalk",
            "fed-seed_cotton",
            "products-stalk_line",
            "products-cotton_line",
            "yard-stalk",
            "yard-seed_cotton",
            "money",
            "energy",
            "peak");
  }

  @ParameterizedTest
  @MethodSource("figures")
  void aChartIsWellFormedAndItsLettersStayLetters(Chart figure) throws Exception {
    Document drawing = parse(figure);
    assertThat(drawing.getElementsByTagNameNS("*", "text").getLength()).isGreaterThan(3);
    assertThat(drawing.getElementsByTagNameNS("*", "image").getLength()).isZero();
    assertThat(drawing.getElementsByTagNameNS("*", "title").item(0).getTextContent())
        .isEqualTo(figure.title());
    assertThat(drawing.getElementsByTagNameNS("*", "desc").item(0).getTextContent())
        .isEqualTo(figure.alternative());
    assertThat(drawing.getDocumentElement().getAttribute("viewBox")).startsWith("0 0 ");
  }

  @ParameterizedTest
  @MethodSource("figures")
  void aChartHasItsFiguresInATable(Chart figure) {
    assertThat(figure.table().rows())
        .isNotEmpty()
        .allSatisfy(row -> assertThat(row).hasSameSizeAs(figure.table().head()));
    assertThat(figure.alternative()).hasSizeGreaterThan(60).endsWith(".");
  }

  @Test
  void idsDifferBetweenChartsAndEveryReferenceIsMet() {
    Set<String> seen = new HashSet<>();
    for (Chart figure : ALL) {
      Set<String> own = new HashSet<>();
      Matcher ids = Pattern.compile(" id=\"([^\"]+)\"").matcher(figure.svg());
      while (ids.find()) {
        assertThat(own.add(ids.group(1)) && seen.add(ids.group(1))).as(ids.group(1)).isTrue();
      }
      Matcher uses = Pattern.compile("url\\(#([^)]+)\\)").matcher(figure.svg());
      while (uses.find()) {
        assertThat(own).contains(uses.group(1));
      }
    }
  }

  @Test
  void theSameAnswerGivesTheSameBytesInAnyZoneAndLocale() {
    TimeZone zone = TimeZone.getDefault();
    Locale locale = Locale.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(draw()).isEqualTo(ALL);
    } finally {
      TimeZone.setDefault(zone);
      Locale.setDefault(locale);
    }
  }

  @Test
  void whatAPlantLacksIsNotDrawn() {
    assertThat(
            new RunCharts(SampleAnswer.bare(), new Wording(UnitSystem.METRIC, Locale.ROOT)).all())
        .extracting(Chart::name)
        .containsExactly("limited-only", "time");
  }

  @Test
  void machineStatesAreDrawnWithPaintsThatDiffer() {
    Chart time =
        ALL.stream().filter(figure -> figure.name().equals("time")).findFirst().orElseThrow();
    assertThat(time.svg()).contains("full rate").contains("starved").contains("blocked");
    assertThat(
            Pattern.compile("fill=\"rgb\\((?:240,228,66|86,180,233|204,121,167|213,94,0)\\)\"")
                .matcher(time.svg())
                .results()
                .map(MatchResult::group)
                .distinct()
                .count())
        .isEqualTo(4);
  }

  @Test
  void noDrawingHasAPatternThatABrowserWouldPrintAsAPicture() {
    assertThat(ALL).noneMatch(figure -> figure.svg().contains("<pattern"));
  }
}
