package hurdline.study.option;

import hurdline.answer.CompareAnswer;
import hurdline.answer.TornadoRow;
import hurdline.plant.Change;
import hurdline.plant.Freight;
import hurdline.plant.Money;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.Product;
import hurdline.plant.Stop;
import hurdline.plant.Storage;
import hurdline.plant.Tariff;
import hurdline.statistics.PairedDifference;
import hurdline.statistics.Summary;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Twins;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What the worth of options hangs on: one input after another at either end, all else as it is. */
public final class Tornado {
  private static final double USUAL = 0.2;
  private static final double[] NONE = {};

  private final OptionPlants plants;
  private final List<CompareAnswer.Option> options;
  private final List<InputRange> inputs;
  private int simulatedEnds;

  /**
   * @param inputs none for the usual ones, each a fifth less and more
   * @throws ProblemsException if an end makes a plant with problems, an input changes nothing, or
   *     makes base and option one plant at both ends
   */
  public Tornado(
      OptionPlants plants,
      List<CompareAnswer.Option> options,
      List<InputRange> inputs,
      PlantOrigin source) {
    this.plants = plants;
    this.options = options;
    this.inputs = inputs.isEmpty() ? usual(plants.base()) : inputs;
    check(source);
  }

  private void check(PlantOrigin source) {
    Plant base = plants.base();
    List<Plant> changed = options.stream().map(option -> plants.of(option.name())).toList();
    for (InputRange input : inputs) {
      boolean moves = false;
      Set<Integer> apart = new HashSet<>();
      for (Change end : List.of(low(input), high(input))) {
        Plant baseThere = plants.base(end);
        moves |= !baseThere.equals(base);
        simulatedEnds += Repricing.areAlike(base, baseThere) ? 0 : 1;
        for (int at = 0; at < options.size(); at++) {
          Plant optionThere = plants.of(options.get(at).name(), end);
          moves |= !optionThere.equals(changed.get(at));
          if (!optionThere.equals(baseThere)) {
            apart.add(at);
          }
        }
      }
      if (!moves) {
        throw source.refusal(input.key() + " changes nothing", "an input that does");
      }
      refuseTwins(source, input, apart);
    }
  }

  /**
   * @param apart options that are another plant than the base at either end
   */
  private void refuseTwins(PlantOrigin source, InputRange input, Set<Integer> apart) {
    for (int at = 0; at < options.size(); at++) {
      if (!apart.contains(at)) {
        throw Twins.refusal(
            source,
            PlantChanges.baseName(),
            options.get(at).name(),
            "at both ends of " + input.key(),
            "another key, or a share such as " + input.key() + "=20%");
      }
    }
  }

  private static Change low(InputRange input) {
    return new Change.Value(input.key(), input.low());
  }

  private static Change high(InputRange input) {
    return new Change.Value(input.key(), input.high());
  }

  /** Prices, yields, energy, wages and stops, as far as the file has them. */
  public static List<InputRange> usual(Plant plant) {
    List<String> keys = new ArrayList<>();
    plant.products().stream()
        .filter(product -> product.pricePerKg() != 0)
        .forEach(product -> keys.add("products." + product.name() + ".price"));
    plant.products().forEach(product -> freight(keys, product));
    plant.products().stream()
        .filter(product -> product.storage().flatMap(Storage::pricedWorth).isPresent())
        .forEach(product -> keys.add("products." + product.name() + ".worth"));
    plant.money().ifPresent(money -> prices(keys, plant, money));
    plant.deliveries().stream()
        .filter(delivery -> !delivery.fields().isEmpty())
        .forEach(delivery -> keys.add("deliveries." + delivery.crop() + ".fields.*.yield"));
    List<Stop> stops =
        plant.machines().stream().flatMap(of -> of.common().stops().stream()).toList();
    if (stops.stream().anyMatch(stop -> stop.planned().isEmpty())) {
      keys.add("machines.*.stops.*.every");
    }
    if (!stops.isEmpty()) {
      keys.add("machines.*.stops.*.lasts");
    }
    return keys.stream().map(key -> InputRange.around(key, USUAL)).toList();
  }

