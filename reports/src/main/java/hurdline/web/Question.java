package hurdline.web;

import hurdline.answer.Answer;
import hurdline.answer.BacktestAnswer;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.GridAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.text.BacktestWords;
import hurdline.text.ChooseHeadline;
import hurdline.text.ChooseTable;
import hurdline.text.CompareHeadline;
import hurdline.text.CompareTable;
import hurdline.text.GridHeadline;
import hurdline.text.GridTable;
import hurdline.text.MainTable;
import hurdline.text.RunHeadline;
import hurdline.text.RunTable;
import hurdline.text.SeasonHeadline;
import hurdline.text.SeasonTable;
import hurdline.text.Wording;
import hurdline.text.YardHeadline;
import hurdline.text.YardTable;
import hurdline.web.http.Ask;
import hurdline.web.http.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/**
 * A question that the page can ask of a plant: what a person fills in, and the call of the terminal
 * that it becomes. The page draws all of them from this list, so a further question is a further
 * entry here and nothing else.
 */
enum Question {
  RUN(
      new Found<>(RunAnswer.class, (a, w) -> new RunHeadline(a, w).sentences(), RunTable::of),
      "run",
      "What will the plant do?",
      "Simulates its calendar: what comes out, what limits each line, what it earns.",
      List.of(QuestionField.options("option", "With these options", "+"), QuestionField.until())),
  COMPARE(
      new Found<>(
          CompareAnswer.class, (a, w) -> new CompareHeadline(a, w).sentences(), CompareTable::of),
      "compare",
      "Do its options pay?",
      "Sets options against the plant as it stands, on the same random draws.",
      List.of(
          QuestionField.options("among", "Options; none for all", ","),
          QuestionField.text("lives", "Simulated service lives", "", "30 if left empty; from 2 on")
              .of("service-lives"),
          QuestionField.tick(
              "gain", "Effect of 10 % more of each machine, bin, resource and shift"),
          QuestionField.tick("tornado", "What the net present value is sensitive to (tornado)"),
          QuestionField.text(
                  "break_even", "Break-even of", "", "such as money.wage or products.hurd.price")
              .of("break-even"),
          QuestionField.until())),
  YARD(
      new Found<>(YardAnswer.class, (a, w) -> new YardHeadline(a, w).sentences(), YardTable::of),
      "yard",
      "How large must the yard be?",
      "How many bales and how much ground, and how often each size overflows.",
      List.of(
          QuestionField.text("overflow", "It may overflow in", "5%", "of seasons"),
          QuestionField.text(
              "acres", "Acres: share of seasons that must be met", "", "such as 90%"),
          QuestionField.options("option", "With these options", "+"))),
  SEASON(
      new Found<>(
          SeasonAnswer.class, (a, w) -> new SeasonHeadline(a, w).sentences(), SeasonTable::of),
      "season",
      "Which season plan is best?",
      "Simulates the plans of a shared building on the same random draws.",
      List.of(QuestionField.plans("plans", "Plans; none for all"))),
  CHOOSE(
      new Found<>(
          ChooseAnswer.class, (a, w) -> new ChooseHeadline(a, w).sentences(), ChooseTable::of),
      "choose",
      "Which of many plans is the best?",
      "Simulates all combinations of what stands under choices in the file, round by round.",
      List.of(
          QuestionField.text(
              "best", "Best by, and a difference that matters", "money.margin:5000", ""),
          QuestionField.text("budget", "Budgets, if any", "", "such as 0,60000,140000"),
          QuestionField.tick("worth", "After the yearly cost of what each plan buys"))),
  GRID(
      new Found<>(GridAnswer.class, (a, w) -> new GridHeadline(a, w).sentences(), GridTable::of),
      "run",
      "What if one or two figures are others?",
      "Simulates the plant over a grid of one or two keys.",
      List.of(
          QuestionField.text(
              "vary", "Key and values", "", "such as machines.mill.power=x0.5..x2..x0.5"),
          QuestionField.text(
                  "vary2", "A second key, if wanted", "", "such as money.wage=x0.8..x1.2..x0.2")
              .of("vary"))),
  BACKTEST(
      new Found<>(
          BacktestAnswer.class,
          (a, w) -> new BacktestWords(a, w).headline(),
          (a, w) -> new MainTable(List.of(), w)),
      "backtest",
      "Does the model agree with a season that has been?",
      "Simulates the season of the plant's own records and says what differs by more than chance.",
      List.of(
          QuestionField.folder(
              "records",
              "Folder of records",
              "records",
              "in this folder; at least 99 replications")));

  /** As the page draws it. */
  record Shown(String id, String label, String description, List<QuestionField> fields) {}

  /**
   * How an answer of one kind is told in the list of answers.
   *
   * @param sentences its headline
   * @param table its main figures
   */
  private record Found<A extends Answer>(
      Class<A> type,
      BiFunction<A, Wording, List<String>> sentences,
      BiFunction<A, Wording, MainTable> table) {
    boolean is(Answer answer) {
      return type.isInstance(answer);
    }

    List<String> sentencesOf(Answer answer, Wording wording) {
      return sentences.apply(type.cast(answer), wording);
    }

    MainTable tableOf(Answer answer, Wording wording) {
      return table.apply(type.cast(answer), wording);
    }
  }

  private final Found<?> found;
  private final String verb;
  private final String label;
  private final String description;
  private final List<QuestionField> fields;

  Question(
      Found<?> found, String verb, String label, String description, List<QuestionField> fields) {
    this.found = found;
    this.verb = verb;
    this.label = label;
    this.description = description;
    this.fields = fields;
  }

  static List<Shown> all() {
    return Stream.of(values())
        .map(q -> new Shown(q.name(), q.label, q.description, q.fields))
        .toList();
  }

  static Question of(String id) {
    return Stream.of(values())
        .filter(question -> question.name().equals(id))
        .findFirst()
        .orElseThrow(() -> new Refusal(400, "There is no such question."));
  }

  /** The question that an answer answers; empty for one that the page does not ask. */
  static Optional<Question> of(Answer answer) {
    return Stream.of(values()).filter(question -> question.found.is(answer)).findFirst();
  }

  /** The headline of an answer of this kind. */
  List<String> sentences(Answer answer, Wording plain) {
    return found.sentencesOf(answer, plain.reading(answer));
  }

  /** The main figures of an answer of this kind. */
  MainTable table(Answer answer, Wording plain) {
    return found.tableOf(answer, plain.reading(answer));
  }

  String label() {
    return label;
  }

  String verb() {
    return verb;
  }

  List<QuestionField> fields() {
    return fields;
  }

  /** The words of the call, the plant file and where the answer goes left out. */
  List<String> call(Ask ask) {
    if (this == GRID && ask.text("vary").isBlank()) {
      throw new Refusal(400, "Say which key is varied, and over which values.");
    }
    List<String> words = new ArrayList<>(List.of(verb));
    words.add("--replications=" + ask.whole("replications", 1, 1_000_000));
    words.add("--seed=" + ask.whole("seed", 0, Integer.MAX_VALUE));
    fields.forEach(field -> field.addTo(words, ask));
    return words;
  }
}
