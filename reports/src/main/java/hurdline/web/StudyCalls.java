package hurdline.web;

import hurdline.service.PlantEdits;
import hurdline.web.http.Ask;
import hurdline.web.http.Call;
import hurdline.web.http.Refusal;
import hurdline.web.http.Reply;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleSupplier;

/** What the page asks about studies: which there are, one more, stop. */
final class StudyCalls {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss", Locale.ROOT);

  private final PlantFolder folder;
  private final StudyQueue queue;
  private final DoubleSupplier secondsPerReplication;

  /**
   * @param secondsPerReplication of the last quick answer
   */
  StudyCalls(PlantFolder folder, StudyQueue queue, DoubleSupplier secondsPerReplication) {
    this.folder = folder;
    this.queue = queue;
    this.secondsPerReplication = secondsPerReplication;
  }

  private record Asking(
      List<Question.Shown> questions,
      Map<String, String> options,
      Map<String, String> plans,
      double secondsPerReplication) {}

  Map<String, Call> all() {
    return Map.of(
        "POST questions", this::questions,
        "GET studies", ask -> Reply.json(Map.of("studies", queue.shown())),
        "POST studies", this::begin,
        "DELETE studies", this::stop);
  }

  /** What can be asked of a plant file as it is on the disk. */
  private Reply questions(Ask ask) throws IOException {
    String text = folder.read(ask.text("name")).text();
    return Reply.json(
        new Asking(
            Question.all(),
            PlantEdits.titles(text, "options"),
            PlantEdits.titles(text, "plans"),
            secondsPerReplication.getAsDouble()));
  }

  private Reply begin(Ask ask) throws IOException {
    Path plant = folder.plant(ask.text("name"));
    Question question = Question.of(ask.text("question"));
    List<String> call = question.call(ask);
    for (QuestionField field : question.fields()) {
      if (field.kind().equals("folder")) {
        folder.refuseOutside(ask.text(field.name()).strip());
      }
    }
    call.add("--units=" + (ask.text("units").equals("metric") ? "metric" : "us"));
    if (TextCalls.isKnown(ask.text("locale"))) {
      call.add("--locale=" + ask.text("locale"));
    }
    Path answer = free(plant);
    StudyProcess study = new StudyProcess(question, plant, answer, call);
    queue.add(study);
    return Reply.json(study.shown());
  }

  /** A folder that neither is there nor is waited for. */
  private Path free(Path plant) {
    String base =
        plant.getFileName().toString().replaceFirst("\\.ya?ml$", "")
            + "-answer-"
            + LocalDateTime.now().format(STAMP);
    List<String> taken = queue.unfinished();
    for (int number = 1; ; number++) {
      String name = number == 1 ? base : base + "-" + number;
      if (!Files.exists(folder.path().resolve(name)) && !taken.contains(name)) {
        return folder.path().resolve(name);
      }
    }
  }

  private Reply stop(Ask ask) throws IOException {
    if (ask.text("id").isEmpty()) {
      throw Refusal.notThere();
    }
    queue.stop(ask.text("id"));
    return Reply.json(Map.of());
  }
}
