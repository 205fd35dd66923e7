package hurdline.study.replicate;

import hurdline.answer.RunFact;
import java.util.function.Supplier;

/** Told how far a run has come. */
public interface ProgressListener {
  /**
   * @param done replications that are finished
   * @param of how many there will be, as far as is known
   */
  void done(int done, int of);

  /**
   * Told before {@link #done} that a figure is known better now; most need not.
   *
   * @param known works it out, at once or not at all
   */
  default void headline(Supplier<HeadlineSoFar> known) {}

  /** Told what those who wait should know before the end; most need not. */
  default void says(RunFact.AimOutOfReach fact) {}
}
