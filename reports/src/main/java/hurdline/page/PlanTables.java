package hurdline.page;

import hurdline.answer.ChangeoverRow;
import hurdline.answer.DifferenceRow;
import hurdline.answer.Outline;
import hurdline.answer.PlanDifference;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GridColumns;
import hurdline.measure.Kpi;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.text.MainMeasures;
import hurdline.text.PairWords;
import hurdline.text.SeasonWords;
import hurdline.text.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Tables of the season page that have no chart. */
final class PlanTables {
  private final SeasonAnswer answer;
  private final Wording wording;
  private final SeasonWords words;

  PlanTables(SeasonAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    words = new SeasonWords(answer, wording);
  }

  /** A line under a plan. */
  private record PlanLine(String plan, Outline.Line line) {}

  private List<PlanLine> lines() {
    return answer.plans().stream()
        .flatMap(
            plan -> plan.outline().lines().stream().map(line -> new PlanLine(plan.name(), line)))
        .toList();
  }

  private GridColumns<PlanLine> linesUnderPlans() {
    return new GridColumns<PlanLine>(wording)
        .text(
            "plan: line",
            of -> wording.titles().plan(of.plan) + ": " + wording.titles().line(of.line.name()));
  }

  private Function<PlanLine, Optional<SummaryRow>> ofLine(Measure measure) {
    return of -> answer.find(of.plan, measure.of(of.line.name()));
  }

  private Function<PlanLine, Optional<SummaryRow>> ofCrop(Measure measure) {
    return of -> answer.find(of.plan, measure.of(of.line.crop()));
  }

  private GridColumns<SeasonAnswer.Plan> columnsOfPlans() {
    return new GridColumns<SeasonAnswer.Plan>(wording)
        .text("plan", plan -> wording.titles().plan(plan.name()));
  }

  private Function<SeasonAnswer.Plan, Optional<SummaryRow>> ofPlan(Measure measure) {
    return plan -> answer.find(plan.name(), measure.of());
  }

  /** One row a plan: what it is, what it earns, how surely it finishes. */
  Chart.Grid plans() {
    String currency = answer.header().currency();
    return columnsOfPlans()
        .text("", PlanTables::described)
        .mean("margin", currency, ofPlan(Measure.MONEY_MARGIN))
        .mean("margin less margin forgone", currency, ofPlan(Measure.MONEY_MARGIN_LESS_FORGONE))
        .text(
            "years in which all crops were finished, %",
            plan -> share(plan.name(), Measure.SEASON_FINISHED.of()))
        .of(answer.plans());
  }

  private static String described(SeasonAnswer.Plan plan) {
    boolean asItStands = plan.name().equals("base") && !plan.file().startsWith("base.");
    return asItStands
        ? "the season as the file has it"
        : plan.says().isEmpty() ? plan.file() : plan.says();
  }

  /** An entry of a plan's season. */
  private record PlanEntry(SeasonAnswer.Plan plan, SeasonAnswer.Entry entry) {}

  private List<PlanEntry> planEntries() {
    return answer.plans().stream()
        .flatMap(plan -> plan.entries().stream().map(entry -> new PlanEntry(plan, entry)))
        .toList();
  }

  Chart.Grid entries() {
    return new GridColumns<PlanEntry>(wording)
        .text("plan", of -> wording.titles().plan(of.plan.name()))
        .text(
            "what",
            of -> of.entry.isChangeover() ? "changeover" : wording.titles().line(of.entry.line()))
        .text("from", of -> wording.date(of.entry.from()))
        .text("to", of -> wording.date(of.entry.to()))
        .text("shifts or hands", of -> who(of.entry) + moved(of.entry))
        .text("ended", of -> words.ended(of.plan.name(), of.entry))
        .of(planEntries());
  }

  private String who(SeasonAnswer.Entry entry) {
    return entry.isChangeover()
        ? "with " + entry.hands() + " hands"
        : entry.shifts().stream().map(wording.titles()::shift).collect(Collectors.joining(", "));
  }

