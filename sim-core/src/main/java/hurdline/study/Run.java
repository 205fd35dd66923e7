package hurdline.study;

import hurdline.answer.RunAnswer;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** What a plant will do over its calendar, from replications played on several threads. */
public final class Run {

  /** Told how far a run has come. */
  public interface Progress {
    /**
     * @param done replications that are finished
     * @param of how many there will be, as far as is known
     */
    void done(int done, int of);
  }

  /**
   * @throws hurdline.plant.ProblemsException if the changed plant has problems, or the aim names no
   *     measure of this plant
   */
  public Run(Source source, Chosen chosen, Effort effort) {}

  /**
   * Plays the replications.
   *
   * @param stop asked between replications whether to finish early
   * @return what the finished replications say; empty if none was finished
   */
  public Optional<RunAnswer> play(Progress progress, BooleanSupplier stop) {
    throw new UnsupportedOperationException("not played yet");
  }
}
