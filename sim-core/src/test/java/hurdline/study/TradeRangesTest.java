package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Bale;
import hurdline.plant.Basis;
import hurdline.plant.Change;
import hurdline.plant.Crop;
import hurdline.plant.Delivery;
import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Machine.PlainKind;
import hurdline.plant.Money;
import hurdline.plant.Plant;
import hurdline.plant.Step;
import hurdline.plant.Variants;
import hurdline.plant.yaml.PlantFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every shipped plant, with its options and plans, against the ranges of the trade in {@code
 * line-configs/README.md}, which has the source of each. What lies outside must stand there with
 * its reason, and what stands there must lie outside.
 *
 * <p>One file because a row of the page and what it is held against are read together.
 */
class TradeRangesTest {
  private static final Path FOLDER = Path.of("../line-configs");
  private static final double YR_H = 8766;
  private static final double MONTH_S = YR_H * 3600 / 12;
  private static final double KG_PER_BALE = 480 * 0.45359237;

  private record Range(double low, double high, String source) {}

  /** What is asked of a plant for each row of the page. */
  private static final Map<String, Function<Plant, Stream<Double>>> ASKED = new LinkedHashMap<>();

  static {
    stalks("bale density", bale -> bale.size().stream().map(size -> density(bale, size)));
    stalks("bale mass", bale -> Stream.of(bale.massKg().mean()));
    cotton("module mass", bale -> Stream.of(bale.massKg().mean() / 1000));
    stalks("bast share", bale -> Stream.of(share(bale, "long_fiber", "short_fiber")));
    stalks("hurd share", bale -> Stream.of(share(bale, "hurd")));
    stalks("fines share", bale -> Stream.of(share(bale, "fines")));
    stalks("moisture of stalks", bale -> Stream.of(100 * bale.moisture().mean()));
    cotton("lint share", bale -> Stream.of(share(bale, "lint")));
    cotton("seed share", bale -> Stream.of(share(bale, "cottonseed")));
    cotton("trash share", bale -> Stream.of(share(bale, "trash")));
    cotton("moisture of seed cotton", bale -> Stream.of(100 * bale.moisture().mean()));
    ASKED.put(
        "yield of stalks",
        plant -> fields(plant).map(field -> field.yieldKgPerM2().mean() * 10_000 / 1000));
    ASKED.put(
        "month of harvest", plant -> fields(plant).map(f -> (double) f.ready().getMonthValue()));
    ASKED.put("baling", TradeRangesTest::baling);
    ASKED.put("stalk price, area included", TradeRangesTest::stalkPrice);
    ASKED.put(
        "energy price", plant -> money(plant).map(money -> money.tariff().energyPerJ() * 3.6e6));
    ASKED.put(
        "demand price",
        plant -> money(plant).map(money -> money.tariff().demandPerWMonth() * 1000));
    ASKED.put("wage", plant -> money(plant).map(money -> money.wagePerS() * 3600));
    ASKED.put("ginning charge", TradeRangesTest::ginningCharge);
    ASKED.put("stalk feed rate", plant -> lines(plant, false).map(line -> feedKgPerS(line) * 3.6));
    ASKED.put("gin rate", plant -> lines(plant, true).map(line -> balesPerH(plant, line)));
    ASKED.put(
        "gin power over its rate",
        plant -> lines(plant, true).map(line -> powerKw(plant, line) / balesPerH(plant, line)));
    ASKED.put(
        "loss in the yard",
        plant ->
            plant.yard().places().stream()
                .filter(place -> place.lossPerS() > 0)
                .map(place -> 100 * (1 - Math.exp(-place.lossPerS() * MONTH_S))));
    packages("bulk bag", "bag");
    packages("bale of fiber or lint", "bale");
    ASKED.put(
        "cyclone",
        plant ->
            plant.machines().stream()
                .filter(Machine.Cyclone.class::isInstance)
                .map(machine -> 100 * ((Machine.Cyclone) machine).collects())
                .filter(collects -> collects < 100)); // where the file says nothing all is kept
    ASKED.put("lint cleaner, of the trash", TradeRangesTest::lintCleaner);
    ASKED.put(
        "bales a truck",
        plant ->
            plant.deliveries().stream()
                .flatMap(of -> of.trucks().stream())
                .map(trucks -> (double) trucks.bales()));
    ASKED.put(
        "hands of a shift", plant -> plant.crews().stream().map(crew -> (double) crew.hands()));
    ASKED.put(
        "moisture basis",
        plant ->
            money(plant)
                .flatMap(money -> money.paidAt().values().stream())
                .filter(Basis.At.class::isInstance)
                .map(basis -> 100 * ((Basis.At) basis).moisture()));
  }

