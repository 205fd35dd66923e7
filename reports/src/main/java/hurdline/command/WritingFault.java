package hurdline.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A file of an answer could not be written; what is there is named, for nothing of it is taken
 * away.
 */
final class WritingFault extends IOException {
  private static final long serialVersionUID = 1L;

  /**
   * @param whole the files that are there
   * @param missing the first that is not
   */
  WritingFault(Path folder, List<String> whole, String missing, IOException cause) {
    super(
        "writing failed ("
            + cause.getMessage()
            + "): "
            + folder
            + " holds "
            + named(whole)
            + ", but not "
            + missing
            + " and what follows it; make room and ask again, or name another folder with --out",
        cause);
  }

  private static String named(List<String> whole) {
    List<String> names = new ArrayList<>(whole);
    names.removeIf(name -> name.startsWith("charts/"));
    int charts = whole.size() - names.size();
    if (charts > 0) {
      names.add(charts == 1 ? "1 chart" : charts + " charts");
    }
    return names.isEmpty() ? "nothing" : String.join(", ", names);
  }
}
