package hurdline.study;

import hurdline.answer.AdjustedRow;
import hurdline.answer.Outline;
import hurdline.measure.Measure;
import hurdline.statistics.ControlVariate;
import hurdline.statistics.PairedDifference;
import hurdline.study.replicate.ReplicationResults;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Headline measures adjusted for the drawn crop of the same replications: what is fed, left over,
 * the yard's peak and the margin.
 *
 * <p>The control is {@link Measure#MASS_DRAWN_OVER_MEAN}, whose mean is exactly 1: only draws that
 * are taken before anything happens go into it. Rain, ready days and loads are drawn too, but the
 * mean of what they lead to is not known, so nothing is adjusted for them. With several crops from
 * fields the margin takes the one control that leaves the smallest error.
 */
public final class CropAdjustments {
  private static final double MEAN_OF_CONTROL = 1;

  /**
   * With 20 the interval of a bent answer held in 87 % in place of 95; see {@link ControlVariate}.
   */
  private static final int FEWEST = 40;

  private final Outline outline;
  private final ReplicationResults base;

  /**
   * @param base the plant that the figures are of; in a comparison the base, whose draws the
   *     options share
   */
  public CropAdjustments(Outline outline, ReplicationResults base) {
    this.outline = outline;
    this.base = base;
  }

  /** Rows for the plant itself. */
  public List<AdjustedRow> rows(String option, AnswerRows units) {
    List<AdjustedRow> rows = new ArrayList<>();
    headlines()
        .forEach(
            (measure, crops) -> {
              double[] values = base.series(measure);
              String unit = units.unit(measure);
              boolean mayBeLess = unit.equals(units.currency());
              row(option, measure, unit, values, crops, 1)
                  .filter(row -> mayBeLess || row.adjusted() >= 0 && row.adjusted() <= most(row))
                  .map(row -> mayBeLess ? row : cut(row))
                  .ifPresent(rows::add);
            });
    return rows;
  }

  /** Rows for the differences of an option from the base. */
  public List<AdjustedRow> differences(
      String option, ReplicationResults other, AnswerRows units, int comparisons) {
    List<AdjustedRow> rows = new ArrayList<>();
    headlines()
        .forEach(
            (measure, crops) -> {
              if (other.has(measure)) {
                double[] differences =
                    PairedDifference.differences(base.series(measure), other.series(measure));
                row(option, measure, units.unit(measure), differences, crops, comparisons)
                    .ifPresent(rows::add);
              }
            });
    return rows;
  }

  /** The measures that this plant has, each with the crops whose draws may explain it. */
  private Map<String, List<String>> headlines() {
    Map<String, List<String>> headlines = new LinkedHashMap<>();
    for (Outline.Line line : outline.lines()) {
      headlines.put(Measure.MASS_FED.of(line.crop()), List.of(line.crop()));
      headlines.put(Measure.SEASON_LEFT_OVER.of(line.name()), List.of(line.crop()));
    }
    List<String> crops = outline.crops().stream().map(Outline.Crop::name).toList();
    crops.forEach(crop -> headlines.put(Measure.YARD_PEAK.of(crop), List.of(crop)));
    headlines.put(Measure.MONEY_MARGIN.of(), crops);
    headlines.keySet().removeIf(measure -> !base.has(measure));
    return headlines;
  }

  private Optional<AdjustedRow> row(
      String option,
      String measure,
      String unit,
      double[] values,
      List<String> crops,
      int comparisons) {
    AdjustedRow best = null;
    for (String crop : crops) {
      AdjustedRow row = row(option, measure, unit, values, crop, comparisons).orElse(null);
      best = best == null || row != null && row.adjustedError() < best.adjustedError() ? row : best;
    }
    return Optional.ofNullable(best);
  }

  private Optional<AdjustedRow> row(
      String option, String measure, String unit, double[] values, String crop, int comparisons) {
    String control = Measure.MASS_DRAWN_OVER_MEAN.of(crop);
    if (values.length < FEWEST || !base.has(control)) {
      return Optional.empty();
    }
    return ControlVariate.of(values, base.series(control), MEAN_OF_CONTROL, comparisons)
        .map(
            found ->
                new AdjustedRow(
                    option,
                    measure,
                    unit,
                    crop,
                    found.mean(),
                    found.plainError(),
                    found.adjusted(),
                    found.error(),
                    found.interval().low(),
                    found.interval().high()));
  }

  /** What the places of a crop hold, if it is their peak. */
  private double most(AdjustedRow row) {
    double holds = outline.capacityFor(row.crop());
    boolean peak = row.measure().equals(Measure.YARD_PEAK.of(row.crop())) && row.mean() <= holds;
    return peak ? holds : Double.POSITIVE_INFINITY;
  }

  /**
   * As of every interval, the part where the measure cannot lie is left out; see {@link
   * MeasureBounds}.
   */
  private AdjustedRow cut(AdjustedRow row) {
    return new AdjustedRow(
        row.option(),
        row.measure(),
        row.unit(),
        row.crop(),
        row.mean(),
        row.error(),
        row.adjusted(),
        row.adjustedError(),
        Math.max(0, row.low95()),
        Math.min(most(row), row.high95()));
  }
}
