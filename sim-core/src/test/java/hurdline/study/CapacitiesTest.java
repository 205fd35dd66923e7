package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.BottleneckRow;
import hurdline.answer.Capacity;
import hurdline.answer.RunAnswer;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.run.Run;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What limits a line next, machines that are alike, and orders against what can be made. */
class CapacitiesTest {
  private static final String TWO_SAWS =
      """
      hurdline: 1
      plant: Two saws side by side
      calendar: {from: 2027-03-01, to: 2027-03-31, shifts: {day: {from: "06:00", to: "14:00"}}}
      components: [hurd]
      crops: {stalk: {bale: {mass: 500 kg}, composition: {hurd: 100 %}}}
      machines:
        feeder: {kind: bale-feeder}
        parter: {kind: conveyor}
        saw_1: {kind: separating-saw, stops: {jam: {every: {exponential: {mean: 5 h}}, counted: running, lasts: 30 min}}}
        saw_2: {kind: separating-saw, stops: {jam: {every: {exponential: {mean: 5 h}}, counted: running, lasts: 30 min}}}
      products: {chips: {price: 100 USD/t}}
      lines:
        line:
          crop: stalk
          feed: feeder
          steps:
            feeder: {rate: 5 t/h, to: parter}
            parter: {outlets: [{to: saw_1, takes: {hurd: 50 %}}, {to: saw_2}]}
            saw_1: {rate: 1 t/h, to: chips}
            saw_2: {rate: 1 t/h, to: chips}
      season: [{line: line, from: 2027-03-01, to: 2027-03-31, shifts: [day]}]
      yard: {on_hand: {stalk: 2000 bales}, places: {barn: {holds: 2000 bales}}}
      money: {currency: USD}
      """;

  private static PlantOrigin source(String text) {
    PlantFile file = PlantFile.of("plant.yaml", text);
    return new PlantOrigin(file.variants(), "plant.yaml", file.contentHash(), "0", file.warnings());
  }

  private static Capacity capacity(String text) {
    return RatedCapacity.of(source(text), PlantChanges.base()).capacity();
  }

