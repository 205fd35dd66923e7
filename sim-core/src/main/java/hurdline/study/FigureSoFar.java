package hurdline.study;

import hurdline.answer.GridRow;
import hurdline.answer.SimulatedCell;
import hurdline.measure.Measure;
import hurdline.measure.Unit;
import hurdline.plant.Plant;
import hurdline.statistics.Intervals;
import hurdline.study.replicate.HeadlineSoFar;
import hurdline.study.replicate.ReplicationResults;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The one figure that tells those who wait how a study goes: the margin where the plant has money,
 * else what its first line is fed.
 */
public final class FigureSoFar {
  private final String measure;
  private final String label;
  private final String unit;

  public FigureSoFar(Plant plant) {
    boolean money = plant.money().isPresent();
    measure =
        money ? Measure.MONEY_MARGIN.of() : Measure.LINE_THROUGHPUT.of(plant.lines().get(0).name());
    label = money ? "margin" : "throughput";
    unit = money ? plant.money().get().currency() : Unit.TONNE_PER_HOUR.word();
  }

  /** Of one plant. */
  public HeadlineSoFar of(ReplicationResults figures) {
    return figures.has(measure)
        ? of(HeadlineSoFar.Kind.MEAN, label, List.of(), unit, figures.series(measure))
        : HeadlineSoFar.unknown();
  }

  /** Any values, one of each replication. */
  private static HeadlineSoFar of(
      HeadlineSoFar.Kind kind, String label, List<String> names, String unit, double[] values) {
    if (values.length < 2) {
      return HeadlineSoFar.unknown();
    }
    var mean = Intervals.mean95(values);
    return new HeadlineSoFar(
        kind,
        label,
        names,
        unit,
        Arrays.stream(values).average().orElseThrow(),
        mean.low(),
        mean.high());
  }

  /** The room that a yard without limit needs, one value of each replication. */
  public static HeadlineSoFar room(String unit, double[] values) {
    return of(HeadlineSoFar.Kind.ROOM, "", List.of(), unit, values);
  }

  /**
   * How far the best plant is above the first, or where the first is the best above the second
   * best, replication by replication.
   *
   * @param names of the plants
   */
  public HeadlineSoFar lead(List<String> names, List<ReplicationResults> figures) {
    int known = figures.stream().mapToInt(ReplicationResults::count).min().orElse(0);
    if (known < 2 || figures.stream().anyMatch(one -> !one.has(measure))) {
      return HeadlineSoFar.unknown();
    }
    if (figures.size() == 1) {
      return of(figures.get(0));
    }
    int[] order =
        IntStream.range(0, figures.size())
            .boxed()
            .sorted(Comparator.comparingDouble(at -> -mean(figures.get(at), known)))
            .mapToInt(Integer::intValue)
            .toArray();
    int best = order[0];
    int other = best == 0 ? order[1] : 0;
    double[] left = figures.get(best).series(measure);
    double[] right = figures.get(other).series(measure);
    return of(
        HeadlineSoFar.Kind.LEAD,
        label,
        List.of(names.get(best), names.get(other)),
        unit,
        IntStream.range(0, known).mapToDouble(r -> left[r] - right[r]).toArray());
  }

  /** The highest among cells of a grid that are done. */
  public HeadlineSoFar highest(Collection<SimulatedCell> cells) {
    return cells.stream()
        .flatMap(cell -> cell.plants().stream())
        .flatMap(plant -> plant.rows().stream())
        .filter(row -> row.measure().equals(measure))
        .max(Comparator.comparingDouble(GridRow::mean))
        .map(
            row ->
                new HeadlineSoFar(
                    HeadlineSoFar.Kind.HIGHEST,
                    label,
                    List.of(Integer.toString(cells.size())),
                    unit,
                    row.mean(),
                    row.low95(),
                    row.high95()))
        .orElse(HeadlineSoFar.unknown());
  }

  private double mean(ReplicationResults figures, int known) {
    return Arrays.stream(figures.series(measure), 0, known).sum() / known;
  }
}
