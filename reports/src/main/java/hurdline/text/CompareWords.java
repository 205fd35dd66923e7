package hurdline.text;

import hurdline.answer.CompareAnswer;
import hurdline.answer.DifferenceRow;
import hurdline.answer.Header;
import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.Selection;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The answer of a comparison for the terminal, and its figures in words for the report. */
public final class CompareWords {

  private final CompareAnswer answer;
  private final Wording wording;

  public CompareWords(CompareAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /**
   * What the terminal shows: what one would say of it, the main figures as a table, and what else
   * was asked.
   *
   * @param width columns that a line of the table may have
   */
  public List<String> lines(int width) {
    MainTable table = CompareTable.of(answer, wording);
    List<String> lines = new ArrayList<>();
    lines.add(title());
    lines.addAll(new CompareHeadline(answer, wording).sentences());
    lines.addAll(warnings());
    lines.add("");
    RankedAlternatives alternatives = new RankedAlternatives(answer, wording);
    if (alternatives.isWanted()) {
      lines.addAll(alternatives.lines(width));
      lines.add("");
    }
    lines.addAll(table.lines(width));
    lines.add("");
    WorthWords more = new WorthWords(answer, wording);
    for (CompareAnswer.Option option : answer.options()) {
      String name = Titles.inText(wording.titles().option(option.name()));
      add(
          lines,
          "not significant  ",
          open(option.name()).map(said -> name + ": " + said).orElse(""));
      add(
          lines,
          "sensitive to     ",
          more.hangsOn(option.name()).isEmpty() ? "" : name + ": " + more.hangsOn(option.name()));
      add(
          lines,
          "break-even       ",
          more.worthNothing(option.name()).isEmpty()
              ? ""
              : name + ": " + more.worthNothing(option.name()));
    }
    DrawnCropWords.of(answer, wording)
        .clauses()
        .forEach(clause -> lines.add("drawn crop       " + clause));
    best().ifPresent(lines::add);
    List<String> gains = gains();
    for (int at = 0; at < gains.size(); at++) {
      lines.add((at == 0 ? "10 % more        " : "                 ") + gains.get(at));
    }
    lines.add(legend(table));
    lines.addAll(new InputWords(answer.inputs(), answer.outline(), wording).sentences());
    return lines;
  }

  /** What the figures of the table are. */
  public String legend(MainTable table) {
    int lives = answer.terms().lives();
    return "Against the plant as it stands, on "
        + answer.header().replications()
        + (answer.header().replications() == 1 ? " replication" : " replications")
        + " of the same random draws"
        + (answer.options().size() > 1 && table.hasIntervals()
            ? "; intervals of differences hold for all options together"
            : "")
        + (lives > 0
            ? "; worth and payback over "
                + lives
                + (lives == 1 ? " service life" : " service lives")
            : "")
        + ". Limits are in % of scheduled hours.";
  }

  /**
   * Differences that are not significant, each with the replications that would show one of its
   * size; empty where all are.
   */
  public Optional<String> open(String option) {
    List<String> parts = new ArrayList<>();
    for (MainMeasures main : MainMeasures.of(answer.outline(), wording)) {
      answer
          .difference(option, main.measure())
          .filter(
              row ->
                  isTold(row)
                      && !row.significant()
                      && row.replications() > 1
                      && row.highJoint() > row.lowJoint())
          .ifPresent(
              row ->
                  parts.add(
                      main.label() + needed(row) + PairWords.ofReplications(row, answer.header())));
    }
    return parts.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", parts));
  }

  private static boolean isTold(DifferenceRow row) {
    return Measure.find(row.measure())
        .filter(
            match ->
                !match.dry()
                    && (match.measure() == Measure.MASS_FED
                        || match.measure() == Measure.MONEY_MARGIN))
        .isPresent();
  }

  private String needed(DifferenceRow row) {
    return row.replicationsNeeded() > 0
        ? ", about "
            + wording.aboutAsMany(row.replicationsNeeded()).replaceFirst("^about ", "")
            + " replications would show a difference of this size"
        : "";
  }

  /** What a reader must know before any worth is read, whole sentences. */
  public List<String> warnings() {
    return new LifeWords(answer, wording).warnings();
  }

  /** Which is the best, and what that is worth; empty where it was not asked. */
  public Optional<String> best() {
    Selection best = answer.further().best();
    return best.isAsked() ? Optional.of(best(best)) : Optional.empty();
  }

  private String best(Selection best) {
    String what =
        "the "
            + (best.least() ? "least " : "greatest ")
            + MainMeasures.label(best.measure(), answer.outline(), wording);
    int taken = best.rows().stream().mapToInt(Selection.Row::replications).max().orElseThrow();
    String band = wording.amount(best.zone(), best.unit());
    if (!best.decided()) {
      List<String> left =
          best.rows().stream()
              .filter(Selection.Row::left)
              .map(row -> wording.titles().option(row.option()))
              .toList();
      return "best: not decided after "
          + taken
          + " replications which has "
          + what
          + "; left are "
          + String.join(", ", left);
    }
    return "best: "
        + wording.titles().option(best.option())
        + " has "
        + what
        + ", after "
        + taken
        + " replications; if one is better than each other by "
        + band
        + " or more, the one picked is it with a chance of at least "
        + wording.fixed(best.confidence(), 0, "share")
        + " % (Kim and Nelson's procedure)";
  }

  /** What a tenth more of each thing brings, whole sentences without their stops. */
  public List<String> gains() {
    return new GainWords(
            answer.further().gains(),
            answer.holdersOf(answer.header().option()),
            answer.outline(),
            wording)
        .sentences();
  }

  private String title() {
    Header header = answer.header();
    TitleWords title = new TitleWords(header, wording);
    return header.plant()
        + ", "
        + wording.titles().option("base")
        + title.changes()
        + (answer.options().isEmpty() ? "" : " against ")
        + answer.options().stream()
            .map(option -> Titles.inText(wording.titles().option(option.name())))
            .collect(Collectors.joining(", "))
        + ", "
        + title.simulated();
  }

  /** The mean with its interval, or in words why there is none. */
  public String amount(PaybackRow row) {
    String gaps = GapWords.of(row, wording);
    if (Double.isNaN(row.mean())) {
      return gaps.isEmpty() ? "not defined" : gaps;
    }
    if (isChance(row)) {
      return new LifeWords(answer, wording).chance(row);
    }
    if (RateWords.isBeyond(row, row.mean())) {
      return RateWords.beyond(wording);
    }
    if (Double.isNaN(row.low95())) {
      return wording.rough(row.mean(), row.unit());
    }
    String range = wording.interval(row.mean(), row.low95(), row.high95(), row.unit());
    String number = wording.number(row.mean(), row.low95(), row.high95(), row.unit());
    String percent = row.unit().equals("share") ? " %" : "";
    return number
        + " "
        + wording.unit(row.unit())
        + (range.isEmpty() ? "" : " (" + range + percent + ")")
        + (gaps.isEmpty() ? "" : ", " + gaps);
  }

  /**
   * Percentiles of a row of which some are beyond measure; nothing where the mean says it already.
   */
  private String beyondAt(PaybackRow row) {
    return RateWords.isBeyond(row, row.mean())
        ? ""
        : ", 5th to 95th percentile "
            + RateWords.percentile(row, row.p05(), wording)
            + " to "
            + RateWords.percentile(row, row.p95(), wording);
  }

  /**
   * In words what is no number: how often it is never paid back, or that a rate is beyond measure;
   * else empty.
   */
  Optional<String> inWords(PaybackRow row) {
    if (!Double.isNaN(row.mean()) && RateWords.isBeyond(row)) {
      return Optional.of(amount(row) + beyondAt(row));
    }
    return Double.isNaN(row.mean()) ? Optional.of(amount(row)) : Optional.empty();
  }

  private static boolean isChance(PaybackRow row) {
    return row.quantity() == Quantity.CHANCE_OF_LOSS
        || row.quantity() == Quantity.CHANCE_OF_PAYBACK;
  }

  /** {@code 12 yr}, or {@code 2.5 yr}. */
  public String years(CompareAnswer.Option option) {
    return years(option.lifeYr());
  }

  private String years(double count) {
    return wording.fixed(count, count == Math.rint(count) ? 0 : 1, "yr") + " yr";
  }

  private static void add(List<String> lines, String head, String text) {
    if (!text.isEmpty()) {
      lines.add(head + text);
    }
  }
}
