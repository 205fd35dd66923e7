package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import hurdline.browser.Browser;
import hurdline.browser.Paper;
import hurdline.browser.Sheets;
import hurdline.service.EngineStudies;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pages as a browser shows and prints them. Where {@code CI} is set, a missing browser is a
 * failure; elsewhere these tests are skipped and say so.
 *
 * <p>Every test run has each page on the narrowest and the widest screen, in the dark and on one
 * paper; the other widths, lights and papers, and pages of the large plant that take long to
 * simulate, are tagged {@code proof}.
 */
@Timeout(value = 3, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class PagesInBrowserTest {
  private static final Path ROOT = Path.of(System.getProperty("hurdline.root"));
  private static final String MARKUP = "<b id=\"smuggled\">mill</b>";
  private static final int LARGEST_BYTES = 2_000_000;
  private static final int NARROW = 360;
  private static final int BETWEEN = 768;
  private static final int WIDE = 1280;

  @TempDir private static Path dir;
  private static Browser browser;

  private static final String LARGE = ROOT.resolve("line-configs/sweetgum-bend.yaml").toString();

  /** Of a few busy weeks a year, with everything that an answer can have. */
  private static final String SHORT_YEAR =
      ROOT.resolve("reports/src/test/resources/hurdline/audit/alder-landing.yaml").toString();

  /**
   * A page to look at, made when it is first asked for; a new verb adds a line to {@link #pages()}.
   */
  record Shown(String name, List<String> call) {
    Path file() {
      if (!Files.exists(dir.resolve(name))) {
        make(name, call);
      }
      return dir.resolve(name).resolve("report.html");
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static List<Shown> pages() {
    return List.of(
        new Shown(
            "run",
            List.of("run", LARGE, "--replications", "4", "--trace", "2027-07-06..2027-07-07")),
        new Shown(
            "compare",
            List.of("compare", SHORT_YEAR, "--replications", "15", "--service-lives", "3")),
        new Shown(
            "season",
            List.of(
                "season",
                ROOT.resolve("line-configs/seasons/beside_cotton.yaml").toString(),
                "--replications",
                "4")),
        new Shown("check", List.of("check", LARGE)),
        new Shown(
            "yard", List.of("yard", SHORT_YEAR, "--acres", "90%", "--gain", "--replications", "2")),
        new Shown("line", grid("machines.mill.power=10 hp..30 hp..10 hp")),
        new Shown(
            "tiles",
            grid(
                "machines.mill.power=10 hp..30 hp..10 hp",
                "machines.hurd_bin.holds=x0.8..x1.2..x0.2")),
        new Shown("choose", choose()),
        new Shown("fit", ofRecords("fit")),
        new Shown("backtest", ofRecords("backtest", "--replications", "99")));
  }

  /** The plant to start from for two days, of twelve plans under two budgets. */
  private static List<String> choose() {
    return List.of(
        "choose",
        dir.resolve("open.yaml").toString(),
        "--best",
        "money.margin:300",
        "--budget",
        "0,30000",
        "--at-least",
        "mass.stalk.fed:5 ton:80%",
        "--replications",
        "4",
        "--threads",
        "1");
  }

  private static List<String> ofRecords(String verb, String... more) {
    List<String> call =
        List.of(verb, dir.resolve("plant.yaml").toString(), dir.resolve("last-year").toString());
    return Stream.concat(call.stream(), Stream.of(more)).toList();
  }

  private static void writePlants() throws IOException {
    SmallSeason.plant(dir);
    SmallSeason.whole(dir.resolve("last-year"));
    Files.writeString(
        dir.resolve("open.yaml"),
        Files.readString(dir.resolve("plant.yaml")).replace("2027-05-28", "2027-03-02")
            + """

            choices:
              mill: {title: Motor of the hammer mill, key: machines.mill.power, values: [15 hp, 40 hp], cost: [0 USD, 45000 USD]}
              rest: {key: calendar.shifts.day.rests.0.lasts, values: [30 min, 45 min, 20 h]}
              rate: {key: lines.stalk_line.steps.feeder.rate, values: [0.9 t/h, 2.2 t/h]}
              never: [{mill: 15 hp, rate: 0.9 t/h}]
            """);
  }

  /** All pages, and those of the large plant that take long to simulate. */
  static List<Shown> allPages() {
    List<Shown> all = new ArrayList<>(pages());
    List<String> compare = List.of("compare", LARGE, "--among", "bigger_mill");
    List<String> effort = List.of("--replications", "15", "--service-lives", "3");
    all.add(new Shown("large_compare", Stream.concat(compare.stream(), effort.stream()).toList()));
    all.add(
        new Shown(
            "large_yard",
            List.of("yard", LARGE, "--acres", "90%", "--gain", "--replications", "2")));
    return all;
  }

  private static List<String> grid(String... varied) {
    List<String> call =
        new ArrayList<>(
            List.of(
                "run", ROOT.resolve("line-configs/small.yaml").toString(), "--replications", "2"));
    for (String keys : varied) {
      call.addAll(List.of("--vary", keys));
    }
    return call;
  }

  @BeforeAll
  static void theBrowserStarts() throws IOException {
    Optional<Browser> started = Browser.start(Files.createDirectory(dir.resolve("profile")));
    if (started.isEmpty()) {
      String missing = "chromium or chromedriver is not installed: no page was tried in a browser";
      if (System.getenv("CI") != null) {
        fail(missing);
      }
      System.err.println("\n*** SKIPPED: " + missing + " ***\n");
      abort(missing);
    }
    browser = started.get();
    writePlants();
  }

  private static void make(String name, List<String> call) {
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said, true);
    List<String> args = new ArrayList<>(call);
    args.addAll(List.of("--out", dir.resolve(name).toString()));
    int code =
        Hurdline.call(
            new CommandContext(out, out, false, new EngineStudies()), args.toArray(String[]::new));
    assertThat(code).as(said.toString()).isZero();
  }

  @AfterAll
  static void theBrowserEnds() {
    if (browser != null) {
      browser.close();
    }
  }

  /** Every second page, the papers in turn; printing takes long. */
  static Stream<Arguments> pagesOnPaper() {
    List<Shown> pages = pages();
    Paper[] papers = Paper.values();
    return IntStream.range(0, (pages.size() + 1) / 2)
        .mapToObj(at -> Arguments.of(pages.get(2 * at), papers[at % papers.length]));
  }

  private static Shown page(String name) {
    return pages().stream().filter(page -> page.name().equals(name)).findFirst().orElseThrow();
  }

  private static void open(Shown page, int width, boolean dark) {
    browser.look("screen", dark);
    browser.width(width);
    browser.open(page.file());
  }

  /**
   * Opened once, since that takes longer than a look at it; axe comes last, which takes out
   * drawings.
   */
  @ParameterizedTest
  @MethodSource("pages")
  void aPageFitsItsScreensTurnsDarkAndIsOpenToAll(Shown page) throws IOException {
    assertThat(Files.size(page.file())).isLessThan(LARGEST_BYTES);
    open(page, NARROW, false);
    fitsItsScreenAndItsContentsLeadToItsParts(page, NARROW);
    browser.width(WIDE);
    fitsItsScreenAndItsContentsLeadToItsParts(page, WIDE);
    isDarkOnADarkScreenAndWhiteOnPaper();
    browser.look("screen", true);
    assertThat(browser.faintColors()).as("in the dark, which changes nothing but colors").isEmpty();
    browser.look("screen", false);
    browser.width(NARROW);
    assertThat(browser.barriers()).isEmpty();
  }

  private static void fitsItsScreenAndItsContentsLeadToItsParts(Shown page, int width) {
    isNoWiderThanItsScreen(width);
    if (width == WIDE) {
      showsItsMainFiguresWithoutScrolling(page);
    }
    leadsFromEachLineOfItsContentsToItsPart();
  }

  private static void isNoWiderThanItsScreen(int width) {
    assertThat((long) browser.ask("return document.documentElement.scrollWidth"))
        .isLessThanOrEqualTo(width);
    assertThat(browser.ask(OUTSIDE))
        .as("outside the screen and in no box that scrolls")
        .asList()
        .isEmpty();
  }

  /**
   * All rows of an answer's main figures are seen at once: the yard peaks and the margin stand
   * last.
   */
  private static void showsItsMainFiguresWithoutScrolling(Shown page) {
    @SuppressWarnings("unchecked")
    List<Map<String, Object>> tables = (List<Map<String, Object>>) browser.ask(MAIN_FIGURES);
    assertThat(tables).hasSize(List.of("check", "fit", "backtest").contains(page.name()) ? 0 : 1);
    assertThat(tables)
        .allSatisfy(
            table -> {
              assertThat((long) table.get("rows")).isGreaterThan(3);
              assertThat(table.get("cut")).as("%s", table).isEqualTo(false);
            });
  }

  private static final String MAIN_FIGURES =
      "return [...document.querySelectorAll('#answer .figures.whole')].map(box => ({"
          + " rows: box.querySelectorAll('tbody tr').length,"
          + " cut: box.scrollHeight > box.clientHeight + 1 || box.scrollWidth > box.clientWidth + 1 }));";

  private static final String OUTSIDE =
      "const seen = document.documentElement.clientWidth + 0.5;"
          + "return [...document.body.querySelectorAll('*')]"
          + ".filter(e => !e.closest('.figures *, .drawing *') && e.getBoundingClientRect().right > seen)"
          + ".map(e => e.outerHTML.slice(0, 120));";

  private static void leadsFromEachLineOfItsContentsToItsPart() {
    @SuppressWarnings("unchecked")
    List<Map<String, Object>> ways =
        (List<Map<String, Object>>)
            browser.ask(
                "return [...document.querySelectorAll('nav a')].map(a => { scrollTo(0, 0); a.click();"
                    + " const h = document.querySelector(location.hash + ' h2');"
                    + " const box = h.getBoundingClientRect();"
                    + " return {link: a.textContent, title: h.textContent,"
                    + " seen: box.top >= -1 && box.bottom <= innerHeight}; });");
    assertThat(ways).hasSizeGreaterThan(1);
    assertThat(ways)
        .allSatisfy(
            way -> {
              assertThat(way.get("title")).isEqualTo(way.get("link"));
              assertThat(way.get("seen")).as("%s", way).isEqualTo(true);
            });
  }

  @Test
  void axeFindsABarrierThatIsThere() {
    open(page("check"), WIDE, false);
    browser.ask(
        "document.querySelector('main').insertAdjacentHTML('afterbegin',"
            + " '<img src=\"data:,\"><p style=\"color:#ddd;background:#fff\">pale</p>')");
    assertThat(browser.barriers())
        .anyMatch(found -> found.startsWith("image-alt"))
        .anyMatch(found -> found.startsWith("color-contrast"));
    assertThat(browser.faintColors()).hasSize(1).allMatch(found -> found.contains("pale"));
  }

  private static void isDarkOnADarkScreenAndWhiteOnPaper() {
    browser.look("screen", true);
    assertThat(lightness()).isLessThan(60L);
    browser.look("print", true);
    assertThat(lightness()).isEqualTo(255L);
    browser.look("screen", false);
    assertThat(lightness()).isEqualTo(255L);
  }

  /** Of the page's ground, 0 to 255. */
  private static long lightness() {
    return (long)
        browser.ask(
            "return Math.max(...getComputedStyle(document.body).backgroundColor.match(/\\d+/g).slice(0, 3).map(Number))");
  }

  @ParameterizedTest
  @MethodSource("pagesOnPaper")
  void noChartIsCutWhenAPageIsPrinted(Shown page, Paper paper) throws Exception {
    open(page, WIDE, false);
    long charts = (long) browser.ask(MARK_CHARTS);
    long tables = (long) browser.ask(MARK_TABLES);
    byte[] pdf = browser.print(paper, dir);
    assertThat(pdf.length).isLessThan(LARGEST_BYTES);
    Sheets sheets = new Sheets(pdf);
    assertThat(sheets.beyondEdge()).isEmpty();
    assertThat(sheets.largestPt())
        .as("the title, of 20.4 pt where no table makes all smaller")
        .isGreaterThan(18);
    for (int chart = 0; chart < charts; chart++) {
      List<Integer> head = sheets.with("[top" + chart + "]");
      assertThat(head).as("sheets with the top of chart %d", chart).hasSize(1);
      assertThat(sheets.with("[end" + chart + "]")).as("its end").isEqualTo(head);
      assertThat(sheets.with("[name" + chart + "]")).as("its title").isEqualTo(head);
    }
    for (int table = 0; table < tables; table++) {
      assertThat(sheets.with("[second" + table + "]"))
          .as("sheet with the second row of table %d and its head", table)
          .isEqualTo(sheets.with("[head" + table + "]").subList(0, 1));
      assertThat(sheets.with("[last" + table + "]"))
          .as("sheet with its last row and the one before")
          .isEqualTo(sheets.with("[before" + table + "]"));
    }
  }

  @Test
  void aCutChartIsSeen() throws Exception {
    open(page("yard"), WIDE, false);
    long charts = (long) browser.ask(MARK_CHARTS);
    browser.ask(
        "const svg = document.querySelector('figure svg');"
            + "svg.setAttribute('preserveAspectRatio', 'none');"
            + "svg.closest('figure').style.breakInside = 'auto';"
            + "svg.style.cssText = 'max-height: none; height: 1400px';");
    Sheets sheets = new Sheets(browser.print(Paper.A4, dir));
    assertThat(charts).isGreaterThan(3);
    assertThat(sheets.with("[end0]")).isNotEqualTo(sheets.with("[top0]"));
  }

  /**
   * Writes words into the head and into the second and the last rows of each table that is seen.
   */
  private static final String MARK_TABLES =
      "const tables = [...document.querySelectorAll('.figures table')]"
          + ".filter(t => t.querySelectorAll('tbody tr').length > 3 && !t.closest('details'));"
          + "const word = (row, text) => { const s = document.createElement('span');"
          + " s.textContent = ' ' + text; s.style.fontSize = '2px'; row.cells[0].append(s); };"
          + "tables.forEach((table, at) => { const rows = [...table.querySelectorAll('tbody tr')];"
          + " word(table.querySelector('thead tr'), '[head' + at + ']');"
          + " word(rows[1], '[second' + at + ']'); word(rows.at(-2), '[before' + at + ']');"
          + " word(rows.at(-1), '[last' + at + ']'); }); return tables.length;";

  /** Writes a word at the upper and the lower edge of each drawing and into its title. */
  private static final String MARK_CHARTS =
      "const charts = [...document.querySelectorAll('figure svg')];"
          + "charts.forEach((svg, at) => {"
          + " const box = svg.viewBox.baseVal;"
          + " const word = (text, y) => { const t = document.createElementNS(svg.namespaceURI, 'text');"
          + "  t.textContent = text; t.setAttribute('x', 0); t.setAttribute('y', y);"
          + "  t.setAttribute('font-size', 10); svg.appendChild(t); };"
          + " word('[top' + at + ']', 10); word('[end' + at + ']', box.height - 1);"
          + " svg.closest('figure').querySelector('figcaption').append(' [name' + at + ']'); });"
          + "return charts.length;";

  @Tag("proof")
  @Timeout(value = 15, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
  @ParameterizedTest
  @MethodSource("allPages")
  void allHoldsAtEveryWidthInTheDarkAndOnEveryPaper(Shown page) throws Exception {
    assertThat(Files.size(page.file())).isLessThan(LARGEST_BYTES);
    for (int width : List.of(NARROW, BETWEEN, WIDE)) {
      open(page, width, false);
      fitsItsScreenAndItsContentsLeadToItsParts(page, width);
      for (boolean dark : new boolean[] {false, true}) {
        open(page, width, dark);
        assertThat(browser.barriers()).isEmpty();
      }
    }
    for (Paper paper : Paper.values()) {
      noChartIsCutWhenAPageIsPrinted(page, paper);
    }
  }

  @Test
  void aMachineNamedWithMarkupShowsAsText() throws IOException {
    String plant = Files.readString(ROOT.resolve("line-configs/small.yaml"));
    assertThat(plant).contains("\nplant: ");
    Path file = dir.resolve("named.yaml");
    Files.writeString(file, plant.replaceFirst("\nplant: [^\n#]*", "\nplant: '" + MARKUP + "'"));
    make("named", List.of("run", file.toString(), "--replications", "2"));
    browser.open(dir.resolve("named").resolve("report.html"));
    assertThat(browser.ask("return document.getElementById('smuggled')")).isNull();
    assertThat(browser.ask("return document.querySelector('h1').textContent")).isEqualTo(MARKUP);
  }
}
