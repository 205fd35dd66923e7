package hurdline.simulation.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.compiled.Haulage;
import hurdline.compiled.Roster;
import hurdline.compiled.YardPlan;
import hurdline.plant.Delivery;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.YardTexts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BalingTest {
  private static final LocalDate FIRST = LocalDate.of(2027, 3, 1);

  private static Plant plant(String from, String to, String closed, String stalk) {
    String rest =
        "yard: {places: {barn: {holds: 9000 bales}}}\ndeliveries:\n  stalk:\n"
            + "    trucks: {count: 1, bales: 10, drive: 1 h}\n"
            + stalk;
    return PlantFile.of("test", YardTexts.plant(from, to, closed, rest)).plant();
  }

  private static Baling baling(Plant plant, int replication) {
    YardPlan yard = YardPlan.of(plant);
    Baling baling = new Baling(yard, Haulage.of(plant, yard, Roster.of(plant)));
    baling.reset(new RandomStreams(7), replication);
    return baling;
  }

  /** Instants of all bales of a field, in hours. */
  private static List<Double> bales(Baling baling, int field, Bales bales, List<Double> massesKg) {
    List<Double> hours = new ArrayList<>();
    for (double atS = baling.nextS(field);
        atS < Double.POSITIVE_INFINITY;
        atS = baling.nextS(field)) {
      hours.add(atS / 3600);
      massesKg.add(bales.massKg[baling.make(field, bales, atS)]);
    }
    return hours;
  }

  @Test
  void balesComeAtEvenDistancesOverTheReceivingHoursAndTheLastIsCut() {
    Plant plant =
        plant(
            "2027-03-01",
            "2027-03-31",
            "[2027-03-02]",
            """
                hours: {from: "08:00", to: "18:00", days: [Mon, Tue, Thu]}
                fields: {bench: {area: 1 ha, yield: 6.1 t/ha, ready: 2027-03-01, baling: 5 bales/d}}
            """);
    Baling baling = baling(plant, 1);
    assertThat(baling.unbaled(1)).isEqualTo(13);
    List<Double> masses = new ArrayList<>();
    List<Double> hours = bales(baling, 0, new Bales(2, 0), masses);
    // a closed day stops the gate, not the baler; Wednesday is none of its days
    assertThat(hours)
        .containsExactly(
            10.0, 12.0, 14.0, 16.0, 18.0, 34.0, 36.0, 38.0, 40.0, 42.0, 82.0, 84.0, 86.0);
    assertThat(masses.get(12)).isCloseTo(100, within(1e-6));
    assertThat(masses.stream().mapToDouble(kg -> kg).sum()).isCloseTo(6100, within(1e-9));
    assertThat(baling.done(0)).isTrue();
    assertThat(baling.unbaled(1)).isZero();
    assertThat(baling.moreToCome(1)).isFalse();
  }

  @Test
  void aCropThatFillsItsBalesExactlyLeavesNoCrumb() {
    Plant plant =
        plant(
            "2027-03-01",
            "2027-03-31",
            "[]",
            """
                hours: {from: "08:00", to: "18:00"}
                fields: {bench: {area: 1 ha, yield: 30 t/ha, ready: 2027-03-01, baling: 60 bales/d}}
            """);
    List<Double> masses = new ArrayList<>();
    bales(baling(plant, 1), 0, new Bales(2, 0), masses);
    assertThat(masses).hasSize(60);
  }

  @Test
  void theReadyDayIsRoundedAwayFromZeroAndNotBeforeTheHorizon() {
    Plant plant =
        plant(
            "2027-03-01",
            "2027-03-31",
            "[]",
            """
                hours: {from: "08:00", to: "18:00"}
                fields: {bench: {area: 1 ha, yield: 30 t/ha, ready: 2027-03-06, ready_sd: 4 d, baling: 60 bales/d}}
            """);
    int moved = 0;
    for (int replication = 1; replication <= 200; replication++) {
      double late =
          4 * new RandomStreams(7).of(replication, "field.stalk.bench.readiness").nextNormal();
      int day = baling(plant, replication).readyDay(0);
      long rounded =
          late < 0 ? -Math.round(-late) : Math.round(late); // Math.round takes a positive half up
      assertThat(day).isEqualTo((int) Math.max(0, 5 + rounded));
      moved += day == 0 ? 1 : 0;
    }
    assertThat(moved).as("some fall before the horizon, else this shows nothing").isPositive();
  }

  @Test
  void theSeasonFactorIsOneForAllFields() {
    Plant plant =
        plant(
            "2027-03-01",
            "2027-03-31",
            "[]",
            """
                hours: {from: "08:00", to: "18:00"}
                yield_factor: {uniform: {low: 50 %, high: 150 %}}
                fields:
                  bench: {area: 1 ha, yield: 30 t/ha, ready: 2027-03-01, baling: 600 bales/d}
                  flat: {area: 2 ha, yield: 30 t/ha, ready: 2027-03-01, baling: 600 bales/d}
            """);
    Baling baling = baling(plant, 3);
    List<Double> bench = new ArrayList<>();
    List<Double> flat = new ArrayList<>();
    bales(baling, 0, new Bales(2, 0), bench);
    bales(baling, 1, new Bales(2, 0), flat);
    double factor = 0.5 + new RandomStreams(7).of(3, "season_factor.stalk").next();
    assertThat(bench.stream().mapToDouble(kg -> kg).sum()).isCloseTo(30_000 * factor, within(1e-6));
    assertThat(flat.stream().mapToDouble(kg -> kg).sum()).isCloseTo(60_000 * factor, within(1e-6));
  }

  /** First and last day of March on which each field is baled. */
  private static List<String> baledOn(Baling baling, String... fields) {
    Bales bales = new Bales(2, 0);
    Map<String, int[]> days = new LinkedHashMap<>();
    for (int field = earliest(baling, fields.length);
        field >= 0;
        field = earliest(baling, fields.length)) {
      double atS = baling.nextS(field);
      int day = 1 + (int) (atS / 86_400);
      days.computeIfAbsent(fields[field], none -> new int[] {day, 0})[1] = day;
      baling.make(field, bales, atS);
      assertThat(baling.goesOnTo(field) == field || baling.done(field)).isTrue();
    }
    return days.entrySet().stream()
        .map(each -> each.getKey() + " " + Arrays.toString(each.getValue()))
        .toList();
  }

  private static int earliest(Baling baling, int fields) {
    return IntStream.range(0, fields)
        .boxed()
        .filter(field -> baling.nextS(field) < Double.POSITIVE_INFINITY)
        .min(Comparator.comparing(baling::nextS))
        .orElse(-1);
  }

  private static Plant withBalers(String balers) {
    return plant(
        "2027-03-01",
        "2027-03-31",
        "[]",
        """
            hours: {from: "08:00", to: "18:00"}
            %s
            fields:
              a: {area: 1 ha, yield: 10 t/ha, ready: 2027-03-03, baling: 5 bales/d}
              b: {area: 1 ha, yield: 5 t/ha, ready: 2027-03-03, baling: 5 bales/d}
              c_early: {area: 1 ha, yield: 7.5 t/ha, ready: 2027-03-02, baling: 5 bales/d}
              d_bare: {area: 1 ha, yield: 0 t/ha, ready: 2027-03-01, baling: 5 bales/d}
              e_late: {area: 1 ha, yield: 2.5 t/ha, ready: 2027-03-20, baling: 5 bales/d}
        """
            .formatted(balers));
  }

  @Test
  void aBalerGoesOnToTheNextFieldInTurnTheDayAfter() {
    String[] fields = {"a", "b", "c_early", "d_bare", "e_late"};
    assertThat(baledOn(baling(withBalers("balers: 1"), 1), fields))
        .containsExactly("c_early [2, 4]", "a [5, 8]", "b [9, 10]", "e_late [20, 20]");
    assertThat(baledOn(baling(withBalers("balers: 2"), 1), fields))
        .containsExactly("c_early [2, 4]", "a [3, 6]", "b [5, 6]", "e_late [20, 20]");
    assertThat(baledOn(baling(withBalers(""), 1), fields))
        .containsExactly("c_early [2, 4]", "a [3, 6]", "b [3, 4]", "e_late [20, 20]")
        .isEqualTo(baledOn(baling(withBalers("balers: 9"), 1), fields));
  }

  @Test
  void whatAnotherYearLeftOnABareFieldWaitsForABalerToo() {
    Baling baling = baling(withBalers("balers: 1"), 1);
    assertThat(baling.add(3, 5_000)).as("the one baler is bound for another").isFalse();
    assertThat(baledOn(baling, "a", "b", "c_early", "d_bare", "e_late"))
        .containsExactly(
            "c_early [2, 4]", "d_bare [5, 6]", "a [7, 10]", "b [11, 12]", "e_late [20, 20]");
  }

  @Test
  void fieldsComeInTurnByTheirReadyDayThenByName() {
    Plant plant =
        plant(
            "2027-03-01",
            "2027-03-31",
            "[]",
            """
                hours: {from: "08:00", to: "18:00"}
                fields:
                  c: {area: 1 ha, yield: 30 t/ha, ready: 2027-03-02, baling: 600 bales/d}
                  b: {area: 1 ha, yield: 30 t/ha, ready: 2027-03-05, baling: 600 bales/d}
                  a: {area: 1 ha, yield: 30 t/ha, ready: 2027-03-05, baling: 600 bales/d}
            """);
    Baling baling = baling(plant, 1);
    assertThat(new int[] {baling.inTurn(0), baling.inTurn(1), baling.inTurn(2)})
        .containsExactly(2, 0, 1);
  }

  @Test
  void balingWaitsForEnoughDryDays() {
    DryDays days = new DryDays(FIRST, 4000);
    days.draw(Delivery.WetChain.always(0.3, 0.5, 2), new RandomStreams(9).of(1, "weather"));
    DryDays dry = new DryDays(FIRST, 4000);
    dry.draw(Delivery.WetChain.always(0.3, 0.5, 0), new RandomStreams(9).of(1, "weather"));
    for (int day = 2; day < 4000; day++) {
      assertThat(days.baling(day))
          .isEqualTo(dry.baling(day) && dry.baling(day - 1) && dry.baling(day - 2));
    }
    assertThat(days.baling(0)).as("days before the horizon were dry").isEqualTo(dry.baling(0));
  }

  /**
   * 40,000 days: wet ones and wet ones after wet ones within 6 standard errors of a chain that
   * mixes so; fewer than 1e-8 false alarms.
   */
  @Test
  void theLongRunShareOfWetDaysIsThatOfTheFile() {
    int n = 40_000;
    double w = 0.22;
    double q = 0.45;
    DryDays dry = new DryDays(FIRST, n);
    dry.draw(Delivery.WetChain.always(w, q, 0), new RandomStreams(10).of(1, "weather"));
    int wet = 0;
    int wetAfterWet = 0;
    for (int day = 1; day < n; day++) {
      wet += dry.baling(day) ? 0 : 1;
      wetAfterWet += dry.baling(day) || dry.baling(day - 1) ? 0 : 1;
    }
    double correlation = q - w * (1 - q) / (1 - w);
    double error = Math.sqrt(w * (1 - w) / n * (1 + correlation) / (1 - correlation));
    assertThat(wet / (double) n).isCloseTo(w, within(6 * error));
    assertThat(wetAfterWet / (double) wet).isCloseTo(q, within(6 * Math.sqrt(q * (1 - q) / wet)));
  }

  /**
   * 40 years of Mays at 15 % among months at 45 %: within 6 standard errors of a chain that mixes
   * so, the first week of each May left out, which still feels April; fewer than 1e-8 false alarms.
   */
  @Test
  void aMonthHasItsOwnShareOfWetDays() {
    LocalDate first = LocalDate.of(2027, 1, 1);
    int n = 40 * 365;
    double w = 0.15;
    double q = 0.35;
    Delivery.WetChain chain =
        new Delivery.WetChain(
            new Delivery.Wetness(0.45, 0.6), 0, Map.of(Month.MAY, new Delivery.Wetness(w, q)));
    DryDays dry = new DryDays(first, n);
    dry.draw(chain, new RandomStreams(12).of(1, "weather"));
    int days = 0;
    int wet = 0;
    int others = 0;
    int wetOthers = 0;
    for (int day = 0; day < n; day++) {
      LocalDate date = first.plusDays(day);
      boolean may = date.getMonth() == Month.MAY;
      boolean settled = may && date.getDayOfMonth() > 7;
      days += settled ? 1 : 0;
      wet += settled && !dry.baling(day) ? 1 : 0;
      boolean other = !may && date.getMonth() != Month.JUNE;
      others += other ? 1 : 0;
      wetOthers += other && !dry.baling(day) ? 1 : 0;
    }
    assertThat(wet / (double) days).isCloseTo(w, within(6 * error(w, q, days)));
    assertThat(wetOthers / (double) others).isCloseTo(0.45, within(6 * error(0.45, 0.6, others)));
  }

  private static double error(double w, double q, int days) {
    double correlation = q - w * (1 - q) / (1 - w);
    return Math.sqrt(w * (1 - w) / days * (1 + correlation) / (1 - correlation));
  }

  @Test
  void noneAndAllMeanNeverAndAlways() {
    DryDays days = new DryDays(FIRST, 100);
    days.draw(Delivery.WetChain.always(0, 0, 1), new RandomStreams(1).of(1, "weather"));
    assertThat(days.baling(0) && days.baling(99)).isTrue();
    days.draw(Delivery.WetChain.always(1, 1, 0), new RandomStreams(1).of(1, "weather"));
    for (int day = 0; day < 100; day++) {
      assertThat(days.baling(day)).isFalse();
    }
  }

  private static Delivery.PastYear year(int year, MonthDay... wet) {
    return new Delivery.PastYear(year, Set.of(wet));
  }

  @Test
  void theLeapDayIsDroppedWhereTheHorizonHasNoneAndAsTheDayBeforeWhereTheYearHasNone() {
    MonthDay last = MonthDay.of(2, 28);
    MonthDay leap = MonthDay.of(2, 29);
    DryDays days = new DryDays(LocalDate.of(2028, 2, 27), 4); // 27, 28, 29 February, 1 March
    days.draw(
        new Delivery.PastYears(List.of(year(2021, last)), 0),
        new RandomStreams(1).of(1, "weather"));
    assertThat(List.of(days.baling(0), days.baling(1), days.baling(2), days.baling(3)))
        .containsExactly(true, false, false, true);
    days.draw(
        new Delivery.PastYears(List.of(year(2020, leap)), 0),
        new RandomStreams(1).of(1, "weather"));
    assertThat(List.of(days.baling(0), days.baling(1), days.baling(2), days.baling(3)))
        .containsExactly(true, true, false, true);
    DryDays common = new DryDays(LocalDate.of(2027, 2, 28), 2);
    common.draw(
        new Delivery.PastYears(List.of(year(2020, leap)), 0),
        new RandomStreams(1).of(1, "weather"));
    assertThat(common.baling(0) && common.baling(1)).isTrue();
  }

  /**
   * One dry and one wet year: over 40 seasons both crops are baled or neither, and either happens;
   * Fewer than 1e-11 false alarms.
   */
  @Test
  void cropsOfOnePlantMeetTheSamePastYear(@TempDir Path folder) throws IOException {
    String one = Files.readString(Path.of("../line-configs/exact/past_rain.yaml"));
    String crop = "  stalk:\n    bale: {mass: 500 kg}\n    composition: {fiber: 100 %}\n";
    String from = one.substring(one.indexOf("  stalk:\n    fields:"), one.indexOf("\nmoney:"));
    String both =
        one.replace(crop, crop + crop.replace("stalk", "kenaf"))
            .replace(from, from + from.replace("stalk", "kenaf"));
    StringBuilder rain = new StringBuilder("date,rain_mm\n");
    LocalDate.of(2019, 1, 1)
        .datesUntil(LocalDate.of(2021, 1, 1))
        .forEach(day -> rain.append(day).append(day.getYear() == 2020 ? ",9\n" : ",0\n"));
    Files.writeString(folder.resolve("past_rain.csv"), rain);
    Plant plant = PlantFile.read(Files.writeString(folder.resolve("p.yaml"), both)).plant();
    int dry = 0;
    for (int replication = 1; replication <= 40; replication++) {
      Baling baling = baling(plant, replication);
      boolean first = baling.nextS(0) < Double.POSITIVE_INFINITY;
      assertThat(baling.nextS(1) < Double.POSITIVE_INFINITY).isEqualTo(first);
      dry += first ? 1 : 0;
    }
    assertThat(dry).isBetween(1, 39);
  }

  /**
   * 9,000 seasons: each pair of four within 6 standard errors of 1/4; fewer than 1e-8 false alarms.
   */
  @Test
  void eachCalendarYearOfTheHorizonDrawsAYearOfItsOwn() {
    DryDays days = new DryDays(LocalDate.of(2027, 12, 31), 2);
    Delivery.PastYears past =
        new Delivery.PastYears(
            List.of(year(2021), year(2022, MonthDay.of(12, 31), MonthDay.of(1, 1))), 0);
    int n = 9000;
    int[] seen = new int[4];
    for (int replication = 1; replication <= n; replication++) {
      days.draw(past, new RandomStreams(4).of(replication, "weather.stalk"));
      seen[(days.baling(0) ? 2 : 0) + (days.baling(1) ? 1 : 0)]++;
    }
    for (int count : seen) {
      assertThat(count / (double) n).isCloseTo(0.25, within(6 * Math.sqrt(0.25 * 0.75 / n)));
    }
  }
}
