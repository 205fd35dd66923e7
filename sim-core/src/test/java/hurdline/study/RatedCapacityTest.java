package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.Capacity;
import hurdline.answer.CheckAnswer;
import hurdline.measure.Measure;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Rated and expected capacity against sums done by hand. */
class RatedCapacityTest {
  private static Capacity.Line line(CheckAnswer answer, String name) {
    return answer.capacity().lines().stream()
        .filter(l -> l.line().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Capacity.Machine machine(Capacity.Line line, String name) {
    return line.machines().stream().filter(m -> m.machine().equals(name)).findFirst().orElseThrow();
  }

  /**
   * Of a tonne with 58 % hurd, 20 % long, 8 % short and 14 % fines incline_1 sends 0.45·0.14 +
   * 0.015·0.58 = 0.0717 to the cyclone. The saw gets hurd 0.5713, fines 0.077, long 0.2, short
   * 0.08; 8 % of long becomes short: long 0.184, short 0.096; to the bin go 0.88·0.5713 +
   * 0.35·0.077 + 0.06·0.096 + 0.01·0.184 = 0.537294. incline_2 gets hurd 0.068556 and fines
   * 0.05005; the factor on hurd at 12.5 % is 1 − 0.15·0.5/6 = 0.9875: 0.55·0.9875·0.068556 +
   * 0.3·0.05005 = 0.0522495 to the bin. The lint cleaner gets hurd 0.0313215, fines 0.035035 and
   * sends 0.85·0.0313215 + 0.55·0.035035 = 0.0458925. The mill's load is the sum, 0.635436.
   *
   * <p>Its motor passes 25 hp · 0.8 = 14.914 kW on e = 12·(6/d)^0.75 kWh/t: coarse (20 mm) 4.8641,
   * medium 12, fine (2 mm) 27.3541 kWh/t; with the mix 0.35, 0.5, 0.15 that is 11.8056 kWh/t and
   * 1.26330 t/h.
   */
  @Test
  void theMillHoldsTheExampleOnPaperAsByHand() {
    var stalk =
        line(RatedCapacity.of(Studied.source(Studied.EXAMPLE), PlantChanges.base()), "stalk_line");
    assertThat(stalk.limits().rated().machines()).containsExactly("mill");
    assertThat(machine(stalk, "dust_cyclone").loadTPerT()).isCloseTo(0.0717, within(1e-6));
    assertThat(machine(stalk, "mill").loadTPerT()).isCloseTo(0.635436, within(2e-6));
    assertThat(machine(stalk, "mill").limitTPerH()).isCloseTo(1.26330, within(1e-4));
    assertThat(stalk.limits().rated().fedTPerH()).isCloseTo(1.26330 / 0.635436, within(1e-4));
    assertThat(stalk.feedRateTPerH()).isCloseTo(3.6, within(1e-12));
    assertThat(machine(stalk, "mill").ratedTPerH()).isCloseTo(1.98808, within(1e-4));
    assertThat(machine(stalk, "incline_1").headroom()).isCloseTo(6 / 3.6 - 1, within(1e-9));
    assertThat(machine(stalk, "stalk_fans").ratedTPerH()).isNaN();
  }

  /**
   * 23 weeks of 5 days less one closed at 7.5 h, and 15 weeks less two closed at 15 h: 855 + 1,095.
   */
  @Test
  void theScheduledHoursAreThoseOfTheCalendar() {
    var stalk =
        line(RatedCapacity.of(Studied.source(Studied.EXAMPLE), PlantChanges.base()), "stalk_line");
    assertThat(stalk.scheduledHours()).isEqualTo(1950);
  }

  @Test
  void withTheBiggerMillTheFeederHoldsOnPaper() {
    PlantChanges chosen = Studied.option("bigger_mill");
    var stalk = line(RatedCapacity.of(Studied.source(Studied.EXAMPLE), chosen), "stalk_line");
    assertThat(stalk.limits().rated().machines()).containsExactly("feeder");
    assertThat(stalk.limits().rated().fedTPerH()).isCloseTo(3.6, within(1e-12));
    assertThat(machine(stalk, "mill").limitTPerH()).isCloseTo(3 * 1.26330, within(3e-4));
  }

  private static Capacity.Line exact(String name) {
    Path file = Path.of("../line-configs/exact/" + name + ".yaml");
    return line(RatedCapacity.of(Studied.source(file), PlantChanges.base()), "stalk_line");
  }

  /** A quarter goes back into the bin that the sieve draws from: 1/(1 − 0.25) of what is fed. */
  @Test
  void aReturnIntoItsOwnBinIsDrawnAgain() {
    var stalk = exact("return_to_bin");
    assertThat(machine(stalk, "sieve").loadTPerT()).isCloseTo(4.0 / 3, within(1e-9));
    assertThat(machine(stalk, "sieve").ratedTPerH()).isCloseTo(2.25, within(1e-9));
    assertThat(stalk.limits().rated().machines()).containsExactly("feeder");
  }

  /** return_loop.md: the saw takes in 1.1739726 a tonne fed, the first machine 1.2239726. */
  @Test
  void aLoopLoadsItsMachinesWithWhatComesBack() {
    var stalk = exact("return_loop");
    assertThat(machine(stalk, "saw").loadTPerT()).isCloseTo(1.1739726, within(1e-7));
    assertThat(machine(stalk, "first").loadTPerT()).isCloseTo(1.2239726, within(1e-7));
    assertThat(stalk.limits().rated().fedTPerH()).isCloseTo(2.0443407, within(1e-7));
    assertThat(stalk.limits().rated().machines()).containsExactly("saw");
  }

  /**
   * mill_orders.md: 3 t of fine at 1 t/h and 4 t of coarse at 4 t/h take 4 h, then the mill stands
   * still.
   */
  @Test
  void aMillWithOrdersRunsOnTheirScreens() {
    var stalk = exact("mill_orders");
    assertThat(machine(stalk, "mill").limitTPerH()).isCloseTo(7 / 4.0, within(1e-9));
    assertThat(stalk.limits().rated().machines()).containsExactly("mill");
  }

  /**
   * then_mix.md: 7 t of coarse at 4 t/h in 1.75 h, and for the other 13.25 h the mix at 1/(0.6/4 +
   * 0.4/2) = 20/7 t/h.
   */
  @Test
  void whatIsLeftOfTheHoursGoesByWhatFollowsTheOrders() {
    var stalk = exact("then_mix");
    assertThat(machine(stalk, "mill").limitTPerH())
        .isCloseTo((7 + 13.25 * 20 / 7) / 15, within(1e-9));
  }

  /** The press works 16 h in the 8 h of its line, so 1 t/h are 2 t/h fed. */
  @Test
  void aMachineWithHoursOfItsOwnHasThemToKeepUp() {
    var stalk = exact("paid_once");
    assertThat(machine(stalk, "press").limitTPerH()).isCloseTo(1, within(1e-9));
    assertThat(machine(stalk, "press").ratedTPerH()).isCloseTo(2, within(1e-9));
  }

  /**
   * The starter plant, by hand for one tonne: 0.58·0.94 + 0.14·0.8 + 0.08·0.1 + 0.2·0.02 = 0.6692 t
   * reach the mill, whose 15 hp·0.8 on 11 kWh/t pass 0.813491 t/h: 1.21562 t/h fed. A bag of
   * 113.398 kg takes 0.139397 h at that pace and, with one spout and no bin between, 13/3 min more:
   * 0.535859 t/h milled, 0.800746 t/h fed. The simulation gives 0.8204 t/h, since the bin ends the
   * season 6 t fuller.
   */
  @Test
  void theStarterPlantIsExpectedToBeFedWhatItIsFed() {
    Path small = Path.of("../line-configs/small.yaml");
    var stalk = line(RatedCapacity.of(Studied.source(small), PlantChanges.base()), "stalk_line");
    assertThat(stalk.limits().rated().fedTPerH()).isCloseTo(1.21562, within(1e-5));
    assertThat(stalk.limits().expected().fedTPerH()).isCloseTo(0.800746, within(1e-6));
    assertThat(stalk.limits().expected().machines()).containsExactly("mill", "bagger");
    var run = Studied.run(small, Studied.effort(3, 1));
    double binIsT = 6 / 0.6692;
    double hours = run.mean(Measure.LINE_HOURS_SCHEDULED.of("stalk_line"));
    assertThat(run.mean(Measure.LINE_THROUGHPUT.of("stalk_line")) - binIsT / hours)
        .isCloseTo(0.800746, within(0.005));
  }

  /** Without the mill, bags of 113.398 kg at 4 t/h and 13/3 min: 1.127534 t/h, 1.684898 t/h fed. */
  @Test
  void withoutTheMillTheBagsOfTheStarterPlantLimitIt() {
    Path small = Path.of("../line-configs/small.yaml");
    var stalk = line(RatedCapacity.of(Studied.source(small), PlantChanges.base()), "stalk_line");
    var next = stalk.limits().next().get(0);
    assertThat(next.freed()).containsExactly("mill");
    assertThat(next.expected().fedTPerH()).isCloseTo(1.684898, within(1e-6));
    assertThat(next.expected().machines()).containsExactly("bagger");
    assertThat(next.rated().fedTPerH()).isCloseTo(2.2, within(1e-9));
    assertThat(next.rated().machines()).containsExactly("feeder");
  }
}
