package hurdline.words;

import hurdline.answer.CompareAnswer;
import hurdline.answer.DifferenceRow;
import hurdline.answer.Header;
import hurdline.answer.HolderRow;
import hurdline.answer.Outline;
import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.Selection;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The answer of a comparison for the terminal, and in a sentence per option for the report. */
public final class CompareWords {
  private static final int HOLDERS_TOLD = 2;

  /** What pays back within weeks has a rate that says nothing more by its digits. */
  private static final double HIGHEST_RATE = 10;

  private final CompareAnswer answer;
  private final Wording wording;

  public CompareWords(CompareAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** What the terminal shows: the base in a line, then three lines an option. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    WorthWords more = new WorthWords(answer, wording);
    lines.add(title());
    lines.addAll(warnings());
    String held = held("base");
    lines.add(wording.titles().option("base") + ": " + (held.isEmpty() ? "nothing was fed" : "held " + held));
    for (CompareAnswer.Option option : answer.options()) {
      lines.add(wording.titles().option(option.name()) + ": " + differences(option.name()));
      add(lines, "  held  ", held(option.name()));
      add(lines, "  pays  ", worth(option));
      add(lines, "  adds  ", added(option));
      add(lines, "  is sensitive to  ", more.hangsOn(option.name()));
      add(lines, "  break-even ", more.worthNothing(option.name()));
    }
    DrawnCropWords.of(answer, wording).clauses().forEach(clause -> lines.add("drawn crop: " + clause));
    best().ifPresent(lines::add);
    List<String> gains = gains();
    for (int at = 0; at < gains.size(); at++) {
      lines.add((at == 0 ? "a tenth more: " : "  ") + gains.get(at));
    }
    if (answer.header().replications() > 1) {
      lines.add(
          "In brackets: 95 % interval"
              + (answer.options().size() > 1 ? " that holds for all options together" : "")
              + "; shares of scheduled hours and money with their own.");
    }
    return lines;
  }

  /** What a reader must know before any worth is read, whole sentences. */
  public List<String> warnings() {
    return new LifeWords(answer, wording).warnings();
  }

  private String added(CompareAnswer.Option option) {
    return new LifeWords(answer, wording).added(option);
  }

