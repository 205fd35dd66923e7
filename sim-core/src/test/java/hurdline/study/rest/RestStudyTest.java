package hurdline.study.rest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.OrderRow;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonRest.Finish;
import hurdline.answer.SeasonRest.Hours;
import hurdline.answer.SeasonRest.Kind;
import hurdline.answer.SeasonRest.Quantity;
import hurdline.answer.SeasonRest.Stock;
import hurdline.fit.LineLoads;
import hurdline.measure.Measure;
import hurdline.plant.Delivery;
import hurdline.plant.InputDraws;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.SeasonEntry.Campaign;
import hurdline.plant.yaml.PlantFile;
import hurdline.records.Records;
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
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A season that is under way.
 *
 * <p>The plant is worked out by hand. It feeds 2 t/h, 4 bales an hour, from 06:00 to 14:00 on each
 * of 12 days from Monday 2027-01-04 on, and stands for an hour after each 20 running hours. In its
 * records: 32 bales on the 4th and 5th, 28 on the 6th, when it stood from 10:00 to 11:00 (8 + 8 + 4
 * = 20 h), 32 on the 7th: 124 bales, 62 t.
 *
 * <p>On the morning of the 8th 350 − 124 = 226 bales lie there, 113 t or 56.5 running hours, the
 * chain has run 3 + 8 = 11 h, and 100 − 62 = 38 t are open of the order. It runs 8 h on the 8th, 7
 * on the 9th (stop at 07:00, after 9 h), 8, 7 (stop at 12:00), 8, 8, 7 (stop at 09:00 on the 14th):
 * 53 h; the last 3.5 h end at 09:30 on the 15th. The order takes 19 h: 8 + 7 + 4, on the 10th.
 */
class RestStudyTest {
  private static final LocalDate FIRST = LocalDate.of(2027, 1, 4);
  private static final LocalDate AS_OF = LocalDate.of(2027, 1, 8);

  @TempDir private Path folder;

  private static TestPlant plant(String calendarTo, String every, int bales) {
    return TestPlant.oneLine()
        .says(
            "calendar",
            "{from: 2027-01-04, to: %s, shifts: {day: {from: \"06:00\", to: \"14:00\"}, swing:"
                + " {from: \"14:00\", to: \"22:00\"}}}",
            calendarTo)
        .says("season", "[{line: stalk_line, from: 2027-01-04, to: 2027-01-15, shifts: [day]}]")
        .says("products", "{tow: {orders: [{mass: 100 t, due: 2027-01-12}]}}")
        .with("yard.on_hand.stalk", bales + " bales")
        .with(
            "machines.feeder.stops",
            "{chain: {every: " + every + ", counted: running, lasts: 1 h}}");
  }

  private static TestPlant plant() {
    return plant("2027-01-15", "20 h", 350);
  }

  private static PlantOrigin source(TestPlant plant) {
    PlantFile file = plant.file();
    return new PlantOrigin(file.variants(), "test.yaml", file.contentHash(), "0", List.of());
  }

  private static PlantChanges changes(TestPlant plant) {
    return new PlantChanges(PlantChanges.baseName(), List.of(), plant.changes());
  }

  private static RunSettings effort(int replications) {
    return new RunSettings(replications, Optional.empty(), 1, 2, Optional.empty());
  }

  private void record(int days, int... fed) throws IOException {
    StringBuilder shifts = new StringBuilder("date,shift,from,to\n");
    StringBuilder made = new StringBuilder("date,shift,what,count,mass,unit\n");
    for (int day = 0; day < days; day++) {
      LocalDate date = FIRST.plusDays(day);
      int bales = fed[Math.min(day, fed.length - 1)];
      shifts.append(date).append(",day,06:00,14:00\n");
      made.append(date).append(",day,stalk fed,").append(bales).append(",,\n");
      made.append(date).append(",day,tow,,").append(500 * bales).append(",kg\n");
    }
    Files.writeString(folder.resolve("shifts.csv"), shifts);
    Files.writeString(folder.resolve("made.csv"), made);
    Files.writeString(folder.resolve("yard.csv"), "date,crop,count\n2027-01-04,stalk,350\n");
    Files.writeString(
        folder.resolve("stops.csv"),
        "machine,began,ended,reason\nfeeder,2027-01-06 10:00,2027-01-06 11:00,chain\n");
  }

  private RestStudy study(TestPlant plant, LocalDate asOf, RunSettings effort) {
    PlantOrigin source = source(plant);
    PlantChanges chosen = changes(plant);
    Records records = RecordsFolder.read(folder, source.variants().with(chosen.asArray()));
    LineLoads loads = new LineLoads(Map.of("stalk_line", Map.of("feeder", 1.0)));
    return new RestStudy(source, chosen, effort, records, "records", asOf, loads);
  }

