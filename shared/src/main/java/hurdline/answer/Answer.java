package hurdline.answer;

import hurdline.problem.LocatedProblem;
import java.util.List;

/**
 * What a verb found out: all that words, tables, charts and the page need, and nothing of the
 * engine.
 *
 * <p>Each verb adds one record. In every double NaN means "not defined" (an empty cell, {@code
 * null} in JSON); masses are tonnes, times hours, energy kWh and power kW unless a component's name
 * says otherwise. Lists keep their order.
 */
public sealed interface Answer
    permits BacktestAnswer,
        ChooseAnswer,
        CompareAnswer,
        GridAnswer,
        CheckAnswer,
        FitAnswer,
        RunAnswer,
        SeasonAnswer,
        YardAnswer {
  /** Which plant, program and settings this rests on. */
  Header header();

  /** What the plant is made of. */
  Outline outline();

  /** What {@code check} warns of. */
  List<LocatedProblem> warnings();
}
