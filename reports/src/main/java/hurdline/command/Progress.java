package hurdline.command;

import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** Replications done and time left, where someone watches; else nothing. */
final class Progress implements AutoCloseable {
  private static final int REDRAWN_EVERY_MS = 200;
  private static final int WIDTH = 80;

  private final ProgressBar bar;

  private Progress(ProgressBar bar) {
    this.bar = bar;
  }

  static Progress on(Setting setting, boolean wanted, int replications) {
    if (!wanted || !setting.onTerminal()) {
      return new Progress(null);
    }
    PrintStream stream = new PrintStream(new ToWriter(setting.err()), true, StandardCharsets.UTF_8);
    return new Progress(
        new ProgressBarBuilder()
            .setTaskName("replications")
            .setInitialMax(replications)
            .setStyle(ProgressBarStyle.ASCII)
            .setUpdateIntervalMillis(REDRAWN_EVERY_MS)
            .setConsumer(new ConsoleProgressBarConsumer(stream, WIDTH))
            .build());
  }

  /** With an aim more may be played than were asked for at first. */
  void done(int replications, int of) {
    if (bar != null) {
      bar.maxHint(Math.max(of, replications));
      bar.stepTo(replications);
    }
  }

  @Override
  public void close() {
    if (bar != null) {
      bar.close();
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
