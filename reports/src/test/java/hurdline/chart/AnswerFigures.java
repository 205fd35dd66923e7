package hurdline.chart;

import hurdline.answer.Answer;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.GridAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.chart.choose.ChooseCharts;
import hurdline.chart.compare.CompareCharts;
import hurdline.chart.grid.GridCharts;
import hurdline.chart.kit.Chart;
import hurdline.chart.run.RunCharts;
import hurdline.chart.season.PlanCharts;
import hurdline.chart.yard.YardCharts;
import hurdline.text.Wording;
import java.util.List;

/** All figures of an answer of any kind, each as a file of its own; a rated capacity has none. */
public final class AnswerFigures {
  private AnswerFigures() {}

  public static List<Chart> of(Answer answer, Wording wording) {
    if (answer instanceof RunAnswer run) {
      return new RunCharts(run, wording).all();
    }
    if (answer instanceof CompareAnswer compare) {
      return new CompareCharts(compare, wording).all();
    }
    if (answer instanceof SeasonAnswer season) {
      return new PlanCharts(season, wording).all();
    }
    if (answer instanceof YardAnswer yard) {
      return new YardCharts(yard, wording).all();
    }
    if (answer instanceof ChooseAnswer choose) {
      return new ChooseCharts(choose, wording).all();
    }
    return answer instanceof GridAnswer grid ? new GridCharts(grid, wording).all() : List.of();
  }
}
