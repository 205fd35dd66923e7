package hurdline.study;

import hurdline.answer.Note;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the figures of a run take for granted, in whole sentences. */
final class Assumptions {
  private static final int HASH_SHOWN = 12;

  private final Source source;
  private final Chosen chosen;
  private final Effort effort;
  private final Stage stage;
  private final Figures figures;
  private final Goal goal;

  Assumptions(
      Source source, Chosen chosen, Effort effort, Stage stage, Figures figures, Goal goal) {
    this.source = source;
    this.chosen = chosen;
    this.effort = effort;
    this.stage = stage;
    this.figures = figures;
    this.goal = goal;
  }

  List<Note> notes(boolean stopped) {
    return notes(replications(stopped));
  }

  /** @param replications in whole sentences how often the calendar was played, and what that tells */
  List<Note> notes(String replications) {
    List<Note> notes = new ArrayList<>();
    notes.add(new Note("Inputs", inputs()));
    notes.add(new Note("Horizon", horizon()));
    notes.add(new Note("Chance", chance()));
    notes.add(new Note("Replications", replications));
    notes.add(
        new Note(
            "Flow",
            "Material moves evenly at the rates that the slowest limit allows, and machines other"
                + " than bins, tables and packages hold none of it. Bales, trucks, stops, changes and"
                + " people are followed one by one."));
    notes.add(
        new Note(
            "Not modelled",
            "How good the fiber is, weather on the stacks beyond the given loss, traffic on the"
                + " roads, learning and tiredness, absence beyond the given crews, and prices that"
                + " change within the horizon are left out. Stops do not depend on each other but"
                + " through the resources that they wait for."));
    return notes;
  }

  private String inputs() {
    String hash = source.contentHash();
    String shown = hash.substring(0, Math.min(HASH_SHOWN, hash.length()));
    String option =
        chosen.option().equals(Chosen.BASE)
            ? "the plant as it stands"
            : "with " + chosen.option();
    String sets =
        chosen.sets().isEmpty() ? "" : ", changed by " + String.join(" and ", chosen.sets());
    return "Every rate, time, mass and price is what "
        + source.file()
        + " says (content "
        + shown
        + "), "
        + option
        + sets
        + "; worked out by version "
        + source.version()
        + ". The answer is as good as these figures.";
  }

  private String horizon() {
    return "From the first minute of the calendar's first day to the last of its last. On the first"
        + " day machines stand between their stops as the file says, bins and packages are empty and the yard holds what the file has on hand; what is under way on the last day"
        + " is cut there.";
  }

  private String chance() {
    return "Each source of randomness (bales, weather, trips, each kind of stop, each change) has draws of"
        + " its own from seed "
        + effort.seed()
        + ". The same seed gives the same answer, and the plant with something changed meets the same"
        + " bales, weather and stops as far as it still has them.";
  }

  private String replications(boolean stopped) {
    int count = figures.count();
    String played =
        "The calendar was simulated "
            + (count == 1 ? "once. " : count + " times, each independent of the others. ");
    String spread =
        count == 1
            ? "One replication says nothing about how far another may lie from it."
            : "An interval is where the mean of very many would lie with 95 % confidence;"
                + " quantiles say how single years spread.";
    String early =
        stopped
            ? " It was stopped before all were done; these are the first ones, whatever they showed."
            : "";
    return played + spread + early + effort.until().map(aim -> " " + aimed(aim, stopped)).orElse("");
  }

  private String aimed(Aim aim, boolean stopped) {
    if (goal.isHopeless(figures)) {
      return "The aim \""
          + aim.said()
          + "\" could not be followed, since the measure has no value in any of them.";
    }
    String reached = number(goal.halfWidth(figures));
    String wanted = number(goal.aimed(figures));
    if (goal.isReached(figures)) {
      return "The aim \""
          + aim.said()
          + "\" is reached: the half-width is "
          + reached
          + " of "
          + wanted
          + " allowed. Ending as soon as an aim is reached makes an interval a little too narrow.";
    }
    String why =
        (stopped ? "" : "; " + goal.most() + " are the most that are simulated")
            + ". For the aim it takes "
            + goal.aboutNeeded(figures);
    return "The aim \""
        + aim.said()
        + "\" is not reached: the half-width is "
        + reached
        + " in place of "
        + wanted
        + why
        + ".";
  }

  private static String number(double value) {
    return Double.isNaN(value) ? "unknown" : String.format(Locale.ROOT, "%.3g", value);
  }
}
