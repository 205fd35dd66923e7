package hurdline.text.notes;

import hurdline.answer.FollowUpFact;
import hurdline.answer.FollowUpFact.NotIncreased;
import hurdline.text.Wording;
import java.util.stream.Collectors;

/** What the answers to a comparison's further questions take for granted, in whole sentences. */
final class FollowUpNotes {
  private final Wording wording;

  FollowUpNotes(Wording wording) {
    this.wording = wording;
  }

  void addTo(Sentences sentences) {
    sentences
        .tell(
            FollowUpFact.SelectionOfTheBest.class,
            "The best",
            "Picked by Kim and Nelson's fully sequential procedure (ACM Transactions on Modeling and"
                + " Computer Simulation 11, 2001). Base and options that are left are simulated further, and one is"
                + " out as soon as it lies too far behind another. If one is better than each other by the"
                + " given band or more, it is picked with a chance of at least 95 %; if none is, one of"
                + " those within the band of the best is likely picked, and that is not promised. The"
                + " promise takes a year's value as normal and the years as independent of each other. All"
                + " other figures rest on the replications that all plants share.")
        .tell(FollowUpFact.TenthMore.class, "Effect of 10 % more", this::tenthMore)
        .tell(
            FollowUpFact.Sensitivity.class,
            "Sensitivity of the net present value",
            "One input at a time is put to either end, with and without the option alike, all others as they are,"
                + " on the same random draws; where only prices change the same runs are priced again, else both"
                + " plants are simulated again. Inputs that move together in"
                + " truth are not moved together here. The values are means over the lives.")
        .tell(FollowUpFact.BreakEvenSearch.class, "Break-even", this::breakEven);
  }

  private String tenthMore(FollowUpFact.TenthMore fact) {
    return "Each thing alone is given 10 % more, in the plant as it stands and on the same random draws: the"
        + " rate of a machine in all its lines, the power of a mill, the room of a bin, the length"
        + " of a shift (at its end, or where another shift is in the way before its beginning). Of"
        + " a resource there is one more, or 10 % where that is more than one, and whoever works"
        + " it costs nothing here, since crews stay as they are; longer shifts are paid. What a"
        + " purchase would cost is left out. For each measure the intervals of all things hold"
        + " together with 95 % confidence (Bonferroni)."
        + (fact.left().isEmpty()
            ? ""
            : fact.left().stream()
                .map(this::left)
                .collect(Collectors.joining(", ", " Not asked: ", ".")));
  }

  private String left(NotIncreased left) {
    return switch (left.why()) {
      case MACHINE_WITHOUT_RATE -> wording.titles().machineInText(left.name()) + " has no rate";
      case SHIFT_WITHOUT_ROOM ->
          wording.titles().thing("shift." + left.name()) + " has no room to be longer";
    };
  }

  private String breakEven(FollowUpFact.BreakEvenSearch fact) {
    return "The key is multiplied by the same factor with and without the option, all else as it is and on the same random draws,"
        + " until the mean net present value over the service lives is zero: first outward"
        + " from what the file says until the sign changes, then by Brent's method to "
        + wording.asGiven(fact.tolerance(), "share")
        + " of the value. Of several such values it is the nearest that is seen. In about half of the service lives"
        + " the net present value is negative there.";
  }
}
