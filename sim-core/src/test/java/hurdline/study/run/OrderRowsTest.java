package hurdline.study.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.OrderRow;
import hurdline.answer.RunAnswer;
import hurdline.measure.Measure;
import hurdline.study.PlantChanges;
import hurdline.study.Studied;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What became of each order, counted over the years that were simulated. */
class OrderRowsTest {
  private static RunAnswer answer(String file, int replications) {
    return new Run(
            Studied.source(Path.of("../line-configs").resolve(file)),
            PlantChanges.base(),
            Studied.effort(replications, 1))
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  @Test
  void aPlantWithoutChanceHasItsOrdersInTurn() {
    List<OrderRow> rows = answer("exact/orders_in_turn.yaml", 3).orders();
    assertThat(rows).extracting(OrderRow::massT).containsExactly(8.0, 4.0, 10.0, 100.0);
    assertThat(rows).extracting(OrderRow::met).containsExactly(3, 3, 3, 0);
    assertThat(rows).extracting(OrderRow::onTime).containsExactly(3, 0, 0, 0);
    assertThat(rows).extracting(OrderRow::lateDays).containsExactly(0.0, 1.0, 1.0, 0.0);
    assertThat(rows.get(3).metDay()).isNaN();
    assertThat(rows.get(3).missingT()).isCloseTo(98, within(1e-6));
    assertThat(rows.get(1).penalty()).isCloseTo(7, within(1e-9));
    assertThat(rows.get(2).penalty()).isCloseTo(11, within(1e-9));
    assertThat(rows.get(3).penalty()).isZero();
    assertThat(rows.get(0).onTimeLow95()).isCloseTo(Math.pow(0.025, 1 / 3.0), within(1e-9));
  }

  /** Counted from the replications one by one, which stand in the answer too. */
  @Test
  void yearsThatDifferAreCounted() {
    RunAnswer answer = answer("stalk.yaml", 6);
    OrderRow row = answer.orders().get(0);
    int late = at(answer, Measure.PRODUCT_ORDER_LATE_DAYS.of(row.product(), "1"));
    double[][] values = answer.samples().values();
    int met = at(answer, Measure.PRODUCT_ORDER_MET.of(row.product(), "1"));
    assertThat(row.years()).isEqualTo(6);
    assertThat(row.met())
        .isEqualTo((int) IntStream.range(0, 6).filter(k -> values[k][met] > 0).count());
    assertThat(row.onTime())
        .isEqualTo(
            (int)
                IntStream.range(0, 6)
                    .filter(k -> values[k][met] > 0 && values[k][late] == 0)
                    .count());
  }

  private static int at(RunAnswer answer, String measure) {
    return answer.samples().measures().stream().map(of -> of.measure()).toList().indexOf(measure);
  }
}
