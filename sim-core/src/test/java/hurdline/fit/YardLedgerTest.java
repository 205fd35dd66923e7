package hurdline.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.account.Trace;
import hurdline.measure.EventKind;
import hurdline.plant.Plant;
import hurdline.random.RandomStreams;
import hurdline.records.Records;
import hurdline.records.RecordsFolder;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.TestPlant;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What bales have left of their mass when they are fed, by hand and beside the simulation. */
class YardLedgerTest {
  private static final double MONTH_D = 365.25 / 12;
  private static final LocalDate FIRST = LocalDate.of(2027, 1, 1);

  @TempDir private Path folder;

  private static TestPlant plant(String pick) {
    return TestPlant.oneLine()
        .days(90)
        .says(
            "yard",
            "{on_hand: {stalk: 30 bales}, pick: "
                + pick
                + ", places: {shed: {holds: 20 bales, loss: 1 %/month}, open: {holds: 100 bales,"
                + " loss: 4 %/month}}}");
  }

  private YardLedger ledger(TestPlant test) {
    Plant plant = test.plant();
    Records records = RecordsFolder.read(folder, plant);
    return new YardLedger(plant, records, Map.of("stalk", 500.0));
  }

  /** 20 bales in the shed and 10 in the open; ten come on the eleventh, into what is free. */
  private void records() throws IOException {
    Files.writeString(
        folder.resolve("shifts.csv"),
        "date,shift,from,to\n2027-01-01,day,06:00,14:00\n2027-01-11,day,06:00,14:00\n2027-01-21,day,06:00,14:00\n");
    Files.writeString(
        folder.resolve("made.csv"),
        "date,shift,what,count\n2027-01-11,day,stalk fed,12\n2027-01-21,day,stalk fed,12\n2027-01-21,swing,stalk fed,40\n");
    Files.writeString(
        folder.resolve("tickets.csv"),
        "ticket,gate in,net,unit,bales\n1,2027-01-11 12:00,5000,kg,10\n");
  }

  /** After so many days and hours at a loss a month. */
  private static double left(double loss, int days, int hours) {
    return Math.pow(1 - loss, (days + hours / 24.0) / MONTH_D);
  }

  @Test
  void theOldestGoFirstEachByThePlaceInWhichItLay() throws IOException {
    records();
    YardLedger ledger = ledger(plant("oldest-first"));
    assertThat(ledger.kept("stalk", FIRST.plusDays(10), "day"))
        .isCloseTo(left(0.01, 10, 10), within(1e-9));
    double second = (8 * left(0.01, 20, 10) + 4 * left(0.04, 20, 10)) / 12;
    assertThat(ledger.kept("stalk", FIRST.plusDays(20), "day")).isCloseTo(second, within(1e-9));
  }

  /** 40 are fed where 16 are left: the others are in no record and have lost nothing. */
  @Test
  void balesThatAreInNoRecordHaveLostNothing() throws IOException {
    records();
    double known = 6 * left(0.04, 20, 12) + 10 * left(0.01, 10, 0);
    assertThat(ledger(plant("oldest-first")).kept("stalk", FIRST.plusDays(20), "swing"))
        .isCloseTo((known + 24) / 40, within(1e-9));
  }

  @Test
  void theNewestOrAPlaceGoFirstWhereThePlantSaysSo() throws IOException {
    records();
    double newest = 8 * left(0.04, 9, 22) + 2 * left(0.01, 9, 22) + 2 * left(0.01, 20, 10);
    YardLedger byAge = ledger(plant("newest-first"));
    assertThat(byAge.kept("stalk", FIRST.plusDays(10), "day"))
        .isCloseTo((10 * left(0.04, 10, 10) + 2 * left(0.01, 10, 10)) / 12, within(1e-9));
    assertThat(byAge.kept("stalk", FIRST.plusDays(20), "day"))
        .as("two of the load found room in the shed")
        .isCloseTo(newest / 12, within(1e-9));
    assertThat(ledger(plant("{places: [open]}")).kept("stalk", FIRST.plusDays(10), "day"))
        .isCloseTo((10 * left(0.04, 10, 10) + 2 * left(0.01, 10, 10)) / 12, within(1e-9));
  }

  /** What a year of the engine would write down: bales fed and stops, without any chance. */
  private static final class Written implements Trace {
    private final Map<LocalDate, Integer> fed = new TreeMap<>();
    private final List<String> stops = new ArrayList<>();
    private final Map<String, Double> began = new HashMap<>();

