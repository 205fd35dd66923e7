package hurdline.command;

import hurdline.service.FittedFigures;
import hurdline.service.Template;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine;

@CommandLine.Command(
    name = "new",
    customSynopsis = "hurdline new DIR [FLAG]...",
    description = "Writes a commented plant file to start from, or empty files for your records.",
    sortOptions = false,
    optionListHeading = "%nFlags:%n",
    parameterListHeading = "%n",
    footer = {
      "",
      "Examples:",
      "  hurdline new my-plant",
      "        writes my-plant/small.yaml, which runs at once",
      "  hurdline new my-plant --template shared",
      "        a gin that works cotton and stalks in turn, with options to compare",
      "  hurdline new my-plant --records",
      "        empty files for what you record, in my-plant/records; hurdline fit reads them"
    })
final class NewVerb implements Callable<Integer> {
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
      converter = Templates.class,
      description =
          "small: one short line with a mill. shared: stalks and seed cotton in turn through one"
              + " gin building. stalk: a year of stalks with fields, trucks and two shifts."
              + " Default: small.")
  private Template template;

  @CommandLine.Option(
      names = "--records",
      description =
          "Writes no plant file but empty files of records with their heads into DIR/records.")
  private boolean records;

  @CommandLine.Mixin private HelpFlag help;

  NewVerb(CommandContext setting) {
    this.setting = setting;
  }

  @Override
  public Integer call() throws IOException {
    return records ? writeRecords() : writePlant();
  }

  /** Looks at all names first, so that it writes all files or none. */
  private int writeRecords() throws IOException {
    Path inside = folder.resolve("records");
    Map<String, String> files = FittedFigures.emptyRecords();
    for (String name : files.keySet()) {
      if (Files.exists(inside.resolve(name))) {
        throw new FileAlreadyExistsException(inside.resolve(name).toString());
      }
    }
    Files.createDirectories(inside);
    for (Map.Entry<String, String> file : files.entrySet()) {
      Files.writeString(
          inside.resolve(file.getKey()), file.getValue(), StandardOpenOption.CREATE_NEW);
    }
    setting
        .out()
        .println(
            "Wrote "
                + files.size()
                + " files into "
                + inside
                + ". Fill those you have records for, then: hurdline fit PLANT.yaml "
                + ShellWord.of(inside));
    return ExitCode.DONE.number();
  }

  private int writePlant() throws IOException {
    Path target = folder.resolve(template.file());
    Files.createDirectories(folder);
    write(template.text(), target);
    setting
        .out()
        .println(
            "Wrote "
                + target
                + ". Edit it with any text editor, then: hurdline check "
                + ShellWord.of(target));
    return ExitCode.DONE.number();
  }

  /** Leaves no half of a file behind, over which the next call would not write. */
  private static void write(String text, Path target) throws IOException {
    Files.createFile(target);
    try {
      Files.writeString(target, text);
    } catch (IOException fault) {
      Files.deleteIfExists(target);
      throw fault;
    }
  }

  /** A template as it is spelled in a call. */
  private static final class Templates implements CommandLine.ITypeConverter<Template> {
    @Override
    public Template convert(String text) {
      return Stream.of(Template.values())
          .filter(template -> template.name().equalsIgnoreCase(text))
          .findFirst()
          .orElseThrow(
              () ->
                  new CallException(
                      "\"" + text + "\" is no template; expected small, shared or stalk"));
    }
  }
}
