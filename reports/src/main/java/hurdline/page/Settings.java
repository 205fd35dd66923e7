package hurdline.page;

import hurdline.answer.Header;
import hurdline.chart.kit.Chart;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;

/** The settings of an answer as a table. */
final class Settings {
  private Settings() {}

  static Chart.Grid grid(Header header, Wording wording) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("plant file", "`" + header.file() + "`"));
    rows.add(List.of("its content hash", header.contentHash()));
    rows.add(List.of("options", wording.titles().option(header.option())));
    rows.add(
        List.of(
            "changes", header.changes().isEmpty() ? "none" : String.join(", ", header.changes())));
    rows.add(List.of("calendar", wording.span(header.from(), header.to())));
    rows.add(
        List.of(
            "replications",
            Integer.toString(header.replications())
                + (header.until().isEmpty() ? "" : ", until " + header.until())));
    rows.add(List.of("seed", Long.toString(header.seed())));
    rows.add(List.of("program", "hurdline " + header.version()));
    rows.add(
        List.of(
            "units on this page",
            wording.units() == UnitSystem.US ? "US: a ton is 2000 lb" : "metric: a t is 1000 kg"));
    return new Chart.Grid(List.of("setting", "value"), rows);
  }
}
