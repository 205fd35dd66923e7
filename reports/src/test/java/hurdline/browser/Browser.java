package hurdline.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** A browser without a window, in which tests open pages of this machine and nothing else. */
public final class Browser implements AutoCloseable {
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
        "--user-data-dir=" + profile);
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

  /** A screen of this width; phones count in CSS pixels too. */
  public void width(int px) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", px, "height", 800, "deviceScaleFactor", 1, "mobile", px < 500));
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
