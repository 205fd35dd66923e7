package hurdline.command;

import hurdline.answer.ChooseAnswer;
import hurdline.answer.RunFact;
import hurdline.answer.SimulatedBlock;
import hurdline.chart.choose.ChooseCharts;
import hurdline.page.ReportPage;
import hurdline.service.PreparedChoice;
import hurdline.study.choose.BlockStore;
import hurdline.study.choose.Choose;
import hurdline.study.choose.ChooseProgress;
import hurdline.study.choose.ClusterSize;
import hurdline.study.replicate.HeadlineSoFar;
import hurdline.study.replicate.ProgressListener;
import hurdline.table.AnswerFolder;
import hurdline.table.BlockFolder;
import hurdline.table.ChooseTables;
import hurdline.text.ChooseWords;
import hurdline.text.Wording;
import hurdline.unit.Counted;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine;

@CommandLine.Command(
    name = "choose",
    customSynopsis = "hurdline choose FILE --best MEASURE:BAND [FLAG]...",
    description =
        "Simulates very many plans, all combinations of what stands under choices in the file, on"
            + " the same random draws, names the best of them and says how far above it the best"
            + " may be.",
    sortOptions = false,
    optionListHeading = "%nFlags:%n",
    parameterListHeading = "%n",
    footer = {
      "",
      "Plans that are clearly below go out round by round, so most of the years go to those that"
          + " are close. Ctrl-C keeps finished blocks of years; the same call with --out DIR goes"
          + " on from there.",
      "",
      "With --draws each simulated year takes a row of its own, the same for all plans, so that few"
          + " rows allow few rounds.",
      "",
      "Examples:",
      "  hurdline choose my-plant.yaml --best money.margin:'5000 USD' --worth",
      "        the plan that earns the most after the yearly cost of what it buys",
      "  hurdline choose my-plant.yaml --best money.margin:5000 --budget 0,60000,140000",
      "        the best under each of three budgets, and without a limit",
      "  hurdline choose my-plant.yaml --best money.margin:5000 --years 100000",
      "        begins no round that would take more years than that"
    })
final class ChooseVerb implements Callable<Integer> {
  private static final double NANO = 1e-9;

  private final CommandContext setting;

  @CommandLine.Mixin private PlantChoice choice;
  @CommandLine.Mixin private ChooseFlags flags;
  @CommandLine.Mixin private OutputFlags shown;

