package hurdline.service;

import hurdline.answer.Capacity;
import hurdline.answer.CheckAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.plant.Change;
import hurdline.problem.LocatedProblem;
import hurdline.study.PlantChanges;
import hurdline.study.replicate.ReplicationRange;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.RangeResults;
import hurdline.study.run.Run;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * A program that uses hurdline as a library: it opens a plant from text, lists what is wrong with
 * it, asks for its capacity, runs it with progress and a stop, and simulates two ranges of
 * replications apart.
 */
final class LibraryExample {
  private static final int REPLICATIONS = 40;
  private static final int ENOUGH = 10;
  private static final int THREADS = 2;
  private static final RunSettings EFFORT =
      new RunSettings(REPLICATIONS, Optional.empty(), 1, THREADS, Optional.empty());

  private final Studies studies = new EngineStudies();
  private final PrintStream out;

  LibraryExample(PrintStream out) {
    this.out = out;
  }

  /** All of it; {@code yaml} is a plant file's text. */
  void show(String yaml) {
    PlantText misspelt = PlantText.of("plant.yaml", yaml.replaceFirst("moisture:", "moistrue:"));
    problems(studies.problems(misspelt, PlantChanges.base()));
    PlantText plant = PlantText.of("plant.yaml", yaml);
    PlantChanges larger =
        new PlantChanges(
            PlantChanges.base().option(),
            List.of("machines.mill.power=30 hp"),
            List.of(new Change.Value("machines.mill.power", "30 hp")));
    problems(studies.problems(plant, larger));
    capacity(studies.onPaper(plant, PlantChanges.base()));
    capacity(studies.onPaper(plant, larger));
    simulate(plant, larger);
    simulateInRanges(plant, larger);
  }

  private void problems(List<LocatedProblem> problems) {
    out.println("problems or warnings: " + problems.size());
    for (LocatedProblem problem : problems) {
      out.println(
          "  line "
              + problem.line()
              + ", column "
              + problem.column()
              + ", key "
              + problem.path()
              + ": "
              + problem.found()
              + "; nearest word "
              + problem.nearest());
    }
  }

  private void capacity(CheckAnswer answer) {
    for (Capacity.Line line : answer.capacity().lines()) {
      out.printf(
          "%s: rated %.3f t/h, expected %.3f t/h%n",
          line.line(), line.limits().rated().fedTPerH(), line.limits().expected().fedTPerH());
    }
  }

  /** Stops after a few replications, as a user would who has seen enough. */
  private void simulate(PlantText plant, PlantChanges chosen) {
    AtomicBoolean enough = new AtomicBoolean();
    PreparedStudy<RunAnswer> study = studies.run(plant, chosen, EFFORT);
    Optional<RunAnswer> answer =
        study.simulate(
            (done, of) -> {
              out.println("  " + done + " of " + of);
              enough.set(done >= ENOUGH);
            },
            enough::get);
    answer.ifPresentOrElse(this::margin, () -> out.println("nothing was finished"));
  }

  /** As two computers would, the second one first. */
  private void simulateInRanges(PlantText plant, PlantChanges chosen) {
    Run run = studies.inRanges(plant, chosen, EFFORT);
    ReplicationRange half = ReplicationRange.first(REPLICATIONS / 2);
    RangeResults second =
        run.simulate(
            new ReplicationRange(half.to(), 1 + REPLICATIONS), (done, of) -> {}, () -> false);
    RangeResults all = run.simulate(half, (done, of) -> {}, () -> false);
    all.append(second);
    margin(run.answer(all));
  }

  private void margin(RunAnswer answer) {
    SummaryRow margin = answer.find("money.margin").orElseThrow();
    out.printf(
        "margin over %d of %d replications: %.0f %s, 95 %% interval %.0f to %.0f%n",
        answer.header().replications(),
        answer.header().replicationsAsked(),
        margin.mean(),
        margin.unit(),
        margin.low95(),
        margin.high95());
  }
}
