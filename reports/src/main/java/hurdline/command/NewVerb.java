package hurdline.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;

@CommandLine.Command(
    name = "new",
    customSynopsis = "hurdline new DIR [FLAG]...",
    description = "Writes a commented plant file to start from.",
    sortOptions = false,
    optionListHeading = "%nFlags:%n",
    parameterListHeading = "%n",
    footer = {
      "",
      "Examples:",
      "  hurdline new my-plant",
      "        writes my-plant/small.yaml, which runs at once",
      "  hurdline new my-plant --template shared",
      "        a gin that works cotton and stalks in turn, with options to compare"
    })
final class NewVerb implements Callable<Integer> {
  /** The plants to start from. */
  enum Shape {
    SMALL("small.yaml"),
    SHARED("sweetgum-bend.yaml"),
    STALK("stalk.yaml");

    private final String file;

    Shape(String file) {
      this.file = file;
    }
  }

  private final Setting setting;

  @CommandLine.Parameters(
      index = "0",
      paramLabel = "DIR",
      description = "The folder to write it into; made if need be.")
  private Path folder;

  @CommandLine.Option(
      names = "--template",
      paramLabel = "small|shared|stalk",
      defaultValue = "small",
      description =
          "small: one short line with a mill. shared: stalks and seed cotton in turn through one"
              + " gin building. stalk: a year of stalks with fields, trucks and two shifts."
              + " Default: small.")
  private Shape shape;

  @CommandLine.Option(names = "--help", usageHelp = true, description = "Shows this page.")
  private boolean help;

  NewVerb(Setting setting) {
    this.setting = setting;
  }

  @Override
  public Integer call() throws IOException {
    Path target = folder.resolve(shape.file);
    Files.createDirectories(folder);
    try (InputStream in = NewVerb.class.getResourceAsStream("/line-configs/" + shape.file)) {
      if (in == null) {
        throw new IllegalStateException(
            "the plant file " + shape.file + " is not packed with the program");
      }
      Files.copy(in, target);
    }
    setting
        .out()
        .println(
            "Wrote " + target + ". Edit it with any text editor, then: hurdline check " + target);
    return ExitCode.DONE.number();
  }
}
