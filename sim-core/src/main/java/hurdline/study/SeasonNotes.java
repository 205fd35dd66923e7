package hurdline.study;

import hurdline.answer.AvoidedRow;
import hurdline.answer.Note;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a comparison of season plans takes for granted beyond what a run does, in whole sentences. */
final class SeasonNotes {
  private final List<Season.Planned> plans;
  private final List<AvoidedRow> avoided;

  SeasonNotes(List<Season.Planned> plans, List<AvoidedRow> avoided) {
    this.plans = plans;
    this.avoided = avoided;
  }

  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    notes.add(new Note("Plans", told()));
    notes.add(new Note("Differences", differences()));
    notes.add(
        new Note(
            "Finished",
            "A crop is finished in a year in which nothing of it is left when its line's last"
                + " campaign ends: no bale in the yard, on the road, at the gate, at a field or still"
                + " to be baled. The chance is the share of such years, with Clopper and Pearson's"
                + " interval; crop that lies there and that no line of the plan works is not finished"
                + " either. Which plan is surer goes by the exact sign test on years in which only"
                + " one of two finished, at a level that holds for all pairs together."));
    notes.add(
        new Note(
            "Left over",
            "What the crop left over would have brought is its bales at the line's mean margin per"
                + " bale fed, before electricity and overhead. It is a guide: a longer season costs"
                + " shifts that this does not count, and where the margin is below 0 it is a sum"
                + " spared. The margin itself counts crop left over at its price only. Margin less margin"
                + " forgone takes off what that crop would have brought, line by line where the line's"
                + " margin is above 0; the plan with the best margin need not be the best by it."));
    notes.add(
        new Note(
            "Hours",
            "The building is worked while at least one line is in its hours; else it is changed over,"
                + " uncrewed or unused, and these four add up to the calendar. Each machine is in one"
                + " of nine states, which add up to the calendar too. Ratios are named and taken after"
                + " ISO 22400-2 (from memory): on duty is its planned busy time, slowed and full rate"
                + " its actual production time, changing its actual unit setup time, down its actual"
                + " unit delay time, starved and blocked its actual unit down time. Starved, blocked,"
                + " changeover and uncrewed have no name there that fits, so these are the program's"
                + " own."));
    if (!avoided.isEmpty()) {
      notes.add(
          new Note(
              "Avoided changeovers",
              "Each plan was simulated once more without each of its changeovers, on the same random draws, the"
                  + " campaign before it running on through its days and all other dates as they are."
                  + " What that is worth is the margin without it less the margin with it; whether a"
                  + " line can be fitted so that it needs none is not asked. Intervals hold for all of"
                  + " them together."));
    }
    return notes;
  }

  private String told() {
    return plans.stream()
        .map(plan -> plan.name() + (plan.says().isEmpty() ? "" : " (" + plan.says() + ")"))
        .collect(Collectors.joining(", ", "Compared are ", "."));
  }

  private String differences() {
    int pairs = plans.size() * (plans.size() - 1) / 2;
    String joint =
        pairs <= 1
            ? "With two plans the joint interval is its own. "
            : "For each measure the joint intervals of all "
                + pairs
                + " pairs hold together with 95 % confidence (Bonferroni). ";
    return "All plans met the same random draws (common random numbers), replication by replication, and differences are taken"
        + " within each pair (Student's t, or Hall's where 40 or more of them are skewed). "
        + joint
        + "Where the joint interval covers zero the difference is not significant. The measures are not taken"
        + " together: of many looked at, about one in twenty may differ significantly by accident.";
  }
}
