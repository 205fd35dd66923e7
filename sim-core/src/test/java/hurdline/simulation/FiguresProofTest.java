package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.economics.CapitalRecovery;
import hurdline.economics.Cash;
import hurdline.economics.InternalRate;
import hurdline.outside.Autocorrelation;
import hurdline.outside.Outside;
import hurdline.plant.Curve;
import hurdline.plant.Machine;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.Gamma;
import hurdline.simulation.ProofTable.Figure;
import hurdline.simulation.ProofTable.Measured;
import hurdline.statistics.Intervals;
import hurdline.statistics.Summary;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Figures without chance against printed ones; what comes out goes to {@code
 * line-configs/PROOF.md}.
 */
@Tag("proof")
class FiguresProofTest {
  private static final double ROUNDED = 0.5;
  private static final double J_PER_KG = 3600;
  private static final ProofTable TABLE = ProofTable.PAGE;

  @AfterAll
  static void writeThePage() {
    TABLE.writeIfWhole();
  }

  /** As in {@code WorkedExamplesTest}, which has more of them. */
  @Test
  void workedExamplesOfEngineeringEconomics() {
    int at = 11;
    TABLE.section(
        at,
        "Present value, internal rate, payback and capital recovery",
        "Worked examples, from W. G. Sullivan, E. M. Wicks and C. P. Koelling, *Engineering Economy* (welding machine, chapter 5; growing "
            + "payments, 14th edition, problem 5-2, whose solution rounds its factors and has 82,082.78), and of courses that put theirs on the web. "
            + "The reference is worked with exact factors.");
    Cash welding = even(25_000, 8_000, 5, 5_000);
    figure(
        at,
        "welding machine: present value at 20 %",
        "money",
        "934.285",
        welding.netPresentValue(0.20),
        ROUNDED);
    figure(
        at,
        "welding machine: internal rate",
        "%",
        "21.58",
        100 * InternalRate.of(welding).only(),
        ROUNDED);
    figure(
        at, "welding machine: payback at 20 %", "years", "4.821", welding.paybackYr(0.20), ROUNDED);
    Cash growing =
        Cash.yearly(
            -640_000, 138_000, 138_000, 138_000, 142_000, 146_000, 150_000, 154_000, 178_000);
    figure(
        at,
        "growing payments: present value at 12 %",
        "money",
        "82088.265",
        growing.netPresentValue(0.12),
        ROUNDED);
    figure(
        at,
        "growing payments: internal rate",
        "%",
        "15.447",
        100 * InternalRate.of(growing).only(),
        ROUNDED);
    figure(
        at,
        "growing payments: payback at 12 %",
        "years",
        "6.854",
        growing.paybackYr(0.12),
        ROUNDED);
    Cash unequal = even(100_000, 35_000, 5, 20_000);
    figure(
        at,
        "five years of two: present value at 8 %",
        "money",
        "53356.52",
        unequal.netPresentValue(0.08),
        ROUNDED);
    figure(
        at,
        "five years of two: internal rate",
        "%",
        "25.3112",
        100 * InternalRate.of(unequal).only(),
        ROUNDED);
    figure(
        at,
        "only costs: present value at 22 %",
        "money",
        "-301150.23",
        even(164_000, -55_000, 4, 0).netPresentValue(0.22),
        ROUNDED);
    InternalRate two = InternalRate.of(Cash.yearly(-1_000, 2_300, -1_320));
    assertThat(two.rates()).hasSize(2);
    figure(
        at,
        "−1000, +2300, −1320 (by hand): lower rate",
        "%",
        "10.0000000",
        100 * two.rates().get(0),
        ROUNDED);
    figure(
        at,
        "−1000, +2300, −1320 (by hand): higher rate",
        "%",
        "20.0000000",
        100 * two.rates().get(1),
        ROUNDED);
    figure(
        at,
        "−100, +50, −60: number of rates",
        "rates",
        "0",
        InternalRate.of(Cash.yearly(-100, 50, -60)).rates().size(),
        0);
    figure(
        at,
        "−1600, +10000, −10000: number of rates",
        "rates",
        "2",
        InternalRate.of(Cash.yearly(-1_600, 10_000, -10_000)).rates().size(),
        0);
    figure(
        at,
        "capital recovery, 10 %, 12 years",
        "1/year",
        "0.1467633",
        CapitalRecovery.factor(0.10, 12),
        ROUNDED);
    figure(
        at,
        "capital recovery, 8 %, 5 years",
        "1/year",
        "0.2504565",
        CapitalRecovery.factor(0.08, 5),
        ROUNDED);
  }

  private static Cash even(double outlay, double yearly, int years, double salvage) {
    double[] amounts = new double[years + 1];
    Arrays.fill(amounts, yearly);
    amounts[0] = -outlay;
    amounts[years] += salvage;
    return Cash.yearly(amounts);
  }

