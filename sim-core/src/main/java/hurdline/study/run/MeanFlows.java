package hurdline.study.run;

import hurdline.answer.BottleneckRow;
import hurdline.measure.Cause;
import hurdline.measure.Measure;
import hurdline.study.FlowFigures;
import java.util.List;

/** Flows of simulated years, the mean of all replications. */
final class MeanFlows implements FlowFigures {
  private static final double TONNE_KG = 1000;

  private final RunAccumulator gathered;
  private final List<BottleneckRow> holders;

  MeanFlows(RunAccumulator gathered, List<BottleneckRow> holders) {
    this.gathered = gathered;
    this.holders = holders;
  }

  @Override
  public double wayKg(int head, int node, int outlet) {
    return gathered.wayKg(head, node, outlet);
  }

  @Override
  public double fedKg(String line) {
    double[] rate = gathered.figures().series(Measure.LINE_THROUGHPUT.of(line));
    double[] hours = gathered.figures().series(Measure.LINE_HOURS_SCHEDULED.of(line));
    double sum = 0;
    for (int at = 0; at < rate.length; at++) {
      sum += hours[at] > 0 ? rate[at] * hours[at] * TONNE_KG : 0;
    }
    return sum / rate.length;
  }

  @Override
  public double made(String line, String product) {
    return gathered.figures().mean(Measure.LINE_TURNOUT.of(line, product));
  }

  @Override
  public double hours(String line) {
    return gathered.figures().mean(Measure.LINE_HOURS_SCHEDULED.of(line));
  }

  @Override
  public double limitsShare(String line, String node) {
    return holders.stream()
        .filter(row -> row.line().equals(line) && Cause.machinesOf(row.cause()).contains(node))
        .mapToDouble(BottleneckRow::share)
        .sum();
  }
}
