package hurdline.study.option;

import hurdline.answer.CompareAnswer;
import hurdline.plant.Plant;
import hurdline.study.replicate.LifeCalendar;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How many service lives are simulated, and with which replications each begins.
 *
 * <p>Thirty, for in fewer a loss that is never seen may still happen in one of eight; more where
 * half as many calendars as there are replications hold more. Options share the calendars of the
 * longest life, so that the base is simulated once for all.
 */
public final class ServiceLifeCount {
  private static final int USUAL = 30;

  private final int lives;
  private final int stride;
  private final int ofBase;
  private final int simulations;
  private final int[] calendarsOfOption;

  /**
   * @param replications asked for
   * @param plants the base first, then the options in their order
   * @param asked how many lives are to be simulated; else as many as are usual
   */
  public ServiceLifeCount(
      int replications, List<Plant> plants, List<CompareAnswer.Option> options, OptionalInt asked) {
    int longest = 1;
    int longestOfBase = 1;
    int all = 0;
    calendarsOfOption = new int[options.size()];
    for (int at = 0; at < options.size(); at++) {
      Optional<LifeCalendar> base = LifeCalendar.of(plants.get(0).calendar());
      Optional<LifeCalendar> option = LifeCalendar.of(plants.get(at + 1).calendar());
      boolean priced = plants.get(0).money().isPresent() && plants.get(at + 1).money().isPresent();
      if (!options.get(at).isWhatIf() && priced && base.isPresent() && option.isPresent()) {
        double lifeYr = options.get(at).lifeYr();
        int ofOption = option.get().calendars(lifeYr);
        longestOfBase = Math.max(longestOfBase, base.get().calendars(lifeYr));
        longest = Math.max(longest, Math.max(longestOfBase, ofOption));
        calendarsOfOption[at] = ofOption;
        all += ofOption;
      }
    }
    stride = longest;
    ofBase = longestOfBase;
    lives = asked.orElse(Math.max(USUAL, replications / 2 / stride));
    simulations = all == 0 ? 0 : lives * (ofBase + all);
  }

  public int lives() {
    return lives;
  }

  /** Replications from the first calendar of a life of so many to that of the next life. */
  int stride(int calendars) {
    return Math.max(calendars, stride);
  }

  /** Calendars of the base in a life, of which so many are needed. */
  int ofBase(int calendars) {
    return Math.max(calendars, ofBase);
  }

  /**
   * Calendars in the lives of the base and of one option, by its place; 0 where it is worth
   * nothing.
   */
  public int simulations(int option) {
    return calendarsOfOption[option] == 0 ? 0 : lives * (ofBase + calendarsOfOption[option]);
  }

  /** Calendars in the lives of base and options; 0 where nothing is worth anything. */
  public int simulations() {
    return simulations;
  }
}
