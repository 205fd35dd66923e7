package hurdline.study;

import hurdline.answer.GainRow;
import hurdline.estimate.PairedDifference;
import hurdline.work.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What more of each thing brings, each alone, on the same chance as the plant as it stands: the true
 * order of what to improve, which the shares of hours by holder only suggest, since relieving one
 * holder calls up the next.
 */
final class Gains {
  private final Source source;
  private final Chosen base;
  private final List<More> mores;
  private final List<String> measures;

  /** @param measures full names; one that the plant has not is left out */
  Gains(Source source, Chosen base, List<More> mores, List<String> measures) {
    this.source = source;
    this.base = base;
    this.mores = List.copyOf(mores);
    this.measures = List.copyOf(measures);
  }

  /** How many plants are to be played. */
  int plants() {
    return mores.size();
  }

  /**
   * Plays each plant as often as the base was; if stopped, those that are whole.
   *
   * @param rows of the base
   */
  List<GainRow> play(Figures figures, Rows rows, Plays plays) {
    List<Outcome.Column> columns =
        figures.columns().stream().filter(column -> measures.contains(column.name())).toList();
    List<GainRow> gains = new ArrayList<>();
    for (More more : mores) {
      Stage stage = Stage.of(more.plant(source, base));
      plays.expect(figures.count());
      Optional<Figures> played = plays.whole(stage, figures.count());
      if (played.isEmpty()) {
        break;
      }
      for (Outcome.Column column : columns) {
        gains.add(row(more, column.name(), rows.unit(column), figures, played.get()));
      }
    }
    return gains;
  }

  private GainRow row(More more, String measure, String unit, Figures without, Figures with) {
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
        pair.toldApart());
  }
}
