package hurdline.text;

import hurdline.answer.FitAnswer;
import hurdline.answer.FitRow;
import hurdline.answer.FitRow.Point;
import hurdline.answer.Titles;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Fitted laws beside their records, in a table and in their order. */
public final class FitLawWords {
  private static final double HIGH = 0.95;

  /** Behind every p-value. */
  private static final double UNTESTED = 2;

  private final FitAnswer answer;
  private final FitWords words;

  public FitLawWords(FitAnswer answer, Wording wording) {
    this.answer = answer;
    words = new FitWords(answer, wording);
  }

  /** Figures with a law and amounts to set beside it, the worst fit first. */
  public List<FitRow> byFit() {
    return answer.figures().stream()
        .filter(row -> row.points().size() > 1)
        .sorted(
            Comparator.comparingDouble(
                row -> Double.isNaN(row.goodnessP()) ? UNTESTED : row.goodnessP()))
        .toList();
  }

  /** Head and rows of the table of laws beside their records. */
  public List<List<String>> laws() {
    List<List<String>> rows =
        new ArrayList<>(
            List.of(
                List.of(
                    "figure",
                    "law",
                    "fit",
                    "p",
                    "widest gap",
                    "median: recorded",
                    "by the law",
                    "95 % below: recorded",
                    "by the law")));
    for (FitRow row : byFit()) {
      Point median = at(row, 0.5);
      Point high = at(row, HIGH);
      rows.add(
          List.of(
              Titles.capital(words.label(row.key())),
              row.laws().get(0).law(),
              row.verdict(),
              words.number(row.goodnessP()),
              words.number(100 * gap(row)) + " %",
              words.number(median.amount()) + " " + row.unit(),
              words.number(median.lawAmount()) + " " + row.unit(),
              words.number(high.amount()) + " " + row.unit(),
              words.number(high.lawAmount()) + " " + row.unit()));
    }
    return rows;
  }

  private static double gap(FitRow row) {
    return row.points().stream()
        .mapToDouble(point -> Math.abs(point.share() - point.lawShare()))
        .max()
        .orElse(0);
  }

  /** The amount nearest to a share of all. */
  public static Point at(FitRow row, double share) {
    return row.points().stream()
        .min(Comparator.comparingDouble(point -> Math.abs(point.share() - share)))
        .orElseThrow();
  }
}