  @Test
  void certifiedMeansAndSpreads() {
    int at = 12;
    TABLE.section(
        at,
        "Means, standard deviations and autocorrelations",
        "NIST Statistical Reference Datasets, univariate, certified to 15 digits: Lew, Mavro, Michelso, and NumAcc2 to 4, made by their rule, whose "
            + "decimals a double cannot hold any nearer than the digits given here. Limit 2 last digits, 50 for the deviations and autocorrelations of Mavro and "
            + "Michelso: a double holds their data to 13 and 14 digits of the spread. The program works out no autocorrelation; the one "
            + "shown is that by which the tests ask whether draws and replications hang together.");
    for (String name : new String[] {"lew", "mavro", "michelso"}) {
      Outside certified = Outside.of("nist-" + name);
      Summary summary = Summary.of(certified.numbers("values"));
      figure(at, name + ": mean", "", certified.text("mean"), summary.mean(), 2);
      figure(
          at,
          name + ": standard deviation",
          "",
          certified.text("sd"),
          summary.sd(),
          name.equals("lew") ? 2 : 50);
      double together = Autocorrelation.ofNeighbours(certified.numbers("values"));
      figure(
          at,
          name + ": autocorrelation of neighbors",
          "",
          certified.text("autocorrelation"),
          together,
          name.equals("lew") ? 2 : 50);
    }
    String[][] offsets = {
      {"1.2", "0.10000000000000"}, {"1000000.2", "0.100000000"}, {"10000000.2", "0.10000000"}
    };
    for (int k = 0; k < offsets.length; k++) {
      Summary summary = Summary.of(around(new BigDecimal(offsets[k][0])));
      figure(at, "numacc" + (k + 2) + ": standard deviation", "", offsets[k][1], summary.sd(), 2);
    }
  }

  /** A middle value and 500 pairs 0.1 to either side of it. */
  private static double[] around(BigDecimal middle) {
    double[] values = new double[1001];
    values[0] = middle.doubleValue();
    BigDecimal off = new BigDecimal("0.1");
    for (int i = 1; i < values.length; i += 2) {
      values[i] = middle.subtract(off).doubleValue();
      values[i + 1] = middle.add(off).doubleValue();
    }
    return values;
  }

  @Test
  void printedQuantiles() {
    int at = 13;
    TABLE.section(
        at,
        "Quantiles of Student's t and of chi-square",
        "NIST/SEMATECH *e-Handbook of Statistical Methods*, tables 1.3.6.7.2 and 1.3.6.7.4 (from memory; printed tables agree). Student's t is "
            + "read off the intervals of means; chi-square of ν degrees is the gamma distribution of mean ν and standard deviation √(2ν), as drawn for "
            + "plant files with `gamma`.");
    String[][] student = {
      {"1", "12.706", "63.657"},
      {"2", "4.303", "9.925"},
      {"5", "2.571", "4.032"},
      {"10", "2.228", "3.169"},
      {"30", "2.042", "2.750"},
      {"100", "1.984", "2.626"}
    };
    for (String[] row : student) {
      figure(
          at,
          "t, " + degrees(row[0]) + ", 95 %",
          "",
          row[1],
          student(Integer.parseInt(row[0]), 0.95),
          ROUNDED);
      figure(
          at,
          "t, " + degrees(row[0]) + ", 99 %",
          "",
          row[2],
          student(Integer.parseInt(row[0]), 0.99),
          ROUNDED);
    }
    Outside chi = Outside.of("chi-square");
    double[] shares = chi.numbers("shares");
    for (String freedom : chi.text("freedom").split("\\s+")) {
      String[] printed = chi.text("upper." + freedom).split("\\s+");
      double degrees = Double.parseDouble(freedom);
      var curve = Gamma.of(degrees, Math.sqrt(2 * degrees)).curve();
      for (int k = 0; k < shares.length; k++) {
        figure(
            at,
            "chi-square, " + degrees(freedom) + ", " + shares[k],
            "",
            printed[k],
            curve.applyAsDouble(shares[k]),
            ROUNDED);
      }
    }
  }

  private static String degrees(String count) {
    return count + (count.equals("1") ? " degree" : " degrees");
  }

  private static double student(int freedom, double level) {
    double[] values =
        new double[freedom + 1]; // no skewness, or the interval of a mean would be Hall's
    for (int i = 0; i < values.length / 2; i++) {
      values[2 * i] = -1;
      values[2 * i + 1] = 1;
    }
    double error = Summary.of(values).sd() / Math.sqrt(values.length);
    return Intervals.mean(values, level).halfWidth() / error;
  }

