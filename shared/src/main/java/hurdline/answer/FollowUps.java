package hurdline.answer;

import java.util.List;

/**
 * What was asked of a comparison besides the differences, and what was found; a list is empty where
 * it was not asked.
 *
 * @param withinYr the time within which it was asked how likely an option pays back; NaN for its
 *     life
 * @param best which of base and options is the best in a measure
 * @param gains what a tenth more of each thing brings
 * @param tornado what each option is worth with inputs at their ends
 * @param breakEven where each option is worth nothing
 */
public record FollowUps(
    double withinYr,
    Selection best,
    List<GainRow> gains,
    List<TornadoRow> tornado,
    List<BreakEvenRow> breakEven) {
  public FollowUps {
    gains = List.copyOf(gains);
    tornado = List.copyOf(tornado);
    breakEven = List.copyOf(breakEven);
  }

  /** Nothing was asked. */
  public static FollowUps nothing() {
    return new FollowUps(Double.NaN, Selection.none(), List.of(), List.of(), List.of());
  }
}
