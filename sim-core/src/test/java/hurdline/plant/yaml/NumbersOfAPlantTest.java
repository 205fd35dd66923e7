package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Change;
import hurdline.plant.Delivery;
import hurdline.plant.Plant;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * What a plant file cannot bring into a plant, code that makes one cannot either: each number of
 * each record of a plant is put out of its range, one at a time, and the record must refuse it.
 * Distributions refuse by themselves, see {@code RefusalTest}; no number of a plant's own records
 * may be infinite.
 */
class NumbersOfAPlantTest {
  private static final List<String> FILES =
      List.of("exact/then_mix.yaml", "exact/purge.yaml", PlantFiles.EXAMPLE);

  /** Prices and what is left of something bought may cost money; later years may earn less. */
  private static final Set<String> MAY_BE_BELOW_0 =
      Set.of(
          "Money.cropsPerKg",
          "Product.pricePerKg",
          "Storage.worthPerKg",
          "Order.pricePerKg",
          "Option.salvage",
          "Growth.products",
          "Growth.crops",
          "Growth.wages",
          "Growth.electricity");

  private static final Set<String> SHARES =
      Set.of(
          "Bale.composition",
          "Bale.spread",
          "At.moisture",
          "Wetness.wetDay",
          "Wetness.wetAfterWet",
          "Climate.dry",
          "Climate.wet",
          "Crop.dampFrom",
          "Cyclone.collects",
          "Grinding.motorLoad",
          "Grinding.noLoad",
          "Limit.above",
          "Limit.below",
          "Screen.fines",
          "Moisture.atMost",
          "Moisture.dock",
          "Purge.factor",
          "Release.failShare",
          "Attendance.absence",
          "Shared.absence",
          "Step.dries",
          "Outlet.takes",
          "Ratchet.share",
          "Borrowing.share",
          "Tax.share",
          "Break.share",
          "MixShare.share");

  /** One record of each kind and component that has a number in it, by {@code Kind.component}. */
  private static Map<String, Record> samples() {
    Map<String, Record> samples = new LinkedHashMap<>();
    PlantFile everyKey = Edited.plantFile().read();
    collect(everyKey.plant(), samples);
    collect(everyKey.variants().with(new Change.Named("late_cotton")), samples);
    collect(new Delivery.Recorded(3600, 12), samples); // from records, never from a file
    FILES.forEach(name -> collect(PlantFile.of(name, PlantFiles.text(name)).plant(), samples));
    return samples;
  }

  private static void collect(Object value, Map<String, Record> samples) {
    if (value instanceof Optional<?> optional) {
      optional.ifPresent(one -> collect(one, samples));
    } else if (value instanceof Collection<?> many) {
      many.forEach(one -> collect(one, samples));
    } else if (value instanceof Map<?, ?> map) {
      collect(map.values(), samples);
    } else if (value instanceof Record one && isOfPlants(one.getClass())) {
      for (RecordComponent component : one.getClass().getRecordComponents()) {
        Object held = valueOf(one, component);
        if (changed(held, 1).isPresent()) {
          samples.putIfAbsent(nameOf(one.getClass(), component), one);
        }
        collect(held, samples);
      }
    }
  }

  private static boolean isOfPlants(Class<?> type) {
    return type.getPackage() == Plant.class.getPackage();
  }

  private static String nameOf(Class<?> type, RecordComponent component) {
    return type.getSimpleName() + "." + component.getName();
  }

