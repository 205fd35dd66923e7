package hurdline.command;

import hurdline.service.PlantText;
import hurdline.study.PlantChanges;
import hurdline.study.compare.WhatIfChange;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;

/** What is compared. */
final class CompareChoice {
  @CommandLine.Parameters(index = "0", paramLabel = "FILE", description = "The plant file.")
  private Path file;

  @CommandLine.Option(
      names = "--among",
      paramLabel = "A,B,A+B",
      description =
          "Which of the file's options are compared with the plant as it stands, A+B being both"
              + " together. Default: each option alone, or none where --what-if is given.")
  private String among;

  @CommandLine.Option(
      names = "--what-if",
      paramLabel = "KEY=VALUE[;...]",
      description =
          "A change that is compared with the plant as it stands and costs nothing, such as --what-if money.wage=x1.2; several with"
              + " semicolons between them are made at once. May be given several times, each one more alternative.")
  private List<String> whatIfs = new ArrayList<>();

  @CommandLine.Mixin private ChangeFlags changes;

  Path file() {
    return file;
  }

  PlantText plant() {
    return PlantText.of(file);
  }

  /** What is changed in base and options alike. */
  PlantChanges base() {
    List<String> all = changes.all();
    return new PlantChanges(
        PlantChanges.base().option(), all, all.stream().map(PlantChoice::value).toList());
  }

  /** Changes that are compared with the base. */
  List<WhatIfChange> whatIfs() {
    return whatIfs.stream().map(WhatIfReader::of).toList();
  }

  /** The options that were named; none for each of the file. */
  List<String> among() {
    if (among == null) {
      return List.of();
    }
    List<String> names = Arrays.stream(among.split(",", -1)).map(String::strip).toList();
    if (names.stream().anyMatch(CompareChoice::hasAnEmptyName)) {
      throw new CallException(
          "--among \""
              + among
              + "\" has an empty name; expected names of options such as"
              + " bigger_mill,second_bag_hand or bigger_mill+second_bag_hand");
    }
    return names;
  }

  private static boolean hasAnEmptyName(String option) {
    return Arrays.stream(option.split("\\+", -1)).anyMatch(String::isBlank);
  }
}
