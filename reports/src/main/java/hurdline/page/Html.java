package hurdline.page;

import hurdline.answer.Note;
import hurdline.chart.Figure;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Writes HTML; all text given to it is escaped, so that a name of the plant file cannot become
 * markup.
 */
final class Html {
  private static final Pattern DATE =
      Pattern.compile("\\d{4}-\\d\\d|(\\d{1,2} )?[A-Z][a-z]{2} (\\d{1,2}, )?\\d{4}");

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
      notes.forEach(note -> element("dt", note.title()).element("dd", note.text()));
      raw("</dl>\n");
    }
    return this;
  }

  Html figures(List<Figure> figures) {
    figures.forEach(this::figure);
    return this;
  }

  /** A chart and under it the table of its figures; on paper a chart and its title stay together. */
  Html figure(Figure figure) {
    raw("<figure id=\"chart-" + escape(figure.name()) + "\">\n<figcaption>")
        .text(figure.title())
        .raw("</figcaption>\n");
    raw(
            "<div class=\"drawing\" tabindex=\"0\" role=\"group\" aria-label=\""
                + escape("Drawing: " + figure.title())
                + "\">")
        .raw(figure.svg())
        .raw("</div>\n</figure>\n");
    return table(figure.title(), figure.table());
  }

  /** A table in a box that scrolls on a screen and opens up on paper. */
  Html table(String label, Figure.Grid grid) {
    raw(
        "<div class=\"figures\" tabindex=\"0\" role=\"region\" aria-label=\""
            + escape("Figures: " + label)
            + "\"><table>\n<thead><tr>");
    for (int column = 0; column < grid.head().size(); column++) {
      head(grid, column);
    }
    raw("</tr></thead>\n<tbody>\n");
    for (List<String> row : grid.rows()) {
      raw(isNumber(row.get(0)) || isDate(row.get(0)) ? "<tr><th scope=\"row\" class=\"d\">" : "<tr><th scope=\"row\">")
          .text(row.get(0))
          .raw("</th>");
      row.subList(1, row.size()).forEach(this::cell);
      raw("</tr>\n");
    }
    return raw("</tbody></table></div>\n");
  }

  /** A column without a name gets no head, since a reading device would announce it. */
  private void head(Figure.Grid grid, int column) {
    String name = grid.head().get(column);
    String numbers = isNumbers(grid, column) ? " class=\"n\"" : "";
    if (name.isEmpty()) {
      raw("<td></td>");
    } else {
      raw("<th scope=\"col\"" + numbers + ">").text(name).raw("</th>");
    }
  }

  private static boolean isNumbers(Figure.Grid grid, int column) {
    String first = grid.rows().isEmpty() ? "" : grid.rows().get(0).get(column);
    return column > 0 && isNumber(first) && !isDate(first);
  }

  private void cell(String text) {
    String kind = isDate(text) ? " class=\"d\"" : isNumber(text) ? " class=\"n\"" : "";
    raw("<td" + kind + ">").text(text).raw("</td>");
  }

  /** In any order; what must not be broken into two lines. */
  private static boolean isDate(String cell) {
    return DATE.matcher(cell).lookingAt();
  }

  private static boolean isNumber(String cell) {
    return !cell.isEmpty() && (Character.isDigit(cell.charAt(0)) || cell.charAt(0) == '-');
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
