package hurdline.compiled;

import hurdline.plant.Line;
import hurdline.plant.Plant;
import hurdline.plant.Step;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What leads where: heads, their stretches and what follows from them; {@link CompiledLines} has
 * the same arrays and says what they hold. It goes by the lines, by names and by what cyclones
 * collect, so that it stays where only other figures of a plant change.
 */
final class LineGraph {
  final int heads;
  final int[] headLine;
  final int[] headBin;
  final int[] precedence;
  final Stretch[] stretch;
  final int[] headOrder;
  final int[] binOrder;
  final int[] feedHead;
  final int[][] alongside;
  final int[] crop;
  final int[][] nodeOf;
  final int[][] headsOf;
  final int[][] linesAlongside;
  final int[] shared;
  final int[][] producers;
  final int[][] producerSink;
  final int[][] binsOf;
  final int[][] draws;
  final boolean[][][] leadsTo;

  LineGraph(Plant plant, Indexes naming) {
    int machines = naming.machines.count();
    int bins = naming.bins.count();
    int lines = naming.lines.count();
    List<Draw> draw = draws(plant, naming);
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
    binOrder = binOrder();
    headOrder = headOrder();
    leadsTo = leadsTo();
  }

  private record Draw(Line line, Step entry) {}

  private static List<Draw> draws(Plant plant, Indexes naming) {
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
    boolean[] done = new boolean[producers.length];
    for (int b = 0; b < producers.length; b++) {
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
    boolean[][] ofHead = new boolean[heads][headsOf.length];
    boolean[] known = new boolean[heads];
    boolean[][][] leads = new boolean[heads][][];
    for (int h = 0; h < heads; h++) {
      leads[h] = new boolean[stretch[h].nodes][];
      for (int node = 0; node < stretch[h].nodes; node++) {
        leads[h][node] = new boolean[headsOf.length];
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
          for (int m = 0; m < headsOf.length; m++) {
            reached[m] |= beyond[m];
          }
        }
      }
    }
  }
}
