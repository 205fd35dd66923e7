package hurdline.plant;

import java.util.List;
import java.util.Optional;

/**
 * The moisture basis of each product: its own, else that of the crop it is made from, else {@link
 * #usual}.
 */
public final class SellingBasis {
  /**
   * Dry enough to store, with some way to the 15 % from which stalks heat; common practice, no
   * source.
   */
  private static final Basis USUAL = new Basis.At(0.12);

  private final Plant plant;

  public SellingBasis(Plant plant) {
    this.plant = plant;
  }

  static Basis usual() {
    return USUAL;
  }

  public Basis of(Product product) {
    return product
        .moisture()
        .basis()
        .orElseGet(() -> ofCrops(product).stream().findFirst().orElse(USUAL));
  }

  /** What its crops are paid at, each basis once, in the order of the lines that make it. */
  List<Basis> ofCrops(Product product) {
    return plant.lines().stream()
        .filter(line -> makes(line, product.name()))
        .flatMap(line -> paidAt(line.crop()).stream())
        .distinct()
        .toList();
  }

  /**
   * Only a moisture that is a number is handed on: who pays for stalks as weighed need not sell so.
   */
  private Optional<Basis> paidAt(String crop) {
    return plant.money().map(money -> money.paidAt().get(crop)).filter(Basis.At.class::isInstance);
  }

  /** Whether a line makes a product. */
  public static boolean makes(Line line, String product) {
    return line.steps().stream().anyMatch(step -> leadsTo(step, product));
  }

  private static boolean leadsTo(Step step, String product) {
    return step.outlets().stream().anyMatch(outlet -> outlet.to().equals(product))
        || step.packs()
            .filter(
                packs -> packs instanceof Step.PacksProduct one && one.product().equals(product))
            .isPresent()
        || step.makes().containsValue(product);
  }
}
