package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.plant.yaml.PlantFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Lines without bins against the formulas of the literature.
 *
 * <p>Each comparison is of the mean over ten years of simulate with its reference, within 3.5
 * standard errors: 0.7 % false alarms each (t with 9 degrees of freedom) were the seeds not fixed.
 * Controls say what it must tell apart.
 *
 * @see "J. A. Buzacott, Automatic transfer lines with buffer stocks, Int. J. Production Research 5
 *     (1967), 183-200: a line without stocks runs 1 / (1 + sum of mean repair / mean running time)
 *     of its hours (from memory)"
 */
class UnbufferedLineTest {
  private static final double ERRORS = 3.5;
  private static final double BETWEEN_H = 10;
  private static final double REPAIR_H = 0.5;

  private static final String EVERY_RUNNING = "{exponential: {mean: 10 h}}";
  private static final String EVERY_WORKED = "{exponential: {mean: 40 t}}";
  private static final String LASTS = "{exponential: {mean: 30 min}}";

  @ParameterizedTest
  @CsvSource({"2", "5", "10"})
  void stopsCountedOnWorkAddUp(int machines) {
    double formula = UnbufferedLine.T_PER_H / (1 + machines * REPAIR_H / BETWEEN_H);
    double independent =
        UnbufferedLine.T_PER_H * Math.pow(BETWEEN_H / (BETWEEN_H + REPAIR_H), machines);
    for (String counted : new String[] {"mass", "running"}) {
      String every = counted.equals("mass") ? EVERY_WORKED : EVERY_RUNNING;
      double[] got = throughput(new UnbufferedLine(machines, counted, every, LASTS, 365), machines);
      assertThat(errors(formula, got)).as(counted).isLessThan(ERRORS);
      assertThat(errors(formula * 1.01, got)).as("1 % more").isGreaterThan(ERRORS);
      if (machines > 2) {
        assertThat(errors(independent, got)).as("as if by the calendar").isGreaterThan(ERRORS);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"2", "5", "10"})
  void availabilitiesOfStopsByTheCalendarMultiply(int machines) {
    double product =
        UnbufferedLine.T_PER_H * Math.pow(BETWEEN_H / (BETWEEN_H + REPAIR_H), machines);
    double[] got =
        throughput(
            new UnbufferedLine(machines, "calendar", EVERY_RUNNING, LASTS, 365), 100 + machines);
    assertThat(errors(product, got)).isLessThan(ERRORS);
    assertThat(errors(product * 1.01, got)).as("1 % more").isGreaterThan(ERRORS);
  }

  /**
   * The share of time down is mean repair over mean cycle whatever the laws; here gamma amounts,
   * triangular repairs.
   */
  @Test
  void aMachineAloneIsDownForMeanRepairOverMeanCycle() {
    UnbufferedLine line =
        new UnbufferedLine(
            1,
            "calendar",
            "{gamma: {mean: 10 h, sd: 4 h}}",
            "{triangular: {low: 10 min, mode: 20 min, high: 60 min}}",
            365);
    double[] down =
        Repeats.meanAndError(new Repeats(line.plant(), 7, 10).of("machine.m01.hours.down"));
    assertThat(errors(8760 * 0.5 / 10.5, down)).isLessThan(ERRORS);
    assertThat(errors(8760 * 0.5 / 10, down)).as("repairs not in the cycle").isGreaterThan(ERRORS);
  }

  @Test
  void onRunningCountsNoTwoMachinesAreEverDownTogether() {
    assertThat(downAndRunningH("running")).isCloseTo(60 * 24, within(1e-6));
    assertThat(downAndRunningH("calendar"))
        .as("by the calendar they are")
        .isGreaterThan(60 * 24 + 5);
  }

  private static double downAndRunningH(String counted) {
    Repeats one =
        new Repeats(new UnbufferedLine(6, counted, EVERY_RUNNING, LASTS, 60).plant(), 3, 1);
    double sum = one.of("machine.feeder.hours.full_rate")[0];
    for (int m = 1; m <= 6; m++) {
      sum += one.of("machine." + UnbufferedLine.name(m) + ".hours.down")[0];
    }
    return sum;
  }

  /** A count "due at t, corrected at each change" drifts; one against a running total does not. */
  @Test
  void aFixedAmountIsMetExactlyHoweverOftenTheNeighbourStops() {
    String machines =
        """
          feeder: {kind: bale-feeder}
          restless: {kind: conveyor, stops: {jam: {every: {exponential: {mean: 3 min}}, counted: running, lasts: {exponential: {mean: 6 s}}}}}
          steady: {kind: conveyor, stops: {knives: {every: 700 kg, counted: mass, lasts: 0 min}}}
        """;
    String steps =
        "      feeder: {rate: 4 t/h, to: restless}\n      restless: {to: steady}\n      steady: {to: tow}";
    Repeats one = new Repeats(UnbufferedLine.of(machines, steps, 365), 5, 1);
    assertThat(one.of("machine.restless.stop.jam.count")[0]).isGreaterThan(100_000);
    assertThat(one.of("machine.steady.stop.knives.count")[0])
        .isEqualTo(Math.floor(one.of("machine.steady.mass_in")[0] / 0.7));
  }

  /** At half its own rate a machine's tonnes come half as fast, its running hours do not. */
  @Test
  void aSlowedMachineWearsByTheTonneAndAgesByTheHour() {
    String text =
        UnbufferedLine.text(
            """
              feeder: {kind: bale-feeder}
              saw: {kind: separating-saw, stops: {hours: {every: {gamma: {mean: 20 h, sd: 5 h}}, counted: running, lasts: 1 min}}}
              mill: {kind: conveyor, stops: {tonnes: {every: {gamma: {mean: 80 t, sd: 20 t}}, counted: mass, lasts: 1 min}}}
            """,
            "      feeder: {rate: 2 t/h, to: saw}\n      saw: {rate: 4 t/h, to: mill}\n      mill: {rate: 4 t/h, to: tow}",
            365);
    Repeats repeats = new Repeats(PlantFile.of("slow.yaml", text).plant(), 11, 10);
    double runningH = 8760;
    double[] byHour = Repeats.meanAndError(repeats.of("machine.saw.stop.hours.count"));
    double[] byTonne = Repeats.meanAndError(repeats.of("machine.mill.stop.tonnes.count"));
    // a fresh renewal process of mean m and variance v has T/m + (v/m² − 1)/2 events by T (Smith
    // 1954, from memory)
    double fresh = (1.0 / 16 - 1) / 2;
    assertThat(errors(runningH / 20 + fresh, byHour)).isLessThan(ERRORS);
    assertThat(errors(2 * runningH / 80 + fresh, byTonne)).isLessThan(ERRORS);
    assertThat(errors(runningH / 20 + fresh, byTonne))
        .as("as if by the hour")
        .isGreaterThan(ERRORS);
  }

  private static double[] throughput(UnbufferedLine line, long seed) {
    double[] mass = Repeats.meanAndError(new Repeats(line.plant(), seed, 10).of("mass.stalk.fed"));
    double hours = line.days() * 24.0;
    return new double[] {mass[0] / hours, mass[1] / hours};
  }

  private static double errors(double exact, double[] got) {
    return Math.abs(got[0] - exact) / got[1];
  }
}
