package hurdline.study.rest;

import hurdline.compiled.Roster;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.SeasonEntry;
import hurdline.plant.SellingBasis;
import java.time.LocalDate;

/**
 * First packages after a changeover of which some are still to come on a day: those of the first
 * campaign that is not over, if it follows a changeover, less the whole ones that the records have
 * since it began.
 */
final class PurgeUnderWay {
  private final LocalDate asOf;
  private final SeasonSoFar soFar;

  PurgeUnderWay(LocalDate asOf, SeasonSoFar soFar) {
    this.asOf = asOf;
    this.soFar = soFar;
  }

  /**
   * The product with what is still to come of its purge.
   *
   * @param plant over its whole calendar
   */
  Product of(Plant plant, Product product) {
    int at = firstCampaign(plant);
    if (product.purge().isEmpty() || !isPurged(plant, product, at)) {
      return product;
    }
    SeasonEntry.Campaign campaign = (SeasonEntry.Campaign) plant.season().get(at);
    LocalDate began = RestOfSeason.begins(Roster.of(plant), at, campaign);
    double massKg = plant.packaging(product).orElseThrow().massKg();
    int made = (int) Math.floor(soFar.madeKg(product.name(), began) / massKg + 1e-9);
    return product.withPurgeUnderWay(Math.max(0, product.purge().get().packages() - made));
  }

  /** Entry of the first campaign that is not over; below 0 where all are. */
  private int firstCampaign(Plant plant) {
    for (int at = 0; at < plant.season().size(); at++) {
      if (plant.season().get(at) instanceof SeasonEntry.Campaign campaign
          && !campaign.to().isBefore(asOf)) {
        return at;
      }
    }
    return -1;
  }

  private static boolean isPurged(Plant plant, Product product, int at) {
    return at > 0
        && plant.season().get(at - 1) instanceof SeasonEntry.Changeover changeover
        && changeover.days() > 0
        && plant.lines().stream()
            .filter(
                line -> line.name().equals(((SeasonEntry.Campaign) plant.season().get(at)).line()))
            .anyMatch(line -> SellingBasis.makes(line, product.name()));
  }
}
