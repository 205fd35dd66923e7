package hurdline.fit;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.Capacity;
import hurdline.fit.AmountFit.AmountUnit;
import hurdline.plant.Plant;
import hurdline.plant.Stop;
import hurdline.plant.yaml.PlantFile;
import hurdline.records.Folder;
import hurdline.records.Records;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.RatedCapacity;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The shipped season was made from laws that are known. Each fitted mean must lie within three of
 * its own errors of the truth (of nine figures in ten seasons one would not, by chance), and must
 * be nearer than what clocks on the wall would give.
 */
class SeasonTruthTest {
  private static final Plant PLANT = Folder.plant();
  private static final Records RECORDS = Folder.season();

  /**
   * Shares of the feed that reach the machines whose stops are counted on mass; those of the plant
   * file.
   */
  private static final LineLoads LOADS =
      new LineLoads(
          Map.of(
              "stalk_line",
              Map.of("feeder", 1.0, "stalk_saw", 0.95, "mill", 0.672, "hurd_bagger", 0.672)));

  private static final Fit FIT = Fit.of(PLANT, RECORDS, LOADS, 1);

  /**
   * @param every true mean in hours, or in tonnes of the machine's own inflow for what is counted
   *     on mass
   * @param lasts true mean in minutes of repairs that were written down
   */
  @ParameterizedTest
  @CsvSource({
    "feeder.cleaning,    8,     25",
    "feeder.jam,         29.66, 11.35",
    "stalk_saw.choke,    16.2,  18.1",
    "stalk_saw.saw_change, 284, 192",
    "lint_cleaner.choke, 13.54, 15",
    "mill.hammers,       280,   270",
    "stalk_fans.power_dip, 432, 35",
    "gin_stands.choke,   13.6,  12"
  })
  void theTruthLiesWithinThreeErrors(String key, double every, double lasts) {
    StopFit fit =
        FIT.stops().stream().filter(stop -> stop.key().equals(key)).findFirst().orElseThrow();
    double inUnit = fit.every().unit() == AmountUnit.KILOGRAMS ? 1000 : 3600;
    assertThat(Math.abs(Math.log(fit.every().meanInUnit() / inUnit / every)))
        .isLessThan(3 * fit.every().errorShare() + 1e-3);
    assertThat(Math.abs(Math.log(fit.lasts().meanInUnit() / 60 / lasts)))
        .isLessThan(3 * fit.lasts().errorShare());
  }

  /**
   * The shipped records are a simulated year of the example, so its file is the truth: whatever is
   * counted on hours or mass lies within three errors of what it says.
   */
  @Test
  void theExamplesOwnYearGivesTheExamplesFigures() {
    Plant example = Folder.example();
    Fit fit = Fit.of(example, Folder.shipped(), loads(), 1);
    int known = 0;
    for (StopFit stop : fit.stops()) {
      Optional<Stop> said =
          example.machines().stream()
              .filter(machine -> machine.name().equals(stop.machine()))
              .flatMap(machine -> machine.common().stops().stream())
              .filter(one -> one.name().equals(stop.stop()))
              .findFirst();
      if (said.isEmpty() || Double.isNaN(stop.every().meanInUnit())) {
        continue;
      }
      known++;
      double off = Math.log(stop.every().meanInUnit() / said.get().every().mean());
      assertThat(off)
          .as(stop.key())
          .isBetween(-3 * stop.every().errorShare() - 1e-3, 3 * stop.every().errorShare() + 1e-3);
      if (!Double.isNaN(stop.lasts().meanInUnit())) {
        assertThat(Math.abs(Math.log(stop.lasts().meanInUnit() / said.get().lastsS().mean())))
            .as(stop.key())
            .isLessThan(3 * stop.lasts().errorShare() + 1e-3);
      }
    }
    assertThat(known).isGreaterThanOrEqualTo(5);
  }

  /** Shares that reach the example's machines, by its file. */
  private static LineLoads loads() {
    PlantFile file =
        PlantFile.read(
            Path.of(System.getProperty("hurdline.root"), "line-configs", "sweetgum-bend.yaml"));
    PlantOrigin origin =
        new PlantOrigin(file.variants(), "example", file.contentHash(), "0", List.of());
    PlantChanges none = new PlantChanges(PlantChanges.baseName(), List.of(), List.of());
    Map<String, Map<String, Double>> loads = new HashMap<>();
    for (Capacity.Line line : RatedCapacity.of(origin, none).capacity().lines()) {
      Map<String, Double> of = new HashMap<>();
      line.machines().forEach(machine -> of.put(machine.machine(), machine.loadTPerT()));
      loads.put(line.line(), of);
    }
    return new LineLoads(loads);
  }

  @Test
  void aCleaningEveryEightHoursIsAPlanAndNoLaw() {
    assertThat(stop("feeder.cleaning").every().taken()).isInstanceOf(Taken.Fixed.class);
  }

  @Test
  void theNewSawPartsTheChokesInTwo() {
    StopFit choke = stop("stalk_saw.choke");
    assertThat(choke.earlier()).hasSize(1);
    assertThat(choke.earlier().get(0).meanInUnit() / 3600).isBetween(7.0, 12.0);
    assertThat(choke.every().meanInUnit() / 3600).isGreaterThan(14);
  }

  @Test
  void stopsThatComeInClustersAreToldAndTheirErrorIsLarger() {
    assertThat(stop("lint_cleaner.belt").warnings())
        .anyMatch(said -> said.startsWith("stops come in clusters"));
    assertThat(stop("lint_cleaner.choke").warnings()).isEmpty();
  }

  @Test
  void aStopThatTheFileDoesNotHaveIsNew() {
    assertThat(FIT.stops().stream().filter(StopFit::isNew).map(StopFit::key).toList())
        .isEqualTo(
            List.of("feeder.jam", "lint_cleaner.belt", "stalk_fans.power_dip", "gin_stands.choke"));
  }

  /**
   * The sum of what was fed: 194 tickets give the bale, the shift sheets their number. True:
   * 5,596.5 t less two shifts that were lost.
   */
  @Test
  void whatWasFedIsFound() {
    assertThat(FIT.fedKg() / 1000).isBetween(5_500.0, 5_620.0);
  }

  private static StopFit stop(String key) {
    return FIT.stops().stream().filter(stop -> stop.key().equals(key)).findFirst().orElseThrow();
  }
}
