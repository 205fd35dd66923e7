package hurdline.study.backtest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.answer.BacktestAnswer;
import hurdline.answer.BacktestAnswer.Kind;
import hurdline.answer.BacktestAnswer.Verdict;
import hurdline.answer.RunAnswer;
import hurdline.measure.Measure;
import hurdline.plant.Delivery;
import hurdline.plant.InputDraws;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.SeasonEntry;
import hurdline.plant.yaml.PlantFile;
import hurdline.records.RecordsFolder;
import hurdline.simulation.TestPlant;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A season that the plant itself made, found again; and one that another plant made. */
class BacktestTest {
  private static final LocalDate FIRST = LocalDate.of(2027, 1, 4); // a Monday
  private static final int DAYS = 42;
  private static final String EVERY = "machines.feeder.stops.choke.every";

  @TempDir private Path folder;

  private static TestPlant plant(String rate, String everyH) {
    return TestPlant.oneLine()
        .shift("2027-01-04", FIRST.plusDays(DAYS - 1).toString(), "06:00", "14:00")
        .feeds(rate)
        .with(
            "machines.feeder.stops",
            "{choke: {every: {exponential: {mean: "
                + everyH
                + "}}, counted: running, lasts: {exponential: {mean: 30 min}}}}");
  }

  private static PlantChanges changes(TestPlant plant) {
    return new PlantChanges(PlantChanges.baseName(), List.of(), plant.changes());
  }

  private static PlantOrigin source(TestPlant plant) {
    PlantFile file = plant.file();
    return new PlantOrigin(file.variants(), "test.yaml", file.contentHash(), "0", List.of());
  }

  private static RunSettings effort(int replications, long seed) {
    return new RunSettings(replications, Optional.empty(), seed, 2, Optional.empty());
  }

  /** What a plant fed week by week in a year of its own, as a season's records have it. */
  private void record(TestPlant plant) throws IOException {
    RunAnswer year =
        new Run(source(plant), changes(plant), effort(1, 777))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
    StringBuilder shifts = new StringBuilder("date,shift,from,to\n");
    FIRST.datesUntil(FIRST.plusDays(DAYS)).forEach(d -> shifts.append(d + ",day,06:00,14:00\n"));
    StringBuilder made = new StringBuilder("date,shift,what,mass,unit\n");
    year.weeks().stream()
        .filter(row -> row.measure().equals(Measure.MASS_FED.of("stalk")))
        .forEach(row -> made.append(row.from() + ",day,stalk fed," + 1000 * row.mean() + ",kg\n"));
    Files.writeString(folder.resolve("shifts.csv"), shifts);
    Files.writeString(folder.resolve("made.csv"), made);
    Files.writeString(folder.resolve("yard.csv"), "date,crop,count\n2027-01-04,stalk,9000\n");
  }

