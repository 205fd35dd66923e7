package hurdline.answer;

import hurdline.problem.LocatedProblem;
import java.util.List;
import java.util.Optional;

/**
 * How big the yard of a crop must be.
 *
 * @param header plant, program and settings
 * @param outline of the plant as the file has it
 * @param asked which yard, and what it may do
 * @param summary of the plant as the file has it, then of the same without limit ({@link #noLimit})
 * @param inputs what of the intervals comes from inputs that are not known for certain
 * @param peaks of the yard without limit
 * @param withoutLimit the smallest size that the peak of the yard without limit exceeds in few
 *     enough seasons
 * @param byRule the smallest size in which, by the file's own rule, something finds no room in few
 *     enough seasons; {@link Size#none()} where the study was stopped before it was found
 * @param capacity one row per size, the smallest first
 * @param levels of the yard without limit
 * @param land how much can be contracted; {@link Land#none()} where that was not asked or not found
 * @param acres empty where that was not asked
 * @param gains what shortens the peak of the yard without limit; empty where that was not asked
 * @param grounds of the places of which the file says how they are stacked, at the smallest size
 *     that will do by the rule, else at the file's
 * @param questions for the fire official
 * @param loads of the first season, in the plant as the file has it
 * @param assumptions what the figures take for granted
 * @param cautions what in this very plant can hurt someone
 * @param warnings what {@code check} warns of
 * @param samples every measure of every replication, in the order of {@code summary}
 */
public record YardAnswer(
    Header header,
    Outline outline,
    Asked asked,
    List<SummaryRow> summary,
    InputUncertainty inputs,
    List<PeakRow> peaks,
    Size withoutLimit,
    Size byRule,
    List<YardSizeRow> capacity,
    List<YardLevelRow> levels,
    Land land,
    List<AcresRow> acres,
    List<GainRow> gains,
    List<GroundPlan> grounds,
    List<Fact> questions,
    List<LoadRow> loads,
    List<Fact> assumptions,
    List<Fact> cautions,
    List<LocatedProblem> warnings,
    Replayed samples)
    implements Answer {
  public YardAnswer {
    inputs = inputs == null ? InputUncertainty.none() : inputs;
    summary = List.copyOf(summary);
    peaks = List.copyOf(peaks);
    capacity = List.copyOf(capacity);
    levels = List.copyOf(levels);
    acres = List.copyOf(acres);
    gains = List.copyOf(gains);
    grounds = List.copyOf(grounds);
    questions = List.copyOf(questions);
    loads = List.copyOf(loads);
    assumptions = List.copyOf(assumptions);
    cautions = List.copyOf(cautions);
    warnings = List.copyOf(warnings);
    samples = samples == null ? Replayed.none() : samples;
  }

  /**
   * What stands in the column of options for the plant with a yard without limit; no option can be
   * called so.
   */
  public static String noLimit() {
    return "no limit";
  }

  /**
   * What was asked.
   *
   * @param unit {@code bales} or {@code modules}
   * @param overflow share of seasons in which the yard may overflow
   * @param holds what the crop's places hold as the file has it
   * @param place whose size is changed
   * @param others what the crop's other places hold together
   * @param turnsAway whether what finds no room is turned away, and does not wait
   */
  public record Asked(
      String crop,
      String unit,
      double overflow,
      double holds,
      String place,
      double others,
      boolean turnsAway) {}

  /**
   * A size of the yard.
   *
   * @param bales in the crop's unit of count
   * @param low95 lower end of its 95 % interval; NaN where there is none
   * @param high95 its upper end
   * @param areaM2 ground for its stacks and lanes; NaN where the file does not say how it is
   *     stacked
   * @param chance share of the seasons simulated in which it overflowed
   * @param chanceLow95 lower end of the chance's 95 % interval
   * @param chanceHigh95 its upper end
   */
  public record Size(
      double bales,
      double low95,
      double high95,
      double areaM2,
      double chance,
      double chanceLow95,
      double chanceHigh95) {
    public static Size none() {
      double no = Double.NaN;
      return new Size(no, no, no, no, no, no, no);
    }
  }

  /**
   * The most acres with which enough seasons finish the crop.
   *
   * @param share of seasons that must finish
   * @param carryOver bales that may be left over
   * @param times factor on the area of every field; NaN where even the smallest simulated does not
   *     do
   * @param tolerance how far above {@code times} one that still does may lie
   * @param low95 lower end of its 95 % interval, a factor simulated; NaN where there are too few
   *     seasons for one
   * @param high95 its upper end
   */
  public record Land(
      double share, double carryOver, double times, double tolerance, double low95, double high95) {
    public static Land none() {
      return new Land(Double.NaN, 0, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    public boolean isAsked() {
      return !Double.isNaN(share);
    }
  }

  /** What a factor on all areas comes to, if it was simulated. */
  public Optional<AcresRow> acresAt(double times) {
    return acres.stream().filter(row -> row.times() == times).findFirst();
  }

  /** The row of a size. */
  public Optional<YardSizeRow> at(double bales) {
    return capacity.stream().filter(row -> row.bales() == bales).findFirst();
  }

  /** The size that costs least, if money was asked. */
  public Optional<YardSizeRow> cheapest() {
    return capacity.stream().filter(YardSizeRow::isCheapest).findFirst();
  }

  /**
   * The cheapest size and those around it without a gap and without a significant difference from
   * it; none where no money was asked.
   */
  public List<YardSizeRow> hardlyMatters() {
    int at = 0;
    while (at < capacity.size() && !capacity.get(at).isCheapest()) {
      at++;
    }
    if (at == capacity.size()) {
      return List.of();
    }
    int from = at;
    while (from > 0 && !capacity.get(from - 1).cost().above().significant()) {
      from--;
    }
    int to = at + 1;
    while (to < capacity.size() && !capacity.get(to).cost().above().significant()) {
      to++;
    }
    return capacity.subList(from, to);
  }

  /** The summary of a measure in the plant as the file has it, or without limit. */
  public Optional<SummaryRow> find(String option, String measure) {
    return summary.stream()
        .filter(row -> row.option().equals(option) && row.measure().equals(measure))
        .findFirst();
  }
}
