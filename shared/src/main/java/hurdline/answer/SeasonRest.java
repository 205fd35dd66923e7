package hurdline.answer;

import java.time.LocalDate;
import java.util.List;

/**
 * A season of which a part has been: what the records say of that, and when each line will be done.
 * All else of the answer is of the rest.
 *
 * @param asOf the first day that is simulated; empty text in {@code records} where nothing has been
 * @param records name of the folder of records, without those above it
 * @param recordsHash hash of all files in it
 * @param overInputs whether chances of finishing are over drawn inputs too
 * @param quantities what was fed and made until then, and with the rest
 * @param stock how the stock of that day was found
 * @param orders those that the file has, and what is open of each
 * @param ages what each stop had counted since its last one
 * @param finishes when each line is done, as planned and with a shift more or less
 */
public record SeasonRest(
    LocalDate asOf,
    String records,
    String recordsHash,
    boolean overInputs,
    List<Quantity> quantities,
    List<Stock> stock,
    List<OpenOrder> orders,
    List<Age> ages,
    List<Finish> finishes) {
  public SeasonRest {
    quantities = List.copyOf(quantities);
    stock = List.copyOf(stock);
    orders = List.copyOf(orders);
    ages = List.copyOf(ages);
    finishes = List.copyOf(finishes);
  }

  /** Of a run over the whole calendar. */
  public static SeasonRest none() {
    return new SeasonRest(
        LocalDate.EPOCH, "", "", false, List.of(), List.of(), List.of(), List.of(), List.of());
  }

  public boolean isGiven() {
    return !records.isEmpty();
  }

  /** What is counted. */
  public enum Kind {
    FED,
    MADE
  }

  /**
   * @param of crop or product
   * @param soFar of the records
   * @param rest mean of the replications
   * @param whole both
   * @param p05 of both, as are the others
   */
  public record Quantity(
      Kind kind,
      String of,
      String unit,
      double soFar,
      double rest,
      double whole,
      double p05,
      double p50,
      double p95) {}

  /**
   * Bales or modules of a crop on the morning of the day.
   *
   * @param counted date of the last count; the calendar's first where the file says what was there
   * @param count what was counted
   * @param came by tickets since
   * @param fed since
   * @param onHand what is taken to lie there
   */
  public record Stock(
      String crop,
      String unit,
      LocalDate counted,
      double count,
      double came,
      double fed,
      double onHand) {}

  /**
   * @param madeT of it and in no store any more, orders taken by due date
   * @param openT what the rest of the season has to make
   */
  public record OpenOrder(
      String product, LocalDate due, double massT, double madeT, double openT) {}

  /**
   * @param age in the unit; not a number where the records do not have the count
   */
  public record Age(String machine, String stop, String counted, double age, String unit) {}

  /** What is changed in the hours of a line. */
  public enum Hours {
    AS_PLANNED,
    WITHOUT_SHIFT,
    WITH_SHIFT
  }

  /**
   * When a line is done with its crop.
   *
   * @param shift that is left out or added; empty as planned
   * @param by last date of its last campaign
   * @param years how many replications
   * @param finished in how many of them nothing is left by then
   * @param low95 lower end of the interval of that chance
   * @param doneP50 day of the calendar of the rest, from 1, on which its last shift began, of those
   *     that finish; not a number where none does
   * @param leftMean bales or modules left
   * @param onlyPlanned in how many replications only the season as planned finishes
   * @param onlyThis in how many only this one does
   * @param significant whether the chances differ (exact sign test, 5 %)
   */
  public record Finish(
      String line,
      String crop,
      Hours hours,
      String shift,
      LocalDate by,
      int years,
      int finished,
      double low95,
      double high95,
      double doneP50,
      double doneP95,
      String unit,
      double leftMean,
      double leftP05,
      double leftP95,
      int onlyPlanned,
      int onlyThis,
      boolean significant) {}
}
