package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.account.IntakeBooks;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LossAndBalanceTest {
  private static final int STALK = 1;
  private static final double MONTH_S = 30.4375 * YardRun.D;

  private static final String TRIP =
      """
      resources: {scale: {count: 1}}
      yard: {places: {barn: {holds: 900 bales, loss: 20 %%/month}}, field_loss: 50 %%/month}
      deliveries:
        stalk:
          fields: {bench: {area: 1 ha, yield: 1 t/ha, ready: 2027-03-01, baling: 2 bales/d}}
          hours: {from: "08:00", to: "16:00"}
          trucks: {count: 1, bales: 2, load: {lasts: 1 h}, drive: 3 h}
          unload: {lasts: 90 min}
          %s
      """;

  /**
   * Baled at 12 and 16 h, on the truck from 8 h of the next day, 12 h at the gate, weighed to 12.5
   * h, unloaded to 14 h.
   */
  @Test
  void theFieldsLossRunsToTheEndOfTheFirstWeighingAndThePlacesFromThere() {
    YardRun run =
        YardRun.of(YardTexts.march(2, TRIP.formatted("weigh: {lasts: 30 min, needs: scale}")))
            .run();
    double first = 500 * kept(0.5, 24.5);
    double second = 500 * kept(0.5, 20.5);
    assertThat(run.books.weighedIn.kg(STALK)).isCloseTo(first + second, within(1e-9));
    assertThat(run.books.lostAtField.kg(STALK)).isCloseTo(1000 - first - second, within(1e-9));
    double leftH = 48 - 36.5;
    assertThat(run.books.inPlacesAtEnd.kg(STALK))
        .isCloseTo((first + second) * kept(0.2, leftH), within(1e-9));
    assertThat(run.books.lostInYard.kg(STALK))
        .isCloseTo((first + second) * (1 - kept(0.2, leftH)), within(1e-9));
  }

  @Test
  void withoutAScaleABaleIsWeighedInWhenItsUnloadingBegins() {
    YardRun run = YardRun.of(YardTexts.march(2, TRIP.formatted(""))).run();
    assertThat(run.books.weighedIn.kg(STALK))
        .isCloseTo(500 * (kept(0.5, 24) + kept(0.5, 20)), within(1e-9));
    assertThat(run.books.trips.trips(STALK)).isEqualTo(1);
    assertThat(run.books.trips.waitS(STALK)).isZero();
  }

  @Test
  void whatStillLiesAtTheFieldHasLostUpToTheEnd() {
    YardRun run = YardRun.of(YardTexts.march(1, TRIP.formatted(""))).run();
    assertThat(run.books.lostAtField.kg(STALK))
        .isCloseTo(1000 - 500 * (kept(0.5, 12) + kept(0.5, 8)), within(1e-9));
  }

  @Test
  void whatIsWeighedInAndNotUnloadedHasLostLikeThePlaceItWillGoTo() {
    YardRun run =
        YardRun.of(
                YardTexts.march(
                    1,
                    """
                    yard: {places: {shed: {holds: 1 bale, loss: 40 %/month}, open: {holds: 9 bales, loss: 20 %/month}}}
                    deliveries:
                      stalk:
                        loads: {every: 14 h, bales: 1, hours: {from: "08:00", to: "23:00"}}
                        unload: {lasts: 3 h}
                    """))
            .run();
    assertThat(run.books.inTrucksAtEnd.kg(STALK)).isCloseTo(500 * kept(0.4, 2), within(1e-9));
    assertThat(run.books.lostInYard.kg(STALK)).isCloseTo(500 * (1 - kept(0.4, 2)), within(1e-9));
  }

  private static double kept(double lossPerMonth, double hours) {
    return Math.pow(1 - lossPerMonth, hours * YardRun.H / MONTH_S);
  }

  /**
   * A wild season: two crops, shared places, chance in everything, bales lifted, freed, and put
   * back in part.
   */
  private static final String WILD =
      """
      resources: {loader: {count: 1}, scale: {count: 1}}
      yard:
        on_hand: {stalk: 30 bales, cotton: 4 bales}
        places: {shed: {holds: 40 bales, loss: 2 %%/month, crops: [stalk]}, open: {holds: 60 bales, loss: 9 %%/month}}
        pick: %s
        when_full: %s
        field_loss: 5 %%/month
      deliveries:
        stalk:
          fields:
            bench: {area: 10 ha, yield: {normal: {mean: 8 t/ha, sd: 2 t/ha}}, ready: 2027-03-03, ready_sd: 2 d, baling: 70 bales/d}
            flat: {area: 10 ha, yield: {normal: {mean: 8 t/ha, sd: 2 t/ha}}, ready: 2027-03-05, ready_sd: 2 d, baling: 90 bales/d}
          weather: {wet_day: 30 %%, wet_after_wet: 50 %%, dry_days: 1}
          hours: {from: "07:00", to: "18:00", days: [Mon, Tue, Wed, Thu, Fri, Sat]}
          trucks: {count: 3, bales: 12, load: {lasts: 25 min, needs: loader}, drive: {lognormal: {mean: 38 min, sd: 8 min}}}
          weigh: {lasts: 4 min, needs: scale}
          unload: {lasts: {exponential: {mean: 24 min}}, needs: loader}
        cotton:
          loads: {every: {exponential: {mean: 2 h}}, bales: 3, hours: {from: "07:00", to: "19:00"}}
          unload: {lasts: 15 min, needs: loader}
      """;

  @Test
  void everyComponentOfWhatCameInIsLostSetOnTheTableOrStillThere() {
    for (String rule : new String[] {"hold-at-field", "turn-away"}) {
      for (String pick : new String[] {"oldest-first", "driest-first", "{places: [open]}"}) {
        balances(rule, pick);
      }
    }
  }

  private static void balances(String rule, String pick) {
    YardRun run = YardRun.of(YardTexts.march(24, WILD.formatted(pick, rule)));
    SplittableRandom chance = new SplittableRandom(44);
    for (double atS = 3600; atS < 24 * YardRun.D; atS += 1800) {
      run.at(atS, nowS -> feedAtRandom(run, chance, nowS));
    }
    for (int replication = 1; replication <= 3; replication++) {
      IntakeBooks books = run.run(11, replication).books;
      assertThat(books.balesWeighedIn(STALK)).isGreaterThan(100);
      assertThat(books.turnedAway(STALK) > 0).isEqualTo(rule.equals("turn-away"));
      for (int crop = 0; crop < 2; crop++) {
        assertThat(books.levels.inYard(crop)).isEqualTo(run.stacking.inYard(crop)).isNotNegative();
        for (int component = 0; component < 2; component++) {
          double in =
              books.onHand.componentDryKg(crop, component)
                  + books.weighedIn.componentDryKg(crop, component)
                  + books.putBack.componentDryKg(crop, component);
          double out =
              books.lostInYard.componentDryKg(crop, component)
                  + books.setOnTable.componentDryKg(crop, component)
                  + books.inPlacesAtEnd.componentDryKg(crop, component)
                  + books.inTrucksAtEnd.componentDryKg(crop, component);
          assertThat(out).isCloseTo(in, within(1e-9 * in));
        }
        double waterIn =
            books.onHand.waterKg(crop)
                + books.weighedIn.waterKg(crop)
                + books.putBack.waterKg(crop);
        double waterOut =
            books.lostInYard.waterKg(crop)
                + books.setOnTable.waterKg(crop)
                + books.inPlacesAtEnd.waterKg(crop)
                + books.inTrucksAtEnd.waterKg(crop);
        assertThat(waterOut).isCloseTo(waterIn, within(1e-9 * waterIn));
      }
    }
  }

  private static void feedAtRandom(YardRun run, SplittableRandom chance, double nowS) {
    int crop = chance.nextInt(2);
    if (run.stacking.unpromised(crop) > 0) {
      int bale = run.lift(crop, nowS);
      if (chance.nextInt(5) == 0) {
        run.stacking.putBackInFront(bale, run.bales.massKg(bale) * chance.nextDouble(), nowS);
      } else {
        run.stacking.free(bale);
      }
    }
  }
}
