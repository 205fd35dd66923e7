package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hurdline.plant.Change;
import hurdline.plant.Choice;
import hurdline.plant.Choices;
import hurdline.plant.ProblemsException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ChoiceBinderTest {
  private static final Choices EVERY_KEY = Edited.plantFile().read().choices();

  private static Choice choice(String name) {
    return EVERY_KEY.all().stream().filter(of -> of.name().equals(name)).findFirst().orElseThrow();
  }

  private static List<String> texts(String name) {
    return choice(name).values().stream().map(Choice.Value::text).toList();
  }

  @Test
  void aChoiceOfAKeyHasAValueACostAndALifeEach() {
    Choice.Value large = choice("motor").values().get(1);
    assertThat(texts("motor")).containsExactly("25 hp", "45 hp");
    assertThat(large.changes()).containsExactly(new Change.Value("machines.mill.power", "45 hp"));
    assertThat(large.purchases()).containsExactly(new Choice.Purchase(60_000, 15, 0));
    assertThat(choice("motor").values().get(0).purchases()).isEmpty();
  }

  @Test
  void severalKeysMoveTogether() {
    assertThat(texts("hands")).containsExactly("x1", "x2");
    assertThat(choice("hands").values().get(1).changes())
        .containsExactly(
            new Change.Value("crews.stalk_line.day", "x2"),
            new Change.Value("crews.cotton_line.day", "x2"));
  }

  @Test
  void stepsReachTheLastValueAndEachHasItsLife() {
    assertThat(texts("shed")).containsExactly("1200 bales", "1700 bales", "2200 bales");
    assertThat(choice("shed").values().get(2).purchases())
        .containsExactly(new Choice.Purchase(12_000, 20, 0));
  }

  @Test
  void plansAndOptionsAreChosenByNameAndAnOptionIsBoughtAtItsOwnCost() {
    assertThat(choice("season").values().get(0).changes()).isEmpty();
    assertThat(choice("season").values().get(1).changes())
        .containsExactly(new Change.Named("late_cotton"));
    assertThat(choice("buy").values().get(1).purchases())
        .containsExactly(new Choice.Purchase(140_000, 12, 12_000));
  }

  /** By hand: x1 lies below x1.5; x2 is half of 1 above it: 50 + 900/2. */
  @Test
  void aFactorIsPricedByWhatItIsAboveAStart() {
    assertThat(choice("hands").values().get(0).purchases()).isEmpty();
    assertThat(choice("hands").values().get(1).purchases())
        .containsExactly(new Choice.Purchase(500, 10, 0));
  }

  private static List<Double> costs(String values, String cost) {
    Choices choices =
        PlantFile.of(
                "priced.yaml",
                PlantFiles.text("exact/cut_night.yaml")
                    + "\nchoices:\n  barn: {key: yard.places.barn.holds, "
                    + values
                    + ", cost: "
                    + cost
                    + "}\n")
            .choices();
    return choices.all().get(0).values().stream()
        .map(of -> of.purchases().stream().mapToDouble(Choice.Purchase::cost).sum())
        .toList();
  }

  @Test
  void allThatIsWrongWithAChoiceIsSaidAtOnce() {
    assertThat(wrong("[400 bales, 500 bales]", "3000 USD, life: -1 yr"))
        .hasSize(2)
        .anyMatch(line -> line.contains("\"3000 USD\" is neither a list nor a price for each unit"))
        .anyMatch(line -> line.contains("choices.barn.life"));
    assertThat(wrong("[400 bales, 400bales]", "[0 USD, 0 USD]"))
        .singleElement()
        .asString()
        .contains("it has \"400bales\" twice; expected each value once");
  }

  private static List<String> wrong(String values, String cost) {
    return catchThrowableOfType(ProblemsException.class, () -> costs("values: " + values, cost))
        .lines();
  }

  /** By hand: 14 USD for each bale above the first 500, and 3,000 USD as soon as there is one. */
  @Test
  void aValueIsPricedByItsUnits() {
    assertThat(costs("from: 500 bales, to: 900 bales, step: 200 bales", "{per: 14 USD/bale}"))
        .containsExactly(0.0, 200 * 14.0, 400 * 14.0);
    assertThat(
            costs(
                "values: [400 bales, 500 bales, 600 bales]",
                "{per: 14 USD/bale, fixed: 3000 USD, above: 500 bales}"))
        .containsExactly(0.0, 0.0, 3000 + 100 * 14.0);
  }

  /** A hectare is 2.471 acres: of 100 to 140 acres each hectare above 40 ha is priced. */
  @Test
  void aPriceMayBePerAnotherUnitOfTheKind() {
    List<Double> costs = costs("values: [100 acre, 140 acre]", "{per: 1000 USD/ha, above: 40 ha}");
    assertThat(costs.get(0)).isCloseTo(1000 * (100 * 0.40468564224 - 40), within(1e-6));
    assertThat(costs.get(1)).isCloseTo(1000 * (140 * 0.40468564224 - 40), within(1e-6));
  }

  @Test
  void aRangeHoldsItsEnds() {
    assertThat(EVERY_KEY.kept().get(0).values().get("shed"))
        .containsExactly("1700 bales", "2200 bales");
    Choices choices =
        PlantFile.of(
                "ranges.yaml",
                PlantFiles.text("exact/cut_night.yaml")
                    + "\nchoices:\n  area: {key: yard.places.barn.holds, values: [1 ha, 5 acre, 3 ha]}"
                    + "\n  never: [{area: {from: 2 ha}}, {area: {to: 5 acre}}]\n")
            .choices();
    assertThat(choices.never().get(0).values().get("area")).containsExactly("5 acre", "3 ha");
    assertThat(choices.never().get(1).values().get("area")).containsExactly("1 ha", "5 acre");
  }

  @Test
  void aCombinationIsMetByAnyOfItsValues() {
    assertThat(EVERY_KEY.never().get(0).isMetBy(Map.of("motor", "45 hp", "buy", "bigger_mill")))
        .isTrue();
    assertThat(EVERY_KEY.never().get(0).isMetBy(Map.of("motor", "45 hp", "buy", "base"))).isFalse();
    assertThat(EVERY_KEY.kept().get(0).isMetBy(Map.of("shed", "2200 bales"))).isTrue();
    assertThat(EVERY_KEY.kept().get(0).isMetBy(Map.of("shed", "1200 bales"))).isFalse();
  }
}
