package hurdline.text;

import hurdline.answer.SummaryRow;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The main figures of an answer: mean, 95 % interval, 5th and 95th percentile, the same on the
 * terminal and on the page.
 */
public final class MainTable {
  /** How the label of a share of a line's hours begins. */
  static final String LIMITED = "limited by ";

  private final List<Row> rows;
  private final Wording wording;

  private final String value;

  public MainTable(List<Row> rows, Wording wording) {
    this(rows, "mean", wording);
  }

  /**
   * @param value what the first figures are called
   */
  MainTable(List<Row> rows, String value, Wording wording) {
    this.value = value;
    this.rows = List.copyOf(rows);
    this.wording = wording;
  }

  /**
   * A row.
   *
   * @param group what it belongs to, or empty
   * @param label what it is
   * @param text stands for the mean where that is not to be written as a number; else empty
   * @param range stands for the interval then
   * @param isDifference whether a plus shows that there is more
   */
  public record Row(
      String group,
      String label,
      String unit,
      Figures figures,
      String text,
      String range,
      boolean isDifference) {
    static Row of(String group, String label, SummaryRow row) {
      return of(
          group,
          label,
          row.unit(),
          new Figures(row.mean(), row.low95(), row.high95(), row.p05(), row.p95()));
    }

    static Row of(String group, String label, String unit, Figures figures) {
      return new Row(group, label, unit, figures, "", "", false);
    }

    static Row difference(String group, String label, String unit, Figures figures) {
      return new Row(group, label, unit, figures, "", "", true);
    }

    /**
     * Words in place of figures, or a figure that is written already and has neither interval nor
     * percentiles.
     */
    static Row text(String group, String label, String text, String unit) {
      return new Row(group, label, unit, Figures.none(), text, "", false);
    }

    /** A figure and its interval that are written already. */
    static Row written(String group, String label, String figure, String unit, String range) {
      return new Row(group, label, unit, Figures.none(), figure, range, false);
    }
  }

  /** What is not known is NaN and leaves its cell empty. */
  public record Figures(double mean, double low95, double high95, double p05, double p95) {
    static Figures none() {
      return of(Double.NaN, Double.NaN, Double.NaN);
    }

    /** Without percentiles. */
    static Figures of(double mean, double low95, double high95) {
      return new Figures(mean, low95, high95, Double.NaN, Double.NaN);
    }
  }

  /** A row as it is written. */
  record Cells(
      String group,
      String label,
      String mean,
      String unit,
      String interval,
      String p05,
      String p95) {}

  public boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The names of the columns; those of which no row has anything are left out. */
  public List<String> head() {
    List<String> head = new ArrayList<>(List.of("", hasIntervals() ? value : "simulated", "unit"));
    if (hasIntervals()) {
      head.add("95 % interval");
    }
    if (hasPercentiles()) {
      head.addAll(List.of("5th percentile", "95th percentile"));
    }
    return head;
  }

  /** For a page: a row each, its name first. */
  public List<List<String>> grid() {
    return cells().stream()
        .map(
            row ->
                Stream.concat(
                        Stream.of(
                            row.group().isEmpty() ? row.label() : row.group() + ": " + row.label(),
                            row.mean(),
                            row.unit()),
                        Stream.concat(
                            hasIntervals() ? Stream.of(row.interval()) : Stream.of(),
                            hasPercentiles() ? Stream.of(row.p05(), row.p95()) : Stream.of()))
                    .toList())
        .toList();
  }

  /** For a terminal of so many columns. */
  public List<String> lines(int width) {
    return new TableText(cells(), hasIntervals() ? value : "", hasPercentiles()).lines(width);
  }

  /** What the columns are, one sentence. */
  public String legend(int replications) {
    if (!hasIntervals()) {
      return replications == 1 ? "One simulated year: no interval can be given." : "";
    }
    return (rows.stream().anyMatch(row -> row.label().startsWith(LIMITED))
            ? "Limits are in % of scheduled hours. "
            : "")
        + "Intervals are those of the mean of "
        + replications
        + " simulated years"
        + (hasPercentiles()
            ? "; one year in 20 lies below the 5th percentile, one above the 95th."
            : ".");
  }

  boolean hasIntervals() {
    return rows.stream()
        .anyMatch(
            row ->
                !row.range().isEmpty()
                    || !Double.isNaN(row.figures().low95())
                    || !Double.isNaN(row.figures().high95()));
  }

  boolean hasPercentiles() {
    return hasIntervals()
        && rows.stream().anyMatch(row -> row.figures().p05() < row.figures().p95());
  }

  List<Cells> cells() {
    return rows.stream().map(this::cells).toList();
  }

  private Cells cells(Row row) {
    if (!row.text().isEmpty()) {
      return new Cells(
          row.group(),
          row.label(),
          row.text(),
          row.unit().equals("count") ? "" : wording.unit(row.unit()),
          row.range(),
          "",
          "");
    }
    Figures of = row.figures();
    String mean = wording.number(of.mean(), of.low95(), of.high95(), row.unit());
    boolean isMore =
        row.isDifference()
            && of.mean() > 0
            && mean.codePoints().anyMatch(digit -> digit >= '1' && digit <= '9');
    return new Cells(
        row.group(),
        row.label(),
        (isMore ? "+" : "") + mean,
        row.unit().equals("count") || Double.isNaN(of.mean()) ? "" : wording.unit(row.unit()),
        wording.interval(of.mean(), of.low95(), of.high95(), row.unit()),
        percentile(row, of.p05()),
        percentile(row, of.p95()));
  }

  private String percentile(Row row, double value) {
    return Double.isNaN(value)
        ? ""
        : wording.number(value, row.figures().low95(), row.figures().high95(), row.unit());
  }
}
