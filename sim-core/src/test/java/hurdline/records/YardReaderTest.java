package hurdline.records;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Plant;
import hurdline.simulation.TestPlant;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** yard.csv: bales in places, levels of bins, packages in stores, and what is none of them. */
class YardReaderTest {
  private static final LocalDate DAY = LocalDate.of(2027, 1, 8);

  @TempDir private Path folder;

  private static Plant plant() {
    return TestPlant.oneLine()
        .says(
            "machines",
            "{feeder: {kind: bale-feeder}, heap: {kind: bin, holds: 20 t}, silo: {kind: bin, holds:"
                + " 50 m3}, belt: {kind: conveyor}, press: {kind: press, boxes: 1}}")
        .says("components", "{fiber: {bulk_density: 100 kg/m3}}")
        .says("packages", "{bag: {mass: 500 kg}}")
        .says("stores", "{shed: {holds: 30 t}}")
        .says(
            "products",
            "{tow: {package: bag, store: shed, orders: [{mass: 9 t, due: 2027-03-01}]}}")
        .steps(
            "feeder: {rate: 2 t/h, to: heap}, heap: {to: belt}, belt: {rate: 3 t/h, to: silo}, silo: {to: press}, press: {rate: 3"
                + " t/h, packs: tow}")
        .plant();
  }

  private Records read(String... rows) throws IOException {
    Files.writeString(
        folder.resolve("yard.csv"),
        "date,place,crop,count,level,unit\n" + String.join("\n", rows) + "\n");
    return RecordsFolder.read(folder, plant());
  }

  private ContentRecord content(String row) throws IOException {
    List<ContentRecord> found = read("2027-01-08," + row).contents();
    assertThat(found).as(row).hasSize(1);
    return found.get(0);
  }

  private String why(String row) throws IOException {
    Records records = read("2027-01-08," + row);
    assertThat(records.contents()).as(row).isEmpty();
    assertThat(records.yard()).as(row).isEmpty();
    return records.account().entries().get(0).why();
  }

  @Test
  void levelsAreInMassVolumeOrPartsOfTheBin() throws IOException {
    assertThat(content("heap,,,12,t")).isEqualTo(new ContentRecord(2, DAY, "heap", "", 12_000));
    assertThat(content("heap,,,25,%").amount()).isEqualTo(5_000);
    assertThat(content("Heap,,,2000,lbs").amount()).isCloseTo(907.18474, offset());
    assertThat(content("silo,,,30,m3").amount()).isEqualTo(30);
    assertThat(content("silo,,,50,%").amount()).isEqualTo(25);
  }

  private static org.assertj.core.data.Offset<Double> offset() {
    return org.assertj.core.api.Assertions.within(1e-6);
  }

  @Test
  void packagesAreCountedOrWeighed() throws IOException {
    assertThat(content("shed,tow,12,,")).isEqualTo(new ContentRecord(2, DAY, "shed", "tow", 12));
    assertThat(content("shed,,12,,").product()).isEqualTo("tow");
    assertThat(content("shed,tow,,6.1,t").amount()).isEqualTo(12);
  }

  @Test
  void whatIsNoCountIsSetAsideWithItsReason() throws IOException {
    assertThat(why("heap,,12,,")).isEqualTo("no level of the bin, such as 40 in %");
    assertThat(why("heap,,,12,kW")).isEqualTo("\"kW\" is no unit of it; expected t or %");
    assertThat(why("heap,,,12,m3")).isEqualTo("\"m3\" is no unit of it; expected t or %");
    assertThat(why("silo,,,12,")).isEqualTo("no unit of the level; expected m3 or %");
    assertThat(why("heap,,,-3,t")).isEqualTo("below 0: no reading");
    assertThat(why("heap,,,full,t")).isEqualTo("\"full\" is no number");
    assertThat(why("shed,lint,12,,")).isEqualTo("\"lint\" is no product of the store shed");
    assertThat(why("shed,tow,1.5,,")).isEqualTo("packages are counted whole");
    assertThat(why("attic,,,12,t")).isEqualTo("\"attic\" is no bin and no store of the plant");
    assertThat(why("barn,wheat,40,,")).isEqualTo("\"wheat\" is no crop of the plant");
    assertThat(why("barn,stalk,-40,,")).isEqualTo("below 0: no reading");
  }

  @Test
  void balesAreThoseOfTheCropThatARowNames() throws IOException {
    Records records =
        read("2027-01-08,barn,Stalk,40,,", "2027-01-08,heap,,,3,t", "2027-01-09,barn,,35,,");
    assertThat(records.yard())
        .containsExactly(
            new DayRecord(2, DAY, "barn stalk", 40),
            new DayRecord(4, LocalDate.of(2027, 1, 9), "barn", 35));
    assertThat(records.contents()).hasSize(1);
  }

  /** What is set aside near the day is said, for the answer goes on without it. */
  @Test
  void countsOfTheDayThatAreSetAsideAreCautions() throws IOException {
    Records records =
        read(
            "2027-01-04,barn,stalk,-5,,",
            "2027-01-05,barn,stalk,40,,",
            "2027-01-08,heap,,,3,gal",
            "2027-01-11,barn,stalk,30,,",
            "2027-01-12,heap,,,3,gal");
    assertThat(records.cautionsUpTo(DAY))
        .extracting(of -> of.text())
        .contains(
            "yard.csv:4: set aside: \"gal\" is no unit of it; expected t or %; what it counts is"
                + " not in the answer")
        .noneMatch(text -> text.contains("yard.csv:2") || text.contains("yard.csv:6"));
  }
}
