package hurdline.capacity;

import hurdline.compiled.BinHours;
import hurdline.compiled.CampaignHours;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.TimeWindows;
import hurdline.flow.RatedFlow;
import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Packaging;
import hurdline.plant.Product;
import hurdline.plant.Resource;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** What the capacities of all lines of a plant have in common. */
public final class CapacityPlant {
  final CompiledLines layout;
  final Roster roster;
  final Haulage haulage;
  final RatedFlow flow;

  private final List<StopLoad> stops = new ArrayList<>(); // by number

  /** [machine * products + product] the package that it fills, null without one. */
  private final Packaging[] packaging;

  public CapacityPlant(CompiledLines layout, Roster roster, Haulage haulage) {
    this.layout = layout;
    this.roster = roster;
    this.haulage = haulage;
    flow = new RatedFlow(layout);
    packaging = packaging(layout);
    StopHours hours = new StopHours(this);
    for (int k = 0; k < layout.stops.count(); k++) {
      stops.add(StopLoad.of(layout.stops.stop(k), hours.of(k), layout.stops.plannedS(k)));
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
    int products = layout.naming.products.count();
    Packaging[] packaging = new Packaging[layout.machines * products];
    for (int m = 0; m < layout.machines; m++) {
      for (Product product : packed(layout, m)) {
        packaging[m * products + layout.naming.products.index(product.name())] =
            layout.plant.packaging(layout.machine[m].name(), product).orElse(null);
      }
    }
    return packaging;
  }

  private static List<Product> packed(CompiledLines layout, int machine) {
    return layout.machine[machine] instanceof Machine.Packer ? layout.plant.products() : List.of();
  }

  /** What is filled where something comes to rest as a product; null where it is piled loose. */
  Packaging packaging(LineLoads.Made made) {
    return made.packer() < 0
        ? null
        : packaging[made.packer() * layout.naming.products.count() + made.product()];
  }

  /** The capacity of a line with the screens that its mixes and orders ask for in the long run. */
  public LineCapacity line(Line line) {
    return new LineCapacity(this, line, new ScreenChoices(this, line).choices());
  }

  /** How many of a resource there are. */
  double count(String resource) {
    return layout.plant.resources().stream()
        .filter(one -> one.name().equals(resource))
        .mapToDouble(Resource::count)
        .sum();
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
