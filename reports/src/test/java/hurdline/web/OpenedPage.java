package hurdline.web;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import hurdline.browser.Browser;
import hurdline.service.EngineStudies;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A browser with the page of a folder in it, for tests. */
final class OpenedPage implements AutoCloseable {
  private final Browser browser;
  private PageServer server;
  private URI address;

  private OpenedPage(Browser browser) {
    this.browser = browser;
  }

  /**
   * Starts the machine's browser; without one the tests are skipped, but for those of a landing.
   */
  static OpenedPage begin(Path profile) throws IOException {
    Optional<Browser> started = Browser.start(Files.createDirectories(profile));
    if (started.isEmpty()) {
      String missing = "chromium or chromedriver is not installed: the page was not tried";
      if (System.getenv("CI") != null) {
        fail(missing);
      }
      abort(missing);
    }
    return new OpenedPage(started.get());
  }

  Browser browser() {
    return browser;
  }

  /** Serves a folder or file and opens its page. */
  void serve(Path place) throws IOException {
    end();
    server = PageServer.start(place, 0, new EngineStudies());
    visit();
  }

  /** Opens the page once more, with a key of its own. */
  void visit() {
    address = URI.create(server.newAddress());
    browser.visit(URI.create("about:blank"));
    browser.visit(address);
  }

  /** Opens the page in a further tab, in which the test goes on. */
  void visitInNewTab() {
    browser.visitInNewTab(URI.create(server.newAddress()));
  }

  String origin() {
    return "http://127.0.0.1:" + address.getPort();
  }

  String text() {
    return (String) browser.ask("return hurdlinePage.text()");
  }

  /** Puts the cursor behind the first of some words of the text, and the focus into the text. */
  void cursorBehind(String words) {
    browser.ask(
        "const v = hurdlinePage.view, at = v.state.doc.toString().indexOf(arguments[0]) +"
            + " arguments[0].length; v.dispatch({selection: {anchor: at}, scrollIntoView: true});"
            + " v.focus()",
        words);
  }

  /** What stands in the first element that fits. */
  String shown(String css) {
    return (String) browser.ask("return document.querySelector(arguments[0]).innerText", css);
  }

  void end() throws IOException {
    if (server != null) {
      server.close();
      server = null;
    }
  }

  @Override
  public void close() throws IOException {
    end();
    browser.close();
  }
}
