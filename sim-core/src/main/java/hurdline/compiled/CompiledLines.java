package hurdline.compiled;

import hurdline.plant.Bale;
import hurdline.plant.Crop;
import hurdline.plant.LotAttribute;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.random.Distribution;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The plant compiled: everything numbered by name, ready to be read by all replications at once.
 *
 * <p>A head is a draw seen as the thing whose rate is set: the feed of a line, or a bin's draw in a
 * line. All arrays are read only.
 */
public final class CompiledLines {
  public final Plant plant;
  public final Indexes naming;
  public final int machines;
  public final int bins;
  public final int lines;
  public final int components;
  public final int heads;

  /** [head] line it belongs to. */
  public final int[] headLine;

  /** [head] bin it draws from, −1 for a feed. */
  public final int[] headBin;

  public final int[] precedence;
  public final Stretch[] stretch;

  /** Heads with producers of a bin before its draws. */
  public final int[] headOrder;

  /** Bins in the order in which material passes them. */
  public final int[] binOrder;

  /** [line] head of its feed. */
  public final int[] feedHead;

  /** [line] machines that run with it and take no material. */
  public final int[][] alongside;

  /** [line] crop. */
  public final int[] crop;

  /** [crop] of which it is a form; itself where it is none. */
  public final int[] baseOf;

  /** [crop] itself and its forms, by name; of a form that one alone. */
  public final int[][] forms;

  /** [head][machine] its node in the head's stretch, −1 if it is not in it. */
  public final int[][] nodeOf;

  /** [machine] heads that load it. */
  public final int[][] headsOf;

  /** [machine] lines alongside which it runs. */
  public final int[][] linesAlongside;

  /** Machines in several stretches, by number. */
  public final int[] shared;

  /** [bin] heads that fill it, and the sink of each head's stretch that is this bin. */
  public final int[][] producers;

  public final int[][] producerSink;

  /** [head] bins that it fills. */
  public final int[][] binsOf;

  /** [bin] heads that draw from it. */
  public final int[][] draws;

  /** [bin] capacity, kg or m3. */
  public final double[] holds;

  public final boolean[] byVolume;
  public final double[] startAt;
  public final double[] stopAt;

  /** [bin] level on the first day. */
  public final double[] opensAt;

  /** [component] loose density, kg/m3; NaN where not given. */
  public final double[] looseKgPerM3;

  /** [head][node][machine] whether material of that node reaches that machine, over any bins. */
  public final boolean[][][] leadsTo;

  public final Machine[] machine;

  /**
   * [mill][screen] the product that the lines' steps name, −1 where none does; null for all but
   * mills.
   */
  public final int[][] makes;

  /**
   * [mill][screen] what the motor allows at the reference moisture, kg/s; null for all but mills.
   */
  public final double[][] motorKgPerS;

  /** [mill][screen] share of hurd that becomes fines; null for all but mills. */
  public final double[][] millFines;

  /** [mill] factor on the energy by moisture; null for all but mills. */
  public final Polyline[] grindingByMoisture;

  public final StopNumbers stops;
  public final Causes causes;
  public final Selling selling;
  public final Stores stores;

  private final LineGraph graph;

