package hurdline.table;

import hurdline.answer.FitAnswer;
import hurdline.answer.FitRow;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The tables of a fit. */
public final class FitTables {
  private final FitAnswer answer;

  public FitTables(FitAnswer answer) {
    this.answer = answer;
  }

  /** All that a fit writes; {@code draws.csv} only where something is fitted. */
  public List<Table> all() {
    List<Table> all = new ArrayList<>(figures());
    if (answer.figures().stream().anyMatch(row -> !row.draws().isEmpty())) {
      all.add(draws());
    }
    return all;
  }

  private List<Table> figures() {
    return List.of(
        new Table(
            "figures.csv",
            List.of(
                "key",
                "unit",
                "file",
                "file_mean",
                "fitted",
                "mean",
                "low_95",
                "high_95",
                "error_share",
                "rows",
                "ended",
                "p",
                "verdict",
                "notes"),
            () -> answer.figures().stream().map(FitTables::figure)),
        new Table(
            "laws.csv",
            List.of("key", "unit", "law", "taken", "aicc", "anderson_darling", "p", "mean"),
            () -> answer.figures().stream().flatMap(FitTables::laws)),
        new Table(
            "parameters.csv",
            List.of("key", "parameter", "value", "covariance_0", "covariance_1"),
            () -> answer.figures().stream().flatMap(FitTables::parameters)),
        new Table(
            "points.csv",
            List.of("key", "unit", "amount", "share", "law_share", "law_amount"),
            () -> answer.figures().stream().flatMap(FitTables::points)),
        new Table(
            "checks.csv",
            List.of("what", "unit", "file", "records", "error", "rows", "note"),
            () ->
                answer.checks().stream()
                    .map(
                        row ->
                            new Object[] {
                              row.what(),
                              row.unit(),
                              row.said(),
                              row.found(),
                              row.error(),
                              row.rows(),
                              row.note()
                            })),
        new Table(
            "reasons.csv",
            List.of("file", "verdict", "rows", "reason", "example_line", "example"),
            () ->
                answer.reasons().stream()
                    .map(
                        row ->
                            new Object[] {
                              row.file(),
                              row.verdict(),
                              row.rows(),
                              row.reason(),
                              row.exampleLine(),
                              row.example()
                            })),
        new Table(
            "account.csv",
            List.of("file", "line", "verdict", "what_for", "why"),
            () ->
                answer.rows().stream()
                    .map(
                        row ->
                            new Object[] {
                              row.file(), row.line(), row.verdict(), row.whatFor(), row.why()
                            })));
  }

  /** A column for each figure that is fitted, a row for each joint draw. */
  private Table draws() {
    List<FitRow> drawn = answer.figures().stream().filter(row -> !row.draws().isEmpty()).toList();
    int rows = drawn.isEmpty() ? 0 : drawn.get(0).draws().size();
    return new Table(
        "draws.csv",
        drawn.stream().map(FitRow::key).toList(),
        () ->
            IntStream.range(0, rows)
                .mapToObj(at -> drawn.stream().map(row -> row.draws().get(at)).toArray()));
  }

  private static Object[] figure(FitRow row) {
    return new Object[] {
      row.key(),
      row.unit(),
      row.said(),
      row.saidMean(),
      row.fitted(),
      row.mean(),
      row.low95(),
      row.high95(),
      row.errorShare(),
      row.rows(),
      row.ended(),
      row.goodnessP(),
      row.verdict(),
      String.join("; ", row.notes())
    };
  }

  private static Stream<Object[]> laws(FitRow row) {
    return IntStream.range(0, row.laws().size())
        .mapToObj(
            i -> {
              FitRow.TriedLaw law = row.laws().get(i);
              return new Object[] {
                row.key(),
                row.unit(),
                law.law(),
                i == 0 && !row.parameters().isEmpty() ? "yes" : "no",
                law.criterion(),
                law.distance(),
                law.p(),
                law.mean()
              };
            });
  }

  private static Stream<Object[]> parameters(FitRow row) {
    int n = row.parameters().size();
    return IntStream.range(0, n)
        .mapToObj(
            i ->
                new Object[] {
                  row.key(),
                  i,
                  row.parameters().get(i),
                  row.covariance().get(i * n),
                  n > 1 ? row.covariance().get(i * n + 1) : Double.NaN
                });
  }

  private static Stream<Object[]> points(FitRow row) {
    return row.points().stream()
        .map(
            point ->
                new Object[] {
                  row.key(),
                  row.unit(),
                  point.amount(),
                  point.share(),
                  point.lawShare(),
                  point.lawAmount()
                });
  }
}
