package hurdline.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.fit.Observations.Seen;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Fits set beside R 4.2.2 (survival 3.5-3, fitdistrplus 1.1-8, goftest 1.2-3) on 23 sets of
 * amounts, ten of them published, and beside SciPy 1.17.1 as a second reference. {@code
 * sources.csv} says where each set is from; {@code cases.csv} has the amounts with status 1 whole,
 * 0 not ended, 3 between value and upto.
 */
class LawOracleTest {
  private static final Map<String, Observations> CASES = cases();

  static Stream<CSVRecord> fits() {
    return rows("fits.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("fits")
  void theFitIsThatOfR(CSVRecord r) {
    LawFit fit = fit(r.get("case"), r.get("distribution"));
    assertThat(fit.logLikelihood()).isCloseTo(number(r, "loglik"), within(1e-6));
    LawFit uncut =
        new LawFit(
            fit.law(), fit.t(), fit.covariance(), fit.logLikelihood(), fit.ended(), fit.unit(), 0);
    assertThat(uncut.mean() / number(r, "mean")).isCloseTo(1, within(1e-5));
    assertThat(Math.sqrt(fit.covariance()[0][0]) / number(r, "se_t1")).isCloseTo(1, within(1e-3));
    if (fit.law().parameters() == 2 && fit.law() != Law.GAMMA) {
      assertThat(Math.sqrt(fit.covariance()[1][1]) / number(r, "se_t2")).isCloseTo(1, within(1e-3));
    }
    if (!r.get("ad").equals("NA")) {
      assertThat(AndersonDarling.of(fit, CASES.get(r.get("case"))))
          .isCloseTo(number(r, "ad"), within(1e-4));
    }
  }

  @Test
  void theSecondReferenceAgrees() {
    List<CSVRecord> rows = rows("scipy.csv");
    assertThat(rows).hasSize(92);
    for (CSVRecord r : rows) {
      assertThat(fit(r.get("case"), r.get("distribution")).logLikelihood())
          .as(r.toString())
          .isCloseTo(number(r, "loglik"), within(1e-6));
    }
  }

  /**
   * NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3: shape 1.7208, scale 606.5280, −ℓ
   * 75.135.
   */
  @Test
  void theHandbooksExampleComesOutAsPrinted() {
    LawFit fit = fit("nist_8413", "weibull");
    assertThat(Math.exp(fit.t()[0])).isCloseTo(1.7208, within(5e-5));
    assertThat(Math.exp(fit.t()[1]) * fit.unit()).isCloseTo(606.5280, within(5e-4));
    assertThat(fit.logLikelihood()).isCloseTo(-75.135, within(5e-4));
    assertThat(-2 * fit.logLikelihood() + 4).as("AIC as printed").isCloseTo(154.27, within(5e-3));
  }

  /** A table that is off by a thousandth must be seen. */
  @Test
  void aWrongTableIsSeen() {
    LawFit fit = fit("bearings", "weibull");
    assertThat(fit.logLikelihood()).isNotCloseTo(-113.691959 * 1.001, within(1e-6));
  }

  static LawFit fit(String set, String law) {
    return MaximumLikelihood.fit(Law.valueOf(law.toUpperCase(Locale.ROOT)), CASES.get(set), 0)
        .orElseThrow();
  }

  private static Map<String, Observations> cases() {
    Map<String, List<Seen>> seen = new LinkedHashMap<>();
    Map<String, Double> cut = new LinkedHashMap<>();
    for (CSVRecord r : rows("cases.csv")) {
      double value = number(r, "value");
      double high =
          switch (r.get("status")) {
            case "1" -> value;
            case "0" -> Double.POSITIVE_INFINITY;
            default -> number(r, "upto");
          };
      seen.computeIfAbsent(r.get("case"), c -> new ArrayList<>())
          .add(new Seen(value, high, number(r, "entry")));
      cut.put(r.get("case"), number(r, "cuthigh"));
    }
    Map<String, Observations> cases = new LinkedHashMap<>();
    seen.forEach((name, all) -> cases.put(name, Observations.of(all, cut.get(name))));
    return cases;
  }

  private static double number(CSVRecord r, String column) {
    String cell = r.get(column);
    return cell.equals("Inf")
        ? Double.POSITIVE_INFINITY
        : cell.isEmpty() || cell.equals("NA") ? Double.NaN : Double.parseDouble(cell);
  }

  private static List<CSVRecord> rows(String file) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream in = LawOracleTest.class.getResourceAsStream(file);
        CSVParser parser =
            CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
