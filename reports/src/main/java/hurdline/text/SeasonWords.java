package hurdline.text;

import hurdline.answer.ChangeoverRow;
import hurdline.answer.Header;
import hurdline.answer.Outline;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.measure.Use;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** How season plans compare, for the terminal, and their figures in words for the report. */
public final class SeasonWords {
  private static final int HOURS_A_DAY = 24;

  private final SeasonAnswer answer;
  private final Wording wording;

  public SeasonWords(SeasonAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /**
   * What the terminal shows: what one would say of it, the main figures as a table, then the
   * building and which plan leads by how much.
   *
   * @param width columns that a line of the table may have
   */
  public List<String> lines(int width) {
    MainTable table = SeasonTable.of(answer, wording);
    List<String> lines = new ArrayList<>();
    lines.add(title());
    lines.addAll(new SeasonHeadline(answer, wording).sentences());
    lines.add("");
    lines.addAll(table.lines(width));
    lines.add("");
    for (SeasonAnswer.Plan plan : answer.plans()) {
      lines.add(Titles.capital(wording.titles().plan(plan.name())) + ": " + building(plan.name()));
      plan.outline()
          .lines()
          .forEach(
              line ->
                  lines.add("  " + wording.titles().line(line.name()) + ": " + hours(plan, line)));
    }
    answer.avoided().forEach(row -> lines.add(avoided(row)));
    DrawnCropWords.of(answer, wording)
        .clauses()
        .forEach(clause -> lines.add("drawn crop: " + clause));
    lines.addAll(sentences());
    lines.add(legend(table));
    lines.addAll(new InputWords(answer.inputs(), answer.outline(), wording).sentences());
    return lines;
  }

  /** What the figures of the table are. */
  public String legend(MainTable table) {
    return table.legend(answer.header().replications())
        + (answer.plans().size() > 2 && answer.header().replications() > 1
            ? " Intervals of differences hold for all pairs of plans together."
            : "");
  }

  private String avoided(ChangeoverRow row) {
    boolean ranges =
        !wording.interval(row.worth(), row.low95(), row.high95(), row.unit()).isEmpty();
    return "Without the changeover of "
        + wording.date(row.from())
        + ", "
        + wording.titles().plan(row.plan())
        + " earns "
        + wording.withInterval(row.worth(), row.low95(), row.high95(), row.unit())
        + " more"
        + (row.significant() || !ranges ? "." : ", no significant difference from zero.");
  }

  /** Which plan earns the most, and which most surely finishes its crops. */
  public List<String> sentences() {
    return new VerdictWords(answer, wording, this).sentences();
  }

  private String title() {
    Header header = answer.header();
    String option =
        header.option().equals("base") ? "" : " with " + wording.titles().option(header.option());
    TitleWords title = new TitleWords(header, wording);
    return header.plant()
        + ", season "
        + (answer.plans().size() == 1 ? "plan " : "plans ")
        + names()
        + option
        + title.changes()
        + ", "
        + title.simulated();
  }

  /** The plans by name, as they were asked for. */
  public String names() {
    return answer.plans().stream()
        .map(plan -> wording.titles().plan(plan.name()))
        .collect(Collectors.joining(", "));
  }

  private String building(String plan) {
    Header header = answer.header();
    long hours = HOURS_A_DAY * (ChronoUnit.DAYS.between(header.from(), header.to()) + 1);
    String beside =
        use(plan, Use.CONCURRENT) > 0
            ? " (" + hours(use(plan, Use.CONCURRENT)) + " h by two lines)"
            : "";
    return "building staffed "
        + hours(use(plan, Use.STAFFED))
        + " of "
        + hours(hours)
        + " h"
        + beside
        + ", changeover "
        + hours(use(plan, Use.CHANGEOVER))
        + " h, uncrewed "
        + hours(use(plan, Use.UNCREWED))
        + " h, unused "
        + hours(use(plan, Use.UNUSED))
        + " h";
  }

  private double use(String plan, Use use) {
    return answer.mean(plan, Measure.BUILDING_HOURS.of(use.word()));
  }

  private String hours(double hours) {
    return wording.fixed(hours, 0, "h");
  }

  private String hours(SeasonAnswer.Plan plan, Outline.Line line) {
    return hours(answer.mean(plan.name(), Measure.LINE_HOURS_SCHEDULED.of(line.name())))
        + " h scheduled"
        + standing(plan.name(), line);
  }

  private String standing(String plan, Outline.Line line) {
    double starved = standing(plan, line, State.STARVED);
    if (Double.isNaN(starved)) {
      return "";
    }
    double blocked = standing(plan, line, State.BLOCKED);
    return ", starved " + hours(starved) + " h, blocked " + hours(blocked) + " h";
  }

  private double standing(String plan, Outline.Line line, State state) {
    String measure = Measure.MACHINE_CROP_HOURS.of(line.feed(), line.crop(), state.word());
    return answer.mean(plan, measure);
  }

  /** {@code finished in 12 of 40 years}. */
  String finishedIn(String plan, String measure) {
    return "finished in "
        + outOfAll(plan, measure)
        + (answer.header().replications() == 1 ? " year" : " years");
  }

  /** {@code 12 of 40}, for a measure that is 1 in some years and 0 in the others. */
  public String outOfAll(String plan, String measure) {
    int count = answer.header().replications();
    return Math.round(answer.mean(plan, measure) * count) + " of " + count;
  }

  /** When a line ended, as a cell has it: the median date and the band of nine years in ten. */
  String ended(SummaryRow row) {
    return row.replications() == 0
        ? "no shift was worked"
        : dates(row).replace(" (", ", ").replace(")", "");
  }

  /**
   * The median date and the band that nine years of ten lie in, of the years in which a shift was
   * worked.
   */
  public String dates(SummaryRow row) {
    String middle = wording.date(answer.date(row.p50()));
    String low = wording.date(answer.date(row.p05()));
    String high = wording.date(answer.date(row.p95()));
    return (low.equals(high)
            ? middle
            : middle + " (5th to 95th percentile " + low + " to " + high + ")")
        + ofYears(row);
  }

  /** The median date alone. */
  public String medianDate(SummaryRow row) {
    return wording.date(answer.date(row.p50())) + ofYears(row);
  }

  /** {@code in 1 of 6 years}, where a date rests on fewer years than were simulated. */
  private String ofYears(SummaryRow row) {
    int years = answer.header().replications();
    return row.replications() < years
        ? " in " + row.replications() + " of " + years + " years"
        : "";
  }

  /**
   * When a campaign ended, or that no shift of it was worked in any year; empty for a changeover.
   */
  public String ended(String plan, SeasonAnswer.Entry entry) {
    return answer
        .find(plan, entry.ended())
        .map(row -> row.replications() == 0 ? "no shift was worked" : dates(row))
        .orElse("");
  }
}
