package hurdline.text.notes;

import hurdline.answer.GridFact;
import hurdline.text.Wording;

/** What the figures of a grid take for granted, in whole sentences. */
final class GridNotes {
  private final Wording wording;

  GridNotes(Wording wording) {
    this.wording = wording;
  }

  void addTo(Sentences sentences) {
    sentences
        .tell(GridFact.CellReplications.class, "Replications", this::replications)
        .tell(
            GridFact.OnlyTheseValues.class,
            "Between the values",
            "Only the values of the grid were simulated. A line between two of them joins what was simulated"
                + " and is no finding itself; beyond the first and last value nothing is said.")
        .tell(
            GridFact.AllPairs.class,
            "Significant differences",
            "The best value is found in the same replications by which it is judged. Intervals of"
                + " differences therefore hold for all pairs of values together, and where plants are"
                + " set side by side for all values and pairs of plants together (Bonferroni), one"
                + " measure at a time; they are wide rather than narrow.")
        .tell(
            GridFact.ValueInACell.class,
            "Net present value",
            "What an option brings over its life, discounted, less what it costs, against the first"
                + " plant with the same values; the first plant's own is 0. Margin is before what an"
                + " option costs. Each replication stands for a life of calendars like itself, which"
                + " has the same mean as lives of different ones and a wider spread. Crop left over is not"
                + " carried on into the next calendar, and stock on hand is there in each, unlike in a"
                + " comparison without a grid; where there is much of either the value here is off.")
        .tell(
            GridFact.NoValue.class,
            "Net present value",
            fact ->
                "Not given: the calendar of "
                    + wording.count(fact.calendarDays())
                    + " days is shorter than a year and does not say how it repeats over an option's life. Write"
                    + " \"repeats: yearly\" (every year at the same season) or \"repeats: end-to-end\" under"
                    + " calendar.")
        .tell(
            GridFact.LeftOut.class,
            "Left out",
            "Where a value makes a plant with problems, the plant is missing there; the problems"
                + " stand under the answer.");
  }

  private String replications(GridFact.CellReplications fact) {
    return "In each cell the calendar was simulated "
        + (fact.count() == 1
            ? "once. One replication says nothing about how far another may lie from it."
            : wording.count(fact.count())
                + " times, each independent of the others, and with the same draws in all cells. An interval is where the mean"
                + " of very many would lie with 95 % confidence (Student's t, or Hall's where 40 or more values are skewed), each"
                + " for itself.");
  }
}
