package hurdline.text;

import hurdline.answer.Outline;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;

/**
 * The main figures of season plans: plan by plan what is earned, then line by line what is fed,
 * when it ends and what is left.
 */
public final class SeasonTable {
  private final SeasonAnswer answer;
  private final Wording wording;
  private final Titles titles;
  private final List<MainTable.Row> rows = new ArrayList<>();

  private SeasonTable(SeasonAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    this.titles = answer.outline().titles();
  }

  public static MainTable of(SeasonAnswer answer, Wording wording) {
    SeasonTable table = new SeasonTable(answer, wording);
    answer.plans().forEach(table::plan);
    return new MainTable(table.rows, wording);
  }

  private void plan(SeasonAnswer.Plan plan) {
    String group = SpokenNames.upper(titles.plan(plan.name()));
    add(plan, group, "margin", Measure.MONEY_MARGIN.of());
    if (answer.find(plan.name(), Measure.MONEY_OWNER.of()).isPresent()) {
      add(plan, group, "owner's margin", Measure.MONEY_OWNER.of());
      add(plan, group, "tenant's margin", Measure.MONEY_TENANT.of());
    }
    if (leaves(plan)) {
      add(plan, group, "less margin forgone", Measure.MONEY_MARGIN_LESS_FORGONE.of());
    }
    years(plan, group, "all crops finished", Measure.SEASON_FINISHED.of());
    plan.outline().lines().forEach(line -> line(plan, group, line));
  }

  private boolean leaves(SeasonAnswer.Plan plan) {
    return plan.outline().lines().stream()
        .anyMatch(line -> answer.mean(plan.name(), Measure.SEASON_LEFT_OVER.of(line.name())) > 0);
  }

  private void line(SeasonAnswer.Plan plan, String group, Outline.Line line) {
    String crop = Titles.inText(titles.crop(line.crop()));
    String name = Titles.inText(titles.line(line.name()));
    add(plan, group, crop + " fed", Measure.MASS_FED.of(line.crop()));
    add(plan, group, name + " margin", Measure.MONEY_LINE_MARGIN.of(line.name()));
    years(plan, group, name + " finished", Measure.SEASON_LINE_FINISHED.of(line.name()));
    answer
        .find(plan.name(), Measure.SEASON_ENDED.of(line.name()))
        .ifPresent(
            row ->
                rows.add(
                    MainTable.Row.text(
                        group,
                        name + " ended",
                        new SeasonWords(answer, wording).ended(row),
                        "count")));
    if (answer
        .find(plan.name(), Measure.SEASON_LEFT_OVER.of(line.name()))
        .filter(row -> row.most() > 0)
        .isPresent()) {
      add(plan, group, crop + " carry-over", Measure.SEASON_LEFT_OVER.of(line.name()));
      add(plan, group, "margin forgone on it", Measure.SEASON_MARGIN_FORGONE.of(line.name()));
    }
  }

  /** The share of years in which it happens, with the limits of a chance. */
  private void years(SeasonAnswer.Plan plan, String group, String label, String measure) {
    answer
        .find(plan.name(), measure)
        .map(
            row ->
                MainTable.Row.written(
                    group,
                    label,
                    wording.fixed(row.mean(), 0, "share"),
                    "share",
                    row.high95() > row.low95()
                        ? wording.fixed(row.low95(), 0, "share")
                            + " to "
                            + wording.fixed(row.high95(), 0, "share")
                        : ""))
        .ifPresent(rows::add);
  }

  private void add(SeasonAnswer.Plan plan, String group, String label, String measure) {
    answer
        .find(plan.name(), measure)
        .map(row -> MainTable.Row.of(group, label, row))
        .ifPresent(rows::add);
  }
}
