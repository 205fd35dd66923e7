package hurdline.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.FitCheckRow;
import hurdline.answer.FitRow;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.records.Folder;
import hurdline.records.Records;
import hurdline.records.RecordsFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A mill's energy by screen from its meter, on seasons of which it is known. */
class EnergyFitsTest {
  private static final int SEASONS = 40;
  private static final String ENERGY = "machines.mill.grinding.energy";
  private static final String EXPONENT = "machines.mill.grinding.exponent";

  @TempDir private Path folder;

  private static EnergyFits fits(Plant plant, Records records) {
    StopClocks clocks = new StopClocks(plant, records, new LineLoads(Map.of()));
    return new EnergyFits(plant, records, clocks, new FittedDraws(new RandomStreams(1)));
  }

  private EnergyFits fits(Plant plant, int number, String meter, boolean withStops)
      throws IOException {
    new MilledSeason(number, meter).write(folder, withStops);
    return fits(plant, RecordsFolder.read(folder, plant));
  }

  private static FitRow row(EnergyFits fits, String key) {
    return fits.rows().stream().filter(row -> row.key().equals(key)).findFirst().orElseThrow();
  }

  /**
   * In 40 seasons the 95 % intervals hold the truth 34 times or more: of right ones fewer would in
   * 0.5 % (binomial). The coarse screen, on which the mill idles in stops, comes out right on
   * average; by kWh over tonnes it is 3 % high, or the trial shows nothing.
   */
  @Test
  void theTruthLiesInItsInterval() throws IOException {
    Plant plant = MilledSeason.plant();
    int energy = 0;
    int exponent = 0;
    int screens = 0;
    double coarse = 0;
    double plain = 0;
    for (int number = 1; number <= SEASONS; number++) {
      EnergyFits fits = fits(plant, number, "mill kWh", true);
      energy += holds(row(fits, ENERGY), MilledSeason.E0);
      exponent += holds(row(fits, EXPONENT), MilledSeason.N);
      for (int screen = 0; screen < 3; screen++) {
        FitCheckRow check = fits.checks().get(screen);
        screens +=
            Math.abs(check.found() - MilledSeason.energy(screen)) < 1.96 * check.error() ? 1 : 0;
      }
      coarse += fits.checks().get(0).found() / MilledSeason.energy(0) / SEASONS;
      plain += plain(plant) / MilledSeason.energy(0) / SEASONS;
    }
    assertThat(energy).as("energy").isGreaterThanOrEqualTo(34);
    assertThat(exponent).as("exponent").isGreaterThanOrEqualTo(34);
    assertThat(screens).as("screens of 120").isGreaterThanOrEqualTo(106);
    assertThat(coarse).isCloseTo(1, within(0.005));
    assertThat(plain).isGreaterThan(1.02);
  }

  /** kWh over tonnes of the days on the coarse screen alone. */
  private double plain(Plant plant) {
    Records records = RecordsFolder.read(folder, plant);
    StopClocks clocks = new StopClocks(plant, records, new LineLoads(Map.of()));
    List<MillDays.Day> days =
        new MillDays(plant, records, clocks, "mill")
            .all().days().stream().filter(day -> day.isOf(0)).toList();
    return days.stream().mapToDouble(MillDays.Day::kWh).sum()
        / days.stream().mapToDouble(day -> day.t()[0]).sum();
  }

  private static int holds(FitRow row, double truth) {
    return row.low95() <= truth && truth <= row.high95() ? 1 : 0;
  }

  @Test
  void theFigureIsWrittenAsThePlantFileHasItWithJointDraws() throws IOException {
    Plant plant = MilledSeason.plant();
    EnergyFits fits = fits(plant, 1, "mill kWh", true);
    FitRow energy = row(fits, ENERGY);
    FitRow exponent = row(fits, EXPONENT);
    assertThat(energy.patch()).matches("1[12](\\.\\d+)? kWh/t");
    assertThat(energy.said()).isEqualTo("10 kWh/t");
    assertThat(exponent.patch()).matches("0\\.\\d+");
    assertThat(energy.errorShare()).isBetween(0.008, 0.02);
    assertThat(energy.covariance()).hasSize(4);
    assertThat(energy.draws()).hasSize(200);
    double[] lnE =
        energy.draws().stream()
            .mapToDouble(d -> Math.log(Double.parseDouble(d.split(" ")[0])))
            .toArray();
    double[] n = exponent.draws().stream().mapToDouble(Double::parseDouble).toArray();
    double sdE = Math.sqrt(energy.covariance().get(0));
    double sdN = Math.sqrt(energy.covariance().get(3));
    assertThat(sd(lnE) / sdE).isBetween(0.8, 1.2);
    assertThat(sd(n) / sdN).isBetween(0.8, 1.2);
    double said = energy.covariance().get(1) / sdE / sdN;
    double drawn =
        new org.apache.commons.math3.stat.correlation.PearsonsCorrelation().correlation(lnE, n);
    assertThat(drawn).isCloseTo(said, within(0.25));
  }

  private static double sd(double[] of) {
    return Math.sqrt(new org.apache.commons.math3.stat.descriptive.moment.Variance().evaluate(of));
  }

  @Test
  void whatIsNotInTheRecordsIsSaidAndLeft() throws IOException {
    Plant plant = MilledSeason.plant();
    FitRow without = row(fits(plant, 1, "press kWh", true), ENERGY);
    assertThat(without.isFitted()).isFalse();
    assertThat(without.notes())
        .containsExactly("no column of power.csv is its meter: one headed \"mill kWh\" would be");
    Plant alike =
        PlantFile.of(
                "mill.yaml",
                MilledSeason.PLANT.replace(
                    "coarse: large, medium: middling", "coarse: large, medium: large"))
            .plant();
    assertThat(row(fits(alike, 1, "mill kWh", true), ENERGY).notes())
        .containsExactly(
            "no record says which screen was in: screens have no products of their own");
  }

  /** The hour's meter may be called otherwise, and its blank hours are not 0. */
  @Test
  void aDayWithoutTheMetersReadingIsLeftOut() throws IOException {
    Plant plant = MilledSeason.plant();
    new MilledSeason(1, "Mill (kWh)").write(folder, true);
    String text = java.nio.file.Files.readString(folder.resolve("power.csv"));
    int days = row(fits(plant, RecordsFolder.read(folder, plant)), ENERGY).rows();
    java.nio.file.Files.writeString(
        folder.resolve("power.csv"),
        text.replaceFirst("(2027-01-05 09:00,[0-9.]+),[0-9.]+", "$1,"));
    Records read = RecordsFolder.read(folder, plant);
    assertThat(row(fits(plant, read), ENERGY).rows()).isEqualTo(days - 1);
    assertThat(read.cautions()).isEmpty();
  }

  /** The shipped year is a simulated one of the example, so its file is the truth. */
  @Test
  void theExamplesMeterGivesTheExamplesEnergy() {
    Plant example = Folder.example();
    EnergyFits fits = fits(example, Folder.shipped());
    FitRow energy = row(fits, ENERGY);
    FitRow exponent = row(fits, EXPONENT);
    assertThat(energy.isFitted()).isTrue();
    assertThat(Math.abs(energy.mean() - 12)).isLessThan(3 * 12 * energy.errorShare());
    assertThat(Math.abs(exponent.mean() - 0.75))
        .isLessThan(3 * exponent.errorShare() * exponent.mean());
    List<String> said = fits.checks().stream().map(FitCheckRow::what).toList();
    assertThat(said).contains("energy of mill on the screen coarse");
  }
}
