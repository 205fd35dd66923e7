package hurdline.command;

import hurdline.answer.RunFact;
import hurdline.study.replicate.ProgressListener;
import hurdline.text.Wording;
import hurdline.text.notes.Notes;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/**
 * Replications done and time left: a bar where someone watches, else a line every half minute; what
 * cannot wait for the end is told to all.
 */
final class Progress implements ProgressListener, AutoCloseable {
  private static final int REDRAWN_EVERY_MS = 200;
  private static final int WIDTH = 80;
  private static final Duration HALF_A_MINUTE = Duration.ofSeconds(30);

  private final PrintWriter err;
  private final ProgressBar bar;
  private final ProgressLines lines;
  private final Wording wording;

  private Progress(PrintWriter err, ProgressBar bar, ProgressLines lines, Wording wording) {
    this.err = err;
    this.bar = bar;
    this.lines = lines;
    this.wording = wording;
  }

  static Progress on(CommandContext setting, Wording wording, boolean wanted, int replications) {
    return on(setting, wording, wanted, replications, HALF_A_MINUTE);
  }

  /**
   * @param every how often a line is told where nobody watches
   */
  static Progress on(
      CommandContext setting, Wording wording, boolean wanted, int replications, Duration every) {
    if (!wanted) {
      return new Progress(new PrintWriter(OutputStream.nullOutputStream()), null, null, wording);
    }
    if (!setting.onTerminal()) {
      return new Progress(
          setting.err(), null, new ProgressLines(setting.err(), every, replications), wording);
    }
    PrintStream stream = new PrintStream(new ToWriter(setting.err()), true, StandardCharsets.UTF_8);
    return new Progress(
        setting.err(),
        new ProgressBarBuilder()
            .setTaskName("replications")
            .setInitialMax(replications)
            .setStyle(ProgressBarStyle.ASCII)
            .setUpdateIntervalMillis(REDRAWN_EVERY_MS)
            .setConsumer(new ConsoleProgressBarConsumer(stream, WIDTH))
            .build(),
        null,
        wording);
  }

  /** With an aim more may be simulated than were asked for at first. */
  @Override
  public void done(int replications, int of) {
    if (bar != null) {
      bar.maxHint(Math.max(of, replications));
      bar.stepTo(replications);
    }
    if (lines != null) {
      lines.done(replications, of);
    }
  }

  @Override
  public void says(RunFact.AimOutOfReach fact) {
    err.println(Notes.early(fact, wording));
    err.flush();
  }

  @Override
  public void close() {
    if (bar != null) {
      bar.close();
    }
    if (lines != null) {
      lines.close();
    }
  }

  private static final class ToWriter extends OutputStream {
    private final PrintWriter writer;

    ToWriter(PrintWriter writer) {
      this.writer = writer;
    }

    @Override
    public void write(int single) {
      write(new byte[] {(byte) single}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int count) {
      writer.write(new String(bytes, from, count, StandardCharsets.UTF_8));
    }

    @Override
    public void flush() {
      writer.flush();
    }
  }
}