  private String moved(SeasonAnswer.Entry entry) {
    return entry.movedFrom().isEmpty()
        ? ""
        : "; moved from "
            + wording.date(LocalDate.parse(entry.movedFrom()))
            + " by the changeover before it";
  }

  boolean hasTasks() {
    return answer.plans().stream()
        .flatMap(plan -> plan.entries().stream())
        .anyMatch(entry -> !entry.tasks().isEmpty());
  }

  /** A task of a changeover. */
  private record PlanTask(PlanEntry of, SeasonAnswer.Task task) {}

  /** Tasks of changeovers, those of the longest chain marked. */
  Chart.Grid tasks() {
    return new GridColumns<PlanTask>(wording)
        .text(
            "changeover: task",
            row ->
                wording.titles().plan(row.of.plan.name())
                    + ", "
                    + wording.date(row.of.entry.from())
                    + ": "
                    + Titles.inText(wording.titles().task(row.task.name())))
        .text("hands", row -> String.valueOf(row.task.hands()))
        .number("begins at", 1, "h", row -> row.task.beginH())
        .number("ends at", 1, "h", row -> row.task.endH())
        .text("after", row -> after(row.task))
        .text("critical path", row -> row.task.isCritical() ? "critical" : "")
        .of(
            planEntries().stream()
                .flatMap(of -> of.entry.tasks().stream().map(task -> new PlanTask(of, task)))
                .toList());
  }

  private String after(SeasonAnswer.Task task) {
    return task.after().stream()
        .map(wording.titles()::task)
        .map(Titles::inText)
        .collect(Collectors.joining(", "));
  }

  /** What each avoided changeover is worth. */
  Chart.Grid avoided() {
    return new GridColumns<ChangeoverRow>(wording)
        .text(
            "without the changeover of",
            row ->
                wording.titles().plan(row.plan())
                    + ", "
                    + wording.date(row.from())
                    + " to "
                    + wording.date(row.to()))
        .text(
            "worth " + answer.header().currency(),
            row -> wording.number(row.worth(), row.low95(), row.high95(), row.unit()))
        .text(
            "joint 95 % interval",
            row -> wording.interval(row.worth(), row.low95(), row.high95(), row.unit()))
        .yes("significant", ChangeoverRow::significant)
        .of(answer.avoided());
  }

  /** One row a plan and line. */
  Chart.Grid crops() {
    String currency = answer.header().currency();
    return linesUnderPlans()
        .mean("fed", "t", ofCrop(Measure.MASS_FED))
        .mean("hours", ofLine(Measure.LINE_HOURS_SCHEDULED))
        .mean("starved", "h", of -> standing(of, State.STARVED))
        .mean("blocked", "h", of -> standing(of, State.BLOCKED))
        .mean("margin", currency, ofLine(Measure.MONEY_LINE_MARGIN))
        .text(
            "finished in % of years",
            of -> share(of.plan, Measure.SEASON_LINE_FINISHED.of(of.line.name())))
        .text("ended", of -> ended(of.plan, of.line.name()))
        .mean("carry-over", ofLine(Measure.SEASON_LEFT_OVER))
        .mean("margin forgone", currency, ofLine(Measure.SEASON_MARGIN_FORGONE))
        .of(lines());
  }

  /** The median; its band is in the chart of the ends and in the table under it. */
  private String ended(String plan, String line) {
    return answer
        .find(plan, Measure.SEASON_ENDED.of(line))
        .filter(row -> row.replications() > 0)
        .map(words::medianDate)
        .orElse("");
  }

  private Optional<SummaryRow> standing(PlanLine of, State state) {
    return answer.find(
        of.plan, Measure.MACHINE_CROP_HOURS.of(of.line.feed(), of.line.crop(), state.word()));
  }

  /** A machine under a plan. */
  private record PlanMachine(String plan, String machine) {}