  private static void freight(List<String> keys, Product product) {
    String key = "products." + product.name() + ".freight";
    product
        .freight()
        .filter(freight -> freight.cost(1) > 0)
        .ifPresent(freight -> keys.add(freight instanceof Freight.PerLoad ? key + ".cost" : key));
  }

  private static void prices(List<String> keys, Plant plant, Money money) {
    money
        .cropsPerKg()
        .forEach(
            (crop, price) -> {
              String base = plant.baseOf(crop);
              boolean asItsCrop = !base.equals(crop) && price.equals(money.cropsPerKg().get(base));
              if (price != 0 && !asItsCrop) {
                keys.add("money.crop_prices." + crop);
              }
            });
    money
        .terms()
        .forEach(
            (crop, terms) -> {
              if (terms.perM2() > 0) {
                keys.add("money.crop_terms." + crop + ".per_area");
              }
            });
    electricity(keys, money.tariff());
    if (money.drierFuelPerKg() > 0) {
      keys.add("money.drier_fuel");
    }
    if (money.wagePerS() > 0) {
      keys.add("money.wage");
    }
  }

  /** A row for all prices where there are two at most, else one for each kind of price. */
  private static void electricity(List<String> keys, Tariff tariff) {
    boolean plain = tariff.periods().isEmpty() && tariff.ratchets().isEmpty();
    if (plain && (tariff.energyPerJ() > 0 || tariff.demandPerWMonth() > 0)) {
      keys.add("money.electricity.*");
    }
    if (!plain && tariff.energyPerJ() > 0) {
      keys.add("money.electricity.energy");
    }
    if (!plain && tariff.demandPerWMonth() > 0) {
      keys.add("money.electricity.demand");
    }
    if (tariff.periods().stream().anyMatch(period -> period.energyPerJ().orElse(0) > 0)) {
      keys.add("money.electricity.periods.*.energy");
    }
    if (tariff.periods().stream().anyMatch(period -> period.demandPerWMonth().orElse(0) > 0)) {
      keys.add("money.electricity.periods.*.demand");
    }
  }

  /**
   * Ends of inputs at which the lives of all plants are simulated again, since more than prices
   * differ.
   */
  public int simulatedEnds() {
    return simulatedEnds;
  }

  /** A row for each input and option; if stopped, of the inputs that are whole. */
  public List<TornadoRow> rows(OptionNetPresentValue worth) {
    List<TornadoRow> rows = new ArrayList<>();
    for (InputRange input : inputs) {
      List<TornadoRow> ofInput = new ArrayList<>();
      for (CompareAnswer.Option option : options) {
        ofInput.add(row(option.name(), input, worth));
      }
      if (ofInput.stream().anyMatch(row -> Double.isNaN(row.swing()))) {
        break;
      }
      rows.addAll(ofInput);
    }
    return rows;
  }

  private static TornadoRow row(String option, InputRange input, OptionNetPresentValue worth) {
    double[] unchanged = worth.values(option).orElse(NONE);
    double[] low = worth.values(option, low(input)).orElse(NONE);
    double[] high = worth.values(option, high(input)).orElse(NONE);
    boolean after = worth.isAfterTaxAsked(option);
    return new TornadoRow(
        option,
        input.key(),
        input.lowNumber(),
        input.highNumber(),
        input.unit(),
        Summary.of(low).mean(),
        Summary.of(high).mean(),
        Summary.of(unchanged).mean(),
        halfWidth(unchanged, low),
        halfWidth(unchanged, high),
        after ? mean(worth.afterTax(option, low(input))) : Double.NaN,
        after ? mean(worth.afterTax(option, high(input))) : Double.NaN,
        after ? mean(worth.afterTax(option)) : Double.NaN);
  }

  private static double mean(Optional<double[]> values) {
    return Summary.of(values.orElse(NONE)).mean();
  }

  /** NaN where an end has other lives, as where its option lives longer. */
  private static double halfWidth(double[] unchanged, double[] end) {
    return unchanged.length == end.length
        ? PairedDifference.of(unchanged, end, 1).at95().halfWidth()
        : Double.NaN;
  }
}
