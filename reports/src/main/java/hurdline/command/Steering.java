package hurdline.command;

import hurdline.study.replicate.HeadlineSoFar;
import hurdline.study.replicate.ProgressListener;
import hurdline.study.replicate.ReplicationRunner;
import hurdline.text.Wording;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;

/**
 * How another program follows a study that it has started: a line of JSON on standard error some
 * times a second, and a word on standard input that ends it with what is done.
 */
final class Steering implements ProgressListener, AutoCloseable {
  private static final long EVERY_NS = 250_000_000L;

  private final PrintWriter err;
  private final Wording wording;
  private long lastNs;
  private String headline = "";

  private Steering(PrintWriter err, Wording wording) {
    this.err = err;
    this.wording = wording;
    this.lastNs = System.nanoTime() - EVERY_NS;
  }

  static Steering begin(CommandContext setting, OutputFlags shown, StopRequest stop) {
    if (shown.steered()) {
      ReplicationRunner.inBackground(
          "steering",
          () -> {
            BufferedReader in =
                new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
            String line = in.readLine();
            while (line != null && !line.equals("stop")) {
              line = in.readLine();
            }
            // Where the program that steers has gone nobody could stop it: what is done is kept.
            stop.ask();
            return null;
          });
    }
    return new Steering(setting.err(), shown.wording());
  }

  @Override
  public void headline(Supplier<HeadlineSoFar> known) {
    if (System.nanoTime() - lastNs < EVERY_NS) {
      return;
    }
    HeadlineSoFar now = known.get();
    if (!Double.isFinite(now.low95()) || !Double.isFinite(now.high95())) {
      return;
    }
    headline =
        ",\"figure\":\""
            + inQuotes(figure(now))
            + "\",\"text\":\""
            + inQuotes(wording.withInterval(now.mean(), now.low95(), now.high95(), now.unit()))
            + "\",\"mean\":"
            + now.mean()
            + ",\"low\":"
            + now.low95()
            + ",\"high\":"
            + now.high95();
  }

  private static String figure(HeadlineSoFar now) {
    return switch (now.kind()) {
      case MEAN -> now.label();
      case LEAD -> now.label() + ", " + now.names().get(0) + " less " + now.names().get(1);
      case ROOM -> "mean room needed";
      case HIGHEST -> "highest " + now.label() + " of " + now.names().get(0) + " cells";
      case GAP -> "the best is above the leader by at most";
    };
  }

  /** Names are the plant file's; what would end a text of JSON is told as what looks like it. */
  private static String inQuotes(String text) {
    return text.replace('"', '\'').replace('\\', '/').replaceAll("\\p{Cntrl}", " ");
  }

  @Override
  public void done(int done, int of) {
    long now = System.nanoTime();
    if (now - lastNs >= EVERY_NS || done >= of) {
      lastNs = now;
      err.println("{\"done\":" + done + ",\"of\":" + Math.max(done, of) + headline + "}");
      err.flush();
    }
  }

  @Override
  public void close() {
    headline = "";
  }
}