  Chart.Grid ratios() {
    GridColumns<PlanMachine> columns =
        new GridColumns<PlanMachine>(wording)
            .text(
                "plan: machine",
                of -> wording.titles().plan(of.plan) + ": " + wording.titles().machine(of.machine));
    for (Kpi kpi : Kpi.values()) {
      columns.mean(
          kpi.word().replace('_', ' '),
          "share",
          of -> answer.find(of.plan, Measure.MACHINE_KPI.of(of.machine, kpi.word())));
    }
    return columns.of(
        answer.plans().stream()
            .flatMap(
                plan ->
                    plan.outline().machines().stream()
                        .map(machine -> new PlanMachine(plan.name(), machine)))
            .toList());
  }

  Chart.Grid crews() {
    return linesUnderPlans()
        .mean("shifts worked", "h", ofLine(Measure.CREW_LABOR_HOURS))
        .mean("paid as overtime", "h", ofLine(Measure.CREW_OVERTIME))
        .mean("sent home, not paid", "h", ofLine(Measure.CREW_SENT_HOME))
        .mean("changeover after it", "h", ofLine(Measure.CREW_CHANGEOVER))
        .mean("receiving its crop", "h", ofCrop(Measure.CREW_RECEIVING))
        .of(lines());
  }

  boolean hasRent() {
    return answer.plans().stream()
        .anyMatch(plan -> answer.find(plan.name(), Measure.MONEY_RENT.of()).isPresent());
  }

  /** Who earns what where a tenant runs one of the lines. */
  Chart.Grid rent() {
    String currency = answer.header().currency();
    return columnsOfPlans()
        .mean("owner's margin", currency, ofPlan(Measure.MONEY_OWNER))
        .mean("tenant's margin", currency, ofPlan(Measure.MONEY_TENANT))
        .mean("rent", currency, ofPlan(Measure.MONEY_RENT))
        .of(answer.plans());
  }

  /** A difference of two plans in one of the main measures. */
  private record PlanPair(String label, PlanDifference pair) {
    DifferenceRow row() {
      return pair.row();
    }
  }

  Chart.Grid differences() {
    List<PlanPair> rows = new ArrayList<>();
    List<MainMeasures> measures = new ArrayList<>(MainMeasures.of(answer.outline(), wording));
    measures.add(MainMeasures.lessForgone());
    for (MainMeasures main : measures) {
      for (PlanDifference pair : answer.differences()) {
        if (pair.row().measure().equals(main.measure())) {
          rows.add(new PlanPair(main.label(), pair));
        }
      }
    }
    return new GridColumns<PlanPair>(wording)
        .text("", of -> of.label + PairWords.ofReplications(of.row(), answer.header()))
        .text(
            "plan less plan",
            of ->
                wording.titles().plan(of.pair.plan())
                    + " less "
                    + wording.titles().plan(of.pair.against()))
        .text("difference", of -> number(of.row()))
        .text("unit", of -> wording.unit(of.row().unit()))
        .text("joint 95 % interval", of -> interval(of.row()))
        .yes("significantly different", of -> of.row().significant())
        .of(rows);
  }

  private String number(DifferenceRow row) {
    return wording.number(row.difference(), row.lowJoint(), row.highJoint(), row.unit());
  }

  private String interval(DifferenceRow row) {
    return wording.interval(row.difference(), row.lowJoint(), row.highJoint(), row.unit());
  }

  /** A chance in whole percents, its interval being wide. */
  private String share(String plan, String measure) {
    Optional<SummaryRow> row = answer.find(plan, measure);
    return row.map(
            r ->
                wording.fixed(r.mean(), 0, "share")
                    + (r.high95() > r.low95()
                        ? " ("
                            + wording.fixed(r.low95(), 0, "share")
                            + " to "
                            + wording.fixed(r.high95(), 0, "share")
                            + ")"
                        : ""))
        .orElse("");
  }
}
