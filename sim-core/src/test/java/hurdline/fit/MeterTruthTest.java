package hurdline.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.FitCheckRow;
import hurdline.measure.Measure;
import hurdline.plant.Plant;
import hurdline.random.RandomStreams;
import hurdline.records.Folder;
import hurdline.records.MadeRecord;
import hurdline.records.RecordedYear;
import hurdline.records.Records;
import hurdline.records.RecordsFolder;
import hurdline.simulation.results.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Energy by screen from the meter of many simulated years of the example, whose energy is known. On
 * the coarse screen its mill waits for bags two fifths of the time and draws its no-load power.
 */
class MeterTruthTest {
  private static final int YEARS = 12;

  /** Student's t with 11 degrees of freedom, two-sided 0.1 %. */
  private static final double T = 4.44;

  @TempDir private Path folder;

  private Records year(int number) throws IOException {
    RecordedYear.write(Folder.example(), 1000 + number, folder);
    return RecordsFolder.read(folder, Folder.example());
  }

  private static List<MillDays.Day> days(Plant plant, Records records) {
    StopClocks clocks = new StopClocks(plant, records, new LineLoads(Map.of()));
    return new MillDays(plant, records, clocks, "mill").all().days();
  }

  private static List<FitCheckRow> screens(Plant plant, Records records) {
    StopClocks clocks = new StopClocks(plant, records, new LineLoads(Map.of()));
    return new EnergyFits(plant, records, clocks, new FittedDraws(new RandomStreams(1)))
        .checks().stream().filter(row -> row.what().startsWith("energy of")).toList();
  }

  /**
   * Each year's figure within three of its own errors, and the mean of all years within what years
   * differ by. kWh over tonnes, which takes the mill for evenly fed, is a fifth too high on the
   * coarse screen and fails both, or the trial shows nothing.
   */
  @Test
  void theMeanOfManyYearsIsTheTruth() throws IOException {
    Plant plant = Folder.example();
    double[][] off = new double[3][YEARS];
    double[] plain = new double[YEARS];
    for (int number = 0; number < YEARS; number++) {
      Records records = year(number + 1);
      List<FitCheckRow> screens = screens(plant, records);
      assertThat(screens).hasSize(3);
      for (int i = 0; i < 3; i++) {
        FitCheckRow row = screens.get(i);
        off[i][number] = row.found() / row.said() - 1;
        assertThat(Math.abs(off[i][number])).isLessThan(3 * row.error() / row.said());
        assertThat(row.error() / row.said()).as("scale of masses").isBetween(0.0099, 0.03);
      }
      List<MillDays.Day> coarse = days(plant, records).stream().filter(day -> day.isOf(0)).toList();
      plain[number] =
          coarse.stream().mapToDouble(MillDays.Day::kWh).sum()
                  / coarse.stream().mapToDouble(day -> day.t()[0]).sum()
                  / screens.get(0).said()
              - 1;
    }
    for (double[] of : off) {
      assertThat(Math.abs(mean(of))).isLessThan(T * error(of)).isLessThan(0.003);
    }
    assertThat(mean(plain)).isGreaterThan(0.15).isGreaterThan(T * error(plain));
  }

  private static double mean(double[] of) {
    return Arrays.stream(of).average().orElseThrow();
  }

  private static double error(double[] of) {
    double mean = mean(of);
    double squares = Arrays.stream(of).map(one -> (one - mean) * (one - mean)).sum();
    return Math.sqrt(squares / (of.length - 1) / of.length);
  }

  /**
   * What is written down is what was simulated: bags of each screen, but for one that is begun, and
   * the meter. With two screens changed round neither would be.
   */
  @Test
  void theRecordsAreOfTheYearThatWasSimulated() throws IOException {
    Plant plant = Folder.example();
    Outcome outcome = RecordedYear.write(plant, 1001, folder);
    Records records = RecordsFolder.read(folder, plant);
    List<Double> shares = new ArrayList<>();
    for (String screen : List.of("coarse", "medium", "fine")) {
      double milledT = outcome.value(Measure.MACHINE_SCREEN_MASS_IN.of("mill", screen));
      double madeT =
          records.made().stream()
                  .filter(row -> row.what().equals(screen + "_hurd"))
                  .mapToDouble(MadeRecord::massKg)
                  .sum()
              / 1000;
      shares.add(madeT / milledT);
    }
    assertThat(shares).allSatisfy(share -> assertThat(share).isCloseTo(1, within(0.003)));
    double meterKWh =
        records.power().stream()
            .mapToDouble(row -> row.machineKWh().getOrDefault("mill", 0.0))
            .sum();
    assertThat(meterKWh / outcome.value(Measure.MACHINE_ENERGY.of("mill")))
        .isCloseTo(1, within(0.002));
  }
}
