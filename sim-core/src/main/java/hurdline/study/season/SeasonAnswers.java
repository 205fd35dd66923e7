package hurdline.study.season;

import hurdline.answer.AdjustedRow;
import hurdline.answer.ChangeoverRow;
import hurdline.answer.DifferenceRow;
import hurdline.answer.Fact;
import hurdline.answer.MachineWeekRow;
import hurdline.answer.MonthRow;
import hurdline.answer.Outline;
import hurdline.answer.PlanDifference;
import hurdline.answer.Replayed;
import hurdline.answer.Samples;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.SummaryRow;
import hurdline.compiled.CompiledLines;
import hurdline.measure.Measure;
import hurdline.problem.LocatedProblem;
import hurdline.simulation.CompiledPlant;
import hurdline.statistics.Interval;
import hurdline.statistics.Intervals;
import hurdline.study.AnswerRows;
import hurdline.study.CropAdjustments;
import hurdline.study.DrawnResults;
import hurdline.study.InputRows;
import hurdline.study.IntervalFacts;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.PlantOutline;
import hurdline.study.SafetyFacts;
import hurdline.study.replicate.ReplicationResults;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.StoppingRule;
import hurdline.study.run.RunFacts;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Makes the answer to how season plans compare. */
final class SeasonAnswers {
  /** Chances, whose intervals are not Student's. */
  private static final Set<Measure> CHANCES =
      EnumSet.of(Measure.SEASON_FINISHED, Measure.SEASON_LINE_FINISHED);

  /** Told for each plan; pairs of them would be the larger part of all rows. */
  private static final Set<Measure> NOT_PAIRED =
      EnumSet.of(Measure.MACHINE_CROP_HOURS, Measure.MACHINE_CROP_MASS_IN, Measure.MACHINE_KPI);

  private final List<PlantOrigin> sources;
  private final PlantChanges chosen;
  private final RunSettings effort;
  private final List<Season.Planned> plans;
  private final List<SeasonResults> figures;
  private final List<Optional<DrawnResults>> drawn;
  private final InputRows inputs;
  private final List<ChangeoverRow> avoided;

  SeasonAnswers(
      List<PlantOrigin> sources,
      PlantChanges chosen,
      RunSettings effort,
      List<Season.Planned> plans,
      List<SeasonResults> figures,
      List<Optional<DrawnResults>> drawn,
      List<ChangeoverRow> avoided) {
    this.sources = sources;
    this.chosen = chosen;
    this.effort = effort;
    this.plans = plans;
    this.figures = figures;
    this.drawn = drawn;
    inputs = new InputRows(drawn.get(0).map(DrawnResults::draws));
    this.avoided = avoided;
  }

  /**
   * @param stopped whether replications are missing because the user asked for an end
   */
  SeasonAnswer answer(boolean stopped) {
    CompiledPlant first = plans.get(0).stage();
    PlantOutline outlines = new PlantOutline(first);
    int count = figures.get(0).figures().count();
    List<SummaryRow> summary = new ArrayList<>();
    List<Samples> samples = new ArrayList<>();
    List<MonthRow> months = new ArrayList<>();
    List<MachineWeekRow> strips = new ArrayList<>();
    List<AdjustedRow> adjusted = new ArrayList<>();
    for (int at = 0; at < plans.size(); at++) {
      AnswerRows rows = rows(at);
      rows.summary().stream().map(row -> withChance(row, count)).forEach(summary::add);
      samples.add(rows.samples());
      inputs.add(rows);
      Outline outline = new PlantOutline(plans.get(at).stage()).outline();
      adjusted.addAll(
          new CropAdjustments(outline, figures.get(at).figures()).rows(plans.get(at).name(), rows));
      months.addAll(rows.months(figures.get(at).months()));
      strips(at, strips);
    }
    PlantOrigin source = source();
    StoppingRule goal = new StoppingRule(effort, ofPlans().subList(1, plans.size()));
    List<Fact> facts =
        new ArrayList<>(
            new RunFacts(rows(0), effort, figures.get(0).figures(), goal).facts(stopped));
    IntervalFacts.of(summary).ifPresent(facts::add);
    facts.addAll(SeasonFacts.facts(plans.size(), !avoided.isEmpty()));
    List<PlanDifference> differences = differences(samples);
    return new SeasonAnswer(
        outlines.header(source, chosen, effort, count, stopped),
        outlines.outline(plans.stream().map(Season.Planned::stage).toList()),
        plans.stream().map(SeasonAnswers::plan).toList(),
        summary,
        adjusted,
        inputs.answer(),
        differences,
        months,
        strips,
        avoided,
        new PlanRanking(plans.stream().map(Season.Planned::name).toList(), ofPlans(), differences)
            .verdict(),
        facts,
        cautions(),
        source.warnings(),
        new Replayed(samples));
  }

