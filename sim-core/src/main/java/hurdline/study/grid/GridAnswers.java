package hurdline.study.grid;

import hurdline.answer.Fact;
import hurdline.answer.GridAnswer;
import hurdline.answer.GridBest;
import hurdline.answer.GridCell;
import hurdline.answer.GridChange;
import hurdline.answer.GridKey;
import hurdline.answer.GridLead;
import hurdline.answer.GridRow;
import hurdline.answer.Header;
import hurdline.answer.Outline;
import hurdline.answer.SimulatedCell;
import hurdline.problem.LocatedProblem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Makes the answer of a grid from its cells. */
record GridAnswers(
    Header header,
    Outline outline,
    String called,
    List<String> plants,
    List<GridKey> keys,
    List<GridCell> cells,
    GridMeasures measures,
    List<SimulatedCell> simulated,
    List<Fact> assumptions,
    List<Fact> cautions,
    List<LocatedProblem> warnings) {

  GridAnswer answer() {
    List<GridRow> all = new ArrayList<>();
    simulated.forEach(cell -> cell.plants().forEach(plant -> all.addAll(plant.rows())));
    Set<String> drawn = new HashSet<>(measures.drawn());
    List<GridBest> best = new ArrayList<>();
    List<GridLead> leads = new ArrayList<>();
    List<GridChange> changes = new ArrayList<>();
    for (String goal : measures.goals()) {
      GridPairs pairs = new GridPairs(goal, plants, cells.size(), simulated);
      best.addAll(pairs.best());
      if (plants.size() > 1) {
        List<GridLead> ofGoal = pairs.leads();
        leads.addAll(ofGoal);
        if (keys.size() == 1) {
          changes.addAll(pairs.changes(ofGoal, keys.get(0)));
        }
      }
    }
    return new GridAnswer(
        header,
        outline,
        called,
        plants,
        keys,
        cells,
        measures.drawn(),
        measures.goals().size(),
        all.stream().filter(row -> drawn.contains(row.measure())).toList(),
        best,
        leads,
        changes,
        assumptions,
        cautions,
        warnings,
        new GridAnswer.All(all));
  }
}
