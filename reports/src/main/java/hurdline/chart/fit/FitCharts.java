package hurdline.chart.fit;

import hurdline.answer.FitAnswer;
import hurdline.chart.kit.Chart;
import hurdline.text.FitLawWords;
import hurdline.text.FitWords;
import hurdline.text.Wording;
import java.util.List;

/** A chart for each figure with a law, the worst fit first. */
public final class FitCharts {
  private FitCharts() {}

  public static List<Chart> all(FitAnswer answer, Wording wording) {
    FitWords words = new FitWords(answer, wording);
    return new FitLawWords(answer, wording)
        .byFit().stream().map(row -> new LawChart(row, words).figure()).toList();
  }
}