  private static void stalks(String figure, Function<Bale, Stream<Double>> of) {
    ofCrops(figure, false, of);
  }

  private static void cotton(String figure, Function<Bale, Stream<Double>> of) {
    ofCrops(figure, true, of);
  }

  private static void ofCrops(String figure, boolean cotton, Function<Bale, Stream<Double>> of) {
    ASKED.put(
        figure,
        plant ->
            plant.crops().stream()
                .filter(crop -> isCotton(crop) == cotton)
                .map(Crop::bale)
                .flatMap(of));
  }

  private static boolean isCotton(Crop crop) {
    return crop.bale().composition().containsKey("lint");
  }

  private static Crop crop(Plant plant, String name) {
    return plant.crops().stream().filter(of -> of.name().equals(name)).findFirst().orElseThrow();
  }

  private static double density(Bale bale, Bale.Size size) {
    double m3 =
        size.round()
            ? Math.PI / 4 * size.wideM() * size.highM() * size.longM()
            : size.longM() * size.wideM() * size.highM();
    return bale.massKg().mean() / m3;
  }

  private static double share(Bale bale, String... components) {
    return 100
        * Stream.of(components)
            .mapToDouble(component -> bale.composition().getOrDefault(component, 0.0))
            .sum();
  }

  private static Stream<Delivery.Field> fields(Plant plant) {
    return plant.deliveries().stream()
        .filter(of -> !isCotton(crop(plant, of.crop())))
        .flatMap(of -> of.fields().stream());
  }

  private static Stream<Double> baling(Plant plant) {
    return plant.deliveries().stream()
        .flatMap(
            of ->
                of.fields().stream()
                    .map(
                        field ->
                            field.balesPerDay()
                                * field.bale().massKg().mean()
                                / 1000
                                / ((of.hours().toS() - of.hours().fromS()) / 3600.0)));
  }

  private static Stream<Money> money(Plant plant) {
    return plant.money().stream();
  }

  private static Stream<Double> stalkPrice(Plant plant) {
    return money(plant)
        .flatMap(
            money ->
                money.cropsPerKg().entrySet().stream()
                    .filter(price -> !isCotton(crop(plant, price.getKey())))
                    .map(
                        price ->
                            1000
                                * (price.getValue()
                                    + money.perM2(price.getKey()) / meanYield(plant))));
  }

  private static double meanYield(Plant plant) {
    OptionalDouble mean = fields(plant).mapToDouble(of -> of.yieldKgPerM2().mean()).average();
    return mean.orElse(1);
  }

  /** Of lint that stays the growers', whose cotton costs nothing. */
  private static Stream<Double> ginningCharge(Plant plant) {
    boolean ginned =
        money(plant)
            .flatMap(money -> money.cropsPerKg().entrySet().stream())
            .anyMatch(price -> price.getValue() == 0 && isCotton(crop(plant, price.getKey())));
    return plant.products().stream()
        .filter(product -> ginned && product.name().equals("lint"))
        .map(product -> product.pricePerKg() * KG_PER_BALE);
  }

  private static Stream<Line> lines(Plant plant, boolean cotton) {
    return plant.lines().stream().filter(line -> isCotton(crop(plant, line.crop())) == cotton);
  }

  private static double feedKgPerS(Line line) {
    return line.steps().stream()
        .filter(step -> step.machine().equals(line.feed()))
        .findFirst()
        .orElseThrow()
        .rateKgPerS()
        .orElseThrow();
  }

  private static double balesPerH(Plant plant, Line line) {
    double lint = crop(plant, line.crop()).bale().composition().get("lint");
    return feedKgPerS(line) * 3600 * lint / KG_PER_BALE;
  }

  private static double powerKw(Plant plant, Line line) {
    Set<String> names = new TreeSet<>(line.alongside());
    line.steps().forEach(step -> names.add(step.machine()));
    return plant.machines().stream()
            .filter(machine -> names.contains(machine.name()))
            .mapToDouble(machine -> machine.common().powerW())
            .sum()
        / 1000;
  }

