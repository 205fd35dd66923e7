package hurdline.command;

import hurdline.service.FittedFigures;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;

/** Keys that are changed for one call, one at a time or from a file. */
final class ChangeFlags {
  @CommandLine.Option(
      names = "--set",
      paramLabel = "KEY=VALUE",
      description =
          "One key changed in every plant of the call, such as --set machines.mill.power=\"50 hp\","
              + " x1.2 to scale what the file says, or +30d to move its date. May be given several"
              + " times.")
  private List<String> sets = new ArrayList<>();

  @CommandLine.Option(
      names = "--patch",
      paramLabel = "FILE",
      description =
          "Every value of a patch such as fitted.yaml of hurdline fit, as with --set; before those of"
              + " --set.")
  private List<Path> patches = new ArrayList<>();

  /** Those of patches as {@code KEY=VALUE}, then those of {@code --set}. */
  List<String> all() {
    List<String> all = new ArrayList<>();
    patches.forEach(patch -> all.addAll(FittedFigures.ofPatch(patch)));
    all.addAll(sets);
    return all;
  }
}
