package hurdline.page;

import hurdline.answer.ChangeoverRow;
import hurdline.answer.DifferenceRow;
import hurdline.answer.Outline;
import hurdline.answer.PlanDifference;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.chart.kit.Chart;
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

  /** One row a plan: what it is, what it earns, how surely it finishes. */
  Chart.Grid plans() {
    List<List<String>> rows = new ArrayList<>();
    for (SeasonAnswer.Plan plan : answer.plans()) {
      rows.add(
          List.of(
              wording.titles().plan(plan.name()),
              described(plan),
              cell(plan.name(), Measure.MONEY_MARGIN.of()),
              cell(plan.name(), Measure.MONEY_MARGIN_LESS_FORGONE.of()),
              share(plan.name(), Measure.SEASON_FINISHED.of())));
    }
    String currency = answer.header().currency();
    return new Chart.Grid(
        List.of(
            "plan",
            "",
            "margin " + currency,
            "margin less margin forgone " + currency,
            "years in which all crops were finished, %"),
        rows);
  }

  private static String described(SeasonAnswer.Plan plan) {
    boolean asItStands = plan.name().equals("base") && !plan.file().startsWith("base.");
    return asItStands
        ? "the season as the file has it"
        : plan.says().isEmpty() ? plan.file() : plan.says();
  }

  Chart.Grid entries() {
    List<List<String>> rows = new ArrayList<>();
    for (SeasonAnswer.Plan plan : answer.plans()) {
      for (SeasonAnswer.Entry entry : plan.entries()) {
        String more =
            entry.isChangeover()
                ? "with " + entry.hands() + " hands"
                : entry.shifts().stream()
                    .map(wording.titles()::shift)
                    .collect(Collectors.joining(", "));
        String moved =
            entry.movedFrom().isEmpty()
                ? ""
                : "; moved from "
                    + wording.date(LocalDate.parse(entry.movedFrom()))
                    + " by the changeover before it";
        rows.add(
            List.of(
                wording.titles().plan(plan.name()),
                entry.isChangeover() ? "changeover" : wording.titles().line(entry.line()),
                wording.date(entry.from()),
                wording.date(entry.to()),
                more + moved,
                words.ended(plan.name(), entry)));
      }
    }
    return new Chart.Grid(List.of("plan", "what", "from", "to", "shifts or hands", "ended"), rows);
  }

  boolean hasTasks() {
    return answer.plans().stream()
        .flatMap(plan -> plan.entries().stream())
        .anyMatch(entry -> !entry.tasks().isEmpty());
  }

  /** Tasks of changeovers, those of the longest chain marked. */
  Chart.Grid tasks() {
    List<List<String>> rows = new ArrayList<>();
    for (SeasonAnswer.Plan plan : answer.plans()) {
      for (SeasonAnswer.Entry entry : plan.entries()) {
        for (SeasonAnswer.Task task : entry.tasks()) {
          rows.add(
              List.of(
                  wording.titles().plan(plan.name())
                      + ", "
                      + wording.date(entry.from())
                      + ": "
                      + Titles.inText(wording.titles().task(task.name())),
                  String.valueOf(task.hands()),
                  wording.fixed(task.beginH(), 1, "h"),
                  wording.fixed(task.endH(), 1, "h"),
                  task.after().stream()
                      .map(wording.titles()::task)
                      .map(Titles::inText)
                      .collect(Collectors.joining(", ")),
                  task.isCritical() ? "critical" : ""));
        }
      }
    }
    return new Chart.Grid(
        List.of("changeover: task", "hands", "begins at h", "ends at h", "after", "critical path"),
        rows);
  }

  /** What each avoided changeover is worth. */
  Chart.Grid avoided() {
    List<List<String>> rows = new ArrayList<>();
    for (ChangeoverRow row : answer.avoided()) {
      rows.add(
          List.of(
              wording.titles().plan(row.plan())
                  + ", "
                  + wording.date(row.from())
                  + " to "
                  + wording.date(row.to()),
              wording.number(row.worth(), row.low95(), row.high95(), row.unit()),
              wording.interval(row.worth(), row.low95(), row.high95(), row.unit()),
              row.toldApart() ? "yes" : "no"));
    }
    return new Chart.Grid(
        List.of(
            "without the changeover of",
            "worth " + answer.header().currency(),
            "joint 95 % interval",
            "significant"),
        rows);
  }

  /** One row a plan and line. */
  Chart.Grid crops() {
    List<List<String>> rows = new ArrayList<>();
    for (SeasonAnswer.Plan plan : answer.plans()) {
      for (Outline.Line line : plan.outline().lines()) {
        rows.add(crop(plan.name(), line));
      }
    }
    return new Chart.Grid(
        List.of(
            "plan: line",
            "fed " + wording.unit("t"),
            "hours",
            "starved h",
            "blocked h",
            "margin " + answer.header().currency(),
            "finished in % of years",
            "ended",
            "left over",
            "margin forgone " + answer.header().currency()),
        rows);
  }

  private List<String> crop(String plan, Outline.Line line) {
    return List.of(
        wording.titles().plan(plan) + ": " + wording.titles().line(line.name()),
        cell(plan, Measure.MASS_FED.of(line.crop())),
        cell(plan, Measure.LINE_HOURS_SCHEDULED.of(line.name())),
        standing(plan, line, State.STARVED),
        standing(plan, line, State.BLOCKED),
        cell(plan, Measure.MONEY_LINE_MARGIN.of(line.name())),
        share(plan, Measure.SEASON_LINE_FINISHED.of(line.name())),
        ended(plan, line.name()),
        cell(plan, Measure.SEASON_LEFT_OVER.of(line.name())),
        cell(plan, Measure.SEASON_MARGIN_FORGONE.of(line.name())));
  }

  /** The median; its band is in the chart of the ends and in the table under it. */
  private String ended(String plan, String line) {
    return answer
        .find(plan, Measure.SEASON_ENDED.of(line))
        .filter(row -> row.replications() > 0)
        .map(words::medianDate)
        .orElse("");
  }

  private String standing(String plan, Outline.Line line, State state) {
    return cell(plan, Measure.MACHINE_CROP_HOURS.of(line.feed(), line.crop(), state.word()));
  }

  Chart.Grid ratios() {
    List<String> head = new ArrayList<>(List.of("plan: machine"));
    for (Kpi kpi : Kpi.values()) {
      head.add(kpi.word().replace('_', ' ') + " %");
    }
    List<List<String>> rows = new ArrayList<>();
    for (SeasonAnswer.Plan plan : answer.plans()) {
      for (String machine : plan.outline().machines()) {
        List<String> cells =
            new ArrayList<>(
                List.of(
                    wording.titles().plan(plan.name()) + ": " + wording.titles().machine(machine)));
        for (Kpi kpi : Kpi.values()) {
          cells.add(cell(plan.name(), Measure.MACHINE_KPI.of(machine, kpi.word())));
        }
        rows.add(cells);
      }
    }
    return new Chart.Grid(head, rows);
  }

  Chart.Grid crews() {
    List<List<String>> rows = new ArrayList<>();
    for (SeasonAnswer.Plan plan : answer.plans()) {
      for (Outline.Line line : plan.outline().lines()) {
        rows.add(
            List.of(
                wording.titles().plan(plan.name()) + ": " + wording.titles().line(line.name()),
                cell(plan.name(), Measure.CREW_LABOR_HOURS.of(line.name())),
                cell(plan.name(), Measure.CREW_OVERTIME.of(line.name())),
                cell(plan.name(), Measure.CREW_SENT_HOME.of(line.name())),
                cell(plan.name(), Measure.CREW_CHANGEOVER.of(line.name())),
                cell(plan.name(), Measure.CREW_RECEIVING.of(line.crop()))));
      }
    }
    return new Chart.Grid(
        List.of(
            "plan: line",
            "shifts worked h",
            "paid as overtime h",
            "sent home, not paid h",
            "changeover after it h",
            "receiving its crop h"),
        rows);
  }

  boolean hasRent() {
    return answer.plans().stream()
        .anyMatch(plan -> answer.find(plan.name(), Measure.MONEY_RENT.of()).isPresent());
  }

  /** Who earns what where a tenant runs one of the lines. */
  Chart.Grid rent() {
    List<List<String>> rows = new ArrayList<>();
    for (SeasonAnswer.Plan plan : answer.plans()) {
      rows.add(
          List.of(
              wording.titles().plan(plan.name()),
              cell(plan.name(), Measure.MONEY_OWNER.of()),
              cell(plan.name(), Measure.MONEY_TENANT.of()),
              cell(plan.name(), Measure.MONEY_RENT.of())));
    }
    String currency = " " + answer.header().currency();
    return new Chart.Grid(
        List.of(
            "plan", "owner's margin" + currency, "tenant's margin" + currency, "rent" + currency),
        rows);
  }

  Chart.Grid differences() {
    List<List<String>> rows = new ArrayList<>();
    List<MainMeasures> measures = new ArrayList<>(MainMeasures.of(answer.outline(), wording));
    measures.add(MainMeasures.lessForgone());
    for (MainMeasures main : measures) {
      for (PlanDifference pair : answer.differences()) {
        if (pair.row().measure().equals(main.measure())) {
          rows.add(difference(main.label(), pair));
        }
      }
    }
    return new Chart.Grid(
        List.of(
            "",
            "plan less plan",
            "difference",
            "unit",
            "joint 95 % interval",
            "significantly different"),
        rows);
  }

  private List<String> difference(String label, PlanDifference pair) {
    DifferenceRow r = pair.row();
    return List.of(
        label + PairWords.ofReplications(r, answer.header()),
        wording.titles().plan(pair.plan()) + " less " + wording.titles().plan(pair.against()),
        wording.number(r.difference(), r.lowJoint(), r.highJoint(), r.unit()),
        wording.unit(r.unit()),
        wording.interval(r.difference(), r.lowJoint(), r.highJoint(), r.unit()),
        r.toldApart() ? "yes" : "no");
  }

  private String cell(String plan, String measure) {
    return answer.find(plan, measure).map(this::cell).orElse("");
  }

  private String cell(SummaryRow row) {
    return Double.isNaN(row.mean())
        ? ""
        : wording.cell(row.mean(), row.low95(), row.high95(), row.unit());
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
