package hurdline.text;

import hurdline.answer.ChoiceEffect;
import hurdline.answer.ChoiceRow;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.ChosenRow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The named plan, the best of those left, and what another value of a choice does to it. */
public final class ChooseTable {
  private static final int MOST_PLANS = 6;

  private ChooseTable() {}

  public static MainTable of(ChooseAnswer answer, Wording wording) {
    ChoiceWords words = new ChoiceWords(answer, wording);
    List<MainTable.Row> rows = new ArrayList<>();
    for (ChosenRow row : left(answer).stream().limit(MOST_PLANS).toList()) {
      rows.add(
          MainTable.Row.of(
              heading(answer),
              words.among(row.plan()),
              answer.terms().unit(),
              MainTable.Figures.of(row.mean(), row.low95(), row.high95())));
    }
    for (ChoiceEffect effect : answer.effects()) {
      rows.add(
          MainTable.Row.difference(
              "Another value, against the named plan",
              words.valued(effect.choice(), effect.value()),
              answer.terms().unit(),
              MainTable.Figures.of(effect.difference(), effect.low95(), effect.high95())));
    }
    return new MainTable(rows, wording);
  }

  /** In two stages no plan goes out, so those shown are only the next ones. */
  public static String heading(ChooseAnswer answer) {
    return answer.terms().independent()
        ? "The named plan and the next"
        : "Plans that may be the best";
  }

  /** The named plan, then those left by their means in the last years. */
  public static List<ChosenRow> left(ChooseAnswer answer) {
    List<ChosenRow> left = new ArrayList<>();
    answer.chosen(answer.best().plan()).ifPresent(left::add);
    answer.chosen().stream()
        .filter(row -> answer.plans().get(row.plan()).status() == ChoiceRow.Status.LEFT)
        .sorted(Comparator.comparingDouble(ChosenRow::mean).reversed())
        .forEach(left::add);
    return left;
  }
}