  private static RunAnswer run(String text, int replications) {
    return new Run(source(text), PlantChanges.base(), Studied.effort(replications, 1))
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  @Test
  void machinesThatAreAlikeAndInParallelLimitTogether() {
    Capacity.Limits limits = capacity(TWO_SAWS).lines().get(0).limits();
    assertThat(limits.rated().machines()).containsExactly("saw_1", "saw_2");
    assertThat(limits.rated().fedTPerH()).isCloseTo(2, within(1e-9));
    assertThat(limits.next().get(0).freed()).containsExactly("saw_1", "saw_2");
    assertThat(limits.next().get(0).rated().fedTPerH()).isCloseTo(5, within(1e-9));
  }

  @Test
  void machinesThatDifferInOneFigureOrStandOneBehindTheOtherAreNoTwins() {
    assertThat(
            capacity(TWO_SAWS.replace("saw_2: {rate: 1 t/h", "saw_2: {rate: 1.1 t/h"))
                .lines()
                .get(0)
                .limits()
                .rated()
                .machines())
        .containsExactly("saw_1");
    assertThat(
            capacity(TWO_SAWS.replace("saw_2: {kind: separating-saw", "saw_2: {kind: lint-cleaner"))
                .lines()
                .get(0)
                .limits()
                .rated()
                .machines())
        .containsExactly("saw_1");
    String row =
        TWO_SAWS
            .replace("{outlets: [{to: saw_1, takes: {hurd: 50 %}}, {to: saw_2}]}", "{to: saw_1}")
            .replace("saw_1: {rate: 1 t/h, to: chips}", "saw_1: {rate: 1 t/h, to: saw_2}");
    assertThat(capacity(row).lines().get(0).limits().rated().machines()).containsExactly("saw_1");
  }

  /** Each jam stops both saws; together they have what each has, and the hours still add up. */
  @Test
  void whatLimitedALineNamesTwinsTogether() {
    RunAnswer answer = run(TWO_SAWS, 4);
    List<String> causes = answer.holders().stream().map(BottleneckRow::cause).toList();
    assertThat(causes)
        .contains("saw_1+saw_2", "saw_1+saw_2.jam")
        .doesNotContain("saw_1", "saw_2.jam");
    assertThat(answer.outline().titles().cause("saw_1+saw_2.jam"))
        .isEqualTo("the stop jam of the saw 1 and the saw 2");
    assertThat(answer.holders().stream().mapToDouble(BottleneckRow::share).sum())
        .isCloseTo(1, within(1e-9));
    BottleneckRow jams = answer.holders().get(causes.indexOf("saw_1+saw_2.jam"));
    double one = answer.mean("line.line.hours.limited_by.saw_1.jam");
    double other = answer.mean("line.line.hours.limited_by.saw_2.jam");
    assertThat(one).isPositive();
    assertThat(jams.hours()).isCloseTo(one + other, within(1e-9));
    assertThat(jams.shareHigh95()).isGreaterThan(jams.share());
    Capacity.Next next = answer.capacity().lines().get(0).limits().next().get(0);
    assertThat(next.freed()).containsExactly("saw_1", "saw_2");
    assertThat(answer.flows().get(0).nodes())
        .filteredOn(node -> node.name().startsWith("saw_"))
        .allSatisfy(node -> assertThat(node.heldShare()).isGreaterThan(0.9));
  }

  /**
   * A bale a day is gone within a quarter of an hour: what the line lacks then no machine can give.
   */
  @Test
  void whereBalesAreWantingNoMachineIsNext() {
    String text =
        TWO_SAWS.replace("on_hand: {stalk: 2000 bales}, ", "")
            + "deliveries: {stalk: {loads: {every: 24 h, bales: 1}}}\n";
    RunAnswer answer = run(text, 2);
    assertThat(answer.holders().get(0).cause()).isEqualTo("no_bales");
    assertThat(answer.capacity().lines().get(0).limits().next()).isEmpty();
  }

  private static Capacity.Orders orders(String plant) {
    Path file = Path.of("../line-configs/exact/" + plant + ".yaml");
    return RatedCapacity.of(Studied.source(file), PlantChanges.base()).capacity().orders().get(0);
  }

  /** mill_orders.md: fine at 1 t/h, coarse at 4 t/h, 16 h, 100 t: 3/16 + 4/64 and 3/100 + 4/100. */
  @Test
  void ordersOfOneMillTakeTheirHoursTogether() {
    Capacity.Orders orders = orders("mill_orders");
    assertThat(orders.products()).containsExactly("coarse_hurd", "fine_hurd");
    assertThat(orders.orderedT()).isCloseTo(7, within(1e-9));
    assertThat(orders.ofHours()).isCloseTo(3 / 16.0 + 4 / 64.0, within(1e-9));
    assertThat(orders.ofCrop()).isCloseTo(0.07, within(1e-9));
    assertThat(orders.firstLate()).isEmpty();
  }

  /**
   * then_best.md: 1 t/h on Monday and 0.5 t/h on Tuesday make 12 t; 9 t are due when 6 of 16 h are
   * short.
   */
  @Test
  void anOrderThatIsDueBeforeItCanBeMadeIsTold() {
    Capacity.Orders orders = orders("then_best");
    assertThat(orders.ofHours()).isCloseTo(9 / 12.0, within(1e-9));
    assertThat(orders.firstLate()).isEqualTo("2027-03-01");
  }

  /**
   * 1,000 t of stalk at 20 % are 800 t dry, sold at 36 %: 1,250 t. What is wetter than 15 % fills
   * no order.
   */
  @Test
  void ordersAreSetAgainstMassAtTheProductsBasis() {
    String text =
        TWO_SAWS
            .replace("stalk: {bale", "stalk: {moisture: 20 %, bale")
            .replace(
                "{price: 100 USD/t}", "{moisture: 36 %, orders: [{mass: 100 t, due: 2027-03-31}]}");
    assertThat(capacity(text).orders().get(0).ofCrop()).isCloseTo(100 / 1250.0, within(1e-9));
    String refused = text.replace("moisture: 36 %", "moisture: {basis: 36 %, at_most: 15 %}");
    assertThat(capacity(refused).orders().get(0).share()).isInfinite();
  }

  /**
   * late_orders.md: 40 t of each in the week; 114 t of tow are ordered, 5 t of hurds, and 100 t of
   * crop make 50.
   */
  @Test
  void ordersOfAProductThatNoMillChoosesStandAlone() {
    Path file = Path.of("../line-configs/exact/late_orders.yaml");
    List<Capacity.Orders> orders =
        RatedCapacity.of(Studied.source(file), PlantChanges.base()).capacity().orders();
    assertThat(orders).hasSize(2);
    assertThat(orders.get(0).products()).containsExactly("tow");
    assertThat(orders.get(0).ofHours()).isCloseTo(114 / 40.0, within(1e-9));
    assertThat(orders.get(0).ofCrop()).isCloseTo(114 / 50.0, within(1e-9));
    assertThat(orders.get(0).share()).isGreaterThan(1);
    assertThat(orders.get(1).ofHours()).isCloseTo(5 / 40.0, within(1e-9));
  }
}
