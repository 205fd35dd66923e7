package hurdline.audit;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the terminal says against the tables: each figure that it gives with an interval, in a
 * bracket or in a column, is, rounded, a figure of the tables with that interval and unit. So its
 * words may change, but no figure may stand there that no table has.
 */
final class TerminalCheck implements Check {
  static final String TERMINAL = "terminal is the tables, rounded";

  private static final String NUMBER = "[-+]?[0-9][0-9,]*(?:\\.[0-9]+)?";
  private static final Pattern FIGURE =
      Pattern.compile(
          "(" + NUMBER + ")( [a-zA-Z%/0-9]+)? \\((" + NUMBER + ") to (" + NUMBER + ")( %)?\\)");

  /** A row of main figures; its percentiles, where it has any, stand in the last two columns. */
  private static final Pattern ROW =
      Pattern.compile(
          "("
              + NUMBER
              + ")((?: [a-zA-Z%/0-9]+)?)  +("
              + NUMBER
              + ") to ("
              + NUMBER
              + ")(?:  +("
              + NUMBER
              + ")  +("
              + NUMBER
              + "))?$",
          Pattern.MULTILINE);

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    List<Figure> known = known(answer);
    Matcher figure = FIGURE.matcher(answer.terminal().replaceAll("\\s+", " "));
    while (figure.find()) {
      String unit = figure.group(2) == null ? "" : figure.group(2).strip();
      Shown value = Shown.all(figure.group(1)).get(0);
      Shown low = Shown.all(figure.group(3)).get(0);
      Shown high = Shown.all(figure.group(4)).get(0);
      boolean found = known.stream().anyMatch(of -> hasUnit(of, unit) && is(of, value, low, high));
      ledger.same(TERMINAL, figure.group(), true, found);
    }
    Matcher row = ROW.matcher(answer.terminal());
    while (row.find()) {
      ledger.same(
          TERMINAL,
          row.group(),
          true,
          isFigure(known, row) && (row.group(5) == null || hasPercentiles(answer, row)));
    }
  }

  private static boolean isFigure(List<Figure> known, Matcher row) {
    Shown value = Shown.all(row.group(1)).get(0);
    Shown low = Shown.all(row.group(3)).get(0);
    Shown high = Shown.all(row.group(4)).get(0);
    return known.stream()
        .anyMatch(of -> hasUnit(of, row.group(2).strip()) && is(of, value, low, high));
  }

  private static boolean hasPercentiles(WrittenAnswer answer, Matcher row) {
    Shown value = Shown.all(row.group(1)).get(0);
    Shown p05 = Shown.all(row.group(5)).get(0);
    Shown p95 = Shown.all(row.group(6)).get(0);
    return answer.tables().stream()
        .filter(table -> table.file().equals(Tables.SUMMARY) || table.file().equals(Tables.PAYBACK))
        .flatMap(Table::rows)
        .anyMatch(
            of -> {
              Figure mean = Figure.of(of, Columns.MEAN, Columns.LOW_95, Columns.HIGH_95);
              double half = Shown.inUs(mean.halfWidth(), mean.unit());
              return hasUnit(mean, row.group(2).strip())
                  && value.isRounded(Shown.inUs(mean.value(), mean.unit()), half)
                  && p05.isRounded(Shown.inUs(of.number(Columns.P05), mean.unit()), half)
                  && p95.isRounded(Shown.inUs(of.number(Columns.P95), mean.unit()), half);
            });
  }

  private static boolean hasUnit(Figure figure, String unit) {
    String us =
        switch (figure.unit()) {
          case "t" -> "ton";
          case "t/h" -> "ton/h";
          case "1/h" -> "/h";
          case "share" -> "%";
          case "m2" -> "ft2";
          case "kg" -> "lb";
          default -> figure.unit().endsWith("/t") ? figure.unit() + "on" : figure.unit();
        };
    return unit.isEmpty() || unit.equals(us);
  }

  private static boolean is(Figure figure, Shown value, Shown low, Shown high) {
    double half = Shown.inUs(figure.halfWidth(), figure.unit());
    return value.isRounded(Shown.inUs(figure.value(), figure.unit()), half)
        && low.isRounded(Shown.inUs(figure.low(), figure.unit()), half)
        && high.isRounded(Shown.inUs(figure.high(), figure.unit()), half);
  }

  /** Every figure of the tables that has an interval. */
  private static List<Figure> known(WrittenAnswer answer) {
    List<Figure> known = new ArrayList<>();
    for (Table table : answer.tables()) {
      for (String[] columns : intervals(table)) {
        table.rows().forEach(row -> known.add(figure(row, columns)));
      }
    }
    if (answer.has(
        Tables.DIFFERENCES)) { // a plan over another is the other against it, turned round
      for (Figure of : List.copyOf(known)) {
        known.add(new Figure(-of.value(), -of.high(), -of.low(), of.unit()));
      }
    }
    if (answer.has(Tables.BREAK_EVEN)) { // their intervals stand in the record alone
      for (JsonElement each :
          answer.record().getAsJsonObject("further").getAsJsonArray("break_even")) {
        JsonObject of = each.getAsJsonObject();
        known.add(
            new Figure(
                number(of, "value"),
                number(of, "low_95"),
                number(of, "high_95"),
                of.get("unit").getAsString()));
      }
    }
    if (answer.has(Tables.MEASURES)) {
      answer
          .options()
          .forEach(option -> known.addAll(BottleneckCheck.shares(answer.samples(option))));
    }
    return known;
  }

  private static double number(JsonObject object, String field) {
    return object.get(field).isJsonNull() ? Double.NaN : object.get(field).getAsDouble();
  }

  private static Figure figure(Table.Row row, String[] columns) {
    return new Figure(
        row.number(columns[0]),
        row.number(columns[1]),
        row.number(columns[2]),
        unit(row, columns[0]));
  }

  private static String unit(Table.Row row, String column) {
    return switch (column) {
      case Columns.SHARE, Columns.CHANCE -> "share";
      case Columns.MONEY, Columns.ABOVE -> "USD";
      default -> row.text(Columns.UNIT);
    };
  }

  private static List<String[]> intervals(Table table) {
    return switch (table.file()) {
      case Tables.SUMMARY, Tables.PAYBACK, Tables.CHOICE ->
          List.<String[]>of(new String[] {Columns.MEAN, Columns.LOW_95, Columns.HIGH_95});
      case Tables.ADJUSTED ->
          List.<String[]>of(new String[] {Columns.ADJUSTED_MEAN, Columns.LOW_95, Columns.HIGH_95});
      case Tables.DIFFERENCES ->
          List.of(
              new String[] {Columns.DIFFERENCE, Columns.LOW_95, Columns.HIGH_95},
              new String[] {Columns.DIFFERENCE, Columns.LOW_JOINT, Columns.HIGH_JOINT});
      case Tables.EFFECTS ->
          List.<String[]>of(new String[] {Columns.DIFFERENCE, Columns.LOW_95, Columns.HIGH_95});
      case Tables.BOTTLENECKS ->
          List.<String[]>of(new String[] {Columns.SHARE, Columns.SHARE_LOW, Columns.SHARE_HIGH});
      case Tables.YARD_SIZES ->
          List.of(
              new String[] {Columns.CHANCE, Columns.LOW_95, Columns.HIGH_95},
              new String[] {Columns.MONEY, Columns.MONEY_LOW, Columns.MONEY_HIGH});
      case Tables.CHEAPEST ->
          List.<String[]>of(new String[] {Columns.ABOVE, Columns.LOW_JOINT, Columns.HIGH_JOINT});
      case Tables.GAIN ->
          List.<String[]>of(new String[] {Columns.EFFECT, Columns.LOW_95, Columns.HIGH_95});
      case Tables.CHANGEOVERS ->
          List.<String[]>of(new String[] {Columns.WORTH, Columns.LOW_95, Columns.HIGH_95});
      default -> List.of();
    };
  }
}
