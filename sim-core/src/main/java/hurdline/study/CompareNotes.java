package hurdline.study;

import hurdline.answer.CompareAnswer;
import hurdline.answer.Note;
import hurdline.plant.Calendar;
import hurdline.plant.Money;
import hurdline.plant.Plant;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** What a comparison takes for granted beyond what a run does, in whole sentences. */
final class CompareNotes {
  private static final String ALONE =
      "A life draws as many different years as it is long, the replications in their order from a"
          + " first one on, each replication being the first of one life. No year leaves crop over that"
          + " fields or loads bring, so each stands alone and begins with the yard as the file has it. Lives share years, so"
          + " intervals of rate, payback and chances count only as many lives as can be drawn without"
          + " a common year.";

  private final Plant plant;
  private final CompareAsk ask;
  private final Effort effort;
  private final List<CompareAnswer.Option> options;
  private final List<CompareAnswer.Option> unasked;
  private final LifeMargins margins;

  /** @param unasked options whose lives have more years than there are replications */
  CompareNotes(
      Plant plant,
      CompareAsk ask,
      Effort effort,
      List<CompareAnswer.Option> options,
      List<CompareAnswer.Option> unasked,
      LifeMargins margins) {
    this.plant = plant;
    this.ask = ask;
    this.effort = effort;
    this.options = options;
    this.unasked = unasked;
    this.margins = margins;
  }

  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    notes.add(new Note("Differences", differences()));
    plant.money().ifPresent(money -> money(notes, money));
    return notes;
  }

  private String differences() {
    String joint =
        options.size() == 1
            ? "With one option the joint interval is its own."
            : "For each measure the joint intervals of the "
                + options.size()
                + " options hold together with 95 % confidence (Bonferroni).";
    return "Base and options met the same chance, replication by replication, and differences are"
        + " taken within each pair (Student's t, or Hall's where 40 or more of them are skewed). "
        + joint
        + " Where the joint interval covers zero the two are not told apart. The measures are not"
        + " taken together: of many looked at, about one in twenty may be told apart by accident."
        + effort.until().map(CompareNotes::aim).orElse("");
  }

  private static String aim(Aim aim) {
    return " The aim \""
        + aim.said()
        + "\" is for the widest of the joint intervals of that measure's differences"
        + (aim.relative() ? ", its share being of the base's mean." : ".");
  }

  private void money(List<Note> notes, Money money) {
    Calendar calendar = plant.calendar();
    long days = ChronoUnit.DAYS.between(calendar.from(), calendar.to()) + 1;
    notes.add(
        new Note(
            "Years of a life",
            "The calendar of "
                + days
                + " days played once stands for one year of a life. "
                + years(margins.following())));
    notes.add(new Note("Money over a life", prices(money)));
    if (!margins.cut().isEmpty()) {
      notes.add(
          new Note(
              "Not answered",
              "Stop was asked for before the years that follow each other were played for "
                  + String.join(", ", margins.cut())
                  + ", of which it is not said whether it pays."));
    }
    if (!unasked.isEmpty()) {
      notes.add(
          new Note(
              "Not answered",
              "A life that repeats no year needs as many replications as it has years. There are"
                  + " too few for "
                  + String.join(
                      ", ",
                      unasked.stream()
                          .map(o -> o.name() + " (" + number(Math.ceil(o.lifeYr())) + " years)")
                          .toList())
                  + ", of which it is not said whether it pays."));
    }
  }

  private String years(List<String> following) {
    if (following.isEmpty()) {
      return ALONE;
    }
    LifeYears years = margins.years();
    return (following.size() == options.size()
            ? ""
            : "For " + String.join(", ", following) + ": ")
        + "Crop is left over in some year, so the years of a life follow each other: each opens with"
        + " what the one before left in the same plant, in the yard with its age, at the gate, at"
        + " the fields and unbaled, tables being cleared to the front of the yard. The stock on hand"
        + " that the file has is there in the first year only, but that of a crop which neither fields"
        + " nor loads bring in each, and material in bins is not carried"
        + " on. A life is a chain of as many replications in a row as it is long, no two with a"
        + " common year, and all intervals over lives count the chains. "
        + (ask.lives().isPresent()
            ? "Lives are as many as were asked for. "
            : "Lives have about half as many years as there are replications, since they take as long"
                + " to play; more can be asked for. ")
        + "Of "
        + years.inChains()
        + " years in chains "
        + years.playedAnew()
        + " were played anew, the others being as they had been played."
        + (following.size() == options.size() ? "" : " For the others: " + ALONE);
  }

  private String prices(Money money) {
    Money.Growth growth = money.growth();
    return "The option is paid at the beginning; what it adds to the margin comes at the end of each"
        + " year, what it is still worth at the end of its life. Discounted at "
        + percent(money.discountPerYr())
        + " a year. From the second year on prices move by "
        + percent(growth.products())
        + " a year for products, "
        + percent(growth.crops())
        + " for crops, "
        + percent(growth.wages())
        + " for wages and "
        + percent(growth.electricity())
        + " for electricity; all other costs stay. Before interest and tax. Payback counts from"
        + " payment to the first crossing of zero, on a straight line within the year."
        + (ask.withinYr().isPresent()
            ? " The chance of payback is that of simple payback within "
                + number(ask.withinYr().getAsDouble())
                + " years."
            : " The chance of payback is that of simple payback within the option's life.");
  }

  private static String percent(double share) {
    return number(100 * share) + " %";
  }

  private static String number(double value) {
    return new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }
}
