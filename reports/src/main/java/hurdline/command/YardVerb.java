package hurdline.command;

import hurdline.answer.YardAnswer;
import hurdline.chart.yard.YardCharts;
import hurdline.page.ReportPage;
import hurdline.study.replicate.RunSettings;
import hurdline.table.YardTables;
import hurdline.text.Wording;
import hurdline.text.YardWords;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine;

@CommandLine.Command(
    name = "yard",
    customSynopsis = "hurdline yard FILE [FLAG]...",
    description =
        "Sizes the bale yard of a crop: how many bales and how much ground, how often each size"
            + " overflows, and what it keeps at the field, loses and costs.",
    sortOptions = false,
    optionListHeading = "%nFlags:%n",
    parameterListHeading = "%n",
    footer = {
      "",
      "Ctrl-C ends it early; what is done by then is kept and reported.",
      "",
      "Examples:",
      "  hurdline yard my-plant.yaml",
      "        how big must the yard be, to overflow in at most a season in 20?",
      "  hurdline yard my-plant.yaml --overflow 10%% --replications 100",
      "        at most one in ten, and closer intervals",
      "  hurdline yard my-plant.yaml --until yard.stalk.peak:2%%",
      "        until the mean peak without limit is known to 2 %%"
    })
final class YardVerb implements Callable<Integer> {
  private final CommandContext setting;

  @CommandLine.Mixin private PlantChoice choice;
  @CommandLine.Mixin private YardFlags yard;
  @CommandLine.Mixin private EffortFlags flags;
  @CommandLine.Mixin private VaryFlags vary;
  @CommandLine.Mixin private OutputFlags shown;

  @CommandLine.Mixin private FolderFlag folder;

  @CommandLine.Mixin private HelpFlag help;

  YardVerb(CommandContext setting) {
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
        setting.studies().yard(choice.plant(), choice.chosen(), effort, yard.ask()),
        YardVerb::parts);
  }

  private int varied(RunSettings effort) throws IOException {
    vary.refuseAim(effort);
    vary.refuse("--overflow", yard.isOverflowGiven());
    vary.refuse("--acres", yard.ask().acres().isPresent());
    vary.refuse("--gain", yard.ask().gain());
    return new GridCommand(setting, shown, effort)
        .simulate(
            choice.file(),
            folder.out(),
            setting
                .studies()
                .grid(choice.plant(), choice.chosen(), yard.ask(), vary.keys(), effort));
  }

  static AnswerWriter.Parts parts(YardAnswer answer, Wording wording) {
    YardCharts figures = new YardCharts(answer, wording);
    return new AnswerWriter.Parts(
        new YardTables(answer).all(),
        figures::all,
        () -> ReportPage.html(answer, wording, figures),
        width -> new YardWords(answer, wording).lines(width));
  }
}
