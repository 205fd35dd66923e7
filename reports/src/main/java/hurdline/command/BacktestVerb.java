package hurdline.command;

import hurdline.answer.BacktestAnswer;
import hurdline.chart.fit.SeasonCharts;
import hurdline.chart.kit.Chart;
import hurdline.page.ReportPage;
import hurdline.study.backtest.Backtest;
import hurdline.study.replicate.RunSettings;
import hurdline.table.BacktestTables;
import hurdline.text.BacktestWords;
import hurdline.text.Wording;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;

@CommandLine.Command(
    name = "backtest",
    customSynopsis = "hurdline backtest FILE [RECORDS] [FLAG]...",
    description =
        "Simulates a season that has been and says where its records differ from the model by more than chance.",
    sortOptions = false,
    optionListHeading = "%nFlags:%n",
    parameterListHeading = "%n",
    footer = {
      "",
      "Examples:",
      "  hurdline backtest my-plant.yaml last-year",
      "        what was fed, made, stopped and drawn last year beside 199 replications",
      "  hurdline backtest my-plant.yaml last-year --patch fitted.yaml --draws draws.csv",
      "        with figures of the year before, and how well they are known",
      "",
      "line-configs/RECORDS.md says which files and columns are read, and how."
    })
final class BacktestVerb implements Callable<Integer> {
  private final CommandContext setting;

  @CommandLine.Mixin private PlantChoice plant;

  @CommandLine.Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "RECORDS",
      description = "The folder of records. Default: records beside the plant file.")
  private Path records;

  @CommandLine.Option(
      names = "--replications",
      paramLabel = "N",
      defaultValue = "199",
      description = "How many times the season is simulated, 99 or more. Default: 199.")
  private int replications;

  @CommandLine.Mixin private DrawFlags draws;
  @CommandLine.Mixin private OutputFlags shown;

  @CommandLine.Mixin private FolderFlag folder;

  @CommandLine.Mixin private HelpFlag help;

  BacktestVerb(CommandContext setting) {
    this.setting = setting;
  }

  @Override
  public Integer call() throws IOException {
    Path season = records == null ? plant.file().resolveSibling("records") : records;
    return new AnswerWriter(setting, shown)
        .simulate(
            plant.file(),
            folder.out(),
            setting.studies().backtest(plant.plant(), plant.chosen(), season, effort()),
            BacktestVerb::parts);
  }

  private RunSettings effort() {
    if (!(replications >= Backtest.fewest())) {
      throw new CallException(
          "--replications "
              + replications
              + " is too few; expected a whole number from "
              + Backtest.fewest()
              + " on, for fewer cannot show a chance of 5 %");
    }
    return draws.effort(replications);
  }

  static AnswerWriter.Parts parts(BacktestAnswer answer, Wording wording) {
    List<Chart> charts = SeasonCharts.all(answer, wording);
    return new AnswerWriter.Parts(
        new BacktestTables(answer).all(),
        () -> charts,
        () -> ReportPage.html(answer, wording, charts),
        width -> new BacktestWords(answer, wording).lines(width));
  }
}
