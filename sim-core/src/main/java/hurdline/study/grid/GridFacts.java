package hurdline.study.grid;

import hurdline.answer.Fact;
import hurdline.answer.GridCell;
import hurdline.answer.GridFact;
import hurdline.plant.Calendar;
import hurdline.study.replicate.LifeCalendar;
import hurdline.study.run.RunFacts;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What the figures of a grid take for granted. */
final class GridFacts {
  private GridFacts() {}

  /**
   * @param replications of each cell
   * @param calendar of the first plant without the varied values
   * @param bought whether some of the plants are options of a plant with money
   */
  static List<Fact> facts(
      int replications, Calendar calendar, List<GridCell> cells, boolean bought) {
    List<Fact> facts =
        new ArrayList<>(RunFacts.around(Stream.of(new GridFact.CellReplications(replications))));
    facts.add(new GridFact.OnlyTheseValues());
    facts.add(new GridFact.AllPairs());
    if (bought) {
      facts.add(
          LifeCalendar.of(calendar).isPresent()
              ? new GridFact.ValueInACell()
              : new GridFact.NoValue(calendar.days()));
    }
    if (cells.stream().anyMatch(cell -> !cell.leftOut().isEmpty())) {
      facts.add(new GridFact.LeftOut());
    }
    return facts;
  }
}
