package hurdline.simulation;

import static hurdline.study.Studied.simulated;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.replicate.ReplicationResults;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Loads that are kept apart fail by chance, each by itself, and are not paid for. */
class FailedLotsTest {
  private static final PlantOrigin LOTS = of("failed_lots");
  private static final String SHARE = "deliveries.stalk.fails.share";

  private static PlantOrigin of(String exact) {
    return Studied.source(Path.of("../line-configs/exact/" + exact + ".yaml"));
  }

  private static ReplicationResults with(PlantOrigin of, String... changes) {
    Change[] all = new Change[changes.length / 2];
    for (int at = 0; at < all.length; at++) {
      all[at] = new Change.Value(changes[2 * at], changes[2 * at + 1]);
    }
    return simulated(of.variants().with(all));
  }

  /**
   * 12 loads on each of 365 days, 4380 in all: of a share of 30 % 1314 ± 3.9 · 30.3, missed once in
   * ten thousand seeds.
   */
  @Test
  void theShareOfLoadsThatFailIsTheFiles() {
    ReplicationResults year =
        with(
            LOTS,
            SHARE,
            "30 %",
            "calendar.to",
            "2028-02-28",
            "deliveries.stalk.loads.every",
            "1 h",
            "deliveries.stalk.loads.bales",
            "1",
            "deliveries.stalk.loads.hours.to",
            "\"18:00\"",
            "yard.places.barn.holds",
            "9000 bales");
    double failed = year.mean(Measure.INTAKE_FAILED.of("stalk"));
    assertThat(failed + year.mean(Measure.INTAKE_WEIGHED_IN.of("stalk"))).isBetween(4379.0, 4380.0);
    assertThat(failed).isCloseTo(1314, within(118.0));
    assertThat(year.mean(Measure.MONEY_CROP_FAILED.of("stalk"))).isEqualTo(60 * failed);
  }

  /**
   * Three loads of the last day of a year fail three days on. What they had wasted by midnight goes
   * with them too, so nothing is bought and nothing lost: 180 USD is all that they cost.
   */
  @Test
  void aLoadThatFailsInTheNextYearIsNotPaidForEither() {
    ReplicationResults years =
        with(
            LOTS,
            "calendar.to",
            "2029-02-28",
            "yard.on_hand.stalk",
            "0 bales",
            "yard.places.barn.holds",
            "90 bales",
            "yard.places.barn.loss",
            "30 %/month",
            "deliveries.stalk.release_after",
            "3 d",
            "deliveries.stalk.loads.from",
            "2028-02-29",
            "deliveries.stalk.loads.to",
            "2028-02-29");
    assertThat(years.mean(Measure.INTAKE_FAILED.of("stalk"))).isEqualTo(12);
    assertThat(years.mean(Measure.MASS_WEIGHED_IN.of("stalk"))).isCloseTo(0, within(1e-9));
    assertThat(years.mean(Measure.MASS_LOST_IN_YARD.of("stalk"))).isCloseTo(0, within(1e-9));
    assertThat(years.mean(Measure.MONEY_MARGIN.of())).isCloseTo(-180, within(1e-6));
  }

  /** Loads that cannot fail are those of a plant that does not name it. */
  @Test
  void noneFailsWhereTheShareIsNone() {
    Plant passing = LOTS.variants().with(new Change.Named("passing"));
    double margin = simulated(passing).mean(Measure.MONEY_MARGIN.of());
    assertThat(with(LOTS, SHARE, "0 %").mean(Measure.MONEY_MARGIN.of())).isEqualTo(margin);
  }

  /** Neither mass nor area of a field is paid, and no advance is earned. */
  @Test
  void failedLoadsEarnNothing() {
    String[] all = {
      "deliveries.stalk.release_after", "1 h", "deliveries.stalk.fails", "{share: 100 %}"
    };
    ReplicationResults area = with(of("area_terms"), all);
    assertThat(area.mean(Measure.INTAKE_FAILED.of("stalk"))).isPositive();
    assertThat(area.mean(Measure.MONEY_CROP_AREA.of("stalk"))).isCloseTo(0, within(1e-9));
    assertThat(area.mean(Measure.MONEY_CROP_COST.of())).isCloseTo(0, within(1e-9));
    ReplicationResults advance = with(of("advance_terms"), all);
    double notEarned =
        advance.mean(Measure.MONEY_ADVANCE_SHORT.of("stalk"))
            + advance.mean(Measure.MONEY_ADVANCE_OPEN.of("stalk"));
    assertThat(notEarned).isCloseTo(advance.mean(Measure.MONEY_ADVANCE.of("stalk")), within(1e-9));
  }
}