  private RunAnswer rest(TestPlant plant, LocalDate asOf, int replications) {
    return study(plant, asOf, effort(replications))
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  private static RestOfSeason rest(
      Plant plant, Records before, LocalDate asOf, Map<String, Integer> onHand) {
    OpeningContents none = new OpeningContents(before, asOf);
    return new RestOfSeason(
        asOf, new SeasonSoFar(plant, before, asOf, none), none, onHand, Map.of());
  }

  private static Quantity fed(RunAnswer answer) {
    return answer.rest().quantities().stream()
        .filter(of -> of.kind() == Kind.FED)
        .findFirst()
        .orElseThrow();
  }

  private static Finish finish(RunAnswer answer, Hours hours) {
    return answer.rest().finishes().stream()
        .filter(of -> of.hours() == hours)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theRestBeginsWithTheStockTheAgesAndTheOpenOrdersOfTheDay() throws IOException {
    record(4, 32, 32, 28, 32);
    RunAnswer answer = rest(plant(), AS_OF, 1);
    assertThat(answer.header().from()).isEqualTo(AS_OF);
    assertThat(answer.rest().stock())
        .containsExactly(new Stock("stalk", "bales", FIRST, 350, 0, 124, 226));
    assertThat(answer.rest().ages().get(0).age()).isCloseTo(11, within(1e-9));
    Quantity fed = fed(answer);
    assertThat(fed.soFar()).isCloseTo(124, within(1e-9));
    assertThat(fed.rest()).isCloseTo(226, within(1e-6));
    assertThat(fed.whole()).isCloseTo(350, within(1e-6));
    assertThat(answer.rest().orders().get(0).openT()).isCloseTo(38, within(1e-9));
    OrderRow order = answer.orders().get(0);
    assertThat(order.massT()).isCloseTo(38, within(1e-9));
    assertThat(order.metDay()).isEqualTo(3);
    Finish done = finish(answer, Hours.AS_PLANNED);
    assertThat(done.finished()).isEqualTo(1);
    assertThat(done.doneP50()).isEqualTo(8); // the 15th
    assertThat(answer.mean(Measure.MACHINE_STOP_COUNT.of("feeder", "chain"))).isEqualTo(3);
  }

  /** With 450 bales 163 t are left, and the rest has 61 running hours: 122 t, 82 bales short. */
  @Test
  void aSecondShiftThatAloneFinishesHelps() throws IOException {
    record(4, 32, 32, 28, 32);
    Files.writeString(folder.resolve("yard.csv"), "date,crop,count\n2027-01-04,stalk,450\n");
    RunAnswer answer = rest(plant("2027-01-15", "20 h", 450), AS_OF, 8);
    Finish planned = finish(answer, Hours.AS_PLANNED);
    assertThat(planned.finished()).isZero();
    assertThat(planned.leftMean()).isEqualTo(82);
    Finish two = finish(answer, Hours.WITH_SHIFT);
    assertThat(two.shift()).isEqualTo("swing");
    assertThat(two.finished()).isEqualTo(8);
    assertThat(two.onlyThis()).isEqualTo(8);
    assertThat(two.significant()).isTrue();
  }

  @Test
  void aShiftThatIsPlannedIsLeftOut() throws IOException {
    record(4, 32, 32, 28, 32);
    TestPlant both =
        plant()
            .says(
                "season",
                "[{line: stalk_line, from: 2027-01-04, to: 2027-01-15, shifts: [day, swing]}]");
    RunAnswer answer = rest(both, AS_OF, 8);
    Finish one = finish(answer, Hours.WITHOUT_SHIFT);
    assertThat(one.shift()).isEqualTo("swing");
    assertThat(one.doneP50()).isEqualTo(8);
    assertThat(finish(answer, Hours.AS_PLANNED).doneP50()).isEqualTo(4); // 16 h a day: the 11th
    assertThat(one.significant()).isFalse();
  }

  @Test
  void asOfTheFirstDayItIsThePlainRun() throws IOException {
    record(4, 32, 32, 28, 32);
    TestPlant random = plant("2027-01-15", "{exponential: {mean: 9 h}}", 350);
    RunAnswer plain =
        new Run(source(random), changes(random), effort(5))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
    RunAnswer answer = rest(random, FIRST, 5);
    assertThat(answer.summary()).isEqualTo(plain.summary());
    assertThat(answer.weeks()).isEqualTo(plain.weeks());
    assertThat(answer.orders()).isEqualTo(plain.orders());
    assertThat(fed(answer).soFar()).isZero();
  }

  @Test
  void asOfTheLastDayItIsWhatHappened() throws IOException {
    record(12, 32, 32, 28, 20);
    RunAnswer answer = rest(plant("2027-01-16", "20 h", 350), LocalDate.of(2027, 1, 16), 2);
    Quantity fed = fed(answer);
    assertThat(fed.rest()).isZero();
    assertThat(fed.whole()).isCloseTo(32 + 32 + 28 + 9 * 20, within(1e-9));
    assertThat(answer.rest().finishes()).isEmpty();
    assertThat(answer.rest().stock().get(0).onHand()).isEqualTo(350 - 272);
  }

  /** A new count takes the place of what was counted and fed before. */
  @Test
  void theLastCountIsGoneBy() throws IOException {
    record(4, 32, 32, 28, 32);
    Files.writeString(
        folder.resolve("yard.csv"),
        "date,crop,count\n2027-01-04,stalk,350\n2027-01-07,stalk,240\n2027-01-09,stalk,7\n");
    Files.writeString(
        folder.resolve("tickets.csv"),
        "ticket,crop,gate in,net,unit,bales\n1,stalk,2027-01-07 09:00,5000,kg,10\n");
    assertThat(rest(plant(), AS_OF, 1).rest().stock())
        .containsExactly(new Stock("stalk", "bales", LocalDate.of(2027, 1, 7), 240, 10, 32, 218));
  }

  /** North has brought half of its mean crop of 100 t; south, silent for two weeks, is done. */
  @Test
  void fieldsAndLoadsAreThoseStillToCome() throws IOException {
    Files.writeString(
        folder.resolve("shifts.csv"),
        "date,shift,from,to\n2027-02-01,day,06:00,14:00\n2027-02-20,day,06:00,14:00\n");
    Files.writeString(
        folder.resolve("tickets.csv"),
        "ticket,crop,field,gate in,net,unit,bales\n1,stalk,south,2027-02-01 09:00,60000,kg,120\n"
            + "2,stalk,north,2027-02-20 09:00,50000,kg,100\n");
    Files.writeString(folder.resolve("yard.csv"), "date,crop,count\n2027-02-21,stalk,500\n");
    String field = "{area: 10 ha, yield: 10 t/ha, ready: 2027-02-01, baling: 100 bales/d}";
    TestPlant fields =
        TestPlant.oneLine()
            .says(
                "deliveries",
                "{stalk: {fields: {north: %s, south: %s, west: %s}, weather: {wet_day: 0 %%,"
                    + " wet_after_wet: 0 %%, dry_days: 0}, hours: {from: \"07:00\", to: \"18:00\"},"
                    + " trucks: {count: 1, bales: 30, drive: 1 h}, loads: {every: 1 d, bales: 1,"
                    + " from: 2027-01-05, to: 2027-03-01}}}",
                field,
                field,
                field);
    Plant plant = fields.plant();
    LocalDate asOf = LocalDate.of(2027, 2, 21);
    Records before = RecordsFolder.read(folder, plant).before(asOf);
    Plant rest = rest(plant, before, asOf, Map.of("stalk", 500)).of(plant);
    Delivery delivery = rest.deliveries().get(0);
    assertThat(delivery.fields())
        .extracting(Delivery.Field::name, of -> (float) of.areaM2())
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("north", 50_000f),
            org.assertj.core.groups.Tuple.tuple("west", 100_000f));
    assertThat(delivery.loads().orElseThrow().from()).isEqualTo(asOf);
    assertThat(rest.season())
        .extracting(entry -> ((Campaign) entry).from(), entry -> ((Campaign) entry).to())
        .containsExactly(org.assertj.core.groups.Tuple.tuple(asOf, LocalDate.of(2027, 3, 31)));
  }

  /** As of the 4th the stalks are done; cotton waits for a changeover that is under way. */
  @Test
  void aCampaignBehindAChangeoverThatIsUnderWayBeginsWhenItWouldHave() throws IOException {
    Files.writeString(
        folder.resolve("shifts.csv"), "date,shift,from,to\n2027-03-01,day,06:00,14:00\n");
    TestPlant lines =
        TestPlant.twoLines()
            .says(
                "season",
                "[{line: stalk_line, from: 2027-03-01, to: 2027-03-03, shifts: [day]}, {changeover:"
                    + " 2 d, hands: 3}, {line: cotton_line, from: 2027-03-04, to: 2027-03-12,"
                    + " shifts: [day]}]");
    Plant plant = lines.plant();
    LocalDate asOf = LocalDate.of(2027, 3, 4);
    Records none = RecordsFolder.read(folder, plant).before(asOf);
    Plant rest = rest(plant, none, asOf, Map.of()).of(plant);
    assertThat(rest.season())
        .extracting(entry -> ((Campaign) entry).from())
        .containsExactly(LocalDate.of(2027, 3, 6)); // the 4th and 5th are the changeover's
  }

  /**
   * The changeover before the campaign of the 4th calls for 200 purge packages of 0.5 t; 124 have
   * been made, so the rest has 76, and none where 100 were to come. Of its 226 packages 76 bring
   * half of 100 USD/t: 11,300 − 1,900.
   */
  @Test
  void aPurgeThatIsUnderWayGoesOn() throws IOException {
    record(4, 32, 32, 28, 32);
    assertThat(purged(200).mean(Measure.PRODUCT_PURGE_PACKAGES.of("tow"))).isEqualTo(76);
    assertThat(purged(200).mean(Measure.PRODUCT_REVENUE.of("tow"))).isCloseTo(9_400, within(1e-6));
    assertThat(purged(100).mean(Measure.PRODUCT_PURGE_PACKAGES.of("tow"))).isZero();
  }

  private RunAnswer purged(int packages) {
    TestPlant plant =
        plant()
            .says(
                "season",
                "[{line: stalk_line, from: 2027-01-01, to: 2027-01-01, shifts: [day]}, {changeover:"
                    + " 2 d, hands: 1}, {line: stalk_line, from: 2027-01-04, to: 2027-01-15,"
                    + " shifts: [day]}]")
            .says(
                "calendar",
                "{from: 2027-01-01, to: 2027-01-15, shifts: {day: {from: \"06:00\", to:"
                    + " \"14:00\"}}}")
            .says("machines", "{feeder: {kind: bale-feeder}, press: {kind: press, boxes: 2}}")
            .says("packages", "{bale: {mass: 500 kg}}")
            .says("money", "{currency: USD}")
            .says(
                "products",
                "{tow: {package: bale, price: 100 USD/t, moisture: as is, purge: {packages: "
                    + packages
                    + ", factor: 50 %}}}")
            .steps("feeder: {rate: 2 t/h, to: press}, press: {rate: 5 t/h, packs: tow}");
    return rest(plant, AS_OF, 1);
  }

  @Test
  void chancesCoverDrawnInputsWhereThereAreSome() throws IOException {
    record(4, 32, 32, 28, 32);
    String rate = "lines.stalk_line.steps.feeder.rate";
    InputDraws draws =
        new InputDraws("draws.csv", List.of(rate), List.of(List.of("1 t/h"), List.of("3 t/h")));
    RunAnswer answer =
        study(plant(), AS_OF, effort(8).with(draws))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
    assertThat(answer.rest().overInputs()).isTrue();
    assertThat(finish(answer, Hours.AS_PLANNED).finished()).isEqualTo(4); // every other row is slow
  }

  private void refuses(LocalDate asOf, String line) {
    assertThatThrownBy(() -> rest(plant(), asOf, 1))
        .isInstanceOf(ProblemsException.class)
        .satisfies(
            e -> assertThat(((ProblemsException) e).lines()).containsExactly("test.yaml: " + line));
  }

  @Test
  void whatTheRecordsDoNotSayIsRefused() throws IOException {
    record(4, 32, 32, 28, 32);
    refuses(
        LocalDate.of(2028, 1, 1),
        "the plant as of 2028-01-01 is asked for, which lies outside the calendar; expected a date"
            + " from 2027-01-04 to 2027-01-15");
    refuses(
        LocalDate.of(2027, 1, 9),
        "records covers 2027-01-04 to 2027-01-07 and nothing up to 2027-01-09; expected a date from"
            + " 2027-01-04 to 2027-01-08");
    Files.delete(folder.resolve("yard.csv"));
    refuses(
        AS_OF,
        "records has no count of stalk up to 2027-01-08; expected a row of yard.csv with a date up"
            + " to 2027-01-08");
    Files.writeString(folder.resolve("yard.csv"), "date,crop,count\n2027-01-04,stalk,350\n");
    Files.delete(folder.resolve("made.csv"));
    refuses(
        AS_OF,
        "records does not say what was fed of stalk since it was counted on 2027-01-04; expected"
            + " rows of what was fed in made.csv, or a count on 2027-01-08 in yard.csv");
    Files.delete(folder.resolve("shifts.csv"));
    refuses(
        AS_OF, "records holds no shift, so it is not known what was worked; expected a shifts.csv");
  }
}
