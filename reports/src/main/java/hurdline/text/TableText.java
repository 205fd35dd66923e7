package hurdline.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Main figures in aligned columns of a terminal. Where a row does not fit into one line with room
 * for its label, the percentiles stand under the interval; long labels go on in the next line.
 */
final class TableText {
  private static final int GAP = 2;
  private static final int ROOM_FOR_LABEL = 15;
  private static final int LEAST_FOR_LABEL = 8;
  private static final String INTERVAL = "95 % interval";
  private static final String PERCENTILES = "percentiles";
  private static final String LOW = "5th";
  private static final String HIGH = "95th";

  private final List<MainTable.Cells> rows;
  private final String value;
  private final boolean intervals;
  private final boolean percentiles;
  private final int mean;
  private final int unit;
  private final int interval;
  private final int p05;
  private final int p95;

  /**
   * @param value what the first figures are called; empty where they have no intervals, and then no
   *     head
   */
  TableText(List<MainTable.Cells> rows, String value, boolean percentiles) {
    this.rows = rows;
    this.value = value;
    this.intervals = !value.isEmpty();
    this.percentiles = percentiles;
    mean = widest(rows, row -> isLong(row) ? "" : row.mean(), value);
    unit = widest(rows, MainTable.Cells::unit, "");
    interval = intervals ? widest(rows, MainTable.Cells::interval, INTERVAL) : 0;
    p05 = percentiles ? widest(rows, MainTable.Cells::p05, LOW) : 0;
    p95 = percentiles ? widest(rows, MainTable.Cells::p95, HIGH) : 0;
  }

  private static int widest(
      List<MainTable.Cells> rows, Function<MainTable.Cells, String> cell, String head) {
    return Math.max(
        head.length(), rows.stream().mapToInt(row -> cell.apply(row).length()).max().orElse(0));
  }

  /** A text in place of numbers, which goes as far as it must. */
  private static boolean isLong(MainTable.Cells row) {
    return !row.mean().isEmpty() && row.interval().isEmpty() && !row.mean().matches("[-+]?\\d\\S*");
  }

  List<String> lines(int width) {
    boolean flat = width - figures(percentiles) >= ROOM_FOR_LABEL;
    boolean folded = !flat && percentiles;
    int label =
        Math.min(Math.max(LEAST_FOR_LABEL, width - figures(flat && percentiles)), longestLabel());
    List<String> lines = new ArrayList<>();
    if (intervals) {
      lines.addAll(head(label, folded));
    }
    String group = "";
    for (MainTable.Cells row : rows) {
      if (!row.group().equals(group)) {
        group = row.group();
        lines.add(group);
      }
      lines.addAll(row(row, label, folded, width));
    }
    return lines.stream().map(String::stripTrailing).toList();
  }

  private int longestLabel() {
    return rows.stream()
        .mapToInt(row -> indent(row).length() + row.label().length())
        .max()
        .orElse(0);
  }

  private static String indent(MainTable.Cells row) {
    return row.group().isEmpty() ? "" : "  ";
  }

  /** Columns behind the label. */
  private int figures(boolean withPercentiles) {
    return GAP
        + mean
        + 1
        + unit
        + (intervals ? GAP + interval : 0)
        + (withPercentiles ? 2 * GAP + p05 + p95 : 0);
  }

  private List<String> head(int label, boolean folded) {
    String first =
        pad("", label)
            + gap()
            + right(value, mean)
            + " "
            + pad("", unit)
            + gap()
            + right(INTERVAL, interval);
    if (folded) {
      return List.of(
          first,
          pad("", label)
              + gap()
              + right(LOW + " and " + HIGH + " percentile", mean + 1 + unit + GAP + interval));
    }
    if (!percentiles) {
      return List.of(first);
    }
    int both = p05 + GAP + p95;
    return List.of(
        first + gap() + right(PERCENTILES, both),
        pad("", label + GAP + mean + 1 + unit + GAP + interval)
            + gap()
            + right(LOW, p05)
            + gap()
            + right(HIGH, p95));
  }

  private List<String> row(MainTable.Cells row, int label, boolean folded, int width) {
    List<String> names = wrapped(row.label(), label - indent(row).length());
    List<String> lines = new ArrayList<>();
    if (isLong(row)) {
      lines.addAll(text(row, names, label, width));
      return lines;
    }
    String figures =
        gap()
            + right(row.mean(), mean)
            + " "
            + pad(row.unit(), unit)
            + (intervals ? gap() + right(row.interval(), interval) : "");
    boolean two =
        folded
            && !row.p05().isEmpty()
            && !(row.p05().equals(row.mean()) && row.p95().equals(row.mean()));
    String below =
        two ? gap() + right(row.p05() + " and " + row.p95(), mean + 1 + unit + GAP + interval) : "";
    if (percentiles && !folded) {
      figures += gap() + right(row.p05(), p05) + gap() + right(row.p95(), p95);
    }
    for (int at = 0; at < Math.max(names.size(), two ? 2 : 1); at++) {
      String name = at < names.size() ? names.get(at) : "";
      lines.add(pad(indent(row) + name, label) + (at == 0 ? figures : at == 1 ? below : ""));
    }
    return lines;
  }

  private List<String> text(MainTable.Cells row, List<String> names, int label, int width) {
    List<String> texts = wrapped(row.mean(), width - label - GAP);
    List<String> lines = new ArrayList<>();
    for (int at = 0; at < Math.max(names.size(), texts.size()); at++) {
      String name = at < names.size() ? names.get(at) : "";
      lines.add(pad(indent(row) + name, label) + gap() + (at < texts.size() ? texts.get(at) : ""));
    }
    return lines;
  }

  /** Broken at blanks; a word that is too long by itself is cut where the room ends. */
  static List<String> wrapped(String text, int room) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    while (rest.length() > room) {
      int at = rest.lastIndexOf(' ', room);
      int end = at > 0 ? at : room;
      lines.add(rest.substring(0, end));
      rest = rest.substring(end).stripLeading();
    }
    lines.add(rest);
    return lines;
  }

  private static String gap() {
    return " ".repeat(GAP);
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  /** To the right of its column. */
  private static String right(String text, int width) {
    return " ".repeat(Math.max(0, width - text.length())) + text;
  }
}
