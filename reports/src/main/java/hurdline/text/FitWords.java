package hurdline.text;

import hurdline.answer.FitAnswer;
import hurdline.answer.FitCheckRow;
import hurdline.answer.FitRow;
import hurdline.answer.RecordFileRow;
import hurdline.answer.RecordReasonRow;
import hurdline.answer.Titles;
import hurdline.unit.Counted;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * What {@code fit} says, on terminal and page. Figures stand in the units in which the plant file
 * will have them.
 */
public final class FitWords {
  private static final MathContext DIGITS = new MathContext(3);
  private static final int REASONS_TOLD = 12;

  private final FitAnswer answer;
  private final Wording wording;

  public FitWords(FitAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** What was found, in a few sentences. */
  public List<String> headline() {
    int rows = answer.files().stream().mapToInt(RecordFileRow::rows).sum();
    int aside = answer.files().stream().mapToInt(RecordFileRow::setAside).sum();
    List<FitRow> fitted =
        answer.figures().stream()
            .filter(FitRow::isFitted)
            .filter(row -> !Double.isNaN(row.mean()))
            .toList();
    List<String> said = new ArrayList<>();
    said.add(
        Counted.of(rows, wording.count(rows), "row")
            + (rows == 1 ? " was read, " : " were read, ")
            + wording.count(aside)
            + " of them set aside, and "
            + Counted.of(fitted.size(), "figure")
            + (fitted.size() == 1 ? " comes" : " come")
            + " out of them.");
    if (fitted.isEmpty()) {
      said.add("The notes and account.csv say why.");
      return said;
    }
    long moved = fitted.stream().filter(FitWords::isMoved).count();
    said.add(
        moved == 0
            ? "None of them differs from the file's by more than twice its error."
            : (moved == 1 ? "One figure differs" : moved + " figures differ")
                + " from the file's by more than twice "
                + (moved == 1 ? "its" : "their")
                + " error"
                + farthest(fitted, moved)
                + ".");
    fitted.stream()
        .filter(row -> row.rows() > 0)
        .max(Comparator.comparingDouble(FitRow::errorShare))
        .ifPresent(
            row ->
                said.add(
                    "The least known: "
                        + label(row.key())
                        + ", give or take "
                        + percent(row.errorShare())
                        + " (standard error): more records of it are worth most."));
    long wrong =
        answer.figures().stream().filter(row -> row.verdict().equals("does not fit")).count();
    if (wrong > 0) {
      said.add(wrong + (wrong == 1 ? " law does" : " laws do") + " not fit: the table says which.");
    }
    return said;
  }

  private String farthest(List<FitRow> fitted, long moved) {
    return fitted.stream()
        .filter(FitWords::isMoved)
        .max(Comparator.comparingDouble(row -> Math.abs(Math.log(row.mean() / row.saidMean()))))
        .map(
            row ->
                (moved == 1 ? ": " : ", most of all: ")
                    + label(row.key())
                    + " ("
                    + number(row.mean())
                    + " "
                    + row.unit()
                    + ", not "
                    + number(row.saidMean())
                    + ")")
        .orElse("");
  }

  private static boolean isMoved(FitRow row) {
    return Math.abs(row.mean() - row.saidMean()) > 2 * row.errorShare() * row.mean();
  }

  /** Head and rows of the table of figures. */
  public List<List<String>> figures() {
    List<List<String>> rows =
        new ArrayList<>(
            List.of(List.of("figure", "file", "records", "95 % interval", "rests on", "fit")));
    for (FitRow row : answer.figures()) {
      if (!row.key().endsWith(".counted")) {
        rows.add(
            List.of(
                Titles.capital(label(row.key())),
                Double.isNaN(row.saidMean()) ? "none" : number(row.saidMean()) + " " + row.unit(),
                row.isFitted() ? number(row.mean()) + " " + row.unit() : "left",
                row.isFitted() ? number(row.low95()) + " to " + number(row.high95()) : "",
                wording.count(row.ended()),
                row.verdict()));
      }
    }
    return rows;
  }

  /** Shares and the like beside what the file comes to. */
  public List<List<String>> checks() {
    List<List<String>> rows =
        new ArrayList<>(List.of(List.of("records", "file", "found", "error")));
    for (FitCheckRow row : answer.checks()) {
      rows.add(
          List.of(
              row.what(),
              withUnit(row.said(), row),
              withUnit(row.found(), row),
              withUnit(row.error(), row)));
    }
    return rows;
  }

  private String withUnit(double value, FitCheckRow row) {
    return Double.isNaN(value) ? "" : number(value) + " " + row.unit();
  }

  public List<List<String>> files() {
    List<List<String>> rows =
        new ArrayList<>(List.of(List.of("file", "rows", "used", "joined", "set aside")));
    answer
        .files()
        .forEach(
            file ->
                rows.add(
                    List.of(
                        file.file(),
                        wording.count(file.rows()),
                        wording.count(file.used()),
                        wording.count(file.joined()),
                        wording.count(file.setAside()))));
    return rows;
  }

  /**
   * Reasons for which rows were set aside, joined or read otherwise than written, with an example.
   */
  public List<List<String>> reasons() {
    List<List<String>> rows =
        new ArrayList<>(List.of(List.of("rows", "file", "verdict", "for example")));
    for (RecordReasonRow reason : answer.reasons()) {
      rows.add(
          List.of(
              wording.count(reason.rows()),
              reason.file(),
              reason.verdict(),
              "line " + reason.exampleLine() + ": " + reason.example()));
    }
    return rows;
  }

  /** What is to be known of single figures. */
  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    for (FitRow row : answer.figures()) {
      if (!row.notes().isEmpty() && !row.key().endsWith(".counted")) {
        notes.add(Titles.capital(label(row.key())) + ": " + String.join("; ", row.notes()) + ".");
      }
    }
    return notes;
  }

