package hurdline.words;

import hurdline.answer.AvoidedRow;
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
import java.util.Optional;
import java.util.stream.Collectors;

/** How season plans compare, for the terminal and for the head of the report. */
public final class SeasonWords {
  private static final int HOURS_A_DAY = 24;

  private final SeasonAnswer answer;
  private final Wording wording;

  public SeasonWords(SeasonAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** What the terminal shows: a plan in a line and one more for each of its lines, then which is best. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(title());
    for (SeasonAnswer.Plan plan : answer.plans()) {
      lines.add(wording.titles().plan(plan.name()) + ": " + building(plan.name()) + margin(plan.name()));
      for (Outline.Line line : plan.outline().lines()) {
        lines.add("  " + wording.titles().line(line.name()) + ": " + line(plan, line));
      }
    }
    answer.avoided().forEach(row -> lines.add(avoided(row)));
    DrawnCropWords.of(answer, wording).clauses().forEach(clause -> lines.add("drawn crop: " + clause));
    lines.addAll(sentences());
    if (answer.header().replications() > 1) {
      lines.add(
          "In brackets: 95 % interval"
              + (answer.plans().size() > 2 ? "; those of differences hold for all pairs together." : "."));
    }
    return lines;
  }

  private String avoided(AvoidedRow row) {
    boolean ranges = !wording.interval(row.worth(), row.low95(), row.high95(), row.unit()).isEmpty();
    return "Without the changeover of "
        + wording.date(row.from())
        + ", "
        + wording.titles().plan(row.plan())
        + " earns "
        + wording.withInterval(row.worth(), row.low95(), row.high95(), row.unit())
        + " more"
        + (row.toldApart() || !ranges ? "." : ", no significant difference from zero.");
  }

  /** Which plan earns the most, and which most surely finishes its crops. */
  public List<String> sentences() {
    return new VerdictWords(answer, wording, this).sentences();
  }

  private String title() {
    Header header = answer.header();
    String option = header.option().equals("base") ? "" : " with " + wording.titles().option(header.option());
    TitleWords title = new TitleWords(header, wording);
    return header.plant()
        + ", season "
        + (answer.plans().size() == 1 ? "plan " : "plans ")
        + names()
        + option
        + title.changes()
        + ", "
        + title.played();
  }

  /** The plans by name, as they were asked for. */
  public String names() {
    return answer.plans().stream().map(plan -> wording.titles().plan(plan.name())).collect(Collectors.joining(", "));
  }

  private String building(String plan) {
    Header header = answer.header();
    long hours = HOURS_A_DAY * (ChronoUnit.DAYS.between(header.from(), header.to()) + 1);
    String beside =
        use(plan, Use.CONCURRENT) > 0 ? " (" + hours(use(plan, Use.CONCURRENT)) + " h by two lines)" : "";
    return "building worked "
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

  private String margin(String plan) {
    return told(plan, Measure.MONEY_MARGIN.of()).map(text -> "; margin " + text).orElse("")
        + told(plan, Measure.MONEY_OWNER.of()).map(text -> ", the owner's " + text).orElse("")
        + told(plan, Measure.MONEY_TENANT.of()).map(text -> ", the tenant's " + text).orElse("");
  }

  private Optional<String> told(String plan, String measure) {
    return answer.find(plan, measure).map(wording::withInterval);
  }

  private String line(SeasonAnswer.Plan plan, Outline.Line line) {
    String name = plan.name();
    String fed = told(name, Measure.MASS_FED.of(line.crop())).orElse("nothing");
    return fed
        + " of "
        + Titles.inText(wording.titles().crop(line.crop()))
        + " fed in "
        + hours(answer.mean(name, Measure.LINE_HOURS_SCHEDULED.of(line.name())))
        + " h"
        + standing(name, line)
        + told(name, Measure.MONEY_LINE_MARGIN.of(line.name())).map(t -> ", margin " + t).orElse("")
        + "; "
        + finished(name, line);
  }

  private String standing(String plan, Outline.Line line) {
    double starved = standing(plan, line, State.STARVED);
    if (Double.isNaN(starved)) {
      return "";
    }
    double blocked = standing(plan, line, State.BLOCKED);
    return " (starved " + hours(starved) + " h, blocked " + hours(blocked) + " h)";
  }

  private double standing(String plan, Outline.Line line, State state) {
    String measure = Measure.MACHINE_CROP_HOURS.of(line.feed(), line.crop(), state.word());
    return answer.mean(plan, measure);
  }

  /** {@code finished in 12 of 40 years, ended 2027-09-24 (…); left over 300 bales}. */
  public String finished(String plan, Outline.Line line) {
    return finishedIn(plan, Measure.SEASON_LINE_FINISHED.of(line.name()))
        + ended(plan, line)
        + leftOver(plan, line);
  }

  /** {@code finished in 12 of 40 years}. */
  String finishedIn(String plan, String measure) {
    return "finished in " + outOfAll(plan, measure) + (answer.header().replications() == 1 ? " year" : " years");
  }

  /** {@code 12 of 40}, for a measure that is 1 in some years and 0 in the others. */
  public String outOfAll(String plan, String measure) {
    int count = answer.header().replications();
    return Math.round(answer.mean(plan, measure) * count) + " of " + count;
  }

  private String ended(String plan, Outline.Line line) {
    return answer
        .find(plan, Measure.SEASON_ENDED.of(line.name()))
        .map(row -> row.replications() == 0 ? ", no shift was worked" : ", ended " + dates(row))
        .orElse("");
  }

  /** The median date and the band that nine years of ten lie in, of the years in which a shift was worked. */
  public String dates(SummaryRow row) {
    String middle = wording.date(answer.date(row.p50()));
    String low = wording.date(answer.date(row.p05()));
    String high = wording.date(answer.date(row.p95()));
    return (low.equals(high) ? middle : middle + " (nine years in ten " + low + " to " + high + ")")
        + ofYears(row);
  }

  /** The median date alone. */
  public String medianDate(SummaryRow row) {
    return wording.date(answer.date(row.p50())) + ofYears(row);
  }

  /** {@code  in 1 of 6 years}, where a date rests on fewer years than were simulated. */
  private String ofYears(SummaryRow row) {
    int years = answer.header().replications();
    return row.replications() < years ? " in " + row.replications() + " of " + years + " years" : "";
  }

  /** When a campaign ended, or that no shift of it was worked in any year; empty for a changeover. */
  public String ended(String plan, SeasonAnswer.Entry entry) {
    return answer
        .find(plan, entry.ended())
        .map(row -> row.replications() == 0 ? "no shift was worked" : dates(row))
        .orElse("");
  }

  private String leftOver(String plan, Outline.Line line) {
    Optional<SummaryRow> left = answer.find(plan, Measure.SEASON_LEFT_OVER.of(line.name()));
    if (left.isEmpty() || left.get().most() == 0) {
      return "";
    }
    String money =
        told(plan, Measure.SEASON_MARGIN_FORGONE.of(line.name()))
            .map(text -> ", worth " + text + " at the line's margin")
            .orElse("");
    return "; left over " + wording.withInterval(left.get()) + money;
  }
}
