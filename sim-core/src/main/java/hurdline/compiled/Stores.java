package hurdline.compiled;

import hurdline.plant.Calendar;
import hurdline.plant.Packaging;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.Storage;
import hurdline.plant.Store;
import java.util.Arrays;
import java.util.stream.IntStream;

/** Stores by number: what waits where, and when trucks come for it. */
public final class Stores {
  private static final double DAY_S = 86_400;

  /** A package for which there is room but for rounding has room. */
  private static final double ROUNDING = 1e-9;

  public final int count;

  /** [product] its store, −1 where it is sold as it is made. */
  public final int[] storeOf;

  /** [product] as-is mass of a package of what has a store. */
  public final double[] packageKg;

  /** [product] packages that lie there on the first day. */
  public final int[] opensWith;

  /** [product] when trucks come; null where none do. */
  public final double[][] pickUpS;

  /** [product] packages of a full load, and trucks of a day at most. */
  public final int[] ofLoad;

  public final int[] atMost;

  private final double[] holdsKg;

  Stores(Plant plant, Indexes naming) {
    count = plant.stores().size();
    holdsKg = new double[count];
    for (Store store : plant.stores()) {
      holdsKg[naming.stores.index(store.name())] = store.holdsKg();
    }
    int products = naming.products.count();
    storeOf = new int[products];
    packageKg = new double[products];
    opensWith = new int[products];
    pickUpS = new double[products][];
    ofLoad = new int[products];
    atMost = new int[products];
    Arrays.fill(storeOf, -1);
    for (Product product : plant.products()) {
      int p = naming.products.index(product.name());
      product.storage().ifPresent(of -> put(p, of, plant, plant.packaging(product).get(), naming));
    }
  }

  private void put(int p, Storage of, Plant plant, Packaging packaging, Indexes naming) {
    storeOf[p] = naming.stores.index(of.store());
    packageKg[p] = packaging.massKg();
    opensWith[p] = of.opens();
    of.pickUps()
        .ifPresent(
            trucks -> {
              pickUpS[p] = instants(trucks, plant.calendar());
              ofLoad[p] = trucks.packages(packaging.massKg());
              atMost[p] = trucks.atMost();
            });
  }

  private static double[] instants(Storage.PickUps trucks, Calendar calendar) {
    return IntStream.range(0, calendar.days())
        .filter(day -> trucks.days().contains(calendar.from().plusDays(day).getDayOfWeek()))
        .filter(day -> !calendar.closed().contains(calendar.from().plusDays(day)))
        .mapToDouble(day -> day * DAY_S + trucks.atS())
        .toArray();
  }

  /** Whether a product waits in a store until it leaves. */
  public boolean has(int product) {
    return storeOf[product] >= 0;
  }

  /** Whether a store at this level has room for one more package of a product. */
  public boolean hasRoom(int product, double levelKg) {
    return levelKg + packageKg[product] <= holdsKg[storeOf[product]] * (1 + ROUNDING);
  }
}
