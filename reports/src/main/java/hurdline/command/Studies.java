package hurdline.command;

import hurdline.answer.Answer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.GridAnswer;
import hurdline.answer.GridKey;
import hurdline.answer.PaperAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.study.CellStore;
import hurdline.study.Chosen;
import hurdline.study.CompareAsk;
import hurdline.study.Effort;
import hurdline.study.Run;
import hurdline.study.SeasonAsk;
import hurdline.study.YardAsk;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * The door to the engine. Each call reads the plant file and applies all changes first, so that
 * what is wrong shows before any work begins.
 */
interface Studies {
  /**
   * Rated and expected capacity of the plant.
   *
   * @throws hurdline.plant.ProblemsException with every problem
   */
  PaperAnswer onPaper(Path file, Chosen chosen);

  /**
   * A run, ready to be played.
   *
   * @throws hurdline.plant.ProblemsException with every problem
   */
  Waiting<RunAnswer> run(Path file, Chosen chosen, Effort effort);

  /**
   * A comparison, ready to be played.
   *
   * @param base what is changed in base and options alike
   * @param ask which options, and what else
   * @throws hurdline.plant.ProblemsException with every problem
   */
  Waiting<CompareAnswer> compare(Path file, Chosen base, CompareAsk ask, Effort effort);

  /**
   * A comparison of season plans, ready to be played.
   *
   * @param files one with plans of its own, or several of which each is a plan
   * @param chosen what is changed under every plan alike
   * @throws hurdline.plant.ProblemsException with every problem
   */
  Waiting<SeasonAnswer> season(List<Path> files, SeasonAsk ask, Chosen chosen, Effort effort);

  /**
   * A grid over one plant, ready to be played.
   *
   * @param keys one or two
   * @throws hurdline.plant.ProblemsException with every problem, if no cell can be played
   */
  Gridding grid(Path file, Chosen chosen, List<GridKey> keys, Effort effort);

  /**
   * A grid over the plant and its options.
   *
   * @param base what is changed in base and options alike
   * @param ask which options
   * @throws hurdline.plant.ProblemsException with every problem, if no cell can be played
   */
  Gridding grid(Path file, Chosen base, CompareAsk ask, List<GridKey> keys, Effort effort);

  /**
   * A grid over season plans.
   *
   * @param files one with plans of its own, or several of which each is a plan
   * @param plans of the one file; none for its season as it stands and all its plans
   * @throws hurdline.plant.ProblemsException with every problem, if no cell can be played
   */
  Gridding grid(
      List<Path> files, List<String> plans, Chosen chosen, List<GridKey> keys, Effort effort);

  /**
   * A grid over the plant as it stands and with a yard without limit.
   *
   * @param ask whose yard
   * @throws hurdline.plant.ProblemsException with every problem, if no cell can be played
   */
  Gridding grid(Path file, Chosen chosen, YardAsk ask, List<GridKey> keys, Effort effort);

  /** A grid that waits to be played. */
  interface Gridding {
    int cells();

    /** How many plants stand side by side in a cell. */
    int plants();

    /** How many plays there are in all. */
    int plays();

    /** The problems for which plants are left out, a line each. */
    List<String> leftOut();

    /** All that a finished cell hangs on, a line each. */
    List<String> settings();

    /** Plays once and forgets it. */
    void trial();

    /**
     * Plays every cell that is not kept.
     *
     * @param stop asked whether to finish early
     * @return empty if it was stopped; finished cells are then in the store
     */
    Optional<GridAnswer> play(CellStore store, Run.Progress progress, BooleanSupplier stop);
  }

  /**
   * The sizing of a yard, ready to be played.
   *
   * @throws hurdline.plant.ProblemsException with every problem
   */
  Waiting<YardAnswer> yard(Path file, Chosen chosen, Effort effort, YardAsk ask);

  /** A study that can be played. */
  @FunctionalInterface
  interface Study<A> {
    /**
     * Plays it.
     *
     * @param stop asked whether to finish early
     * @return what the finished replications say; empty if none was finished
     */
    Optional<A> play(Run.Progress progress, BooleanSupplier stop);
  }

  /**
   * A study that waits to be played.
   *
   * @param plays how many plays of a calendar there are in all, about
   * @param cost what it will cost, to be said before it starts, a line each; finding out may take a second or two
   */
  record Waiting<A extends Answer>(int plays, Study<A> study, Supplier<List<String>> cost) {
    /** One of which nothing need be said before. */
    Waiting(int plays, Study<A> study) {
      this(plays, study, List::of);
    }
  }
}
