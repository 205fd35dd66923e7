package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.InputUncertainty;
import hurdline.answer.RunAnswer;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.Run;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The interval of {@code line-configs/exact/doubted}, whose page works it out by hand. */
class DoubtedPlantTest {
  private static final double SD_T = 1.559;

  /** One of the standard deviation of 200 draws, 1/√(2·199). */
  private static final double ERROR = 0.05;

  @Test
  void theIntervalIsThatOfTheDoubtAloneWhereNothingIsRandom() {
    PlantFile file = PlantFile.read(Path.of("../line-configs/exact/doubted.yaml"));
    PlantOrigin source =
        new PlantOrigin(file.variants(), "doubted.yaml", file.contentHash(), "0", List.of());
    RunAnswer answer =
        new Run(
                source,
                PlantChanges.base(),
                new RunSettings(200, Optional.empty(), 1, 2, Optional.empty()))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
    InputUncertainty.Row fed =
        answer.inputs().rows().stream()
            .filter(row -> row.measure().equals("mass.stalk.fed"))
            .findFirst()
            .orElseThrow();
    double half = 1.972 * SD_T; // Student's t of 199 degrees
    assertThat(fed.mean()).isCloseTo(32, within(1e-6));
    assertThat(fed.chance()).isCloseTo(0, within(1e-9));
    assertThat(fed.inputs()).isCloseTo(half, within(4 * ERROR * half));
    assertThat(fed.high95() - fed.mean()).isCloseTo(fed.inputs(), within(1e-9));
  }
}
