package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.Variants;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Who comes by chance; what follows without chance is among the exact cases. */
class CrewAttendanceTest {
  private static final Variants FILE =
      PlantFile.read(Path.of("../line-configs/exact/short_crew.yaml")).variants();
  private static final int DAYS = 3_000;
  private static final String SHORT = Measure.CREW_SHORT.of("kenaf_line");
  private static final String ABSENT = Measure.CREW_ABSENT.of("kenaf_line");

  private static Change value(String path, String value) {
    return new Change.Value(path, value);
  }

  /** Kenaf alone, one shift of 8 h a day, a crew of five of which four are enough. */
  private static Plant alone(String crew) {
    return campaign("2027-03-01", "2035-05-17", crew);
  }

  private static Plant campaign(String from, String to, String crew) {
    return FILE.with(
        value("calendar.to", "2035-05-17"),
        value(
            "season", "[{line: kenaf_line, from: %s, to: %s, shifts: [day]}]".formatted(from, to)),
        value("crews", "{kenaf_line: {day: 5}}"),
        value("hands", crew),
        value("yard.places.barn.holds", "900000 bales"),
        value("yard.on_hand", "{kenaf: 900000 bales}"));
  }

  private static Outcome run(Plant plant) {
    return Ready.replication(plant).run(new RandomStreams(1), 1, null);
  }

  /**
   * Fewer than 4 of 5 come with chance 1 − 0.9⁵ − 5 · 0.9⁴ · 0.1 = 0.08146, in 3,000 shifts give or
   * take 0.0050; missing in those that are run are 5 · 0.9⁴ · 0.1 = 0.32805 hands a shift, give or
   * take 0.0086. Bounds of 3.5 standard errors; one hand more is seen.
   */
  @Test
  void aCrewIsShortAsOftenAsTheBinomialLawSays() {
    Outcome year = run(alone("{attendance: {kenaf_line: {day: {least: 4, absence: 10 %}}}}"));
    assertThat(year.value(SHORT) / 8 / DAYS).isCloseTo(0.08146, within(0.0175));
    assertThat(year.value(ABSENT) / 8 / DAYS).isCloseTo(0.32805, within(0.03));
    Outcome fewer = run(alone("{attendance: {kenaf_line: {day: {least: 5, absence: 10 %}}}}"));
    assertThat(fewer.value(SHORT) / 8 / DAYS).isCloseTo(1 - 0.59049, within(0.0315));
    assertThat(fewer.value(ABSENT)).isZero();
  }

  /** A helper stands in for the one who is missing. */
  @Test
  void sharedHandsFillUpACrew() {
    String helped =
        "{attendance: {kenaf_line: {day: {least: 5, absence: 10 %, shares: helpers}}},"
            + " shared: {helpers: {hands: 5}}}";
    Outcome year = run(alone(helped));
    assertThat(year.value(SHORT)).isZero();
    assertThat(year.value(Measure.CREW_LABOR_HOURS.of("kenaf_line"))).isEqualTo(DAYS * 8 * 5.0);
  }

  /** Crews of which all come are as if nothing were said. */
  @Test
  void whoeverAlwaysComesChangesNothing() {
    Outcome said = run(alone("{attendance: {kenaf_line: {day: {least: 5}}}}"));
    Outcome plain = run(alone("{}"));
    for (Outcome.Column column : plain.columns()) {
      double was = plain.value(column.name());
      if (!Double.isNaN(was)) {
        assertThat(said.value(column.name())).as(column.name()).isEqualTo(was);
      }
    }
  }

  /** Days are drawn whether a line asks or not: two parts of a season are short as the whole is. */
  @Test
  void aCampaignThatBeginsLaterMeetsTheSameAbsences() {
    double whole = shortH("2027-03-01", "2035-05-17");
    double first = shortH("2027-03-01", "2030-03-31");
    double second = shortH("2030-04-01", "2035-05-17");
    assertThat(first).isPositive();
    assertThat(second).isPositive();
    assertThat(first + second).isEqualTo(whole);
  }

  private static double shortH(String from, String to) {
    return run(campaign(from, to, "{attendance: {kenaf_line: {day: {least: 4, absence: 10 %}}}}"))
        .value(SHORT);
  }
}
