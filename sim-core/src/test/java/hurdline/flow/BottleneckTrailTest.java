package hurdline.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who holds a head where several could: plants in which limits tie to the last bit. */
class BottleneckTrailTest {
  /**
   * Both presses take just what 4 t/h fed brings them, and their bins are full at once: the one
   * with fewer machines before it holds.
   */
  @ParameterizedTest
  @CsvSource({"a, z", "z, a"})
  void ofTwoFullBinsTheNearerHolds(String near, String far) {
    SimulatedFlow flow =
        new SimulatedFlow(
            """
            feeder: {kind: bale-feeder}
            saw: {kind: separating-saw}
            belt: {kind: conveyor}
            %1$s_bin: {kind: bin, holds: 0.8 t}
            %2$s_bin: {kind: bin, holds: 1 t}
            %1$s_press: {kind: press}
            %2$s_press: {kind: press}
            """
                .formatted(near, far),
            """
            feeder: {rate: 6 t/h, to: saw}
            saw: {outlets: [{to: %1$s_bin, takes: {fiber: 100 %%}}, {to: belt, takes: {hurd: 100 %%}}, {to: chips}]}
            belt: {to: %2$s_bin}
            %1$s_bin: {to: %1$s_press}
            %2$s_bin: {to: %2$s_press}
            %1$s_press: {rate: 1.6 t/h, to: tow}
            %2$s_press: {rate: 2 t/h, to: tow}
            """
                .formatted(near, far));
    assertThat(flow.holder(flow.feed())).isEqualTo("feeder");
    flow.next();
    assertThat(flow.network.isFull(flow.bin(near + "_bin"))).isTrue();
    assertThat(flow.network.isFull(flow.bin(far + "_bin"))).isTrue();
    assertThat(flow.holder(flow.feed())).isEqualTo(near + "_press");
    flow.stands(far + "_press");
    assertThat(flow.holder(flow.feed())).isEqualTo(far + "_press");
  }

  /**
   * A box that runs empty while the pile behind fills: the draw between, at 4 t/h, could be held by
   * either.
   */
  @ParameterizedTest
  @CsvSource({"1, feeder", "0.5, press"})
  void anEmptyBinIsNearerToItsDrawThanAFullOneBehind(double pileT, String holder) {
    SimulatedFlow flow =
        new SimulatedFlow(
            """
            feeder: {kind: bale-feeder}
            box: {kind: bin, holds: 9 t}
            belt: {kind: conveyor}
            pile: {kind: bin, holds: %s t}
            press: {kind: press}
            """
                .formatted(pileT),
            """
            feeder: {rate: 4 t/h, to: box}
            box: {to: belt}
            belt: {rate: 8 t/h, to: pile}
            pile: {to: press}
            press: {rate: 4 t/h, to: tow}
            """);
    flow.stands("belt");
    assertThat(flow.holder(flow.drawOf("box"))).isEqualTo("belt");
    assertThat(flow.holder(flow.drawOf("pile"))).as("nothing comes").isEqualTo("belt");
    flow.later(0.25);
    flow.goesOn("belt");
    assertThat(flow.holder(flow.drawOf("box"))).isEqualTo("belt");
    flow.next();
    assertThat(flow.network.isFull(flow.bin("pile"))).isTrue();
    assertThat(flow.network.isEmpty(flow.bin("box"))).isEqualTo(pileT == 1);
    assertThat(flow.holder(flow.drawOf("box"))).isEqualTo(holder);
    assertThat(flow.holder(flow.feed())).isEqualTo("feeder");
  }

  /**
   * Two stretches pass through two machines of the same rate: the first on the way holds, whatever
   * it is called.
   */
  @ParameterizedTest
  @CsvSource({"a, z", "z, a"})
  void ofTwoSharedMachinesTheNearerHolds(String first, String second) {
    SimulatedFlow flow =
        new SimulatedFlow(
            """
            feeder: {kind: bale-feeder}
            saw: {kind: separating-saw}
            pile: {kind: bin, holds: 50 t}
            belt: {kind: conveyor}
            %1$s: {kind: conveyor}
            %2$s: {kind: press}
            """
                .formatted(first, second),
            """
            feeder: {rate: 8 t/h, to: saw}
            saw: {outlets: [{to: %1$s, takes: {fiber: 100 %%}}, {to: pile, takes: {hurd: 100 %%}}, {to: chips}]}
            pile: {to: belt}
            belt: {rate: 4 t/h, to: %1$s}
            %1$s: {rate: 3.6 t/h, to: %2$s}
            %2$s: {rate: 3.6 t/h, to: tow}
            """
                .formatted(first, second));
    assertThat(flow.holder(flow.feed())).isEqualTo(first);
    assertThat(flow.holder(flow.drawOf("pile"))).isEqualTo(first);
  }

  /** Machines of one rate in a row: the first that sets the pace is named. */
  @Test
  void ofTwoMachinesOfARateTheNearerHolds() {
    SimulatedFlow flow =
        new SimulatedFlow(
            """
            feeder: {kind: bale-feeder}
            z: {kind: conveyor}
            a: {kind: press}
            """,
            """
            feeder: {rate: 8 t/h, to: z}
            z: {rate: 4 t/h, to: a}
            a: {rate: 4 t/h, to: tow}
            """);
    assertThat(flow.holder(flow.feed())).isEqualTo("z");
    flow.stands("a");
    assertThat(flow.holder(flow.feed())).as("a stop is no tie").isEqualTo("a");
  }

