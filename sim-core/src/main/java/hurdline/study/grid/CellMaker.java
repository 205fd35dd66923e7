package hurdline.study.grid;

import hurdline.answer.GridRow;
import hurdline.answer.SimulatedCell;
import hurdline.answer.SummaryRow;
import hurdline.plant.Plant;
import hurdline.statistics.Summary;
import hurdline.study.AnswerRows;
import hurdline.study.PlantOutline;
import hurdline.study.Scenario;
import hurdline.study.option.AnnualMarginGain;
import hurdline.study.option.MoneyYears;
import hurdline.study.option.OptionCashFlow;
import hurdline.study.option.OptionPlants;
import hurdline.study.replicate.LifeCalendar;
import hurdline.study.replicate.ReplicationResults;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes a cell of a grid from what its plants came to. */
final class CellMaker {
  private final List<Scenario> alternatives;
  private final GridMeasures measures;

  CellMaker(List<Scenario> alternatives, GridMeasures measures) {
    this.alternatives = alternatives;
    this.measures = measures;
  }

  /**
   * @param simulated all plants of the cell, in whatever order
   */
  SimulatedCell cell(int cell, List<CellStage> simulated) {
    List<SimulatedCell.Plant> plants = new ArrayList<>();
    Optional<CellStage> first = of(alternatives.get(0), simulated);
    for (Scenario alternative : alternatives) {
      of(alternative, simulated)
          .ifPresent(stage -> plants.add(plant(stage, worth(alternative, first, stage))));
    }
    return new SimulatedCell(cell, plants);
  }

  private static Optional<CellStage> of(Scenario alternative, List<CellStage> simulated) {
    return simulated.stream().filter(stage -> stage.name().equals(alternative.name())).findFirst();
  }

  /**
   * What a plant is worth against the first one, replication by replication: 0 of the first itself,
   * and for an option each time what a life would be worth all of whose calendars are that
   * replication, the mean of which is the mean present value.
   *
   * @return none where it is not asked, there is no money, or a calendar does not say how it
   *     repeats
   */
  private Optional<double[]> worth(
      Scenario alternative, Optional<CellStage> first, CellStage stage) {
    if (!measures.goals().contains(GridMeasures.worth()) || first.isEmpty()) {
      return Optional.empty();
    }
    if (!alternative.bought()) {
      return Optional.of(new double[stage.figures().count()]);
    }
    Plant base = first.get().stage().plant();
    if (base.money().isEmpty() || stage.stage().plant().money().isEmpty()) {
      return Optional.empty();
    }
    return alone(first.get())
        .flatMap(before -> alone(stage).map(after -> new AnnualMarginGain(before, after)))
        .map(
            margin ->
                new OptionCashFlow(
                        OptionPlants.joined(alternative.name(), base.options()),
                        base.money().get(),
                        margin)
                    .values());
  }

  private static Optional<MoneyYears> alone(CellStage stage) {
    return LifeCalendar.of(stage.stage().plant().calendar())
        .map(calendar -> MoneyYears.alone(calendar, stage.figures().byYear()));
  }

  private SimulatedCell.Plant plant(CellStage stage, Optional<double[]> worth) {
    ReplicationResults figures = stage.figures();
    PlantOutline outlines = new PlantOutline(stage.stage());
    List<GridRow> rows = new ArrayList<>();
    new AnswerRows(stage.name(), stage.stage(), figures, outlines)
        .summary()
        .forEach(row -> rows.add(row(stage.cell(), row)));
    List<SimulatedCell.Series> drawn = new ArrayList<>();
    worth.ifPresent(
        values -> {
          rows.add(row(stage, outlines.currency(), Summary.of(values)));
          drawn.add(new SimulatedCell.Series(GridMeasures.worth(), values));
        });
    measures.drawn().stream()
        .filter(figures::has)
        .forEach(measure -> drawn.add(new SimulatedCell.Series(measure, figures.series(measure))));
    return new SimulatedCell.Plant(stage.name(), rows, drawn);
  }

  private static GridRow row(int cell, SummaryRow row) {
    return new GridRow(
        cell,
        row.option(),
        row.measure(),
        row.unit(),
        row.mean(),
        row.low95(),
        row.high95(),
        row.replications(),
        row.interval());
  }

  private static GridRow row(CellStage stage, String currency, Summary worth) {
    return new GridRow(
        stage.cell(),
        stage.name(),
        GridMeasures.worth(),
        currency,
        worth.mean(),
        worth.low95(),
        worth.high95(),
        worth.count(),
        worth.interval().word());
  }
}
