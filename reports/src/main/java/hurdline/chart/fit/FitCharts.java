package hurdline.chart.fit;

import hurdline.answer.FitAnswer;
import hurdline.chart.kit.Chart;
import hurdline.text.FitWords;
import hurdline.text.Wording;
import java.util.List;

/** A chart for each figure with a law. */
public final class FitCharts {
  private FitCharts() {}

  public static List<Chart> all(FitAnswer answer, Wording wording) {
    FitWords words = new FitWords(answer, wording);
    return answer.figures().stream()
        .filter(row -> row.points().size() > 1)
        .map(row -> new LawChart(row, words).figure())
        .toList();
  }
}
