package hurdline.command;

import hurdline.service.PreparedStudy.Simulation;
import java.util.Optional;

/** Simulates a study with its progress shown, until it is done or the user asks it to stop. */
final class StudyRunner {
  private StudyRunner() {}

  /**
   * @param simulations how many there are in all
   */
  static <A> Optional<A> inSight(
      CommandContext setting, OutputFlags shown, int simulations, Simulation<A> study) {
    try (StopRequest stop =
            new StopRequest(
                () ->
                    setting
                        .err()
                        .println("Stopping; what is done is kept. Ctrl-C again ends at once."));
        Steering steering = Steering.begin(setting, shown, stop);
        Progress progress =
            Progress.on(
                setting, shown.wording(), !shown.quiet() && !shown.steered(), simulations)) {
      return study.simulate(shown.steered() ? steering : progress, stop::isAsked);
    }
  }
}
