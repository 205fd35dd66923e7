package hurdline.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** Small faults put into an answer, each of which an audit must find. */
final class Control {
  private static final double MILLIONTH = 1e-6;

  private Control() {}

  /** A figure of measures.csv, in the second replication of the first plant, off by a millionth. */
  static UnaryOperator<WrittenAnswer> ofMeasure(String measure) {
    return ofMeasure(measure, MILLIONTH);
  }

  /**
   * @param share by which it is off
   */
  static UnaryOperator<WrittenAnswer> ofMeasure(String measure, double share) {
    return inTable(
        Tables.MEASURES,
        Columns.VALUE,
        share,
        row -> row.is(Columns.MEASURE, measure) && row.is(Columns.REPLICATION, "2"));
  }

  /** The same in the last plant of the answer. */
  static UnaryOperator<WrittenAnswer> inLastPlan(String measure) {
    return answer -> {
      String last = answer.options().get(answer.options().size() - 1);
      return inTable(
              Tables.MEASURES,
              Columns.VALUE,
              MILLIONTH,
              row -> row.is(Columns.MEASURE, measure) && row.is(Columns.OPTION, last))
          .apply(answer);
    };
  }

  /** The first figure of a column that is not 0, off by a millionth. */
  static UnaryOperator<WrittenAnswer> inTable(String file, String column) {
    return inTable(file, column, MILLIONTH);
  }

  static UnaryOperator<WrittenAnswer> inTable(String file, String column, double share) {
    return inTable(file, column, share, row -> true);
  }

  static UnaryOperator<WrittenAnswer> inTable(String file, String column, String measure) {
    return inTable(file, column, MILLIONTH, row -> row.is(Columns.MEASURE, measure));
  }

  private static UnaryOperator<WrittenAnswer> inTable(
      String file, String column, double share, Predicate<Table.Row> wanted) {
    return answer -> {
      Table table = answer.table(file);
      Table.Row row = table.row(of -> wanted.test(of) && Math.abs(of.number(column)) > 0);
      return answer.with(
          table.with(row, column, Double.toString(row.number(column) * (1 + share))));
    };
  }

  /** A word of a column turned round. */
  static UnaryOperator<WrittenAnswer> turned(String file, String column) {
    return answer -> {
      Table table = answer.table(file);
      Table.Row row = table.row(of -> true);
      return answer.with(table.with(row, column, row.is(column, "yes") ? "no" : "yes"));
    };
  }

  /** The last digit of the first number of a table of the page, one higher. */
  static UnaryOperator<WrittenAnswer> onPage(String label, int column) {
    return answer -> {
      List<PageTable> page = new ArrayList<>(answer.page());
      for (int at = 0; at < page.size(); at++) {
        if (page.get(at).label().equalsIgnoreCase(label)) {
          PageTable table = page.get(at);
          Shown shown = Shown.all(table.rows().get(0).get(column)).get(0);
          page.set(at, table.with(0, column, String.valueOf(shown.value() + 1.01 * shown.step())));
          return answer.withPage(page);
        }
      }
      throw new IllegalArgumentException("the page has no table " + label);
    };
  }

  /** Another text in a sentence of the page in place of the first that matches. */
  static UnaryOperator<WrittenAnswer> inProse(String pattern, String text) {
    return answer -> answer.withProse(answer.prose().replaceFirst(pattern, text));
  }

  /** Another text on the terminal in place of the first that matches. */
  static UnaryOperator<WrittenAnswer> onTerminal(String pattern, String text) {
    return answer -> answer.withTerminal(answer.terminal().replaceFirst(pattern, text));
  }
}
