package hurdline.simulation.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.compiled.YardPlan;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.Ready;
import hurdline.simulation.Replication;
import hurdline.simulation.YardTexts;
import hurdline.simulation.results.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Years that follow each other, each opening with the crop that the one before left. */
class CarriedOverStockTest {
  private static final double[] NO_DEMAND = {};

  private static final String PRICED = "\nmoney: {currency: USD, crop_prices: {stalk: 20 USD/t}}\n";

  private record Year(Outcome outcome, CarriedOverStock left) {}

  private static List<Year> years(Plant plant, int count) {
    Replication replication = Ready.replication(plant);
    List<Year> years = new ArrayList<>();
    CarriedOverStock opening = null;
    for (int year = 1; year <= count; year++) {
      Outcome outcome = replication.run(new RandomStreams(7), year, opening, null);
      opening = replication.leftOver();
      years.add(new Year(outcome, opening));
    }
    return years;
  }

  private static List<Year> years(int count, String rest) {
    String text = YardTexts.march(1, rest).replace("{uniform: {low: 8 %, high: 20 %}}", "10 %");
    return years(PlantFile.of("yard.yaml", text + PRICED).variants().with(), count);
  }

  private static List<Double> told(List<Year> years, String measure) {
    return years.stream().map(year -> year.outcome().value(measure)).toList();
  }

  private static List<Integer> left(List<Year> years) {
    return years.stream().map(year -> year.outcome().balesLeft()).toList();
  }

  /**
   * Loads of ten bales come at 9, 10, 11 and 12; two tonnes an hour, four bales, are fed from six
   * to two. The first year begins at 9 and feeds 20 bales, all later ones 32, so that 20, 28, 36,
   * 44 are left; at 20 USD/t and 500 kg a bale 40 bales cost 400 USD, and stock is worth what it
   * gained.
   */
  @Test
  void cropPilesUpByWhatIsNotFed() {
    List<Year> years =
        years(
            4,
            """
            yard: {places: {open: {holds: 900 bales}}}
            deliveries: {stalk: {loads: {every: 1 h, bales: 10, hours: {from: "08:00", to: "12:30"}}}}
            """);
    assertThat(left(years)).containsExactly(20, 28, 36, 44);
    assertThat(told(years, "intake.stalk.fed")).containsExactly(20.0, 32.0, 32.0, 32.0);
    assertThat(told(years, "intake.stalk.weighed_in")).containsExactly(40.0, 40.0, 40.0, 40.0);
    assertThat(told(years, "intake.stalk.on_hand_at_start")).containsExactly(0.0, 20.0, 28.0, 36.0);
    assertThat(told(years, "money.crop_cost"))
        .allSatisfy(paid -> assertThat(paid).isCloseTo(400, within(1e-6)));
    List<Double> stock = told(years, "money.stock_change");
    assertThat(stock.get(0)).isCloseTo(200, within(1e-6));
    assertThat(stock.subList(1, 4))
        .allSatisfy(gained -> assertThat(gained).isCloseTo(80, within(1e-6)));
  }

  /**
   * Age goes on: fed oldest first, the second year's first 20 bales came on the afternoon of the
   * day before.
   */
  @Test
  void balesKeepTheirAge() {
    String rest =
        """
        yard: {places: {open: {holds: 900 bales}}}
        deliveries: {stalk: {loads: {every: 1 h, bales: 10, hours: {from: "08:00", to: "12:30"}}}}
        """;
    CarriedOverStock left = years(1, rest).get(0).left();
    assertThat(left.inPlaces())
        .extracting(bale -> Math.round(bale.ageS() / 3600))
        .contains(13L, 12L)
        .hasSize(20 - left.inFront().size());
    assertThat(years(2, rest).get(1).outcome().value("yard.stalk.age.mean")).isGreaterThan(0.2);
  }

