package hurdline.sample;

import hurdline.answer.Fact;
import hurdline.answer.GridAnswer;
import hurdline.answer.GridBest;
import hurdline.answer.GridCell;
import hurdline.answer.GridChange;
import hurdline.answer.GridKey;
import hurdline.answer.GridLead;
import hurdline.answer.GridRow;
import hurdline.answer.RunAnswer;
import hurdline.problem.LocatedProblem;
import java.util.ArrayList;
import java.util.List;

/** Invented answers of grids, for tests of what is made of them. No figure in here is a result. */
public final class SampleGrid {
  private static final RunAnswer YEAR = SampleAnswer.year();
  private static final String MARGIN = "money.margin";
  private static final String FED = "mass.stalk.fed";
  private static final String LEFT = "season.stalk_line.left_over";
  private static final List<Fact> NOTES = SampleFacts.ofGrids();

  private SampleGrid() {}

  /** Two plants over one key; which is the best changes between the second value and the third. */
  public static GridAnswer line() {
    GridKey key =
        new GridKey(
            "products.hurd.price",
            "100 USD/t..300 USD/t..100 USD/t",
            GridKey.Scale.AMOUNT,
            "USD/t",
            List.of(
                new GridKey.Value("100 USD/t", 100),
                new GridKey.Value("200 USD/t", 200),
                new GridKey.Value("300 USD/t", 300)));
    List<GridRow> rows = new ArrayList<>();
    double[][] margins = {{50_000, 90_000, 120_000}, {20_000, 80_000, 170_000}};
    for (int cell = 0; cell < 3; cell++) {
      rows.add(row(cell, "base", MARGIN, "USD", margins[0][cell], 4_000));
      rows.add(row(cell, "base", FED, "t", 2_000, 0));
      rows.add(row(cell, "bigger<mill>", MARGIN, "USD", margins[1][cell], 4_000));
      rows.add(row(cell, "bigger<mill>", FED, "t", 2_400 + cell, 20));
    }
    List<GridRow> all = new ArrayList<>(rows);
    all.add(row(2, "base", "energy.total", "kWh", 5, Double.NaN));
    return Draft.of(GridAnswer.class)
        .with(GridAnswer::header, YEAR.header())
        .with(GridAnswer::outline, YEAR.outline())
        .with(GridAnswer::called, "option")
        .with(GridAnswer::plants, List.of("base", "bigger<mill>"))
        .with(GridAnswer::keys, List.of(key))
        .with(GridAnswer::cells, List.of(cell(false, 0), cell(true, 1), cell(false, 2)))
        .with(GridAnswer::drawn, List.of(MARGIN, FED))
        .with(GridAnswer::goals, 2)
        .with(GridAnswer::rows, rows)
        .with(
            GridAnswer::best,
            List.of(
                new GridBest(MARGIN, "base", 2, List.of()),
                new GridBest(MARGIN, "bigger<mill>", 2, List.of()),
                new GridBest(FED, "base", 0, List.of(1, 2)),
                new GridBest(FED, "bigger<mill>", 2, List.of(1))))
        .with(
            GridAnswer::leads,
            List.of(
                new GridLead(0, MARGIN, "base", List.of()),
                new GridLead(1, MARGIN, "base", List.of("bigger<mill>")),
                new GridLead(2, MARGIN, "bigger<mill>", List.of()),
                new GridLead(0, FED, "bigger<mill>", List.of()),
                new GridLead(1, FED, "bigger<mill>", List.of()),
                new GridLead(2, FED, "bigger<mill>", List.of())))
        .with(
            GridAnswer::changes,
            List.of(new GridChange(MARGIN, "base", "bigger<mill>", 216.7, 0, 2)))
        .with(GridAnswer::assumptions, NOTES)
        .with(GridAnswer::cautions, YEAR.cautions())
        .with(GridAnswer::warnings, YEAR.warnings())
        .with(GridAnswer::all, new GridAnswer.All(all))
        .made();
  }

  /** One plant over two keys, one of its six cells left out. */
  public static GridAnswer tiles() {
    GridKey area =
        new GridKey(
            "deliveries.stalk.fields.*.area",
            "x0.8..x1.2..x0.2",
            GridKey.Scale.FACTOR,
            "",
            List.of(
                new GridKey.Value("x0.8", 0.8),
                new GridKey.Value("x1", 1),
                new GridKey.Value("x1.2", 1.2)));
    GridKey from =
        new GridKey(
            "season.0.from",
            "2027-06-01..2027-06-08..7d",
            GridKey.Scale.DATE,
            "",
            List.of(
                new GridKey.Value("2027-06-01", 20_970), new GridKey.Value("2027-06-08", 20_977)));
    List<GridRow> rows = new ArrayList<>();
    for (int cell = 0; cell < 5; cell++) {
      rows.add(row(cell, "base", MARGIN, "USD", 100_000 + 9_000 * cell, 5_000));
      rows.add(row(cell, "base", LEFT, "bales", 50 * cell, 20));
    }
    return Draft.of(GridAnswer.class)
        .with(GridAnswer::header, YEAR.header())
        .with(GridAnswer::outline, YEAR.outline())
        .with(GridAnswer::called, "option")
        .with(GridAnswer::plants, List.of("base"))
        .with(GridAnswer::keys, List.of(area, from))
        .with(
            GridAnswer::cells,
            List.of(
                cell(false, 0, 0),
                cell(false, 0, 1),
                cell(true, 1, 0),
                cell(false, 1, 1),
                cell(false, 2, 0),
                new GridCell(
                    List.of(2, 1),
                    false,
                    List.of(
                        new GridCell.LeftOut(
                            "base",
                            new LocatedProblem(
                                LocatedProblem.Severity.PROBLEM,
                                "plant.yaml",
                                3,
                                5,
                                "season.0.from",
                                "it is <late>",
                                "an earlier date",
                                "",
                                ""))))))
        .with(GridAnswer::drawn, List.of(MARGIN, LEFT))
        .with(GridAnswer::goals, 1)
        .with(GridAnswer::rows, rows)
        .with(GridAnswer::best, List.of(new GridBest(MARGIN, "base", 4, List.of(1, 2))))
        .with(GridAnswer::assumptions, NOTES)
        .with(GridAnswer::cautions, YEAR.cautions())
        .with(GridAnswer::all, new GridAnswer.All(rows))
        .made();
  }

  private static GridCell cell(boolean asItStands, Integer... at) {
    return new GridCell(List.of(at), asItStands, List.of());
  }

  private static GridRow row(
      int cell, String plant, String measure, String unit, double mean, double half) {
    return new GridRow(cell, plant, measure, unit, mean, mean - half, mean + half, 40, "student");
  }
}
