package hurdline.study;

import hurdline.answer.HolderRow;
import hurdline.answer.Fact;
import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.answer.Trace;
import java.util.ArrayList;
import java.util.List;

/** Makes the answer of a run from what its replications came to. */
final class RunAnswers {
  private final Source source;
  private final Chosen chosen;
  private final Effort effort;
  private final Stage stage;
  private final Gathered gathered;
  private final Goal goal;

  RunAnswers(
      Source source, Chosen chosen, Effort effort, Stage stage, Gathered gathered, Goal goal) {
    this.source = source;
    this.chosen = chosen;
    this.effort = effort;
    this.stage = stage;
    this.gathered = gathered;
    this.goal = goal;
  }

  /**
   * @param stopped whether replications are missing because the user asked for an end
   */
  RunAnswer answer(boolean stopped, Trace trace) {
    Figures figures = gathered.figures();
    Outlines outlines = new Outlines(stage);
    Rows rows = new Rows(chosen.option(), stage, figures, outlines);
    YearRows year = new YearRows(chosen.option(), stage, gathered, rows);
    Capacities capacities = new Capacities(stage, outlines);
    List<HolderRow> holders = rows.holders(capacities::twins);
    List<SummaryRow> summary = rows.summary();
    List<Fact> facts = new ArrayList<>(new RunFacts(rows, effort, figures, goal).facts(stopped));
    IntervalFacts.of(summary).ifPresent(facts::add);
    return new RunAnswer(
        outlines.header(source, chosen, effort, figures.count(), stopped),
        outlines.outline(),
        summary,
        new CropAdjustments(outlines.outline(), figures).rows(chosen.option(), rows),
        holders,
        rows.machines(),
        year.weeks(),
        year.months(),
        year.levels(),
        new Flows(stage.layout(), gathered, outlines, holders).flows(),
        capacities.after(holders),
        facts,
        new SafetyFacts(stage.plant()).facts(),
        source.warnings(),
        rows.samples(),
        trace);
  }
}
