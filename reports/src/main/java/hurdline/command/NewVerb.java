package hurdline.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
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

  private final CommandContext setting;

  @CommandLine.Parameters(
      index = "0",
      paramLabel = "DIR",
      description = "The folder to write it into; made if need be.")
  private Path folder;

  @CommandLine.Option(
      names = "--template",
      paramLabel = "small|shared|stalk",
      defaultValue = "small",
      converter = Shapes.class,
      description =
          "small: one short line with a mill. shared: stalks and seed cotton in turn through one"
              + " gin building. stalk: a year of stalks with fields, trucks and two shifts."
              + " Default: small.")
  private Shape shape;

  @CommandLine.Option(names = "--help", usageHelp = true, description = "Shows this page.")
  private boolean help;

  NewVerb(CommandContext setting) {
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
      copy(in, target);
    }
    setting
        .out()
        .println(
            "Wrote " + target + ". Edit it with any text editor, then: hurdline check " + target);
    return ExitCode.DONE.number();
  }

  /** Leaves no half of a file behind, over which the next call would not write. */
  private static void copy(InputStream in, Path target) throws IOException {
    Files.createFile(target);
    try {
      Files.copy(in, target, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException fault) {
      Files.deleteIfExists(target);
      throw fault;
    }
  }

  /** A template as it is spelled in a call. */
  private static final class Shapes implements CommandLine.ITypeConverter<Shape> {
    @Override
    public Shape convert(String text) {
      return Stream.of(Shape.values())
          .filter(shape -> shape.name().equalsIgnoreCase(text))
          .findFirst()
          .orElseThrow(
              () ->
                  new CallException(
                      "\"" + text + "\" is no template; expected small, shared or stalk"));
    }
  }
}