  /** One sentence on what an option changes, and one on what it is worth. */
  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    for (CompareAnswer.Option option : answer.options()) {
      String says = option.says().isEmpty() ? "" : " (" + option.says() + ")";
      String worth = worth(option);
      sentences.add(
          wording.titles().option(option.name())
              + says
              + " against the plant as it stands: "
              + differences(option.name())
              + "."
              + (worth.isEmpty() ? "" : " Over its life: " + worth + ".")
              + (added(option).isEmpty() ? "" : " It adds " + added(option) + "."));
    }
    return sentences;
  }

  /** Which is the best, and what that is worth; empty where it was not asked. */
  public Optional<String> best() {
    Selection best = answer.further().best();
    return best.isAsked() ? Optional.of(best(best)) : Optional.empty();
  }

  private String best(Selection best) {
    String what = "the " + (best.least() ? "least " : "greatest ") + best.measure();
    int taken = best.rows().stream().mapToInt(Selection.Row::replications).max().orElseThrow();
    String band = wording.amount(best.zone(), best.unit());
    if (!best.decided()) {
      List<String> left =
          best.rows().stream().filter(Selection.Row::left).map(row -> wording.titles().option(row.option())).toList();
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
            answer.further().gains(), answer.holdersOf(answer.header().option()), answer.outline(), wording)
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
            .map(option -> wording.titles().option(option.name()))
            .collect(Collectors.joining(", "))
        + ", "
        + title.played();
  }

  private String differences(String option) {
    List<String> parts = new ArrayList<>();
    for (Outline.Line line : answer.outline().lines()) {
      told(option, Measure.MASS_FED.of(line.crop()), wording.titles().crop(line.crop()) + " fed").ifPresent(parts::add);
    }
    told(option, Measure.MONEY_MARGIN.of(), "margin").ifPresent(parts::add);
    return parts.stream().distinct().collect(Collectors.joining("; "));
  }

  private Optional<String> told(String option, String measure, String label) {
    return answer.difference(option, measure).map(row -> label + " " + told(row));
  }

  /** {@code +120 ton (80 to 160)}, or that the two are not told apart. */
  private String told(DifferenceRow row) {
    return told(row, row.replications()) + PairWords.ofReplications(row, answer.header());
  }

  private String told(DifferenceRow row, int count) {
    if (count < 2) {
      return signed(row) + " in one replication, which says nothing about the spread";
    }
    if (row.difference() == 0 && row.lowJoint() == row.highJoint()) {
      return "unchanged";
    }
    if (row.toldApart()) {
      return signed(row);
    }
    String range = wording.interval(row.difference(), row.lowJoint(), row.highJoint(), row.unit());
    return "no significant difference at "
        + count
        + " replications"
        + (range.isEmpty() ? "" : " (" + range + " " + wording.unit(row.unit()) + ")")
        + needed(row);
  }

  private String needed(DifferenceRow row) {
    return row.replicationsNeeded() > 0
        ? ", about " + wording.amount(row.replicationsNeeded(), "count") + " would show one of this size"
        : "";
  }

  private String signed(DifferenceRow row) {
    return (row.difference() > 0 ? "+" : "")
        + wording.withInterval(row.difference(), row.lowJoint(), row.highJoint(), row.unit());
  }

  private String held(String option) {
    return answer.outline().lines().stream()
        .map(line -> held(option, line.name()))
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining("; "));
  }

  private String held(String option, String line) {
    String causes =
        answer.holders().stream()
            .filter(row -> row.option().equals(option) && row.line().equals(line))
            .filter(row -> row.share() >= 0.005)
            .limit(HOLDERS_TOLD)
            .map(this::cause)
            .collect(Collectors.joining(", "));
    return causes.isEmpty() ? "" : wording.titles().lineInText(line) + " " + causes;
  }

  private String cause(HolderRow row) {
    return wording.share(row) + " by " + wording.titles().cause(row.cause());
  }

  private String worth(CompareAnswer.Option option) {
    return answer.worth(option.name(), Quantity.NET_PRESENT_VALUE).isEmpty()
        ? new LifeWords(answer, wording).missing(option)
        : "net present value "
            + amount(option, Quantity.NET_PRESENT_VALUE)
            + " over "
            + years(option)
            + " for "
            + wording.amount(option.cost(), answer.header().currency())
            + "; "
            + paysBack(option)
            + ", net present value negative in "
            + amount(option, Quantity.CHANCE_OF_LOSS);
  }

  private String paysBack(CompareAnswer.Option option) {
    if (option.cost() == 0) {
      return "nothing to pay back";
    }
    return "internal rate "
        + amount(option, Quantity.INTERNAL_RATE_OF_RETURN)
        + ", pays back after "
        + amount(option, Quantity.SIMPLE_PAYBACK)
        + " (discounted "
        + amount(option, Quantity.DISCOUNTED_PAYBACK)
        + ")"
        + inTime(option);
  }

  private String inTime(CompareAnswer.Option option) {
    double within = answer.further().withinYr();
    return Double.isNaN(within)
        ? ""
        : ", within "
            + years(within)
            + " in "
            + amount(option, Quantity.CHANCE_OF_PAYBACK);
  }

  private String amount(CompareAnswer.Option option, Quantity quantity) {
    return answer.worth(option.name(), quantity).map(this::amount).orElse("not defined");
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
    if (row.quantity() == Quantity.INTERNAL_RATE_OF_RETURN && row.mean() > HIGHEST_RATE) {
      return "above " + wording.fixed(HIGHEST_RATE, 0, "share") + " %";
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
