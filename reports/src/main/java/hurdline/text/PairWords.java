package hurdline.text;

import hurdline.answer.DifferenceRow;
import hurdline.answer.Header;

/** On how many pairs of replications a difference rests. */
public final class PairWords {
  private PairWords() {}

  /**
   * {@code (from 3 of 12 replications)}, where some replications gave one of the two no value; else
   * empty.
   */
  public static String ofReplications(DifferenceRow row, Header header) {
    return row.replications() < header.replications()
        ? " (from " + row.replications() + " of " + header.replications() + " replications)"
        : "";
  }
}
