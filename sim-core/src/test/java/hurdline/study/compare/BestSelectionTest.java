package hurdline.study.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.CompareAnswer;
import hurdline.answer.Selection;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.replicate.IndifferenceZone;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class BestSelectionTest {
  private static final PlantOrigin PLAIN = Studied.fourWeeks();

  private static CompareAnswer asked(
      PlantOrigin plant, IndifferenceZone zone, int replications, int threads) {
    CompareAsk ask =
        new CompareAsk(
            List.of(),
            OptionalDouble.empty(),
            OptionalInt.of(2),
            false,
            Optional.empty(),
            List.of(),
            Optional.of(zone));
    return new Compare(plant, PlantChanges.base(), ask, Studied.effort(replications, threads))
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  private static Selection.Row row(Selection selection, String option) {
    return selection.rows().stream()
        .filter(row -> row.option().equals(option))
        .findFirst()
        .orElseThrow();
  }

  /** Both options bring far more than the base, and they differ by little more than they spread. */
  @Test
  void theBestByFarIsPickedAtOnce() {
    Selection best =
        asked(PLAIN, new IndifferenceZone("money.margin", 600, false, ""), 10, 2).further().best();
    assertThat(best.decided()).isTrue();
    assertThat(best.option()).isEqualTo("second_spout");
    assertThat(best.rows()).extracting(Selection.Row::replications).containsOnly(10);
    assertThat(best.unit()).isEqualTo("USD");
    Selection least =
        asked(PLAIN, new IndifferenceZone("money.margin", 600, true, ""), 10, 2).further().best();
    assertThat(least.option()).isEqualTo("base");
  }

  /**
   * Overhead brings the second spout near the bigger mill, and the zone is so narrow that both must
   * be simulated on; whatever the threads, it is the same.
   */
  @Test
  void thoseThatAreLeftAreSimulatedOn() {
    String spout = "with: {machines: {bagger: {spouts: 2}}";
    PlantOrigin near = Studied.fourWeeks(spout, spout + ", money: {overhead: 98700 USD/yr}");
    IndifferenceZone narrow = new IndifferenceZone("money.margin", 18, false, "");
    CompareAnswer answer = asked(near, narrow, 4, 2);
    Selection best = answer.further().best();
    assertThat(best.decided()).isTrue();
    assertThat(best.rows()).extracting(Selection.Row::replications).anyMatch(count -> count > 4);
    assertThat(answer.header().replications()).isEqualTo(4);
    assertThat(asked(near, narrow, 4, 3).further()).isEqualTo(answer.further());
    int count = row(best, best.option()).replications();
    double mean =
        Studied.run(near, Studied.option(best.option()), Studied.effort(count, 2))
            .mean("money.margin");
    assertThat(row(best, best.option()).mean())
        .as("the very next replications")
        .isCloseTo(mean, within(1e-6));
  }

  @Test
  void aMeasureThatIsNotThereIsRefused() {
    assertThatThrownBy(
            () ->
                asked(
                    PLAIN,
                    new IndifferenceZone("mass.stak.fed", 1, false, "mass.stak.fed:1t"),
                    3,
                    1))
        .hasMessageContaining(
            "\"mass.stak.fed:1t\" asks for a measure that not all of these plants have")
        .hasMessageContaining("mass.stalk.fed");
  }
}