  /**
   * Twenty bales are left, 10 t. In a year in which nothing is worked half of them waste away; the
   * next calendar books that as its own loss, so that over both what was paid and is not in stock
   * was fed or lost.
   */
  @Test
  void whatIsLeftWastesBetweenTwoCalendars() {
    String rest =
        """
        yard: {places: {open: {holds: 900 bales, loss: 50 %/yr}}}
        deliveries: {stalk: {loads: {every: 1 h, bales: 10, hours: {from: "08:00", to: "12:30"}}}}
        """;
    String text = YardTexts.march(1, rest).replace("{uniform: {low: 8 %, high: 20 %}}", "10 %");
    Replication replication =
        Ready.replication(PlantFile.of("yard.yaml", text + PRICED).variants().with());
    Outcome first = replication.run(new RandomStreams(7), 1, null, null);
    CarriedOverStock left = replication.leftOver();
    Outcome second = replication.run(new RandomStreams(7), 2, left.later(365.25 * 86_400), null);
    assertThat(second.value("mass.stalk.lost_in_yard")).isCloseTo(5, within(0.02));
    assertThat(second.value("yard.stalk.age.mean")).isBetween(150.0, 200.0);
    double paid = first.value("money.crop_cost") + second.value("money.crop_cost");
    double kept = first.value("money.stock_change") + second.value("money.stock_change");
    double gone =
        List.of(first, second).stream()
            .mapToDouble(one -> one.value("mass.stalk.fed") + one.value("mass.stalk.lost_in_yard"))
            .sum();
    assertThat(paid - kept).isCloseTo(20 * gone, within(1e-6));
    assertThat(second.value("balance.residual")).isLessThan(1e-9);
  }

  /**
   * The yard holds 12 bales: one load is in, the others wait at the gate and are paid only when
   * weighed in.
   */
  @Test
  void whatWaitsAtTheGateStandsThereAgainAndIsNotPaidTwice() {
    List<Year> years =
        years(
            3,
            """
            yard: {places: {open: {holds: 12 bales}}}
            deliveries: {stalk: {loads: {every: 1 h, bales: 10, hours: {from: "08:00", to: "12:30"}}}}
            """);
    assertThat(years.get(2).left().atGate()).isNotEmpty();
    double fed = sum(years, "intake.stalk.fed");
    assertThat(left(years).get(2)).isCloseTo((int) (3 * 40 - fed), within(1));
    assertThat(sum(years, "money.crop_cost") - sum(years, "money.stock_change"))
        .as("what was fed, at 20 USD/t")
        .isCloseTo(20 * sum(years, "mass.stalk.fed"), within(1e-6));
  }

  private static double sum(List<Year> years, String measure) {
    return told(years, measure).stream().mapToDouble(d -> d).sum();
  }

  /**
   * What nothing brings is the file's stock on hand, year for year, however much of it was left.
   */
  @Test
  void aCropThatNothingBringsIsThereAnewEachYear() {
    List<Year> years =
        years(3, "yard: {on_hand: {stalk: 60 bales}, places: {open: {holds: 60 bales}}}");
    assertThat(left(years)).containsExactly(0, 0, 0);
    assertThat(told(years, "intake.stalk.on_hand_at_start")).containsExactly(60.0, 60.0, 60.0);
    assertThat(told(years, "intake.stalk.weighed_in")).containsExactly(0.0, 0.0, 0.0);
    assertThat(told(years, "intake.stalk.fed")).containsExactly(32.0, 32.0, 32.0);
  }

  /**
   * 40 bales a year on a field whose baler makes 16 a day, and no truck: all stays, baled and
   * unbaled.
   */
  @Test
  void whatFieldsHoldStaysThere() {
    List<Year> years =
        years(
            3,
            """
            yard: {places: {open: {holds: 900 bales}}}
            deliveries:
              stalk:
                hours: {from: "06:00", to: "14:00"}
                fields: {creek: {area: 10 ha, yield: 2 t/ha, ready: 2027-03-01, baling: 16 bales/d}}
                trucks: {count: 1, bales: 60, drive: 20 min}
            """);
    assertThat(left(years)).containsExactly(40, 80, 120);
    assertThat(years).allSatisfy(year -> assertThat(year.left().isEmpty()).isFalse());
    assertThat(years.get(2).left().atFields()).hasSize(48);
    assertThat(years.get(2).left().unbaledKg()[0]).isCloseTo(120 * 500 - 48 * 500, within(1e-6));
  }

