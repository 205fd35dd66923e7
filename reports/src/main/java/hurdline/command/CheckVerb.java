package hurdline.command;

import hurdline.answer.CheckAnswer;
import hurdline.page.ReportPage;
import hurdline.problem.LocatedProblem;
import hurdline.table.AnswerFolder;
import hurdline.table.RecordFile;
import hurdline.text.CheckWords;
import hurdline.text.OrderWords;
import hurdline.text.Wording;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine;

@CommandLine.Command(
    name = "check",
    customSynopsis = "hurdline check FILE [FLAG]...",
    description =
        "Says whether the plant file is right, and rated and expected capacity of each line, without"
            + " simulating it.",
    sortOptions = false,
    optionListHeading = "%nFlags:%n",
    parameterListHeading = "%n",
    footer = {
      "",
      "Examples:",
      "  hurdline check my-plant.yaml",
      "        all that is wrong at once; else rated and expected capacity",
      "  hurdline check my-plant.yaml --option bigger_mill --units metric",
      "        the same with an option of the file, in tonnes",
      "  hurdline check my-plant.yaml --set machines.mill.power=\"50 hp\"",
      "        what would limit the line with another motor?"
    })
final class CheckVerb implements Callable<Integer> {
  private final CommandContext setting;

  @CommandLine.Mixin private PlantChoice plant;
  @CommandLine.Mixin private OutputFlags shown;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Writes the page and the record into this folder too; it must be new or empty.")
  private Path out;

  @CommandLine.Mixin private HelpFlag help;

  CheckVerb(CommandContext setting) {
    this.setting = setting;
  }

  @Override
  public Integer call() throws IOException {
    Wording plain = shown.wording();
    CheckAnswer answer = setting.studies().onPaper(plant.plant(), plant.chosen());
    Wording wording = plain.reading(answer);
    Optional<AnswerFolder> folder =
        out == null ? Optional.empty() : Optional.of(AnswerFolder.named(out));
    if (shown.json()) {
      RecordFile.write(answer, setting.out());
    }
    if (!shown.quiet()) {
      new CheckWords(answer, wording)
          .lines(setting.columns()).stream()
              .flatMap(line -> LineWrapper.broken(line, setting.columns()).stream())
              .forEach(shown.json() ? setting.err()::println : setting.out()::println);
    }
    Stream.concat(
            answer.warnings().stream().map(LocatedProblem::text),
            new OrderWords(answer.capacity(), wording).warnings().stream())
        .forEach(warning -> setting.err().println("warning: " + warning));
    if (folder.isPresent()) {
      folder.get().write("report.html", writer -> writer.write(ReportPage.html(answer, wording)));
      folder.get().write("record.json", writer -> RecordFile.write(answer, writer));
    }
    return ExitCode.DONE.number();
  }
}
