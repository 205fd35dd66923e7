package hurdline.study.option;

/**
 * What searches for a break-even cost that simulate service lives at each value they try.
 *
 * @param searches how many there are; one for each option and key that changes more than prices
 * @param calendarsEach calendars in all of them, should each try one value
 * @param tries how many values a search tries, about
 * @param mostTries how many it seldom goes beyond
 */
public record BreakEvenWork(int searches, int calendarsEach, int tries, int mostTries) {
  /** Calendars in all searches, about. */
  public int calendars() {
    return tries * calendarsEach;
  }
}
