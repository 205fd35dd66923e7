package hurdline.command;

import hurdline.plant.Change;
import hurdline.service.PlantText;
import hurdline.study.PlantChanges;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;

/** Which plant: the file, its options and single changes. */
final class PlantChoice {
  @CommandLine.Parameters(index = "0", paramLabel = "FILE", description = "The plant file.")
  private Path file;

  @CommandLine.Option(
      names = "--option",
      paramLabel = "A+B",
      description = "The plant with these of its options, applied in turn.")
  private String option;

  @CommandLine.Mixin private ChangeFlags changes;

  Path file() {
    return file;
  }

  PlantText plant() {
    return PlantText.of(file);
  }

  /** What is changed in the plant. */
  PlantChanges chosen() {
    return chosen(option, changes.all());
  }

  /** Options first, then single changes. */
  static PlantChanges chosen(String option, List<String> sets) {
    List<Change> changes = new ArrayList<>();
    if (option != null) {
      Arrays.stream(option.split("\\+", -1)).forEach(name -> changes.add(named(name, option)));
    }
    sets.forEach(set -> changes.add(value(set)));
    return new PlantChanges(option == null ? PlantChanges.base().option() : option, sets, changes);
  }

  private static Change named(String name, String option) {
    if (name.isBlank()) {
      throw new CallException(
          "--option \""
              + option
              + "\" has an empty name; expected names of options such as bigger_mill or"
              + " bigger_mill+second_bag_hand");
    }
    return new Change.Named(name.strip());
  }

  static Change value(String set) {
    int equals = set.indexOf('=');
    if (equals <= 0) {
      throw new CallException(
          "--set \""
              + set
              + "\" is no change; expected KEY=VALUE such as machines.mill.power=\"50 hp\"");
    }
    return new Change.Value(set.substring(0, equals).strip(), set.substring(equals + 1).strip());
  }
}
