package hurdline.web;

import hurdline.answer.Answer;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.GridAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
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
import java.util.function.BiConsumer;
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
      List.of(Field.options("option", "With these options"), Field.until()),
      (ask, words) -> {
        joined(ask, "option", "+", words);
        flag(ask, "until", words);
      }),
  COMPARE(
      new Found<>(
          CompareAnswer.class, (a, w) -> new CompareHeadline(a, w).sentences(), CompareTable::of),
      "compare",
      "Do its options pay?",
      "Sets options against the plant as it stands, on the same random draws.",
      List.of(
          Field.options("among", "Options; none for all"),
          Field.text("lives", "Simulated service lives", "", "30 if left empty; from 2 on"),
          Field.tick("gain", "Effect of 10 % more of each machine, bin, resource and shift"),
          Field.tick("tornado", "What the net present value is sensitive to (tornado)"),
          Field.text(
              "break_even", "Break-even of", "", "such as money.wage or products.hurd.price"),
          Field.until()),
      (ask, words) -> {
        joined(ask, "among", ",", words);
        named(ask, "lives", "service-lives", words);
        ticked(ask, "gain", words);
        ticked(ask, "tornado", words);
        named(ask, "break_even", "break-even", words);
        flag(ask, "until", words);
      }),
  YARD(
      new Found<>(YardAnswer.class, (a, w) -> new YardHeadline(a, w).sentences(), YardTable::of),
      "yard",
      "How large must the yard be?",
      "How many bales and how much ground, and how often each size overflows.",
      List.of(
          Field.text("overflow", "It may overflow in", "5%", "of seasons"),
          Field.text("acres", "Acres: share of seasons that must be met", "", "such as 90%"),
          Field.options("option", "With these options")),
      (ask, words) -> {
        flag(ask, "overflow", words);
        flag(ask, "acres", words);
        joined(ask, "option", "+", words);
      }),
  SEASON(
      new Found<>(
          SeasonAnswer.class, (a, w) -> new SeasonHeadline(a, w).sentences(), SeasonTable::of),
      "season",
      "Which season plan is best?",
      "Simulates the plans of a shared building on the same random draws.",
      List.of(Field.plans("plans", "Plans; none for all")),
      (ask, words) -> joined(ask, "plans", ",", words)),
  CHOOSE(
      new Found<>(
          ChooseAnswer.class, (a, w) -> new ChooseHeadline(a, w).sentences(), ChooseTable::of),
      "choose",
      "Which of many plans is the best?",
      "Simulates all combinations of what stands under choices in the file, round by round.",
      List.of(
          Field.text("best", "Best by, and a difference that matters", "money.margin:5000", ""),
          Field.text("budget", "Budgets, if any", "", "such as 0,60000,140000"),
          Field.tick("worth", "After the yearly cost of what each plan buys")),
      (ask, words) -> {
        flag(ask, "best", words);
        flag(ask, "budget", words);
        ticked(ask, "worth", words);
      }),
  GRID(
      new Found<>(GridAnswer.class, (a, w) -> new GridHeadline(a, w).sentences(), GridTable::of),
      "run",
      "What if one or two figures are others?",
      "Simulates the plant over a grid of one or two keys.",
      List.of(
          Field.text("vary", "Key and values", "", "such as machines.mill.power=x0.5..x2..x0.5"),
          Field.text("vary2", "A second key, if wanted", "", "such as money.wage=x0.8,x1,x1.2")),
      (ask, words) -> {
        if (ask.text("vary").isBlank()) {
          throw new Refusal(400, "Say which key is varied, and over which values.");
        }
        named(ask, "vary", "vary", words);
        named(ask, "vary2", "vary", words);
      });

  private static final int MOST_WORDS = 1000;

  /**
   * Something to fill in.
   *
   * @param kind {@code text}, {@code tick}, {@code options} or {@code plans} of the plant
   * @param value that it has at first
   * @param hint beside it
   */
  record Field(String name, String label, String kind, String value, String hint) {
    static Field text(String name, String label, String value, String hint) {
      return new Field(name, label, "text", value, hint);
    }

    static Field until() {
      return text(
          "until", "Go on until known to", "", "such as money.margin:2%; at least 40 replications");
    }

    static Field tick(String name, String label) {
      return new Field(name, label, "tick", "", "");
    }

    static Field options(String name, String label) {
      return new Field(name, label, "options", "", "");
    }

    static Field plans(String name, String label) {
      return new Field(name, label, "plans", "", "");
    }
  }

  /** As the page draws it. */
  record Shown(String id, String label, String description, List<Field> fields) {}

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
  private final List<Field> fields;
  private final BiConsumer<Ask, List<String>> flags;

  Question(
      Found<?> found,
      String verb,
      String label,
      String description,
      List<Field> fields,
      BiConsumer<Ask, List<String>> flags) {
    this.found = found;
    this.verb = verb;
    this.label = label;
    this.description = description;
    this.fields = fields;
    this.flags = flags;
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

  /**
   * The words of the call, the plant file and where the answer goes left out. Each value stands
   * behind the equals sign of its flag, so that none can become a flag.
   */
  List<String> call(Ask ask) {
    List<String> words = new ArrayList<>(List.of(verb));
    words.add("--replications=" + ask.whole("replications", 1, 1_000_000));
    words.add("--seed=" + ask.whole("seed", 0, Integer.MAX_VALUE));
    flags.accept(ask, words);
    return words;
  }

  private static void flag(Ask ask, String name, List<String> words) {
    named(ask, name, name, words);
  }

  private static void named(Ask ask, String name, String flag, List<String> words) {
    String value = ask.text(name).strip();
    if (value.length() > MOST_WORDS) {
      throw new Refusal(400, "\"" + name + "\" is too long.");
    }
    if (!value.isEmpty()) {
      words.add("--" + flag + "=" + value);
    }
  }

  private static void ticked(Ask ask, String name, List<String> words) {
    if (ask.text(name).equals("true")) {
      words.add("--" + name);
    }
  }

  private static void joined(Ask ask, String name, String between, List<String> words) {
    List<String> names = ask.texts(name);
    if (!names.isEmpty()) {
      words.add("--" + name + "=" + String.join(between, names));
    }
  }
}
