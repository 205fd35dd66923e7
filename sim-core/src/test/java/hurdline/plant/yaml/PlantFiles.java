package hurdline.plant.yaml;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The plant files that come with the project, as the tests see them. */
final class PlantFiles {
  static final String EXAMPLE = "sweetgum-bend.yaml";
  static final List<String> EXACT =
      List.of(
          "changeover_late",
          "loads_scale",
          "mill_plan",
          "night_shift",
          "one_press",
          "return_loop",
          "run_out_bins",
          "slow_mill",
          "split_and_break",
          "stop_worked",
          "trucks_clock",
          "two_campaigns",
          "two_spouts",
          "yard_loss");
  static final List<String> WRONG =
      List.of(
          "attributes",
          "cleanliness",
          "cash",
          "choices",
          "doubt",
          "flow",
          "forms",
          "freight",
          "hands",
          "links",
          "market",
          "misspelt",
          "moisture",
          "orders",
          "packages",
          "planned",
          "purchase",
          "purge",
          "round",
          "season",
          "stops",
          "stores",
          "tariff",
          "tasks",
          "titles",
          "weather",
          "yard");

  private PlantFiles() {}

  /**
   * @param name below line-configs
   */
  static String text(String name) {
    try (InputStream in = PlantFiles.class.getResourceAsStream("/line-configs/" + name)) {
      if (in == null) {
        throw new IllegalArgumentException("no line-configs/" + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The same with no title in it, so that what its lines hold and where they stand goes on when
   * titles change.
   */
  static String withoutTitles(String name) {
    return text(name).replaceAll("(?m)^ +title: .*\n", "").replaceAll("\\{title: [^,]*, ", "{");
  }
}
