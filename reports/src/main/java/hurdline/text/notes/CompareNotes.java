package hurdline.text.notes;

import hurdline.answer.CompareFact;
import hurdline.answer.CompareFact.PairedDifferences.Between;
import hurdline.text.Wording;
import java.util.List;
import java.util.stream.Collectors;

/** What a comparison takes for granted, in whole sentences. */
final class CompareNotes {
  private final Wording wording;

  CompareNotes(Wording wording) {
    this.wording = wording;
  }

  void addTo(Sentences sentences) {
    sentences
        .tell(CompareFact.PairedDifferences.class, "Differences", this::differences)
        .tell(CompareFact.AimOfDifferences.class, "Aim of differences", CompareNotes::aim)
        .tell(CompareFact.ChangesWithoutCost.class, "What-ifs", this::withoutCost)
        .tell(CompareFact.LoanOfOption.class, "Loan of an option", this::loan)
        .tell(
            CompareFact.CalendarNotRepeated.class,
            "Not answered",
            fact ->
                "A calendar shorter than a year does not say how it repeats over an option's life, so it is not available"
                    + " whether "
                    + pays(fact.options())
                    + ".")
        .tell(
            CompareFact.LivesStopped.class,
            "Not answered",
            fact ->
                "The study was stopped before the service lives were simulated, so it is not available whether "
                    + pays(fact.options())
                    + ".")
        .tell(CompareFact.YearsOfLife.class, "Years of a life", this::years)
        .tell(CompareFact.MoneyOverLife.class, "Money over a life", this::money);
  }

  private String loan(CompareFact.LoanOfOption fact) {
    String name = wording.titles().option(fact.option());
    return (fact.share() > 0
            ? wording.asGiven(fact.share(), "share")
                + " of the cost of "
                + name
                + " is borrowed at "
                + wording.asGiven(fact.rate(), "share")
                + " a year, by a loan of its own, and paid back over "
                + (fact.years() == 1 ? "a year" : fact.years() + " years in even payments")
            : "The cost of " + name + " is paid in cash, whatever else is borrowed")
        + "; for planning, before your accountant.";
  }

  private String withoutCost(CompareFact.ChangesWithoutCost fact) {
    boolean one = fact.alternatives().size() == 1;
    return (one
            ? "One alternative has no cost and is"
            : wording.count(fact.alternatives().size()) + " alternatives have no cost and are")
        + " told by what "
        + (one ? "it changes" : "they change")
        + ", not as "
        + (one ? "a purchase" : "purchases")
        + ": "
        + fact.alternatives().stream()
            .map(wording.titles()::option)
            .collect(Collectors.joining(", "))
        + ".";
  }

  private String pays(List<String> options) {
    return options.stream().map(wording.titles()::option).collect(Collectors.joining(", "))
        + (options.size() == 1 ? " pays" : " pay");
  }

  private String differences(CompareFact.PairedDifferences fact) {
    boolean plans = fact.between() == Between.ALL_PLANS;
    String joint =
        fact.intervals() <= 1
            ? "With " + (plans ? "two plans" : "one option") + " the joint interval is its own."
            : "For each measure the joint intervals of "
                + (plans ? "all " : "the ")
                + wording.count(fact.intervals())
                + (plans ? " pairs" : " options")
                + " hold together with 95 % confidence (Bonferroni).";
    return (plans ? "All plans" : "Base and options")
        + " met the same random draws (common random numbers), replication by replication, and differences are"
        + " taken within each pair (Student's t, or Hall's where 40 or more of them are skewed). "
        + joint
        + " Where the joint interval covers zero the difference is not significant. The measures are not"
        + " taken together: of many looked at, about one in twenty may differ significantly by accident.";
  }

  private static String aim(CompareFact.AimOfDifferences fact) {
    return "The aim \""
        + fact.said()
        + "\" is for the widest of the joint intervals of that measure's differences"
        + (fact.relative() ? ", its share being of the base's mean." : ".");
  }

  private String years(CompareFact.YearsOfLife fact) {
    return "Each option has "
        + wording.count(fact.lives())
        + " service lives, each a chain of simulated calendars of its own with a replication to each. The calendar of "
        + wording.count(fact.calendarDays())
        + (fact.calendarDays() == 1 ? " day" : " days")
        + next(fact)
        + " Each calendar opens with what the one before left in the same plant of crop that fields or loads bring, in the yard"
        + " with its age, at the gate, at the fields and unbaled, tables being cleared to the front of the yard; it goes on"
        + " wasting between two calendars. The stock on hand that the file has of such a crop is there in the first calendar only,"
        + " that of a crop which nothing brings in each, and material in bins is not carried on. No two lives have a calendar in"
        + " common, so all intervals over lives count each life once. "
        + (fact.asked()
            ? "Lives are as many as were asked for. "
            : "Lives are 30, or more where half as many calendars as there are replications hold more. ")
        + "Of "
        + wording.count(fact.calendars())
        + " calendars in lives "
        + wording.count(fact.simulated())
        + " were simulated for them, the others being replications as they were.";
  }

  private static String next(CompareFact.YearsOfLife fact) {
    return switch (fact.next()) {
      case EVERY_YEAR ->
          " begins again every year; what the rest of the year costs is not counted.";
      case END_TO_END -> " follows itself end to end, its dates being those of the file each time.";
      case IS_A_YEAR -> " is a year.";
    };
  }

  private String money(CompareFact.MoneyOverLife fact) {
    return "The option is paid as the first calendar begins. What it adds to the margin comes at the end of each calendar, or of each"
        + " year of a calendar that is longer than one; of a calendar that the life cuts short, the part that lies in it. What it is"
        + " still worth comes at the end of its life. Discounted at "
        + percent(fact.discount())
        + " a year"
        + (fact.discountGiven() ? "" : ", since the file gives no rate")
        + ". From the second year of the life on prices move by "
        + percent(fact.products())
        + " a year for products, "
        + percent(fact.crops())
        + " for crops, "
        + percent(fact.wages())
        + " for wages and "
        + percent(fact.electricity())
        + " for electricity; all other costs stay. Before interest and tax. Payback counts from"
        + " payment to the first crossing of zero, on a straight line within each calendar."
        + " The chance of payback is that of simple payback within "
        + (Double.isNaN(fact.withinYr())
            ? "the option's life."
            : wording.plain(fact.withinYr()) + " years.");
  }

  private String percent(double share) {
    return wording.asGiven(share, "share");
  }
}
