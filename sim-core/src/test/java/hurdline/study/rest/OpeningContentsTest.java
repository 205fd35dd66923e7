package hurdline.study.rest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.RunAnswer;
import hurdline.answer.RunFact.OpeningContents;
import hurdline.answer.RunFact.OpeningContents.Found;
import hurdline.answer.RunFact.OpeningContents.NotGiven;
import hurdline.answer.SeasonRest.Hours;
import hurdline.fit.LineLoads;
import hurdline.measure.Measure;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.PlantFile;
import hurdline.records.Records;
import hurdline.records.RecordsFolder;
import hurdline.simulation.TestPlant;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.replicate.RunSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What lies in bins and stores as a season under way goes on.
 *
 * <p>The plant is worked out by hand. From 06:00 to 14:00 it feeds 2 t/h of stalk, half of it hurd:
 * 1 t/h. By its records it has worked from the 4th to the 7th, and from the morning of the 8th on
 * there are eight shifts, to the 15th.
 */
class OpeningContentsTest {
  private static final LocalDate AS_OF = LocalDate.of(2027, 1, 8);
  private static final String SHED = "shed,hurd,20,,\n";

  @TempDir private Path folder;

  private static TestPlant plant(int bales) {
    return TestPlant.oneLine()
        .says("components", "[fiber, hurd]")
        .says("crops", "{stalk: {bale: {mass: 500 kg}, composition: {fiber: 50 %, hurd: 50 %}}}")
        .says(
            "calendar",
            "{from: 2027-01-04, to: 2027-01-15, shifts: {day: {from: \"06:00\", to: \"14:00\"}}}")
        .says("season", "[{line: stalk_line, from: 2027-01-04, to: 2027-01-15, shifts: [day]}]")
        .says("packages", "{bag: {mass: 500 kg}}")
        .says("money", "{currency: USD}")
        .with("yard.on_hand.stalk", bales + " bales");
  }

  /** A bin of 20 t from which a bagger takes up to 1.5 t/h, and an order of 60 t. */
  private static TestPlant binned(String bin) {
    return plant(350)
        .says(
            "machines",
            "{feeder: {kind: bale-feeder}, heap: {kind: bin, %s}, bagger: {kind: bag-filler,"
                + " spouts: 2}}",
            bin)
        .says(
            "products", "{tow: {}, hurd: {package: bag, orders: [{mass: 60 t, due: 2027-01-30}]}}")
        .steps(
            "feeder: {rate: 2 t/h, outlets: [{to: heap, takes: {hurd: 100 %}}, {to: tow}]}, heap:"
                + " {to: bagger}, bagger: {rate: 1.5 t/h, packs: hurd}");
  }

  /** A shed of 12 t from which a truck takes up to 8.5 t a day, at 14:00. */
  private static TestPlant stored(String more) {
    return plant(328)
        .says("machines", "{feeder: {kind: bale-feeder}, bagger: {kind: bag-filler, spouts: 1}}")
        .says("stores", "{shed: {holds: 12 t}}")
        .says(
            "products",
            "{tow: {}, hurd: {package: bag, price: 100 USD/t, moisture: as is, store: shed, %s}}",
            more)
        .steps(
            "feeder: {rate: 2 t/h, outlets: [{to: bagger, takes: {hurd: 100 %}}, {to: tow}]},"
                + " bagger: {rate: 5 t/h, packs: hurd}");
  }

  private static final String TRUCKS =
      "pick_ups: {days: [Mon, Tue, Wed, Thu, Fri, Sat, Sun], at: \"14:00\", load: 8.5 t, at_most: 1}";

  /** 124 bales are fed and 26 t of hurd made in four shifts. */
  @BeforeEach
  void fourShifts() throws IOException {
    StringBuilder shifts = new StringBuilder("date,shift,from,to\n");
    StringBuilder made = new StringBuilder("date,shift,what,count,mass,unit\n");
    for (int day = 4; day < 8; day++) {
      shifts.append("2027-01-0").append(day).append(",day,06:00,14:00\n");
      made.append("2027-01-0").append(day).append(",day,stalk fed,31,,\n");
      made.append("2027-01-0").append(day).append(",day,hurd,,6500,kg\n");
    }
    Files.writeString(folder.resolve("shifts.csv"), shifts);
    Files.writeString(folder.resolve("made.csv"), made);
  }

