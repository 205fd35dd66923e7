package hurdline.plant;

import java.util.Optional;

/** Stores: what waits in one must be packed, must fit, and something must take it out. */
final class StoreRules {
  private StoreRules() {}

  static void check(Plant plant, Names names, Problems found) {
    for (Product product : plant.products()) {
      product.storage().ifPresent(of -> new InStore(product, of, plant, names, found).check());
    }
  }

  /** One product in its store. */
  private record InStore(
      Product product, Storage storage, Plant plant, Names names, Problems found) {

    void check() {
      String path = "products." + product.name();
      found.known(path + ".store", storage.store(), names.stores.keySet(), "no store", "a store");
      if (storage.pickUps().isEmpty() && product.orders().isEmpty()) {
        found.add(
            path + ".store",
            "nothing takes the product out of its store",
            "\"pick_ups\" or \"orders\" in products." + product.name());
      }
      if (product.market().isPresent() && storage.worthPerKg().isEmpty()) {
        found.add(
            path + ".store",
            "nobody knows what its market would take of what is left in the store at the end",
            "a \"worth\" in products." + product.name());
      }
      if (product.packaging().isEmpty()) {
        found.add(
            path + ".store",
            "full packages wait in a store, and the product has no package",
            "a \"package\" in products." + product.name());
      }
      product.packaging().map(names.packages::get).ifPresent(one -> fits(path, one));
      PileRules.refuse(plant, product, path + ".store", found);
      loads(path);
    }

    private void fits(String path, Packaging one) {
      Store store = names.stores.get(storage.store());
      if (store != null && one.massKg() > store.holdsKg()) {
        found.add(
            "stores." + store.name() + ".holds",
            "the store has no room for one package of \"" + product.name() + "\"",
            "room for a package, \"" + one.name() + "\", at least");
      }
      if (storage.pickUps().filter(trucks -> trucks.packages(one.massKg()) < 1).isPresent()) {
        found.add(
            path + ".pick_ups.load",
            "the truck takes less than one package, \"" + one.name() + "\"",
            "a load of one package or more");
      }
      if (store != null && never(one, store)) {
        found.add(
            path + ".pick_ups.load",
            "the store has no room for a full load, so none ever leaves",
            "a load that the store holds");
      }
    }

    private boolean never(Packaging one, Store store) {
      return storage
          .pickUps()
          .filter(
              trucks -> trucks.packages(one.massKg()) * one.massKg() > store.holdsKg() * (1 + 1e-9))
          .isPresent();
    }

    /** The trucks that fetch it are those whose loads are paid. */
    private void loads(String path) {
      Optional<Double> paidKg =
          product
              .freight()
              .filter(Freight.PerLoad.class::isInstance)
              .map(freight -> ((Freight.PerLoad) freight).kg());
      boolean apart =
          paidKg.isPresent()
              && storage
                  .pickUps()
                  .filter(trucks -> Math.abs(trucks.loadKg() - paidKg.get()) > 1e-9 * paidKg.get())
                  .isPresent();
      if (apart) {
        found.add(
            path + ".freight.load",
            "the load that is paid is not the load that is picked up",
            "one mass in \"freight\" and \"pick_ups\"");
      }
    }
  }
}
