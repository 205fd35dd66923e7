package hurdline.answer;

/** What the figures of a grid take for granted. */
public sealed interface GridFact extends Fact {
  /** How often each cell was simulated. */
  record CellReplications(int count) implements GridFact {}

  /** Nothing is known between and beyond the values. */
  record OnlyTheseValues() implements GridFact {}

  /** The best is found in the figures by which it is judged. */
  record AllPairs() implements GridFact {}

  /** What the net present value of a cell is, unlike that of a comparison. */
  record ValueInACell() implements GridFact {}

  /** No net present value, since so short a calendar does not say how it repeats. */
  record NoValue(int calendarDays) implements GridFact {}

  /** Some values make plants with problems. */
  record LeftOut() implements GridFact {}
}
