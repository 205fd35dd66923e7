package hurdline.page;

import hurdline.chart.kit.Chart;
import java.util.List;
import java.util.function.Consumer;

/**
 * A part of a report. To add one, add it to the list of its verb's sections.
 *
 * @param id its anchor on the page
 * @param isWanted whether the answer has what it shows
 * @param body writes what stands under the title
 */
record Section(String id, String title, boolean isWanted, Consumer<Html> body) {
  /** Charts and nothing else; not wanted where there are none. */
  static Section of(String id, String title, List<Chart> figures) {
    return new Section(id, title, !figures.isEmpty(), html -> html.figures(figures));
  }
}
