package hurdline.fit;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.simulation.ProofTable;
import hurdline.simulation.ProofTable.Figure;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Laws fitted to published amounts, beside what handbooks and R print, for the page. */
@Tag("proof")
class FitFiguresProofTest {
  private static final ProofTable TABLE = ProofTable.PAGE;
  private static final int AT = 20;

  @BeforeAll
  static void begin() {
    TABLE.section(
        AT,
        "Laws fitted to a plant's records",
        "Maximum likelihood on published amounts, some of them not ended. Device failures:"
            + " NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3, as printed there (scale"
            + " to the digits that R 4.2.2 and the handbook share). Ball bearings: Lieblein and"
            + " Zelen 1956, as printed in Lawless (data from memory); air conditioning: Proschan"
            + " 1963, R package boot; generator fans: Nelson, R package survival; references of"
            + " these by R 4.2.2 with survival 3.5-3. The whole tables, 92 fits beside R and SciPy,"
            + " are in `LawOracleTest`; how often intervals hold on samples and seasons of known"
            + " laws is in `FitCoverageProofTest`, that of drawn inputs in"
            + " `InputCoverageProofTest`.");
  }

  @AfterAll
  static void write() {
    TABLE.writeIfWhole();
  }

  private static void figure(String claim, String unit, String said, double got) {
    assertThat(TABLE.add(AT, new Figure(claim, unit, said, got)).off())
        .as(claim)
        .isBetween(-0.5, 0.5);
  }

  private static double shape(LawFit fit) {
    return Math.exp(fit.t()[0]);
  }

  private static double second(LawFit fit) {
    return Math.exp(fit.t()[1]) * fit.unit();
  }

  @Test
  void deviceFailuresAreThoseOfTheHandbook() {
    LawFit fit = LawOracleTest.fit("nist_8413", "weibull");
    figure("device failures, 10 of 20 ended, Weibull: shape", "", "1.7208", shape(fit));
    figure("device failures, Weibull: scale", "h", "606.528", second(fit));
    figure(
        "device failures, Weibull: Akaike's criterion", "", "154.27", 4 - 2 * fit.logLikelihood());
    LawFit lognormal = LawOracleTest.fit("nist_8413", "lognormal");
    figure(
        "device failures, lognormal: Akaike's criterion",
        "",
        "154.39",
        4 - 2 * lognormal.logLikelihood());
  }

  @Test
  void bearingsAreThoseOfR() {
    LawFit weibull = LawOracleTest.fit("bearings", "weibull");
    figure("23 ball bearings, Weibull: shape", "", "2.10185", shape(weibull));
    figure("23 ball bearings, Weibull: scale", "10⁶ turns", "81.8746", second(weibull));
    figure("23 ball bearings, Weibull: log-likelihood", "", "-113.691959", weibull.logLikelihood());
    LawFit gamma = LawOracleTest.fit("bearings", "gamma");
    figure("23 ball bearings, gamma: shape", "", "4.02471", shape(gamma));
    figure("23 ball bearings, gamma: log-likelihood", "", "-113.029819", gamma.logLikelihood());
    LawFit lognormal = LawOracleTest.fit("bearings", "lognormal");
    figure(
        "23 ball bearings, lognormal: log-likelihood",
        "",
        "-113.128554",
        lognormal.logLikelihood());
  }

  @Test
  void amountsOfWhichMostHaveNotEndedAreThoseOfR() {
    LawFit fans = LawOracleTest.fit("genfan", "weibull");
    figure("generator fans, 12 of 70 ended, Weibull: shape", "", "1.05845", shape(fans));
    figure("generator fans, Weibull: scale", "h", "26296.8", second(fans));
    figure(
        "generator fans, exponential: mean",
        "h",
        "28703",
        LawOracleTest.fit("genfan", "exponential").mean());
    LawFit cooling = LawOracleTest.fit("aircondit", "weibull");
    figure("12 stops of air conditioning, Weibull: shape", "", "0.793944", shape(cooling));
    figure("12 stops of air conditioning, Weibull: scale", "h", "94.9649", second(cooling));
  }
}