  /** What such records never hold, whatever their number. */
  public static List<String> notInRecords() {
    return List.of(
        "What a log does not have: stops too short to be written down, one by one; starving and blocking; the wait for a mechanic without \"work began\"; how material parts inside a line;"
            + " how bales of a load differ in moisture; the rate of a machine that never was the bottleneck. These stay as the file has them.",
        "Errors suppose that the law's family is right and that next year's plant is the one that was recorded.");
  }

  /** For a terminal of so many columns. */
  public List<String> lines(int columns) {
    List<String> lines = new ArrayList<>();
    lines.add(answer.header().file() + ": figures from the records in " + answer.records());
    lines.addAll(headline());
    lines.add("");
    lines.addAll(aligned(figures()));
    if (!answer.checks().isEmpty()) {
      lines.add("");
      lines.addAll(aligned(checks()));
    }
    lines.add("");
    lines.addAll(aligned(files()));
    List<List<String>> reasons = reasons();
    if (reasons.size() > 1) {
      lines.add("");
      lines.addAll(aligned(reasons.subList(0, Math.min(reasons.size(), REASONS_TOLD + 1))));
    }
    if (reasons.size() > REASONS_TOLD + 1) {
      lines.add("  and " + (reasons.size() - REASONS_TOLD - 1) + " more kinds in reasons.csv");
    }
    return lines;
  }

  private static List<String> aligned(List<List<String>> rows) {
    int[] widths = new int[rows.get(0).size()];
    rows.forEach(row -> Arrays.setAll(widths, i -> Math.max(widths[i], row.get(i).length())));
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder("  ");
      for (int i = 0; i < row.size(); i++) {
        line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  /** A key as people read it: {@code separating saw, choke every}. */
  public String label(String key) {
    String[] steps = key.split("\\.");
    Titles titles = answer.outline().titles();
    if (steps[0].equals("machines") && steps.length == 5) {
      return Titles.inText(titles.machine(steps[1]))
          + ", "
          + Titles.inText(titles.stop(steps[1], steps[3]))
          + " "
          + steps[4];
    }
    if (steps[0].equals("machines") && steps.length > 2) {
      return Titles.inText(titles.machine(steps[1]))
          + ", "
          + Titles.ofName(steps[2])
          + (steps.length == 4 ? " " + steps[3] : "");
    }
    if (steps[0].equals("crops")) {
      return Titles.inText(titles.crop(steps[1]))
          + ", "
          + (steps.length == 4 ? steps[2] + " " + steps[3] : steps[2]);
    }
    if (steps[0].equals("deliveries") && steps[2].equals("loads")) {
      return Titles.inText(titles.crop(steps[1])) + ", load every";
    }
    if (steps[0].equals("deliveries") && !steps[2].equals("weather")) {
      String last = steps[steps.length - 1];
      return Titles.inText(titles.crop(steps[1]))
          + ", "
          + (last.equals("lasts") ? steps[steps.length - 2] + " lasts" : Titles.ofName(last));
    }
    if (steps[0].equals("deliveries")) {
      return Titles.inText(titles.crop(steps[1])) + ", " + Titles.ofName(steps[3]);
    }
    return steps.length == 3 ? Titles.ofName(steps[1]) + ", " + steps[2] : key;
  }

  /** Three digits in the reader's marks. */
  public String number(double value) {
    return Double.isNaN(value)
        ? ""
        : wording.plain(BigDecimal.valueOf(value).round(DIGITS).doubleValue());
  }

  private String percent(double share) {
    return number(100 * BigDecimal.valueOf(share).round(new MathContext(2)).doubleValue()) + " %";
  }
}
