package hurdline.service;

import hurdline.answer.Answer;
import hurdline.study.option.BreakEvenWork;
import hurdline.study.replicate.ProgressListener;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * A study whose plants have been read and found without problems.
 *
 * @param calendars how many calendars are simulated in all, about
 * @param how it is simulated
 * @param lives the service lives that come on top of the replications, if any
 */
public record PreparedStudy<A extends Answer>(
    int calendars, Simulation<A> how, Optional<ServiceLivesWork> lives) {
  /** One without service lives. */
  public PreparedStudy(int calendars, Simulation<A> how) {
    this(calendars, how, Optional.empty());
  }

  /** How a study is simulated. */
  @FunctionalInterface
  public interface Simulation<A> {
    /**
     * Simulates it, once.
     *
     * @param progress told of each calendar that is done, from whichever thread, never of two at
     *     once
     * @param stop asked between replications whether to finish early
     * @return what the finished replications say; empty if none was finished
     */
    Optional<A> simulate(ProgressListener progress, BooleanSupplier stop);
  }

  /** Simulates it; see {@link Simulation#simulate}. */
  public Optional<A> simulate(ProgressListener progress, BooleanSupplier stop) {
    return how.simulate(progress, stop);
  }

  /**
   * Service lives that a comparison simulates.
   *
   * @param lives of each option and of the base
   * @param calendars in all of them, at most
   * @param breakEven searches that simulate lives again
   * @param trial simulates one calendar and forgets it: to see how long one takes
   */
  public record ServiceLivesWork(
      int lives, int calendars, BreakEvenWork breakEven, int threads, Runnable trial) {}
}
