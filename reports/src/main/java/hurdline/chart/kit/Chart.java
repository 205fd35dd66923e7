package hurdline.chart.kit;

import java.util.List;

/**
 * A chart with all that goes with it.
 *
 * @param name file name without ending, also the prefix of all ids in the drawing
 * @param title what it shows, a few words
 * @param alternative the drawing in words, for who cannot see it
 * @param svg one svg element
 * @param table the figures behind it
 */
public record Chart(String name, String title, String alternative, String svg, Grid table) {
  /** The drawing as a file of its own. */
  public String file() {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg;
  }

  /**
   * Figures as text, worded already.
   *
   * @param head column heads with their units; the first column names the row
   * @param rows cells; one between backticks is a word of the plant file or of the tables
   */
  public record Grid(List<String> head, List<List<String>> rows) {
    public Grid {
      head = List.copyOf(head);
      rows = rows.stream().map(List::copyOf).toList();
      for (List<String> row : rows) {
        if (row.size() != head.size()) {
          throw new IllegalArgumentException("a row of another length than its head: " + row);
        }
      }
    }
  }
}
