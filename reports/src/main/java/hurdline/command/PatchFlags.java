package hurdline.command;

import hurdline.service.FittedFigures;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;

/** Values that come from a file. */
final class PatchFlags {
  @CommandLine.Option(
      names = "--patch",
      paramLabel = "FILE",
      description =
          "Every value of a patch such as fitted.yaml of hurdline fit, as with --set; before those of"
              + " --set.")
  private List<Path> patches = new ArrayList<>();

  /** Their values as {@code KEY=VALUE}, then those of {@code --set}. */
  List<String> before(List<String> sets) {
    List<String> all = new ArrayList<>();
    patches.forEach(patch -> all.addAll(FittedFigures.ofPatch(patch)));
    all.addAll(sets);
    return all;
  }
}
