package hurdline.answer;

import java.util.List;

/**
 * What was asked of a comparison besides the differences, and what was found.
 *
 * @param withinYr the time within which it was asked how likely an option pays back; NaN for its life
 * @param gains what a tenth more of each thing brings; empty where it was not asked
 */
public record Further(double withinYr, List<GainRow> gains) {
  public Further {
    gains = List.copyOf(gains);
  }

  /** Nothing was asked. */
  public static Further nothing() {
    return new Further(Double.NaN, List.of());
  }
}
