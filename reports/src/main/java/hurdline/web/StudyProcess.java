package hurdline.web;

import hurdline.study.replicate.ReplicationRunner;
import hurdline.web.http.Refusal;
import hurdline.web.http.Secret;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One study in a process of its own, the same call as in a terminal: a fault in it, or its end,
 * takes nothing else along.
 */
final class StudyProcess {
  private static final int KEPT_LINES = 20;
  private static final int FEW_REPLICATIONS = 60;
  private static final String MAIN = "hurdline.command.Hurdline";

  /** Where it stands. */
  enum State {
    WAITING,
    RUNNING,
    DONE,
    STOPPED,
    FAILED
  }

  /**
   * As the page shows it.
   *
   * @param answer its folder; empty where it is over and has written none
   * @param progress the last line of JSON that the study wrote; empty before the first
   * @param said what it said besides
   */
  record Shown(
      String id,
      String question,
      String plant,
      String answer,
      String state,
      Map<String, String> progress,
      List<String> said) {}

  private final String id = Secret.fresh();
  private final Question question;
  private final Path plant;
  private final Path answer;
  private final List<String> call;
  private final List<String> said = new ArrayList<>();
  private Map<String, String> progress = Map.of();
  private State state = State.WAITING;
  private Process process;
  private boolean wantsEnd;

  /**
   * @param call words of the call, without the plant file and the answer's folder
   */
  StudyProcess(Question question, Path plant, Path answer, List<String> call) {
    this.question = question;
    this.plant = plant;
    this.answer = answer;
    this.call = List.copyOf(call);
  }

  String id() {
    return id;
  }

  Path answer() {
    return answer;
  }

  synchronized State state() {
    return state;
  }

  synchronized boolean isOver() {
    return state != State.WAITING && state != State.RUNNING;
  }

  synchronized Shown shown() {
    return new Shown(
        id,
        question.label(),
        plant.getFileName().toString(),
        hasAnswer() ? answer.getFileName().toString() : "",
        state.name().toLowerCase(java.util.Locale.ROOT),
        progress,
        List.copyOf(said));
  }

  private boolean hasAnswer() {
    return !isOver() || Files.exists(answer.resolve("record.json"));
  }

  /**
   * Starts it.
   *
   * @param over told once, when it has ended
   */
  synchronized void start(Runnable over) {
    if (state != State.WAITING) {
      over.run();
      return;
    }
    try {
      process =
          new ProcessBuilder(words())
              .directory(plant.getParent().toFile())
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      state = State.RUNNING;
      ReplicationRunner.inBackground(
          "study",
          () -> {
            follow();
            over.run();
            return null;
          });
    } catch (IOException fault) {
      state = State.FAILED;
      said.add("The study could not be started: " + fault.getMessage());
      over.run();
    }
  }

  private List<String> words() {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    // As this program was started, but for the compiler.
    ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
        .filter(
            flag ->
                flag.matches(
                    "-X(m[sx]|X:\\+Use|share|log|X:SharedArchive|X:-UsePerf).*|-D(java|file|std).*"))
        .forEach(words::add);
    words.addAll(List.of(compiler(question, call), "-cp"));
    words.addAll(List.of(System.getProperty("java.class.path"), MAIN, call.get(0)));
    words.add(plant.toString());
    words.addAll(call.subList(1, call.size()));
    words.addAll(List.of("--steered", "--out=" + answer));
    return words;
  }

  /**
   * As the launcher has it in {@code scripts/start.sh}: a run of few replications is over before
   * the thorough compiler pays.
   */
  static String compiler(Question question, List<String> call) {
    boolean isShort =
        question == Question.RUN
            && call.stream().noneMatch(word -> word.startsWith("--until"))
            && call.stream()
                .filter(word -> word.startsWith("--replications="))
                .mapToInt(word -> Integer.parseInt(word.substring(word.indexOf('=') + 1)))
                .allMatch(replications -> replications <= FEW_REPLICATIONS);
    return isShort ? "-XX:TieredStopAtLevel=1" : "-XX:CompileThresholdScaling=10";
  }

  private void follow() {
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        take(line);
      }
      end(process.waitFor());
    } catch (IOException fault) {
      end(-1);
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }

  private synchronized void take(String line) {
    if (line.startsWith("{\"done\":")) {
      progress = ProgressLine.values(line);
    } else if (said.size() < KEPT_LINES) {
      said.add(question.told(line));
    }
  }

  private synchronized void end(int code) {
    boolean stopped = code == 130 || wantsEnd && code != 0;
    state = code == 0 ? State.DONE : stopped ? State.STOPPED : State.FAILED;
  }

  /**
   * Asks it to end with what is done; one that waits ends at once.
   *
   * @throws Refusal if it is over
   */
  synchronized void stop() throws IOException {
    if (state == State.WAITING) {
      state = State.STOPPED;
      said.add("Stopped before it began.");
      return;
    }
    if (state != State.RUNNING) {
      throw new Refusal(409, "This study is over.");
    }
    if (question.isBrief()) {
      wantsEnd = true;
      process.destroy();
      return;
    }
    try {
      OutputStream words = process.getOutputStream();
      words.write("stop\n".getBytes(StandardCharsets.US_ASCII));
      words.flush();
    } catch (IOException over) {
      // It has just ended; its own end is told.
    }
  }
}
