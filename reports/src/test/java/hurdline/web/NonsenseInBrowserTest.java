package hurdline.web;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.browser.Browser;
import hurdline.sample.SampleAnswer;
import hurdline.service.Template;
import hurdline.table.RecordFile;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/**
 * Somebody types nonsense, deletes files meanwhile and goes away in the middle: nothing is lost.
 */
@Timeout(value = 3, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class NonsenseInBrowserTest {
  @TempDir private static Path profile;
  private static OpenedPage page;
  private static Browser browser;
  private static String small;

  @TempDir Path root;
  private Path folder;
  private Path file;

  @BeforeAll
  static void theBrowserStarts() throws IOException {
    page = OpenedPage.begin(profile.resolve("browser"));
    browser = page.browser();
    small = Template.SMALL.text();
    browser.width(1280);
  }

  @AfterAll
  static void theBrowserEnds() throws IOException {
    if (page != null) {
      page.close();
    }
  }

  /** Two plants in a folder as people name them; the second is shown. */
  private void openSmall() throws IOException {
    folder = Files.createDirectory(root.resolve("Pl\u00e4ne & \u00dcbersicht 2027"));
    Files.writeString(folder.resolve("another.yaml"), small);
    file = Files.writeString(folder.resolve("My Gr\u00f6\u00dfe.yaml"), small);
    page.serve(file);
    checked("No problems");
  }

  private static void checked(String state) {
    browser.until("document.getElementById('state').textContent.startsWith('" + state + "')");
  }

  private static void typeMine() {
    page.cursorBehind("\nhurdline: 1");
    browser.press(" # mine");
    browser.until("hurdlinePage.text().includes(' # mine')");
  }

  private static String mine() {
    return small.replace("hurdline: 1", "hurdline: 1 # mine");
  }

  private static void status(String words) {
    browser.until(
        "document.getElementById('status').textContent.includes(" + '"' + words + '"' + ")");
  }

  @Test
  void whatIsNotSavedComesBackAfterReloadBackAndForward() throws IOException {
    openSmall();
    typeMine();
    for (Runnable away : new Runnable[] {browser::reload, browser::backAndForward}) {
      away.run();
      browser.until("window.hurdlinePage && hurdlinePage.text().includes('# mine')");
      assertThat(page.text()).isEqualTo(mine());
      assertThat(browser.ask("return document.getElementById('plants').value"))
          .isEqualTo(file.getFileName().toString());
      assertThat(file).hasContent(small);
    }
    browser.click("#undo");
    assertThat(page.text()).as("undo leads to the file's text").isEqualTo(small);
    typeMine();
    Files.writeString(file, small + "# theirs\n");
    browser.reload();
    browser.until("window.hurdlinePage && hurdlinePage.text().includes('# mine')");
    browser.click("#save");
    browser.until("!document.getElementById('changed').hidden");
    assertThat(file).hasContent(small + "# theirs\n");
  }

  @Test
  void aNewPlantAndAnotherOneAskBeforeUnsavedTextIsLeft() throws IOException {
    openSmall();
    typeMine();
    browser.click("#new");
    browser.click("#templates button");
    browser.refuse();
    assertThat(page.text()).isEqualTo(mine());
    browser.ask("const s = document.getElementById('plants'); s.value = 'another.yaml'");
    browser.ask("setTimeout(() => document.getElementById('plants').onchange(), 0)");
    browser.refuse();
    browser.until("document.getElementById('plants').value.startsWith('My')");
    assertThat(page.text()).isEqualTo(mine());
  }

  @Test
  void whatStandsInABoxIsSavedThoughNobodyHasLeftIt() throws IOException {
    openSmall();
    browser.until("document.getElementById('f-machines.mill.power')");
    browser.ask("document.querySelectorAll('#form details').forEach(one => { one.open = true; })");
    typeInto("f-machines.mill.power", "20 hp");
    browser.pressWith(Keys.CONTROL, "s");
    status("is saved");
    assertThat(file).content().contains("power: 20 hp");
    String saved = Files.readString(file);
    for (CharSequence nonsense : new CharSequence[] {"[", "twenty hp", Keys.BACK_SPACE, "<b>"}) {
      typeInto("f-machines.mill.power", nonsense);
      browser.click("#save");
      status("nothing is saved");
      assertThat(file).hasContent(saved);
      assertThat(page.text()).isEqualTo(saved);
      browser.ask("document.getElementById('status').textContent = ''");
    }
    assertThat(page.shown("#form .field:has([id='f-machines.mill.power'])"))
        .contains("is no figure; expected one such as 20 hp");
  }

  private static void typeInto(String id, CharSequence text) {
    browser.ask("const b = document.getElementById(arguments[0]); b.focus(); b.select();", id);
    browser.press(text);
  }

  @Test
  void aPlantThatVanishesIsToldAndItsTextGoesIntoANewFile() throws IOException {
    openSmall();
    Files.delete(file);
    typeMine();
    checked("No problems");
    browser.pressWith(Keys.CONTROL, "s");
    browser.until("!document.getElementById('changed').hidden");
    assertThat(page.shown("#changed")).contains("is no longer in this folder", "nothing of it");
    browser.click("#changed button");
    browser.reply("");
    browser.until("document.getElementById('save').disabled");
    assertThat(file).hasContent(mine());
  }

  /** Each is checked, none becomes a part of the page, and the plant comes back by Undo. */
  @Test
  void nonsenseIsSaidToBeWrongAndLeavesThePageAlive() throws IOException {
    openSmall();
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("half", "'plant: {a: [1, '");
    texts.put("tabs", "'plant:\\n\\tname: x\\n'");
    texts.put("markup", "'plant: \"<img src=x onerror=alert(1)><script>alert(2)</script>\"'");
    texts.put(
        "right to left", "'\\u05de\\u05e4\\u05e2\\u05dc: \\u202e\\u05d0\\n\\ud83c\\udf3e: x'");
    texts.put("nothing", "''");
    areWrong(texts);
  }

  @Test
  @Tag("proof")
  void whatIsPastedInTheMegabytesLeavesThePageAliveToo() throws IOException {
    openSmall();
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("one line of 1 MB", "'a: ' + 'x'.repeat(1e6)");
    texts.put("lines of 1 MB", "('lint: nonsense, \"x\" {\\n').repeat(4e4)");
    texts.put("keys of 1 MB", "Array.from({length: 9e4}, (_, i) => 'key' + i + ': x\\n').join('')");
    texts.put("more than a file may have", "'# nonsense\\n'.repeat(5e5)");
    texts.put("more than is sent", "'# nonsense\\n'.repeat(9e5)");
    areWrong(texts);
  }

  private static void areWrong(Map<String, String> texts) {
    for (Map.Entry<String, String> text : texts.entrySet()) {
      browser.ask("document.getElementById('state').textContent = 'waits'");
      browser.ask(
          "const v = hurdlinePage.view; v.dispatch({changes: {from: 0, to: v.state.doc.length,"
              + " insert: "
              + text.getValue()
              + "}})");
      browser.until(
          "/^([0-9]+ problems?|Not checked: That is more than 4 MB)/.test("
              + "document.getElementById('state').textContent)");
      assertThat(
              browser.ask(
                  "return document.querySelectorAll('#problems img, #problems script, .cm-content"
                      + " img:not(.cm-widgetBuffer), .cm-content script').length"))
          .as(text.getKey())
          .isEqualTo(0L);
      browser.click("#undo");
      assertThat(page.text()).as(text.getKey()).isEqualTo(small);
      checked("No problems");
    }
    assertThat(browser.console()).allMatch(line -> line.contains("413"));
  }

  @Tag("proof")
  @Test
  void numbersThatAreNoneAskNothing() throws IOException {
    openSmall();
    browser.click("#to-ask");
    browser.until("document.getElementById('question').options.length > 3");
    for (String number : new String[] {"0", "-1", "1e9", "2.5", "", "e"}) {
      typeInto("replications", Keys.BACK_SPACE + number);
      browser.click("#begin");
      assertThat(browser.ask("return document.getElementById('replications').checkValidity()"))
          .as(number)
          .isEqualTo(false);
    }
    assertThat(browser.ask("return document.querySelectorAll('#studies li').length")).isEqualTo(0L);
    browser.ask(
        "const q = document.getElementById('question'); q.value = 'BACKTEST';"
            + " q.dispatchEvent(new Event('change'));");
    assertThat(browser.ask("return document.getElementById('replications').value"))
        .isEqualTo("199");
  }

  @Test
  void anAnswerThatVanishesLeavesTheListAndIsTold() throws IOException {
    openSmall();
    Path answer = Files.createDirectory(folder.resolve("an answer"));
    try (Writer out = Files.newBufferedWriter(answer.resolve("record.json"))) {
      RecordFile.write(SampleAnswer.year(), out);
    }
    Path report = Files.writeString(answer.resolve("report.html"), "<!DOCTYPE html><p>x");
    browser.click("#to-answers");
    browser.until("document.querySelector('#answer-list button')");
    Files.delete(report);
    browser.click("#answer-list button");
    status("There is no answer of that name.");
    browser.until("!document.querySelector('#answer-list button')");
  }

  @Tag("proof")
  @Test
  void aSecondPageOfTheSameFileIsCheckedTooAndNotWrittenOver() throws IOException {
    openSmall();
    typeMine();
    String first = page.text();
    page.visitInNewTab();
    checked("No problems");
    page.cursorBehind("\nhurdline: 1");
    browser.press(" # other");
    checked("No problems");
    browser.pressWith(Keys.CONTROL, "s");
    status("is saved");
    browser.closeTab();
    assertThat(page.text()).isEqualTo(first);
    browser.click("#save");
    browser.until("!document.getElementById('changed').hidden");
    assertThat(file).hasContent(small.replace("hurdline: 1", "hurdline: 1 # other"));
  }
}
