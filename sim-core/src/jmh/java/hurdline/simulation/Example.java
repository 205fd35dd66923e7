package hurdline.simulation;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.YardPlan;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The example plant, ready to be simulated. */
final class Example {
  private Example() {}

  static Replication replication(Change... changes) {
    Plant plant = PlantFile.of("sweetgum-bend.yaml", text()).variants().with(changes);
    Roster roster = Roster.of(plant);
    YardPlan yard = YardPlan.of(plant);
    return new Replication(CompiledLines.of(plant), roster, yard, Haulage.of(plant, yard, roster));
  }

  private static String text() {
    try (InputStream file = Example.class.getResourceAsStream("/line-configs/sweetgum-bend.yaml")) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
