package hurdline.fit;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.FitCheckRow;
import hurdline.answer.FitRow;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.records.Account;
import hurdline.records.RecordedYear;
import hurdline.records.Records;
import hurdline.records.RecordsFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A crop that comes in bales and in modules, whose year is simulated from a file that is known. */
class FormFitsTest {
  private static final Plant EGRET =
      PlantFile.read(
              Path.of(System.getProperty("hurdline.root"), "line-configs", "egret-fork.yaml"))
          .plant();

  /** Shares that reach the machines whose stops are counted on mass. */
  private static final LineLoads LOADS =
      new LineLoads(Map.of("stalk_line", Map.of("feeder", 1.0, "saw", 0.93)));

  private static final double LB_KG = 0.45359237;

  @TempDir private static Path shared;
  @TempDir private Path own;
  private static Records year;

  @BeforeAll
  static void simulate() throws IOException {
    RecordedYear.write(EGRET, 20270816, shared);
    year = RecordsFolder.read(shared, EGRET);
  }

  @Test
  void everyRowIsUsedAndOfItsForm() {
    assertThat(year.account().entries()).allMatch(entry -> entry.verdict() == Account.Verdict.USED);
    assertThat(year.cautions()).isEmpty();
    assertThat(year.tickets().stream().map(one -> one.crop()).distinct())
        .containsExactlyInAnyOrder("stalk", "stalk_modules");
    assertThat(year.made().stream().filter(one -> one.isFed()).map(one -> one.what()).distinct())
        .containsExactlyInAnyOrder("stalk", "stalk_modules");
  }

  /** Each mean within three of its own errors; of the other form's mass they are all far. */
  @Test
  void massAndMoistureAreThoseOfEachForm() {
    List<FitRow> rows = new OtherFits(EGRET, year, new FittedDraws(new RandomStreams(1))).rows();
    Map.of(
            "crops.stalk.bale.mass",
            900 * LB_KG,
            "crops.stalk_modules.module.mass",
            3600 * LB_KG,
            "crops.stalk.moisture",
            12.5,
            "crops.stalk_modules.moisture",
            11.5)
        .forEach(
            (key, truth) -> {
              FitRow row =
                  rows.stream().filter(of -> of.key().equals(key)).findFirst().orElseThrow();
              assertThat(Math.abs(row.mean() / truth - 1)).as(key).isLessThan(3 * row.errorShare());
              assertThat(row.errorShare()).as(key).isLessThan(0.02);
            });
  }

  /** What was weighed in, less what the yard lost, is what was fed and what still lies there. */
  @Test
  void whatWasFedIsOfBothForms() {
    Fit fit = Fit.of(EGRET, year, LOADS, 1);
    double bales = fed("stalk") * 900 * LB_KG;
    double modules = fed("stalk_modules") * 3600 * LB_KG;
    assertThat(modules / (bales + modules)).isBetween(0.2, 0.5);
    assertThat(fit.fedKg()).isBetween(0.93 * (bales + modules), bales + modules);
    StopFit saws =
        fit.stops().stream()
            .filter(of -> of.key().equals("saw.new_saws"))
            .findFirst()
            .orElseThrow();
    assertThat(saws.every().meanInUnit() / 1000).isBetween(270.0, 330.0);
  }

  private static double fed(String form) {
    return year.made().stream()
        .filter(one -> one.isFed() && one.what().equals(form))
        .mapToDouble(one -> one.count())
        .sum();
  }

  @Test
  void yieldAndGateAreThoseOfEachForm() {
    List<FitCheckRow> checks = new SeasonChecks(EGRET, year, LOADS).all();
    assertThat(checks.stream().map(FitCheckRow::what))
        .contains(
            "yield of heron_bottom, on the file's area",
            "yield of upper_fork, on the file's area",
            "time at the gate of stalk loads",
            "time at the gate of stalk_modules loads");
  }

  /** Wet days are drawn once for all forms, so both keys move together. */
  @Test
  void drawsOfWetDaysAreTheSameForAllForms() {
    List<FitRow> rows = new OtherFits(EGRET, year, new FittedDraws(new RandomStreams(1))).rows();
    assertThat(draws(rows, "deliveries.stalk.weather.wet_after_wet"))
        .isEqualTo(draws(rows, "deliveries.stalk_modules.weather.wet_after_wet"));
  }

  private static List<String> draws(List<FitRow> rows, String key) {
    return rows.stream().filter(of -> of.key().equals(key)).findFirst().orElseThrow().draws();
  }

  @Test
  void aColumnTellsTheFormWhereRowsNameTheCrop() throws IOException {
    Files.writeString(
        own.resolve("tickets.csv"),
        """
        ticket,crop,packed as,net,unit,count
        1,stalk,bales,13000,kg,34
        2,stalk,modules,6500,kg,4
        3,stalk,stalk_modules,6500,kg,4
        4,,Module,6500,kg,4
        5,stalk,rolls,6500,kg,4
        """);
    Files.writeString(
        own.resolve("made.csv"),
        """
        date,what,form,count
        2027-09-01,stalk fed,bales,30
        2027-09-01,stalk fed,modules,4
        """);
    Records records = RecordsFolder.read(own, EGRET);
    assertThat(records.tickets().stream().map(one -> one.crop()))
        .containsExactly("stalk", "stalk_modules", "stalk_modules", "stalk_modules");
    assertThat(records.made().stream().map(one -> one.what()))
        .containsExactly("stalk", "stalk_modules");
    assertThat(records.account().entries())
        .anyMatch(
            entry ->
                entry
                    .why()
                    .equals(
                        "\"rolls\" is no form of stalk: stalk (bales), stalk_modules (modules)"));
  }

  @Test
  void aFileThatNamesTheCropAloneIsSaidToBeOfItsOwnForm() throws IOException {
    Files.writeString(
        own.resolve("tickets.csv"), "ticket,crop,net,unit,bales\n1,stalk,13000,kg,34\n");
    assertThat(RecordsFolder.read(own, EGRET).cautions())
        .singleElement()
        .satisfies(
            said -> {
              assertThat(said.found())
                  .isEqualTo("stalk comes in several forms, and all rows say stalk");
              assertThat(said.expected())
                  .isEqualTo(
                      "the form's name in place of the crop's, or a column \"form\"; read as stalk in bales");
            });
  }
}
