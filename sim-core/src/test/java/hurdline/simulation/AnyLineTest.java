package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.measure.Measure;
import hurdline.plant.Plant;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;

/**
 * Random valid lines for a month: whatever is in them, the books must agree.
 *
 * @see "ISO 22400-2: the times of a work unit are parts of its calendar time (from an open ontology
 *     of the standard)"
 */
class AnyLineTest {
  private static final double MONTH_H = 31 * 24;

  /** Days from Monday 1 to Tuesday 30 March: 22 day shifts of 8 h, 9 nights of 6 h. */
  private static final double SCHEDULED_H = 22 * 8 + 9 * 6;

  @Property(
      tries = 40,
      seed = "20270301",
      generation = GenerationMode.RANDOMIZED,
      shrinking = ShrinkingMode.OFF)
  void theBooksOfAnyLineAgree(@ForAll long seed) {
    booksAgree(seed);
  }

  static void booksAgree(long seed) {
    AnyLine line = new AnyLine(AnyLine.Kind.RANDOM, seed);
    Plant plant = line.plant();
    Map<String, Double> got = simulate(plant);
    statesAddUp(got);
    holdersAddUp(got);
    assertThat(got.get("balance.residual")).isBetween(0.0, 1e-9);
    assertThat(got.get("mass.stalk.fed")).isGreaterThan(0);
    assertThat(simulate(plant)).as("simulated again").isEqualTo(got);
    assertThat(simulate(line.shuffled(seed))).as("its keys in another order").isEqualTo(got);
  }

  private static void statesAddUp(Map<String, Double> got) {
    Map<String, Double> sums = new TreeMap<>();
    got.forEach(
        (measure, hours) -> {
          if (measure.startsWith("machine.") && measure.contains(".hours.")) {
            sums.merge(measure.split("\\.")[1], hours, Double::sum);
          }
        });
    assertThat(sums)
        .isNotEmpty()
        .allSatisfy((machine, sum) -> assertThat(sum).isCloseTo(MONTH_H, within(1e-6)));
  }

  private static void holdersAddUp(Map<String, Double> got) {
    double held =
        got.entrySet().stream()
            .filter(e -> e.getKey().startsWith("line.line.hours.limited_by."))
            .mapToDouble(Map.Entry::getValue)
            .sum();
    assertThat(held).isCloseTo(got.get("line.line.hours.scheduled"), within(1e-6));
    assertThat(held).isLessThanOrEqualTo(SCHEDULED_H + 1e-6);
  }

  /** The named limit a little higher raises the head; any other does not. */
  @Property(
      tries = 40,
      seed = "20270302",
      generation = GenerationMode.RANDOMIZED,
      shrinking = ShrinkingMode.OFF)
  void onlyTheNamedHolderRaisesThroughput(@ForAll long seed) {
    onlyTheHolderRaises(seed);
  }

  static void onlyTheHolderRaises(long seed) {
    AnyLine line = new AnyLine(AnyLine.Kind.PLAIN, seed);
    Map<String, Double> got = simulate(line.plant());
    String holder =
        line.limited().stream()
            .filter(m -> got.getOrDefault("line.line.hours.limited_by." + m, 0.0) > SCHEDULED_H / 2)
            .findFirst()
            .orElseThrow();
    double fed = got.get("mass.stalk.fed");
    for (String machine : line.limited()) {
      double raised = simulate(line.faster(machine)).get("mass.stalk.fed");
      if (machine.equals(holder)) {
        assertThat(raised).as(machine).isGreaterThan(fed * 1.0001);
      } else {
        assertThat(raised).as(machine + " beside " + holder).isCloseTo(fed, within(1e-9 * fed));
      }
    }
  }

  /**
   * On thirty days round the clock: every rate doubled, every time halved, the same is done in
   * fifteen.
   */
  @Property(
      tries = 30,
      seed = "20270303",
      generation = GenerationMode.RANDOMIZED,
      shrinking = ShrinkingMode.OFF)
  void twiceAsFastChangesNothingButTheClock(@ForAll long seed) {
    twiceAsFast(seed);
  }

