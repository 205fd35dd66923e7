package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Machine;
import hurdline.plant.Plant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShippedFilesTest {

  static List<String> exact() {
    return PlantFiles.EXACT;
  }

  @ParameterizedTest
  @MethodSource("exact")
  void everyExactCaseIsRead(String name) {
    Plant plant = PlantFile.of(name + ".yaml", PlantFiles.text("exact/" + name + ".yaml")).plant();
    assertThat(plant.lines()).isNotEmpty();
  }

  @Test
  void theExampleIsReadWhole() {
    Plant plant = PlantFile.of("x.yaml", PlantFiles.text(PlantFiles.EXAMPLE)).plant();
    assertThat(plant.machines()).hasSize(18);
    assertThat(plant.machines().stream().filter(Machine.HammerMill.class::isInstance)).hasSize(1);
    assertThat(plant.season()).hasSize(5);
    assertThat(plant.options()).hasSize(3);
  }

  @Test
  void theBaseOfTheWrongCasesIsRight() {
    assertThat(PlantFile.of("b", PlantFiles.text("wrong/base_valid.yaml")).plant().name())
        .isEqualTo("A base without mistakes");
  }
}