  @Test
  void aYearThatFedEverythingLeavesNothing() {
    List<Year> years =
        years(2, "yard: {on_hand: {stalk: 30 bales}, places: {open: {holds: 60 bales}}}");
    assertThat(left(years)).containsExactly(0, 0);
    assertThat(years).allSatisfy(year -> assertThat(year.left().isEmpty()).isTrue());
    assertThat(CarriedOverStock.NONE.isEmpty()).isTrue();
    CarriedOverStock.Bale bale =
        new CarriedOverStock.Bale(0, 0, 500, 0.1, new double[] {0}, 0, 0, 0, 0, new double[] {1});
    List<CarriedOverStock.Bale> one = List.of(bale);
    assertThat(
            new CarriedOverStock(one, List.of(), List.of(), List.of(), new double[1], NO_DEMAND)
                .isEmpty())
        .isFalse();
    assertThat(
            new CarriedOverStock(List.of(), one, List.of(), List.of(), new double[1], NO_DEMAND)
                .isEmpty())
        .isFalse();
    assertThat(
            new CarriedOverStock(
                    List.of(), List.of(), List.of(one), List.of(), new double[1], NO_DEMAND)
                .isEmpty())
        .isFalse();
    assertThat(
            new CarriedOverStock(List.of(), List.of(), List.of(), one, new double[1], NO_DEMAND)
                .isEmpty())
        .isFalse();
    assertThat(
            new CarriedOverStock(
                    List.of(), List.of(), List.of(), List.of(), new double[] {0, 1}, NO_DEMAND)
                .isEmpty())
        .isFalse();
  }

  /** Each as it was weighed: 30 and 70 % of dry matter, a tenth of it water. */
  @Test
  void loadsAreToldAsTheyWereWeighed() {
    String text =
        YardTexts.march(
                1,
                """
                yard: {places: {open: {holds: 900 bales}}}
                deliveries: {stalk: {loads: {every: 1 h, bales: 10, hours: {from: "08:00", to: "12:30"}}}}
                """)
            .replace("{uniform: {low: 8 %, high: 20 %}}", "10 %");
    Plant plant = PlantFile.of("yard.yaml", text).plant();
    Replication replication = Ready.replication(plant);
    replication.run(new RandomStreams(7), 1, null);
    assertThat(replication.loads())
        .extracting(WeighedLoad::atS)
        .containsExactly(9 * 3600.0, 10 * 3600.0, 11 * 3600.0, 12 * 3600.0);
    assertThat(replication.loads())
        .allSatisfy(
            load -> {
              assertThat(load.crop()).isEqualTo("stalk");
              assertThat(load.field()).isEmpty();
              assertThat(load.bales()).isEqualTo(10);
              assertThat(load.kg()).isCloseTo(5_000, within(1e-9));
              assertThat(load.dryKg()).isCloseTo(4_500, within(1e-9));
            });
  }

  /**
   * What stock gained over later years is what the last one's bales are worth more than the
   * first's: the stalk's price for its dry mass brought to 12 %, the cotton costing nothing. A bale
   * lost, doubled or dried between two years would show.
   */
  @Test
  void theExampleLosesNoBaleBetweenYears() {
    Plant plant = PlantFile.read(Path.of("../line-configs/sweetgum-bend.yaml")).variants().with();
    List<Year> years = years(plant, 3);
    int stalk = YardPlan.of(plant).crop(0).equals("stalk") ? 0 : 1;
    double first = worth(plant, years.get(0).left(), stalk);
    double last = worth(plant, years.get(2).left(), stalk);
    assertThat(first).isGreaterThan(1000);
    assertThat(sum(years.subList(1, 3), "money.stock_change"))
        .isCloseTo(last - first, within(1e-6 * last));
  }

  private static double worth(Plant plant, CarriedOverStock left, int crop) {
    double pricePerKg = plant.money().orElseThrow().cropsPerKg().get("stalk");
    return Stream.concat(left.inPlaces().stream(), left.inFront().stream())
        .filter(bale -> bale.crop() == crop)
        .mapToDouble(bale -> bale.massKg() * (1 - bale.moisture()) / 0.88 * pricePerKg)
        .sum();
  }
}
