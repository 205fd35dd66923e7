package hurdline.command;

import hurdline.answer.CompareAnswer;
import hurdline.chart.CompareFigures;
import hurdline.page.ReportPage;
import hurdline.study.CompareAsk;
import hurdline.study.Effort;
import hurdline.table.CompareTables;
import hurdline.words.CompareWords;
import hurdline.words.Wording;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;

@CommandLine.Command(
    name = "compare",
    customSynopsis = "hurdline compare FILE [FLAG]...",
    description =
        "Simulates the plant with and without its options on the same random draws and says what differs, how"
            + " sure that is, what limits the line then, and whether it pays.",
    sortOptions = false,
    optionListHeading = "%nFlags:%n",
    parameterListHeading = "%n",
    footer = {
      "",
      "Ctrl-C ends a comparison early; what is done by then is kept and reported.",
      "",
      "Examples:",
      "  hurdline compare my-plant.yaml",
      "        each option of the file alone against the plant as it stands",
      "  hurdline compare my-plant.yaml --among bigger_mill,bigger_mill+second_bag_hand",
      "        two of them, the second being both together",
      "  hurdline compare my-plant.yaml --replications 200 --seed 7",
      "        closer intervals, other random draws"
    })
final class CompareVerb implements Callable<Integer> {
  private final Setting setting;

  @CommandLine.Mixin private CompareChoice choice;
  @CommandLine.Mixin private AskFlags asked;
  @CommandLine.Mixin private EffortFlags flags;
  @CommandLine.Mixin private VaryFlags vary;
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
    if (vary.isGiven()) {
      return varied(effort);
    }
    Reporting reporting = new Reporting(setting, shown);
    return reporting.play(
        choice.file(),
        out,
        setting.studies().compare(choice.plant(), choice.base(), asked.ask(choice.among()), effort),
        CompareVerb::parts);
  }

  private int varied(Effort effort) throws IOException {
    vary.refuseAim(effort);
    CompareAsk ask = asked.ask(choice.among());
    vary.refuse("--gain", ask.gain());
    vary.refuse("--within", ask.withinYr().isPresent());
    vary.refuse("--service-lives", ask.lives().isPresent());
    vary.refuse("--best", ask.best().isPresent());
    vary.refuse("--tornado", ask.tornado().isPresent());
    vary.refuse("--break-even", !ask.breakEven().isEmpty());
    return new Gridded(setting, shown, effort)
        .play(
            choice.file(),
            out,
            setting.studies().grid(choice.plant(), choice.base(), ask, vary.keys(), effort));
  }

  static Reporting.Parts parts(CompareAnswer answer, Wording wording) {
    CompareFigures figures = new CompareFigures(answer, wording);
    return new Reporting.Parts(
        new CompareTables(answer).all(),
        figures::all,
        () -> ReportPage.html(answer, wording, figures),
        width -> new CompareWords(answer, wording).lines(width));
  }
}
