package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WaitsForRoomTest {
  private static final int STALK = 1;

  /**
   * Of loads of 4 each hour a yard of 10 takes two; those of 3:00 to 24:00 wait, 21 + 20 + … + 0
   * hours.
   */
  @Test
  void loadsAtTheGateWaitUntilTheEnd() {
    YardRun run =
        YardRun.of(
                YardTexts.march(
                    1,
                    """
                    yard: {places: {row: {holds: 10 bales}}}
                    deliveries: {stalk: {loads: {every: 1 h, bales: 4}}}
                    """))
            .run();
    assertThat(run.books.room.waitS(STALK)).isCloseTo(231 * YardRun.H, within(1e-6));
    assertThat(run.books.room.refused(STALK)).isEqualTo(22);
    assertThat(run.books.room.wanted(STALK)).isEqualTo(12);
  }

  @Test
  void loadsThatAreTurnedAwayAreRefusedAndDoNotWait() {
    YardRun run =
        YardRun.of(
                YardTexts.march(
                    1,
                    """
                    yard: {places: {row: {holds: 10 bales}}, when_full: turn-away}
                    deliveries: {stalk: {loads: {every: 1 h, bales: 4}}}
                    """))
            .run();
    assertThat(run.books.room.refused(STALK)).isEqualTo(22);
    assertThat(run.books.turnedAway(STALK)).isEqualTo(88);
    assertThat(run.books.room.waitS(STALK)).isZero();
  }

  /**
   * 100 bales a day are a truckload each 2.4 h; the yard takes two, so a truck waits from 7.2 h on
   * and one from 9.6 h.
   */
  @Test
  void trucksThatCouldBeLoadedWaitByTheClock() {
    YardRun run = YardRun.of(twoTrucks(20)).run();
    assertThat(run.books.room.waitS(STALK)).isCloseTo((16.8 + 14.4) * YardRun.H, within(1e-6));
    assertThat(run.books.room.refused(STALK)).isEqualTo(2);
    assertThat(run.books.room.wanted(STALK)).isEqualTo(30);
  }

  @Test
  void whatWouldHaveBeenWantedIsWhatAYardMustHoldForNobodyToWait() {
    int wanted = YardRun.of(twoTrucks(1_000_000)).run().books.room.wanted(STALK);
    assertThat(YardRun.of(twoTrucks(wanted)).run().books.room.refused(STALK)).isZero();
    assertThat(YardRun.of(twoTrucks(wanted - 1)).run().books.room.refused(STALK)).isPositive();
  }

  private static String twoTrucks(int holds) {
    return YardTexts.march(
        1,
        """
        yard: {places: {row: {holds: %d bales}}}
        deliveries:
          stalk:
            fields: {bench: {area: 100 ha, yield: 1 t/ha, ready: 2027-03-01, baling: 100 bales/d}}
            hours: {from: "00:00", to: "24:00"}
            trucks: {count: 2, bales: 10, drive: 30 min}
        """
            .formatted(holds));
  }
}
