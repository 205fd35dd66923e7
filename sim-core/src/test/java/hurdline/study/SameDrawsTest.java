package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.account.Trace;
import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.CompiledPlant;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** P8: changing one thing in a plant leaves the draws of all others where they were. */
class SameDrawsTest {

  private record Noted(double clockS, String what) {}

  private record Simulated(Map<String, Double> values, List<Noted> notes) {
    /** What was noted of anything but this, in its order. */
    List<Noted> notesWithout(String name) {
      return notes.stream().filter(note -> !note.what.contains(name)).toList();
    }
  }

  private static Simulated simulate(Plant plant) {
    List<Noted> notes = new ArrayList<>();
    Trace trace =
        (clockS, where, what, amount) -> notes.add(new Noted(clockS, where + " " + what.word()));
    var outcome = CompiledPlant.of(plant).replication().run(new RandomStreams(1), 3, trace);
    Map<String, Double> values = new HashMap<>();
    for (int k = 0; k < outcome.values().length; k++) {
      values.put(outcome.columns().get(k).name(), outcome.values()[k]);
    }
    return new Simulated(values, notes);
  }

  private static Plant example(Change... changes) {
    return PlantFile.read(Studied.EXAMPLE).variants().with(changes);
  }

  @Test
  void anOptionThatChangesTheMillLeavesTheOtherCropsModulesAsTheyWere() {
    Simulated base = simulate(example());
    Simulated bigger = simulate(example(new Change.Named("bigger_mill")));
    String left = Measure.SEASON_LEFT_OVER.of("stalk_line");
    assertThat(bigger.values.get(left))
        .as("the option matters")
        .isNotEqualTo(base.values.get(left));
    for (String measure :
        List.of(
            Measure.INTAKE_WEIGHED_IN.of("seed_cotton"),
            Measure.MASS_WEIGHED_IN.of("seed_cotton"),
            Measure.MASS_WEIGHED_IN.dryOf("seed_cotton"))) {
      assertThat(bigger.values.get(measure))
          .as(measure)
          .isPositive()
          .isEqualTo(base.values.get(measure));
    }
  }

  @Test
  void aMachineMoreLeavesTheStopsOfAllOthersAsTheyWere() throws IOException {
    String text = Files.readString(Studied.EXAMPLE);
    String more =
        text.replaceFirst(
            "\n  gin_fans: .*",
            "$0\n"
                + "  aaa_fan: {kind: fan, power: 1 W, stops: {belt: {every: {exponential: {mean: 3 h}},"
                + " counted: calendar, repair: any-time,"
                + " lasts: {exponential: {mean: 1 h}}}}}");
    assertThat(more).isNotEqualTo(text);
    Simulated base = simulate(example());
    Simulated other = simulate(PlantFile.of("more.yaml", more).plant());
    assertThat(other.values.get("machine.aaa_fan.stop.belt.count")).isGreaterThan(100);
    List<Noted> others = other.notesWithout("aaa_fan");
    assertThat(others.stream().map(Noted::what).toList())
        .hasSizeGreaterThan(10_000)
        .isEqualTo(base.notes.stream().map(Noted::what).toList());
    for (int at = 0; at < others.size(); at++) {
      // flows are carried in other pieces, which rounds otherwise
      assertThat(others.get(at).clockS).isCloseTo(base.notes.get(at).clockS, within(1e-3));
    }
  }
}
