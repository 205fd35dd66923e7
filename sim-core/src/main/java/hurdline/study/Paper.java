package hurdline.study;

import hurdline.answer.PaperAnswer;

/** What each line can be fed on paper: no clock, no chance, its crop at the mean. */
public final class Paper {
  private Paper() {}

  /**
   * Works out the answer.
   *
   * @throws hurdline.plant.ProblemsException if the changed plant has problems
   */
  public static PaperAnswer of(Source source, Chosen chosen) {
    throw new UnsupportedOperationException("not worked out yet");
  }
}
