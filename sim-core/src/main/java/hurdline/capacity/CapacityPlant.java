package hurdline.capacity;

import hurdline.compiled.BinHours;
import hurdline.compiled.CampaignHours;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.TimeWindows;
import hurdline.flow.RatedFlow;
import hurdline.plant.Line;
import hurdline.plant.Packaging;
import hurdline.plant.Resource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What the capacities of all lines of a plant have in common. */
public final class CapacityPlant {
  final CompiledLines layout;
  final Roster roster;
  final Haulage haulage;
  final RatedFlow flow;

  private final List<StopLoad> stops = new ArrayList<>(); // by number

  /** [product] its package, null without one. */
  final Packaging[] packaging;

  public CapacityPlant(CompiledLines layout, Roster roster, Haulage haulage) {
    this.layout = layout;
    this.roster = roster;
    this.haulage = haulage;
    flow = new RatedFlow(layout);
    packaging = packaging(layout);
    StopHours hours = new StopHours(this);
    for (int k = 0; k < layout.stops.count(); k++) {
      stops.add(StopLoad.of(layout.stops.stop(k), hours.of(k)));
    }
  }

  /** What the stops of a machine take that belong to a line. */
  List<StopLoad> stops(int machine, Line line) {
    int l = layout.naming.lines.index(line.name());
    return IntStream.of(layout.stops.of(machine))
        .filter(k -> layout.stops.lines(k)[l])
        .mapToObj(stops::get)
        .toList();
  }

  private static Packaging[] packaging(CompiledLines layout) {
    Packaging[] packaging = new Packaging[layout.naming.products.count()];
    layout
        .plant
        .products()
        .forEach(
            product ->
                packaging[layout.naming.products.index(product.name())] =
                    layout.plant.packaging(product).orElse(null));
    return packaging;
  }

  /** The capacity of a line with the screens that its mixes and orders ask for in the long run. */
  public LineCapacity line(Line line) {
    return new LineCapacity(this, line, new ScreenChoices(this, line).choices());
  }

  /** How many of a resource there are; infinite where nothing is needed. */
  double count(Optional<String> resource) {
    return resource
        .map(
            name ->
                layout.plant.resources().stream()
                    .filter(one -> one.name().equals(name))
                    .mapToDouble(Resource::count)
                    .sum())
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Hours of a head: its own, else those of its line. */
  TimeWindows headHours(int head) {
    int bin = layout.headBin[head];
    String line = layout.naming.lines.name(layout.headLine[head]);
    return bin < 0
        ? lineHours(layout.headLine[head])
        : roster
            .ownHours(line, layout.naming.bins.name(bin))
            .map(BinHours::hours)
            .orElseGet(() -> lineHours(layout.headLine[head]));
  }

  /** Scheduled hours of a line. */
  TimeWindows lineHours(int line) {
    String name = layout.naming.lines.name(line);
    TimeWindows all = TimeWindows.NONE;
    for (CampaignHours campaign : roster.campaigns()) {
      all = campaign.line().equals(name) ? all.union(campaign.hours()) : all;
    }
    return all;
  }
}
