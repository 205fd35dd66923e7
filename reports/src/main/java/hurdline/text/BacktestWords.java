package hurdline.text;

import hurdline.answer.BacktestAnswer;
import hurdline.answer.BacktestAnswer.Kind;
import hurdline.answer.BacktestAnswer.Move;
import hurdline.answer.BacktestAnswer.Series;
import hurdline.answer.BacktestAnswer.Verdict;
import hurdline.answer.KeyNames;
import hurdline.answer.Titles;
import hurdline.unit.Counted;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a season that has been says of the model, for terminal and page. */
public final class BacktestWords {
  private static final int NAMED = 3;

  /** Less is within what the draws say anyway. */
  private static final double MOVED = 1;

  /** Columns behind the first of the terminal's table. */
  private static final int OTHERS = 50;

  /** Beyond so many errors it is not the input. */
  private static final double ANOTHER_CAUSE = 3;

  /** Less of an input's variance taken away says nothing of it. */
  private static final double TOLD = 0.1;

  private final BacktestAnswer answer;
  private final Wording wording;

  public BacktestWords(BacktestAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** What one would say of it. */
  public List<String> headline() {
    List<String> said = new ArrayList<>();
    List<Series> off = of(Verdict.MISSES, Verdict.PROBABLY_OFF);
    List<Series> agree = of(Verdict.AGREES, Verdict.TOO_SMALL_TO_MATTER);
    List<Series> open = of(Verdict.CANNOT_TELL);
    if (off.isEmpty()) {
      said.add(
          agree.isEmpty()
              ? "This season cannot tell whether the model is right."
              : "This season gives no reason to doubt the model.");
    }
    off.stream()
        .sorted(Comparator.comparingDouble((Series of) -> of.chance()))
        .limit(NAMED)
        .forEach(of -> said.add(Titles.capital(sentence(of))));
    if (off.size() > NAMED) {
      said.add(
          wording.count(off.size() - NAMED)
              + (off.size() == NAMED + 1 ? " more is" : " more are")
              + " off: the table says which.");
    }
    if (!agree.isEmpty()) {
      said.add("These agree: " + names(agree) + ".");
    }
    if (!open.isEmpty()) {
      said.add(
          "Of "
              + wording.count(open.size())
              + " of "
              + Counted.of(answer.series().size(), wording.count(answer.series().size()), "figure")
              + " the season cannot tell: chance alone moves them by more than what matters.");
    }
    next().ifPresent(said::add);
    return said;
  }

  private List<Series> of(Verdict... verdicts) {
    return answer.series().stream().filter(of -> List.of(verdicts).contains(of.verdict())).toList();
  }

  private String names(List<Series> of) {
    String first = of.stream().limit(NAMED).map(this::label).collect(Collectors.joining(", "));
    return of.size() > NAMED ? first + " and " + wording.count(of.size() - NAMED) + " more" : first;
  }

  /** What a series is called within a sentence. */
  public String label(Series of) {
    return label(of.kind(), of.of());
  }

  public String label(Kind kind, String of) {
    Titles titles = wording.titles();
    return switch (kind) {
      case FED -> Titles.inText(titles.crop(of)) + " fed";
      case MADE -> Titles.inText(titles.product(of)) + " made";
      case YARD -> Titles.inText(titles.crop(of)) + " in the yard";
      case STOPS -> stop(of) + ", times";
      case STOP_HOURS -> stop(of) + ", hours";
      case ENERGY -> "electricity";
    };
  }

  private String stop(String of) {
    String path = "machines." + of.replaceFirst("\\.", ".stops.");
    return KeyNames.of(path, wording.titles()).replaceFirst("^stop ", "");
  }

  private String sentence(Series of) {
    return label(of)
        + ": "
        + percent(of.off())
        + (of.off() > 0 ? " more" : " less")
        + " than simulated, and chance explains "
        + percent(open(of))
        + " at most"
        + (of.verdict() == Verdict.PROBABLY_OFF ? ", so it is probably off." : ".");
  }

  private static double open(Series of) {
    return (of.high95() - of.low95()) / 2;
  }

  private String percent(double share) {
    return wording.fixed(Math.abs(share), Math.abs(share) < 0.1 ? 1 : 0, "share") + " %";
  }

  /** Which input would have to move; empty where no input is known to. */
  public Optional<String> next() {
    List<Move> moved = moved();
    if (of(Verdict.MISSES, Verdict.PROBABLY_OFF).isEmpty()) {
      return Optional.empty();
    }
    if (answer.moves().isEmpty()) {
      return Optional.of(
          "With --draws the answer says which input would have to move, and how far.");
    }
    if (moved.isEmpty()) {
      return Optional.of("No input that was drawn would have to move: look for another cause.");
    }
    return Optional.of(
        "Look first at "
            + moved.stream().limit(2).map(this::move).collect(Collectors.joining("; then at "))
            + ".");
  }

  /** Inputs that the season moves by more than their error, the farthest first. */
  public List<Move> moved() {
    return answer.moves().stream()
        .filter(move -> Math.abs(move.errors()) >= MOVED && move.told() >= TOLD)
        .toList();
  }

  private String move(Move of) {
    return input(of)
        + " (by "
        + percent(of.becomes() / of.was() - 1)
        + (of.becomes() > of.was() ? " up" : " down")
        + (Math.abs(of.errors()) > ANOTHER_CAUSE
            ? ", which is more than the records leave open: there may be another cause)"
            : ")");
  }

  public String input(Move of) {
    return KeyNames.of(of.input(), wording.titles());
  }

  /** A verdict in words. */
  public String verdict(Series of) {
    return switch (of.verdict()) {
      case AGREES -> "agrees to within " + percent(of.tolerance());
      case CANNOT_TELL -> "cannot tell: chance alone moves it by " + percent(open(of));
      case TOO_SMALL_TO_MATTER -> "off, too little to matter";
      case PROBABLY_OFF -> "probably off";
      case MISSES -> "off";
    };
  }

  private static String word(Verdict verdict) {
    return switch (verdict) {
      case AGREES -> "agrees";
      case CANNOT_TELL -> "cannot tell";
      case TOO_SMALL_TO_MATTER -> "agrees nearly";
      case PROBABLY_OFF -> "probably off";
      case MISSES -> "off";
    };
  }

  /** Head and rows of the table of series, for a page without the last column. */
  public List<List<String>> table() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "figure",
            "records",
            "simulated",
            "unit",
            "off by",
            "chance of it",
            "verdict",
            "verdict"));
    for (Series of : answer.series()) {
      double half = 2 * of.sd();
      rows.add(
          List.of(
              Titles.capital(label(of)),
              wording.number(of.seen(), of.mean() - half, of.mean() + half, of.unit()),
              wording.number(of.mean(), of.mean() - half, of.mean() + half, of.unit()),
              of.unit().equals("count") ? "" : wording.unit(of.unit()),
              (of.off() > 0 ? "+" : of.off() < 0 ? "-" : "") + percent(of.off()),
              wording.fixed(of.chance(), 3, "count"),
              verdict(of),
              word(of.verdict())));
    }
    return rows;
  }

  /** For a terminal of so many columns. */
  public List<String> lines(int width) {
    List<String> lines = new ArrayList<>();
    lines.add(
        answer.header().plant()
            + ", the season of "
            + wording.span(answer.header().from(), answer.header().to())
            + " from "
            + answer.records()
            + ", "
            + wording.count(answer.header().replications())
            + " replications, seed "
            + answer.header().seed());
    lines.addAll(headline());
    lines.add("");
    List<List<String>> rows = table();
    int first =
        Math.max(
            20,
            Math.min(
                rows.stream().mapToInt(row -> row.get(0).length()).max().orElse(0),
                width - 2 - OTHERS));
    for (List<String> row : rows) {
      String label = row.get(0);
      if (label.length() > first) {
        lines.add("  " + label);
        label = "";
      }
      lines.add(
          "  "
              + pad(label, first)
              + left(row.get(1), 10)
              + left(row.get(2), 10)
              + " "
              + pad(row.get(3), 7)
              + left(row.get(4), 7)
              + "  "
              + row.get(7));
    }
    lines.add("");
    lines.addAll(notes());
    return lines;
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  private static String left(String text, int width) {
    return " ".repeat(Math.max(1, width - text.length())) + text;
  }

  /** What is to be known of the verdicts. */
  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        answer.source().isEmpty()
            ? "Chance is that of the simulation alone; with --draws it covers the error of the inputs too, without which every"
                + " season fails sooner or later."
            : "Chance covers the error of the inputs too (" + answer.source() + ").");
    notes.add(
        "If the figures were fitted on this season, that it agrees is no test: fit on one season and test on another.");
    return notes;
  }
}
