package hurdline.chart;

import hurdline.answer.Answer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.GridAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.words.Wording;
import java.util.List;

/** All figures of an answer of any kind, each as a file of its own; a rated capacity has none. */
public final class AnswerFigures {
  private AnswerFigures() {}

  public static List<Figure> of(Answer answer, Wording wording) {
    if (answer instanceof RunAnswer run) {
      return new Figures(run, wording).all();
    }
    if (answer instanceof CompareAnswer compare) {
      return new CompareFigures(compare, wording).all();
    }
    if (answer instanceof SeasonAnswer season) {
      return new PlanFigures(season, wording).all();
    }
    if (answer instanceof YardAnswer yard) {
      return new YardFigures(yard, wording).all();
    }
    return answer instanceof GridAnswer grid ? new GridFigures(grid, wording).all() : List.of();
  }
}
