package hurdline.chart.flow;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.chart.flow.FlowLayout.Spot;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RowOrderTest {
  private static Spot spot(String name, int row) {
    return new Spot(name, row, 60);
  }

  private static void link(Spot upper, Spot lower) {
    upper.linked.add(lower);
    lower.linked.add(upper);
  }

  @Test
  void linksThatNeedNotCrossDoNot() {
    Spot saw = spot("saw", 0);
    Spot cyclone = spot("cyclone", 0);
    Spot dust = spot("dust", 1);
    Spot air = spot("air", 1);
    Spot cleaner = spot("cleaner", 1);
    Spot wayPoint = spot("", 1);
    link(cyclone, dust);
    link(cyclone, air);
    link(saw, cleaner);
    link(saw, wayPoint);
    List<List<Spot>> rows =
        new ArrayList<>(
            List.of(
                new ArrayList<>(List.of(saw, cyclone)),
                new ArrayList<>(List.of(cleaner, dust, wayPoint, air))));
    rows.forEach(FlowLayout::layOut);
    new RowOrder(rows).settle();
    List<Spot> lower = rows.get(1);
    assertThat(Math.abs(lower.indexOf(dust) - lower.indexOf(air))).isEqualTo(1);
    assertThat(Math.abs(lower.indexOf(cleaner) - lower.indexOf(wayPoint))).isEqualTo(1);
    assertThat(lower.indexOf(saw.linked.get(0)) < lower.indexOf(dust))
        .isEqualTo(rows.get(0).indexOf(saw) < rows.get(0).indexOf(cyclone));
  }

  @Test
  void aRowIsLaidOutWithoutOverlap() {
    List<Spot> row = List.of(spot("a", 0), spot("b", 0), spot("c", 0));
    FlowLayout.layOut(row);
    for (int at = 1; at < row.size(); at++) {
      assertThat(row.get(at).x - row.get(at - 1).x).isGreaterThan(60);
    }
  }
}
