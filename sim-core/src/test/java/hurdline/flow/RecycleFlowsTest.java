package hurdline.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What goes round and round until it has left, by geometric series. */
class RecycleFlowsTest {
  private static final Offset<Double> EXACT = within(1e-12);

  /**
   * Of a kilogram at 20 % moisture, 0.32 fiber, 0.40 hurd, 0.08 fines and their water. Half the
   * hurd at the saw comes back through a mill that makes a fifth of it fines: hurd 0.40/(1 − 0.4) =
   * 2/3 and fines 0.08 + 0.1·2/3, likewise their water. A quarter of the fiber comes back through a
   * drier that takes 40 % of its water: 0.32/(1 − 0.25), water 0.08/(1 − 0.25·0.6).
   */
  @Test
  void aMillAndADrierThatReturnAreFedBySeries() {
    SimulatedFlow flow =
        new SimulatedFlow(
            ", moisture: 20 %",
            "",
            """
            feeder: {kind: bale-feeder}
            saw: {kind: separating-saw}
            drier: {kind: drier}
            mill:
              kind: hammer-mill
              power: 90 kW
              grinding: {energy: 8 kWh/t, measured_at: 8 mm, exponent: 1, motor_load: 80 %, no_load: 25 %}
              screens: {one: {opening: 8 mm, fines: 20 %}}
            """,
            """
            feeder: {rate: 1 t/h, to: saw}
            saw: {outlets: [{to: mill, takes: {hurd: 50 %}}, {to: drier, takes: {fiber: 25 %}}, {to: tow}]}
            mill: {to: saw}
            drier: {dries: 40 %, to: saw}
            """);
    double hurd = 0.4 / 0.6;
    double hurdWater = 0.1 / 0.6;
    double fiberWater = 0.08 / 0.85;
    double atSaw =
        0.32 / 0.75 + fiberWater + hurd + hurdWater + 0.08 + 0.1 * hurd + 0.02 + 0.1 * hurdWater;
    assertThat(flow.load("saw")).isCloseTo(atSaw, EXACT);
    assertThat(flow.load("mill")).isCloseTo(0.5 * (hurd + hurdWater), EXACT);
    assertThat(flow.load("drier")).isCloseTo(0.25 * (0.32 / 0.75 + fiberWater), EXACT);
    assertThat(flow.network.driedPerKg(flow.feed())).isCloseTo(0.4 * 0.25 * fiberWater, EXACT);
    assertThat(flow.network.sinkKg(flow.feed(), 0)).isCloseTo(1 - 0.1 * fiberWater, EXACT);
  }
}
