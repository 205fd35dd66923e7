package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** How far long work has come, where standard error goes into a file. */
class ProgressTest {
  private static final Wording METRIC = new Wording(UnitSystem.METRIC, Locale.ROOT);
  private static final Duration SOON = Duration.ofMillis(40);

  private final StringWriter err = new StringWriter();

  private CommandContext redirected() {
    PrintWriter printer = new PrintWriter(err, true);
    return new CommandContext(printer, printer, false, null);
  }

  private String waited() throws InterruptedException {
    for (int waits = 0; waits < 500 && err.toString().lines().count() < 3; waits++) {
      Thread.sleep(20);
    }
    return err.toString();
  }

  @Test
  void aLineIsToldNowAndThenThoughNothingIsDone() throws InterruptedException {
    try (Progress progress = Progress.on(redirected(), METRIC, true, 40, SOON)) {
      assertThat(waited().lines().toList())
          .hasSizeGreaterThanOrEqualTo(3)
          .allSatisfy(
              line -> assertThat(line).matches("After \\d+ s: 0 of 40 replications are done\\."));
    }
  }

  @Test
  void itSaysHowMuchThereIsToGo() throws InterruptedException {
    try (Progress progress = Progress.on(redirected(), METRIC, true, 40, SOON)) {
      progress.done(30, 60);
      assertThat(waited())
          .containsPattern("After \\d+ s: 30 of 60 replications are done, about \\d+ s to go\\.");
    }
  }

  @Test
  void whatIsShortOrQuietSaysNothing() throws InterruptedException {
    try (Progress quiet = Progress.on(redirected(), METRIC, false, 40, SOON);
        Progress usual = Progress.on(redirected(), METRIC, true, 40)) {
      quiet.done(1, 40);
      usual.done(1, 40);
      Thread.sleep(10 * SOON.toMillis());
    }
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void whenTheWorkIsDoneNothingMoreIsSaid() throws InterruptedException {
    try (Progress progress = Progress.on(redirected(), METRIC, true, 40, SOON)) {
      waited();
    }
    Thread.sleep(5 * SOON.toMillis());
    String before = err.toString();
    Thread.sleep(5 * SOON.toMillis());
    assertThat(err.toString()).isEqualTo(before);
  }

  @Test
  void timeGoneTellsLinesHalfAMinuteApartFromEachOther() {
    assertThat(SimulationTime.gone(30)).isEqualTo("30 s");
    assertThat(SimulationTime.gone(60)).isEqualTo("1 min");
    assertThat(SimulationTime.gone(90.4)).isEqualTo("1 min 30 s");
    assertThat(SimulationTime.gone(4_000)).isEqualTo("66 min 40 s");
  }
}
