package hurdline.plant;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Prices that do not say at which moisture: water could then earn, or be paid for, as if it were
 * the stuff itself.
 */
final class PriceCautions {
  private final Plant plant;
  private final Problems found;
  private final SellingBasis selling;

  PriceCautions(Plant plant, Problems found) {
    this.plant = plant;
    this.found = found;
    selling = new SellingBasis(plant);
  }

  void look() {
    plant.products().stream()
        .filter(product -> product.isPriced() && product.moisture().basis().isEmpty())
        .forEach(this::product);
    plant.money().ifPresent(this::crops);
  }

  private void product(Product product) {
    List<Basis> ofCrops = selling.ofCrops(product);
    if (ofCrops.isEmpty()) {
      found.add(
          "products." + product.name() + ".price",
          "a price without a moisture basis; it is taken at " + said(SellingBasis.usual()),
          "say at which moisture it is sold, such as \"moisture: 12 %\", \"moisture: as is\" for what is sold as it"
              + " is weighed, or money.moisture_basis of its crop");
    } else if (ofCrops.size() > 1) {
      found.add(
          "products." + product.name() + ".price",
          "it is made from crops that are paid at different moistures ("
              + ofCrops.stream().map(PriceCautions::said).collect(Collectors.joining(", "))
              + "); it is taken as sold at the first",
          "say its own, such as \"moisture: 12 %\"");
    }
  }

  private void crops(Money money) {
    money
        .cropsPerKg()
        .forEach(
            (crop, price) -> {
              boolean asItsCrop =
                  !plant.baseOf(crop).equals(crop)
                      && price.equals(money.cropsPerKg().get(plant.baseOf(crop)));
              if (price != 0 && !asItsCrop && !money.paidAt().containsKey(crop)) {
                found.add(
                    "money.crop_prices." + crop,
                    "a price without a moisture basis; it is paid as weighed, water too",
                    "say at which moisture it is paid, such as \"moisture_basis: {"
                        + crop
                        + ": 12 %}\", or \"as is\" if it is paid as weighed");
              }
            });
  }

  private static String said(Basis basis) {
    return basis instanceof Basis.At at
        ? Problems.percent(at.moisture())
        : "its mass as it is weighed";
  }
}
