package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.SpareScreen;
import hurdline.plant.Step;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a mill that works to orders makes while none is open. */
class SpareScreenTest {

  private static Edited byOrders() {
    return Edited.with(
        "mix: [{screen: coarse, share: 60 %}, {screen: fine, share: 40 %}]", "mix: orders");
  }

  /** Screens and shares, none where the mill stands still. */
  private static List<String> screens(Edited file) {
    Plant plant = file.plant();
    Line line =
        plant.lines().stream()
            .filter(one -> one.name().equals("stalk_line"))
            .findFirst()
            .orElseThrow();
    Step step =
        line.steps().stream().filter(one -> one.machine().equals("mill")).findFirst().orElseThrow();
    Machine mill =
        plant.machines().stream()
            .filter(one -> one.name().equals("mill"))
            .findFirst()
            .orElseThrow();
    return SpareScreen.of(plant, (Machine.HammerMill) mill, step).stream()
        .flatMap(mix -> mix.shares().stream())
        .map(share -> share.screen() + " " + share.share())
        .toList();
  }

  @Test
  void theProductThatSellsWithoutAnOrderIsMade() {
    assertThat(screens(byOrders())).containsExactly("coarse 1.0");
  }

  @Test
  void theBestPriceComesFirst() {
    assertThat(screens(byOrders().and("sells: orders, orders", "orders")))
        .containsExactly("fine 1.0");
  }

  @Test
  void atEqualPricesTheScreenThatStandsFirstIsTaken() {
    Edited equal =
        byOrders()
            .and("sells: orders, orders", "orders")
            .and("price: 420 USD/ton", "price: 260 USD/ton");
    assertThat(screens(equal)).containsExactly("coarse 1.0");
  }

  @Test
  void whatCostsMoneyToBeRidOfIsNotMadeWithoutAWord() {
    Edited costly =
        byOrders()
            .and("price: 260 USD/ton", "price: -1 USD/ton")
            .and(
                ", cleanliness: {component: fines, steps: [[0 %, 1.05], [5 %, 1], [12 %, 0.6]]}",
                "");
    assertThat(screens(costly)).isEmpty();
    assertThat(screens(costly.and("mix: orders", "mix: orders\n        then: coarse")))
        .containsExactly("coarse 1.0");
    assertThat(screens(byOrders().and("mix: orders", "mix: orders\n        then: stand-still")))
        .isEmpty();
  }
}