  private List<ReplicationResults> ofPlans() {
    return figures.stream().map(SeasonResults::figures).toList();
  }

  private AnswerRows rows(int at) {
    Season.Planned plan = plans.get(at);
    return new AnswerRows(
        plan.name(),
        plan.stage(),
        figures.get(at).figures(),
        new PlantOutline(plan.stage()),
        drawn.get(at));
  }

  /** What is said of where the answer came from: all files, and what they warn of once. */
  private PlantOrigin source() {
    Set<LocatedProblem> warnings = new LinkedHashSet<>();
    plans.forEach(plan -> warnings.addAll(plan.warnings()));
    PlantOrigin one = sources.get(0);
    return new PlantOrigin(
        one.variants(),
        sources.stream().map(PlantOrigin::file).collect(Collectors.joining(", ")),
        sources.stream().map(PlantOrigin::contentHash).distinct().collect(Collectors.joining("+")),
        one.version(),
        List.copyOf(warnings));
  }

  private List<Fact> cautions() {
    Set<Fact> all = new LinkedHashSet<>();
    plans.forEach(plan -> all.addAll(new SafetyFacts(plan.stage().plant()).facts()));
    return List.copyOf(all);
  }

  private static SeasonAnswer.Plan plan(Season.Planned plan) {
    return new SeasonAnswer.Plan(
        plan.name(),
        plan.says(),
        plan.source().file(),
        plan.source().contentHash(),
        new PlantOutline(plan.stage()).outline(),
        new SeasonEntries(plan.stage()).entries());
  }

  private static SummaryRow withChance(SummaryRow r, int count) {
    boolean chance =
        Measure.find(r.measure()).filter(match -> CHANCES.contains(match.measure())).isPresent();
    if (!chance) {
      return r;
    }
    Interval known = Intervals.chance95((int) Math.round(r.mean() * count), count);
    return new SummaryRow(
        r.option(),
        r.measure(),
        r.unit(),
        r.mean(),
        known.low(),
        known.high(),
        r.sd(),
        r.p05(),
        r.p50(),
        r.p95(),
        r.least(),
        r.most(),
        r.replications(),
        "clopper-pearson");
  }

  private void strips(int at, List<MachineWeekRow> all) {
    CompiledLines layout = plans.get(at).stage().layout();
    int crops = layout.naming.crops.count();
    for (String machine : new PlantOutline(plans.get(at).stage()).allMachines()) {
      for (int m = 0; m < layout.machines; m++) {
        if (layout.machine[m].name().equals(machine)) {
          for (int c = 0; c < crops; c++) {
            strip(at, machine, layout.naming.crops.name(c), 2 * (m * crops + c), all);
          }
        }
      }
    }
  }

  private void strip(int at, String machine, String crop, int cell, List<MachineWeekRow> all) {
    for (int week = 0; week < figures.get(at).weeks(); week++) {
      double hours = figures.get(at).strip(week, cell);
      double workedT = figures.get(at).strip(week, cell + 1);
      if (hours > 0 || workedT > 0) {
        all.add(new MachineWeekRow(plans.get(at).name(), machine, week + 1, crop, hours, workedT));
      }
    }
  }

  private List<PlanDifference> differences(List<Samples> samples) {
    int pairs = Math.max(1, plans.size() * (plans.size() - 1) / 2);
    List<PlanDifference> rows = new ArrayList<>();
    for (int at = 1; at < plans.size(); at++) {
      for (int against = 0; against < at; against++) {
        for (Samples.Measured measured : samples.get(against).measures()) {
          pair(at, against, measured, pairs, rows);
        }
      }
    }
    return rows;
  }

  private void pair(
      int at, int against, Samples.Measured measured, int pairs, List<PlanDifference> rows) {
    String measure = measured.measure();
    ReplicationResults of = figures.get(at).figures();
    boolean left =
        Measure.find(measure).filter(match -> NOT_PAIRED.contains(match.measure())).isPresent();
    if (of.has(measure) && !left) {
      DifferenceRow row =
          inputs.difference(
              new InputRows.Pair(
                  plans.get(at).name(),
                  plans.get(against).name(),
                  measured,
                  figures.get(against).figures(),
                  of),
              drawn.get(against),
              drawn.get(at),
              pairs);
      rows.add(new PlanDifference(plans.get(against).name(), row));
    }
  }
}
