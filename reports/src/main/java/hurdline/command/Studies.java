package hurdline.command;

import hurdline.answer.PaperAnswer;
import hurdline.answer.RunAnswer;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;

/** The door to the engine: a plant file and settings go in, answers come out. */
interface Studies {
  /**
   * Reads the plant file and applies all changes, so that what is wrong shows before any work
   * begins.
   *
   * @throws hurdline.plant.ProblemsException with every problem
   */
  Prepared prepare(PlantChoice choice);

  /** A plant that is right, ready to be studied. */
  interface Prepared {
    PaperAnswer onPaper();

    /**
     * Plays the calendar.
     *
     * @param done told how many replications are done
     * @param stop asked whether to finish early
     * @return what the finished replications say; empty if stopped before the first was done
     */
    Optional<RunAnswer> run(Effort effort, IntConsumer done, BooleanSupplier stop);
  }
}
