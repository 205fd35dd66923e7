package hurdline.command;

import hurdline.service.PreparedStudy.ServiceLivesWork;
import java.util.Locale;

/** What the service lives of a comparison will cost, said before it starts. */
final class LivesCost {
  private static final int FEWER = 10;

  private LivesCost() {}

  /** Takes a second or two to find out. */
  static String line(ServiceLivesWork work) {
    int threads = work.threads();
    double seconds = work.calendars() * PlayTime.secondsEach(work.trial()) / threads;
    return "Service lives: "
        + work.lives()
        + " of each option and of the base, at most "
        + String.format(Locale.ROOT, "%,d", work.calendars())
        + " simulated calendars in addition to the replications, about "
        + PlayTime.inWords(seconds)
        + " on "
        + (threads == 1 ? "1 thread" : threads + " threads")
        + "."
        + (work.lives() > FEWER ? " Fewer, such as --service-lives " + FEWER + ", take less and say less." : "");
  }
}
