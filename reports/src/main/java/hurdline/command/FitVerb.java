package hurdline.command;

import hurdline.answer.FitAnswer;
import hurdline.chart.fit.FitCharts;
import hurdline.chart.kit.Chart;
import hurdline.page.FitPage;
import hurdline.service.FittedFigures;
import hurdline.service.PlantText;
import hurdline.table.AnswerFolder;
import hurdline.table.FitTables;
import hurdline.table.RecordFile;
import hurdline.table.Table;
import hurdline.text.FitWords;
import hurdline.text.Wording;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine;

@CommandLine.Command(
    name = "fit",
    customSynopsis = "hurdline fit FILE [RECORDS] [FLAG]...",
    description =
        "Turns a plant's own records (stops, shifts, scale tickets, what was made, rain) into figures of"
            + " its file, each with its error.",
    sortOptions = false,
    optionListHeading = "%nFlags:%n",
    parameterListHeading = "%n",
    footer = {
      "",
      "Examples:",
      "  hurdline fit my-plant.yaml",
      "        a page, tables and fitted.yaml, a patch, in a folder beside the plant file",
      "  hurdline run my-plant.yaml --patch fitted.yaml",
      "        the plant with the fitted figures",
      "  hurdline fit my-plant.yaml last-year --write my-plant-2.yaml",
      "        from another folder; a copy of the plant file with the figures in place",
      "",
      "line-configs/RECORDS.md says which files and columns are read, and how."
    })
final class FitVerb implements Callable<Integer> {
  private final CommandContext setting;

  @CommandLine.Parameters(index = "0", paramLabel = "FILE", description = "The plant file.")
  private Path file;

  @CommandLine.Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "RECORDS",
      description = "The folder of records. Default: records beside the plant file.")
  private Path records;

  @CommandLine.Option(
      names = "--write",
      paramLabel = "NEW.yaml",
      description =
          "Writes a copy of the plant file with the figures in their places; never over a file.")
  private Path write;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Where page and tables go; it must be new or empty. Default: a dated folder beside the plant file.")
  private Path out;

  @CommandLine.Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Seed of the samples with which fits are tested. Default: 1.")
  private long seed;

  @CommandLine.Mixin private OutputFlags shown;

  @CommandLine.Mixin private HelpFlag help;

  FitVerb(CommandContext setting) {
    this.setting = setting;
  }

  @Override
  public Integer call() throws IOException {
    Wording plain = shown.wording();
    if (write != null && Files.exists(write)) {
      throw new FileAlreadyExistsException(write.toString());
    }
    FitAnswer answer = setting.studies().fit(PlantText.of(file), folder(), seed);
    Wording wording = plain.reading(answer);
    AskedPlants asked = AskedPlants.of(setting.call(), List.of(file));
    String copy = write == null ? "" : FittedFigures.inPlace(file, answer);
    AnswerFolder folder =
        out == null
            ? AnswerFolder.beside(file, "fit", LocalDateTime.now())
            : AnswerFolder.named(out);
    try {
      writeFiles(folder, answer, wording, asked);
      if (write != null) {
        Files.writeString(write, copy, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
      }
    } finally {
      folder.giveBack();
    }
    tell(answer, wording, folder.path());
    return ExitCode.DONE.number();
  }

  private Path folder() {
    return records == null ? file.resolveSibling("records") : records;
  }

  private static void writeFiles(
      AnswerFolder folder, FitAnswer answer, Wording wording, AskedPlants asked)
      throws IOException {
    folder.write("fitted.yaml", writer -> writer.write(FittedFigures.patch(answer)));
    AnswerWriter.Parts parts = parts(answer, wording);
    for (Table table : parts.tables()) {
      folder.write(table.file(), table::write);
    }
    for (Chart chart : parts.charts().get()) {
      folder.write("charts/" + chart.name() + ".svg", writer -> writer.write(chart.file()));
    }
    folder.write("report.html", writer -> writer.write(parts.page().get()));
    for (Map.Entry<String, String> plant : asked.texts().entrySet()) {
      folder.write(plant.getKey(), writer -> writer.write(plant.getValue()));
    }
    folder.write("record.json", writer -> RecordFile.write(answer, writer));
  }

  static AnswerWriter.Parts parts(FitAnswer answer, Wording wording) {
    List<Chart> charts = FitCharts.all(answer, wording);
    return new AnswerWriter.Parts(
        new FitTables(answer).all(),
        () -> charts,
        () -> FitPage.html(answer, wording, charts),
        width -> new FitWords(answer, wording).lines(width));
  }

  private void tell(FitAnswer answer, Wording wording, Path folder) throws IOException {
    new AnswerPrinter(setting, shown)
        .tell(answer, new FitWords(answer, wording).lines(setting.columns()));
    if (!shown.quiet()) {
      PrintWriter words = shown.json() ? setting.err() : setting.out();
      words.println();
      words.println("Patch:  " + folder.resolve("fitted.yaml"));
      if (Files.exists(folder.resolve("draws.csv"))) {
        words.println("Draws:  " + folder.resolve("draws.csv"));
      }
      words.println("Report: " + folder.resolve("report.html"));
      if (write != null) {
        words.println("Plant file with these figures: " + write);
      }
    }
  }
}