  private static void packages(String figure, String part) {
    ASKED.put(
        figure,
        plant ->
            plant.packages().stream()
                .filter(packaging -> packaging.name().contains(part))
                .map(packaging -> packaging.massKg()));
  }

  private static Stream<Double> lintCleaner(Plant plant) {
    Set<String> cleaners = new TreeSet<>();
    plant.machines().stream()
        .filter(of -> of instanceof Machine.Plain plain && plain.kind() == PlainKind.LINT_CLEANER)
        .forEach(of -> cleaners.add(of.name()));
    return lines(plant, true)
        .flatMap(line -> line.steps().stream())
        .filter(step -> cleaners.contains(step.machine()))
        .flatMap(step -> step.outlets().stream())
        .map(Step.Outlet::takes)
        .flatMap(takes -> takes.stream())
        .filter(takes -> takes.containsKey("trash"))
        .map(takes -> 100 * takes.get("trash"));
  }

  @Test
  void everyShippedPlantLiesInTheTradesRangesOrSaysWhyNot() throws IOException {
    List<List<String>> page = rows(Files.readString(FOLDER.resolve("README.md")));
    Map<String, Range> ranges = ranges(page);
    assertThat(ASKED.keySet()).containsExactlyElementsOf(ranges.keySet());
    Set<String> told = outside(page);
    Set<String> found = new LinkedHashSet<>();
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Path file : files()) {
      String name = FOLDER.relativize(file).toString();
      List<Plant> plants = plants(file);
      ASKED.forEach(
          (figure, of) -> {
            List<Double> values = plants.stream().flatMap(of).toList();
            counts.merge(figure, values.size(), Integer::sum);
            Range range = ranges.get(figure);
            if (values.stream().anyMatch(value -> !isIn(value, range))) {
              found.add(name + ": " + figure);
            }
          });
    }
    assertThat(found).as("figures outside, and those that the page names").isEqualTo(told);
    assertThat(counts)
        .as("figures of each row")
        .allSatisfy((figure, n) -> assertThat(n).isPositive());
    assertThat(counts.values().stream().mapToInt(Integer::intValue).sum()).isGreaterThan(900);
  }

  private static boolean isIn(double value, Range range) {
    return value >= range.low() * (1 - 1e-6) && value <= range.high() * (1 + 1e-6);
  }

  /** The plant as it stands, with each of its options and under each of its plans. */
  private static List<Plant> plants(Path file) {
    Variants variants = PlantFile.read(file).variants();
    Plant base = variants.with();
    List<Plant> all = new ArrayList<>(List.of(base));
    base.options().forEach(of -> all.add(variants.with(new Change.Named(of.name()))));
    base.plans().forEach(of -> all.add(variants.with(new Change.Named(of.name()))));
    return all;
  }

  private static List<Path> files() throws IOException {
    List<Path> all = new ArrayList<>();
    for (Path folder : List.of(FOLDER, FOLDER.resolve("seasons"))) {
      try (Stream<Path> files = Files.list(folder)) {
        files.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(all::add);
      }
    }
    assertThat(all).hasSizeGreaterThanOrEqualTo(13);
    return all;
  }

  /** Rows of all tables of the page. */
  private static List<List<String>> rows(String page) {
    return page.lines()
        .filter(line -> line.startsWith("|"))
        .map(line -> Stream.of(line.split("\\|")).skip(1).map(String::strip).toList())
        .toList();
  }

  private static Map<String, Range> ranges(List<List<String>> page) {
    Map<String, Range> ranges = new LinkedHashMap<>();
    for (List<String> row : page) {
      if (row.size() == 5 && row.get(2).matches("[0-9.]+")) {
        Range range =
            new Range(Double.parseDouble(row.get(2)), Double.parseDouble(row.get(3)), row.get(4));
        assertThat(range.source()).as(row.get(0)).isNotEmpty();
        ranges.put(row.get(0), range);
      }
    }
    return ranges;
  }

  private static Set<String> outside(List<List<String>> page) {
    Set<String> outside = new LinkedHashSet<>();
    for (List<String> row : page) {
      if (row.size() == 3 && ASKED.containsKey(row.get(1)) && row.get(0).startsWith("`")) {
        assertThat(row.get(2)).as(row.get(0)).isNotEmpty();
        outside.add(row.get(0).replace("`", "") + ": " + row.get(1));
      }
    }
    return outside;
  }
}
