package hurdline.answer;

import java.util.List;

/** What a comparison with options takes for granted. */
public sealed interface CompareFact extends Fact {
  /**
   * Plants are compared pair by pair on common random numbers.
   *
   * @param intervals how many differences in each measure hold together
   */
  record PairedDifferences(Between between, int intervals) implements CompareFact {
    /** What is compared with what. */
    public enum Between {
      BASE_AND_OPTIONS,
      ALL_PLANS
    }
  }

  /**
   * An aim of {@code --until} is for differences.
   *
   * @param said as it was given
   * @param relative whether it is a share of the base's mean
   */
  record AimOfDifferences(String said, boolean relative) implements CompareFact {}

  /**
   * An option whose purchase has a loan of its own, in place of the plant's.
   *
   * @param share of its cost that is borrowed; 0 where it is paid in cash
   * @param rate interest, share a year
   * @param years over which it is paid back
   */
  record LoanOfOption(String option, double share, double rate, int years) implements CompareFact {}

  /** Alternatives that cost nothing and so are told by their differences, not as purchases. */
  record ChangesWithoutCost(List<String> alternatives) implements CompareFact {
    public ChangesWithoutCost {
      alternatives = List.copyOf(alternatives);
    }
  }

  /**
   * Options of which no worth can be given, since a calendar shorter than a year does not say how
   * it repeats.
   */
  record CalendarNotRepeated(List<String> options) implements CompareFact {
    public CalendarNotRepeated {
      options = List.copyOf(options);
    }
  }

  /** Options whose service lives were not whole when the user asked for an end. */
  record LivesStopped(List<String> options) implements CompareFact {
    public LivesStopped {
      options = List.copyOf(options);
    }
  }

  /**
   * How service lives are made of calendars.
   *
   * @param lives of each option
   * @param asked whether the user said how many
   * @param calendarDays length of a calendar
   * @param calendars in all lives together
   * @param simulated of these, how many had to be simulated for them
   */
  record YearsOfLife(
      int lives, boolean asked, int calendarDays, Next next, int calendars, int simulated)
      implements CompareFact {
    /** How a calendar follows the one before. */
    public enum Next {
      IS_A_YEAR,
      EVERY_YEAR,
      END_TO_END
    }
  }

  /**
   * Prices over a life, shares a year.
   *
   * @param discountGiven whether the file has a rate
   * @param withinYr years within which payback was asked for; NaN for the option's life
   */
  record MoneyOverLife(
      double discount,
      boolean discountGiven,
      double products,
      double crops,
      double wages,
      double electricity,
      double withinYr)
      implements CompareFact {}
}
