package hurdline.command;

import hurdline.answer.SeasonAnswer;
import hurdline.chart.season.PlanCharts;
import hurdline.page.ReportPage;
import hurdline.study.replicate.RunSettings;
import hurdline.table.SeasonTables;
import hurdline.text.SeasonWords;
import hurdline.text.Wording;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;

@CommandLine.Command(
    name = "season",
    customSynopsis = "hurdline season FILE... [FLAG]...",
    description =
        "Simulates a plant that cotton and stalks share under several season plans on the same random draws and"
            + " says how full the building is, what each plan earns and which finishes its crops.",
    sortOptions = false,
    optionListHeading = "%nFlags:%n",
    parameterListHeading = "%n",
    footer = {
      "",
      "Ctrl-C ends a comparison early; what is done by then is kept and reported.",
      "",
      "Examples:",
      "  hurdline season my-plant.yaml",
      "        the season as the file has it against all its plans",
      "  hurdline season my-plant.yaml --plans base,two_shifts",
      "        only these two",
      "  hurdline season early.yaml late.yaml",
      "        two files, each a plan of its own",
      "  hurdline season my-plant.yaml --vary season.1.changeover=2d..10d..2d",
      "        how long may the changeover take?"
    })
final class SeasonVerb implements Callable<Integer> {
  private final CommandContext setting;

  @CommandLine.Mixin private SeasonChoice choice;
  @CommandLine.Mixin private EffortFlags flags;
  @CommandLine.Mixin private VaryFlags vary;
  @CommandLine.Mixin private OutputFlags shown;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Folder for the answer; it must be new or empty. Default: a dated one beside the first FILE.")
  private Path out;

  @CommandLine.Mixin private HelpFlag help;

  SeasonVerb(CommandContext setting) {
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
        choice.files(),
        out,
        setting.studies().season(choice.plants(), choice.ask(), choice.chosen(), effort),
        SeasonVerb::parts);
  }

  private int varied(RunSettings effort) throws IOException {
    vary.refuseAim(effort);
    return new GridCommand(setting, shown, effort)
        .simulate(
            choice.files(),
            out,
            setting
                .studies()
                .grid(choice.plants(), choice.plans(), choice.chosen(), vary.keys(), effort));
  }

  static AnswerWriter.Parts parts(SeasonAnswer answer, Wording wording) {
    PlanCharts figures = new PlanCharts(answer, wording);
    return new AnswerWriter.Parts(
        new SeasonTables(answer).all(),
        figures::all,
        () -> ReportPage.html(answer, wording, figures),
        width -> new SeasonWords(answer, wording).lines(width));
  }
}