  static void twiceAsFast(long seed) {
    Map<String, Double> slow = simulate(new AnyLine(AnyLine.Kind.RANDOM, seed).roundTheClock());
    Map<String, Double> fast = simulate(new AnyLine(AnyLine.Kind.RANDOM, seed, 2).roundTheClock());
    assertThat(fast.keySet()).isEqualTo(slow.keySet());
    int compared = 0;
    for (String measure : slow.keySet()) {
      // When the crop is through, machines are uncrewed until midnight and unused from then on.
      boolean toMidnight = measure.endsWith(".hours.uncrewed") || measure.endsWith(".hours.unused");
      double factor = factor(Measure.find(measure).orElseThrow().measure());
      if (factor > 0 && !toMidnight) {
        double expected = factor * slow.get(measure);
        assertThat(fast.get(measure))
            .as(measure)
            .isCloseTo(expected, within(1e-7 * (1 + Math.abs(expected))));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(40);
  }

  /**
   * What a measure is multiplied by, 0 where whole days or clock quarter-hours are counted, or only
   * rounding is left.
   */
  private static double factor(Measure measure) {
    boolean byTheClock =
        measure == Measure.ENERGY_PEAK
            || measure == Measure.SEASON_ENDED
            || measure == Measure.SEASON_NTH_ENDED;
    if (byTheClock || measure == Measure.BALANCE_RESIDUAL) {
      return 0;
    }
    return switch (measure.unit()) {
      case HOUR, MINUTE, DAY, KILOWATT_HOUR -> 0.5;
      case TONNE_PER_HOUR, PER_HOUR -> 2;
      default -> 1;
    };
  }

  @Property(
      tries = 40,
      seed = "20270304",
      generation = GenerationMode.RANDOMIZED,
      shrinking = ShrinkingMode.OFF)
  void otherNamesInTheSameOrderChangeNothingWithoutChance(@ForAll long seed) {
    AnyLine line = new AnyLine(AnyLine.Kind.STEADY, seed);
    Map<String, Double> called = new TreeMap<>();
    simulate(line.plant()).forEach((measure, value) -> called.put(AnyLine.renamed(measure), value));
    assertThat(called).containsKey("machine.feedera.mass_in");
    assertThat(simulate(line.renamed())).isEqualTo(called);
  }

  /** With chance the streams are keyed by name: the control. */
  @Test
  void otherNamesMeetOtherChance() {
    AnyLine line = new AnyLine(AnyLine.Kind.RANDOM, 1);
    Map<String, Double> called = new TreeMap<>();
    simulate(line.plant()).forEach((measure, value) -> called.put(AnyLine.renamed(measure), value));
    assertThat(simulate(line.renamed())).isNotEqualTo(called);
  }

  /**
   * Bins are in it; heads that share a machine are not: pace is rate over reach, and takes from one
   * what it gives the other.
   */
  @Property(
      tries = 40,
      seed = "20270305",
      generation = GenerationMode.RANDOMIZED,
      shrinking = ShrinkingMode.OFF)
  void inAStraightLineAFasterNeighbourTakesFromNobody(@ForAll long seed) {
    nobodyLoses(seed);
  }

  static void nobodyLoses(long seed) {
    AnyLine line = new AnyLine(AnyLine.Kind.STRAIGHT, seed);
    Map<String, Double> got = simulate(line.plant());
    for (String machine : line.limited()) {
      simulate(line.faster(machine))
          .forEach(
              (measure, mass) -> {
                if (measure.matches("machine\\..*\\.mass")) {
                  assertThat(mass)
                      .as(measure + " with " + machine + " faster")
                      .isGreaterThanOrEqualTo(got.get(measure) * (1 - 1e-9));
                }
              });
    }
  }

  /**
   * Replications on threads of their own, each with its own objects, against one after the other
   * with the same ones.
   */
  @Property(
      tries = 15,
      seed = "20270306",
      generation = GenerationMode.RANDOMIZED,
      shrinking = ShrinkingMode.OFF)
  void theRecordIsTheSameOnAnyThreads(@ForAll long seed) {
    Plant plant = new AnyLine(AnyLine.Kind.RANDOM, seed).plant();
    Replication used = Ready.replication(plant);
    List<Map<String, Double>> inTurn =
        IntStream.rangeClosed(1, 4).mapToObj(r -> values(used, r)).toList();
    List<Map<String, Double>> atOnce =
        IntStream.rangeClosed(1, 4)
            .parallel()
            .mapToObj(r -> values(Ready.replication(plant), r))
            .toList();
    assertThat(atOnce).isEqualTo(inTurn);
    assertThat(inTurn.get(0)).isNotEqualTo(inTurn.get(1));
  }

  private static Map<String, Double> simulate(Plant plant) {
    return values(Ready.replication(plant), 1);
  }

  private static Map<String, Double> values(Replication replication, int number) {
    Outcome outcome = replication.run(new RandomStreams(1), number, null);
    Map<String, Double> values = new TreeMap<>();
    for (int k = 0; k < outcome.values().length; k++) {
      values.put(outcome.columns().get(k).name(), outcome.values()[k]);
    }
    return values;
  }
}
