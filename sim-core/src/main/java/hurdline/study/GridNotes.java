package hurdline.study;

import hurdline.answer.GridCell;
import hurdline.answer.Note;
import hurdline.plant.Calendar;
import java.util.ArrayList;
import java.util.List;

/** What the figures of a grid take for granted, in whole sentences. */
final class GridNotes {
  private final Source source;
  private final Chosen chosen;
  private final Effort effort;
  private final Stage first;
  private final List<GridCell> cells;
  private final boolean bought;

  /**
   * @param first of the plants, without the varied values
   * @param bought whether some of the plants are options of a plant with money
   */
  GridNotes(
      Source source,
      Chosen chosen,
      Effort effort,
      Stage first,
      List<GridCell> cells,
      boolean bought) {
    this.source = source;
    this.chosen = chosen;
    this.effort = effort;
    this.first = first;
    this.cells = cells;
    this.bought = bought;
  }

  List<Note> notes() {
    List<Note> notes =
        new ArrayList<>(
            new Assumptions(source, chosen, effort, first, null, null).notes(replications()));
    notes.add(
        new Note(
            "Between the values",
            "Only the values of the grid were simulated. A line between two of them joins what was simulated"
                + " and is no finding itself; beyond the first and last value nothing is said."));
    notes.add(
        new Note(
            "Significant differences",
            "The best value is found in the same replications by which it is judged. Intervals of"
                + " differences therefore hold for all pairs of values together, and where plants are"
                + " set side by side for all values and pairs of plants together (Bonferroni), one"
                + " measure at a time; they are wide rather than narrow."));
    Calendar calendar = first.plant().calendar();
    if (bought && LifeCalendar.of(calendar).isPresent()) {
      notes.add(
          new Note(
              "Net present value",
              "What an option brings over its life, discounted, less what it costs, against the first"
                  + " plant with the same values; the first plant's own is 0. Margin is before what an"
                  + " option costs. Each replication stands for a life of calendars like itself, which"
                  + " has the same mean as lives of different ones and a wider spread. Crop left over is not"
                  + " carried on into the next calendar, and stock on hand is there in each, unlike in a"
                  + " comparison without a grid; where there is much of either the value here is off."));
    }
    if (bought && LifeCalendar.of(calendar).isEmpty()) {
      notes.add(
          new Note(
              "Net present value",
              "Not given: the calendar of "
                  + calendar.days()
                  + " days is shorter than a year and does not say how it repeats over an option's life. Write"
                  + " \"repeats: yearly\" (every year at the same season) or \"repeats: end-to-end\" under"
                  + " calendar."));
    }
    if (cells.stream().anyMatch(cell -> !cell.leftOut().isEmpty())) {
      notes.add(
          new Note(
              "Left out",
              "Where a value makes a plant with problems, the plant is missing there; the problems"
                  + " stand under the answer."));
    }
    return notes;
  }

  private String replications() {
    int count = effort.replications();
    String played =
        count == 1
            ? "In each cell the calendar was simulated once. "
            : "In each cell the calendar was simulated "
                + count
                + " times, each independent of the others, and with the same draws in all cells. ";
    return played
        + (count == 1
            ? "One replication says nothing about how far another may lie from it."
            : "An interval is where the mean of very many would lie with 95 % confidence (Student's"
                + " t, or Hall's where 40 or more values are skewed), each for itself.");
  }
}
