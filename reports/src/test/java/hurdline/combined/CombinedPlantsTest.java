package hurdline.combined;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Plants in which features of the format meet that were each tested alone. */
class CombinedPlantsTest {

  @Test
  void whatMustHoldOfAnyPlantHoldsOfCombinedOnes() {
    assertThat(broken(LongStream.range(0, 12))).isEmpty();
  }

  @Test
  @Tag("proof")
  void andOfVeryManyOfThem() {
    long from = Long.getLong("combined.from", 100);
    long to = Long.getLong("combined.to", 400);
    assertThat(broken(LongStream.range(from, to))).isEmpty();
  }

  /** The controls: books of another calendar stay open, and other chance is noticed. */
  @Test
  void aFaultIsNoticed() {
    CombinedPlant plant = CombinedPlant.of(3);
    Simulated got = Simulated.of(plant.plant());
    PlantTree later = plant.tree().with("calendar: {to: 2090-01-01}");
    assertThat(Books.open(plant.tree(), got)).isEmpty();
    assertThat(Books.open(later, got)).anyMatch(line -> line.startsWith("hours of "));
    PlantTree heavier = plant.tree().mapped(Amounts::heavier);
    assertThat(got.unlike(Simulated.of(CombinedPlant.plant(heavier)), name -> value -> value, 1e-5))
        .isNotEmpty();
  }

  private static List<String> broken(LongStream seeds) {
    List<String> all = new ArrayList<>();
    Map<String, Integer> on = new TreeMap<>();
    int[] checks = new int[1];
    seeds.forEach(
        seed -> {
          CombinedPlant plant = CombinedPlant.of(seed);
          plant.features().forEach(feature -> on.merge(feature, 1, Integer::sum));
          try {
            CombinedChecks done = CombinedChecks.of(plant);
            checks[0] += done.made();
            done.broken()
                .forEach(
                    (what, not) ->
                        all.add(
                            plant
                                + " breaks "
                                + what
                                + ": "
                                + not.size()
                                + " "
                                + not.subList(0, Math.min(4, not.size()))));
          } catch (RuntimeException e) {
            all.add(plant + " fails: " + e);
          }
        });
    if (Boolean.getBoolean("combined.tell")) {
      System.out.println(checks[0] + " checks; " + on);
    }
    return all;
  }
}