  private RunAnswer answer(TestPlant plant, int bales, String... found) throws IOException {
    StringBuilder yard = new StringBuilder("date,place,crop,count,level,unit\n");
    yard.append("2027-01-04,barn,stalk,").append(bales).append(",,\n");
    for (String row : found) {
      yard.append(row.startsWith("2027") ? "" : "2027-01-08,").append(row);
    }
    Files.writeString(folder.resolve("yard.csv"), yard);
    PlantFile file = plant.file();
    PlantOrigin source =
        new PlantOrigin(file.variants(), "test.yaml", file.contentHash(), "0", List.of());
    PlantChanges chosen = new PlantChanges(PlantChanges.baseName(), List.of(), plant.changes());
    Records records = RecordsFolder.read(folder, source.variants().with(chosen.asArray()));
    return new RestStudy(
            source,
            chosen,
            new RunSettings(1, Optional.empty(), 1, 1, Optional.empty()),
            records,
            "records",
            AS_OF,
            new LineLoads(Map.of("stalk_line", Map.of("feeder", 1.0))))
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  private static OpeningContents opening(RunAnswer answer) {
    return answer.assumptions().stream()
        .filter(OpeningContents.class::isInstance)
        .map(OpeningContents.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static double done(RunAnswer answer) {
    return answer.rest().finishes().stream()
        .filter(of -> of.hours() == Hours.AS_PLANNED)
        .findFirst()
        .orElseThrow()
        .doneP50();
  }

  /**
   * 60 − 26 = 34 t are open. From 3 t in the bin the bagger takes 1.5 t/h for 6 h, then 1 t/h: 9 +
   * 25 in 31 h, on the fourth day. From an empty bin it takes 34 h, to the fifth. 226 bales bring
   * 56.5 t of hurd, and the 3 t.
   */
  @Test
  void aBinWithSomethingInItFillsAnOrderEarlier() throws IOException {
    RunAnswer full = answer(binned("holds: 20 t"), 350, "heap,,,3,t\n");
    assertThat(full.orders().get(0).metDay()).isEqualTo(4);
    assertThat(full.mean(Measure.PRODUCT_MASS.of("hurd"))).isCloseTo(59.5, within(1e-9));
    assertThat(full.mean(Measure.BIN_LEVEL_START.of("heap"))).isCloseTo(3, within(1e-9));
    assertThat(full.mean(Measure.BIN_LEVEL_PEAK.of("heap"))).isCloseTo(3, within(1e-9));
    assertThat(full.mean(Measure.BIN_LEVEL_END.of("heap"))).isCloseTo(0, within(1e-9));
    assertThat(opening(full))
        .isEqualTo(new OpeningContents(List.of(new Found("heap", "", 3, "t", AS_OF)), List.of()));
    RunAnswer empty = answer(binned("holds: 20 t"), 350);
    assertThat(empty.orders().get(0).metDay()).isEqualTo(5);
    assertThat(empty.mean(Measure.PRODUCT_MASS.of("hurd"))).isCloseTo(56.5, within(1e-9));
    assertThat(empty.find(Measure.BIN_LEVEL_START.of("heap"))).isEmpty();
    assertThat(opening(empty))
        .isEqualTo(new OpeningContents(List.of(), List.of(new NotGiven("heap", "", ""))));
  }

  /** The draw waits for 4 t: an hour from 3 t on, none from 15 % of 40 t. */
  @Test
  void aBinBelowItsStartWaitsForIt() throws IOException {
    String bin = "holds: 40 t, start_at: 4 t, stop_at: 1 t";
    RunAnswer below = answer(binned(bin), 350, "heap,,,3,t\n");
    assertThat(below.mean(Measure.BIN_LEVEL_PEAK.of("heap"))).isCloseTo(4, within(1e-9));
    RunAnswer above = answer(binned(bin), 350, "heap,,,15,%\n");
    assertThat(above.mean(Measure.BIN_LEVEL_START.of("heap"))).isCloseTo(6, within(1e-9));
    assertThat(above.mean(Measure.BIN_LEVEL_PEAK.of("heap"))).isCloseTo(6, within(1e-9));
  }

  /** Hurd lies at 100 kg/m3. */
  @Test
  void aBinOfVolumeHoldsWhatItsLevelSays() throws IOException {
    TestPlant plant =
        binned("holds: 60 m3")
            .says(
                "components", "{fiber: {bulk_density: 90 kg/m3}, hurd: {bulk_density: 100 kg/m3}}");
    RunAnswer answer = answer(plant, 350, "heap,,,50,m3\n");
    assertThat(answer.mean(Measure.BIN_LEVEL_START.of("heap"))).isCloseTo(5, within(1e-9));
    assertThat(answer.mean(Measure.PRODUCT_MASS.of("hurd"))).isCloseTo(61.5, within(1e-9));
  }

  /**
   * 204 bales are 51 h. Into an empty shed all goes: 6 days and 3 h. With 20 bags there 4 more find
   * room; the fifth, full at 08:30, waits for the truck at 14:00, which takes 17 bags, and then
   * there is room: 2.5 h on the first day, 48 on the six behind it, and the last half hour on the
   * eighth. What was made is sold or lies there more than before: 51 t at 100 USD.
   */
  @Test
  void whatLiesInAStoreKeepsPackagesOut() throws IOException {
    RunAnswer full = answer(stored(TRUCKS), 328, SHED);
    assertThat(done(full)).isEqualTo(8);
    assertThat(full.mean(Measure.PRODUCT_STOCK_START.of("hurd"))).isCloseTo(10, within(1e-9));
    assertThat(full.mean(Measure.STORE_LEVEL_PEAK.of("shed"))).isCloseTo(12, within(1e-9));
    assertThat(
            full.mean(Measure.PRODUCT_LEFT.of("hurd"))
                + full.mean(Measure.PRODUCT_STOCK.of("hurd")))
        .isCloseTo(61, within(1e-9));
    assertThat(full.mean(Measure.MONEY_MARGIN.of())).isCloseTo(5_100, within(1e-6));
    assertThat(full.mean(Measure.PRODUCT_STOCK_WORTH_START.of("hurd")))
        .isCloseTo(1_000, within(1e-6));
    assertThat(opening(full).found())
        .containsExactly(new Found("shed", "hurd", 20, "count", AS_OF));
    RunAnswer empty = answer(stored(TRUCKS), 328);
    assertThat(done(empty)).isEqualTo(7);
    assertThat(empty.mean(Measure.MONEY_MARGIN.of())).isCloseTo(5_100, within(1e-6));
    assertThat(opening(empty).notGiven()).containsExactly(new NotGiven("shed", "hurd", ""));
  }

  /**
   * Of 26 t made 10 t lie there, so 16 of the order's 50 t have left; the 10 t leave at once, and
   * 24 t have to be made: 24 h, on the third day. At a worth of its own the stock is lower by 500.
   */
  @Test
  void whatLiesInAStoreIsOpenOfAnOrder() throws IOException {
    String orders = "worth: 50 USD/t, orders: [{mass: 50 t, due: 2027-01-30}]";
    RunAnswer answer = answer(stored(orders), 328, SHED);
    assertThat(answer.rest().orders().get(0).openT()).isCloseTo(34, within(1e-9));
    assertThat(answer.orders().get(0).metDay()).isEqualTo(3);
    assertThat(answer.mean(Measure.PRODUCT_LEFT.of("hurd"))).isCloseTo(34, within(0.5));
    double stockT = answer.mean(Measure.PRODUCT_STOCK.of("hurd"));
    assertThat(answer.mean(Measure.MONEY_PRODUCT_STOCK.of()))
        .isCloseTo(50 * (stockT - 10), within(1e-6));
  }

  /** A mass says as much as a count, and what was found before a shift is not taken. */
  @Test
  void onlyWhatIsStillTrueIsTaken() throws IOException {
    assertThat(opening(answer(stored(TRUCKS), 328, "shed,,,10,t\n")).found().get(0).amount())
        .isEqualTo(20);
    OpeningContents old = opening(answer(stored(TRUCKS), 328, "2027-01-07," + SHED));
    assertThat(old.found()).isEmpty();
    assertThat(old.notGiven()).containsExactly(new NotGiven("shed", "hurd", "2027-01-07"));
  }

  @Test
  void moreThanThereIsRoomForIsRefused() {
    assertThatThrownBy(() -> answer(binned("holds: 20 t"), 350, "heap,,,25,t\n"))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining(
            "records has 125 % of what heap holds in it on 2027-01-08 (line 3 of its counts);"
                + " expected at most 100 %, or a larger \"holds\" in the plant file");
    assertThatThrownBy(() -> answer(stored(TRUCKS), 328, "shed,hurd,25,,\n"))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("104 % of what shed holds");
  }
}
