package hurdline.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.compiled.CompiledLines;
import hurdline.plant.Change;
import hurdline.plant.yaml.PlantFile;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** One bin of 10 m3, fiber of 50 and hurd of 100 kg/m3, filled and emptied lot by lot. */
class BinsTest {
  private static final int HEAP = 0;
  private static final int FIBER = 0;
  private static final int HURD = 1;

  private final CompiledLines layout = layout("volume_lots", "hurds");
  private final Bins bins = new Bins(layout);

  BinsTest() {
    bins.reset();
  }

  /** With stalks of a diameter, so that a lot has an attribute. */
  private static CompiledLines layout(String plant, String crop) {
    return CompiledLines.of(
        PlantFile.read(Path.of("../line-configs/exact", plant + ".yaml"))
            .variants()
            .with(new Change.Value("crops." + crop + ".diameter", "11 mm")));
  }

  /**
   * Lets a blend arrive of which a share is water, and says whether the front lot is another now.
   */
  private boolean arrives(double fiber, double hurd, double moisture) {
    double[] blend = bins.fresh();
    blend[FIBER] = fiber * (1 - moisture);
    blend[HURD] = hurd * (1 - moisture);
    blend[2 + FIBER] = fiber * moisture;
    blend[2 + HURD] = hurd * moisture;
    blend[4] = 0.001 * (1 + fiber);
    return bins.arrives(HEAP);
  }

  private void store(double fiber, double hurd, double moisture, double kg) {
    arrives(fiber, hurd, moisture);
    if (bins.fill[HEAP] == Bins.Fill.EMPTY) {
      bins.leaveEmpty(HEAP);
    }
    bins.add(HEAP, kg);
  }

  @Test
  void aKilogramTakesTheRoomOfWhatItIsMadeOfWaterAndAll() {
    store(0.5, 0.5, 0.2, 100); // 50/50 + 50/100
    assertThat(bins.level[HEAP]).isCloseTo(1.5, within(1e-12));
    assertThat(bins.massKg[HEAP]).isEqualTo(100);
    assertThat(bins.dryKg(HEAP, FIBER)).isCloseTo(40, within(1e-12));
    assertThat(bins.waterKg(HEAP)).isCloseTo(20, within(1e-12));
    bins.take(HEAP, 40);
    assertThat(bins.level[HEAP]).isCloseTo(0.9, within(1e-12));
    assertThat(bins.massKg[HEAP]).isCloseTo(60, within(1e-12));
    assertThat(bins.frontKg(HEAP)).isEqualTo(60);
  }

  @Test
  void lotsLeaveInTheOrderInWhichTheyCame() {
    HeadLoads draw = new HeadLoads(layout, layout.stretch[layout.draws[HEAP][0]]);
    for (int lot = 1; lot <= 40; lot++) { // more than were made room for, in a ring that has turned
      store(lot / 100.0, 1 - lot / 100.0, 0.1, lot);
      if (lot <= 5) {
        bins.dropFront(HEAP);
      }
    }
    assertThat(bins.dryKg(HEAP, FIBER)).isCloseTo(sumOfSquares(6, 40) / 100.0 * 0.9, within(1e-9));
    assertThat(bins.waterKg(HEAP)).isCloseTo(0.1 * (40 * 41 - 5 * 6) / 2, within(1e-9));
    for (int lot = 6; lot <= 40; lot++) {
      assertThat(bins.oneLot(HEAP)).isEqualTo(lot == 40);
      assertThat(bins.frontKg(HEAP)).isEqualTo(lot);
      assertThat(bins.frontUnit(HEAP)).isCloseTo((1 + lot / 100.0) / 100, within(1e-12));
      bins.handOn(HEAP, draw);
      assertThat(draw.lotDry)
          .containsExactly(new double[] {0.9 * lot / 100, 0.9 * (1 - lot / 100.0)}, within(1e-12));
      assertThat(draw.lotWater)
          .containsExactly(new double[] {0.1 * lot / 100, 0.1 * (1 - lot / 100.0)}, within(1e-12));
      assertThat(draw.lot.attribute[0]).isCloseTo(0.001 * (1 + lot / 100.0), within(1e-15));
      bins.dropFront(HEAP);
    }
    assertThat(bins.fill[HEAP]).isEqualTo(Bins.Fill.EMPTY);
    assertThat(bins.level[HEAP]).isZero();
    assertThat(bins.massKg[HEAP]).isZero();
  }

  private static double sumOfSquares(int from, int to) {
    double sum = 0;
    for (int n = from; n <= to; n++) {
      sum += n * n;
    }
    return sum;
  }