  /**
   * The press starves for what brings it most, and if nothing moves for what could bring it most,
   * or is at work.
   */
  @ParameterizedTest
  @CsvSource({"1 t/h, feeder", "1.9 t/h, mill"})
  void aBinWaitsForTheProducerThatMovesMost(String millRate, String holder) {
    SimulatedFlow flow = twoProducers(millRate);
    assertThat(flow.holder(flow.drawOf("box"))).isEqualTo(holder);
    flow.stands("mill");
    assertThat(flow.holder(flow.drawOf("box"))).isEqualTo("feeder");
    flow.goesOn("mill");
    flow.later(1);
    flow.stands("feeder");
    assertThat(flow.holder(flow.drawOf("box"))).isEqualTo("mill");
  }

  @Test
  void whereNothingMovesTheProducerAtWorkIsNamed() {
    SimulatedFlow flow = twoProducers("1 t/h");
    flow.stands("mill");
    flow.stands("feeder");
    flow.network.asked.on[flow.feed()] = false;
    flow.network.asked.all();
    flow.look();
    assertThat(flow.holder(flow.drawOf("box"))).isEqualTo("mill");
    flow.network.asked.on[flow.feed()] = true;
    flow.network.asked.on[flow.drawOf("pile")] = false;
    flow.network.asked.all();
    flow.look();
    assertThat(flow.holder(flow.drawOf("box"))).isEqualTo("feeder");
    assertThat(flow.trail.cause[flow.drawOf("pile")]).isEqualTo(flow.layout.causes.noCrew);
    assertThat(flow.trail.place[flow.drawOf("pile")])
        .isEqualTo(flow.layout.naming.machines.index("mill"));
  }

  private static SimulatedFlow twoProducers(String millRate) {
    return new SimulatedFlow(
        """
        feeder: {kind: bale-feeder}
        saw: {kind: separating-saw}
        pile: {kind: bin, holds: 50 t}
        mill: {kind: conveyor}
        box: {kind: bin, holds: 50 t}
        press: {kind: press}
        """,
        """
        feeder: {rate: 4 t/h, to: saw}
        saw: {outlets: [{to: box, takes: {fiber: 100 %%}}, {to: pile, takes: {hurd: 100 %%}}, {to: chips}]}
        pile: {to: mill}
        mill: {rate: %s, to: box}
        box: {to: press}
        press: {rate: 9 t/h, to: tow}
        """
            .formatted(millRate));
  }

  /**
   * The feeder's own stop first, then that of a machine alongside, then what lies behind; with no
   * stop the slowest.
   */
  @Test
  void aMachineAlongsideComesAfterTheFeederAndBeforeTheRest() {
    SimulatedFlow flow =
        new SimulatedFlow(
            "",
            "auxiliaries: [fans]",
            """
            feeder: {kind: bale-feeder}
            saw: {kind: separating-saw}
            fans: {kind: fan}
            """,
            """
            feeder: {rate: 4 t/h, to: saw}
            saw: {rate: 3 t/h, to: tow}
            """);
    assertThat(flow.holder(flow.feed())).isEqualTo("saw");
    flow.stands("saw");
    assertThat(flow.holder(flow.feed())).isEqualTo("saw");
    flow.stands("fans");
    assertThat(flow.holder(flow.feed())).isEqualTo("fans");
    flow.goesOn("saw");
    assertThat(flow.holder(flow.feed())).isEqualTo("fans");
    flow.stands("feeder");
    assertThat(flow.holder(flow.feed())).isEqualTo("feeder");
    flow.goesOn("fans");
    flow.goesOn("feeder");
    assertThat(flow.tPerH(flow.feed())).isCloseTo(3, within(1e-12));
  }

  @Test
  void aMachineAlongsideIsNamedWhereOneWithoutALimitOfItsOwnIsFirst() {
    SimulatedFlow flow =
        new SimulatedFlow(
            "",
            "auxiliaries: [fans]",
            """
            feeder: {kind: bale-feeder}
            fans: {kind: fan}
            """,
            "feeder: {rate: 4 t/h, to: tow}");
    flow.stands("fans");
    assertThat(flow.holder(flow.feed())).isEqualTo("fans");
    flow.goesOn("fans");
    assertThat(flow.holder(flow.feed())).isEqualTo("feeder");
  }

  /**
   * What moves is told once: nothing if nothing has changed, and only those whose trail ends
   * elsewhere.
   */
  @Test
  void headsWhoseTrailEndsElsewhereAreMarked() {
    SimulatedFlow flow = twoProducers("1 t/h");
    flow.network.asked.all();
    flow.look();
    assertThat(SimulatedFlow.marked(flow.trail.moved)).isEmpty();
    flow.stands("press");
    assertThat(SimulatedFlow.marked(flow.trail.moved)).containsExactly(flow.drawOf("box"));
    flow.stands("saw");
    assertThat(SimulatedFlow.marked(flow.trail.moved)).containsExactly(flow.feed());
  }
}
