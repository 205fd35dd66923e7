package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.capacity.CapacityPlant;
import hurdline.capacity.Freed;
import hurdline.capacity.LineCapacity;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.YardPlan;
import hurdline.measure.Kpi;
import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.Problem;
import hurdline.plant.Warnings;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Ratios and warnings of stops that are planned by date; their hours are among the exact cases. */
class PlannedStopTest {
  private static Outcome.Shared shared(String name) {
    return Ready.replication(plant(name)).run(new RandomStreams(1), 1, null).shared();
  }

  private static Plant plant(String name) {
    return PlantFile.read(Path.of("../line-configs/exact/" + name + ".yaml")).plant();
  }

  private static double kpi(Outcome.Shared shared, String machine, Kpi kpi) {
    String measure = Measure.MACHINE_KPI.of(machine, kpi.word());
    for (int k = 0; k < shared.columns().size(); k++) {
      if (shared.columns().get(k).name().equals(measure)) {
        return shared.values()[k];
      }
    }
    throw new AssertionError("no " + measure);
  }

  @Test
  void anInspectionLowersNoAvailabilityOfItsMachine() {
    Outcome.Shared shared = shared("planned_stop");
    assertThat(kpi(shared, "saw", Kpi.AVAILABILITY)).isCloseTo(1, within(1e-9));
    assertThat(kpi(shared, "saw", Kpi.TECHNICAL)).isCloseTo(1, within(1e-9));
    assertThat(kpi(shared, "feeder", Kpi.AVAILABILITY)).isCloseTo(37.0 / 40, within(1e-9));
  }

  @Test
  void aStopThatNobodyPlannedDoes() {
    assertThat(kpi(shared("planned_borders"), "saw", Kpi.AVAILABILITY))
        .isCloseTo(26.5 / 27.5, within(1e-9));
  }

  @Test
  void aStopWithoutADateInTheCalendarIsCautioned() {
    PlantFile file = PlantFile.read(Path.of("../line-configs/exact/planned_stop.yaml"));
    String path = "machines.saw.stops.inspection.on";
    assertThat(Warnings.of(file.plant())).extracting(Problem::path).doesNotContain(path);
    Plant other = file.variants().with(new Change.Value(path + ".0", "2026-03-03"));
    assertThat(Warnings.of(other)).extracting(Problem::path).contains(path);
  }

  /** A plan that takes 3 of 40 h leaves 37/40 of 2 t/h, as the simulation does. */
  @Test
  void expectedCapacityLeavesItsHoursOut() {
    Plant plant = plant("planned_stop");
    Roster roster = Roster.of(plant);
    Haulage haulage = Haulage.of(plant, YardPlan.of(plant), roster);
    LineCapacity line =
        new CapacityPlant(CompiledLines.of(plant), roster, haulage).line(plant.lines().get(0));
    assertThat(3.6 * line.expected(Freed.nothing()).kgPerS()).isCloseTo(1.85, within(1e-9));
  }
}
