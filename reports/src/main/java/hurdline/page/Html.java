package hurdline.page;

import hurdline.chart.kit.Chart;
import hurdline.text.MainTable;
import hurdline.text.notes.Note;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Writes HTML; all text given to it is escaped, so that a name of the plant file cannot become
 * markup.
 */
final class Html {
  private static final Pattern DATE =
      Pattern.compile(
          "(\\d{4}-\\d\\d(-\\d\\d)?|(\\d{1,2} )?[A-Z][a-z]{2} (\\d{1,2}, )?\\d{4})([ T]\\d\\d:\\d\\d)?");

  private static final Pattern NUMBER =
      Pattern.compile(
          "[-+]?\\d[^\\sa-zA-Z]*( to [-+]?\\d[^\\sa-zA-Z]*)?( \\S+)?( \\(.*\\))?( \\S+)?");

  private static final Pattern JOINT = Pattern.compile("(?<=[+_])(?=.)");

  /** Letters from which on a text gets room, so that a phone does not show a word a line. */
  private static final int LONG = 24;

  private final StringBuilder out = new StringBuilder();

  /** Escapes text for use between tags and in double-quoted attributes. */
  static String escape(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  /** Markup of the program's own; never a text from outside. */
  Html raw(String markup) {
    out.append(markup);
    return this;
  }

  Html text(String text) {
    out.append(escape(text));
    return this;
  }

  Html element(String tag, String text) {
    return raw("<" + tag + ">").text(text).raw("</" + tag + ">\n");
  }

  Html paragraph(String text) {
    return element("p", text);
  }

  Html list(List<String> items) {
    raw("<ul>\n");
    items.forEach(item -> element("li", item));
    return raw("</ul>\n");
  }

  /** The sentences at the head of a report. */
  Html answer(List<String> sentences) {
    raw("<div class=\"answer\">\n");
    sentences.forEach(this::paragraph);
    return raw("</div>\n");
  }

  /** Titles with their texts; nothing where there are none. */
  Html notes(List<Note> notes) {
    if (!notes.isEmpty()) {
      raw("<dl>\n");
      notes.forEach(
          note -> element("dt", note.title()).raw("<dd>").marked(note.text()).raw("</dd>\n"));
      raw("</dl>\n");
    }
    return this;
  }

  Html figures(List<Chart> figures) {
    figures.forEach(this::figure);
    return this;
  }

  /**
   * A chart and under it the table of its figures; on paper a chart and its title stay together.
   */
  Html figure(Chart figure) {
    raw("<figure id=\"chart-" + escape(figure.name()) + "\">\n<figcaption>")
        .text(figure.title())
        .raw("</figcaption>\n");
    raw("<div class=\"drawing\" tabindex=\"0\" role=\"group\" aria-label=\""
            + escape("Drawing: " + figure.title())
            + "\">")
        .raw(figure.svg())
        .raw("</div>\n</figure>\n");
    return table(figure.title(), figure.table());
  }

  /** A table in a box that scrolls on a screen and opens up on paper. */
  Html table(String label, Chart.Grid grid) {
    return table("figures", label, grid);
  }

  /**
   * The main figures of an answer, all of whose rows a screen shows at once; only a narrow one
   * scrolls them sideways.
   */
  Html wholeTable(String label, MainTable main) {
    return main.isEmpty()
        ? this
        : table("figures whole", label, new Chart.Grid(main.head(), main.grid()));
  }

  private Html table(String kind, String label, Chart.Grid grid) {
    raw(
        "<div class=\""
            + kind
            + "\" tabindex=\"0\" role=\"region\" aria-label=\""
            + escape("Figures: " + label)
            + "\"><table>\n<thead><tr>");
    boolean[] numbers = new boolean[grid.head().size()];
    for (int column = 0; column < numbers.length; column++) {
      numbers[column] = isNumbers(grid, column);
      head(grid.head().get(column), numbers[column]);
    }
    raw("</tr></thead>\n<tbody>\n");
    for (List<String> row : grid.rows()) {
      raw("<tr><th scope=\"row\"" + firstKind(row.get(0)) + ">").marked(row.get(0)).raw("</th>");
      for (int column = 1; column < row.size(); column++) {
        raw("<td" + kind(row.get(column), numbers[column]) + ">")
            .marked(row.get(column))
            .raw("</td>");
      }
      raw("</tr>\n");
    }
    return raw("</tbody></table></div>\n");
  }

  /**
   * A text in which words of the plant file or of the tables stand between backticks, which are set
   * as such.
   */
  private Html marked(String text) {
    String[] parts = text.split("`", -1);
    if (parts.length % 2 == 0) { // a backtick of a title
      return text(text);
    }
    for (int at = 0; at < parts.length; at++) {
      if (at % 2 == 1) {
        raw("<code>").text(parts[at]).raw("</code>");
      } else {
        text(parts[at]);
      }
    }
    return this;
  }

  /** A column without a name gets no head, since a reading device would announce it. */
  private void head(String name, boolean numbers) {
    if (name.isEmpty()) {
      raw("<td></td>");
    } else {
      String kind = (numbers ? "n" : "") + (name.length() > LONG ? " t" : "");
      raw("<th scope=\"col\"" + (kind.isEmpty() ? "" : " class=\"" + kind.strip() + "\"") + ">")
          .raw(breaking(name))
          .raw("</th>");
    }
  }

  /** Escaped; a long name may go on in the next line where its parts join. */
  private static String breaking(String name) {
    return JOINT.matcher(escape(name)).replaceAll("<wbr>");
  }

  /** Numbers stand to the right, and with them the words that take a number's place. */
  private static boolean isNumbers(Chart.Grid grid, int column) {
    List<String> cells =
        grid.rows().stream().map(row -> row.get(column)).filter(cell -> !cell.isEmpty()).toList();
    return column > 0 && 2 * cells.stream().filter(Html::isNumber).count() > cells.size();
  }

  private static String firstKind(String cell) {
    return isNumber(cell) || isDate(cell)
        ? " class=\"d\""
        : cell.length() > LONG ? " class=\"t\"" : "";
  }

  private static String kind(String cell, boolean amongNumbers) {
    if (isDate(cell)) {
      return " class=\"d\"";
    }
    if (!amongNumbers) {
      return cell.length() > LONG ? " class=\"t\"" : "";
    }
    return isNumber(cell) ? " class=\"n\"" : " class=\"r\"";
  }

  /** In any order, alone or with the time; what must not be broken into two lines. */
  private static boolean isDate(String cell) {
    return DATE.matcher(cell).matches();
  }

  /** A number, perhaps with its unit or a second number; not a text that begins with one. */
  private static boolean isNumber(String cell) {
    return !isDate(cell) && NUMBER.matcher(cell).matches();
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
