package hurdline.study.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.GroundPlan;
import hurdline.answer.YardAnswer;
import hurdline.plant.Change;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The ground of round bales, by hand in round_bales.md. */
class RoundBalesTest {
  private static final PlantOrigin SOURCE =
      Studied.source(Path.of("../line-configs/exact/round_bales.yaml"));

  private static YardAnswer sized(String place, Change... changes) {
    YardAsk ask =
        new YardAsk(Optional.empty(), Optional.of(place), 0.05, OptionalDouble.empty(), 0, false);
    PlantChanges base = new PlantChanges(PlantChanges.baseName(), List.of(), List.of(changes));
    return new YardSizing(SOURCE, base, Studied.effort(2, 1), ask)
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  private static double groundPerYear(YardAnswer answer, int bales) {
    return answer.at(bales).orElseThrow().cost().ground();
  }

  /** The edge grows; the row stays as the file says. */
  @Test
  void stacksAndGroundFollowByHand() {
    YardAnswer answer = sized("edge");
    assertThat(answer.byRule().bales()).isEqualTo(66);
    assertThat(answer.grounds())
        .extracting(GroundPlan::place, GroundPlan::balesOfStack, GroundPlan::stacks)
        .containsExactly(tuple("row", 30, 3), tuple("edge", 8, 1));
    GroundPlan row = answer.grounds().get(0);
    assertThat(row.longM()).isCloseTo(6, within(1e-12));
    assertThat(row.wideM()).isCloseTo(4.5, within(1e-12));
    assertThat(row.highM()).isCloseTo(1.5 * (1 + Math.sqrt(3)), within(1e-12));
    assertThat(row.areaM2()).isCloseTo(378, within(1e-9));
    assertThat(answer.grounds().get(1).areaM2()).isCloseTo(97.2, within(1e-9));
    assertThat(answer.at(85).orElseThrow().areaM2()).isCloseTo(378 + 291.6, within(1e-9));
    assertThat(groundPerYear(answer, 85)).isCloseTo(378 + 291.6, within(1e-9));
    assertThat(groundPerYear(answer, 66)).isCloseTo(378 + 97.2, within(1e-9));
  }

  /** Held by walls, 45 in a stack of the same ground: two stacks and not three. */
  @Test
  void heldStraightTheyTakeTheGroundOfSquareOnes() {
    YardAnswer answer = sized("edge", new Change.Named("held"));
    assertThat(answer.grounds())
        .extracting(GroundPlan::place, GroundPlan::balesOfStack, GroundPlan::stacks)
        .containsExactly(tuple("row", 45, 2), tuple("edge", 8, 1));
    assertThat(answer.grounds().get(0).areaM2()).isCloseTo(252, within(1e-9));
    assertThat(answer.grounds().get(0).highM()).isCloseTo(4.5, within(1e-12));
  }
}