  @CommandLine.Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Folder for the answer; new, empty, or begun by the same call. Default: a dated one"
              + " beside FILE.")
  private Path out;

  @CommandLine.Mixin private HelpFlag help;

  ChooseVerb(CommandContext setting) {
    this.setting = setting;
  }

  @Override
  public Integer call() throws IOException {
    double mostS = flags.mostS();
    PreparedChoice prepared =
        setting
            .studies()
            .choose(choice.plant(), choice.chosen(), flags.ask(), flags.effort(), flags.on());
    AskedPlants asked = AskedPlants.of(setting.call(), List.of(choice.file()));
    Choose choose = prepared.choose();
    AnswerWriter reporting = new AnswerWriter(setting, shown);
    BegunAnswer begun = new BegunAnswer("a choice", BlockFolder.name());
    AnswerFolder folder =
        begun.claimed(
            choice.file(),
            out,
            choose.settings(),
            made -> new BlockFolder(made).begin(choose.settings()));
    BlockFolder blocks = new BlockFolder(folder);
    ChooseCost cost = new ChooseCost(choose, blocks.count(), folder.path(), mostS);
    try (ChartThread drawing = ChartThread.begin()) {
      if (!shown.quiet()) {
        cost.tell(setting.err());
      }
      long begunNs = System.nanoTime();
      Optional<ChooseAnswer> found =
          StudyRunner.inSight(
              setting,
              shown,
              (int) Math.min(Integer.MAX_VALUE, choose.fewestYears()),
              (progress, stop) ->
                  prepared.simulate(
                      new OnDisk(blocks),
                      new Told(progress, cost),
                      stop,
                      () -> (System.nanoTime() - begunNs) * NANO > mostS));
      if (found.isEmpty()) {
        return stopped(folder, blocks);
      }
      reporting.report(found.get(), ChooseVerb::parts, new AnswerFiles(folder, drawing, asked));
      blocks.clear();
      return ExitCode.DONE.number();
    } catch (UncheckedIOException full) {
      throw new CallException(
          "writing failed ("
              + full.getCause().getMessage()
              + "): "
              + Counted.of(blocks.count(), "block")
              + " of years "
              + Counted.are(blocks.count())
              + " kept; make room, and the same call with --out "
              + folder.path()
              + " goes on from there");
    } finally {
      folder.giveBack();
    }
  }

  private int stopped(AnswerFolder folder, BlockFolder blocks) throws IOException {
    int done = blocks.count();
    if (done == 0) {
      blocks.clear();
      setting
          .err()
          .println("Stopped before the first block of years was done; nothing is written.");
    } else {
      setting
          .err()
          .println(
              GridCommand.kept(
                  Counted.of(done, "block") + " of years " + Counted.are(done), folder));
    }
    return ExitCode.STOPPED.number();
  }

  static AnswerWriter.Parts parts(ChooseAnswer answer, Wording wording) {
    ChooseCharts figures = new ChooseCharts(answer, wording);
    return new AnswerWriter.Parts(
        new ChooseTables(answer).all(),
        figures::all,
        () -> ReportPage.html(answer, wording, figures),
        width -> new ChooseWords(answer, wording).lines(width));
  }

  /** Years by the usual progress, stages by a line each. */
  private final class Told implements ChooseProgress {
    private final ProgressListener years;
    private final ChooseCost cost;
    private WorkPace pace = WorkPace.here();
    private String where;
    private boolean open = !shown.quiet(); // whether it is still to be said how long it takes
    private HeadlineSoFar gap = HeadlineSoFar.unknown();

    private Told(ProgressListener years, ChooseCost cost) {
      this.years = years;
      this.cost = cost;
      where = cost.here();
    }

    @Override
    public void done(int done, int of) {
      years.headline(() -> gap);
      years.done(done, of);
      OptionalDouble each = open ? pace.secondsEach(done) : OptionalDouble.empty();
      if (each.isPresent()) {
        open = false;
        cost.tell(setting.err(), done, pace.goneS(), each.getAsDouble(), where);
      }
    }

    @Override
    public void says(RunFact.AimOutOfReach fact) {
      years.says(fact);
    }

    @Override
    public void ready(ClusterSize said) {
      pace = WorkPace.elsewhere();
      where = said.address() + ", which has " + Counted.of(said.cores(), "core");
    }

    @Override
    public void stage(Stage said) {
      open &= said.round() == 0;
      gap =
          new HeadlineSoFar(
              HeadlineSoFar.Kind.GAP, "", List.of(), said.unit(), said.gap(), 0, said.gap());
      if (!shown.quiet()) {
        setting
            .err()
            .println(
                (said.round() == 0
                        ? "Choosing years"
                        : "Round " + said.round() + " of " + said.of())
                    + String.format(
                        Locale.ROOT,
                        ": %,d %s left, %,d years simulated",
                        said.left(),
                        Counted.noun(said.left(), "plan"),
                        said.years())
                    + (said.round() == 0
                        ? "."
                        : Double.isNaN(said.gap())
                            ? ", no gap known yet."
                            : ", gap " + shown.wording().rough(said.gap(), said.unit()) + "."));
      }
    }
  }

  /** Blocks in their folder. */
  private record OnDisk(BlockFolder blocks) implements BlockStore {
    @Override
    public Optional<SimulatedBlock> kept(int stage, int number) {
      try {
        return blocks.read(stage, number);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public void keep(SimulatedBlock block) {
      try {
        blocks.write(block);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
