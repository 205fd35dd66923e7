package hurdline.web;

import hurdline.answer.RunAnswer;
import hurdline.chart.run.RunCharts;
import hurdline.plant.ProblemsException;
import hurdline.service.PlantText;
import hurdline.service.Studies;
import hurdline.study.PlantChanges;
import hurdline.study.replicate.ProgressListener;
import hurdline.study.replicate.RunSettings;
import hurdline.text.MainTable;
import hurdline.text.RunHeadline;
import hurdline.text.RunTable;
import hurdline.text.Wording;
import hurdline.web.http.Ask;
import hurdline.web.http.Call;
import hurdline.web.http.Refusal;
import hurdline.web.http.Reply;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * A quick answer while a text is typed: as many replications, 4 to 10, as the last one's time lets
 * expect within a second. A newer text stops it.
 */
final class QuickCalls {
  private static final int FEWEST = 4;
  private static final int MOST = 10;
  private static final long WANTED_NS = 800_000_000L;
  private static final int CONFLICT = 409;
  private static final ProgressListener NOBODY = (done, of) -> {};

  private final Studies studies;
  private final PlantFolder folder;
  private final NewestAsk newest = new NewestAsk();
  private volatile long lastNsPerReplication = WANTED_NS / FEWEST;

  QuickCalls(Studies studies, PlantFolder folder) {
    this.studies = studies;
    this.folder = folder;
  }

  /**
   * What a few replications say.
   *
   * @param older whether a newer text came meanwhile
   */
  record Quick(
      boolean older,
      int replications,
      List<String> sentences,
      List<String> head,
      List<List<String>> rows,
      List<Picture> flows) {}

  Map<String, Call> all() {
    return Map.of("POST quick", this::quick, "POST drop", this::drop);
  }

  /** What a replication took when the last quick answer was made, on all cores. */
  double secondsPerReplication() {
    return lastNsPerReplication * 1e-9;
  }

  /** The text has changed: what is simulated for an older one ends with its replication. */
  private Reply drop(Ask ask) {
    newest.next(ask.text("page"));
    return Reply.json(Map.of());
  }

  private Reply quick(Ask ask) throws IOException {
    PlantText plant = folder.typed(ask.text("text"));
    return newest.answer(
        ask.text("page"),
        isOlder -> {
          try {
            return Reply.json(simulated(plant, isOlder, TextCalls.wording(ask)));
          } catch (ProblemsException wrong) {
            throw new Refusal(CONFLICT, "The plant has problems.");
          }
        },
        Reply.json(older()));
  }

  private static Quick older() {
    return new Quick(true, 0, List.of(), List.of(), List.of(), List.of());
  }

  private Quick simulated(PlantText plant, BooleanSupplier isOlder, Wording plain) {
    long fit = WANTED_NS / Math.max(1, lastNsPerReplication);
    int replications = (int) Math.min(MOST, Math.max(FEWEST, fit));
    int threads = Runtime.getRuntime().availableProcessors();
    RunSettings effort =
        new RunSettings(replications, Optional.empty(), 1, threads, Optional.empty());
    long begun = System.nanoTime();
    Optional<RunAnswer> found =
        studies.run(plant, PlantChanges.base(), effort).simulate(NOBODY, isOlder);
    if (found.isEmpty() || found.get().header().stopped()) {
      return older();
    }
    lastNsPerReplication = (System.nanoTime() - begun) / replications;
    RunAnswer answer = found.get();
    Wording wording = plain.reading(answer);
    MainTable table = RunTable.of(answer, wording);
    return new Quick(
        false,
        answer.header().replications(),
        new RunHeadline(answer, wording).sentences(),
        table.head(),
        table.grid(),
        new RunCharts(answer, wording).flows().stream().map(Picture::of).toList());
  }
}
