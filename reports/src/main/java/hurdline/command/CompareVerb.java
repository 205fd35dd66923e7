package hurdline.command;

import hurdline.answer.CompareAnswer;
import hurdline.chart.compare.CompareCharts;
import hurdline.page.ReportPage;
import hurdline.study.compare.CompareAsk;
import hurdline.study.replicate.RunSettings;
import hurdline.table.CompareTables;
import hurdline.text.CompareWords;
import hurdline.text.Wording;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine;

@CommandLine.Command(
    name = "compare",
    customSynopsis = "hurdline compare FILE [FLAG]...",
    description =
        "Simulates the plant with and without its options, or with changes that you type, on the same random draws and"
            + " says what differs, how sure that is, what limits the line then, and whether an option pays.",
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
      "  hurdline compare my-plant.yaml --what-if money.wage=x1.2 --what-if 'deliveries.*.fields.*.ready=+30d'",
      "        two what-ifs: wages a fifth higher; all fields a month later",
      "  hurdline compare my-plant.yaml --replications 200 --seed 7",
      "        closer intervals, other random draws"
    })
final class CompareVerb implements Callable<Integer> {
  private final CommandContext setting;

  @CommandLine.Mixin private CompareChoice choice;
  @CommandLine.Mixin private AskFlags asked;
  @CommandLine.Mixin private EffortFlags flags;
  @CommandLine.Mixin private VaryFlags vary;
  @CommandLine.Mixin private OutputFlags shown;

  @CommandLine.Mixin private FolderFlag folder;

  @CommandLine.Mixin private HelpFlag help;

  CompareVerb(CommandContext setting) {
    this.setting = setting;
  }

  @Override
  public Integer call() throws IOException {
    RunSettings effort = flags.effort();
    if (vary.isGiven()) {
      return varied(effort);
    }
    AnswerWriter reporting = new AnswerWriter(setting, shown);
    return reporting.simulate(
        choice.file(),
        folder.out(),
        setting
            .studies()
            .compare(
                choice.plant(), choice.base(), asked.ask(choice.among(), choice.whatIfs()), effort),
        CompareVerb::parts);
  }

  private int varied(RunSettings effort) throws IOException {
    vary.refuseAim(effort);
    CompareAsk ask = asked.ask(choice.among(), choice.whatIfs());
    vary.refuse("--gain", ask.gain());
    vary.refuse("--within", ask.withinYr().isPresent());
    vary.refuse("--service-lives", ask.lives().isPresent());
    vary.refuse("--best", ask.best().isPresent());
    vary.refuse("--tornado", ask.tornado().isPresent());
    vary.refuse("--break-even", !ask.breakEven().isEmpty());
    return new GridCommand(setting, shown, effort)
        .simulate(
            choice.file(),
            folder.out(),
            setting.studies().grid(choice.plant(), choice.base(), ask, vary.keys(), effort));
  }

  static AnswerWriter.Parts parts(CompareAnswer answer, Wording wording) {
    CompareCharts figures = new CompareCharts(answer, wording);
    return new AnswerWriter.Parts(
        new CompareTables(answer).all(),
        figures::all,
        () -> ReportPage.html(answer, wording, figures),
        width -> new CompareWords(answer, wording).lines(width));
  }
}
