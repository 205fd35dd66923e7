package hurdline.answer;

import java.util.List;

/** What the answers to a comparison's further questions take for granted. */
public sealed interface FollowUpFact extends Fact {
  /** How the best is picked. */
  record SelectionOfTheBest() implements FollowUpFact {}

  /**
   * What a tenth more of one thing is.
   *
   * @param left what there cannot be more of
   */
  record TenthMore(List<NotIncreased> left) implements FollowUpFact {
    public TenthMore {
      left = List.copyOf(left);
    }
  }

  /** Something that there cannot be more of. */
  record NotIncreased(Why why, String name) {
    /** The kind of thing, and with it the reason. */
    public enum Why {
      MACHINE_WITHOUT_RATE,
      SHIFT_WITHOUT_ROOM
    }
  }

  /** How inputs are varied for the sensitivity of the net present value. */
  record Sensitivity() implements FollowUpFact {}

  /**
   * How a break-even is searched.
   *
   * @param tolerance share of the value
   */
  record BreakEvenSearch(double tolerance) implements FollowUpFact {}
}
