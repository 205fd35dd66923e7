package hurdline.study;

import hurdline.answer.DifferenceRow;
import hurdline.answer.InputUncertainty;
import hurdline.answer.Samples;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import hurdline.plant.InputDraws;
import hurdline.statistics.Intervals;
import hurdline.statistics.MeanOverInputs;
import hurdline.statistics.PairedDifference;
import hurdline.statistics.RowsAbove;
import hurdline.statistics.VarianceShares;
import hurdline.study.replicate.ReplicationResults;
import hurdline.unit.AmountsInText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Gathers what drawn inputs make of the figures of a study. */
public final class InputRows {
  private static final double LEVEL = 0.95;

  /** Fewer say nothing of which input it is. */
  private static final int FEWEST = 20;

  private static final Set<Measure> HEADLINES =
      EnumSet.of(
          Measure.MASS_FED,
          Measure.LINE_THROUGHPUT,
          Measure.PRODUCT_MASS,
          Measure.SEASON_LEFT_OVER,
          Measure.YARD_PEAK,
          Measure.MONEY_MARGIN);

  private final Optional<InputDraws> draws;
  private final List<InputUncertainty.Row> rows = new ArrayList<>();
  private final List<InputUncertainty.Share> shares = new ArrayList<>();
  private final List<InputUncertainty.Plants> plants = new ArrayList<>();

  public InputRows(Optional<InputDraws> draws) {
    this.draws = draws;
  }

  /** Of a plant: a row for each measure. */
  public void add(AnswerRows of) {
    of.inputRows().forEach(rows::add);
    of.drawn()
        .ifPresent(
            drawn ->
                of.samples().measures().stream()
                    .map(measured -> measured.measure())
                    .filter(measure -> drawn.figures().has(measure))
                    .forEach(
                        measure ->
                            share(
                                of.option(),
                                "",
                                measure,
                                of.given(measure),
                                drawn.figures().series(measure))));
  }

  /** In how many plants of the draws each line is done by the end of its last campaign. */
  public void addDone(AnswerRows of) {
    if (of.drawn().isEmpty()) {
      return;
    }
    ReplicationResults drawn = of.drawn().get().figures();
    for (Samples.Measured measured : of.samples().measures()) {
      Optional<MeasureName> name =
          Measure.find(measured.measure())
              .filter(match -> match.measure() == Measure.SEASON_LEFT_OVER && !match.dry());
      if (name.isPresent() && drawn.has(measured.measure())) {
        double[] given = done(of.given(measured.measure()));
        RowsAbove found =
            RowsAbove.half(
                done(drawn.series(measured.measure())), draws.orElseThrow().rows().size());
        plants.add(
            new InputUncertainty.Plants(
                InputUncertainty.Holds.DONE,
                of.option(),
                "",
                name.get().names().get(0),
                0,
                "",
                found.rows(),
                found.above(),
                found.times(),
                given.length,
                (int) Arrays.stream(given).sum()));
      }
    }
  }

  private static double[] done(double[] leftOver) {
    return Arrays.stream(leftOver)
        .filter(left -> !Double.isNaN(left))
        .map(left -> left == 0 ? 1 : 0)
        .toArray();
  }

  /**
   * In how many plants of the draws an alternative adds more to the margin than it costs a year.
   *
   * @param costPerYr its purchase as an even payment
   */
  public void addPays(
      Pair of, Optional<DrawnResults> base, Optional<DrawnResults> other, double costPerYr) {
    Optional<double[]> drawn = drawn(base, other, of.measured().measure());
    if (drawn.isPresent()) {
      int count = draws.orElseThrow().rows().size();
      RowsAbove found = RowsAbove.of(differences(of), drawn.get(), count, costPerYr);
      plants.add(
          new InputUncertainty.Plants(
              InputUncertainty.Holds.PAYS,
              of.option(),
              of.against(),
              "",
              costPerYr,
              of.measured().unit(),
              found.rows(),
              found.above(),
              found.times(),
              0,
              0));
    }
  }

  /**
   * Two plants that are compared in a measure.
   *
   * @param against the one that the other's difference is from
   */
  public record Pair(
      String option,
      String against,
      Samples.Measured measured,
      ReplicationResults base,
      ReplicationResults other) {}

  /**
   * A difference, both plants having the same inputs in a replication.
   *
   * @param base with drawn inputs
   * @param other with drawn inputs
   * @param comparisons how many differences are looked at together
   */
  public DifferenceRow difference(
      Pair of, Optional<DrawnResults> base, Optional<DrawnResults> other, int comparisons) {
    String measure = of.measured().measure();
    PairedDifference pair =
        PairedDifference.of(of.base().series(measure), of.other().series(measure), comparisons);
    DifferenceRow row = row(of.option(), of.measured(), pair);
    Optional<double[]> drawn = drawn(base, other, measure);
    return drawn.isEmpty() || pair.count() < 2
        ? row
        : over(row, of.against(), differences(of), drawn.get(), comparisons);
  }

