package hurdline.page;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.Answer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.LifeTerms;
import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.Titles;
import hurdline.sample.Draft;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleChoose;
import hurdline.sample.SampleCompare;
import hurdline.sample.SampleDay;
import hurdline.sample.SampleGrid;
import hurdline.sample.SampleSeason;
import hurdline.sample.SampleYard;
import hurdline.table.RecordFile;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ReportPageTest {
  private static final Wording US = new Wording(UnitSystem.US, Locale.ROOT);
  private static final String YEAR = ReportPage.html(SampleAnswer.year(), US);

  /** Of machines, a bin, a crop, lines, products, options and plans of the samples. */
  private static final List<String> NAMES =
      List.of(
          "mill",
          "saw",
          "feeder",
          "hurd_bin",
          "stalk",
          "stalk_line",
          "fine_hurd",
          "bigger_mill",
          "bigger_mill\\+hand",
          "two_shifts",
          "barn",
          "Bare");

  static List<Answer> answers() {
    return List.of(
        SampleAnswer.year(),
        SampleDay.traced(),
        SampleAnswer.bare(),
        SampleAnswer.paper(),
        SampleCompare.two(),
        SampleSeason.two(),
        SampleGrid.line(),
        SampleGrid.tiles(),
        SampleChoose.budgets(),
        SampleChoose.ended(),
        SampleYard.tooSmall(),
        SampleYard.stopped());
  }

  private static List<String> found(String page, String pattern) {
    List<String> found = new ArrayList<>();
    Matcher matcher = Pattern.compile(pattern).matcher(page);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  @Test
  void theWordForAMassIsThatOfItsUnit() {
    assertThat(YEAR).contains("per ton fed USD/ton").doesNotContain("tonne");
    String metric =
        ReportPage.html(SampleAnswer.year(), new Wording(UnitSystem.METRIC, Locale.ROOT));
    assertThat(metric).contains("per tonne fed USD/t<").doesNotContain("/ton");
  }

  /** A title is small within a sentence, whoever tells it. */
  @Test
  void titlesOfCropsAreSmallWithinASentence() {
    Titles titles =
        new Titles(
            Map.of(
                Titles.key("crop", "stalk"), "Stalk",
                Titles.key("crop", "seed_cotton"), "Seed cotton"));
    RunAnswer years = SampleAnswer.richYears();
    Outline plain = years.outline();
    Outline titled =
        new Outline(plain.crops(), plain.lines(), plain.places(), plain.stores(), titles);
    String page = ReportPage.html(Draft.from(years).with(RunAnswer::outline, titled).made(), US);
    assertThat(page)
        .contains(
            "For seed cotton no mean is known exactly", "more stalk than the file's mean year")
        .doesNotContain("For Seed cotton", "more Stalk than");
  }

  @Test
  void figuresAdjustedForTheDrawnCropStandBesideTheMeans() {
    String page = ReportPage.html(SampleAnswer.richYears(), US);
    assertThat(page)
        .contains(
            "The 40 years drawn brought 1.9 % more stalk than the file's mean year (standard error 2.2 %).",
            "adjusted for the drawn crop",
            ">2,300</td><td class=\"n\">2,270 to 2,340</td>",
            "For seed cotton no mean is known exactly, so nothing is adjusted.");
    assertThat(YEAR).doesNotContain("adjusted");
  }

  @ParameterizedTest
  @MethodSource("answers")
  void thePageFromTheRecordReadBackIsThePageFromMemory(Answer answer) throws IOException {
    StringWriter record = new StringWriter();
    RecordFile.write(answer, record);
    Answer back = RecordFile.read("record.json", new StringReader(record.toString()));
    assertThat(ReportPage.html(back, US)).isEqualTo(ReportPage.html(answer, US));
  }

  @Test
  void sectionsStandInTheOrderInWhichOneReads() {
    assertThat(found(YEAR, "<h2>([^<]*)</h2>"))
        .containsExactly(
            "The answer",
            "What limits the line",
            "The line and its flows",
            "Where each machine's time goes",
            "Week by week",
            "The yard",
            "Money",
            "Electricity",
            "What these figures assume",
            "Cautions",
            "Why these figures can be believed");
  }

  @Test
  void aTraceGivesADayUnderTheGlass() {
    String page = ReportPage.html(SampleDay.traced(), US);
    assertThat(found(page, "<h2>([^<]*)</h2>")).contains("A day under the glass");
    assertThat(page)
        .contains("One replication of many, number 3: what happened in it, not what is to be")
        .contains("2027-07-06 12:00</th><td>mill</td><td>choke and hammers</td>");
  }

  @Test
  void nothingOnThePageIsFetched() {
    assertThat(found(YEAR, "(?:src|xlink:href|href)=\"([^\"]*)\""))
        .allMatch(link -> link.startsWith("#"));
    assertThat(YEAR).doesNotContain("<script").doesNotContain("@import").doesNotContain("url(http");
    assertThat(found(YEAR, "(https?://[^\"' <]*)"))
        .allMatch(address -> address.startsWith("http://www.w3.org/"));
  }

  @Test
  void everyIdIsGivenOnce() {
    assertThat(found(YEAR, " id=\"([^\"]+)\"")).doesNotHaveDuplicates();
  }

  @Test
  void everyDrawingHasATextAlternativeAndATable() {
    assertThat(found(YEAR, "(<figure )")).hasSize(14);
    assertThat(found(YEAR, "(<svg\\s)")).hasSize(14);
    assertThat(found(YEAR, "<desc[^>]*>([^<]+)</desc\\s*>")).hasSize(14);
    assertThat(found(YEAR, "(</figure>\n<div class=\"figures\")")).hasSize(14);
  }

  @Test
  void namesOfThePlantFileCannotBecomeMarkup() {
    String page = ReportPage.html(SampleAnswer.bare(), US);
    assertThat(page).contains("<h1>Bare &amp; &lt;plain&gt;</h1>").doesNotContain("<plain>");
  }

  /**
   * The format lets no such name in but the plant's and what options say; a record may come from
   * elsewhere.
   */
  @ParameterizedTest
  @MethodSource("answers")
  void noNameOnAnyKindOfPageBecomesMarkup(Answer answer) throws IOException {
    StringWriter record = new StringWriter();
    RecordFile.write(answer, record);
    String named = record.toString();
    int changed = 0;
    for (String name : NAMES) {
      Matcher plain = Pattern.compile("(?<![\\w-])" + name + "(?![\\w-]|\":)").matcher(named);
      changed += plain.find() ? 1 : 0;
      String markup =
          "<script>" + name + "</script>\\\"><img src=x onerror=a()>\\\" onload=\\\"b()";
      named = plain.replaceAll(Matcher.quoteReplacement(markup));
    }
    assertThat(changed).isGreaterThan(answer == SampleAnswer.bare() ? 0 : 3);
    String page = ReportPage.html(RecordFile.read("record.json", new StringReader(named)), US);
    assertThat(page.contains("&lt;script&gt;")).isTrue();
    assertThat(found(page, "<((?i:script|img)[^>]{0,80})")).isEmpty();
    String tags = page.replaceAll("=\"[^\"]*\"", "=");
    assertThat(found(tags, "<[a-zA-Z][^<>]*\\s(on[a-z]+=[^>]{0,80})")).isEmpty();
    assertThat(found(page, " id=\"([^\"]+)\"")).doesNotHaveDuplicates();
  }

  @Test
  void cautionsDeferToThoseWhoDecide() {
    assertThat(YEAR)
        .contains("local fire code")
        .contains("insurer")
        .contains("licensed engineer")
        .contains("local labor law")
        .contains("locked out")
        .contains("damp by the limit that the warning names", "One bale or module in ten");
  }

  @Test
  void metricPagesSpeakOfTonnes() {
    String metric =
        ReportPage.html(SampleAnswer.year(), new Wording(UnitSystem.METRIC, Locale.ROOT));
    assertThat(metric)
        .contains(">3,483</td><td>t</td><td class=\"n\">3,463 to 3,502<")
        .doesNotContain(" ton ");
  }

  @Test
  void oneReplicationClaimsNoInterval() {
    assertThat(ReportPage.html(SampleAnswer.bare(), US))
        .contains(
            "One simulated year: no interval can be given.",
            "This is one simulated year, and another may differ much.")
        .doesNotContain("give or take", ">5th percentile<");
  }

  @Test
  void whatAWorthLacksStandsFirstInTheAnswer() {
    LifeTerms terms =
        new LifeTerms(89, "", List.of("bigger_mill"), Double.NaN, 0, LifeTerms.Carried.NOTHING);
    CompareAnswer answer = SampleCompare.with(List.of(), List.of(), terms);
    assertThat(ReportPage.html(answer, US))
        .contains(
            "<p>Whether it pays cannot be said, since the file does not say how its calendar repeats.</p>\n</div>\n"
                + "<p>No net present value: the calendar of 89 days is shorter than a year")
        .doesNotContain("Does it pay");
  }

  @Test
  void aComparisonSaysWhatDiffersWhoHoldsAndWhetherItPays() {
    String page = ReportPage.html(SampleCompare.two(), US);
    assertThat(found(page, "<h2>([^<]*)</h2>"))
        .containsExactly(
            "The answer",
            "What differs",
            "Where the bottleneck moves",
            "Which is the best",
            "Effect of 10 % more of each thing",
            "The mill",
            "Does it pay",
            "Cash over the years",
            "Sensitivity of the net present value",
            "Break-even",
            "What these figures assume",
            "Cautions",
            "Why these figures can be believed");
    assertThat(found(page, "<h1>([^<]*)</h1>")).containsExactly("Sweetgum Bend shared gin");
    assertThat(page)
        .contains("The plant as it stands against bigger mill, bigger mill + hand.")
        .contains("75 hp mill &lt;in place&gt; of the 25 hp one")
        .contains("none above -50 % in 2 of 40 service lives")
        .contains("never in 3 of 40 service lives")
        .containsPattern("chance of payback within 5.yr")
        .containsPattern("1,880,000 .1,840,000 to 1,920,000.")
        .containsPattern("202 .198 to 205.")
        .contains("Fire in the yard");
    assertThat(found(page, "<figure id=\"chart-([^\"]*)\"")).hasSize(12).doesNotHaveDuplicates();
    assertThat(found(page, "(</figure>\n<div class=\"figures\")")).hasSize(12);
  }

  @Test
  void aYardSaysHowLargeItMustBeAndWhatEachSizeDoes() {
    String page = ReportPage.html(SampleYard.tooSmall(), US);
    assertThat(found(page, "<h2>([^<]*)</h2>"))
        .containsExactly(
            "The answer",
            "How large it must be",
            "If it had no limit",
            "What each size holds back and loses",
            "What each size costs",
            "What shortens the peak",
            "How much land can be contracted",
            "The ground",
            "Through the year",
            "What these figures assume",
            "Cautions",
            "Why these figures can be believed");
    assertThat(page)
        .contains("The plant as it stands: the yard of stalk.")
        .contains("6,400 bales (5,800 or more; no upper limit from 40 seasons)")
        .contains("Questions for the fire official")
        .contains("33 stacks from above")
        .contains("Fire in the yard");
    assertThat(found(page, "<figure id=\"chart-([^\"]*)\"")).hasSize(10).doesNotHaveDuplicates();
    assertThat(found(page, " id=\"([^\"]+)\"")).doesNotHaveDuplicates();
  }

  @Test
  void aYardWithoutMoneyHasNoPartAboutIt() {
    String page = ReportPage.html(SampleYard.stopped(), US);
    assertThat(found(page, "<h2>([^<]*)</h2>")).doesNotContain("What each size costs");
    assertThat(page).contains("7 of 40 replications and 1 size of the yard").contains("not found");
  }

  @Test
  void aComparisonWithoutMoneyHasNoPartAboutIt() {
    assertThat(found(ReportPage.html(SampleCompare.stopped(), US), "<h2>([^<]*)</h2>"))
        .doesNotContain("Does it pay", "Cash over the years")
        .contains("What differs");
    assertThat(ReportPage.html(SampleCompare.stopped(), US)).contains("7 of 40 replications");
  }

  @Test
  void aSeasonTellsOfTheBuildingTheCropsTheMachinesAndPlanAgainstPlan() {
    String page = ReportPage.html(SampleSeason.two(), US);
    assertThat(page).contains("the season as the file has it");
    assertThat(found(page, "<h2>([^<]*)</h2>"))
        .containsExactly(
            "The answer",
            "The building",
            "The year at a glance",
            "The crops",
            "The machines",
            "Money",
            "Crews",
            "Electricity",
            "Plan against plan",
            "What these figures assume",
            "Cautions",
            "Why these figures can be believed");
    assertThat(page)
        .contains("season plans the season as it stands, two shifts. 2027-01-04 to 2027-12-31.")
        .contains("stalks on &lt;two&gt; shifts")
        .contains("moved from 2027-10-01 by the changeover before it")
        .contains("two shifts less the season as it stands")
        .contains("the season as it stands, 2027-09-27: lock out")
        .contains("31,000")
        .contains("ISO 22400-2");
    assertThat(found(page, " id=\"([^\"]+)\"")).doesNotHaveDuplicates();
    assertThat(found(page, "(</figure>\n<div class=\"figures\")"))
        .hasSameSizeAs(found(page, "(<svg\\s)"));
  }

  @Test
  void aGridSaysWhereTheBestLiesAndDrawsEachMeasure() {
    String line = ReportPage.html(SampleGrid.line(), US);
    assertThat(found(line, "<h2>([^<]*)</h2>"))
        .containsExactly(
            "The answer",
            "How margin and throughput answer",
            "What these figures assume",
            "Cautions",
            "Why these figures can be believed");
    assertThat(line)
        .contains(
            "The plant as it stands against bigger&lt;mill&gt;, over price of hurd from 100 USD/t to 300 USD/t.")
        .contains("near 220 USD/t, significantly between 100 USD/t and 300 USD/t")
        .contains(">from here on bigger&lt;mill&gt;<")
        .contains(">as it stands<")
        .doesNotContain("<mill>");
    assertThat(found(line, "<figure id=\"chart-([^\"]*)\""))
        .containsExactly("response-money.margin", "response-mass.stalk.fed");
    String tiles = ReportPage.html(SampleGrid.tiles(), US);
    assertThat(found(tiles, "<figure id=\"chart-([^\"]*)\""))
        .containsExactly("tiles-money.margin", "tiles-season.stalk_line.left_over");
    assertThat(tiles)
        .contains("it is &lt;late&gt;")
        .contains(">136,000<")
        .contains(">\u00b15,000<")
        .contains(">crossed: left out<".replace(">crossed", "crossed"))
        .contains("136,000 (131,000 to 141,000)");
    assertThat(found(tiles, " id=\"([^\"]+)\"")).doesNotHaveDuplicates();
  }
}
