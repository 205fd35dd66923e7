package hurdline.study.option;

import hurdline.measure.MarginMeasures;
import hurdline.measure.Measure;
import hurdline.plant.CashTerms;
import hurdline.plant.CropTerms;
import hurdline.plant.Delivery;
import hurdline.plant.Freight;
import hurdline.plant.Line;
import hurdline.plant.Money;
import hurdline.plant.Option;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.SpareScreen;
import hurdline.plant.Tariff;
import hurdline.simulation.results.Outcome;
import hurdline.study.replicate.ReplicationResults;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a plant that has been simulated would have earned at other prices: each amount of money
 * grows in step with its price, and no price has a part in how a plant works but where a mill
 * without an order makes what sells best, so nothing need be simulated again.
 *
 * <p>{@code RepricingTest} sets this beside simulates.
 */
final class Repricing {
  private static final double ROUNDING = 1e-12;

  private static final List<Measure> OF_MARGIN =
      Stream.of(
              MarginMeasures.in(),
              MarginMeasures.out(),
              List.of(Measure.MONEY_COVER_HANDS)) // grow as wages do in later years
          .flatMap(List::stream)
          .toList();

  private final Plant before;
  private final Plant after;
  private final Map<Measure, Map<String, Double>> added = new LinkedHashMap<>();
  private boolean known = true;

  private Repricing(Plant before, Plant after) {
    this.before = before;
    this.after = after;
  }

  /**
   * What the margin is made of, of each replication, and what of it grows otherwise in later years.
   *
   * @param simulated figures of a plant
   * @param before that plant
   * @param after one with other prices
   * @return empty where more than prices differs, a mill that makes what sells best would make
   *     something else, or a price was zero, so that its amount is not known
   */
  static Optional<ReplicationResults> of(ReplicationResults simulated, Plant before, Plant after) {
    if (!areAlike(before, after)) {
      return Optional.empty();
    }
    Repricing prices = new Repricing(before, after);
    prices.products();
    prices.money(before.money().orElseThrow(), after.money().orElseThrow());
    return prices.known ? Optional.of(prices.figures(simulated)) : Optional.empty();
  }

  /**
   * Whether two plants work alike, since they differ in prices alone and no mill would make
   * something else for them.
   */
  static boolean areAlike(Plant before, Plant after) {
    return withoutPrices(before).equals(withoutPrices(after))
        && SpareScreen.ofAll(before).equals(SpareScreen.ofAll(after));
  }

  private static Plant withoutPrices(Plant p) {
    List<Product> products = p.products().stream().map(Product::withoutPrices).toList();
    List<Option> lives =
        p.options().stream()
            .map(of -> new Option(of.name(), "", 0, of.lifeYr(), 0, Optional.empty()))
            .toList();
    return p.with(products, p.money().map(Repricing::withoutPrices), lives, p.plans());
  }

  private static Money withoutPrices(Money m) {
    Money.Growth none = new Money.Growth(0, 0, 0, 0);
    return new Money(
        m.currency(),
        m.tariff().withoutPrices(),
        0,
        0,
        pricesOfFloors(m),
        withoutPrices(m.terms()),
        m.grades(),
        m.paidAt(),
        0,
        OptionalDouble.empty(),
        none,
        m.overtime(),
        m.rent(),
        CashTerms.none());
  }

  /** An advance that growers keep makes more of a crop's cost than its price times its mass. */
  private static Map<String, Double> pricesOfFloors(Money m) {
    Map<String, Double> prices = new LinkedHashMap<>(m.cropsPerKg());
    prices.keySet().removeIf(crop -> !hasFloor(m, crop));
    return prices;
  }

  private static boolean hasFloor(Money m, String crop) {
    return m.terms().containsKey(crop) && m.terms().get(crop).hasFloor();
  }