  private CompiledLines(Plant plant, Optional<CompiledLines> before) {
    this.plant = plant;
    naming = new Indexes(plant);
    selling = new Selling(plant, naming);
    stores = new Stores(plant, naming);
    machines = naming.machines.count();
    bins = naming.bins.count();
    lines = naming.lines.count();
    components = naming.components.count();
    machine = new Machine[machines];
    for (int m = 0; m < machines; m++) {
      machine[m] = naming.machine(naming.machines.name(m));
    }
    makes = MillProducts.of(this);
    motorKgPerS = new double[machines][];
    millFines = new double[machines][];
    grindingByMoisture = new Polyline[machines];
    for (int m = 0; m < machines; m++) {
      if (machine[m] instanceof Machine.HammerMill mill) {
        List<Machine.Screen> screens = mill.screens();
        motorKgPerS[m] = screens.stream().mapToDouble(mill::kgPerS).toArray();
        millFines[m] = screens.stream().mapToDouble(Machine.Screen::fines).toArray();
        grindingByMoisture[m] = new Polyline(mill.grinding().byMoisture());
      }
    }
    graph =
        before
            .filter(same -> same.plant.lines() == plant.lines() && same.naming.leadAs(naming))
            .map(same -> same.graph)
            .orElseGet(() -> new LineGraph(plant, naming));
    heads = graph.heads;
    headLine = graph.headLine;
    headBin = graph.headBin;
    precedence = graph.precedence;
    stretch = graph.stretch;
    feedHead = graph.feedHead;
    alongside = graph.alongside;
    crop = graph.crop;
    baseOf = bases();
    forms = new int[baseOf.length][];
    Arrays.setAll(forms, this::formsOf);
    nodeOf = graph.nodeOf;
    headsOf = graph.headsOf;
    linesAlongside = graph.linesAlongside;
    shared = graph.shared;
    draws = graph.draws;
    producers = graph.producers;
    producerSink = graph.producerSink;
    binsOf = graph.binsOf;
    binOrder = graph.binOrder;
    headOrder = graph.headOrder;
    leadsTo = graph.leadsTo;
    holds = new double[bins];
    byVolume = new boolean[bins];
    startAt = new double[bins];
    stopAt = new double[bins];
    opensAt = new double[bins];
    for (int b = 0; b < bins; b++) {
      Machine.Bin bin = (Machine.Bin) naming.machine(naming.bins.name(b));
      holds[b] = bin.holds();
      byVolume[b] = bin.byVolume();
      startAt[b] = bin.startAt();
      stopAt[b] = bin.stopAt();
      opensAt[b] = bin.opens();
    }
    looseKgPerM3 = new double[components];
    plant
        .components()
        .forEach(
            c ->
                looseKgPerM3[naming.components.index(c.name())] =
                    c.looseKgPerM3().orElse(Double.NaN));
    stops = new StopNumbers(plant, naming, machine);
    causes = new Causes(this);
  }

  /** Compiles a plant that keeps the rules of {@code hurdline.plant}. */
  public static CompiledLines of(Plant plant) {
    return new CompiledLines(plant, Optional.empty());
  }

  /** A changed plant compiled, with what leads where taken over if the change does not touch it. */
  public CompiledLines changedTo(Plant changed) {
    return new CompiledLines(changed, Optional.of(this));
  }

  /** Writes the mean lot of a line's crop. */
  public void typicalLot(int line, Lot lot) {
    Bale bale = bale(line);
    double moisture = Math.min(0.99, Math.max(0, bale.moisture().mean()));
    for (int c = 0; c < components; c++) {
      lot.set(c, bale.composition().getOrDefault(naming.components.name(c), 0.0), moisture);
    }
    for (int a = 0; a < lot.attribute.length; a++) {
      LotAttribute attribute = naming.attributes.get(a);
      double mean = attribute.of(bale).map(Distribution::mean).orElse(0.0);
      lot.attribute[a] = Math.min(attribute.most(), Math.max(0, mean));
    }
  }

  private int[] bases() {
    int[] bases = new int[naming.crops.count()];
    for (Crop one : plant.crops()) {
      bases[naming.crops.index(one.name())] = naming.crops.index(one.base());
    }
    return bases;
  }

  private int[] formsOf(int crop) {
    return baseOf[crop] == crop
        ? IntStream.range(0, baseOf.length).filter(form -> baseOf[form] == crop).toArray()
        : new int[] {crop};
  }

  /** Whether the line takes a crop: its own, or a form of that. */
  public boolean takes(int line, int ofCrop) {
    return crop[line] == baseOf[ofCrop];
  }

  private Bale bale(int line) {
    String name = naming.crops.name(crop[line]);
    return plant.crops().stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow()
        .bale();
  }
}
