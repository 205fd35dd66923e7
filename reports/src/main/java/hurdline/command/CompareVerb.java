package hurdline.command;

import hurdline.answer.CompareAnswer;
import hurdline.answer.Header;
import hurdline.chart.CompareFigures;
import hurdline.chart.Figure;
import hurdline.page.ReportPage;
import hurdline.study.Effort;
import hurdline.table.AnswerFolder;
import hurdline.table.CompareTables;
import hurdline.table.RecordFile;
import hurdline.table.Table;
import hurdline.words.CompareWords;
import hurdline.words.Wording;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;

@CommandLine.Command(
    name = "compare",
    customSynopsis = "hurdline compare FILE [OPTION]...",
    description =
        "Plays the plant with and without its options on the same chance and says what differs, how"
            + " sure that is, what holds the line then, and whether it pays.",
    sortOptions = false,
    optionListHeading = "%nOptions:%n",
    parameterListHeading = "%n",
    footer = {
      "",
      "Ctrl-C ends a comparison early; what is done by then is kept and reported.",
      "Example: hurdline compare sweetgum-bend.yaml --among bigger_mill,second_bag_hand"
    })
final class CompareVerb implements Callable<Integer> {
  private final Setting setting;

  @CommandLine.Mixin private CompareFlags flags;
  @CommandLine.Mixin private Shown shown;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Folder for the answer; it must be new or empty. Default: a dated one beside FILE.")
  private Path out;

  @CommandLine.Option(names = "--help", usageHelp = true, description = "Shows this page.")
  private boolean help;

  CompareVerb(Setting setting) {
    this.setting = setting;
  }

  @Override
  public Integer call() throws IOException {
    Effort effort = flags.effort();
    Wording wording = shown.wording();
    Studies.Comparing compare =
        setting.studies().compare(flags.file(), flags.base(), flags.among(), effort);
    AnswerFolder folder =
        out == null
            ? AnswerFolder.beside(flags.file(), LocalDateTime.now())
            : AnswerFolder.named(out);
    try {
      return report(play(compare), folder, wording);
    } finally {
      folder.giveBack();
    }
  }

  private Optional<CompareAnswer> play(Studies.Comparing compare) {
    try (StopRequest stop =
            new StopRequest(
                () ->
                    setting
                        .err()
                        .println("Stopping; what is done is kept. Ctrl-C again ends at once."));
        Progress progress = Progress.on(setting, !shown.quiet(), compare.plays())) {
      return compare.play(progress::done, stop::isAsked);
    }
  }

  private int report(Optional<CompareAnswer> found, AnswerFolder folder, Wording wording)
      throws IOException {
    if (found.isEmpty()) {
      setting.err().println("Stopped before the first replication was done; nothing is written.");
      return ExitCode.STOPPED.number();
    }
    CompareAnswer answer = found.get();
    write(answer, folder, wording);
    tell(answer, folder.path(), wording);
    return (answer.header().stopped() ? ExitCode.STOPPED : ExitCode.DONE).number();
  }

  /** The record last, so that a folder with a record is whole. */
  private static void write(CompareAnswer answer, AnswerFolder folder, Wording wording)
      throws IOException {
    for (Table table : new CompareTables(answer).all()) {
      folder.write(table.file(), table::write);
    }
    for (Figure figure : new CompareFigures(answer, wording).all()) {
      folder.write("charts/" + figure.name() + ".svg", file -> file.write(figure.file()));
    }
    folder.write("report.html", file -> file.write(ReportPage.html(answer, wording)));
    folder.write("record.json", file -> RecordFile.write(answer, file));
  }

  private void tell(CompareAnswer answer, Path folder, Wording wording) throws IOException {
    PrintWriter words = shown.json() ? setting.err() : setting.out();
    answer.warnings().forEach(warning -> setting.err().println("warning: " + warning));
    if (shown.json()) {
      RecordFile.write(answer, setting.out());
    }
    if (!shown.quiet()) {
      new CompareWords(answer, wording).lines().forEach(words::println);
      words.println("Report: " + folder.resolve("report.html"));
    }
    Header header = answer.header();
    if (header.stopped()) {
      setting
          .err()
          .println(
              "Stopped: "
                  + header.replications()
                  + " of "
                  + header.replicationsAsked()
                  + " replications are done; they are saved in "
                  + folder
                  + ".");
    }
  }
}
