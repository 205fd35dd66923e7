package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.simulation.yard.CarriedOverStock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What a change of the plant must not move: the bales, the weather, the yields. And what a
 * replication must not do: allocate.
 */
class SameChanceTest {
  private static final int STALK = 1;

  private static String season(int trucks, String loads) {
    return YardTexts.plant(
        "2027-03-01",
        "2027-06-30",
        "[]",
        """
        resources: {loader: {count: 1}, scale: {count: 1}}
        yard: {places: {shed: {holds: 300 bales, loss: 1 %%/month}, open: {holds: 9000 bales, loss: 3 %%/month}}, field_loss: 3 %%/month}
        deliveries:
          stalk:
            fields:
              bench: {area: 100 ha, yield: {normal: {mean: 8 t/ha, sd: 1 t/ha}}, ready: 2027-03-10, ready_sd: 5 d, baling: 200 bales/d}
              flat: {area: 120 ha, yield: {normal: {mean: 8 t/ha, sd: 1 t/ha}}, ready: 2027-03-20, ready_sd: 5 d, baling: 200 bales/d}
            yield_factor: {normal: {mean: 100 %%, sd: 12 %%, low: 50 %%}}
            weather: {wet_day: 22 %%, wet_after_wet: 45 %%, dry_days: 1}
            hours: {from: "07:00", to: "18:00", days: [Mon, Tue, Wed, Thu, Fri, Sat]}
            trucks: {count: %d, bales: 34, load: {lasts: {triangular: {low: 25 min, mode: 32 min, high: 50 min}}}, drive: {lognormal: {mean: 38 min, sd: 8 min}}}
            weigh: {lasts: 4 min, needs: scale}
            unload: {lasts: {triangular: {low: 18 min, mode: 24 min, high: 40 min}}, needs: loader}
          %s
        """
            .formatted(trucks, loads));
  }

  private static final String COTTON =
      "cotton: {loads: {every: {exponential: {mean: 2 h}}, bales: 1, hours: {from: \"07:00\", to: \"19:00\"}}, unload: {lasts: 5 min, needs: loader}}";

  /**
   * Masses would do if they varied; moisture and shares do. Bales are known by when they were
   * baled.
   */
  private static List<String> bales(YardRun run) {
    List<String> all = new ArrayList<>();
    for (int bale = 0; bale < run.bales.rows(); bale++) {
      CarriedOverStock.Bale row = run.bales.told(bale, 0, 0);
      if (row.crop() == STALK) {
        all.add(row.moisture() + " " + row.dryShare()[0]);
      }
    }
    return all;
  }

  @Test
  void moreTrucksAndAnotherCropMeetTheSameBales() {
    YardRun few = YardRun.of(season(1, "")).run(1, 4);
    YardRun many = YardRun.of(season(4, COTTON)).run(1, 4);
    assertThat(bales(few))
        .hasSizeGreaterThan(2000)
        .containsExactlyInAnyOrderElementsOf(bales(many));
    assertThat(many.books.heldAtFieldPeak(STALK)).isLessThan(few.books.heldAtFieldPeak(STALK));
    YardRun other = YardRun.of(season(1, "")).run(1, 5);
    assertThat(bales(other)).doesNotContainAnyElementsOf(bales(few));
  }

  @Test
  void aReplicationIsTheSameWhateverWasSimulatedBeforeOnTheSameObjects() {
    YardRun fresh = YardRun.of(season(2, COTTON)).run(1, 2);
    YardRun used = YardRun.of(season(2, COTTON)).run(1, 1).run(9, 7).run(1, 2);
    assertThat(used.books.weighedIn.kg(STALK)).isEqualTo(fresh.books.weighedIn.kg(STALK));
    assertThat(used.books.lostInYard.kg(0)).isEqualTo(fresh.books.lostInYard.kg(0));
    assertThat(used.books.lostAtField.kg(STALK))
        .isEqualTo(fresh.books.lostAtField.kg(STALK))
        .isPositive();
    assertThat(used.books.trips.waitS(STALK))
        .isEqualTo(fresh.books.trips.waitS(STALK))
        .isPositive();
    assertThat(used.books.levels.baleSeconds(STALK))
        .isEqualTo(fresh.books.levels.baleSeconds(STALK));
    assertThat(used.books.heldAtFieldPeak(STALK)).isEqualTo(fresh.books.heldAtFieldPeak(STALK));
    assertThat(used.resources.books().waitsS(0)).isEqualTo(fresh.resources.books().waitsS(0));
  }

  /** Allowance: the counting itself; a single object an event would be a hundred times as much. */
  @Test
  void aSeasonAllocatesNothingOnceEverythingHasGrown() {
    YardRun run = YardRun.of(season(3, COTTON)).run(1, 1).run(1, 1);
    assertThat(run.loopBytes).isLessThan(1000);
    assertThat(YardRun.of(season(3, COTTON)).run(1, 1).loopBytes)
        .as("the control: tables grow in a first season")
        .isGreaterThan(100_000);
  }
}
