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
  private final Plant plant;
  private final CompareAsk ask;
  private final Effort effort;
  private final List<CompareAnswer.Option> options;
  private final List<CompareAnswer.Option> unasked;

  /** @param unasked options whose lives have more years than there are replications */
  CompareNotes(
      Plant plant,
      CompareAsk ask,
      Effort effort,
      List<CompareAnswer.Option> options,
      List<CompareAnswer.Option> unasked) {
    this.plant = plant;
    this.ask = ask;
    this.effort = effort;
    this.options = options;
    this.unasked = unasked;
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
        + " taken within each pair (Student's t). "
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
                + " days played once stands for one year of a life. A life draws as many different"
                + " years as it is long, the replications in their order from a first one on, each"
                + " replication being the first of one life. Each year stands alone: it begins with"
                + " the yard as the file has it, and crop left over in one year is not there in the"
                + " next. Lives share years, so intervals of rate, payback and chances count only as"
                + " many lives as can be drawn without a common year."));
    notes.add(new Note("Money over a life", prices(money)));
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
