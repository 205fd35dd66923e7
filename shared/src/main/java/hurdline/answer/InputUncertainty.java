package hurdline.answer;

import java.util.List;
import java.util.Optional;

/**
 * What of an answer's intervals comes from chance in the simulation, and what from inputs that are
 * not known for certain.
 *
 * @param source where the draws of the inputs come from; empty where there are none
 * @param draws how many there are
 * @param inputs keys that are drawn
 * @param rows a row for each measure, and for each difference that is compared
 * @param shares which input makes headline figures vary
 * @param plants in how many of the plants that the draws allow something holds
 */
public record InputUncertainty(
    String source,
    int draws,
    List<String> inputs,
    List<Row> rows,
    List<Share> shares,
    List<Plants> plants) {
  private static final InputUncertainty NONE =
      new InputUncertainty("", 0, List.of(), List.of(), List.of(), List.of());

  public InputUncertainty {
    inputs = List.copyOf(inputs);
    rows = List.copyOf(rows);
    shares = List.copyOf(shares);
    plants = plants == null ? List.of() : List.copyOf(plants);
  }

  /** Intervals cover the simulation alone. */
  public static InputUncertainty none() {
    return NONE;
  }

  public boolean isGiven() {
    return !source.isEmpty();
  }

  /**
   * One measure of one alternative, or its difference from another.
   *
   * @param against the alternative that it is a difference from; empty for the measure itself
   * @param chance half the width of the 95 % interval by chance alone
   * @param inputs half the width by the inputs alone
   * @param low95 lower end of the interval by both
   * @param high95 its upper end
   * @param bound whether {@code inputs} is an upper bound, for each draw was simulated once
   * @param shift by how much the mean with drawn inputs lies off the one with those given
   * @param shiftError its standard error
   * @param bends whether that is more than chance, so that the interval leans
   * @param p05 5 % quantile of a year, inputs drawn
   * @param p95 95 % quantile
   * @param replications simulated with drawn inputs
   */
  public record Row(
      String option,
      String against,
      String measure,
      String unit,
      double mean,
      double chance,
      double inputs,
      double low95,
      double high95,
      boolean bound,
      double shift,
      double shiftError,
      boolean bends,
      double p05,
      double p95,
      int replications) {}

  /**
   * What one input contributes.
   *
   * @param share of the variance that drawn inputs make
   * @param significant whether that is more than chance, all inputs looked at together
   */
  public record Share(
      String option,
      String against,
      String measure,
      String input,
      double share,
      boolean significant) {}

  /** What is asked of each plant that the draws allow. */
  public enum Holds {
    /** An alternative adds more to the margin than its yearly cost. */
    PAYS,
    /** A line is done by the end of its last campaign in at least half of its years. */
    DONE
  }

  /**
   * In how many of the plants that the draws allow something holds; each is a row of the draws.
   *
   * @param against the alternative beside which it pays; empty for a line that is done
   * @param line that is done; empty for an alternative that pays
   * @param costPerYr what the margin must rise by, 0 for what costs nothing
   * @param unit of that
   * @param plants that were simulated
   * @param years in which each was simulated at least; with one, chance is in the count
   * @param yearsGiven all years with the inputs as given
   * @param doneGiven those of them in which the line was done
   */
  public record Plants(
      Holds holds,
      String option,
      String against,
      String line,
      double costPerYr,
      String unit,
      int plants,
      int in,
      int years,
      int yearsGiven,
      int doneGiven) {}

  public Optional<Row> find(String option, String against, String measure) {
    return rows.stream()
        .filter(
            row ->
                row.option().equals(option)
                    && row.against().equals(against)
                    && row.measure().equals(measure))
        .findFirst();
  }

  /** Inputs that contribute more than chance to a figure, the largest first. */
  public List<Share> largest(String option, String against, String measure) {
    return shares.stream()
        .filter(
            one ->
                one.significant()
                    && one.option().equals(option)
                    && one.against().equals(against)
                    && one.measure().equals(measure))
        .sorted(java.util.Comparator.comparingDouble(Share::share).reversed())
        .toList();
  }
}
