package hurdline.command;

import hurdline.study.Compare;
import hurdline.study.Effort;
import java.util.List;
import java.util.Locale;

/** What the service lives of a comparison will cost, said before it starts. */
final class LivesCost {
  private static final int FEWER = 10;

  private final Compare compare;
  private final Effort effort;

  LivesCost(Compare compare, Effort effort) {
    this.compare = compare;
    this.effort = effort;
  }

  /** Nothing where no option is worth anything. */
  List<String> lines() {
    int calendars = compare.livesPlays();
    if (calendars == 0) {
      return List.of();
    }
    int threads = effort.threads();
    double seconds = calendars * PlayTime.secondsEach(compare::trial) / threads;
    return List.of(
        "Service lives: "
            + compare.lives()
            + " of each option and of the base, at most "
            + String.format(Locale.ROOT, "%,d", calendars)
            + " simulated calendars in addition to the replications, about "
            + PlayTime.inWords(seconds)
            + " on "
            + (threads == 1 ? "1 thread" : threads + " threads")
            + "."
            + (compare.lives() > FEWER ? " Fewer, such as --service-lives " + FEWER + ", take less and say less." : ""));
  }
}
