package hurdline.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.Alert;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.NoAlertPresentException;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A browser without a window, in which tests open pages of this machine and nothing else. */
public final class Browser implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(30);
  private static final long POLLED_EVERY_NS = 50_000_000L;

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  /**
   * Starts the machine's Chromium.
   *
   * @param profile an empty folder for the browser's own files
   * @return nothing where Chromium or its driver is not installed
   */
  public static Optional<Browser> start(Path profile) {
    Optional<Path> chromium = onPath("chromium", "chromium-browser");
    Optional<Path> driver = onPath("chromedriver");
    if (chromium.isEmpty() || driver.isEmpty()) {
      return Optional.empty();
    }
    ChromeOptions options = new ChromeOptions();
    options.setBinary(chromium.get().toFile());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--disable-renderer-backgrounding",
        "--disable-backgrounding-occluded-windows",
        "--disable-background-timer-throttling",
        // A name of the network's that somebody has bound to this machine.
        "--host-resolver-rules=MAP *.example 127.0.0.1",
        "--user-data-dir=" + profile);
    LoggingPreferences told = new LoggingPreferences();
    told.enable(LogType.BROWSER, Level.ALL);
    options.setCapability("goog:loggingPrefs", told);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(driver.get().toFile())
            .usingAnyFreePort()
            .withSilent(true)
            .build();
    return Optional.of(new Browser(new ChromeDriver(service, options)));
  }

  private static Optional<Path> onPath(String... names) {
    return Stream.of(System.getenv("PATH").split(":"))
        .flatMap(folder -> Stream.of(names).map(name -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  public void open(Path page) {
    driver.get(page.toUri().toString());
  }

  /** Opens an address; what the console held is forgotten. */
  public void visit(URI address) {
    console();
    driver.get(address.toString());
  }

  /** A further tab with an address; the test goes on in it. */
  public void visitInNewTab(URI address) {
    driver.switchTo().newWindow(WindowType.TAB);
    driver.get(address.toString());
  }

  /** Closes this tab and goes back to the first. */
  public void closeTab() {
    driver.close();
    driver.switchTo().window(driver.getWindowHandles().iterator().next());
  }

  /** Into the only frame that fits, or out of all frames where none is named. */
  public void frame(String css) {
    if (css.isEmpty()) {
      driver.switchTo().defaultContent();
    } else {
      driver.switchTo().frame(driver.findElement(By.cssSelector(css)));
    }
  }

  /** A key pressed while another is held, on what has the focus. */
  public void pressWith(Keys held, CharSequence key) {
    new Actions(driver).keyDown(held).sendKeys(key).keyUp(held).perform();
  }

  /** Keys pressed on what has the focus, one by one. */
  public void press(CharSequence... keys) {
    new Actions(driver).sendKeys(keys).perform();
  }

  public void click(String css) {
    driver.findElement(By.cssSelector(css)).click();
  }

  /** Answers the question that the browser asks in a window of its own. */
  public void reply(String text) {
    waitFor("a question of the browser", (int) PATIENCE.toSeconds(), this::isAsking);
    Alert alert = driver.switchTo().alert();
    if (!text.isEmpty()) {
      alert.sendKeys(text);
    }
    alert.accept();
  }

  /** Says no to the question that the browser asks in a window of its own. */
  public void refuse() {
    waitFor("a question of the browser", (int) PATIENCE.toSeconds(), this::isAsking);
    driver.switchTo().alert().dismiss();
  }

  /** Loads the page anew, as the browser's own button does; what it would ask is answered yes. */
  public void reload() {
    driver.navigate().refresh();
  }

  /** Back to the page before, and to this one again. */
  public void backAndForward() {
    driver.navigate().back();
    driver.navigate().forward();
  }

  /** Waits until an expression of the page is true; half a minute at most. */
  public void until(String expression) {
    until(expression, (int) PATIENCE.toSeconds());
  }

  /** The same with another patience. */
  public void until(String expression, int atMostS) {
    waitFor(
        expression,
        atMostS,
        () -> Boolean.TRUE.equals(driver.executeScript("return !!(" + expression + ")")));
  }

  private boolean isAsking() {
    try {
      driver.switchTo().alert();
      return true;
    } catch (NoAlertPresentException notYet) {
      return false;
    }
  }

  private static void waitFor(String what, int atMostS, BooleanSupplier holds) {
    long end = System.nanoTime() + Duration.ofSeconds(atMostS).toNanos();
    while (!holds.getAsBoolean()) {
      if (System.nanoTime() > end) {
        throw new IllegalStateException("waited in vain for " + what);
      }
      LockSupport.parkNanos(POLLED_EVERY_NS);
    }
  }

  /** Runs a script that ends by calling {@code done}; what it gives to that. */
  public Object askLater(String script) {
    return driver.executeAsyncScript(
        "const done = arguments[arguments.length - 1]; setTimeout(() => done('nothing within 5 s'),"
            + " 5000);"
            + script);
  }

  /** What the page has told the console since it was asked last. */
  public List<String> console() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(entry -> entry.getLevel() + " " + entry.getMessage())
        .toList();
  }

  /** What is seen, as PNG. */
  public byte[] picture() {
    return driver.getScreenshotAs(OutputType.BYTES);
  }

  /** A screen of this width; phones count in CSS pixels too. */
  public void width(int px) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", px, "height", 800, "deviceScaleFactor", 1, "mobile", px < 500));
  }

  /** A window as wide as {@code px} and shown at 200 %: half as many CSS pixels, each twice. */
  public void zoomed(int px) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", px / 2, "height", 400, "deviceScaleFactor", 2, "mobile", false));
  }

  /** Whether scripts of this tab are held to the policy of its page. */
  public void heldToPolicy(boolean held) {
    driver.executeCdpCommand("Page.setBypassCSP", Map.of("enabled", !held));
  }

  /**
   * @param medium {@code screen} or {@code print}
   */
  public void look(String medium, boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            medium,
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
  }

  /** Runs a script of the test in the page; what it returns. */
  public Object ask(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /**
   * What axe-core finds wrong with how the page serves those who cannot see or point. Inside of a
   * drawing it does not look, since reading devices get its title and alternative only, so what is
   * drawn is taken out of the page first; of a table it sees the first rows, which speak for the
   * others.
   */
  public List<String> barriers() {
    return found("");
  }

  /** What axe-core finds wrong with the colors of the page, which is part of {@link #barriers}. */
  public List<String> faintColors() {
    return found(", runOnly: {type: 'rule', values: ['color-contrast', 'link-in-text-block']}");
  }

  /** Of nodes without fault it asks for one a rule, which saves a fifth of the time. */
  @SuppressWarnings("unchecked")
  private List<String> found(String only) {
    ask("document.querySelectorAll('svg[role=img] > g').forEach(drawn => drawn.remove())");
    ask(axe());
    return (List<String>)
        driver.executeAsyncScript(
            "const done = arguments[arguments.length - 1];"
                + "axe.run({exclude: [['tbody tr:nth-child(n+4)']]}, {resultTypes: ['violations']"
                + only
                + "}).then(found => done(found.violations.map(rule => rule.id + ': ' +"
                + " rule.nodes.slice(0, 3).map(n => n.html.slice(0, 160) + ' '"
                + " + n.failureSummary).join(' | '))),"
                + " fault => done([String(fault)]));");
  }

  private static String axe() {
    try (InputStream in = Browser.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The page as it is now, as PDF on sheets of this size. A browser of its own prints it: one that
   * is steered from outside may hang after a large print.
   *
   * @param folder for what lies between
   */
  public byte[] print(Paper paper, Path folder) throws IOException, InterruptedException {
    String size =
        "<style>@page { size: " + paper.widthIn() + "in " + paper.heightIn() + "in }</style>";
    String html = (String) ask("return document.documentElement.outerHTML");
    Path page = folder.resolve("printed.html");
    Path pdf = folder.resolve("printed.pdf");
    Files.writeString(page, "<!DOCTYPE html>\n" + html.replace("</head>", size + "</head>"));
    Files.deleteIfExists(pdf);
    Process printing =
        new ProcessBuilder(
                onPath("chromium", "chromium-browser").orElseThrow().toString(),
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--no-pdf-header-footer",
                "--user-data-dir=" + folder.resolve("printer"),
                "--print-to-pdf=" + pdf,
                page.toUri().toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("printed.log").toFile())
            .start();
    if (!printing.waitFor(2, TimeUnit.MINUTES)) {
      printing.destroyForcibly();
      throw new IllegalStateException("the browser did not print within two minutes");
    }
    return Files.readAllBytes(pdf);
  }

  @Override
  public void close() {
    driver.quit();
  }
}
