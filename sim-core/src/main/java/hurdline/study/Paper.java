package hurdline.study;

import hurdline.answer.PaperAnswer;
import hurdline.flow.PaperFlow;
import hurdline.line.Layout;
import hurdline.plant.Line;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What each line can be fed on paper: no clock, no chance, its crop at the mean.
 *
 * <p>A machine that needs s_k hours per tonne fed on screen choice k, which gets the share q_k of the
 * mass, can be fed 1/Σ(q_k·s_k); the least of all machines is the line's. Stops, changes, swaps and
 * full bins are left out, so what is played can only be less.
 */
public final class Paper {
  private static final double T_PER_H = 3.6;

  private final Stage stage;
  private final Layout layout;
  private final Outlines outlines;
  private final PaperFlow flow;
  private final Screens screens;

  private Paper(Stage stage) {
    this.stage = stage;
    layout = stage.layout();
    outlines = new Outlines(stage);
    flow = new PaperFlow(layout);
    screens = new Screens(layout);
  }

  /**
   * Works out the answer.
   *
   * @throws hurdline.plant.ProblemsException if the changed plant has problems
   */
  public static PaperAnswer of(Source source, Chosen chosen) {
    Paper paper = new Paper(Stage.of(source.variants().with(chosen.asArray())));
    return new PaperAnswer(
        paper.outlines.header(source, chosen),
        paper.outlines.outline(),
        paper.outlines.lines().stream().map(paper::line).toList(),
        source.warnings());
  }

  private PaperAnswer.Line line(Line line) {
    int l = layout.naming.lines.index(line.name());
    double[] load = new double[layout.machines];
    double[] secondsPerKg = new double[layout.machines];
    for (Screens.Choice choice : screens.of(line)) {
      flow.feed(l, choice.screen());
      for (int m = 0; m < layout.machines; m++) {
        load[m] += choice.share() * flow.load(m);
        secondsPerKg[m] += choice.share() * flow.secondsPerKgFed(m);
      }
    }
    int feeder = layout.naming.machines.index(line.feed());
    double feedRate = T_PER_H / secondsPerKg[feeder];
    List<PaperAnswer.Machine> machines = new ArrayList<>();
    for (String name : outlines.machines(line)) {
      int m = layout.naming.machines.index(name);
      machines.add(machine(name, load[m], secondsPerKg[m], feedRate));
    }
    Optional<PaperAnswer.Machine> holder =
        machines.stream()
            .filter(machine -> !Double.isNaN(machine.fedTPerH()))
            .min(Comparator.comparingDouble(PaperAnswer.Machine::fedTPerH));
    double capacity = holder.map(PaperAnswer.Machine::fedTPerH).orElse(Double.NaN);
    double hours = scheduledHours(line);
    return new PaperAnswer.Line(
        line.name(),
        line.crop(),
        line.feed(),
        feedRate,
        capacity,
        holder.map(PaperAnswer.Machine::machine).orElse(""),
        hours,
        capacity * hours,
        machines);
  }

  private PaperAnswer.Machine machine(
      String name, double load, double secondsPerKg, double feedRateTPerH) {
    boolean limited = secondsPerKg > 0;
    double fed = limited ? T_PER_H / secondsPerKg : Double.NaN;
    return new PaperAnswer.Machine(
        name,
        outlines.kind(name),
        load,
        limited ? fed * load : Double.NaN,
        fed,
        fed / feedRateTPerH - 1);
  }

  private double scheduledHours(Line line) {
    return stage.roster().campaigns().stream()
        .filter(campaign -> campaign.line().equals(line.name()))
        .mapToDouble(campaign -> campaign.hours().lengthS() / 3600)
        .sum();
  }
}