  private static Map<String, CropTerms> withoutPrices(Map<String, CropTerms> all) {
    Map<String, CropTerms> left = new LinkedHashMap<>();
    all.forEach(
        (crop, terms) ->
            left.put(crop, terms.hasFloor() ? terms : new CropTerms(0, terms.advance())));
    return left;
  }

  private void products() {
    for (int at = 0; at < before.products().size(); at++) {
      Product was = before.products().get(at);
      double more = more(was.pricePerKg(), after.products().get(at).pricePerKg());
      known &=
          more == 0 || was.orders().stream().noneMatch(order -> order.pricePerKg().isPresent());
      add(Measure.MONEY_REVENUE, Measure.PRODUCT_REVENUE.of(was.name()), more);
      freight(was, after.products().get(at));
      stock(was, after.products().get(at), more);
    }
  }

  /** What waits at the end is worth the file's worth, or moves with the price. */
  private void stock(Product was, Product is, double moreOfPrice) {
    if (was.storage().isPresent()) {
      OptionalDouble worth = was.storage().get().worthPerKg();
      double more =
          worth.isPresent()
              ? more(worth.getAsDouble(), is.storage().orElseThrow().worthPerKg().orElse(0))
              : moreOfPrice;
      add(Measure.MONEY_PRODUCT_STOCK, Measure.PRODUCT_STOCK_WORTH.of(was.name()), more);
    }
  }

  private void freight(Product was, Product is) {
    if (was.freight().isPresent()) {
      double more = more(price(was), price(is));
      add(Measure.MONEY_FREIGHT, Measure.PRODUCT_FREIGHT.of(was.name()), more);
    }
  }

  /** Of a product with freight; what is hauled is alike, so one price stands for the cost. */
  private static double price(Product product) {
    Freight freight = product.freight().orElseThrow();
    return freight instanceof Freight.PerLoad loads
        ? loads.perLoad()
        : ((Freight.PerMass) freight).perKg();
  }

  private void money(Money was, Money is) {
    Stream.concat(was.cropsPerKg().keySet().stream(), is.cropsPerKg().keySet().stream())
        .distinct()
        .forEach(crop -> crop(crop, moreOf(crop, was, is), moreOf(before.baseOf(crop), was, is)));
    was.terms().keySet().forEach(crop -> area(crop, was, is));
    before.deliveries().forEach(delivery -> failed(delivery, was, is));
    electricity(was.tariff(), is.tariff());
    add(
        Measure.MONEY_DRIER_FUEL,
        Measure.MONEY_DRIER_FUEL.of(),
        more(was.drierFuelPerKg(), is.drierFuelPerKg()));
    double moreWage = more(was.wagePerS(), is.wagePerS());
    add(Measure.MONEY_WAGES, Measure.MONEY_WAGES.of(), moreWage);
    add(Measure.MONEY_COVERS, Measure.MONEY_COVER_HANDS.of(), moreWage);
    add(Measure.MONEY_COVER_HANDS, Measure.MONEY_COVER_HANDS.of(), moreWage);
    add(
        Measure.MONEY_OVERHEAD,
        Measure.MONEY_OVERHEAD.of(),
        more(was.overheadPerS(), is.overheadPerS()));
  }

  /** Energy in no period's hours and demand at any hour are what periods leave of the whole. */
  private void electricity(Tariff was, Tariff is) {
    double energy = more(was.energyPerJ(), is.energyPerJ());
    double demand = more(was.demandPerWMonth(), is.demandPerWMonth());
    addElectricity(Measure.MONEY_ELECTRICITY.of(), energy);
    addElectricity(Measure.MONEY_DEMAND.of(), demand - energy);
    for (int at = 0; at < was.periods().size(); at++) {
      Tariff.Period before = was.periods().get(at);
      Tariff.Period after = is.periods().get(at);
      if (before.energyPerJ().isPresent()) {
        double more = more(before.energyPerJ().getAsDouble(), after.energyPerJ().getAsDouble());
        addElectricity(Measure.MONEY_PERIOD_ENERGY.of(before.name()), more - energy);
      }
      if (before.demandPerWMonth().isPresent()) {
        double more =
            more(before.demandPerWMonth().getAsDouble(), after.demandPerWMonth().getAsDouble());
        addElectricity(Measure.MONEY_PERIOD_DEMAND.of(before.name()), more - demand);
      }
    }
  }

