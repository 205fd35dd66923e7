package hurdline.study.gain;

import hurdline.answer.GainRow;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.results.Outcome;
import hurdline.statistics.PairedDifference;
import hurdline.study.AnswerRows;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.replicate.ReplicationBudget;
import hurdline.study.replicate.ReplicationResults;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What more of each thing brings, each alone, on the same chance as the plant as it stands: the
 * true order of what to improve, which the shares of hours by holder only suggest, since relieving
 * one holder calls up the next.
 */
public final class CapacityGains {
  private final PlantOrigin source;
  private final PlantChanges base;
  private final CompiledPlant stage;
  private final List<CapacityIncrease> mores;
  private final List<String> measures;

  /**
   * @param stage the base
   * @param measures full names; one that the plant has not is left out
   */
  public CapacityGains(
      PlantOrigin source,
      PlantChanges base,
      CompiledPlant stage,
      List<CapacityIncrease> mores,
      List<String> measures) {
    this.source = source;
    this.base = base;
    this.stage = stage;
    this.mores = List.copyOf(mores);
    this.measures = List.copyOf(measures);
  }

  /** How many plants are to be simulated. */
  public int plants() {
    return mores.size();
  }

  /**
   * Simulates each plant as often as the base was; if stopped, those that are whole.
   *
   * @param rows of the base
   */
  public List<GainRow> simulate(
      ReplicationResults figures, AnswerRows rows, ReplicationBudget simulations) {
    List<Outcome.Column> columns =
        figures.columns().stream().filter(column -> measures.contains(column.name())).toList();
    List<GainRow> gains = new ArrayList<>();
    for (CapacityIncrease more : mores) {
      CompiledPlant changed = stage.changedTo(more.plant(source, base));
      simulations.expect(figures.count());
      Optional<ReplicationResults> simulated = simulations.whole(changed, figures.count());
      if (simulated.isEmpty()) {
        break;
      }
      for (Outcome.Column column : columns) {
        gains.add(row(more, column.name(), rows.unit(column), figures, simulated.get()));
      }
    }
    return gains;
  }

  private GainRow row(
      CapacityIncrease more,
      String measure,
      String unit,
      ReplicationResults without,
      ReplicationResults with) {
    PairedDifference pair =
        PairedDifference.of(without.series(measure), with.series(measure), plants());
    return new GainRow(
        more.what(),
        more.increase(),
        measure,
        unit,
        pair.difference(),
        pair.joint().low(),
        pair.joint().high(),
        pair.interval().word(),
        pair.significant());
  }
}
