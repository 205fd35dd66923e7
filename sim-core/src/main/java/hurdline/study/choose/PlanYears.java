package hurdline.study.choose;

import hurdline.answer.ChosenLimit;
import hurdline.answer.SimulatedBlock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** The years of each plan from one year on, stage by stage, each simulated once and kept. */
final class PlanYears {
  private final BlockRunner runner;
  private final BlockStore store;
  private final Runnable year;
  private final int base;
  private final double[][][] values; // [measure][plan][year from the base on]
  private final Map<Integer, String> problems = new TreeMap<>();
  private final Map<Integer, List<ChosenLimit>> limits = new TreeMap<>();
  private long simulated;

  /**
   * @param year told after each simulated year
   * @param base number of the first year
   */
  PlanYears(
      BlockRunner runner, BlockStore store, Runnable year, int plans, int measures, int base) {
    this.runner = runner;
    this.store = store;
    this.year = year;
    this.base = base;
    values = new double[measures][plans][0];
  }

  /**
   * Simulates a stage; those of its blocks that are kept are taken as they are. Of a stage that is
   * not whole no year is taken.
   *
   * @param blocks of one stage
   * @return whether it is whole
   */
  boolean simulate(List<PlanBlock> blocks, BooleanSupplier stop) {
    double[][][] before = Stream.of(values).map(double[][]::clone).toArray(double[][][]::new);
    boolean whole = isWholeAfter(blocks, stop);
    for (int measure = 0; !whole && measure < values.length; measure++) {
      values[measure] = before[measure];
    }
    return whole;
  }

  private boolean isWholeAfter(List<PlanBlock> blocks, BooleanSupplier stop) {
    List<PlanBlock> due = new ArrayList<>();
    int[] whole = {0};
    for (PlanBlock block : blocks) {
      Optional<SimulatedBlock> kept =
          store.kept(block.stage(), block.number()).filter(found -> isOf(found, block));
      if (kept.isPresent()) {
        take(kept.get());
        whole[0]++;
        for (int done = 0; done < block.planYears(); done++) {
          year.run();
        }
      } else {
        due.add(block);
      }
    }
    runner.run(
        due,
        block -> {
          store.keep(block);
          take(block);
          whole[0]++;
        },
        year,
        stop);
    blocks.stream().filter(block -> block.stage() > 0).forEach(this::leaveBlank);
    return whole[0] == blocks.size();
  }

  /** A plan whose problem shows in a later stage has no value there. */
  private void leaveBlank(PlanBlock block) {
    double[] blank = new double[block.years().count()];
    Arrays.fill(blank, Double.NaN);
    for (int plan : block.plans()) {
      for (int measure = 0; problems.containsKey(plan) && measure < values.length; measure++) {
        place(measure, plan, block.years().from() - base, blank);
      }
    }
  }

  private boolean isOf(SimulatedBlock found, PlanBlock block) {
    return found.from() == block.years().from()
        && found.plans().stream().map(SimulatedBlock.Plan::plan).toList().equals(block.plans())
        && found.plans().stream().allMatch(plan -> isWhole(plan, block.years().count()));
  }

  private boolean isWhole(SimulatedBlock.Plan plan, int years) {
    return !plan.problem().isEmpty()
        || plan.measured().size() == values.length
            && plan.measured().stream().allMatch(series -> series.values().length == years);
  }

  private void take(SimulatedBlock block) {
    for (SimulatedBlock.Plan plan : block.plans()) {
      if (!plan.problem().isEmpty()) {
        problems.put(plan.plan(), plan.problem());
        continue;
      }
      limits.put(plan.plan(), plan.limits());
      simulated += plan.measured().get(0).values().length;
      for (int measure = 0; measure < values.length; measure++) {
        place(measure, plan.plan(), block.from() - base, plan.measured().get(measure).values());
      }
    }
  }

  private void place(int measure, int plan, int at, double[] some) {
    double[] before = values[measure][plan];
    double[] all = Arrays.copyOf(before, Math.max(before.length, at + some.length));
    System.arraycopy(some, 0, all, at, some.length);
    values[measure][plan] = all;
  }

  /** A measure of a plan, all years from the first on; read only. */
  double[] of(int measure, int plan) {
    return values[measure][plan];
  }

  /** Why plans cannot be simulated. */
  Map<Integer, String> problems() {
    return problems;
  }

  List<ChosenLimit> limits(int plan) {
    return limits.getOrDefault(plan, List.of());
  }

  /** Years simulated, of all plans. */
  long simulated() {
    return simulated;
  }
}
