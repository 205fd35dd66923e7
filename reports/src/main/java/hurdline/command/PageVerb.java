package hurdline.command;

import hurdline.answer.Answer;
import hurdline.answer.BacktestAnswer;
import hurdline.answer.CheckAnswer;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.FitAnswer;
import hurdline.answer.GridAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.page.ReportPage;
import hurdline.table.AnswerFolder;
import hurdline.table.RecordFile;
import hurdline.text.CheckWords;
import hurdline.text.Wording;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;

@CommandLine.Command(
    name = "page",
    customSynopsis = "hurdline page RECORD [FLAG]...",
    description =
        "Makes the page and the charts of an answer again, in other units or with other marks,"
            + " without simulating anything.",
    sortOptions = false,
    optionListHeading = "%nFlags:%n",
    parameterListHeading = "%n",
    footer = {
      "",
      "Tables are the same in all units; they stay where they are.",
      "",
      "Examples:",
      "  hurdline page my-answer/record.json --units metric --locale de",
      "        for a reader in Germany",
      "  hurdline page my-answer/record.json --units us --locale en-US --out for-lender",
      "        into a folder of that name"
    })
final class PageVerb implements Callable<Integer> {
  private final CommandContext setting;

  @CommandLine.Parameters(paramLabel = "RECORD", description = "The record.json of an answer.")
  private Path record;

  @CommandLine.Mixin private ReadersFlags reader;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Folder for page and charts; it must be new or empty. Default: a dated one beside"
              + " RECORD.")
  private Path out;

  @CommandLine.Mixin private HelpFlag help;

  PageVerb(CommandContext setting) {
    this.setting = setting;
  }

  @Override
  public Integer call() throws IOException {
    Wording wording = reader.wording(setting.locale());
    Answer answer = answer();
    AnswerFolder folder =
        out == null
            ? AnswerFolder.beside(record, "page", LocalDateTime.now())
            : AnswerFolder.named(out);
    try (ChartThread drawing = ChartThread.begin()) {
      new AnswerFiles(folder, drawing, AskedPlants.none())
          .writePage(parts(answer, wording.reading(answer)));
    } finally {
      folder.giveBack();
    }
    setting.out().println("Report: " + folder.path().resolve("report.html"));
    return ExitCode.DONE.number();
  }

  private Answer answer() throws IOException {
    if (!Files.isRegularFile(record)) {
      String what = Files.isDirectory(record) ? "is a folder" : "is not there";
      throw new CallException(record + " " + what + "; expected the record.json of an answer");
    }
    try (Reader in = Files.newBufferedReader(record, StandardCharsets.UTF_8)) {
      return RecordFile.read(record.toString(), in);
    }
  }

  private static AnswerWriter.Parts parts(Answer answer, Wording wording) {
    if (answer instanceof RunAnswer run) {
      return RunVerb.parts(run, wording);
    }
    if (answer instanceof CompareAnswer compare) {
      return CompareVerb.parts(compare, wording);
    }
    if (answer instanceof SeasonAnswer season) {
      return SeasonVerb.parts(season, wording);
    }
    if (answer instanceof YardAnswer yard) {
      return YardVerb.parts(yard, wording);
    }
    if (answer instanceof FitAnswer fit) {
      return FitVerb.parts(fit, wording);
    }
    if (answer instanceof BacktestAnswer season) {
      return BacktestVerb.parts(season, wording);
    }
    if (answer instanceof GridAnswer grid) {
      return GridCommand.parts(grid, wording);
    }
    if (answer instanceof ChooseAnswer choose) {
      return ChooseVerb.parts(choose, wording);
    }
    CheckAnswer paper = (CheckAnswer) answer;
    return new AnswerWriter.Parts(
        List.of(),
        List::of,
        () -> ReportPage.html(paper, wording),
        width -> new CheckWords(paper, wording).lines(width));
  }
}
