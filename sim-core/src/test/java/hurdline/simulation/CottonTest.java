package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The example's cotton side against what a bale usually takes. */
class CottonTest {
  /**
   * Common practice, no source at hand: a 480 lb bale of lint takes some 1,400 to 1,500 lb of
   * picked seed cotton at the usual turnout (from memory: Cotton Ginners Handbook, USDA AH-503,
   * 1994).
   */
  @Test
  void aBaleOfLintTakesTheUsualMassOfSeedCotton() {
    Plant plant = PlantFile.read(Path.of("../line-configs/sweetgum-bend.yaml")).plant();
    Map<String, Double> year = ExactCasesTest.measures(plant, 1);
    double turnout = year.get("line.cotton_line.turnout.lint");
    assertThat(480 / turnout).isBetween(1400.0, 1500.0);
  }
}
