package hurdline.command;

import hurdline.service.PreparedStudy.ServiceLivesWork;
import hurdline.study.option.BreakEvenWork;
import hurdline.unit.Counted;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What the service lives of a comparison will cost, and searches that simulate them again, said
 * before it starts.
 */
final class LivesCost {
  private static final int FEWER = 10;

  private LivesCost() {}

  /**
   * Takes a second or two to find out.
   *
   * @param calendars that the call simulates in all, replications too
   */
  static List<String> lines(ServiceLivesWork work, int calendars) {
    double most = Math.max(calendars, work.breakEven().calendars());
    double eachS = SimulationTime.secondsEach(work.trial(), most / work.threads()) / work.threads();
    List<String> lines = new ArrayList<>();
    lines.add(lives(work, SimulationTime.ofCall(calendars * eachS)));
    if (work.breakEven().searches() > 0) {
      lines.add(searches(work, work.breakEven().calendars() * eachS));
    }
    return lines;
  }

  private static String lives(ServiceLivesWork work, String all) {
    return "Service lives: "
        + work.lives()
        + " of each option and of the base, at most "
        + calendars(work.calendars())
        + " in addition to the replications, about "
        + all
        + " in all"
        + onThreads(work)
        + "."
        + (work.lives() > FEWER
            ? " Fewer, such as --service-lives " + FEWER + ", take less and say less."
            : "");
  }

  private static String searches(ServiceLivesWork work, double seconds) {
    BreakEvenWork of = work.breakEven();
    return "Break-even: "
        + (of.searches() == 1 ? "1 search simulates" : of.searches() + " searches simulate")
        + " the lives again at each of some "
        + of.tries()
        + " values, seldom more than "
        + of.mostTries()
        + ": about "
        + calendars(of.calendars())
        + ", "
        + SimulationTime.inWords(seconds)
        + onThreads(work)
        + ". A key that is a price takes no time.";
  }

  private static String calendars(int count) {
    return String.format(Locale.ROOT, "%,d", count) + " simulated calendars";
  }

  private static String onThreads(ServiceLivesWork work) {
    return " on " + Counted.of(work.threads(), "thread");
  }
}
