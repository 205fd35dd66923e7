package hurdline.words;

import hurdline.answer.Header;
import hurdline.answer.HolderRow;
import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The answer of a run in a dozen lines for the terminal, and in two sentences for the head of the
 * report.
 */
public final class RunWords {
  private static final int HOLDERS_TOLD = 3;

  /** A 5 % quantile speaks of one season in so many. */
  private static final int ONE_IN = 20;

  private final RunAnswer answer;
  private final Wording wording;

  public RunWords(RunAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** What the terminal shows. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(title());
    for (Outline.Line line : answer.outline().lines()) {
      lines.add(line.name() + ": " + fed(line));
      add(lines, "  made      ", made(line));
      add(lines, "  limited   of scheduled hours ", held(line.name()));
      add(lines, "  next      ", next(line.name()));
      add(lines, "  left over ", leftOver(line));
    }
    add(lines, "yard peak   ", yardPeaks());
    new OrderWords(answer.capacity(), wording)
        .warnings()
        .forEach(warning -> lines.add("warning     " + warning));
    add(lines, "money       ", money());
    DrawnCropWords.of(answer, wording).clauses().forEach(clause -> lines.add("drawn crop  " + clause));
    if (answer.header().replications() > 1) {
      lines.add(
          "In brackets: 95 % interval of the mean of "
              + answer.header().replications()
              + " replications.");
    }
    return lines;
  }

  /** The answer in two sentences: what comes out, and what holds the line. */
  public List<String> twoSentences() {
    String first =
        answer.outline().lines().stream()
            .map(line -> line.name() + " is fed " + fed(line) + leftOverClause(line))
            .collect(
                Collectors.joining(
                    "; ",
                    "From " + wording.span(answer.header().from(), answer.header().to()) + " ",
                    ""));
    String margin =
        answer
            .find(Measure.MONEY_MARGIN.of())
            .map(row -> "; the margin is " + wording.withInterval(row))
            .orElse("");
    String second =
        answer.outline().lines().stream()
            .filter(line -> !held(line.name()).isEmpty())
            .map(line -> line.name() + " is held " + held(line.name()))
            .collect(Collectors.joining("; ", "Of its scheduled hours ", "."));
    return second.equals("Of its scheduled hours .")
        ? List.of(first + margin + ".")
        : List.of(first + margin + ".", second);
  }

  /**
   * What most single seasons reach, from the 5 % quantiles; empty where there are too few to tell.
   */
  public Optional<String> mostSeasons() {
    if (answer.header().replications() < ONE_IN) {
      return Optional.empty();
    }
    List<String> parts = new ArrayList<>();
    answer.outline().lines().stream()
        .map(Outline.Line::crop)
        .distinct()
        .forEach(
            crop ->
                answer
                    .find(Measure.MASS_FED.of(crop))
                    .ifPresent(row -> parts.add("at least " + low(row) + " of " + crop + " are fed")));
    answer
        .find(Measure.MONEY_MARGIN.of())
        .ifPresent(row -> parts.add("the margin is " + low(row) + " or more"));
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "In "
                + (ONE_IN - 1)
                + " of "
                + ONE_IN
                + " simulated years, one figure at a time, "
                + String.join("; ", parts)
                + ".");
  }

  private String low(SummaryRow row) {
    return wording.number(row.p05(), row.low95(), row.high95(), row.unit())
        + " "
        + wording.unit(row.unit());
  }

  String title() {
    Header header = answer.header();
    TitleWords title = new TitleWords(header, wording);
    return header.plant() + ", " + header.option() + title.changes() + ", " + title.played();
  }

  private String fed(Outline.Line line) {
    String fed =
        answer.find(Measure.MASS_FED.of(line.crop())).map(wording::withInterval).orElse("nothing")
            + " of "
            + line.crop();
    // The measure is the crop's; where lines share one, a line's own part shows in its rate.
    String shared =
        answer.outline().lines().stream().filter(other -> other.crop().equals(line.crop())).count()
                > 1
            ? " in all lines"
            : "";
    String rate =
        answer
            .find(Measure.LINE_THROUGHPUT.of(line.name()))
            .map(row -> ", " + wording.amount(row))
            .orElse("");
    String hours =
        answer
            .find(Measure.LINE_HOURS_SCHEDULED.of(line.name()))
            .map(
                row ->
                    " over "
                        + wording.number(row.mean(), row.low95(), row.high95(), "h")
                        + " scheduled hours")
            .orElse("");
    return fed + shared + rate + hours;
  }

  private String made(Outline.Line line) {
    return line.products().stream()
        .map(
            product ->
                answer
                    .find(Measure.PRODUCT_MASS.of(product))
                    .map(row -> product + " " + wording.amount(row)))
        .flatMap(java.util.Optional::stream)
        .collect(Collectors.joining(", "));
  }

  private String held(String line) {
    return answer.holders().stream()
        .filter(row -> row.line().equals(line) && row.share() >= 0.005)
        .limit(HOLDERS_TOLD)
        .map(this::heldBy)
        .collect(Collectors.joining(", "));
  }

  private String heldBy(HolderRow row) {
    return wording.share(row) + " by " + answer.outline().titles().cause(row.cause());
  }

  private String next(String line) {
    return answer
        .capacity()
        .line(line)
        .flatMap(capacity -> new CapacityWords(capacity, wording).next())
        .map(next -> next + "; compare --gain simulates 10 % more")
        .orElse("");
  }

  private String leftOver(Outline.Line line) {
    return answer
        .find(Measure.SEASON_LEFT_OVER.of(line.name()))
        .map(row -> wording.withInterval(row) + " when its season ends")
        .orElse("");
  }

  private String leftOverClause(Outline.Line line) {
    return answer
        .find(Measure.SEASON_LEFT_OVER.of(line.name()))
        .filter(row -> row.mean() > 0)
        .map(row -> ", and " + wording.withInterval(row) + " are left over")
        .orElse("");
  }

  private String yardPeaks() {
    return answer.outline().crops().stream()
        .map(crop -> answer.find(Measure.YARD_PEAK.of(crop.name())).map(row -> peak(crop, row)))
        .flatMap(java.util.Optional::stream)
        .collect(Collectors.joining(", "));
  }

  private String peak(Outline.Crop crop, SummaryRow row) {
    double room = answer.outline().capacityFor(crop.name());
    return crop.name()
        + " "
        + wording.withInterval(row)
        + (room > 0 ? " of " + wording.amount(room, crop.unit()) : "");
  }

  private String money() {
    return answer
        .find(Measure.MONEY_MARGIN.of())
        .map(
            row ->
                "revenue "
                    + answer
                        .find(Measure.MONEY_REVENUE.of())
                        .map(wording::amount)
                        .orElse("not defined")
                    + ", margin "
                    + wording.withInterval(row))
        .orElse("");
  }

  private static void add(List<String> lines, String head, String text) {
    if (!text.isEmpty()) {
      lines.add(head + text);
    }
  }
}