  private BacktestAnswer backtest(TestPlant plant, RunSettings effort) {
    PlantOrigin source = source(plant);
    PlantChanges chosen = changes(plant);
    Plant changed = source.variants().with(chosen.asArray());
    return new Backtest(source, chosen, RecordsFolder.read(folder, changed), "records", effort)
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  private static BacktestAnswer.Series fed(BacktestAnswer answer) {
    return answer.series().stream().filter(of -> of.kind() == Kind.FED).findFirst().orElseThrow();
  }

  @Test
  void theSeasonOfThePlantItselfIsNoReasonToDoubtIt() throws IOException {
    record(plant("2 t/h", "9 h"));
    BacktestAnswer answer = backtest(plant("2 t/h", "9 h"), effort(99, 1));
    BacktestAnswer.Series fed = fed(answer);
    assertThat(fed.chance()).isGreaterThan(0.05);
    assertThat(fed.verdict()).isIn(Verdict.AGREES, Verdict.CANNOT_TELL);
    assertThat(answer.periods()).hasSize(6).allMatch(of -> of.p05() <= of.p95());
    assertThat(answer.header().from()).isEqualTo(FIRST);
  }

  /** Bales lose a tenth of their mass a month in the yard; counted, they are as many as ever. */
  @Test
  void balesThatWasteAwayAreComparedByTheirNumber() throws IOException {
    TestPlant wasting = plant("2 t/h", "9 h").with("yard.places.barn.loss", "10 %/month");
    record(wasting);
    RunAnswer year =
        new Run(source(wasting), changes(wasting), effort(1, 777))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
    double bales = year.mean(Measure.INTAKE_FED.of("stalk"));
    double tonnes = year.mean(Measure.MASS_FED.of("stalk"));
    assertThat(tonnes / bales).isLessThan(0.48); // of bales of half a tonne
    StringBuilder made = new StringBuilder("date,shift,what,count\n");
    year.weeks().stream()
        .filter(row -> row.measure().equals(Measure.MASS_FED.of("stalk")))
        .forEach(
            row ->
                made.append(row.from() + ",day,stalk fed," + row.mean() * bales / tonnes + "\n"));
    Files.writeString(folder.resolve("made.csv"), made);
    BacktestAnswer.Series fed = fed(backtest(wasting, effort(99, 1)));
    assertThat(fed.unit()).isEqualTo("bales");
    assertThat(Math.abs(fed.off())).isLessThan(0.02);
  }

  @Test
  void aSeasonOfAFasterPlantIsFoundAndByHowMuch() throws IOException {
    record(plant("2.3 t/h", "9 h"));
    BacktestAnswer.Series fed = fed(backtest(plant("2 t/h", "9 h"), effort(99, 1)));
    assertThat(fed.verdict()).isIn(Verdict.MISSES, Verdict.PROBABLY_OFF);
    assertThat(fed.off()).isBetween(0.1, 0.2);
    assertThat(fed.low95()).isPositive();
  }

  /** Chokes of the season came twice as often as the middle of the draws has them. */
  @Test
  void theInputThatWouldHaveToMoveIsNamed() throws IOException {
    record(plant("2 t/h", "3 h"));
    InputDraws draws =
        new InputDraws(
            "draws.csv",
            List.of(EVERY),
            IntStream.range(0, 99)
                .mapToObj(i -> List.of("{exponential: {mean: " + (3 + 0.08 * i) + " h}}"))
                .toList());
    BacktestAnswer answer = backtest(plant("2 t/h", "7 h"), effort(99, 1).with(draws));
    BacktestAnswer.Move move = answer.moves().get(0);
    assertThat(move.input()).isEqualTo(EVERY);
    assertThat(move.was()).isBetween(6.8, 7.0);
    assertThat(move.becomes()).isLessThan(5);
    assertThat(move.told()).isGreaterThan(0.5);
  }

  @Test
  void shiftsStockAndLoadsAreThoseOfTheRecords() throws IOException {
    Files.writeString(
        folder.resolve("shifts.csv"),
        "date,shift,from,to,rest from,rest to\n2027-01-04,day,06:00,14:00,10:00,10:30\n"
            + "2027-01-05,day,06:00,14:00,10:00,10:30\n2027-01-07,day,06:00,12:00,,\n");
    Files.writeString(
        folder.resolve("tickets.csv"),
        "ticket,crop,gate in,net,unit,bales\n1,stalk,2027-01-05 08:15,5000,kg,10\n"
            + "2,stalk,2027-01-04 09:00,2600,kg,\n");
    Files.writeString(folder.resolve("yard.csv"), "date,crop,count\n2027-01-04,stalk,120\n");
    Plant file =
        source(plant("2 t/h", "9 h")).variants().with(changes(plant("2 t/h", "9 h")).asArray());
    Plant withGate =
        PlantFile.of(
                "gate.yaml",
                plant("2 t/h", "9 h").text()
                    + "deliveries: {stalk: {loads: {every: 1 h, bales: 1}}}\n")
            .plant();
    Plant past = new PastSeason(RecordsFolder.read(folder, file)).of(withGate);
    assertThat(past.yard().onHand()).containsEntry("stalk", 120);
    assertThat(past.season())
        .extracting(
            entry -> ((SeasonEntry.Campaign) entry).from(),
            entry -> ((SeasonEntry.Campaign) entry).to())
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(LocalDate.of(2027, 1, 4), LocalDate.of(2027, 1, 5)),
            org.assertj.core.groups.Tuple.tuple(
                LocalDate.of(2027, 1, 7), LocalDate.of(2027, 1, 7)));
    assertThat(past.deliveries().get(0).loads().orElseThrow().recorded())
        .containsExactly(
            new Delivery.Recorded(9 * 3600, 5), new Delivery.Recorded((24 + 8.25) * 3600, 10));
  }

  @Test
  void recordsWithoutShiftsAreRefused() throws IOException {
    Files.writeString(folder.resolve("yard.csv"), "date,crop,count\n2027-01-04,stalk,9000\n");
    assertThatThrownBy(() -> backtest(plant("2 t/h", "9 h"), effort(99, 1)))
        .isInstanceOf(ProblemsException.class)
        .satisfies(
            e ->
                assertThat(((ProblemsException) e).lines())
                    .containsExactly(
                        "test.yaml: records holds no shift, so the season's hours are not known;"
                            + " expected a shifts.csv"));
  }
}