  /** Fits the law to each material's three openings and asks the mill's own formula. */
  @Test
  void energyOfMilling() {
    int at = 14;
    TABLE.section(
        at,
        "Energy of hammer mills by opening",
        "S. Mani, L. G. Tabil and S. Sokhansanj, *Biomass and Bioenergy* 27 (2004), pages 339-352, table 2: measured kWh/t at openings of 0.8, 1.6 and 3.2 mm. "
            + "Only switchgrass at 27.6 and stover at 11.0 were seen (in the abstract); all others are from memory. The law e = e₀·(d₀/d)ⁿ is fitted to each "
            + "material by least squares of logarithms; two parameters for three points, so *off* is how well a power law fits, not a test of the program. Limit 40 %.");
    Outside measured = Outside.of("milling-straw-and-stover");
    double[] openingMm = measured.numbers("openings.mm");
    for (String what :
        new String[] {
          "stover.12",
          "stover.6.2",
          "switchgrass.8",
          "switchgrass.12",
          "wheat-straw.8.3",
          "wheat-straw.12.1"
        }) {
      Machine.Grinding law = fitted(openingMm, measured.numbers(what));
      String[] printed = measured.text(what).split("\\s+");
      String says =
          what.replaceFirst("\\.", " at ").replace('-', ' ')
              + " % moisture, n = "
              + String.format(Locale.ROOT, "%.2f", law.exponent())
              + ", ";
      for (int i = 0; i < openingMm.length; i++) {
        double got = law.energyJPerKg(new Machine.Screen("s", openingMm[i] / 1000, 0)) / J_PER_KG;
        Measured line =
            TABLE.add(at, new Measured(says + openingMm[i] + " mm", "kWh/t", printed[i], got));
        assertThat(Math.abs(line.off())).as(line.toString()).isLessThan(40);
      }
    }
    double tPerH =
        mill(new Machine.Grinding(12.5 * J_PER_KG, 0.006, 0.5, 0.75, 0, Curve.NONE))
                .kgPerS(new Machine.Screen("s", 0.0015, 0))
            * 3.6;
    figure(
        at,
        "20 kW at 75 % load, 12.5 kWh/t at 6 mm, n = 0.5 (by hand): rate at 1.5 mm",
        "t/h",
        "0.600000000",
        tPerH,
        ROUNDED);
  }

  private static Machine.Grinding fitted(double[] openingMm, double[] kwhPerT) {
    SimpleRegression fit = new SimpleRegression();
    for (int i = 0; i < openingMm.length; i++) {
      fit.addData(Math.log(openingMm[i]), Math.log(kwhPerT[i]));
    }
    return new Machine.Grinding(
        Math.exp(fit.predict(0)) * J_PER_KG, 0.001, -fit.getSlope(), 0.8, 0, Curve.NONE);
  }

  private static Machine.HammerMill mill(Machine.Grinding law) {
    return new Machine.HammerMill(
        "mill",
        new Machine.Common(20_000, false, List.of()),
        law,
        List.of(new Machine.Screen("s", 0.0015, 0)),
        new hurdline.random.Constant(0),
        java.util.List.of());
  }

  @Test
  void seedCottonOfABale() {
    int at = 15;
    TABLE.section(
        at,
        "Seed cotton of a bale of lint",
        "Common practice: a 480 lb bale takes some 1,400 to 1,500 lb of picked seed cotton (from memory: *Cotton Ginners Handbook*, USDA, Agricultural Handbook "
            + "503, 1994). The example's cotton line is set up from facts like this one, so this shows that it was put together rightly, no more. Limit 3.4 %.");
    double turnout =
        ExactCasesTest.measures(
                PlantFile.read(Path.of("../line-configs/sweetgum-bend.yaml")).plant(), 1)
            .get("line.cotton_line.turnout.lint");
    Measured line =
        TABLE.add(
            at, new Measured("the example's cotton line, one year", "lb", "1450", 480 / turnout));
    assertThat(Math.abs(line.off())).isLessThan(3.4);
  }

  @Test
  void plantsSolvedByHand() throws IOException {
    int at = 16;
    TABLE.section(
        at,
        "Plants without randomness, solved by hand",
        "Each plant in `line-configs/exact` has a page that solves it by hand or by fractions: bins that fill and drain, blends, splits, loops, stops, "
            + "shifts, packages, screens, trucks, loads, loss in the yard. A figure counts as met within 1e-9 or what its page says.");
    int figures = 0;
    List<String> wrong = new ArrayList<>();
    List<String> cases = ExactCasesTest.cases();
    for (String name : cases) {
      figures += ExactCasesTest.compare(name, wrong);
    }
    figure(
        at,
        cases.size() + " plants: figures met",
        "figures",
        Integer.toString(figures),
        figures - wrong.size(),
        0);
  }

  private static void figure(
      int at, String claim, String unit, String said, double got, double limit) {
    Figure line = TABLE.add(at, new Figure(claim, unit, said, got));
    assertThat(Math.abs(line.off())).as(line.toString()).isLessThanOrEqualTo(limit);
  }
}
