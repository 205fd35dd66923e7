package hurdline.text;

import hurdline.answer.BottleneckRow;
import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;

/**
 * The main figures of a run: line by line what was fed, made and left over and what limited it,
 * then yard and margin.
 */
public final class RunTable {
  private static final int LIMITS = 3;
  private static final double LEAST = 0.005;

  private final RunAnswer answer;
  private final Titles titles;
  private final SpokenNames names;
  private final List<MainTable.Row> rows = new ArrayList<>();

  private RunTable(RunAnswer answer) {
    this.answer = answer;
    this.titles = answer.outline().titles();
    this.names = new SpokenNames(titles);
  }

  public static MainTable of(RunAnswer answer, Wording wording) {
    RunTable table = new RunTable(answer);
    answer.outline().lines().forEach(table::line);
    table.yard(wording);
    answer
        .find(Measure.MONEY_REVENUE.of())
        .ifPresent(
            row ->
                table.rows.add(
                    MainTable.Row.text(
                        "Money",
                        "revenue",
                        wording.number(row.mean(), row.low95(), row.high95(), row.unit()),
                        row.unit())));
    table.add("Money", "margin", Measure.MONEY_MARGIN.of());
    table.add("Money", "left after loan and tax, before your accountant", Measure.CASH_LEFT.of());
    for (Outline.Line line : answer.outline().lines()) { // the unit says that it is by mass fed
      table.add(
          "Money",
          "margin, "
              + table.names.line(line.name()).replaceFirst("^the ", "")
              + ", before electricity and overhead",
          Measure.MONEY_LINE_MARGIN_PER_TONNE.of(line.name()));
    }
    return new MainTable(table.rows, wording);
  }

  private void line(Outline.Line line) {
    String group = SpokenNames.upper(titles.line(line.name()));
    boolean alone = answer.outline().isAlone(line);
    // The measure is the crop's; where lines share one, a line's own part shows in its throughput.
    add(
        group,
        names.crop(line.crop()) + " fed" + (alone ? "" : " in all lines"),
        Measure.MASS_FED.of(line.crop()));
    add(group, "scheduled", Measure.LINE_HOURS_SCHEDULED.of(line.name()));
    add(group, "throughput", Measure.LINE_THROUGHPUT.of(line.name()));
    line.products()
        .forEach(product -> add(group, names.product(product), Measure.PRODUCT_MASS.of(product)));
    if (isGinning(line)) {
      line.products().forEach(product -> ginned(group, line, product));
    }
    answer.holders().stream()
        .filter(row -> row.line().equals(line.name()) && row.share() >= LEAST)
        .limit(LIMITS)
        .forEach(row -> rows.add(limit(group, row)));
    add(group, "carry-over", Measure.SEASON_LEFT_OVER.of(line.name()));
  }

  /** A gin counts its crop in modules, its pace in bales and its yield as turnout. */
  private boolean isGinning(Outline.Line line) {
    return answer.outline().crops().stream()
        .anyMatch(crop -> crop.name().equals(line.crop()) && crop.unit().equals("modules"));
  }

  private void ginned(String group, Outline.Line line, String product) {
    String packed = Measure.LINE_PACKAGES_PER_HOUR.of(line.name(), product);
    if (answer.find(packed).isPresent()) {
      add(group, "packages of " + names.product(product), packed);
      add(
          group,
          "turnout of " + names.product(product),
          Measure.LINE_TURNOUT.of(line.name(), product));
    }
  }

  private MainTable.Row limit(String group, BottleneckRow row) {
    return MainTable.Row.of(
        group,
        MainTable.LIMITED + CauseWords.by(row.cause(), titles),
        "share",
        MainTable.Figures.of(row.share(), row.shareLow95(), row.shareHigh95()));
  }

  private void yard(Wording wording) {
    for (Outline.Crop crop : answer.outline().crops()) {
      double room = answer.outline().capacityFor(crop.name());
      String of =
          room > 0 ? ", room for " + wording.number(room, Double.NaN, Double.NaN, crop.unit()) : "";
      add("Yard", "peak of " + names.crop(crop.name()) + of, Measure.YARD_PEAK.of(crop.name()));
    }
  }

  private void add(String group, String label, String measure) {
    answer.find(measure).map(row -> MainTable.Row.of(group, label, row)).ifPresent(rows::add);
  }
}