  @Test
  void theSameBlendAgainIsTheSameLot() {
    store(0.5, 0.5, 0.1, 10);
    assertThat(arrives(0.5, 0.5, 0.1)).isFalse();
    bins.add(HEAP, 5);
    assertThat(bins.oneLot(HEAP)).isTrue();
    assertThat(bins.frontKg(HEAP)).isEqualTo(15);
    assertThat(arrives(0.5, 0.5, 0.11)).as("a new lot behind the first").isFalse();
    assertThat(bins.oneLot(HEAP)).isFalse();
    assertThat(bins.frontKg(HEAP)).isEqualTo(15);
  }

  @Test
  void aCrumbTakesTheNameOfWhatFollows() {
    store(1, 0, 0, 1e-7);
    assertThat(arrives(0, 1, 0)).as("what the bin hands on is another now").isTrue();
    bins.add(HEAP, 1);
    assertThat(bins.oneLot(HEAP)).isTrue();
    assertThat(bins.frontUnit(HEAP)).isCloseTo(0.01, within(1e-15));
    arrives(1, 0, 0);
    assertThat(arrives(0.5, 0.5, 0)).as("a crumb behind a lot leaves the first as it is").isFalse();
    assertThat(bins.frontUnit(HEAP)).isCloseTo(0.01, within(1e-15));
  }

  /** A return to a bin makes ten thousands of them in a year. */
  @Test
  void ofCrumbsBehindALotNothingIsLost() {
    store(1, 0, 0.1, 3);
    for (int crumb = 0; crumb < 1000; crumb++) {
      store(0, 1, 0.2, 5e-7);
      assertThat(arrives(0.5, 0.5, 0)).as("the front lot has taken it in").isTrue();
    }
    bins.add(HEAP, 1);
    assertThat(bins.dryKg(HEAP, FIBER)).isCloseTo(2.7 + 0.5, within(1e-12));
    assertThat(bins.dryKg(HEAP, HURD)).isCloseTo(5e-4 * 0.8 + 0.5, within(1e-12));
    assertThat(bins.waterKg(HEAP)).isCloseTo(0.3 + 5e-4 * 0.2, within(1e-12));
    assertThat(bins.massKg[HEAP]).isCloseTo(4 + 5e-4, within(1e-12));
    double level = bins.level[HEAP];
    bins.sumLots();
    assertThat(bins.level[HEAP]).isCloseTo(level, within(1e-12));
  }

  @Test
  void throughAnEmptyBinPassesWhatArrives() {
    assertThat(arrives(1, 0, 0)).as("nothing is stored, so no lot is another").isFalse();
    assertThat(bins.frontUnit(HEAP)).isCloseTo(0.02, within(1e-15));
    HeadLoads draw = new HeadLoads(layout, layout.stretch[layout.draws[HEAP][0]]);
    bins.handOn(HEAP, draw);
    assertThat(draw.lotDry).containsExactly(1, 0);
    assertThat(draw.lot.attribute[0]).isEqualTo(0.002);
  }

  @Test
  void aRunningSumThatHasDriftedIsSetByTheLots() {
    store(1, 0, 0, 10);
    store(0, 1, 0, 10);
    bins.level[HEAP] += 0.01;
    bins.massKg[HEAP] += 1;
    bins.fill[HEAP] = Bins.Fill.FULL;
    bins.sumLots();
    assertThat(bins.level[HEAP]).as("a full bin is full").isCloseTo(0.31, within(1e-12));
    bins.fill[HEAP] = Bins.Fill.BETWEEN;
    bins.sumLots();
    assertThat(bins.level[HEAP]).isCloseTo(0.3, within(1e-12));
    assertThat(bins.massKg[HEAP]).isCloseTo(20, within(1e-12));
  }

  @Test
  void anEmptiedBinIsBarredAgainWhereItsDrawWaitsForALevel() {
    Bins waits = new Bins(layout("return_to_bin", "stalk"));
    waits.reset();
    bins.reset();
    assertThat(waits.barred[0]).isTrue();
    assertThat(bins.barred[HEAP]).isFalse();
    waits.fresh()[FIBER] = 1;
    waits.arrives(0);
    waits.leaveEmpty(0);
    waits.add(0, 3);
    assertThat(waits.level[0]).as("a bin by mass").isEqualTo(3);
    assertThat(waits.blendUnit[0]).isEqualTo(1);
    waits.barred[0] = false;
    waits.dropFront(0);
    assertThat(waits.barred[0]).isTrue();
    store(1, 0, 0, 1);
    bins.dropFront(HEAP);
    assertThat(bins.barred[HEAP]).isFalse();
  }

  @Test
  void anewNothingIsLeftOfBefore() {
    store(1, 0, 0, 10);
    bins.reset();
    assertThat(bins.fill[HEAP]).isEqualTo(Bins.Fill.EMPTY);
    assertThat(bins.level[HEAP]).isZero();
    assertThat(bins.massKg[HEAP]).isZero();
    assertThat(bins.dryKg(HEAP, FIBER)).isZero();
    assertThat(bins.waterKg(HEAP)).isZero();
  }
}
