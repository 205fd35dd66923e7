package hurdline.compiled;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.outside.Outside;
import hurdline.plant.Curve;
import hurdline.plant.Machine;
import hurdline.random.Constant;
import java.util.List;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MillRateTest {
  private static final Outside MEASURED = Outside.of("milling-straw-and-stover");
  private static final double J_PER_KG = 3600;

  /**
   * Between the ends of the measured range the law meets each published figure as near as its fit
   * does.
   */
  @ParameterizedTest
  @CsvSource({
    "stover.12, 0.82, 0.03",
    "stover.6.2, 0.83, 0.15",
    "switchgrass.8, 0.70, 0.25",
    "switchgrass.12, 0.52, 0.30",
    "wheat-straw.8.3, 1.09, 0.40",
    "wheat-straw.12.1, 0.44, 0.25"
  })
  void aPowerOfTheOpeningFitsMeasuredMillingEnergy(String what, double exponent, double worst) {
    double[] openingMm = MEASURED.numbers("openings.mm");
    double[] kwhPerT = MEASURED.numbers(what);
    SimpleRegression fit = new SimpleRegression();
    for (int i = 0; i < openingMm.length; i++) {
      fit.addData(Math.log(openingMm[i]), Math.log(kwhPerT[i]));
    }
    assertThat(-fit.getSlope()).isCloseTo(exponent, within(0.006));
    Machine.Grinding law =
        new Machine.Grinding(
            Math.exp(fit.predict(0)) * J_PER_KG, 0.001, -fit.getSlope(), 0.8, 0, Curve.NONE);
    for (int i = 0; i < openingMm.length; i++) {
      Machine.Screen screen = new Machine.Screen("s", openingMm[i] / 1000, 0);
      double said = law.energyJPerKg(screen) / J_PER_KG;
      assertThat(Math.abs(said / kwhPerT[i] - 1)).isLessThan(worst);
    }
  }

  /**
   * 20 kW times 75 % over 12.5 kWh/t is 1.2 t/h; a quarter of the opening at exponent 0.5 takes
   * twice the energy.
   */
  @Test
  void theMotorSetsTheRateAndTheScreenTheEnergy() {
    Machine.HammerMill mill = mill();
    double tPerH = 3.6;
    assertThat(mill.kgPerS(mill.screens().get(0)) * tPerH).isCloseTo(1.2, within(1e-12));
    assertThat(mill.kgPerS(mill.screens().get(1)) * tPerH).isCloseTo(0.6, within(1e-12));
  }

  private static Machine.HammerMill mill() {
    Machine.Grinding law =
        new Machine.Grinding(12.5 * J_PER_KG, 0.006, 0.5, 0.75, 0.25, Curve.NONE);
    return new Machine.HammerMill(
        "mill",
        new Machine.Common(20_000, false, List.of()),
        law,
        List.of(new Machine.Screen("wide", 0.006, 0), new Machine.Screen("narrow", 0.0015, 0)),
        new Constant(0),
        List.of());
  }
}
