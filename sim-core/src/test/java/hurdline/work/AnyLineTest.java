package hurdline.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.chance.Streams;
import hurdline.line.Haulage;
import hurdline.line.Layout;
import hurdline.line.Roster;
import hurdline.line.YardPlan;
import hurdline.plant.Plant;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;

/**
 * Random valid lines for a month: whatever is in them, the books must agree.
 *
 * @see "ISO 22400-2: the times of a work unit are parts of its calendar time (from an open ontology of the standard)"
 */
class AnyLineTest {
  private static final double MONTH_H = 31 * 24;
  /** Days from Monday 1 to Tuesday 30 March: 22 day shifts of 8 h, 9 nights of 6 h. */
  private static final double SCHEDULED_H = 22 * 8 + 9 * 6;

  @Property(tries = 60, seed = "20270301", generation = GenerationMode.RANDOMIZED, shrinking = ShrinkingMode.OFF)
  void theBooksOfAnyLineAgree(@ForAll long seed) {
    AnyLine line = AnyLine.of(seed);
    Plant plant = line.plant();
    Map<String, Double> got = play(plant);
    statesAddUp(got);
    holdersAddUp(got);
    assertThat(got.get("balance.residual")).isBetween(0.0, 1e-9);
    assertThat(got.get("mass.stalk.fed")).isGreaterThan(0);
    assertThat(play(plant)).as("played again").isEqualTo(got);
    assertThat(play(line.shuffled(seed))).as("its keys in another order").isEqualTo(got);
  }

  private static void statesAddUp(Map<String, Double> got) {
    Map<String, Double> sums = new TreeMap<>();
    got.forEach(
        (measure, hours) -> {
          if (measure.startsWith("machine.") && measure.contains(".hours.")) {
            sums.merge(measure.split("\\.")[1], hours, Double::sum);
          }
        });
    assertThat(sums).isNotEmpty().allSatisfy((machine, sum) -> assertThat(sum).isCloseTo(MONTH_H, within(1e-6)));
  }

  private static void holdersAddUp(Map<String, Double> got) {
    double held =
        got.entrySet().stream()
            .filter(e -> e.getKey().startsWith("line.line.hours.held_by."))
            .mapToDouble(Map.Entry::getValue)
            .sum();
    assertThat(held).isCloseTo(got.get("line.line.hours.scheduled"), within(1e-6));
    assertThat(held).isLessThanOrEqualTo(SCHEDULED_H + 1e-6);
  }

  /** The named limit a little higher raises the head; any other does not. */
  @Property(tries = 60, seed = "20270302", generation = GenerationMode.RANDOMIZED, shrinking = ShrinkingMode.OFF)
  void onlyTheNamedHolderRaisesThroughput(@ForAll long seed) {
    AnyLine line = AnyLine.plain(seed);
    Map<String, Double> got = play(line.plant());
    String holder =
        line.limited().stream()
            .filter(m -> got.getOrDefault("line.line.hours.held_by." + m, 0.0) > SCHEDULED_H / 2)
            .findFirst()
            .orElseThrow();
    double fed = got.get("mass.stalk.fed");
    for (String machine : line.limited()) {
      double raised = play(line.faster(machine)).get("mass.stalk.fed");
      if (machine.equals(holder)) {
        assertThat(raised).as(machine).isGreaterThan(fed * 1.0001);
      } else {
        assertThat(raised).as(machine + " beside " + holder).isCloseTo(fed, within(1e-9 * fed));
      }
    }
  }

  private static Map<String, Double> play(Plant plant) {
    Layout layout = Layout.of(plant);
    Roster roster = Roster.of(plant);
    YardPlan yard = YardPlan.of(plant);
    Outcome outcome =
        new Replication(layout, roster, yard, Haulage.of(plant, yard, roster)).run(new Streams(1), 1, null);
    Map<String, Double> values = new TreeMap<>();
    for (int k = 0; k < outcome.values().length; k++) {
      values.put(outcome.columns().get(k).name(), outcome.values()[k]);
    }
    return values;
  }
}
