package hurdline.service;

import hurdline.answer.BacktestAnswer;
import hurdline.answer.CheckAnswer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.FitAnswer;
import hurdline.answer.GridKey;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.problem.LocatedProblem;
import hurdline.study.PlantChanges;
import hurdline.study.choose.ChooseAsk;
import hurdline.study.compare.CompareAsk;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.Run;
import hurdline.study.season.SeasonAsk;
import hurdline.study.yard.YardAsk;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * All questions that can be asked about plants. Each call reads the plant and applies all changes
 * first, so that what is wrong shows before any work begins: all but {@link #problems} throw {@link
 * hurdline.plant.ProblemsException} then, with every problem.
 */
public interface Studies {
  /** Every problem of the plant with its place; if it has none, what is worth a look. */
  List<LocatedProblem> problems(PlantText plant, PlantChanges chosen);

  /** Rated and expected capacity of the plant, by formula. */
  CheckAnswer onPaper(PlantText plant, PlantChanges chosen);

  /** A run of one plant. */
  PreparedStudy<RunAnswer> run(PlantText plant, PlantChanges chosen, RunSettings effort);

  /**
   * The rest of a season of which a part has been.
   *
   * @param records the folder of records, from which that part is taken
   * @param asOf the first day that is simulated
   */
  PreparedStudy<RunAnswer> restOfSeason(
      PlantText plant, PlantChanges chosen, Path records, LocalDate asOf, RunSettings effort);

  /**
   * A run of one plant whose ranges of replications are simulated apart and put together; see
   * {@link hurdline.study.run.RangeResults}.
   */
  Run inRanges(PlantText plant, PlantChanges chosen, RunSettings effort);

  /**
   * A comparison of a plant and its options.
   *
   * @param base what is changed in base and options alike
   * @param ask which options, and what else
   */
  PreparedStudy<CompareAnswer> compare(
      PlantText plant, PlantChanges base, CompareAsk ask, RunSettings effort);

  /**
   * A comparison of season plans.
   *
   * @param plants one with plans of its own, or several of which each is a plan
   * @param chosen what is changed under every plan alike
   */
  PreparedStudy<SeasonAnswer> season(
      List<PlantText> plants, SeasonAsk ask, PlantChanges chosen, RunSettings effort);

  /** The sizing of a yard. */
  PreparedStudy<YardAnswer> yard(
      PlantText plant, PlantChanges chosen, RunSettings effort, YardAsk ask);

  /**
   * A grid over one plant; refused only if no cell can be simulated.
   *
   * @param keys one or two
   */
  PreparedGrid grid(PlantText plant, PlantChanges chosen, List<GridKey> keys, RunSettings effort);

  /**
   * A grid over the plant and its options.
   *
   * @param base what is changed in base and options alike
   * @param ask which options
   */
  PreparedGrid grid(
      PlantText plant, PlantChanges base, CompareAsk ask, List<GridKey> keys, RunSettings effort);

  /**
   * A grid over season plans.
   *
   * @param plants one with plans of its own, or several of which each is a plan
   * @param plans of the one; none for its season as it stands and all its plans
   */
  PreparedGrid grid(
      List<PlantText> plants,
      List<String> plans,
      PlantChanges chosen,
      List<GridKey> keys,
      RunSettings effort);

  /**
   * A grid over the plant as it stands and with a yard without limit.
   *
   * @param ask whose yard
   */
  PreparedGrid grid(
      PlantText plant, PlantChanges chosen, YardAsk ask, List<GridKey> keys, RunSettings effort);

  /**
   * The best of very many plans: of all combinations of what the file and the call leave open.
   *
   * @param chosen what is changed in all plans before any choice is made
   * @param on the cluster that simulates; none for this program's threads
   */
  PreparedChoice choose(
      PlantText plant, PlantChanges chosen, ChooseAsk ask, RunSettings effort, Optional<String> on);

  /**
   * The plant over a season that has been, and its records beside that.
   *
   * @param records the folder of records
   */
  PreparedStudy<BacktestAnswer> backtest(
      PlantText plant, PlantChanges chosen, Path records, RunSettings effort);

  /**
   * The figures that a folder of the plant's own records holds, beside those of the file.
   *
   * @param seed of the samples with which fits are tested
   */
  FitAnswer fit(PlantText plant, Path records, long seed);
}
