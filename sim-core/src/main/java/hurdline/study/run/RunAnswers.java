package hurdline.study.run;

import hurdline.answer.BottleneckRow;
import hurdline.answer.Fact;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonRest;
import hurdline.answer.SummaryRow;
import hurdline.answer.Trace;
import hurdline.simulation.CompiledPlant;
import hurdline.study.AnswerRows;
import hurdline.study.Capacities;
import hurdline.study.CashFacts;
import hurdline.study.CropAdjustments;
import hurdline.study.DrawnResults;
import hurdline.study.InputRows;
import hurdline.study.IntervalFacts;
import hurdline.study.LineFlows;
import hurdline.study.OrderRows;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.PlantOutline;
import hurdline.study.SafetyFacts;
import hurdline.study.replicate.ReplicationResults;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.StoppingRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the answer of a run from what its replications came to. */
final class RunAnswers {
  private final PlantOrigin source;
  private final PlantChanges chosen;
  private final RunSettings effort;
  private final CompiledPlant stage;
  private final RunAccumulator gathered;
  private final StoppingRule goal;
  private final Optional<DrawnResults> drawn;

  RunAnswers(
      PlantOrigin source,
      PlantChanges chosen,
      RunSettings effort,
      CompiledPlant stage,
      RunAccumulator gathered,
      StoppingRule goal,
      Optional<DrawnResults> drawn) {
    this.source = source;
    this.chosen = chosen;
    this.effort = effort;
    this.stage = stage;
    this.gathered = gathered;
    this.goal = goal;
    this.drawn = drawn;
  }

  /**
   * @param stopped whether replications are missing because the user asked for an end
   */
  RunAnswer answer(boolean stopped, Trace trace) {
    ReplicationResults figures = gathered.figures();
    PlantOutline outlines = new PlantOutline(stage);
    AnswerRows rows = new AnswerRows(chosen.option(), stage, figures, outlines, drawn);
    InputRows inputs = new InputRows(drawn.map(DrawnResults::draws));
    inputs.add(rows);
    inputs.addDone(rows);
    YearRows year = new YearRows(chosen.option(), stage, gathered, rows);
    Capacities capacities = new Capacities(stage, outlines);
    List<BottleneckRow> holders = rows.holders(capacities::twins);
    List<SummaryRow> summary = rows.summary();
    List<Fact> facts = new ArrayList<>(new RunFacts(rows, effort, figures, goal).facts(stopped));
    IntervalFacts.of(summary).ifPresent(facts::add);
    CashFacts.of(stage.plant()).ifPresent(facts::add);
    return new RunAnswer(
        outlines.header(source, chosen, effort, figures.count(), stopped),
        outlines.outline(),
        summary,
        new CropAdjustments(outlines.outline(), figures).rows(chosen.option(), rows),
        inputs.answer(),
        holders,
        rows.machines(),
        year.weeks(),
        year.months(),
        year.levels(),
        year.stores(),
        new LineFlows(stage.layout(), outlines, new MeanFlows(gathered, holders)).flows(),
        new OrderRows(chosen.option(), stage.plant(), figures).rows(),
        SeasonRest.none(),
        capacities.after(holders),
        facts,
        new SafetyFacts(stage.plant()).facts(),
        source.warnings(),
        rows.samples(),
        trace);
  }
}
