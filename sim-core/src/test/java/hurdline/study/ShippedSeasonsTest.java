package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SeasonAnswer;
import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.season.Season;
import hurdline.study.season.SeasonAsk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every file of season plans that comes along is right under each of its plans, and can be
 * simulated.
 */
class ShippedSeasonsTest {
  private static final Path FOLDER = Path.of("../line-configs/seasons");

  static List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(FOLDER)) {
      return all.filter(path -> path.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @Test
  void thereIsOneForEachQuestion() throws IOException {
    String page = Files.readString(FOLDER.resolveSibling("SEASONS.md"));
    assertThat(files()).hasSize(9).allMatch(file -> page.contains(file.getFileName().toString()));
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyPlanCanBeSimulated(Path path) {
    PlantFile file = PlantFile.read(path);
    PlantOrigin source =
        new PlantOrigin(
            file.variants(), path.getFileName().toString(), file.contentHash(), "0", List.of());
    Season.Warnings warnings = (of, changes) -> file.warnings(changes.toArray(Change[]::new));
    SeasonAnswer answer =
        new Season(
                List.of(source),
                new SeasonAsk(List.of(), false),
                PlantChanges.base(),
                warnings,
                Studied.effort(1, 1))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
    assertThat(answer.plans()).hasSizeBetween(3, 5);
    for (SeasonAnswer.Plan plan : answer.plans()) {
      assertThat(plan.says().isEmpty()).as(plan.name()).isEqualTo(plan.name().equals("base"));
      assertThat(answer.mean(plan.name(), Measure.BALANCE_RESIDUAL.of())).isLessThan(1e-9);
      assertThat(answer.mean(plan.name(), Measure.MASS_FED.of("stalk"))).isPositive();
    }
  }

  /** What the owner and the tenant earn is what the plant earns, whatever the rent. */
  @Test
  void rentMovesMoneyBetweenTwoPocketsOnly() {
    PlantFile file = PlantFile.read(FOLDER.resolve("rented.yaml"));
    PlantOrigin source = new PlantOrigin(file.variants(), "rented.yaml", "", "0", List.of());
    SeasonAnswer answer =
        new Season(
                List.of(source),
                new SeasonAsk(List.of("base", "by_the_ton"), false),
                PlantChanges.base(),
                (of, changes) -> List.of(),
                Studied.effort(2, 1))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
    double margin = answer.mean("base", Measure.MONEY_MARGIN.of());
    for (String plan : List.of("base", "by_the_ton")) {
      assertThat(answer.mean(plan, Measure.MONEY_MARGIN.of())).isEqualTo(margin);
      assertThat(
              answer.mean(plan, Measure.MONEY_OWNER.of())
                  + answer.mean(plan, Measure.MONEY_TENANT.of()))
          .isCloseTo(margin, org.assertj.core.api.Assertions.within(1e-6));
    }
    assertThat(answer.mean("base", Measure.MONEY_RENT.of()))
        .isNotEqualTo(answer.mean("by_the_ton", Measure.MONEY_RENT.of()));
  }
}
