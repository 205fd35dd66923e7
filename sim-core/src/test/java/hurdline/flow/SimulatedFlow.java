package hurdline.flow;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.compiled.CompiledLines;
import hurdline.flow.rates.IndexSet;
import hurdline.simulation.TestPlant;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The flow of one line from change to change, with bales without end; work's part is simulated by
 * the test.
 */
final class SimulatedFlow {
  private static final double NOW_S = 1e-6;

  final CompiledLines layout;
  final Network network;
  final BottleneckTrail trail;

  /** Heads that the last change concerned, and those whose rate or map it changed. */
  int[] involved;

  int[] moved;

  SimulatedFlow(String machines, String steps) {
    this("", "", machines, steps);
  }

  /**
   * @param ofCrop further keys of the crop, each with a comma before it
   * @param ofLine further keys of the line, one in a line
   */
  SimulatedFlow(String ofCrop, String ofLine, String machines, String steps) {
    TestPlant plant =
        TestPlant.oneLine()
            .days("2027-03-01", "2027-03-02")
            .says("components", "[fiber, hurd, fines]")
            .says(
                "crops",
                "{stalk: {bale: {mass: 100 t}, composition: {fiber: 40 %%, hurd: 50 %%, fines: 10 %%}%s}}",
                ofCrop)
            .says("machines", machines)
            .says("products", "{tow: {}, chips: {}}")
            .says(
                "lines",
                "stalk_line:\n  crop: stalk\n  feed: feeder\n%s  steps:\n%s",
                ofLine.indent(2),
                steps.indent(4));
    layout = CompiledLines.of(plant.plant());
    network = new Network(layout, head -> {});
    trail = new BottleneckTrail(layout, network);
    network.reset();
    Arrays.fill(network.asked.on, true);
    int feed = layout.feedHead[0];
    layout.typicalLot(0, network.lot(feed));
    network.newLot(feed, 1e9);
    network.asked.lacks(feed, -1);
    look();
  }

  void look() {
    network.solve();
    trail.follow();
    involved = marked(network.involved());
    moved = marked(network.moved);
    network.seen();
  }

  /** On to the next change of a bin, or changes if they fall together. */
  void next() {
    double dtS = Double.POSITIVE_INFINITY;
    for (int b = 0; b < layout.bins; b++) {
      dtS =
          Math.min(
              dtS, Math.min(network.untilLevelS(b), network.untilLotEndsS(layout.draws[b][0])));
    }
    assertThat(dtS).as("seconds to the next change").isBetween(NOW_S, 1e6);
    network.advance(dtS, new boolean[layout.heads]);
    for (int b = 0; b < layout.bins; b++) {
      if (network.untilLotEndsS(layout.draws[b][0]) <= NOW_S) {
        network.lotUsedUp(layout.draws[b][0]);
      }
      if (network.untilLevelS(b) <= NOW_S) {
        network.levelReached(b);
      }
    }
    look();
  }

  void later(double hours) {
    network.advance(3600 * hours, new boolean[layout.heads]);
  }

  void stands(String machine) {
    int m = machine(machine);
    network.asked.stands(m, m);
    look();
  }

  void goesOn(String machine) {
    network.asked.stands(machine(machine), -1);
    look();
  }

  int bin(String name) {
    return layout.naming.bins.index(name);
  }

  int feed() {
    return layout.feedHead[0];
  }

  int drawOf(String bin) {
    return layout.draws[bin(bin)][0];
  }

  String holder(int head) {
    assertThat(trail.place[head]).isEqualTo(trail.cause[head]);
    return layout.causes.name(trail.cause[head]);
  }

  double tPerH(int head) {
    return 3.6 * network.rateKgPerS(head);
  }

  int machine(String name) {
    return layout.naming.machines.index(name);
  }

  /** As-is mass that the feed brings to a machine per kg drawn. */
  double load(String machine) {
    return network.load(feed(), layout.nodeOf[feed()][machine(machine)]);
  }

  static int[] marked(IndexSet marks) {
    return IntStream.range(0, marks.count()).map(marks::at).sorted().toArray();
  }
}
