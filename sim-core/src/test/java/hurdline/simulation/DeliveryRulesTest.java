package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Crops by name: cotton is 0, stalk is 1. */
class DeliveryRulesTest {
  private static final int COTTON = 0;
  private static final int STALK = 1;

  /** 40 bales a day, the k-th at 12 k min; a trip is 10 + 30 + 20 + 30 min. */
  private static final String FIELD =
      """
      deliveries:
        stalk:
          fields: {bench: {area: 1 ha, yield: 20 t/ha, ready: 2027-03-01, baling: 40 bales/d}}
          hours: {from: "08:00", to: "16:00"}
          trucks: {count: 3, bales: 10, load: {lasts: 10 min}, drive: 30 min}
          unload: {lasts: 20 min}
          hands: 2
      """;

  @Test
  void whatFindsNoRoomIsHeldAtTheField() {
    YardRun run =
        YardRun.of(
                YardTexts.march(
                    3,
                    "yard: {places: {barn: {holds: 25 bales}}, when_full: hold-at-field}\n"
                        + FIELD))
            .run();
    assertThat(run.books.trips.trips(STALK)).isEqualTo(2);
    assertThat(run.books.levels.peak(STALK)).isEqualTo(20);
    assertThat(run.books.turnedAway(STALK)).isZero();
    assertThat(run.books.heldAtField(STALK)).isEqualTo(20);
    assertThat(run.books.heldAtFieldPeak(STALK)).isEqualTo(20);
    assertThat(run.books.levels.fullS(STALK)).isZero();
    assertThat(run.hauling.leftOver(STALK)).isEqualTo(40);
    assertThat(run.hauling.moreToCome(STALK, 3 * YardRun.D)).isTrue();
    assertThat(run.books.trips.arrivedOn(STALK, 0)).isTrue();
    assertThat(run.books.trips.arrivedOn(STALK, 1)).isFalse();
  }

  @Test
  void whatFindsNoRoomIsTurnedAwayAndIsNoTrip() {
    YardRun run =
        YardRun.of(
                YardTexts.march(
                    3, "yard: {places: {barn: {holds: 25 bales}}, when_full: turn-away}\n" + FIELD))
            .run();
    assertThat(run.books.trips.trips(STALK)).isEqualTo(2);
    assertThat(run.books.balesWeighedIn(STALK)).isEqualTo(20);
    assertThat(run.books.turnedAway(STALK)).isEqualTo(20);
    assertThat(run.books.heldAtField(STALK)).isZero();
    assertThat(run.hauling.leftOver(STALK)).isEqualTo(20);
    assertThat(run.hauling.moreToCome(STALK, 3 * YardRun.D)).isFalse();
  }

  @Test
  void aLiftMakesRoomAndTheNextTripStartsAtThatInstant() {
    YardRun run =
        YardRun.of(
                YardTexts.march(
                    3,
                    "yard: {places: {barn: {holds: 25 bales}}, when_full: hold-at-field}\n"
                        + FIELD))
            .traced();
    double liftedS = YardRun.D + 9 * YardRun.H;
    run.at(liftedS, nowS -> repeat(5, () -> run.stacking.free(run.lift(STALK, nowS)))).run();
    assertThat(run.notes).contains(liftedS + " stalk trip starts 10.0");
    assertThat(run.books.levels.peak(STALK)).isEqualTo(25);
    assertThat(run.books.levels.fullS(STALK))
        .isCloseTo(2 * YardRun.D - (10 * YardRun.H), within(1e-6));
  }

  @Test
  void aYardThatNothingLeavesPeaksAtAllThatCame() {
    YardRun run =
        YardRun.of(YardTexts.march(3, "yard: {places: {barn: {holds: 900 bales}}}\n" + FIELD))
            .run();
    assertThat(run.books.levels.peak(STALK))
        .isEqualTo(40)
        .isEqualTo(run.books.trips.trips(STALK) * 10);
    assertThat(run.books.levels.placePeak(0)).isEqualTo(40);
    assertThat(run.books.levels.dayPeak(STALK, 0, 0)).isEqualTo(30);
    assertThat(run.books.levels.dayPeak(STALK, 0, 1)).isEqualTo(40);
    assertThat(run.hauling.moreToCome(STALK, 2 * YardRun.D)).isFalse();
  }

  /** Truckloads are complete at 10:00, 12:00 and 14:00 and lie an hour later. */
  @Test
  void theMeanLevelIsOverTheWholeHorizon() {
    YardRun run =
        YardRun.of(YardTexts.march(1, "yard: {places: {barn: {holds: 900 bales}}}\n" + FIELD))
            .run();
    double lyingH = 10 * ((24 - 11) + (24 - 13) + (24 - 15));
    // the fourth truckload is complete at 16:00, as receiving ends, and stays at the field till the
    // morning
    assertThat(run.books.levels.baleSeconds(STALK)).isCloseTo(lyingH * YardRun.H, within(1e-6));
    assertThat(run.books.heldAtField(STALK)).isEqualTo(10);
  }

