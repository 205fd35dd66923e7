package hurdline.simulation.results;

import hurdline.account.MaterialBooks;
import hurdline.compiled.CompiledLines;
import hurdline.measure.Measure;
import hurdline.plant.Freight;
import hurdline.plant.Packaging;
import hurdline.plant.Product;
import hurdline.simulation.activity.Orders;

/**
 * What it costs to bring products to their buyers: of what is sold, or has left a store, the weight
 * as it is.
 */
final class FreightCost {
  private final CompiledLines layout;
  private final Orders orders;
  private final MaterialBooks material;
  private final MarketSales markets;
  private final SoldMass sold;
  private final boolean any;

  FreightCost(
      CompiledLines layout,
      Orders orders,
      MaterialBooks material,
      MarketSales markets,
      SoldMass sold) {
    this.layout = layout;
    this.orders = orders;
    this.material = material;
    this.markets = markets;
    this.sold = sold;
    any = layout.plant.products().stream().anyMatch(product -> product.freight().isPresent());
  }

  /** Whether any product has freight. */
  boolean any() {
    return any;
  }

  /** What was sold of a product up to now costs so much to haul. */
  double of(Product product) {
    return product.freight().map(freight -> of(product, freight)).orElse(0.0);
  }

  /** Of what trucks fetch by loads, each truck is paid whole. */
  private double of(Product product, Freight freight) {
    if (freight instanceof Freight.PerLoad loads && sold.trucks(product).isPresent()) {
      return sold.trucks(product).get() * loads.perLoad();
    }
    int p = layout.naming.products.index(product.name());
    double packageKg =
        layout.plant.packaging(product).map(Packaging::massKg).orElse(Double.POSITIVE_INFINITY);
    return freight.of(packageKg).cost(sold.hasStore(p) ? sold.leftAsIsKg(p) : soldAsIsKg(product));
  }

  /**
   * Of what is fit to sell the share that found a buyer, at its mean moisture, and what is too wet
   * if it is sold at all; buyers fetch purge packages.
   */
  private double soldAsIsKg(Product product) {
    int p = layout.naming.products.index(product.name());
    double tooWetAsIsKg = material.tooWetAsIsKg[p];
    double fitAsIsKg = material.productKg(p) - tooWetAsIsKg;
    double fitKg = material.fitKg(p);
    double taken = orders.soldKg(product, sold.fitKg(p), 0);
    double tooWetKg = material.tooWetKg(p);
    double hauled = tooWetKg > 0 ? sold.tooWetKg(p) / tooWetKg : 1;
    double wetAsIsKg = orders.soldKg(product, sold.fitKg(p), 1) > taken ? tooWetAsIsKg * hauled : 0;
    double soldKg = taken - markets.unsoldKg(p);
    return (fitKg > 0 ? fitAsIsKg * Math.min(1, soldKg / fitKg) : 0) + wetAsIsKg;
  }

  /** What each product's freight comes to. */
  void put(OutcomeWriter tally) {
    for (Product product : layout.plant.products()) {
      if (product.freight().isPresent()) {
        tally.put(Measure.PRODUCT_FREIGHT, of(product), product.name());
      }
    }
  }
}
