package hurdline.study;

import hurdline.answer.Note;
import hurdline.worth.BreakEven;
import java.util.List;

/** What the answers to further questions take for granted, in whole sentences. */
final class BesidesNotes {
  private BesidesNotes() {}

  static Note best() {
    return new Note(
        "The best",
        "Picked by Kim and Nelson's fully sequential procedure (ACM Transactions on Modeling and"
            + " Computer Simulation 11, 2001). Base and options that are left are simulated further, and one is"
            + " out as soon as it lies too far behind another. If one is better than each other by the"
            + " given band or more, it is picked with a chance of at least 95 %; if none is, one of"
            + " those within the band of the best is likely picked, and that is not promised. The"
            + " promise takes a year's value as normal and the years as independent of each other. All"
            + " other figures rest on the replications that all plants share.");
  }

  /** @param left what there cannot be more of, each with the reason */
  static Note gains(List<String> left) {
    return new Note(
        "A tenth more",
        "Each thing alone is given a tenth more, in the plant as it stands and on the same random draws: the"
            + " rate of a machine in all its lines, the power of a mill, the room of a bin, the length"
            + " of a shift (at its end, or where another shift is in the way before its beginning). Of"
            + " a resource there is one more, or a tenth where that is more than one, and whoever works"
            + " it costs nothing here, since crews stay as they are; longer shifts are paid. What a"
            + " purchase would cost is left out. For each measure the intervals of all things hold"
            + " together with 95 % confidence (Bonferroni)."
            + (left.isEmpty() ? "" : " Not asked: " + String.join(", ", left) + "."));
  }

  static Note tornado() {
    return new Note(
        "Sensitivity of the net present value",
        "One input at a time is put to either end, in base and option alike, all others as they are,"
            + " on the same random draws; where only prices change the same runs are priced again, else both"
            + " plants are simulated again. Inputs that move together in"
            + " truth are not moved together here. The values are means over the lives.");
  }

  static Note breakEven() {
    return new Note(
        "Break-even",
        "The key is multiplied by the same factor in base and option, all else as it is and on the same random draws"
            + ", until the mean net present value over the service lives is zero: first outward"
            + " from what the file says until the sign changes, then by Brent's method to "
            + BreakEven.tolerance() * 100
            + " % of the value. Of several such values it is the nearest that is seen. Half of the service lives"
            + " or so would be worth less than nothing there.");
  }
}
