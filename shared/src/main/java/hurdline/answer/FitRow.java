package hurdline.answer;

import java.util.List;

/**
 * One figure of the plant file beside what the records say of it.
 *
 * @param key path in the plant file
 * @param unit of all means and amounts in this row
 * @param said what the file says, as it would be written; empty where it says nothing
 * @param saidMean mean of what the file draws; NaN where it says nothing
 * @param fitted what is taken, as a plant file has it; empty where the file's stays
 * @param patch the same as a patch on the file; empty where the file's stays
 * @param mean of what will be drawn; NaN where the file's stays
 * @param errorShare standard error of the mean over the mean
 * @param low95 lower end of the mean's 95 % interval
 * @param high95 its upper end
 * @param rows amounts the figure rests on, those cut short among them
 * @param ended those seen to their end
 * @param goodnessP share of draws from the law at least as far from it as the records; NaN where it
 *     was not tested
 * @param verdict whether the law fits, in a word or two
 * @param notes what is to be known of it
 * @param points the amounts beside the law
 * @param laws every law that was tried, the taken one first
 * @param parameters of the law, as the fit has them: logarithms, see RECORDS.md
 * @param covariance of the parameters, row by row
 * @param draws values as a plant file has them, as far as the records leave them open
 */
public record FitRow(
    String key,
    String unit,
    String said,
    double saidMean,
    String fitted,
    String patch,
    double mean,
    double errorShare,
    double low95,
    double high95,
    int rows,
    int ended,
    double goodnessP,
    String verdict,
    List<String> notes,
    List<Point> points,
    List<TriedLaw> laws,
    List<Double> parameters,
    List<Double> covariance,
    List<String> draws) {
  public FitRow {
    notes = List.copyOf(notes);
    points = List.copyOf(points);
    laws = List.copyOf(laws);
    parameters = List.copyOf(parameters);
    covariance = List.copyOf(covariance);
    draws = draws == null ? List.of() : List.copyOf(draws); // not kept in record.json
  }

  /** Whether the records changed it. */
  public boolean isFitted() {
    return !fitted.isEmpty();
  }

  /**
   * An amount that was seen.
   *
   * @param share of all amounts at or below it, by Kaplan and Meier where some were cut short
   * @param lawShare the same by the law
   * @param lawAmount what the law has at that share
   */
  public record Point(double amount, double share, double lawShare, double lawAmount) {}

  /**
   * @param criterion Akaike's, corrected for few
   * @param distance Anderson and Darling's
   * @param p as {@link FitRow#goodnessP}
   */
  public record TriedLaw(String law, double criterion, double distance, double p, double mean) {}
}
