package hurdline.web;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.browser.Browser;
import hurdline.service.Template;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openqa.selenium.Keys;

/** The page in the machine's own browser, as its users have it. */
@Timeout(value = 3, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class PageInBrowserTest {
  @TempDir private static Path profile;
  private static OpenedPage page;
  private static Browser browser;

  @TempDir Path folder;

  @BeforeAll
  static void theBrowserStarts() throws IOException {
    page = OpenedPage.begin(profile.resolve("browser"));
    browser = page.browser();
  }

  @AfterAll
  static void theBrowserEnds() throws IOException {
    if (page != null) {
      page.close();
    }
  }

  @BeforeEach
  void wide() {
    browser.width(1280);
    browser.look("screen", false);
  }

  private void openSmall() throws IOException {
    Files.writeString(folder.resolve("small.yaml"), Template.SMALL.text());
    page.serve(folder);
    checked("No problems");
  }

  private static void checked(String state) {
    browser.until("document.getElementById('state').textContent.startsWith('" + state + "')");
  }

  @Test
  void anEmptyFolderLeadsToAPlantThatIsRight() throws IOException {
    page.serve(folder);
    browser.until("document.querySelectorAll('#templates button').length === 3");
    browser.click("#templates button");
    browser.reply("mine");
    checked("No problems");
    assertThat(folder.resolve("mine.yaml")).hasContent(Template.SMALL.text());
    assertThat(page.text()).isEqualTo(Template.SMALL.text());
    browser.until("document.getElementById('rated').textContent.includes('limit')");
    browser.until("document.querySelectorAll('#flows img').length > 0");
    browser.until("document.querySelectorAll('#quick-flows img').length > 0");
    assertThat(page.shown("#quick")).contains("Rough:", "replications");
    assertThat(browser.console()).isEmpty();
  }

  @Test
  void aMistakeIsMarkedAtItsPlaceAndItsNearestWordIsOneClickAway() throws IOException {
    openSmall();
    page.cursorBehind("\ncalendar");
    browser.press("s");
    checked("1 problem");
    assertThat(browser.ask("return document.querySelector('.cm-lintRange-error').textContent"))
        .isEqualTo("calendars");
    assertThat(page.shown("#problems li")).contains("calendars", "Write \"calendar\"");
    browser.click("#problems button:nth-of-type(2)");
    checked("No problems");
    assertThat(page.text()).isEqualTo(Template.SMALL.text());
  }

  /**
   * From the key to the mark, and to capacity and drawing of a text without problems, the pause
   * before the check included. By the clock on the wall, so not among the tests that run beside
   * other work.
   */
  @ParameterizedTest
  @EnumSource(Template.class)
  @Tag("proof")
  void marksAndDrawingFollowWithinThreeHundredMilliseconds(Template template) throws IOException {
    Files.writeString(folder.resolve("small.yaml"), template.text());
    page.serve(folder);
    checked("No problems");
    browser.until("document.querySelectorAll('#flows img').length > 0");
    assertThat(bestMs("insert: 'x'")).as("to the mark").isLessThan(300);
    browser.ask("hurdlinePage.open(hurdlinePage.text().replace(/^x+/, ''))");
    checked("No problems");
    assertThat(bestMs("insert: '# a comment\\n'")).as("to the drawing").isLessThan(300);
  }

  /** The best of twelve on a machine that does other work too. */
  private static double bestMs(String typed) {
    String script =
        "const v = hurdlinePage.view, n = +document.body.dataset.checked;"
            + ("v.dispatch({changes: {from: 0, " + typed + "}}); const begun =")
            + " performance.now(); (function look() { +document.body.dataset.checked > n ?"
            + " done(performance.now() - begun) : setTimeout(look, 5); })();";
    double best = Double.MAX_VALUE;
    for (int i = 0; i < 12; i++) {
      best = Math.min(best, ((Number) browser.askLater(script)).doubleValue());
    }
    return best;
  }

  @Test
  void keysAreOfferedWhereTheyMayStandAndSayWhatTheyMean() throws IOException {
    openSmall();
    page.cursorBehind("kind: hammer-mill");
    browser.press(Keys.ENTER, "dr");
    askForOffers();
    browser.until("document.querySelector('.cm-tooltip-autocomplete li')");
    assertThat(page.shown(".cm-tooltip-autocomplete ul")).contains("draws");
    browser.until("document.querySelector('.cm-completionInfo')");
    browser.ask("return new Promise(done => setTimeout(done, 200))");
    browser.press(Keys.ENTER);
    browser.until("/\\n +draws: /.test(hurdlinePage.text())");
  }

  /** Ctrl-Space, again where the offers that typing brings came and went with it. */
  private void askForOffers() {
    for (int tries = 0; tries < 5; tries++) {
      browser.pressWith(Keys.CONTROL, Keys.SPACE);
      browser.ask("return new Promise(done => setTimeout(done, 500))");
      if (browser
          .ask("return '' + !!document.querySelector('.cm-tooltip-autocomplete li')")
          .equals("true")) {
        return;
      }
    }
  }

  @Test
  void savingWritesTheFileAndNothingElseDoes() throws IOException {
    openSmall();
    page.cursorBehind("\nhurdline: 1");
    browser.press(" # mine");
    checked("No problems");
    assertThat(folder.resolve("small.yaml")).hasContent(Template.SMALL.text());
    browser.pressWith(Keys.CONTROL, "s");
    browser.until("document.getElementById('save').disabled");
    assertThat(folder.resolve("small.yaml"))
        .hasContent(Template.SMALL.text().replace("hurdline: 1", "hurdline: 1 # mine"));
  }

  @Test
  void aFileThatWasChangedBehindThePageIsShownBesideAndNotWrittenOver() throws IOException {
    openSmall();
    Path file = folder.resolve("small.yaml");
    String theirs = Template.SMALL.text() + "# theirs\n";
    Files.writeString(file, theirs);
    page.cursorBehind("\nhurdline: 1");
    browser.press(" # mine");
    browser.click("#save");
    browser.until("!document.getElementById('changed').hidden");
    assertThat(page.shown("#changed")).contains("# theirs", "# mine");
    assertThat(file).hasContent(theirs);
    browser.click("#changed button:nth-of-type(1)");
    browser.until("document.getElementById('save').disabled");
    assertThat(file).content().contains("# mine").doesNotContain("# theirs");
  }

  @Test
  void anAddressWorksOnceAndAReloadKeepsThePage() throws IOException {
    openSmall();
    assertThat((String) browser.ask("return location.href")).isEqualTo(page.origin() + "/");
    browser.ask("location.reload()");
    checked("No problems");
    browser.visitInNewTab(java.net.URI.create(page.origin() + "/"));
    browser.until("document.getElementById('status').textContent.includes('without its key')");
    browser.closeTab();
  }

  /** One figure of each group. */
  @Test
  void theFormChangesOneLineOfTheTextAndUndoBringsItBack() throws IOException {
    openSmall();
    browser.until("document.querySelectorAll('#form details').length > 4");
    browser.ask("document.querySelectorAll('#form details').forEach(one => { one.open = true; })");
    String before = page.text();
    @SuppressWarnings("unchecked")
    List<String> ids =
        (List<String>)
            browser.ask(
                "return [...document.querySelectorAll('#form details')].map(one =>"
                    + " one.querySelector('input').id)");
    assertThat(ids).hasSizeGreaterThan(4);
    for (String id : ids) {
      int filled = filled();
      browser.ask(
          "const box = document.getElementById(arguments[0]); box.focus(); box.select();", id);
      browser.press("7 odd", Keys.TAB);
      browser.until("hurdlinePage.text() !== window.textBefore");
      String after = page.text();
      assertThat(changedLines(before, after)).as(id).isEqualTo(1);
      assertThat(after).contains("7 odd");
      browser.click("#undo");
      assertThat(page.text()).as(id).isEqualTo(before);
      browser.until("+document.body.dataset.filled > " + filled);
    }
  }

  private static int filled() {
    browser.ask("window.textBefore = hurdlinePage.text()");
    return ((Number) browser.ask("return +document.body.dataset.filled")).intValue();
  }

  private static int changedLines(String before, String after) {
    String[] old = before.split("\n", -1);
    String[] now = after.split("\n", -1);
    assertThat(now).hasSameSizeAs(old);
    return (int) IntStream.range(0, old.length).filter(i -> !old[i].equals(now[i])).count();
  }

  @Test
  void whileALineIsHalfTypedTheFormStaysAndWaits() throws IOException {
    openSmall();
    browser.until("document.querySelectorAll('#form details').length > 4");
    page.cursorBehind("bale: {mass: ");
    browser.press("{");
    checked("1 problem");
    browser.until("document.getElementById('form').inert");
    assertThat((Number) browser.ask("return document.querySelectorAll('#form input').length"))
        .matches(n -> n.intValue() > 25);
    browser.press(Keys.BACK_SPACE);
    browser.until("!document.getElementById('form').inert");
  }

  @Test
  void thePageServesThoseWhoCannotSeeOrPointAndFitsAnyWidth() throws IOException {
    openSmall();
    browser.until("document.querySelectorAll('#quick-flows img').length > 0");
    browser.click("#new");
    openAll();
    fitsAnyWidth("plant");
    isClear("plant");
  }

  @Test
  void questionsAndAnswersDoSoToo() throws IOException {
    openSmall();
    browser.click("#to-ask");
    browser.until("document.getElementById('question').options.length > 3");
    browser.ask("document.getElementById('replications').value = 2");
    browser.click("#begin");
    browser.until("document.body.dataset.studies === 'done'", 90);
    for (Object question :
        (List<?>)
            browser.ask(
                "return [...document.getElementById('question').options].map(o => o.value)")) {
      browser.ask(
          "const q = document.getElementById('question'); q.value = arguments[0];"
              + " q.dispatchEvent(new Event('change'));",
          question);
      fitsAnyWidth("ask " + question);
    }
    isClear("ask");
    twice();
    browser.click("#to-answers");
    browser.until("document.querySelectorAll('input[name=side]').length === 2");
    browser.ask("document.querySelectorAll('input[name=side]').forEach(one => one.click())");
    browser.click("#side-by-side");
    browser.until("!document.getElementById('both').hidden");
    browser.click("#answer-list button");
    browser.until("!document.getElementById('report').hidden");
    fitsAnyWidth("answers");
    isClear("answers");
  }

  /** One answer more, of another name. */
  private void twice() throws IOException {
    Path first;
    try (var all = Files.list(folder)) {
      first = all.filter(Files::isDirectory).findFirst().orElseThrow();
    }
    Path second = Files.createDirectory(folder.resolve("again"));
    for (String name : List.of("record.json", "report.html", "plant.yaml")) {
      Files.copy(first.resolve(name), second.resolve(name));
    }
  }

  private static void openAll() {
    browser.ask("document.querySelectorAll('details').forEach(one => { one.open = true; })");
  }

  /** A phone, a tablet, a window at 100 and at 200 %. */
  private static void fitsAnyWidth(String what) {
    for (int width : new int[] {360, 768, 1280}) {
      browser.width(width);
      assertThat(sideways()).as(what + ", sideways at " + width).isLessThanOrEqualTo(0);
    }
    browser.zoomed(1280);
    assertThat(sideways()).as(what + ", sideways at 200 %").isLessThanOrEqualTo(0);
  }

  private static int sideways() {
    return ((Number) browser.ask("return document.documentElement.scrollWidth - innerWidth"))
        .intValue();
  }

  private static void isClear(String what) {
    for (boolean dark : new boolean[] {false, true}) {
      browser.look("screen", dark);
      browser.width(dark ? 360 : 1280);
      assertThat(browser.barriers()).as(what + (dark ? ", dark" : ", light")).isEmpty();
    }
  }
}
