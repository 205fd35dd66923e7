package hurdline.study.rest;

import hurdline.answer.RunFact;
import hurdline.answer.RunFact.OpeningContents.Found;
import hurdline.answer.RunFact.OpeningContents.NotGiven;
import hurdline.plant.Machine;
import hurdline.plant.Packaging;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.Storage;
import hurdline.plant.Store;
import hurdline.records.ContentRecord;
import hurdline.records.Records;
import hurdline.study.PlantOrigin;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What lies in bins and stores of finished goods on the morning of a day, as far as the records
 * say.
 *
 * <p>What was found earlier still lies there if no shift has been worked since, and no truck has
 * come.
 */
final class OpeningContents {
  private static final double TONNE_KG = 1000;
  private static final double FULL = 1 + 1e-9;

  private final Records before;
  private final LocalDate asOf;

  OpeningContents(Records before, LocalDate asOf) {
    this.before = before;
    this.asOf = asOf;
  }

  /** A bin with what lies in it; any other machine as it is. */
  Machine of(Machine machine) {
    return machine instanceof Machine.Bin bin
        ? bin.opening(held(bin).map(ContentRecord::amount).orElse(0.0))
        : machine;
  }

  /** A product with what lies in its store. */
  Product of(Product product) {
    int packages = packages(product);
    return packages > 0 ? product.withOpening(packages) : product;
  }

  /** Mass of a product that lies in its store, as it is. */
  double storedKg(Plant plant, Product product) {
    return packages(product) * plant.packaging(product).map(Packaging::massKg).orElse(0.0);
  }

  private int packages(Product product) {
    return held(product).map(of -> (int) of.amount()).orElse(0);
  }

  private Optional<ContentRecord> held(Machine.Bin bin) {
    return last(bin.name(), "").filter(of -> isUntouched(of.date()));
  }

  private Optional<ContentRecord> held(Product product) {
    return product
        .storage()
        .flatMap(
            of ->
                last(of.store(), product.name())
                    .filter(found -> found.date().equals(asOf) || of.pickUps().isEmpty())
                    .filter(found -> isUntouched(found.date())));
  }

  private boolean isUntouched(LocalDate counted) {
    return before.shifts().stream().allMatch(shift -> shift.date().isBefore(counted));
  }

  private Optional<ContentRecord> last(String place, String product) {
    return before.contents().stream()
        .filter(of -> of.place().equals(place) && of.product().equals(product))
        .max(Comparator.comparing(ContentRecord::date));
  }

  /**
   * Refuses more than there is room for.
   *
   * @param folder of the records
   */
  void check(PlantOrigin source, Plant plant, String folder) {
    for (Machine machine : plant.machines()) {
      if (machine instanceof Machine.Bin bin) {
        held(bin)
            .filter(of -> of.amount() > bin.holds() * FULL)
            .ifPresent(of -> refuse(source, folder, of, of.amount() / bin.holds()));
      }
    }
    for (Store store : plant.stores()) {
      double kg = inStore(plant, store).mapToDouble(of -> storedKg(plant, of)).sum();
      if (kg > store.holdsKg() * FULL) {
        inStore(plant, store)
            .flatMap(of -> held(of).stream())
            .findFirst()
            .ifPresent(of -> refuse(source, folder, of, kg / store.holdsKg()));
      }
    }
  }

  private static Stream<Product> inStore(Plant plant, Store store) {
    return plant.products().stream()
        .filter(of -> of.storage().map(Storage::store).filter(store.name()::equals).isPresent());
  }

  private static void refuse(PlantOrigin source, String folder, ContentRecord of, double share) {
    throw source.refusal(
        folder
            + " has "
            + Math.round(100 * share)
            + " % of what "
            + of.place()
            + " holds in it on "
            + of.date()
            + " (line "
            + of.line()
            + " of its counts)",
        "at most 100 %, or a larger \"holds\" in the plant file");
  }

  /** What is taken to lie where, and where nothing for want of a record. */
  RunFact fact(Plant plant) {
    List<Found> found = new ArrayList<>();
    List<NotGiven> notGiven = new ArrayList<>();
    for (Machine machine : plant.machines()) {
      if (machine instanceof Machine.Bin bin) {
        double perUnit = bin.byVolume() ? 1 : TONNE_KG;
        String unit = bin.byVolume() ? "m3" : "t";
        held(bin)
            .ifPresentOrElse(
                of -> found.add(new Found(bin.name(), "", of.amount() / perUnit, unit, of.date())),
                () -> notGiven.add(notGiven(bin.name(), "")));
      }
    }
    for (Product product : plant.products()) {
      product
          .storage()
          .ifPresent(
              in ->
                  held(product)
                      .ifPresentOrElse(
                          of ->
                              found.add(
                                  new Found(
                                      in.store(), product.name(), of.amount(), "count", of.date())),
                          () -> notGiven.add(notGiven(in.store(), product.name()))));
    }
    return new RunFact.OpeningContents(found, notGiven);
  }

  private NotGiven notGiven(String place, String product) {
    return new NotGiven(
        place, product, last(place, product).map(of -> of.date().toString()).orElse(""));
  }
}
