package hurdline.text;

import hurdline.answer.BottleneckRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.DifferenceRow;
import hurdline.answer.Outline;
import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The main figures of a comparison: what limits the plant as it stands, then option by option what
 * differs and what it is worth.
 */
public final class CompareTable {
  private static final int LIMITS = 2;
  private static final double LEAST = 0.005;

  private final CompareAnswer answer;
  private final Wording wording;
  private final Titles titles;
  private final List<MainTable.Row> rows = new ArrayList<>();

  private CompareTable(CompareAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    this.titles = wording.reading(answer).titles();
  }

  public static MainTable of(CompareAnswer answer, Wording wording) {
    CompareTable table = new CompareTable(answer, wording);
    String base = answer.header().option();
    table.limits(SpokenNames.upper(table.titles.option(base)), base);
    for (CompareAnswer.Option option : answer.options()) {
      table.option(SpokenNames.upper(table.titles.option(option.name())), option);
    }
    return new MainTable(table.rows, wording);
  }

  private void option(String group, CompareAnswer.Option option) {
    differences(group, option.name());
    limits(group, option.name());
    String missing =
        !option.isPurchase() || answer.worth(option.name(), Quantity.NET_PRESENT_VALUE).isPresent()
            ? ""
            : new LifeWords(answer, wording).missing(option);
    if (!missing.isEmpty()) {
      rows.add(MainTable.Row.text(group, label(Quantity.NET_PRESENT_VALUE), missing, "count"));
    }
    for (Quantity quantity : Quantity.values()) {
      answer
          .worth(option.name(), quantity)
          .filter(row -> isWanted(option, quantity))
          .ifPresent(row -> rows.add(worth(group, option, row)));
    }
  }

  /**
   * What costs nothing is told by what it adds; a chance of payback is wanted within a time that
   * was asked for.
   */
  private boolean isWanted(CompareAnswer.Option option, Quantity quantity) {
    return switch (quantity) {
      case INTERNAL_RATE_OF_RETURN, SIMPLE_PAYBACK, DISCOUNTED_PAYBACK -> option.cost() > 0;
      case CHANCE_OF_PAYBACK -> option.cost() > 0 && !Double.isNaN(answer.further().withinYr());
      case NET_PRESENT_VALUE, CHANCE_OF_LOSS, NET_PRESENT_VALUE_AFTER_TAX, PAYBACK_AFTER_TAX ->
          option.isPurchase();
      case ADDED_IN_FIRST_YEAR, ADDED_IN_EACH_LATER_YEAR -> true;
    };
  }

  private void differences(String group, String option) {
    List<MainTable.Row> found = new ArrayList<>();
    for (Outline.Line line : answer.outline().lines()) {
      String label = Titles.inText(titles.crop(line.crop())) + " fed";
      answer
          .difference(option, Measure.MASS_FED.of(line.crop()))
          .ifPresent(row -> found.add(difference(group, label, row)));
    }
    answer
        .difference(option, Measure.MONEY_MARGIN.of())
        .ifPresent(row -> found.add(difference(group, "margin", row)));
    found.stream().distinct().forEach(rows::add);
  }

  private static MainTable.Row difference(String group, String label, DifferenceRow row) {
    return MainTable.Row.difference(
        group,
        label,
        row.unit(),
        MainTable.Figures.of(row.difference(), row.lowJoint(), row.highJoint()));
  }

  private void limits(String group, String option) {
    for (Outline.Line line : answer.outline().lines()) {
      answer.holdersOf(option).stream()
          .filter(row -> row.line().equals(line.name()) && row.share() >= LEAST)
          .limit(LIMITS)
          .forEach(row -> rows.add(limit(group, row)));
    }
  }

  private MainTable.Row limit(String group, BottleneckRow row) {
    String line =
        answer.outline().lines().size() > 1 ? Titles.inText(titles.line(row.line())) + " " : "";
    return MainTable.Row.of(
        group,
        line + MainTable.LIMITED + CauseWords.by(row.cause(), titles),
        "share",
        MainTable.Figures.of(row.share(), row.shareLow95(), row.shareHigh95()));
  }

  private MainTable.Row worth(String group, CompareAnswer.Option option, PaybackRow row) {
    String label = label(row.quantity());
    Optional<String> said = new CompareWords(answer, wording).inWords(row);
    return said.isPresent()
        ? MainTable.Row.text(group, label, said.get(), "count")
        : MainTable.Row.of(
            group,
            label,
            row.unit(),
            new MainTable.Figures(row.mean(), row.low95(), row.high95(), row.p05(), row.p95()));
  }

  private String label(Quantity quantity) {
    return switch (quantity) {
      case NET_PRESENT_VALUE -> "net present value";
      case INTERNAL_RATE_OF_RETURN -> "internal rate a year";
      case SIMPLE_PAYBACK -> "paid back after";
      case DISCOUNTED_PAYBACK -> "the same, discounted";
      case CHANCE_OF_PAYBACK ->
          "paid back within " + wording.asGiven(answer.further().withinYr(), "yr");
      case CHANCE_OF_LOSS -> "lives with a loss";
      case ADDED_IN_FIRST_YEAR -> "added in first year";
      case ADDED_IN_EACH_LATER_YEAR -> "in each later year";
      case NET_PRESENT_VALUE_AFTER_TAX -> "value after loan and tax, before your accountant";
      case PAYBACK_AFTER_TAX -> "own money back after";
    };
  }
}
