package hurdline.service;

import hurdline.answer.ChooseAnswer;
import hurdline.study.choose.BlockStore;
import hurdline.study.choose.Choose;
import hurdline.study.choose.ChooseProgress;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * A choice among very many plans whose plants can be made.
 *
 * @param choose what is chosen from
 * @param how it is simulated
 */
public record PreparedChoice(Choose choose, Simulation how) {
  PreparedChoice(Choose choose) {
    this(choose, choose::simulate);
  }

  /** How plans are simulated. */
  @FunctionalInterface
  public interface Simulation {
    /**
     * Simulates every block that is not kept, and judges.
     *
     * @param stop asked whether to end without an answer; finished blocks are then in the store
     * @param timeUp asked whether to end with what is known
     */
    Optional<ChooseAnswer> simulate(
        BlockStore store, ChooseProgress progress, BooleanSupplier stop, BooleanSupplier timeUp);
  }

  /** Simulates it; see {@link Simulation#simulate}. */
  public Optional<ChooseAnswer> simulate(
      BlockStore store, ChooseProgress progress, BooleanSupplier stop, BooleanSupplier timeUp) {
    return how.simulate(store, progress, stop, timeUp);
  }
}
