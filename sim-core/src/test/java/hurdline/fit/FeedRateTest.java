package hurdline.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.FitCheckRow;
import hurdline.plant.Plant;
import hurdline.records.RecordsFolder;
import hurdline.simulation.TestPlant;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a feeder took in the hours in which no logged stop held it, by hand: 28 bales of half a
 * tonne in 7 of 8 hours are 2 t/h, 32 in 8 hours too.
 */
class FeedRateTest {
  @TempDir private Path folder;

  private FitCheckRow rate(int fourth) throws IOException {
    StringBuilder shifts = new StringBuilder("date,shift,from,to\n");
    StringBuilder made = new StringBuilder("date,shift,what,count\n");
    for (int day = 0; day < 6; day++) {
      LocalDate date = LocalDate.of(2027, 1, 4).plusDays(day);
      shifts.append(date).append(",day,06:00,14:00\n");
      made.append(date).append(",day,stalk fed,");
      made.append(day == 0 ? 28 : day == 3 ? fourth : 32).append('\n');
    }
    Files.writeString(folder.resolve("shifts.csv"), shifts);
    Files.writeString(folder.resolve("made.csv"), made);
    Files.writeString(
        folder.resolve("stops.csv"),
        "machine,began,ended,reason\nfeeder,2027-01-04 08:00,2027-01-04 09:00,choke\n");
    Plant plant =
        TestPlant.oneLine()
            .with("machines.feeder.stops", "{choke: {every: 9 h, counted: running, lasts: 30 min}}")
            .plant();
    LineLoads loads = new LineLoads(Map.of("stalk_line", Map.of("feeder", 1.0)));
    return new SeasonChecks(plant, RecordsFolder.read(folder, plant), loads)
        .all().stream()
            .filter(check -> check.what().startsWith("rate of feeder"))
            .findFirst()
            .orElseThrow();
  }

  @Test
  void theRateIsWhatWasFedOverRunningHours() throws IOException {
    FitCheckRow rate = rate(32);
    assertThat(rate.said()).isCloseTo(2, within(1e-9));
    assertThat(rate.found()).isCloseTo(2, within(1e-9));
    assertThat(rate.error()).isCloseTo(0, within(1e-9));
    assertThat(rate.rows()).isEqualTo(6);
    assertThat(rate.note()).startsWith("not identified");
  }

  /** 16 bales in a shift that waited for half of it without a word in the log: 172 in 47 h. */
  @Test
  void waitsThatNoLogHasAreInItAndInItsError() throws IOException {
    FitCheckRow rate = rate(16);
    assertThat(rate.found()).isCloseTo(0.5 * 172 / 47, within(1e-9));
    assertThat(rate.error()).isGreaterThan(0.1);
  }
}
