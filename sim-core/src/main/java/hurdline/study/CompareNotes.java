package hurdline.study;

import hurdline.answer.CompareAnswer;
import hurdline.answer.LifeTerms;
import hurdline.answer.Note;
import hurdline.plant.Calendar;
import hurdline.plant.Money;
import hurdline.plant.Plant;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** What a comparison takes for granted beyond what a run does, in whole sentences. */
final class CompareNotes {
  private final Plant plant;
  private final CompareAsk ask;
  private final Effort effort;
  private final List<CompareAnswer.Option> options;
  private final LifeMargins margins;

  CompareNotes(
      Plant plant,
      CompareAsk ask,
      Effort effort,
      List<CompareAnswer.Option> options,
      LifeMargins margins) {
    this.plant = plant;
    this.ask = ask;
    this.effort = effort;
    this.options = options;
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
    return "Base and options met the same random draws (common random numbers), replication by replication, and differences are"
        + " taken within each pair (Student's t, or Hall's where 40 or more of them are skewed). "
        + joint
        + " Where the joint interval covers zero the difference is not significant. The measures are not"
        + " taken together: of many looked at, about one in twenty may differ significantly by accident."
        + effort.until().map(CompareNotes::aim).orElse("");
  }

  private static String aim(Aim aim) {
    return " The aim \""
        + aim.said()
        + "\" is for the widest of the joint intervals of that measure's differences"
        + (aim.relative() ? ", its share being of the base's mean." : ".");
  }

  private void money(List<Note> notes, Money money) {
    LifeTerms terms = margins.terms();
    if (!terms.unrepeated().isEmpty()) {
      notes.add(
          new Note(
              "Not answered",
              "A calendar shorter than a year does not say how it repeats over an option's life, so it is not available whether "
                  + String.join(", ", terms.unrepeated())
                  + " pays."));
    }
    if (!margins.cut().isEmpty()) {
      notes.add(
          new Note(
              "Not answered",
              "Stop was asked for before the service lives were simulated for "
                  + String.join(", ", margins.cut())
                  + ", of which it is not available whether it pays."));
    }
    if (terms.lives() > 0) {
      notes.add(new Note("Years of a life", years(terms)));
      notes.add(new Note("Money over a life", prices(money)));
    }
  }

  private String years(LifeTerms terms) {
    Calendar calendar = plant.calendar();
    String length = calendar.days() + (calendar.days() == 1 ? " day" : " days");
    LifeYears years = margins.years();
    return "Each option has "
        + terms.lives()
        + " service lives, each a chain of simulated calendars of its own with a replication to each. The calendar of "
        + length
        + (terms.repeats().equals(Calendar.Repeats.YEARLY.word())
            ? " begins again every year; what the rest of the year costs is not counted."
            : calendar.isShorterThanAYear() || calendar.years().size() > 1
                ? " follows itself end to end, its dates being those of the file each time."
                : " is a year.")
        + " Each calendar opens with what the one before left in the same plant of crop that fields or loads bring, in the yard"
        + " with its age, at the gate, at the fields and unbaled, tables being cleared to the front of the yard; it goes on"
        + " wasting between two calendars. The stock on hand that the file has of such a crop is there in the first calendar only,"
        + " that of a crop which nothing brings in each, and material in bins is not carried on. No two lives have a calendar in"
        + " common, so all intervals over lives count each life once. "
        + (ask.lives().isPresent()
            ? "Lives are as many as were asked for. "
            : "Lives are 30, or more where half as many calendars as there are replications hold more. ")
        + "Of "
        + years.inLives()
        + " calendars in lives "
        + years.playedAnew()
        + " were simulated for them, the others being replications as they were.";
  }

  private String prices(Money money) {
    Money.Growth growth = money.growth();
    return "The option is paid as the first calendar begins. What it adds to the margin comes at the end of each calendar, or of each"
        + " year of a calendar that is longer than one; of a calendar that the life cuts short, the part that lies in it. What it is"
        + " still worth comes at the end of its life. Discounted at "
        + percent(money.discountPerYr())
        + (money.discount().isEmpty() ? " a year, since the file gives no rate" : " a year")
        + ". From the second year of the life on prices move by "
        + percent(growth.products())
        + " a year for products, "
        + percent(growth.crops())
        + " for crops, "
        + percent(growth.wages())
        + " for wages and "
        + percent(growth.electricity())
        + " for electricity; all other costs stay. Before interest and tax. Payback counts from"
        + " payment to the first crossing of zero, on a straight line within each calendar."
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