  @Test
  void loadsThatFindNoRoomWaitAtTheGateInOrder() {
    YardRun run =
        YardRun.of(
            YardTexts.march(
                1,
                """
                yard: {places: {barn: {holds: 10 bales}}}
                deliveries:
                  stalk:
                    loads: {every: 1 h, bales: 5, hours: {from: "08:00", to: "12:00"}}
                    unload: {lasts: 6 min}
                """));
    // loads at 9, 10, 11 and 12 h; the third and fourth find no room
    run.at(11.5 * YardRun.H, nowS -> repeat(7, () -> run.stacking.free(run.lift(STALK, nowS))))
        .run();
    assertThat(run.books.trips.trips(STALK)).isEqualTo(3);
    assertThat(run.books.trips.waitS(STALK)).isCloseTo(0.5 * YardRun.H, within(1e-6));
    assertThat(run.books.trips.turnaroundS(STALK))
        .isCloseTo(0.5 * YardRun.H + 3 * 6 * YardRun.MIN, within(1e-6));
    assertThat(run.stacking.inYard(STALK)).isEqualTo(8);
    assertThat(run.hauling.leftOver(STALK)).isEqualTo(13);
    assertThat(run.books.balesWeighedIn(STALK)).isEqualTo(15);
  }

  @Test
  void loadsAreTurnedAwayWhereTheYardSaysSo() {
    YardRun run =
        YardRun.of(
                YardTexts.march(
                    1,
                    """
                    yard: {places: {barn: {holds: 12 bales}}, when_full: turn-away}
                    deliveries:
                      stalk:
                        loads: {every: 1 h, bales: 5, hours: {from: "08:00", to: "12:00"}}
                    """))
            .run();
    assertThat(run.books.trips.trips(STALK)).isEqualTo(2);
    assertThat(run.books.turnedAway(STALK)).isEqualTo(10);
    assertThat(run.stacking.inYard(STALK)).isEqualTo(10);
  }

  /**
   * A place for both crops is promised once: 10 stalk bales are on the road to it when the cotton
   * comes.
   */
  @Test
  void roomPromisedToOneCropIsNotGivenToAnother() {
    YardRun run =
        YardRun.of(
                YardTexts.march(
                    1,
                    """
                    yard: {places: {barn: {holds: 14 bales}}}
                    deliveries:
                      stalk:
                        fields: {bench: {area: 1 ha, yield: 5 t/ha, ready: 2027-03-01, baling: 10 bales/d}}
                        hours: {from: "08:00", to: "16:00"}
                        trucks: {count: 1, bales: 5, drive: 2 h}
                      cotton:
                        loads: {every: 1 h, bales: 5, hours: {from: "12:00", to: "14:30"}}
                    """))
            .run();
    // the trucks' first load leaves at 12:00, lies at 14:00; the second leaves at 16:00
    assertThat(run.stacking.inYard(STALK)).isEqualTo(5);
    assertThat(run.stacking.inYard(COTTON)).isEqualTo(5);
    assertThat(run.hauling.leftOver(COTTON)).isEqualTo(10);
    assertThat(run.books.levels.placePeak(0)).isEqualTo(10);
  }

  /** Loading by one loader: the second truck waits at the field, and counts that as its wait. */
  @Test
  void aTruckThatWaitsToBeLoadedHasItsBalesClaimed() {
    YardRun run =
        YardRun.of(
                YardTexts.march(
                    1,
                    """
                    resources: {loader: {count: 1}}
                    yard: {places: {barn: {holds: 100 bales}}}
                    deliveries:
                      stalk:
                        fields: {bench: {area: 1 ha, yield: 10 t/ha, ready: 2027-03-01, baling: 500000 bales/d}}
                        hours: {from: "08:00", to: "16:00"}
                        trucks: {count: 3, bales: 10, load: {lasts: 30 min, needs: loader}, drive: 1 h}
                    """))
            .run();
    // 20 bales within 1.2 s: two trucks, the third finds none
    assertThat(run.books.trips.trips(STALK)).isEqualTo(2);
    assertThat(run.books.trips.waitS(STALK)).isBetween(29.9 * 60, 30.0 * 60);
    assertThat(run.books.heldAtFieldPeak(STALK)).isEqualTo(10);
  }

  private static void repeat(int times, Runnable what) {
    for (int k = 0; k < times; k++) {
      what.run();
    }
  }
}
