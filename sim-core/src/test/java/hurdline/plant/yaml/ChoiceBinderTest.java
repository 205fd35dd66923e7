package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Change;
import hurdline.plant.Choice;
import hurdline.plant.Choices;
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

  @Test
  void aCombinationIsMetByAnyOfItsValues() {
    assertThat(EVERY_KEY.never().get(0).isMetBy(Map.of("motor", "45 hp", "buy", "bigger_mill")))
        .isTrue();
    assertThat(EVERY_KEY.never().get(0).isMetBy(Map.of("motor", "45 hp", "buy", "base"))).isFalse();
    assertThat(EVERY_KEY.kept().get(0).isMetBy(Map.of("shed", "2200 bales"))).isTrue();
    assertThat(EVERY_KEY.kept().get(0).isMetBy(Map.of("shed", "1200 bales"))).isFalse();
  }
}
