package hurdline.web;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.browser.Browser;
import hurdline.browser.Paper;
import hurdline.service.Template;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** Whole walks through the page, studies included. */
@Timeout(value = 4, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class WalkInBrowserTest {
  @TempDir private static Path profile;
  private static OpenedPage page;
  private static Browser browser;

  @TempDir Path folder;

  @BeforeAll
  static void theBrowserStarts() throws IOException {
    page = OpenedPage.begin(profile.resolve("browser"));
    browser = page.browser();
    browser.width(1280);
  }

  @AfterAll
  static void theBrowserEnds() throws IOException {
    if (page != null) {
      page.close();
    }
  }

  private void openSmall() throws IOException {
    Files.writeString(folder.resolve("small.yaml"), Template.SMALL.text());
    page.serve(folder);
    checked();
  }

  @Test
  void aNewcomerComesFromAnEmptyFolderToAPrintedComparison() throws Exception {
    page.serve(folder);
    browser.until("document.querySelectorAll('#templates button').length === 3");
    browser.click("#templates button");
    browser.reply("mine");
    browser.until("document.getElementById('state').textContent.startsWith('No problems')");
    browser.click("#to-ask");
    browser.until("document.getElementById('question').options.length > 3");
    browser.ask(
        "const q = document.getElementById('question'); q.value = 'COMPARE';"
            + " q.dispatchEvent(new Event('change'));"
            + " document.getElementById('replications').value = 3;"
            + " document.getElementById('ask-lives').value = 2");
    browser.click("#begin");
    browser.until("document.querySelector('#studies progress, #studies button')");
    browser.until("document.body.dataset.studies === 'done'", 90);
    browser.ask("document.querySelector('#studies button').click()"); // drawn again at each poll
    browser.until("!document.getElementById('report').hidden");
    browser.frame("#report-frame");
    browser.until("document.querySelector('h1')");
    assertThat(page.shown("body")).contains("Willow Slough");
    browser.frame("");
    assertThat(browser.ask("return document.getElementById('report-frame').contentDocument"))
        .as("the page cannot reach into the report, nor the report into it")
        .isNull();
    assertThat(page.shown("#answer-list")).contains("3 replications, seed 1");
    assertThat(browser.console()).isEmpty();
    URI report =
        URI.create((String) browser.ask("return document.getElementById('report-open').href"));
    browser.visitInNewTab(report);
    byte[] pdf = browser.print(Paper.LETTER, Files.createDirectories(profile.resolve("print")));
    browser.closeTab();
    assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    try (Stream<Path> all = Files.list(folder)) {
      Path answer = all.filter(Files::isDirectory).findFirst().orElseThrow();
      assertThat(answer.resolve("plant.yaml")).hasContent(Template.SMALL.text());
    }
  }

  /** Tickets of bales that are lighter and damper than the file has them. */
  private void writeRecords() throws IOException {
    StringBuilder tickets = new StringBuilder("ticket,crop,net,unit,bales,moisture\n");
    for (int load = 0; load < 60; load++) {
      tickets.append(
          String.format(
              "%d,stalk,%d,lb,30,%.1f%n", load, 24_000 + load % 7 * 40, 14 + load % 5 * .3));
    }
    Files.writeString(
        Files.createDirectory(folder.resolve("records")).resolve("tickets.csv"), tickets);
  }

  @Test
  void figuresOfRecordsComeIntoTheTextOnlyAfterTheirLinesWereSeen() throws IOException {
    writeRecords();
    openSmall();
    browser.click("#to-ask");
    browser.until("document.getElementById('question').options.length > 3");
    browser.ask(
        "const q = document.getElementById('question'); q.value = 'FIT';"
            + " q.dispatchEvent(new Event('change'));");
    assertThat(browser.ask("return document.getElementById('replications').checkVisibility()"))
        .isEqualTo(false);
    browser.click("#begin");
    browser.until("document.body.dataset.studies === 'done'", 90);
    browser.click("#to-answers");
    browser.until("document.getElementById('answer-list').innerText.includes('60 rows were read')");
    String before = page.text();
    browser.click("#answer-list button[aria-label^='Into the plant']");
    browser.until("!document.getElementById('changed').hidden");
    assertThat(page.shown("#changed"))
        .contains("Nothing is changed yet", "mean: 900 lb", "mean: 364.6 kg", "mean: 14.6 %");
    assertThat(browser.barriers()).isEmpty();
    assertThat(page.text()).isEqualTo(before);
    browser.click("#changed .row button:nth-of-type(2)");
    assertThat(page.text()).isEqualTo(before);
    browser.click("#to-answers");
    browser.click("#answer-list button[aria-label^='Into the plant']");
    browser.until("!document.getElementById('changed').hidden");
    page.cursorBehind("\nhurdline: 1");
    browser.press(" # mine");
    browser.click("#changed .row button");
    browser.until("document.getElementById('status').textContent.includes('look once more')");
    assertThat(page.text()).isEqualTo(before.replace("hurdline: 1 ", "hurdline: 1 # mine "));
    browser.click("#changed .row button");
    browser.until("hurdlinePage.text().includes('364.6 kg')");
    assertThat(page.text()).contains("hurdline: 1 # mine", "# no two bales are alike");
    assertThat(folder.resolve("small.yaml")).hasContent(Template.SMALL.text());
    checked();
    browser.click("#undo");
    assertThat(page.text()).contains("# mine").doesNotContain("364.6 kg");
  }

  private static void checked() {
    browser.until("document.getElementById('state').textContent.startsWith('No problems')");
  }

  @Test
  void aReloadInTheMiddleOfAStudyLosesNothingAndStopKeepsWhatIsDone() throws IOException {
    openSmall();
    browser.click("#to-ask");
    browser.until("document.getElementById('question').options.length > 3");
    browser.ask("document.getElementById('replications').value = 100000");
    browser.click("#begin");
    browser.until("document.querySelector('#studies .band')", 120);
    browser.ask("location.reload()");
    browser.until("document.body.dataset.studies === 'running'");
    browser.click("#to-ask");
    browser.ask("document.querySelector('#studies button').click()"); // drawn again at each poll
    browser.until("document.body.dataset.studies === 'stopped'", 60);
    browser.ask("document.querySelector('#studies button').click()"); // drawn again at each poll
    browser.until("document.getElementById('answer-list').innerText.includes('stopped early')");
  }

  /** Nothing here is clicked. */
  @Test
  void aPlantIsChangedSavedAndAskedByKeysAlone() throws IOException {
    openSmall();
    browser.ask("document.body.tabIndex = -1; document.body.focus()");
    tabTo("save-as");
    tabTo(
        "f-machines.mill.power",
        "document.querySelectorAll('#form details').forEach(one => one.open = true)");
    browser.pressWith(Keys.CONTROL, "a");
    browser.press("20 hp", Keys.TAB);
    browser.until("hurdlinePage.text().includes('power: 20 hp')");
    browser.pressWith(Keys.CONTROL, "s");
    browser.until("document.getElementById('save').disabled");
    browser.ask("document.body.focus()");
    tabTo("to-ask");
    browser.press(Keys.ENTER);
    browser.until("document.getElementById('question').options.length > 3");
    tabTo("replications");
    browser.pressWith(Keys.CONTROL, "a");
    browser.press("2", Keys.ENTER);
    browser.until("document.body.dataset.studies === 'done'", 90);
  }

  private void tabTo(String id) {
    tabTo(id, "");
  }

  private void tabTo(String id, String before) {
    if (!before.isEmpty()) {
      browser.ask(before);
    }
    for (int i = 0; i < 300; i++) {
      if (id.equals(browser.ask("return document.activeElement.id"))) {
        return;
      }
      browser.press(Keys.TAB);
    }
    throw new AssertionError("Tab never comes to " + id);
  }

  /**
   * A page whose own name is bound to this machine after it was loaded (DNS rebinding) is of one
   * origin with what it calls, so that no rule of browsers holds it back, only the server's check
   * of its host. The page's own policy is taken off here, as such a page would not have it.
   */
  @Test
  void aNameThatIsBoundToThisMachineLaterReadsNothing() throws IOException {
    openSmall();
    String rebound = page.origin().replace("127.0.0.1", "rebound.example");
    for (String origin : new String[] {page.origin(), rebound}) {
      browser.visitInNewTab(URI.create(origin + "/"));
      browser.heldToPolicy(false);
      browser.visit(URI.create(origin + "/"));
      boolean ours = origin.equals(page.origin());
      for (String what : new String[] {"/", "/page.js", "/icon.svg"}) {
        assertThat(fetched(what, "{}")).as(what + " of " + origin).isEqualTo(ours ? "200" : "421");
      }
      String post = "{method: 'POST', headers: {'Content-Type': 'application/json'}, body: '{}'}";
      assertThat(fetched("/api/enter", post))
          .as("our own page is let to the door, without a code not through it")
          .isEqualTo(ours ? "401" : "421");
      browser.heldToPolicy(true);
      browser.closeTab();
    }
  }

  private static String fetched(String what, String how) {
    return String.valueOf(
        browser.askLater(
            ("fetch('" + what + "', " + how + ")")
                + ".then(r => done(String(r.status)), e => done('refused: ' + e.message));"));
  }

  /** From another port, from localhost, and from a name that is bound to this machine. */
  @Test
  void aHostilePageInAnotherTabReadsAndStartsNothing() throws Exception {
    openSmall();
    try (HostileSite evil = HostileSite.start()) {
      for (String from : evil.origins()) {
        browser.visitInNewTab(URI.create(from + "/"));
        evil.attempts(page.origin())
            .forEach(
                (what, script) ->
                    assertThat(String.valueOf(browser.askLater(script)))
                        .as(what + " from " + from)
                        .startsWith("refused"));
        browser.closeTab();
      }
      assertThat(evil.heard())
          .doesNotContain("cookie=key")
          .allMatch(line -> line.endsWith("cookie=null"));
    }
    assertThat(page.shown("#state")).isEqualTo("No problems");
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all.map(p -> p.getFileName().toString()))
          .containsExactlyInAnyOrder("small.yaml", ".hurdline-open");
    }
  }
}
