package hurdline.answer;

import hurdline.measure.Measure;
import hurdline.problem.LocatedProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What this plant will do over its calendar, from n replications.
 *
 * @param header plant, program and settings
 * @param outline crops, lines and places by name
 * @param summary one row per measure, the order of {@code measures.csv}; dry twins follow their
 *     measure
 * @param adjusted headline measures adjusted for the drawn crop; empty where none can be
 * @param inputs what of the intervals comes from inputs that are not known for certain
 * @param holders per line, what held its feeder and for how long; rows of one line together, the
 *     longest first; their mean hours add up to the line's scheduled hours
 * @param machines mean hours of each machine in each state, in the order of the lines; they add up
 *     to the horizon
 * @param weeks per week, measures that add up: {@link hurdline.measure.Measure#MASS_FED}, {@link
 *     Measure#PRODUCT_MASS}, {@link hurdline.measure.Measure#MACHINE_HOURS} and {@link
 *     hurdline.measure.Measure#LINE_HOURS_LIMITED_BY}
 * @param months per calendar month: {@link hurdline.measure.Measure#ENERGY_TOTAL}, {@link
 *     hurdline.measure.Measure#ENERGY_PEAK}, {@link hurdline.measure.Measure#MONEY_WAGES} and
 *     {@link hurdline.measure.Measure#MONEY_REVENUE}
 * @param levels the most that lay in the yard on each date
 * @param stores the most that lay in each store of products on each date
 * @param flows one diagram per line
 * @param orders what became of each order, product by product
 * @param rest what has been of the season, where the answer is of the rest of it
 * @param capacity rated and expected capacity, and what would limit each line next if what limited
 *     it longest did not
 * @param assumptions what the figures take for granted
 * @param cautions what in this very plant can hurt someone; the page adds its standing cautions
 * @param warnings what {@code check} warns of
 * @param samples every measure of every replication; {@link Samples} after reading {@code
 *     record.json}
 * @param trace the events and rates of {@code --trace}, else {@link Trace}; its rows are not kept
 *     in {@code record.json}
 */
public record RunAnswer(
    Header header,
    Outline outline,
    List<SummaryRow> summary,
    List<AdjustedRow> adjusted,
    InputUncertainty inputs,
    List<BottleneckRow> holders,
    List<MachineTime> machines,
    List<WeekRow> weeks,
    List<MonthRow> months,
    List<YardLevelRow> levels,
    List<StoreLevelRow> stores,
    List<LineFlow> flows,
    List<OrderRow> orders,
    SeasonRest rest,
    Capacity capacity,
    List<Fact> assumptions,
    List<Fact> cautions,
    List<LocatedProblem> warnings,
    Samples samples,
    Trace trace)
    implements Answer {
  public RunAnswer {
    inputs = inputs == null ? InputUncertainty.none() : inputs;
    summary = List.copyOf(summary);
    adjusted = adjusted == null ? List.of() : List.copyOf(adjusted);
    holders = List.copyOf(holders);
    machines = List.copyOf(machines);
    weeks = List.copyOf(weeks);
    months = List.copyOf(months);
    levels = List.copyOf(levels);
    stores = stores == null ? List.of() : List.copyOf(stores);
    flows = List.copyOf(flows);
    orders = List.copyOf(orders);
    rest = rest == null ? SeasonRest.none() : rest;
    assumptions = List.copyOf(assumptions);
    cautions = List.copyOf(cautions);
    warnings = List.copyOf(warnings);
    capacity = capacity == null ? Capacity.none() : capacity; // a record of before has none
    samples = samples == null ? Samples.none() : samples;
    trace = trace == null ? Trace.none() : trace;
  }

  /**
   * The same with what has been of its season, what more that takes for granted, and what is odd
   * about the records.
   */
  public RunAnswer with(
      SeasonRest of, List<? extends Fact> assumed, List<LocatedProblem> ofRecords) {
    List<Fact> all = new ArrayList<>(assumptions);
    all.addAll(assumed);
    List<LocatedProblem> warned = new ArrayList<>(warnings);
    warned.addAll(ofRecords);
    return new RunAnswer(
        header, outline, summary, adjusted, inputs, holders, machines, weeks, months, levels,
        stores, flows, orders, of, capacity, all, cautions, warned, samples, trace);
  }

  /** The summary of the measure with this full name, if the plant has it. */
  public Optional<SummaryRow> find(String measure) {
    return summary.stream().filter(row -> row.measure().equals(measure)).findFirst();
  }

  /** The mean of the measure with this full name, or NaN. */
  public double mean(String measure) {
    return find(measure).map(SummaryRow::mean).orElse(Double.NaN);
  }

  /** The same of a part of a sum, which is 0 where the plant has no such part. */
  public double meanOr0(String measure) {
    return find(measure).map(SummaryRow::mean).orElse(0.0);
  }
}
