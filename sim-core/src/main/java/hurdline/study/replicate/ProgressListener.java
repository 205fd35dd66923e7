package hurdline.study.replicate;

import hurdline.answer.RunFact;

/** Told how far a run has come. */
public interface ProgressListener {
  /**
   * @param done replications that are finished
   * @param of how many there will be, as far as is known
   */
  void done(int done, int of);

  /** Told what those who wait should know before the end; most need not. */
  default void says(RunFact.AimOutOfReach fact) {}
}
