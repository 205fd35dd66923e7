package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.plant.Basis;
import hurdline.plant.CashTerms;
import hurdline.plant.Curve;
import hurdline.plant.Delivery;
import hurdline.plant.Machine;
import hurdline.plant.Money;
import hurdline.plant.Option;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.SeasonEntry;
import hurdline.plant.Step;
import hurdline.plant.Stop;
import hurdline.plant.Yard;
import hurdline.random.Beta;
import hurdline.random.Constant;
import hurdline.random.Empirical;
import hurdline.random.Exponential;
import hurdline.random.Lognormal;
import hurdline.random.Uniform;
import hurdline.random.Weibull;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What the plant with every key comes to in SI; factors by NIST SP 811 (2008), appendix B.8. */
class ValuesTest {
  private static final double LB = 0.45359237;
  private static final double TON = 907.18474;
  private static final double NEVER = Double.POSITIVE_INFINITY;
  private static final Plant PLANT = Edited.plantFile().plant();

  private static <T> T machine(String name, Class<T> kind) {
    return kind.cast(
        PLANT.machines().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow());
  }

  private static Step step(int line, String machine) {
    return PLANT.lines().get(line).steps().stream()
        .filter(s -> s.machine().equals(machine))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void calendarAndShifts() {
    assertThat(PLANT.calendar().from()).isEqualTo("2027-01-04");
    assertThat(PLANT.calendar().closed())
        .containsExactly(LocalDate.of(2027, 5, 31), LocalDate.of(2027, 7, 5));
    var night = PLANT.calendar().shifts().get(1);
    assertThat(night.fromS()).isEqualTo(22 * 3600);
    assertThat(night.lengthS()).isEqualTo(8 * 3600);
    assertThat(night.rests()).containsExactly(new hurdline.plant.Calendar.Rest(2 * 3600, 1800));
    assertThat(PLANT.calendar().shifts().get(2).days()).hasSize(7);
  }

  @Test
  void componentsAndCrops() {
    assertThat(PLANT.components().get(3).looseKgPerM3().getAsDouble())
        .isCloseTo(240.277, within(1e-3)); // 15 lb/ft3
    var stalk = PLANT.crops().get(0);
    assertThat(stalk.bale().moisture()).isEqualTo(new Beta(0.12, 0.01, 0.07, 0.15));
    assertThat(stalk.bale().diameterM()).contains(new Uniform(0.008, 0.014));
    assertThat(stalk.bale().composition())
        .isEqualTo(Map.of("long_fiber", 0.2, "short_fiber", 0.1, "hurd", 0.6, "fines", 0.1));
    assertThat(stalk.bale().spread()).isEqualTo(0.05);
    assertThat(PLANT.crops().get(1).modules()).isTrue();
  }

  @Test
  void machinesAndStops() {
    assertThat(machine("feeder", Machine.BaleFeeder.class).table()).isEqualTo(6);
    assertThat(machine("surge_bin", Machine.Bin.class))
        .isEqualTo(new Machine.Bin("surge_bin", 60, true, 10, 2));
    assertThat(machine("cyclone", Machine.Cyclone.class).collects()).isEqualTo(0.985);
    assertThat(machine("bagger", Machine.Packer.class))
        .extracting(Machine.Packer::press, Machine.Packer::spouts)
        .containsExactly(false, 2);
    assertThat(machine("press", Machine.Packer.class))
        .extracting(Machine.Packer::press, Machine.Packer::spouts)
        .containsExactly(true, 2);
    assertThat(machine("saw", Machine.Plain.class).common().drawsWithFlow()).isTrue();
    List<Stop> stops = machine("saw", Machine.Plain.class).common().stops();
    assertThat(stops.get(0))
        .isEqualTo(
            new Stop(
                "choke",
                new Weibull(1.5, 9 * 3600, 600, 3 * 86_400),
                new Stop.Count(Stop.Counted.RUNNING, List.of()),
                new Lognormal(1080, 600, 480, 4 * 3600),
                7200,
                true,
                List.of("mechanic"),
                20));
    assertThat(stops.get(1))
        .isEqualTo(
            new Stop(
                "saws",
                new Constant(320_000),
                new Stop.Count(Stop.Counted.MASS, List.of("stalk")),
                Empirical.of(7200, 10_800, 18_000),
                0,
                false,
                List.of(),
                0));
  }

  @Test
  void aMillTakesItsRateFromItsMotor() {
    Machine.HammerMill mill = machine("mill", Machine.HammerMill.class);
    assertThat(mill.common().powerW()).isEqualTo(25 * 745.69987158227022);
    assertThat(mill.grinding())
        .isEqualTo(
            new Machine.Grinding(
                43_200,
                0.006,
                0.75,
                0.8,
                0.25,
                new Curve(List.of(new Curve.Point(0.08, 0.9), new Curve.Point(0.2, 1.3)))));
    assertThat(mill.screens())
        .containsExactly(
            new Machine.Screen("coarse", 0.02, 0.02), new Machine.Screen("fine", 0.002, 0.11));
    assertThat(mill.swapS()).isEqualTo(new Constant(2400));
    assertThat(mill.swapNeeds()).contains("mechanic");
  }

  @Test
  void productsAndPackages() {
    assertThat(PLANT.products().get(0).pricePerKg()).isEqualTo(0.45 / LB, within(1e-15));
    Product fine = PLANT.products().get(2);
    assertThat(fine.sellsOrdersOnly()).isTrue();
    assertThat(fine.orders().get(0).massKg()).isEqualTo(60 * TON, within(1e-9));
    assertThat(fine.orders().get(0).latePerDay()).isEqualTo(250, within(1e-9));
    assertThat(fine.orders().get(0).pricePerKg().getAsDouble()).isEqualTo(430 / TON, within(1e-15));
    assertThat(PLANT.products().get(0).moisture())
        .isEqualTo(
            new Product.Moisture(Optional.of(new Basis.At(0.107)), OptionalDouble.of(0.15), 0.3));
    assertThat(fine.moisture()).isEqualTo(Product.Moisture.notSaid());
    assertThat(PLANT.products().get(3).moisture().basis()).contains(new Basis.AsIs());
    assertThat(PLANT.packages().get(1))
        .isEqualTo(new hurdline.plant.Packaging("bale", 500 * LB, new Constant(0), 0, List.of()));
  }

  @Test
  void linesAndSteps() {
    Step saw = step(0, "saw");
    assertThat(saw.rateKgPerS().getAsDouble()).isEqualTo(4200.0 / 3600);
    assertThat(saw.dries()).isEqualTo(0.03);
    assertThat(saw.breaks()).containsExactly(new Step.Break("long_fiber", "short_fiber", 0.08));
    assertThat(saw.outlets().get(1).takes()).contains(Map.of("hurd", 0.9, "short_fiber", 0.06));
    assertThat(saw.outlets().get(1).byDiameter().get("short_fiber").points().get(0))
        .isEqualTo(new Curve.Point(0.008, 1.1));
    assertThat(saw.outlets().get(2).takes()).isEmpty();
    assertThat(step(0, "feeder").table()).hasValue(4);
    assertThat(step(0, "surge_bin").ownHours())
        .contains(
            new Step.OwnHours(
                List.of("night"),
                Optional.of(LocalDate.of(2027, 2, 1)),
                Optional.of(LocalDate.of(2027, 3, 31))));
    assertThat(step(0, "surge_bin").precedence()).isEqualTo(2);
    assertThat(step(0, "press").packs())
        .contains(new Step.PacksProduct("fiber", Optional.of("bale")));
    assertThat(step(0, "bagger").packs())
        .contains(new Step.PacksFromMill("mill", Optional.empty()));
    assertThat(step(0, "mill").mix())
        .isEqualTo(
            new Step.Shares(
                List.of(new Step.MixShare("coarse", 0.6), new Step.MixShare("fine", 0.4))));
    assertThat(step(0, "mill").stayS()).isEqualTo(16 * 3600);
    assertThat(step(1, "gin").mix()).isEqualTo(new Step.FirstScreen());
    assertThat(PLANT.lines().get(0).alongside()).containsExactly("fans");
  }

  @Test
  void seasonYardAndResources() {
    assertThat(PLANT.season().get(1)).isEqualTo(new SeasonEntry.Changeover(5, 6));
    assertThat(PLANT.crews()).contains(new hurdline.plant.Crew("cotton_line", "night", 7));
    assertThat(PLANT.resources().get(0).first()).hasSize(7).last().isEqualTo("saw.choke");
    Yard yard = PLANT.yard();
    assertThat(yard.onHand()).isEqualTo(Map.of("stalk", 800));
    assertThat(yard.pick()).isEqualTo(new Yard.ByPlace(List.of("row", "shed")));
    assertThat(yard.turnAway()).isTrue();
    assertThat(Math.exp(-yard.fieldLossPerS() * 30.4375 * 86_400)).isCloseTo(0.97, within(1e-15));
    assertThat(yard.lifts().get("seed_cotton"))
        .isEqualTo(new Yard.Lift(new hurdline.plant.Job(new Constant(360), List.of()), 1));
  }

  @Test
  void deliveries() {
    Delivery stalk = PLANT.deliveries().get(0);
    Delivery.Field bench = stalk.fields().get(0);
    assertThat(bench.areaM2()).isEqualTo(410 * 4046.8564224, within(1e-9));
    assertThat(bench.yieldKgPerM2().mean()).isEqualTo(3.3 * TON / 4046.8564224, within(1e-12));
    assertThat(bench.readySdDays()).isEqualTo(5);
    assertThat(bench.balesPerDay()).isEqualTo(380);
    assertThat(bench.bale().massKg()).isEqualTo(new Constant(900 * LB));
    assertThat(bench.bale().composition()).isEqualTo(Map.of("long_fiber", 0.25, "hurd", 0.75));
    assertThat(stalk.weather())
        .isEqualTo(
            new Delivery.WetChain(
                new Delivery.Wetness(0.22, 0.45),
                1,
                Map.of(
                    Month.JANUARY, new Delivery.Wetness(0.12, 0.2),
                    Month.JULY, new Delivery.Wetness(0.3, 0.45))));
    assertThat(stalk.hours().days()).doesNotContain(DayOfWeek.SUNDAY).hasSize(6);
    assertThat(stalk.trucks().orElseThrow().driveS()).isEqualTo(new Constant(38 * 60));
    Delivery.Loads loads = PLANT.deliveries().get(1).loads().orElseThrow();
    assertThat(loads.everyS()).isEqualTo(new Exponential(1920, Double.NEGATIVE_INFINITY, NEVER));
    assertThat(PLANT.deliveries().get(1).hours()).isEqualTo(loads.hours());
  }

  @Test
  void money() {
    Money money = PLANT.money().orElseThrow();
    assertThat(money.tariff().energyPerJ() * 3.6e6).isCloseTo(0.11, within(1e-15));
    assertThat(money.tariff().demandPerWMonth() * 1000).isCloseTo(17, within(1e-12));
    assertThat(money.wagePerS() * 3600).isCloseTo(26, within(1e-12));
    assertThat(money.overheadPerS() * 365.25 * 86_400).isCloseTo(240_000, within(1e-8));
    assertThat(money.discountPerYr()).isCloseTo(0.09, within(1e-15));
    assertThat(money.growth().electricity()).isCloseTo(-0.01, within(1e-15));
    CashTerms.Borrowing loan = PLANT.options().get(0).loan().orElseThrow();
    assertThat(loan.ratePerYr()).isCloseTo(0.06, within(1e-15));
    assertThat(PLANT.options().get(0))
        .isEqualTo(
            new Option(
                "bigger_mill",
                "75 hp mill in place of the 25 hp one",
                140_000,
                12,
                12_000,
                Optional.of(new CashTerms.Borrowing(0.8, loan.ratePerYr(), 5))));
    assertThat(PLANT.options().get(1).lifeYr()).isEqualTo(10);
    assertThat(PLANT.plans().get(0).says()).isEqualTo("cotton a week later");
  }

  @Test
  void whatIsLeftOutHasTheDefaultsOfThePage() {
    Plant small = PlantFile.of("s.yaml", FormatReferenceTest.snippets().get(0)).plant();
    assertThat(small.components())
        .extracting(hurdline.plant.Component::name)
        .containsExactly("long_fiber", "short_fiber", "hurd", "fines");
    assertThat(small.crops().get(0).bale().moisture()).isEqualTo(new Constant(0.12));
    assertThat(((Machine.BaleFeeder) small.machines().get(0)).table()).isEqualTo(2);
    assertThat(small.yard().pick()).isEqualTo(new Yard.OldestFirst());
    assertThat(small.yard().turnAway()).isFalse();
    assertThat(small.yard().lifts()).isEmpty();
    assertThat(small.money()).isEmpty();
    assertThat(small.lines().get(0).steps().get(0).precedence()).isEqualTo(1);
  }
}
