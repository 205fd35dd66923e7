package hurdline.answer;

import hurdline.measure.Measure;
import hurdline.problem.LocatedProblem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How full the shared building is under each of several season plans, what each earns, and which
 * finishes its crops.
 *
 * @param header plant, program and settings; of several files the first plant, all files
 * @param outline of the first plan
 * @param plans in the order asked for
 * @param summary one row per plan and measure
 * @param adjusted headline measures of each plan adjusted for its drawn crop; empty where none can
 *     be
 * @param inputs what of the intervals comes from inputs that are not known for certain
 * @param differences one row per pair of plans and measure that both have, but for machines by crop
 * @param months per plan and calendar month, as of a run
 * @param strips what each machine did for each crop, week by week
 * @param avoided what the plans would earn without a changeover; empty unless asked for
 * @param verdict which plan is best
 * @param assumptions what the figures take for granted
 * @param cautions what in these plants can hurt someone
 * @param warnings what {@code check} warns of
 * @param samples every measure of every replication, in the order of {@code plans}; {@link
 *     Replayed#none()} after reading {@code record.json}
 */
public record SeasonAnswer(
    Header header,
    Outline outline,
    List<Plan> plans,
    List<SummaryRow> summary,
    List<AdjustedRow> adjusted,
    InputUncertainty inputs,
    List<PlanDifference> differences,
    List<MonthRow> months,
    List<MachineWeekRow> strips,
    List<ChangeoverRow> avoided,
    Verdict verdict,
    List<Fact> assumptions,
    List<Fact> cautions,
    List<LocatedProblem> warnings,
    Replayed samples)
    implements Answer {

  /** What {@code plans.csv} tells; the summary has all measures. */
  private static final Set<Measure> TOLD =
      Set.of(
          Measure.BUILDING_ALONE,
          Measure.BUILDING_HOURS,
          Measure.CREW_CHANGEOVER,
          Measure.CREW_LABOR_HOURS,
          Measure.CREW_OVERTIME,
          Measure.CREW_RECEIVING,
          Measure.CREW_SENT_HOME,
          Measure.ENERGY_PEAK,
          Measure.ENERGY_TOTAL,
          Measure.INTAKE_FED,
          Measure.LINE_HOURS_SCHEDULED,
          Measure.MACHINE_CROP_HOURS,
          Measure.MACHINE_CROP_MASS_IN,
          Measure.MACHINE_HOURS,
          Measure.MACHINE_KPI,
          Measure.MASS_FED,
          Measure.MONEY_LINE_MARGIN,
          Measure.MONEY_LINE_MARGIN_PER_TONNE,
          Measure.MONEY_MARGIN,
          Measure.MONEY_MARGIN_LESS_FORGONE,
          Measure.MONEY_OWNER,
          Measure.MONEY_RENT,
          Measure.MONEY_TENANT,
          Measure.MONEY_REVENUE,
          Measure.MONEY_WAGES,
          Measure.PRODUCT_MASS,
          Measure.SEASON_ENDED,
          Measure.SEASON_FINISHED,
          Measure.SEASON_LEFT_OVER,
          Measure.SEASON_LINE_FINISHED,
          Measure.SEASON_MARGIN_FORGONE,
          Measure.SEASON_NTH_ENDED,
          Measure.SEASON_NTH_LEFT_OVER);

  public SeasonAnswer {
    inputs = inputs == null ? InputUncertainty.none() : inputs;
    plans = List.copyOf(plans);
    summary = List.copyOf(summary);
    adjusted = adjusted == null ? List.of() : List.copyOf(adjusted);
    differences = List.copyOf(differences);
    months = List.copyOf(months);
    strips = List.copyOf(strips);
    avoided = List.copyOf(avoided);
    assumptions = List.copyOf(assumptions);
    cautions = List.copyOf(cautions);
    warnings = List.copyOf(warnings);
    samples = samples == null ? Replayed.none() : samples;
  }

  /**
   * A season plan.
   *
   * @param name of the file's plans, {@code base} for the season as the file has it, or the name of
   *     a file without its ending
   * @param says what the file says of it, or empty
   * @param file base name of the file that it comes from
   * @param contentHash hash of that file's content
   * @param outline what the plant is made of under this plan
   * @param entries campaigns and changeovers as they lie in the calendar
   */
  public record Plan(
      String name,
      String says,
      String file,
      String contentHash,
      Outline outline,
      List<Entry> entries) {
    public Plan {
      entries = List.copyOf(entries);
    }
  }

  /**
   * A campaign, or a changeover.
   *
   * @param line the campaign's line, or empty for a changeover
   * @param from first date on which it has its machines
   * @param to last such date, if a campaign does not end earlier
   * @param shifts of a campaign
   * @param hands of a changeover
   * @param movedFrom the date that the file gives, where a changeover before it moved a campaign
   * @param tasks of a changeover, as far as the file tells them
   * @param ended full name of the measure that tells on which day a campaign ended; empty for a
   *     changeover, which lasts as planned
   */
  public record Entry(
      String line,
      LocalDate from,
      LocalDate to,
      List<String> shifts,
      int hands,
      String movedFrom,
      List<Task> tasks,
      String ended) {
    public Entry {
      shifts = List.copyOf(shifts);
      tasks = List.copyOf(tasks);
    }

    public boolean isChangeover() {
      return line.isEmpty();
    }
  }

  /**
   * A task of a changeover, in working time from its begin.
   *
   * @param after tasks that must be done before it
   * @param isCritical whether it is in the longest chain of tasks
   */
  public record Task(
      String name, int hands, List<String> after, double beginH, double endH, boolean isCritical) {
    public Task {
      after = List.copyOf(after);
    }
  }

  /**
   * Which plan is best, and from which others that cannot be told.
   *
   * @param margin the plan with the highest mean margin; empty where the plants have no money
   * @param marginLike plans without a significant difference from it, joint over all pairs
   * @param lessForgone the plan with the highest mean margin less the margin forgone on crop left
   *     over; empty where the plants have no money, or where that is not known in every replication
   *     of the plan with the highest margin
   * @param surest the plan that finished all its crops in the most replications
   * @param surestLike plans without a significant difference from it
   */
  public record Verdict(
      String margin,
      List<String> marginLike,
      String lessForgone,
      String surest,
      List<String> surestLike) {
    public Verdict {
      marginLike = List.copyOf(marginLike);
      surestLike = List.copyOf(surestLike);
    }
  }

  /** The rows of the summary that tell a plan from another. */
  public List<SummaryRow> figures() {
    return summary.stream().filter(SeasonAnswer::isTold).toList();
  }

  private static boolean isTold(SummaryRow row) {
    return Measure.find(row.measure())
        .filter(match -> !match.dry() && TOLD.contains(match.measure()))
        .isPresent();
  }

  /** The date of a day of the horizon, whose first is 1. */
  public LocalDate date(double day) {
    return header.from().plusDays(Math.round(day) - 1);
  }

  /** On which days a campaign ended; empty for a changeover and where no year had a shift of it. */
  public Optional<SummaryRow> ended(String plan, Entry entry) {
    return find(plan, entry.ended()).filter(row -> !Double.isNaN(row.p50()));
  }

  /** The summary of a plan in the measure with this full name, if it has it. */
  public Optional<SummaryRow> find(String plan, String measure) {
    return summary.stream()
        .filter(row -> row.option().equals(plan) && row.measure().equals(measure))
        .findFirst();
  }

  /** Its mean, or NaN. */
  public double mean(String plan, String measure) {
    return find(plan, measure).map(SummaryRow::mean).orElse(Double.NaN);
  }

  /** The difference of two plans in a measure, if there is such a row. */
  public Optional<PlanDifference> difference(String plan, String against, String measure) {
    return differences.stream()
        .filter(d -> d.plan().equals(plan) && d.against().equals(against))
        .filter(d -> d.row().measure().equals(measure))
        .findFirst();
  }
}
