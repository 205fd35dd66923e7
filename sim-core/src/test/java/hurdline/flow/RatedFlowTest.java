package hurdline.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.compiled.CompiledLines;
import hurdline.plant.yaml.PlantFile;
import java.nio.file.Path;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Plants with known answers on paper: what a kilogram fed brings to each machine, and how long that
 * takes it.
 */
class RatedFlowTest {
  private static final Offset<Double> EXACT = within(1e-9);

  private record Paper(CompiledLines layout, RatedFlow flow) {
    static Paper fed(String plant, String line) {
      CompiledLines layout =
          CompiledLines.of(
              PlantFile.read(Path.of("../line-configs/exact", plant + ".yaml")).plant());
      Paper paper = new Paper(layout, new RatedFlow(layout));
      paper.feed(line);
      return paper;
    }

    void feed(String line) {
      flow.feed(layout.naming.lines.index(line), new int[layout.machines]);
    }

    int machine(String name) {
      return layout.naming.machines.index(name);
    }

    void gives(String machine, double load, double tonnesAnHour) {
      assertThat(flow.load(machine(machine))).as(machine).isCloseTo(load, EXACT);
      assertThat(flow.secondsPerKgFed(machine(machine)))
          .as(machine)
          .isCloseTo(load * 3.6 / tonnesAnHour, EXACT);
    }
  }

  /** A quarter of what the sieve draws comes back into its bin and is drawn again: 1/(1 − 1/4). */
  @Test
  void whatReturnsIntoItsOwnBinIsDrawnAgain() {
    Paper paper = Paper.fed("return_to_bin", "stalk_line");
    paper.gives("feeder", 1, 2);
    paper.gives("sieve", 4 / 3.0, 3);
  }

  /** Six tenths are hurd; a motor of 16 kW gives 0.8 t/h at 20 kWh/t. The saw has its own 2 t/h. */
  @Test
  void aMillTakesItsPartAsFastAsItsMotorAllows() {
    Paper paper = Paper.fed("motor", "stalk_line");
    paper.gives("coarse_mill", 0.6, 0.8);
    paper.gives("saw", 1, 2);
    paper.gives("feeder", 1, 1);
  }

  /**
   * Half passes the drier and loses 0.05: 0.95 arrive at 15/95 moisture, at which the press takes
   * 27/38 t/h.
   */
  @Test
  void aBinHandsOnTheBlendOfItsProducers() {
    Paper paper = Paper.fed("blend_moisture", "stalk_line");
    paper.gives("press", 0.95, 27 / 38.0);
    assertThat(paper.flow.load(paper.machine("drier"))).isCloseTo(0.5, EXACT);
  }

  /** Stalks of 15 mm through a bin: the press takes three quarters of its 1 t/h. */
  @Test
  void aBinHandsOnTheDiameter() {
    Paper.fed("bin_diameter", "stalk_line").gives("press", 1, 0.75);
  }

  /**
   * Two lines share bin and press, and each feeds it alone; fed one after the other, nothing stays
   * of the first.
   */
  @Test
  void eachLineIsFedByItself() {
    Paper paper = Paper.fed("volume_lots", "hurd_line");
    paper.gives("press", 1, 1);
    paper.feed("tow_line");
    paper.gives("press", 1, 1);
    paper.gives("feeder", 1, 2);
  }

  /**
   * Half goes past the bin and half through bin and chopper: the press sees both, in the time of
   * its 2 t/h.
   */
  @Test
  void aMachineBeforeAndAfterABinHasBothItsShares() {
    Paper paper = Paper.fed("shared_press", "stalk_line");
    paper.gives("chopper", 0.5, 1);
    paper.gives("press", 1, 2);
  }

  /** One half comes straight from the saw, the other by way of another bin and a chopper. */
  @Test
  void aBinOfTwoProducersGetsWhatBothBring() {
    Paper paper = Paper.fed("rival_producers", "stalk_line");
    paper.gives("chopper", 0.5, 2);
    paper.gives("press", 1, 1.2);
  }

  /** The saw has no rate of its own in this plant, so it needs no time. */
  @Test
  void whatHasNoLimitNeedsNoTime() {
    Paper paper = Paper.fed("two_campaigns", "stalk_line");
    int saw = paper.machine("saw");
    assertThat(paper.flow.load(saw)).isCloseTo(1, EXACT);
    assertThat(paper.flow.secondsPerKgFed(saw)).isZero();
  }

  /**
   * Nine tenths come to the box on two ways, at 20 % moisture and 15 mm: the press takes 0.75 ·
   * 0.75 of its 1 t/h.
   */
  @Test
  void aBinOfTwoProducersHandsOnTheirMoistureAndDiameter() {
    SimulatedFlow plant =
        new SimulatedFlow(
            ", moisture: 20 %, diameter: 15 mm",
            "",
            """
            feeder: {kind: bale-feeder}
            saw: {kind: separating-saw}
            pile: {kind: bin, holds: 5 t}
            belt: {kind: conveyor}
            box: {kind: bin, holds: 5 t}
            press: {kind: press}
            """,
            """
            feeder: {rate: 4 t/h, to: saw}
            saw: {outlets: [{to: box, takes: {fiber: 100 %}}, {to: pile, takes: {hurd: 100 %}}, {to: chips}]}
            pile: {to: belt}
            belt: {rate: 3 t/h, to: box}
            box: {to: press}
            press: {rate: 1 t/h, rate_by_diameter: [[10 mm, 1.0], [20 mm, 0.5]], rate_by_moisture: [[10 %, 1.0], [30 %, 0.5]], to: tow}
            """);
    Paper paper = new Paper(plant.layout, new RatedFlow(plant.layout));
    paper.feed("stalk_line");
    paper.gives("belt", 0.5, 3);
    paper.gives("press", 0.9, 0.75 * 0.75);
  }
}
