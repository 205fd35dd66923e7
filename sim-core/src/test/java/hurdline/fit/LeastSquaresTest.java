package hurdline.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

/**
 * Coefficients and standard errors certified by NIST (Statistical Reference Datasets, linear
 * regression: Longley, of a higher level of difficulty, and NoInt2; Longley's figures as copies of
 * the certificate have them), and Commons Math's own regression beside.
 */
class LeastSquaresTest {
  private static final double[] GNP_DEFLATOR = {
    83.0, 88.5, 88.2, 89.5, 96.2, 98.1, 99.0, 100.0, 101.2, 104.6, 108.4, 110.8, 112.6, 114.2,
    115.7, 116.9
  };
  private static final double[] GNP = {
    234289, 259426, 258054, 284599, 328975, 346999, 365385, 363112, 397469, 419180, 442769, 444546,
    482704, 502601, 518173, 554894
  };
  private static final double[] UNEMPLOYED = {
    2356, 2325, 3682, 3351, 2099, 1932, 1870, 3578, 2904, 2822, 2936, 4681, 3813, 3931, 4806, 4007
  };
  private static final double[] ARMED = {
    1590, 1456, 1616, 1650, 3099, 3594, 3547, 3350, 3048, 2857, 2798, 2637, 2552, 2514, 2572, 2827
  };
  private static final double[] PEOPLE = {
    107608, 108632, 109773, 110929, 112075, 113270, 115094, 116219, 117388, 118734, 120445, 121950,
    123366, 125368, 127852, 130081
  };
  private static final double[] EMPLOYED = {
    60323, 61122, 60171, 61187, 63221, 63639, 64989, 63761, 66019, 67857, 68169, 66513, 68655,
    69564, 69331, 70551
  };

  @Test
  void longleysFiguresAreThoseCertified() {
    double[][] x = new double[EMPLOYED.length][];
    for (int i = 0; i < x.length; i++) {
      x[i] =
          new double[] {1, GNP_DEFLATOR[i], GNP[i], UNEMPLOYED[i], ARMED[i], PEOPLE[i], 1947 + i};
    }
    LeastSquares fit = LeastSquares.of(x, EMPLOYED).orElseThrow();
    double[] certified = {
      -3482258.63459582,
      15.0618722713733,
      -0.0358191792925910,
      -2.02022980381683,
      -1.03322686717359,
      -0.0511041056535807,
      1829.15146461355
    };
    double[] errors = {
      890420.383607373,
      84.9149257747669,
      0.0334910077722432,
      0.488399681651699,
      0.214274163161675,
      0.226073200069370,
      455.478499142212
    };
    for (int j = 0; j < certified.length; j++) {
      assertThat(fit.b()[j] / certified[j]).as("b" + j).isCloseTo(1, within(1e-8));
      assertThat(Math.sqrt(fit.covariance()[j][j]) / errors[j])
          .as("error of b" + j)
          .isCloseTo(1, within(1e-8));
    }
  }

  /** NoInt2: 4, 5, 6 give 3, 4, 4; b = 56/77, leverages 16/77, 25/77, 36/77. */
  @Test
  void aLineThroughTheOriginIsThatCertifiedAndItsRobustErrorThatByHand() {
    double[][] x = {{4}, {5}, {6}};
    double[] y = {3, 4, 4};
    LeastSquares fit = LeastSquares.of(x, y).orElseThrow();
    assertThat(fit.b()[0]).isCloseTo(0.727272727272727, within(1e-14));
    assertThat(Math.sqrt(fit.covariance()[0][0])).isCloseTo(0.0420827318078432, within(1e-14));
    double squares = 0;
    for (int i = 0; i < 3; i++) {
      double free = (y[i] - x[i][0] * 56 / 77) / (1 - x[i][0] * x[i][0] / 77);
      squares += Math.pow(x[i][0] * free, 2);
    }
    assertThat(fit.robust()[0][0]).isCloseTo(squares / 77 / 77, within(1e-14));
  }

  @Test
  void twoColumnsGiveWhatCommonsMathGives() {
    double[][] x = new double[40][2];
    double[] y = new double[40];
    for (int i = 0; i < 40; i++) {
      x[i][0] = i % 3 == 0 ? 0 : 10 + Math.sin(i);
      x[i][1] = i % 3 == 0 ? 12 + Math.cos(i) : i % 7 == 0 ? 4 : 0;
      y[i] = 4.3 * x[i][0] + 11.3 * x[i][1] + Math.sin(13 * i);
    }
    OLSMultipleLinearRegression other = new OLSMultipleLinearRegression();
    other.setNoIntercept(true);
    other.newSampleData(y, x);
    LeastSquares fit = LeastSquares.of(x, y).orElseThrow();
    double variance = other.estimateErrorVariance();
    double[][] unscaled = other.estimateRegressionParametersVariance();
    for (int j = 0; j < 2; j++) {
      assertThat(fit.b()[j]).isCloseTo(other.estimateRegressionParameters()[j], within(1e-10));
      for (int k = 0; k < 2; k++) {
        assertThat(fit.covariance()[j][k]).isCloseTo(variance * unscaled[j][k], within(1e-12));
      }
    }
  }

  @Test
  void columnsThatDependOnEachOtherGiveNothing() {
    double[][] x = new double[9][2];
    for (int i = 0; i < 9; i++) {
      x[i] = new double[] {i + 1, 2 * (i + 1)};
    }
    double[] y = new double[9];
    Arrays.setAll(y, i -> i);
    assertThat(LeastSquares.of(x, y)).isEmpty();
    assertThat(LeastSquares.of(new double[][] {{1, 0}, {0, 1}}, new double[] {1, 2})).isEmpty();
  }
}