    @Override
    public void note(double clockS, String where, EventKind what, double amount) {
      if (what == EventKind.SET_ON_TABLE) {
        fed.merge(FIRST.plusDays((long) (clockS / 86_400)), (int) amount, Integer::sum);
      } else if (what == EventKind.STOPS) {
        began.put(where, clockS);
      } else if (what == EventKind.IS_UP_AGAIN) {
        stops.add("feeder," + at(began.remove(where)) + "," + at(clockS) + ",chain");
      }
    }

    private static String at(double clockS) {
      LocalDateTime when = FIRST.atStartOfDay().plusMinutes(Math.round(clockS / 60));
      return DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm").format(when);
    }

    @Override
    public void flows(double clockS, double[] rateKgPerS, double[] levelKg) {}

    @Override
    public void standing(double clockS, int[] state, int[] inYard) {}
  }

  /**
   * A stop every 60 t of what is fed in the simulation, bales that lose 4 % a month: its records
   * give back the 60 t. By the mass at which bales were weighed in they would be 6 % more.
   */
  @Test
  void theMassClockIsThatOfTheSimulation() throws IOException {
    TestPlant test =
        TestPlant.oneLine()
            .shift("2027-01-01", "2027-03-31", "06:00", "22:00")
            .says(
                "yard",
                "{on_hand: {stalk: 9000 bales}, places: {barn: {holds: 9000 bales, loss: 4 %/month}}, lift: {stalk: {lasts: 1 min, bales: 2}}}")
            .with("machines.feeder.stops", "{chain: {every: 60 t, counted: mass, lasts: 30 min}}");
    Plant plant = test.plant();
    Written written = new Written();
    CompiledPlant.of(plant).replication().run(new RandomStreams(1), 1, written);
    StringBuilder shifts = new StringBuilder("date,shift,from,to\n");
    StringBuilder made = new StringBuilder("date,shift,what,count\n");
    for (LocalDate date = FIRST; date.isBefore(LocalDate.of(2027, 4, 1)); date = date.plusDays(1)) {
      shifts.append(date).append(",always,06:00,22:00\n");
      made.append(date).append(",always,stalk fed,").append(written.fed.getOrDefault(date, 0));
      made.append('\n');
    }
    Files.writeString(folder.resolve("shifts.csv"), shifts);
    Files.writeString(folder.resolve("made.csv"), made);
    Files.writeString(
        folder.resolve("stops.csv"),
        "machine,began,ended,reason\n" + String.join("\n", written.stops) + "\n");
    Files.writeString(folder.resolve("tickets.csv"), "ticket,net,unit,bales\n1,500,kg,1\n");
    Fit fit =
        Fit.of(
            plant,
            RecordsFolder.read(folder, plant),
            new LineLoads(Map.of("stalk_line", Map.of("feeder", 1.0))),
            1);
    StopFit stop = fit.stops().get(0);
    assertThat(written.stops).hasSizeGreaterThan(30);
    assertThat(stop.every().meanInUnit() / 60_000).isCloseTo(1, within(0.005));
    assertThat(age(plant)).isCloseTo(2_000 * runningH(written.stops), within(500.0));
  }

  private static final LocalDate AS_OF = LocalDate.of(2027, 3, 20);

  /** The age on that morning, as --as-of has it. */
  private double age(Plant plant) {
    Records before = RecordsFolder.read(folder, plant).before(AS_OF);
    LineLoads loads = new LineLoads(Map.of("stalk_line", Map.of("feeder", 1.0)));
    return new StopAges(plant, before, loads).on(FIRST, AS_OF).get("feeder.chain");
  }

  /** Hours of its shifts from the end of the last stop to that morning; it runs at 2 t/h. */
  private static double runningH(List<String> stops) {
    DateTimeFormatter minute = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");
    LocalDateTime last =
        stops.stream()
            .map(row -> LocalDateTime.parse(row.split(",")[2], minute))
            .filter(end -> end.isBefore(AS_OF.atStartOfDay()))
            .max(LocalDateTime::compareTo)
            .orElseThrow();
    double hours = 22 - last.getHour() - last.getMinute() / 60.0;
    return hours + 16 * (java.time.temporal.ChronoUnit.DAYS.between(last.toLocalDate(), AS_OF) - 1);
  }
}
