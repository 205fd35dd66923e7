package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.plant.Plant;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A yard that is filled at fixed intervals and drained at a fixed rate, against the formulas of
 * filling and draining.
 */
class YardFormulasTest {
  private static final double BALE_T = 0.5;

  /** In the feeder and on its table of one place. */
  private static final int AHEAD = 2;

  /**
   * Loads of b bales every e h until the load before the window's end, drawn at d bales/h all the
   * while.
   */
  private record Window(int onHand, int loadBales, int everyH, double balesPerH, int days) {
    Plant plant() {
      String until = java.time.LocalDate.of(2027, 1, 1).plusDays(days - 1L).toString();
      return TestPlant.oneLine()
          .says("machines", "{feeder: {kind: bale-feeder, feed_table: 1 bales}}")
          .feeds(balesPerH * BALE_T + " t/h")
          .with("yard.on_hand.stalk", onHand + " bales")
          .says(
              "deliveries",
              "{stalk: {loads: {every: %d h, bales: %d, to: %s}}}",
              everyH,
              loadBales,
              until)
          .plant();
    }

    /** Loads come at e, 2e …; one due on the stroke of the window's end still comes. */
    int loads() {
      return days * 24 / everyH;
    }

    /**
     * Where it never runs out: S − 2 + b·k less what has left since, just after the k-th load;
     * flows come before arrivals.
     */
    int peak() {
      int peak = onHand;
      for (int k = 1; k <= loads(); k++) {
        int left = (int) Math.floor(k * everyH * balesPerH + 1e-9);
        peak = Math.max(peak, onHand - AHEAD - left + k * loadBales);
      }
      return peak;
    }

    /** All that was there and came, at the rate at which it is drawn. */
    double emptyAfterH() {
      return (onHand + loads() * loadBales) / balesPerH;
    }
  }

  @Test
  void whatComesFasterThanItLeavesPilesUpAndIsThenWorkedOff() {
    for (Window w :
        List.of(
            new Window(50, 12, 5, 1.7, 20),
            new Window(0, 40, 8, 1.3, 14),
            new Window(900, 5, 7, 2.9, 10))) {
      var got = ExactCasesTest.measures(w.plant(), 1);
      double idleFirstH = w.onHand() == 0 ? w.everyH() : 0;
      assertThat(got.get("intake.stalk.fed")).isEqualTo(w.onHand() + w.loads() * w.loadBales());
      assertThat(got.get("season.stalk_line.ended"))
          .isEqualTo(Math.floor((idleFirstH + w.emptyAfterH()) / 24) + 1);
      double held = got.get("line.stalk_line.hours.limited_by.feeder");
      assertThat(held).isCloseTo(w.emptyAfterH(), within(1e-6));
      if (w.onHand() > 0) {
        assertThat(got.get("yard.stalk.peak")).isEqualTo(w.peak());
      }
    }
  }
}
