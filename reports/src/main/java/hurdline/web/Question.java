package hurdline.web;

import hurdline.answer.Answer;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.GridAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.study.backtest.Backtest;
import hurdline.text.ChooseHeadline;
import hurdline.text.ChooseTable;
import hurdline.text.CompareHeadline;
import hurdline.text.CompareTable;
import hurdline.text.GridHeadline;
import hurdline.text.GridTable;
import hurdline.text.RunHeadline;
import hurdline.text.RunTable;
import hurdline.text.SeasonHeadline;
import hurdline.text.SeasonTable;
import hurdline.text.YardHeadline;
import hurdline.text.YardTable;
import hurdline.web.http.Ask;
import hurdline.web.http.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A question that the page can ask of a plant: what a person fills in, and the call of the terminal
 * that it becomes. The page draws all of them from this list, so a further question is a further
 * entry here and nothing else.
 */
enum Question {
  RUN(
      Found.of(RunAnswer.class, (a, w) -> new RunHeadline(a, w).sentences(), RunTable::of),
      "run",
      "What will the plant do?",
      "Simulates its calendar: what comes out, what limits each line, what it earns.",
      List.of(QuestionField.options("option", "With these options", "+"), QuestionField.until())),
  COMPARE(
      Found.of(
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
      Found.of(YardAnswer.class, (a, w) -> new YardHeadline(a, w).sentences(), YardTable::of),
      "yard",
      "How large must the yard be?",
      "How many bales and how much ground, and how often each size overflows.",
      List.of(
          QuestionField.text("overflow", "It may overflow in", "5%", "of seasons"),
          QuestionField.text(
              "acres", "Acres: share of seasons that must be met", "", "such as 90%"),
          QuestionField.options("option", "With these options", "+"))),
  SEASON(
      Found.of(SeasonAnswer.class, (a, w) -> new SeasonHeadline(a, w).sentences(), SeasonTable::of),
      "season",
      "Which season plan is best?",
      "Simulates the plans of a shared building on the same random draws.",
      List.of(QuestionField.plans("plans", "Plans; none for all"))),
  CHOOSE(
      Found.of(ChooseAnswer.class, (a, w) -> new ChooseHeadline(a, w).sentences(), ChooseTable::of),
      "choose",
      "Which of many plans is the best?",
      "Simulates all combinations of what stands under choices in the file, round by round.",
      List.of(
          QuestionField.text(
              "best", "Best by, and a difference that matters", "money.margin:5000", ""),
          QuestionField.text("budget", "Budgets, if any", "", "such as 0,60000,140000"),
          QuestionField.tick("worth", "After the yearly cost of what each plan buys"))),
  GRID(
      Found.of(GridAnswer.class, (a, w) -> new GridHeadline(a, w).sentences(), GridTable::of),
      "run",
      "What if one or two figures are others?",
      "Simulates the plant over a grid of one or two keys.",
      List.of(
          QuestionField.text(
              "vary", "Key and values", "", "such as machines.mill.power=x0.5..x2..x0.5"),
          QuestionField.text(
                  "vary2", "A second key, if wanted", "", "such as money.wage=x0.8..x1.2..x0.2")
              .of("vary"))),
  FIT(
      Found.ofRecords(),
      "fit",
      "What do our own records say?",
      "Reads stops, shifts, tickets and the rest, and says what figures of the plant are in them. You may then put these into its text.",
      List.of(records())),
  BACKTEST(
      Found.ofASeason(),
      "backtest",
      "Does the model agree with a season that has been?",
      "Simulates the season of the plant's own records and says what differs by more than chance.",
      List.of(records()));

  private static QuestionField records() {
    return QuestionField.folder("records", "Folder of records", "records", "in this folder");
  }

  /**
   * As the page draws it.
   *
   * @param fewest replications that answer anything; 0 where none are simulated
   */
  record Shown(
      String id, String label, String description, int fewest, List<QuestionField> fields) {}

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
        .map(q -> new Shown(q.name(), q.label, q.description, q.fewest(), q.fields))
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

  Found<?> found() {
    return found;
  }

  String label() {
    return label;
  }

  String verb() {
    return verb;
  }

  private int fewest() {
    return switch (this) {
      case FIT -> 0;
      case BACKTEST -> Backtest.fewest();
      case CHOOSE -> 2;
      default -> 1;
    };
  }

  /** Whether it is over so soon that nothing is kept where it is stopped. */
  boolean isBrief() {
    return this == FIT;
  }

  /** A line that the terminal's call says, in the words of the page that asked. */
  String told(String line) {
    String told =
        line.replaceFirst("^hurdline: ", "")
            .replaceFirst(" See hurdline \\w+ --help$", "")
            .replace(", or name another folder with --out", "");
    for (QuestionField field : fields) {
      if (!field.flag().isEmpty()) {
        told = told.replaceAll(field.flag() + "(?![a-z-])", "\"" + field.label() + "\"");
      }
    }
    return told;
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
    if (fewest() > 0) {
      words.add("--replications=" + ask.whole("replications", fewest(), 1_000_000));
    }
    words.add("--seed=" + ask.whole("seed", 0, Integer.MAX_VALUE));
    fields.forEach(field -> field.addTo(words, ask));
    return words;
  }
}
