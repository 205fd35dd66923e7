package hurdline.web;

import hurdline.answer.Answer;
import hurdline.answer.FitAnswer;
import hurdline.answer.Header;
import hurdline.plant.ProblemsException;
import hurdline.service.FittedFigures;
import hurdline.text.Wording;
import hurdline.unit.Counted;
import hurdline.web.http.Ask;
import hurdline.web.http.Call;
import hurdline.web.http.Refusal;
import hurdline.web.http.Reply;
import hurdline.web.http.Secret;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the page asks about answers: the list, a report, two side by side, notes, deletion. */
final class AnswerCalls {
  private static final int MOST_TICKETS = 200;
  private static final int LONGEST_NOTE = 2000;
  private static final int LARGEST_PLANT = 4 << 20;
  private static final String NOTE = "note.txt";
  private static final String STAR = "* ";

  /** A report has no script, reaches nothing and is not part of the page that shows it. */
  private static final String REPORT_POLICY =
      "sandbox allow-popups allow-modals; default-src 'none'; style-src 'unsafe-inline'; img-src"
          + " data:; font-src data:; frame-ancestors 'self'; base-uri 'none'; form-action 'none'";

  private final AnswerList answers;
  private final StudyQueue queue;

  /** Reports that were asked for, by a word that cannot be guessed. */
  private final Map<String, Path> tickets =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Path> eldest) {
          return size() > MOST_TICKETS;
        }
      };

  AnswerCalls(AnswerList answers, StudyQueue queue) {
    this.answers = answers;
    this.queue = queue;
  }

  /**
   * An answer in the list.
   *
   * @param call what was filled in, so that it can be asked again
   * @param asOnDisk whether the plant's file still says what was asked about
   * @param asked what it rests on: plant, options, replications, seed
   */
  private record Row(
      String name,
      String when,
      String plant,
      String question,
      AskedCall call,
      boolean asOnDisk,
      String asked,
      int replications,
      long seed,
      List<String> sentences,
      boolean star,
      String note) {
    static Row unreadable(String name, String when, String why) {
      AskedCall call = AskedCall.unknown();
      return new Row(name, when, "", "", call, false, "", 0, 0, List.of(why), false, "");
    }

    Row noted(boolean marked, String words) {
      return new Row(
          name,
          when,
          plant,
          question,
          call,
          asOnDisk,
          asked,
          replications,
          seed,
          sentences,
          marked,
          words);
    }
  }

  private record Side(String a, String b, String label) {}

  /**
   * Two answers.
   *
   * @param rows figures of both; empty where one lacks it
   * @param said what is to be known of their differences
   */
  private record Both(List<Side> rows, String said, String plantA, String plantB) {}

  Map<String, Call> all() {
    return Map.of(
        "POST answers", this::list,
        "POST report", this::report,
        "POST side", this::side,
        "POST folder", this::folder,
        "POST fitted", this::fitted,
        "PUT note", this::note,
        "DELETE answers", this::delete);
  }

  private Reply list(Ask ask) throws IOException {
    List<Row> rows = new ArrayList<>();
    for (String name : answers.names()) {
      try {
        rows.add(row(name, TextCalls.wording(ask)));
      } catch (Refusal | NoSuchFileException gone) {
        continue; // deleted by another program while the list is made
      } catch (IOException | RuntimeException fault) {
        rows.add(Row.unreadable(name, "", "It cannot be read: " + fault.getMessage()));
      }
    }
    return Reply.json(Map.of("answers", rows));
  }

  private Row row(String name, Wording wording) throws IOException {
    Path path = answers.path(name);
    Optional<Answer> answer = answers.answer(name);
    String note = said(path.resolve(NOTE), 4 * LONGEST_NOTE);
    boolean star = note.startsWith(STAR.strip());
    String words = star ? note.substring(1).strip() : note;
    String when =
        DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm")
            .format(Instant.ofEpochMilli(answers.changedMs(path)).atZone(ZoneId.systemDefault()));
    if (answer.isEmpty()) {
      return Row.unreadable(name, when, "Written by another version of hurdline, or damaged since.")
          .noted(star, words);
    }
    Header header = answer.get().header();
    Optional<Question> question = Question.of(answer.get());
    return new Row(
        name,
        when,
        header.file(),
        question.map(Question::name).orElse(""),
        question.isEmpty()
            ? AskedCall.unknown()
            : AskedCall.of(path, header.file(), question.get()),
        answers.isPlantOf(path, header.file()),
        asked(header),
        header.replications(),
        header.seed(),
        Found.of(answer.get())
            .map(found -> found.sentencesOf(answer.get(), wording))
            .orElse(List.of()),
        star,
        words);
  }

  private static String asked(Header header) {
    String option = header.option().equals("base") ? "" : ", option " + header.option();
    String stopped = header.stopped() ? ", stopped early" : "";
    if (header.replications() == 0) {
      return "nothing simulated" + option;
    }
    return Counted.of(header.replications(), "replication")
        + ", seed "
        + header.seed()
        + option
        + stopped;
  }

  private Reply report(Ask ask) throws IOException {
    Path report = answers.path(ask.text("name")).resolve("report.html");
    String word = Secret.fresh();
    synchronized (tickets) {
      tickets.put(word, report);
    }
    return Reply.json(Map.of("address", "/report/" + word));
  }

  /** A report under its word. */
  Reply at(String word) throws IOException {
    Path report;
    synchronized (tickets) {
      report = tickets.get(word);
    }
    if (report == null || !Files.isRegularFile(report, LinkOption.NOFOLLOW_LINKS)) {
      throw Refusal.notThere();
    }
    return Reply.of("text/html; charset=utf-8", Files.readString(report)).under(REPORT_POLICY);
  }

  private Reply side(Ask ask) throws IOException {
    Answer a = answer(ask.text("a"));
    Answer b = answer(ask.text("b"));
    Wording wording = TextCalls.wording(ask);
    Map<String, String> left = figures(a, wording);
    Map<String, String> right = figures(b, wording);
    List<Side> rows = new ArrayList<>();
    left.forEach((label, said) -> rows.add(new Side(said, right.getOrDefault(label, ""), label)));
    right.forEach(
        (label, said) -> {
          if (!left.containsKey(label)) {
            rows.add(new Side("", said, label));
          }
        });
    String said = rows.isEmpty() ? "The two have no figure in common." : ofDifferences(a, b);
    return Reply.json(new Both(rows, said, plant(ask.text("a")), plant(ask.text("b"))));
  }

  private static String ofDifferences(Answer a, Answer b) {
    if (a.getClass() != b.getClass()) {
      return "They answer different questions: only figures of one name stand in one row.";
    }
    if (a.header().replications() + b.header().replications() == 0) {
      return "Nothing is simulated in either, so no difference is random.";
    }
    return a.header().seed() == b.header().seed()
            && a.header().replications() == b.header().replications()
        ? "Both have the same seed and as many replications, so the same random draws."
        : "Seed or replications differ, so part of the difference is random; a comparison of"
            + " options says what is statistically significant.";
  }

  private Answer answer(String name) throws IOException {
    return answers
        .answer(name)
        .orElseThrow(
            () ->
                new Refusal(409, "It was written by another version of hurdline, or is damaged."));
  }

  /** By label, each with its unit and interval. */
  private static Map<String, String> figures(Answer answer, Wording wording) {
    return Found.of(answer).map(found -> found.figuresOf(answer, wording)).orElse(Map.of());
  }

  private String plant(String name) throws IOException {
    return said(answers.path(name).resolve("plant.yaml"), LARGEST_PLANT);
  }

  private static String said(Path file, int most) throws IOException {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return "";
    }
    try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
      return new String(in.readNBytes(most), StandardCharsets.UTF_8).strip();
    }
  }

  /** A note is a text file in the answer's folder; a star is its first letter. */
  private Reply note(Ask ask) throws IOException {
    Path note = answers.path(ask.text("name")).resolve(NOTE);
    String text = (ask.text("star").equals("true") ? STAR : "") + ask.text("note").strip();
    if (text.length() > LONGEST_NOTE) {
      throw new Refusal(413, "A note has at most 2,000 letters.");
    }
    byte[] bytes = PlantFolder.encoded(text + "\n");
    Path part = Files.createTempFile(note.getParent(), ".note-", ".part");
    try {
      Files.write(part, bytes);
      Files.move(part, note, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(part);
    }
    return Reply.json(Map.of());
  }

  /** A plant's text with the figures that its records gave. */
  private Reply fitted(Ask ask) throws IOException {
    if (!(answer(ask.text("name")) instanceof FitAnswer fit)) {
      throw new Refusal(400, "That answer has no figures for a plant.");
    }
    try {
      String text = FittedFigures.inPlace(fit.header().file(), ask.text("text"), fit);
      return Reply.json(Map.of("text", text));
    } catch (ProblemsException wrong) {
      throw new Refusal(409, String.join(" ", wrong.lines()));
    }
  }

  /** Opens an answer's folder, on this machine, where alone the page can be. */
  private Reply folder(Ask ask) throws IOException {
    Path answer = answers.path(ask.text("name"));
    if (!BrowserStart.isPossible(System.getenv())) {
      throw new Refusal(409, "No desktop is here that could show it; the folder is " + answer);
    }
    try {
      BrowserStart.show(answer);
    } catch (IOException none) {
      throw new Refusal(409, "Nothing here shows folders; the folder is " + answer);
    }
    return Reply.json(Map.of());
  }

  private Reply delete(Ask ask) throws IOException {
    if (queue.unfinished().contains(ask.text("name"))) {
      throw new Refusal(409, "A study still writes into it; stop that first.");
    }
    answers.delete(ask.text("name"));
    return Reply.json(Map.of());
  }
}
