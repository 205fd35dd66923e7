package hurdline.command;

import hurdline.answer.RunAnswer;
import hurdline.chart.run.RunCharts;
import hurdline.page.ReportPage;
import hurdline.study.replicate.RunSettings;
import hurdline.table.RunTables;
import hurdline.text.RunWords;
import hurdline.text.Wording;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;

@CommandLine.Command(
    name = "run",
    customSynopsis = "hurdline run FILE [FLAG]...",
    description =
        "Simulates the plant's calendar and reports what came out and what limited each line.",
    sortOptions = false,
    optionListHeading = "%nFlags:%n",
    parameterListHeading = "%n",
    footer = {
      "",
      "Ctrl-C ends a run early; what is done by then is kept and reported.",
      "",
      "Examples:",
      "  hurdline run my-plant.yaml",
      "        40 replications, seed 1; the answer in words, and a report",
      "  hurdline run my-plant.yaml --option bigger_mill --out with-mill",
      "        with an option of the file, the answer into a folder of that name",
      "  hurdline run my-plant.yaml --until money.margin:2%%",
      "        as many replications as the margin needs to be known to 2 %%",
      "  hurdline run my-plant.yaml --vary machines.mill.power=x0.5..x3..x0.5",
      "        the same plant over a grid of mills",
      "  hurdline run my-plant.yaml --as-of 2027-08-01",
      "        the rest of a season, and whether a second shift is needed",
      "  hurdline run my-plant.yaml --trace 2027-07-06..2027-07-07 --replication 3",
      "        two days of the third replication, drawn and event by event",
      "  hurdline run my-plant.yaml --json --quiet > answer.json",
      "        for scripts: the answer as JSON and nothing else"
    })
final class RunVerb implements Callable<Integer> {
  private final CommandContext setting;

  @CommandLine.Mixin private PlantChoice plant;
  @CommandLine.Mixin private EffortFlags flags;
  @CommandLine.Mixin private TraceFlags traced;
  @CommandLine.Mixin private VaryFlags vary;
  @CommandLine.Mixin private AsOfFlags season;
  @CommandLine.Mixin private OutputFlags shown;

  @CommandLine.Mixin private FolderFlag folder;

  @CommandLine.Mixin private HelpFlag help;

  RunVerb(CommandContext setting) {
    this.setting = setting;
  }

  @Override
  public Integer call() throws IOException {
    RunSettings effort = flags.effort(traced.span(flags.replications()));
    Optional<LocalDate> asOf = season.day();
    if (vary.isGiven()) {
      vary.refuse("--as-of", asOf.isPresent());
      vary.refuse("--trace", effort.trace().isPresent());
      vary.refuseAim(effort);
      return new GridCommand(setting, shown, effort)
          .simulate(
              plant.file(),
              folder.out(),
              setting.studies().grid(plant.plant(), plant.chosen(), vary.keys(), effort));
    }
    AnswerWriter reporting = new AnswerWriter(setting, shown);
    return reporting.simulate(
        plant.file(),
        folder.out(),
        asOf.map(
                day ->
                    setting
                        .studies()
                        .restOfSeason(
                            plant.plant(),
                            plant.chosen(),
                            season.folder(plant.file()),
                            day,
                            effort))
            .orElseGet(() -> setting.studies().run(plant.plant(), plant.chosen(), effort)),
        RunVerb::parts);
  }

  static AnswerWriter.Parts parts(RunAnswer answer, Wording wording) {
    RunCharts figures = new RunCharts(answer, wording);
    return new AnswerWriter.Parts(
        new RunTables(answer).all(),
        figures::all,
        () -> ReportPage.html(answer, wording, figures),
        width -> new RunWords(answer, wording).lines(width));
  }
}
