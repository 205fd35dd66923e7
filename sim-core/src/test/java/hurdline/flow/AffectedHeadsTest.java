package hurdline.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Whom a change concerns, and that it is told to all of them and to nobody else. */
class AffectedHeadsTest {
  private static final Offset<Double> EXACT = within(1e-12);

  /**
   * A press that two stretches share: what one gives up the other gets, and its share in use is of
   * both together.
   */
  @Test
  void stretchesThatShareAMachineFeelEachOther() {
    SimulatedFlow flow =
        new SimulatedFlow(
            """
            feeder: {kind: bale-feeder}
            saw: {kind: separating-saw}
            pile: {kind: bin, holds: 50 t}
            belt: {kind: conveyor}
            press: {kind: press}
            """,
            """
            feeder: {rate: 8 t/h, to: saw}
            saw: {outlets: [{to: press, takes: {fiber: 100 %}}, {to: pile, takes: {hurd: 100 %}}, {to: chips}]}
            pile: {to: belt}
            belt: {rate: 1.6 t/h, to: press}
            press: {rate: 3.6 t/h, to: tow}
            """);
    int draw = flow.drawOf("pile");
    flow.stands("belt");
    flow.later(1);
    used(flow, 3.2);
    flow.goesOn("belt");
    assertThat(flow.tPerH(flow.feed())).isCloseTo(6, EXACT);
    assertThat(flow.tPerH(draw)).isCloseTo(1.2, EXACT);
    used(flow, 3.6);
    flow.stands("saw");
    assertThat(flow.tPerH(flow.feed())).isZero();
    assertThat(flow.tPerH(draw)).isCloseTo(1.6, EXACT);
    assertThat(flow.involved).contains(flow.feed(), draw);
    assertThat(flow.moved).contains(flow.feed(), draw);
    used(flow, 1.6);
    flow.stands("belt");
    used(flow, 0);
    flow.goesOn("saw");
    assertThat(flow.tPerH(flow.feed())).isCloseTo(8, EXACT);
    assertThat(flow.involved).as("what stands anyway is not asked").containsExactly(flow.feed());
  }

  private static void used(SimulatedFlow flow, double tPerH) {
    assertThat(3.6 * flow.network.inflowKgPerS[flow.machine("press")]).isCloseTo(tPerH, EXACT);
    assertThat(flow.network.usedShare[flow.machine("press")]).isCloseTo(tPerH / 3.6, EXACT);
  }

  @Test
  void aBinBetweenFullAndEmptyLetsNeitherSideFeelTheOther() {
    SimulatedFlow flow = inARow();
    int feed = flow.feed();
    int first = flow.drawOf("box");
    int last = flow.drawOf("pile");
    flow.stands("press");
    assertThat(flow.involved).containsExactly(last);
    assertThat(flow.moved).containsExactly(last);
    flow.stands("belt");
    assertThat(flow.involved).containsExactly(first);
    flow.next();
    assertThat(flow.network.isFull(flow.bin("box"))).isTrue();
    assertThat(flow.involved)
        .as("a full bin concerns both its sides")
        .containsExactly(sorted(feed, first));
    assertThat(flow.moved).containsExactly(feed);
    flow.goesOn("belt");
    assertThat(flow.involved).containsExactly(sorted(feed, first));
    assertThat(flow.tPerH(feed)).isCloseTo(3, EXACT);
  }

  @Test
  void whereNothingHasChangedNothingMoves() {
    SimulatedFlow flow = inARow();
    flow.look();
    assertThat(flow.involved).isEmpty();
    assertThat(flow.moved).isEmpty();
    flow.network.asked.all();
    flow.look();
    assertThat(flow.involved).hasSize(3);
    assertThat(flow.moved).isEmpty();
    flow.network.allMoved();
    assertThat(SimulatedFlow.marked(flow.network.moved)).hasSize(3);
    assertThat(SimulatedFlow.marked(flow.network.binMoved)).hasSize(2);
  }

  /** As on the first day, whatever the last one left. */
  @Test
  void aNewSeasonKnowsNothingOfTheLast() {
    SimulatedFlow flow = inARow();
    flow.stands("belt");
    flow.network.asked.lacks(flow.feed(), 0);
    Arrays.fill(flow.network.asked.runsEmpty, true);
    flow.later(0.1);
    flow.network.reset();
    for (int m = 0; m < flow.layout.machines; m++) {
      assertThat(flow.network.asked.standing(m)).isEqualTo(-1);
      assertThat(flow.network.inflowKgPerS[m]).isZero();
      assertThat(flow.network.usedShare[m]).isZero();
    }
    assertThat(flow.network.asked.without(flow.feed())).isEqualTo(flow.layout.causes.noBales);
    assertThat(flow.network.asked.on).containsOnly(false);
    assertThat(flow.network.asked.runsEmpty).containsOnly(false);
    assertThat(SimulatedFlow.marked(flow.network.asked.heads)).hasSize(3);
    assertThat(SimulatedFlow.marked(flow.network.binMoved)).hasSize(2);
    for (int b = 0; b < flow.layout.bins; b++) {
      assertThat(flow.network.isEmpty(b)).isTrue();
      assertThat(flow.network.massKg(b)).isZero();
    }
    for (int h = 0; h < flow.layout.heads; h++) {
      assertThat(flow.network.rateKgPerS(h)).isZero();
      assertThat(flow.network.drawnKg[h]).isZero();
      assertThat(flow.network.restKg[h]).isZero();
    }
  }

  /** Each is slower than the one before, so both bins fill. */
  private static SimulatedFlow inARow() {
    SimulatedFlow flow =
        new SimulatedFlow(
            """
            feeder: {kind: bale-feeder}
            box: {kind: bin, holds: 5 t}
            belt: {kind: conveyor}
            pile: {kind: bin, holds: 50 t}
            press: {kind: press}
            """,
            """
            feeder: {rate: 4 t/h, to: box}
            box: {to: belt}
            belt: {rate: 3 t/h, to: pile}
            pile: {to: press}
            press: {rate: 2 t/h, to: tow}
            """);
    flow.later(0.5);
    flow.look();
    return flow;
  }

  private static int[] sorted(int... heads) {
    Arrays.sort(heads);
    return heads;
  }
}