  private void addElectricity(String measure, double share) {
    add(Measure.MONEY_ELECTRICITY, measure, share);
  }

  private double moreOf(String crop, Money was, Money is) {
    return more(was.cropsPerKg().getOrDefault(crop, 0.0), is.cropsPerKg().getOrDefault(crop, 0.0));
  }

  /**
   * A line's cost has all forms of its crop in one, so it moves with the crop's price alone, and
   * only where each form's price moves as that.
   */
  private void crop(String crop, double more, double moreOfBase) {
    known &= more == moreOfBase || Math.abs(more - moreOfBase) <= ROUNDING;
    if (!before.baseOf(crop).equals(crop)) {
      return;
    }
    List<String> lines =
        before.lines().stream().filter(line -> line.crop().equals(crop)).map(Line::name).toList();
    known &= more == 0 || !lines.isEmpty();
    for (String line : lines) {
      add(Measure.MONEY_CROP_COST, Measure.MONEY_LINE_CROP_COST.of(line), more);
      add(Measure.MONEY_STOCK_CHANGE, Measure.MONEY_LINE_STOCK_CHANGE.of(line), more);
    }
  }

  /** What is paid by area is in the crop's cost, and does not move with its price. */
  private void area(String crop, Money was, Money is) {
    double more =
        more(was.perM2(crop), is.perM2(crop))
            - more(
                was.cropsPerKg().getOrDefault(crop, 0.0), is.cropsPerKg().getOrDefault(crop, 0.0));
    if (was.perM2(crop) > 0) {
      add(Measure.MONEY_CROP_COST, Measure.MONEY_CROP_AREA.of(crop), more);
      add(Measure.MONEY_STOCK_CHANGE, Measure.MONEY_CROP_AREA_STOCK.of(crop), more);
    }
  }

  /** What failed loads cost is in the crop's cost too, and moves with no price. */
  private void failed(Delivery delivery, Money was, Money is) {
    String crop = delivery.crop();
    if (delivery.release().filter(Delivery.Release::mayFail).isPresent()) {
      double more =
          more(was.cropsPerKg().getOrDefault(crop, 0.0), is.cropsPerKg().getOrDefault(crop, 0.0));
      add(Measure.MONEY_CROP_COST, Measure.MONEY_CROP_FAILED.of(crop), -more);
    }
  }

  /** By which share of itself an amount grows with its price. */
  private double more(double was, double is) {
    if (was == is) {
      return 0;
    }
    known &= was != 0;
    return is / was - 1;
  }

  private void add(Measure to, String measure, double share) {
    if (share != 0) {
      added.computeIfAbsent(to, none -> new LinkedHashMap<>()).merge(measure, share, Double::sum);
    }
  }

  private ReplicationResults figures(ReplicationResults simulated) {
    List<Outcome.Column> columns =
        OF_MARGIN.stream()
            .filter(of -> simulated.has(of.of()))
            .map(of -> new Outcome.Column(of.of(), of, ""))
            .toList();
    double[][] rows = new double[simulated.count()][columns.size()];
    for (int k = 0; k < columns.size(); k++) {
      Measure measure = columns.get(k).measure();
      put(rows, k, simulated.series(measure.of()), 1);
      for (Map.Entry<String, Double> more : added.getOrDefault(measure, Map.of()).entrySet()) {
        put(rows, k, simulated.series(more.getKey()), more.getValue());
      }
    }
    return simulated.with(columns, rows);
  }

  private static void put(double[][] rows, int column, double[] values, double share) {
    for (int row = 0; row < rows.length; row++) {
      rows[row][column] += share * values[row];
    }
  }
}
