package hurdline.compiled;

import hurdline.plant.Bale;
import hurdline.plant.Line;
import hurdline.plant.LotAttribute;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Step;
import hurdline.random.Distribution;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The plant compiled: everything numbered by name, ready to be read by all replications at once.
 *
 * <p>A head is a draw seen as the thing whose rate is set: the feed of a line, or a bin's draw in a
 * line. All arrays are read only.
 *
 * <p>One file because every number of the compiled plant is given here.
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

  private CompiledLines(Plant plant) {
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
    List<Draw> draw = draws(plant);
    heads = draw.size();
    headLine = draw.stream().mapToInt(d -> naming.lines.index(d.line.name())).toArray();
    headBin = draw.stream().mapToInt(d -> naming.bins.find(d.entry.machine())).toArray();
    precedence = draw.stream().mapToInt(d -> d.entry.precedence()).toArray();
    stretch =
        draw.stream()
            .map(d -> new StretchCompiler(naming, d.line).from(d.entry.machine()))
            .toArray(Stretch[]::new);
    feedHead = new int[lines];
    alongside = new int[lines][];
    crop = new int[lines];
    for (int h = 0; h < heads; h++) {
      if (headBin[h] < 0) {
        feedHead[headLine[h]] = h;
      }
    }
    for (Line line : plant.lines()) {
      int l = naming.lines.index(line.name());
      alongside[l] = line.alongside().stream().mapToInt(naming.machines::index).sorted().toArray();
      crop[l] = naming.crops.index(line.crop());
    }
    nodeOf = new int[heads][machines];
    for (int h = 0; h < heads; h++) {
      for (int m = 0; m < machines; m++) {
        nodeOf[h][m] = stretch[h].nodeOf(m);
      }
    }
    headsOf = heads(machines, (h, m) -> nodeOf[h][m] >= 0);
    linesAlongside = new int[machines][];
    for (int m = 0; m < machines; m++) {
      int at = m;
      linesAlongside[m] =
          IntStream.range(0, lines)
              .filter(l -> IntStream.of(alongside[l]).anyMatch(a -> a == at))
              .toArray();
    }
    shared = IntStream.range(0, machines).filter(m -> headsOf[m].length > 1).toArray();
    draws = heads(bins, (h, b) -> headBin[h] == b);
    producers = heads(bins, (h, b) -> sinkOfBin(h, b) >= 0);
    binsOf = new int[heads][];
    for (int h = 0; h < heads; h++) {
      int head = h;
      binsOf[h] = IntStream.range(0, bins).filter(b -> sinkOfBin(head, b) >= 0).toArray();
    }
    producerSink = new int[bins][];
    for (int b = 0; b < bins; b++) {
      int bin = b;
      producerSink[b] = IntStream.of(producers[b]).map(h -> sinkOfBin(h, bin)).toArray();
    }
    holds = new double[bins];
    byVolume = new boolean[bins];
    startAt = new double[bins];
    stopAt = new double[bins];
    for (int b = 0; b < bins; b++) {
      Machine.Bin bin = (Machine.Bin) naming.machine(naming.bins.name(b));
      holds[b] = bin.holds();
      byVolume[b] = bin.byVolume();
      startAt[b] = bin.startAt();
      stopAt[b] = bin.stopAt();
    }
    looseKgPerM3 = new double[components];
    plant
        .components()
        .forEach(
            c ->
                looseKgPerM3[naming.components.index(c.name())] =
                    c.looseKgPerM3().orElse(Double.NaN));
    binOrder = binOrder();
    headOrder = headOrder();
    leadsTo = leadsTo();
    stops = new StopNumbers(plant, naming, machine);
    causes = new Causes(this);
  }

  /** Compiles a plant that keeps the rules of {@code hurdline.plant}. */
  public static CompiledLines of(Plant plant) {
    return new CompiledLines(plant);
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

  private Bale bale(int line) {
    String name = naming.crops.name(crop[line]);
    return plant.crops().stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow()
        .bale();
  }

  private record Draw(Line line, Step entry) {}

  private List<Draw> draws(Plant plant) {
    List<Draw> draws = new ArrayList<>();
    for (Line line : plant.lines()) {
      for (Step step : line.steps()) {
        if (step.machine().equals(line.feed()) || naming.bins.find(step.machine()) >= 0) {
          draws.add(new Draw(line, step));
        }
      }
    }
    draws.sort(
        Comparator.comparing((Draw d) -> d.entry.machine()).thenComparing(d -> d.line.name()));
    return draws;
  }

  private interface Belongs {
    boolean to(int head, int thing);
  }

  private int[][] heads(int things, Belongs belongs) {
    int[][] found = new int[things][];
    for (int t = 0; t < things; t++) {
      int count = 0;
      int[] some = new int[heads];
      for (int h = 0; h < heads; h++) {
        if (belongs.to(h, t)) {
          some[count++] = h;
        }
      }
      found[t] = Arrays.copyOf(some, count);
    }
    return found;
  }

  private int sinkOfBin(int head, int bin) {
    Stretch s = stretch[head];
    for (int k = 0; k < s.sinks; k++) {
      if (s.sinkKind[k] == Stretch.Sink.BIN && s.sinkTarget[k] == bin) {
        return k;
      }
    }
    return -1;
  }

  private int[] binOrder() {
    List<Integer> order = new ArrayList<>();
    boolean[] done = new boolean[bins];
    for (int b = 0; b < bins; b++) {
      addAfterWhatFillsIt(b, done, order);
    }
    return order.stream().mapToInt(Integer::intValue).toArray();
  }

  private void addAfterWhatFillsIt(int bin, boolean[] done, List<Integer> order) {
    if (done[bin]) {
      return;
    }
    done[bin] = true;
    for (int h : producers[bin]) {
      if (headBin[h] >= 0) {
        addAfterWhatFillsIt(headBin[h], done, order);
      }
    }
    order.add(bin);
  }

  private int[] headOrder() {
    return IntStream.concat(
            IntStream.range(0, heads).filter(h -> headBin[h] < 0),
            IntStream.of(binOrder).flatMap(b -> IntStream.of(draws[b])))
        .toArray();
  }

  private boolean[][][] leadsTo() {
    boolean[][] ofHead = new boolean[heads][machines];
    boolean[] known = new boolean[heads];
    boolean[][][] leads = new boolean[heads][][];
    for (int h = 0; h < heads; h++) {
      leads[h] = new boolean[stretch[h].nodes][];
      for (int node = 0; node < stretch[h].nodes; node++) {
        leads[h][node] = new boolean[machines];
        spread(h, node, leads[h][node], new boolean[stretch[h].nodes], ofHead, known);
      }
    }
    return leads;
  }

  /** All machines that a whole head's material reaches. */
  private boolean[] reachedBy(int head, boolean[][] ofHead, boolean[] known) {
    if (!known[head]) {
      known[head] = true;
      for (int m : stretch[head].machine) {
        if (m >= 0) {
          ofHead[head][m] = true;
        }
      }
      spread(head, 0, ofHead[head], new boolean[stretch[head].nodes], ofHead, known);
    }
    return ofHead[head];
  }

  private void spread(
      int head, int node, boolean[] reached, boolean[] seen, boolean[][] ofHead, boolean[] known) {
    Stretch s = stretch[head];
    for (int to : s.outletTo[node]) {
      if (to >= 0) {
        reached[s.machine[to]] = true;
        if (!seen[to]) {
          seen[to] = true;
          spread(head, to, reached, seen, ofHead, known);
        }
      } else if (s.sinkKind[-1 - to] == Stretch.Sink.BIN) {
        for (int draw : draws[s.sinkTarget[-1 - to]]) {
          boolean[] beyond = reachedBy(draw, ofHead, known);
          for (int m = 0; m < machines; m++) {
            reached[m] |= beyond[m];
          }
        }
      }
    }
  }
}