  private static Object valueOf(Record one, RecordComponent component) {
    try {
      return component.getAccessor().invoke(one);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }

  /** The same with another number in it; empty where it has none. */
  private static Optional<Object> changed(Object held, double number) {
    if (held instanceof Double) {
      return Optional.of(number);
    }
    if (held instanceof OptionalDouble optional && optional.isPresent()) {
      return Optional.of(OptionalDouble.of(number));
    }
    if (held instanceof Map<?, ?> map && map.values().stream().anyMatch(Double.class::isInstance)) {
      Map<Object, Object> other = new LinkedHashMap<>(map);
      other.put(map.keySet().iterator().next(), number);
      return Optional.of(other);
    }
    return held instanceof Optional<?> optional && optional.isPresent()
        ? changed(optional.get(), number).map(Optional::of)
        : Optional.empty();
  }

  /** What the record says of the number; empty where it takes it. */
  private static Optional<String> refusal(String name, Record good, double number) {
    RecordComponent[] components = good.getClass().getRecordComponents();
    Object[] values =
        Arrays.stream(components).map(component -> valueOf(good, component)).toArray();
    for (int i = 0; i < values.length; i++) {
      if (nameOf(good.getClass(), components[i]).equals(name)) {
        values[i] = changed(values[i], number).orElseThrow();
      }
    }
    try {
      canonical(good.getClass()).newInstance(values);
      return Optional.empty();
    } catch (InvocationTargetException e) {
      assertThat(e.getCause())
          .as("%s = %s", name, number)
          .isExactlyInstanceOf(IllegalArgumentException.class);
      return Optional.of(e.getCause().getMessage());
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }

  private static Constructor<?> canonical(Class<?> type) throws NoSuchMethodException {
    return type.getDeclaredConstructor(
        Arrays.stream(type.getRecordComponents())
            .map(RecordComponent::getType)
            .toArray(Class<?>[]::new));
  }

  private static List<String> taken(Map<String, Record> samples, double number) {
    List<String> taken = new ArrayList<>();
    samples.forEach(
        (name, good) ->
            refusal(name, good, number)
                .ifPresentOrElse(
                    said ->
                        assertThat(said)
                            .startsWith(name.substring(name.indexOf('.') + 1))
                            .contains(" is " + number + "; expected "),
                    () -> taken.add(name)));
    return taken;
  }

  @Test
  void noNumberOfAPlantIsNaNOrInfinite() {
    Map<String, Record> samples = samples();
    for (double bad :
        new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
      assertThat(taken(samples, bad)).as("may be %s", bad).isEmpty();
    }
  }

  @Test
  void onlyMoneyMayBeBelow0AndNoGrowthLeavesNothing() {
    Map<String, Record> samples = samples();
    assertThat(taken(samples, -0.5)).containsExactlyInAnyOrderElementsOf(MAY_BE_BELOW_0);
    assertThat(taken(samples, -1))
        .allSatisfy(name -> assertThat(name).doesNotStartWith("Growth."))
        .hasSize(5);
  }

  @Test
  void noShareIsMoreThanTheWhole() {
    Map<String, Record> samples = samples();
    Set<String> refused = new TreeSet<>(samples.keySet());
    refused.removeAll(taken(samples, 1.01));
    assertThat(refused).containsExactlyInAnyOrderElementsOf(SHARES);
  }

  /** The control: the numbers that stand there are taken. */
  @Test
  void theRecordsAreTakenAsTheyAre() throws ReflectiveOperationException {
    for (Record good : samples().values()) {
      Object[] values =
          Arrays.stream(good.getClass().getRecordComponents())
              .map(component -> valueOf(good, component))
              .toArray();
      assertThat(canonical(good.getClass()).newInstance(values)).isEqualTo(good);
    }
  }

  @Test
  void theFilesHaveEveryNumberThatAPlantCanHave() {
    Set<String> all = new TreeSet<>();
    numbers(Plant.class, new ArrayList<>(), all);
    assertThat(samples().keySet()).containsExactlyInAnyOrderElementsOf(all);
  }

  private static void numbers(Type type, List<Type> seen, Set<String> all) {
    if (type instanceof ParameterizedType of) {
      Arrays.stream(of.getActualTypeArguments()).forEach(inner -> numbers(inner, seen, all));
    } else if (type instanceof Class<?> plain && isOfPlants(plain) && !seen.contains(plain)) {
      seen.add(plain);
      if (plain.isSealed()) {
        Arrays.stream(plain.getPermittedSubclasses()).forEach(one -> numbers(one, seen, all));
      }
      if (plain.isRecord()) {
        for (RecordComponent component : plain.getRecordComponents()) {
          if (holdsNumber(component.getGenericType())) {
            all.add(nameOf(plain, component));
          }
          numbers(component.getGenericType(), seen, all);
        }
      }
    }
  }

  private static boolean holdsNumber(Type type) {
    return type == double.class
        || type == Double.class
        || type == OptionalDouble.class
        || type instanceof ParameterizedType of
            && Arrays.stream(of.getActualTypeArguments())
                .anyMatch(NumbersOfAPlantTest::holdsNumber);
  }
}
