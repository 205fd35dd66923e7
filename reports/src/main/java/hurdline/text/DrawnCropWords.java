package hurdline.text;

import hurdline.answer.AdjustedRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.answer.YardAnswer;
import hurdline.measure.Measure;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * By how much the drawn years brought more or less crop than the file's mean year, and headline
 * figures adjusted for that.
 *
 * <p>A crop is reported where its drawn mean lies off by more than its standard error, or where a
 * headline figure that the crop explains lies off its adjusted one by more than the standard error
 * of the latter.
 */
public final class DrawnCropWords {
  /** What is adjusted. */
  private enum Kind {
    FIGURES,
    PLANS,
    DIFFERENCES,
    NOTHING
  }

  /** Less than what shows with one decimal of a percent is not reported. */
  private static final double SHOWS = 0.0005;

  private final Outline outline;
  private final List<SummaryRow> summary;
  private final List<AdjustedRow> adjusted;
  private final Kind kind;
  private final Wording wording;
  private final Map<String, SummaryRow> drawn = new LinkedHashMap<>();

  private DrawnCropWords(
      Outline outline,
      List<SummaryRow> summary,
      List<AdjustedRow> adjusted,
      Kind kind,
      Wording wording) {
    this.outline = outline;
    this.summary = summary;
    this.adjusted = adjusted;
    this.kind = kind;
    this.wording = wording;
    for (SummaryRow row : summary) {
      Measure.find(row.measure())
          .filter(match -> match.measure() == Measure.MASS_DRAWN_OVER_MEAN && row.mean() > 0)
          .ifPresent(match -> drawn.putIfAbsent(match.names().get(0), row));
    }
  }

  public static DrawnCropWords of(RunAnswer answer, Wording wording) {
    return new DrawnCropWords(
        answer.outline(), answer.summary(), answer.adjusted(), Kind.FIGURES, wording);
  }

  /** Adjusted are the differences of the options. */
  public static DrawnCropWords of(CompareAnswer answer, Wording wording) {
    return new DrawnCropWords(
        answer.outline(), answer.summary(), answer.adjusted(), Kind.DIFFERENCES, wording);
  }

  /** The drawn crop is that of the first plan; adjusted are the figures of each. */
  public static DrawnCropWords of(SeasonAnswer answer, Wording wording) {
    return new DrawnCropWords(
        answer.outline(), answer.summary(), answer.adjusted(), Kind.PLANS, wording);
  }

  /** Of the yard only the drawn crop is reported. */
  public static DrawnCropWords of(YardAnswer answer, Wording wording) {
    return new DrawnCropWords(answer.outline(), answer.summary(), List.of(), Kind.NOTHING, wording);
  }

  /**
   * A clause for each crop that is off, with its adjusted figures behind it; no stop at the end.
   */
  public List<String> clauses() {
    return drawn.keySet().stream()
        .filter(this::isOff)
        .map(crop -> brought(crop) + adjusted(crop))
        .toList();
  }

  /** The same as whole sentences without the adjusted figures, which stand in a table. */
  public List<String> sentences() {
    return drawn.keySet().stream()
        .filter(this::isOff)
        .map(crop -> upper(brought(crop)) + ".")
        .toList();
  }

  /** Whether such an answer has adjusted figures at all. */
  public boolean adjusts() {
    return kind != Kind.NOTHING;
  }

  /** Adjusted figures that are worth to be read, of the crops that are off. */
  public List<AdjustedRow> rows() {
    return adjusted.stream().filter(row -> row.helps() && isOff(row.crop())).toList();
  }

  /** Crops of which no mean is known exactly. */
  public List<String> withoutMean() {
    return outline.crops().stream()
        .map(Outline.Crop::name)
        .filter(crop -> !drawn.containsKey(crop))
        .toList();
  }

  private boolean isOff(String crop) {
    SummaryRow row = drawn.get(crop);
    if (row == null || !(Math.abs(row.mean() - 1) >= SHOWS)) {
      return false;
    }
    return Math.abs(row.mean() - 1) > error(row)
        || adjusted.stream().anyMatch(one -> one.crop().equals(crop) && one.helps() && one.isOff());
  }

  private static double error(SummaryRow row) {
    return row.sd() / Math.sqrt(row.replications());
  }

  private String brought(String crop) {
    SummaryRow row = drawn.get(crop);
    return "the "
        + wording.amount(row.replications(), "count")
        + " years drawn brought "
        + wording.fixed(Math.abs(row.mean() - 1), 1, "share")
        + (row.mean() > 1 ? " % more " : " % less ")
        + Titles.inText(wording.titles().crop(crop))
        + " than the file's mean year (standard error "
        + wording.fixed(error(row), 1, "share")
        + " %)";
  }

  private String adjusted(String crop) {
    Map<String, List<AdjustedRow>> byOption =
        rows().stream()
            .filter(row -> row.crop().equals(crop))
            .collect(
                Collectors.groupingBy(
                    AdjustedRow::option, LinkedHashMap::new, Collectors.toList()));
    String told =
        byOption.values().stream()
            .map(rows -> option(rows.get(0)) + figures(rows))
            .collect(Collectors.joining("; "));
    return told.isEmpty() ? "" : "; adjusted for that: " + told;
  }

  private String figures(List<AdjustedRow> rows) {
    return rows.stream()
        .map(
            row ->
                measure(row)
                    + " "
                    + sign(row.adjusted())
                    + wording.withInterval(row.adjusted(), row.low95(), row.high95(), row.unit()))
        .collect(Collectors.joining(", "));
  }

  /** {@code left over of stalk_line}, in a comparison {@code bigger_mill: margin}. */
  public String label(AdjustedRow row) {
    return option(row) + measure(row);
  }

  private String option(AdjustedRow row) {
    boolean several = adjusted.stream().map(AdjustedRow::option).distinct().count() > 1;
    if (kind != Kind.DIFFERENCES && !several) {
      return "";
    }
    return (kind == Kind.PLANS
            ? wording.titles().plan(row.option())
            : wording.titles().option(row.option()))
        + ": ";
  }

  private String measure(AdjustedRow row) {
    return Measure.find(row.measure())
        .map(
            match ->
                switch (match.measure()) {
                  case MASS_FED ->
                      Titles.inText(wording.titles().crop(match.names().get(0))) + " fed";
                  case SEASON_LEFT_OVER ->
                      "carry-over of " + wording.titles().lineInText(match.names().get(0));
                  case YARD_PEAK ->
                      "yard peak of " + Titles.inText(wording.titles().crop(match.names().get(0)));
                  case MONEY_MARGIN -> "margin";
                  default -> row.measure();
                })
        .orElse(row.measure());
  }

  /** The adjusted figure without its unit. */
  public String number(AdjustedRow row) {
    return sign(row.adjusted())
        + wording.number(row.adjusted(), row.low95(), row.high95(), row.unit());
  }

  /** The plain figure, with the digits of the adjusted one so that the two can be compared. */
  public String plain(AdjustedRow row) {
    return sign(row.mean()) + wording.number(row.mean(), row.low95(), row.high95(), row.unit());
  }

  private String sign(double difference) {
    return kind == Kind.DIFFERENCES && difference > 0 ? "+" : "";
  }

  private static String upper(String clause) {
    return Character.toUpperCase(clause.charAt(0)) + clause.substring(1);
  }
}
