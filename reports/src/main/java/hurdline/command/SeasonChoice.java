package hurdline.command;

import hurdline.service.PlantText;
import hurdline.study.PlantChanges;
import hurdline.study.season.SeasonAsk;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;

/** Which season plans are compared. */
final class SeasonChoice {
  @CommandLine.Parameters(
      index = "0..*",
      arity = "1..*",
      paramLabel = "FILE",
      description = "One plant file with plans, or several, each a plan named after its file.")
  private List<Path> files = new ArrayList<>();

  @CommandLine.Option(
      names = "--plans",
      paramLabel = "A,B",
      description =
          "Which plans of the one file are compared; base is the season as the file has it. Default:"
              + " base and all its plans.")
  private String plans;

  @CommandLine.Option(
      names = "--option",
      paramLabel = "A+B",
      description = "Every plan with these of the file's options, applied in turn.")
  private String option;

  @CommandLine.Mixin private ChangeFlags changes;

  @CommandLine.Option(
      names = "--changeovers",
      description =
          "Simulates each plan once more without each of its changeovers and reports what that would be"
              + " worth.")
  private boolean changeovers;

  List<Path> files() {
    return files;
  }

  List<PlantText> plants() {
    return files.stream().map(PlantText::of).toList();
  }

  /** What is changed under every plan alike. */
  PlantChanges chosen() {
    return PlantChoice.chosen(option, changes.all());
  }

  SeasonAsk ask() {
    return new SeasonAsk(plans(), changeovers);
  }

  /** The plans that were named; none for all of the file. */
  List<String> plans() {
    if (plans == null) {
      return List.of();
    }
    if (files.size() > 1) {
      throw new CallException(
          "--plans picks plans of one file and "
              + files.size()
              + " were given; expected one FILE, or --plans left out");
    }
    List<String> names = Arrays.stream(plans.split(",", -1)).map(String::strip).toList();
    if (names.stream().anyMatch(String::isBlank)) {
      throw new CallException(
          "--plans \""
              + plans
              + "\" has an empty name; expected names of plans such as base,late_cotton");
    }
    return names;
  }
}
