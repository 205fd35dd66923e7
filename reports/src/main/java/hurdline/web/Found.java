package hurdline.web;

import hurdline.answer.Answer;
import hurdline.answer.BacktestAnswer;
import hurdline.answer.CheckAnswer;
import hurdline.answer.FitAnswer;
import hurdline.text.BacktestWords;
import hurdline.text.CapacityWords;
import hurdline.text.CheckHeadline;
import hurdline.text.FitWords;
import hurdline.text.MainTable;
import hurdline.text.Wording;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/**
 * How an answer of one kind is told in the list of answers, and beside another.
 *
 * @param sentences its headline
 * @param figures its main figures by what they are, each with unit and interval
 */
record Found<A extends Answer>(
    Class<A> type,
    BiFunction<A, Wording, List<String>> sentences,
    BiFunction<A, Wording, Map<String, String>> figures) {
  /** Kinds that the page shows and a terminal alone asks for. */
  private static final List<Found<?>> OF_THE_TERMINAL =
      List.of(
          new Found<>(
              CheckAnswer.class, (a, w) -> new CheckHeadline(a, w).sentences(), Found::rated));

  /** Of an answer with a table of main figures. */
  static <A extends Answer> Found<A> of(
      Class<A> type,
      BiFunction<A, Wording, List<String>> sentences,
      BiFunction<A, Wording, MainTable> table) {
    return new Found<>(type, sentences, (a, w) -> figures(table.apply(a, w)));
  }

  static Found<BacktestAnswer> ofASeason() {
    return new Found<>(
        BacktestAnswer.class, (a, w) -> new BacktestWords(a, w).headline(), Found::compared);
  }

  static Found<FitAnswer> ofRecords() {
    return new Found<>(FitAnswer.class, (a, w) -> new FitWords(a, w).headline(), Found::fitted);
  }

  /** Of any kind of answer. */
  static Optional<Found<?>> of(Answer answer) {
    return Stream.concat(
            Stream.of(Question.values()).map(Question::found), OF_THE_TERMINAL.stream())
        .<Found<?>>map(found -> found)
        .filter(found -> found.is(answer))
        .findFirst();
  }

  boolean is(Answer answer) {
    return type.isInstance(answer);
  }

  List<String> sentencesOf(Answer answer, Wording plain) {
    return sentences.apply(type.cast(answer), plain.reading(answer));
  }

  Map<String, String> figuresOf(Answer answer, Wording plain) {
    return figures.apply(type.cast(answer), plain.reading(answer));
  }

  private static Map<String, String> figures(MainTable table) {
    Map<String, String> figures = new LinkedHashMap<>();
    int interval = table.head().indexOf("95 % interval");
    for (List<String> row : table.grid()) {
      String range =
          interval < 0 || row.get(interval).isBlank() ? "" : " (" + row.get(interval) + ")";
      figures.putIfAbsent(row.get(0), (row.get(1) + " " + row.get(2)).strip() + range);
    }
    return figures;
  }

  /** What was simulated, beside the records. */
  private static Map<String, String> compared(BacktestAnswer answer, Wording wording) {
    BacktestWords words = new BacktestWords(answer, wording);
    Map<String, String> figures = new LinkedHashMap<>();
    List<List<String>> rows = words.table();
    for (List<String> row : rows.subList(1, rows.size())) {
      figures.put(
          row.get(0),
          (row.get(2) + " " + row.get(3)).strip()
              + " (records "
              + row.get(1)
              + ", off by "
              + row.get(4)
              + ": "
              + row.get(7)
              + ")");
    }
    return figures;
  }

  private static Map<String, String> fitted(FitAnswer answer, Wording wording) {
    FitWords words = new FitWords(answer, wording);
    Map<String, String> figures = new LinkedHashMap<>();
    List<List<String>> rows = words.figures();
    for (List<String> row : rows.subList(1, rows.size())) {
      figures.put(row.get(0), row.get(2) + (row.get(3).isEmpty() ? "" : " (" + row.get(3) + ")"));
    }
    List<List<String>> checks = words.checks();
    checks.subList(1, checks.size()).forEach(row -> figures.putIfAbsent(row.get(0), row.get(2)));
    return figures;
  }

  private static Map<String, String> rated(CheckAnswer answer, Wording wording) {
    Map<String, String> figures = new LinkedHashMap<>();
    answer
        .capacity()
        .lines()
        .forEach(
            line -> {
              CapacityWords words = new CapacityWords(line, wording);
              String title = wording.titles().line(line.line());
              figures.put(title + ", rated", words.rated());
              figures.put(title + ", expected", words.expected());
            });
    return figures;
  }
}
