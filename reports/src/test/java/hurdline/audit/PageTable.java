package hurdline.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A table of the page as its reader sees it.
 *
 * @param label what a reading device announces it as
 * @param head the names of its columns
 * @param rows text cells, the row's name first
 */
record PageTable(String label, List<String> head, List<List<String>> rows) {
  private static final Pattern TABLE =
      Pattern.compile("aria-label=\"Figures: ([^\"]*)\"><table[^>]*>(.*?)</table>", Pattern.DOTALL);
  private static final Pattern LINE = Pattern.compile("<tr[^>]*>(.*?)</tr>", Pattern.DOTALL);
  private static final Pattern CELL = Pattern.compile("<t[hd][^>]*>(.*?)</t[hd]>", Pattern.DOTALL);

  static List<PageTable> all(String html) {
    List<PageTable> tables = new ArrayList<>();
    for (Matcher table = TABLE.matcher(html); table.find(); ) {
      List<List<String>> lines = new ArrayList<>();
      for (Matcher line = LINE.matcher(table.group(2)); line.find(); ) {
        lines.add(cells(line.group(1)));
      }
      tables.add(new PageTable(text(table.group(1)), lines.get(0), lines.subList(1, lines.size())));
    }
    return tables;
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    for (Matcher cell = CELL.matcher(line); cell.find(); ) {
      cells.add(text(cell.group(1)));
    }
    return cells;
  }

  /** Without markup. */
  static String text(String html) {
    return html.replaceAll("<[^>]*>", "")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&amp;", "&")
        .strip();
  }

  /** The same with another text in one cell. */
  PageTable with(int row, int column, String text) {
    List<List<String>> changed = new ArrayList<>(rows);
    List<String> cells = new ArrayList<>(rows.get(row));
    cells.set(column, text);
    changed.set(row, cells);
    return new PageTable(label, head, changed);
  }
}
