package hurdline.command;

import java.nio.file.Path;
import picocli.CommandLine;

/** Where an answer goes. */
final class FolderFlag {
  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Folder for the answer; it must be new or empty. Default: a dated one beside FILE.")
  private Path out;

  /** The folder that was named; null for a dated one. */
  Path out() {
    return out;
  }
}
