package hurdline.text;

import hurdline.answer.ChoiceRange;
import hurdline.answer.ChoiceRow;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.ChosenRow;
import hurdline.answer.KeyNames;
import hurdline.answer.Titles;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Choices, their values and the plans that they make, as people read them. */
public final class ChoiceWords {
  private final ChooseAnswer answer;
  private final Wording wording;

  public ChoiceWords(ChooseAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** {@code margin}, or what of it counts where the cost of capital is taken off. */
  public String measure() {
    return MainMeasures.label(answer.terms().measure(), answer.outline(), wording)
        + (answer.terms().worth() ? " after the yearly cost of capital" : "");
  }

  /** {@code Mill motor}; of the call's own the key, {@code power of the hammer mill}. */
  public String choice(int choice) {
    String name = answer.choices().get(choice).name();
    String title = wording.titles().given().get(Titles.key("choice", name));
    if (title != null) {
      return title;
    }
    return name.contains(".") ? KeyNames.of(name, wording.titles()) : Titles.ofName(name);
  }

  /** {@code 45 hp}, or the title of a season plan or an option. */
  public String value(int choice, int value) {
    ChoiceRange range = answer.choices().get(choice);
    String text = range.values().get(value);
    return switch (range.kind()) {
      case "plan" -> Titles.inText(wording.titles().plan(text));
      case "option" -> text.equals("base") ? "none" : Titles.inText(wording.titles().option(text));
      default -> wording.marks(text);
    };
  }

  /** {@code mill motor 45 hp}. */
  public String valued(int choice, int value) {
    return Titles.inText(choice(choice)) + " " + value(choice, value);
  }

  /** {@code mill motor 45 hp, shed 2200 bales}. */
  public String plan(int plan) {
    List<Integer> at = answer.plans().get(plan).at();
    List<String> parts = new ArrayList<>();
    for (int choice = 0; choice < at.size(); choice++) {
      parts.add(valued(choice, at.get(choice)));
    }
    return String.join(", ", parts);
  }

  /** A plan among others that may be the best. */
  public String among(int plan) {
    return plan(plan) + (plan == answer.best().plan() ? " (named)" : "");
  }

  /** {@code 60,000 USD}, or that there is none. */
  public String budget(double budget) {
    return Double.isNaN(budget) ? "no limit" : wording.asGiven(budget, answer.header().currency());
  }

  /** What limits each line longest: {@code hammer mill: own rate, 62 %}. */
  public String limits(ChosenRow row) {
    return row.limits().stream()
        .map(
            limit ->
                (row.limits().size() > 1
                        ? Titles.inText(wording.titles().line(limit.line())) + ": "
                        : "")
                    + Titles.inText(wording.titles().causeLabel(limit.cause()))
                    + ", "
                    + wording.fixed(limit.share(), 0, "share")
                    + " %")
        .collect(Collectors.joining("; "));
  }

  /** What a plan costs to buy. */
  public String cost(int plan) {
    ChoiceRow row = answer.plans().get(plan);
    return wording.asGiven(row.cost(), answer.header().currency());
  }

  /** An upper limit, to two digits and never less than it is. */
  public String atMost(double gap) {
    String unit = answer.terms().unit();
    double shown = wording.shown(gap, unit);
    if (!(shown > 0)) {
      return wording.asGiven(0, unit);
    }
    double place = Math.pow(10, Math.floor(Math.log10(shown)) - 1);
    double up = Math.ceil(shown / place - 1e-9) * place;
    return wording.asGiven(gap * up / shown, unit);
  }
}
