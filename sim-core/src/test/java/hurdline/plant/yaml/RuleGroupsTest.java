package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Calendar;
import hurdline.plant.Hands;
import hurdline.plant.Plant;
import hurdline.plant.Problem;
import hurdline.plant.Rules;
import hurdline.plant.Yard;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.TreeReader;
import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A changed plant is held only against the rules that look at what has changed. So a group of rules
 * that does not say that it looks at a part of the plant must find the same where that part is
 * empty; here in plants that break every rule, and part by part.
 */
class RuleGroupsTest {
  private static final RecordComponent[] PARTS = Plant.class.getRecordComponents();
  private static final LocalDate LONG_AGO = LocalDate.of(1950, 1, 1);
  private static final Calendar NO_HOURS =
      new Calendar(LONG_AGO, LONG_AGO.plusDays(1), List.of(), Set.of(), Optional.empty());
  private static final Yard NO_YARD =
      new Yard(Map.of(), List.of(), new Yard.OldestFirst(), false, 0, Map.of());

  static Stream<String> plants() {
    return Stream.of(
            PlantFiles.WRONG.stream().map(name -> "wrong/" + name),
            PlantFiles.EXACT.stream().map(name -> "exact/" + name),
            Stream.of("sweetgum-bend", "small", "stalk"))
        .flatMap(names -> names)
        .map(name -> name + ".yaml");
  }

  @ParameterizedTest
  @MethodSource("plants")
  void groupsLookAtNothingButTheirParts(String file) throws ReflectiveOperationException {
    holds(PlantFiles.text(file));
  }

  @Test
  void norDoTheyInAPlantWithEveryKey() throws ReflectiveOperationException {
    holds(Edited.plantFile().text());
  }

  private static void holds(String text) throws ReflectiveOperationException {
    Plant plant =
        PlantBinder.plant(
            TreeReader.read(text, new Findings()),
            new Binding(RainFiles.none(), new Findings(), new Findings()));
    for (int part = 0; part < PARTS.length; part++) {
      Plant without = without(plant, part);
      assertThat(passedOver(plant, without))
          .as("rules that do not look at " + PARTS[part].getName())
          .containsExactlyElementsOf(passedOver(without, plant));
    }
  }

  /** What is found by the groups that look at nothing in which the other plant differs. */
  private static List<Problem> passedOver(Plant plant, Plant other) {
    List<Problem> all = new ArrayList<>(Rules.problems(plant, Optional.empty()));
    Rules.problems(plant, Optional.of(other)).forEach(all::remove);
    return all;
  }

  private static Plant without(Plant plant, int part) throws ReflectiveOperationException {
    Object[] values = new Object[PARTS.length];
    for (int at = 0; at < PARTS.length; at++) {
      Object value = PARTS[at].getAccessor().invoke(plant);
      values[at] = at == part ? nothing(value) : value;
    }
    Class<?>[] types = Arrays.stream(PARTS).map(RecordComponent::getType).toArray(Class<?>[]::new);
    return Plant.class.getDeclaredConstructor(types).newInstance(values);
  }

  private static Object nothing(Object value) {
    if (value instanceof Calendar) {
      return NO_HOURS;
    }
    if (value instanceof Yard) {
      return NO_YARD;
    }
    if (value instanceof Hands) {
      return Hands.allCome();
    }
    if (value instanceof Optional) {
      return Optional.empty();
    }
    return value instanceof List ? List.of() : "";
  }
}