  private static double[] differences(Pair of) {
    String measure = of.measured().measure();
    return PairedDifference.differences(of.base().series(measure), of.other().series(measure));
  }

  /** Differences with drawn inputs, as far as both plants were simulated; empty where not. */
  private static Optional<double[]> drawn(
      Optional<DrawnResults> base, Optional<DrawnResults> other, String measure) {
    if (base.isEmpty()
        || other.isEmpty()
        || !base.get().figures().has(measure)
        || !other.get().figures().has(measure)) {
      return Optional.empty();
    }
    double[] ofBase = base.get().figures().series(measure);
    double[] ofOther = other.get().figures().series(measure);
    int both = Math.min(ofBase.length, ofOther.length);
    return both < 2
        ? Optional.empty()
        : Optional.of(
            PairedDifference.differences(
                Arrays.copyOf(ofBase, both), Arrays.copyOf(ofOther, both)));
  }

  private DifferenceRow over(
      DifferenceRow row, String against, double[] given, double[] drawn, int comparisons) {
    int count = draws.orElseThrow().rows().size();
    MeanOverInputs own = MeanOverInputs.of(given, drawn, count, LEVEL);
    MeanOverInputs joint =
        MeanOverInputs.of(given, drawn, count, Intervals.jointLevel(LEVEL, comparisons));
    if (!own.interval().isKnown()) {
      return row;
    }
    rows.add(row(row.option(), against, row.measure(), row.unit(), own));
    share(row.option(), against, row.measure(), given, drawn);
    boolean isSignificant = joint.interval().excludes0();
    boolean isForReplications =
        isSignificant || Math.abs(row.difference()) > joint.inputsHalfWidth();
    return new DifferenceRow(
        row.option(),
        row.measure(),
        row.unit(),
        row.baseMean(),
        row.optionMean(),
        row.difference(),
        own.interval().low(),
        own.interval().high(),
        joint.interval().low(),
        joint.interval().high(),
        row.interval() + " inputs",
        isSignificant,
        isForReplications ? row.replicationsNeeded() : Double.NaN,
        row.varianceRemoved(),
        row.replications());
  }

  private static DifferenceRow row(
      String option, Samples.Measured measured, PairedDifference pair) {
    return new DifferenceRow(
        option,
        measured.measure(),
        measured.unit(),
        pair.baseMean(),
        pair.optionMean(),
        pair.difference(),
        pair.at95().low(),
        pair.at95().high(),
        pair.joint().low(),
        pair.joint().high(),
        pair.interval().word(),
        pair.significant(),
        pair.replicationsNeeded().isPresent() ? pair.replicationsNeeded().getAsInt() : Double.NaN,
        pair.varianceRemoved(),
        pair.count());
  }

  static InputUncertainty.Row row(
      String option, String against, String measure, String unit, MeanOverInputs of) {
    return new InputUncertainty.Row(
        option,
        against,
        measure,
        unit,
        of.mean(),
        of.chance().halfWidth(),
        of.inputsHalfWidth(),
        of.interval().low(),
        of.interval().high(),
        of.isBound(),
        of.shift(),
        of.shiftError(),
        of.bends(),
        of.p05(),
        of.p95(),
        of.count());
  }

  private void share(
      String option, String against, String measure, double[] given, double[] drawn) {
    boolean isHeadline =
        Measure.find(measure)
            .filter(match -> !match.dry() && HEADLINES.contains(match.measure()))
            .isPresent();
    double[] all = PairedDifference.differences(Arrays.copyOf(given, drawn.length), drawn);
    int[] known = IntStream.range(0, all.length).filter(i -> !Double.isNaN(all[i])).toArray();
    if (!isHeadline || known.length < FEWEST) {
      return;
    }
    InputDraws of = draws.orElseThrow();
    double[][][] numbers = new double[of.keys().size()][known.length][];
    for (int key = 0; key < numbers.length; key++) {
      for (int at = 0; at < known.length; at++) {
        String value = of.rows().get(of.row(known[at] + 1)).get(key);
        numbers[key][at] = AmountsInText.numbers(value);
      }
    }
    VarianceShares found =
        VarianceShares.of(IntStream.of(known).mapToDouble(i -> all[i]).toArray(), numbers);
    for (int key = 0; key < numbers.length; key++) {
      boolean isMore = found.p()[key] < (1 - LEVEL) / numbers.length;
      shares.add(
          new InputUncertainty.Share(
              option, against, measure, of.keys().get(key), found.share()[key], isMore));
    }
  }

  public InputUncertainty answer() {
    return draws
        .map(
            of ->
                new InputUncertainty(of.said(), of.rows().size(), of.keys(), rows, shares, plants))
        .orElse(InputUncertainty.none());
  }
}
