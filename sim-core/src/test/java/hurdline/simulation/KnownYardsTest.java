package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.account.TripBooks;
import org.junit.jupiter.api.Test;

/** The small plants whose yard figures are worked out by hand beside their files. */
class KnownYardsTest {

  @Test
  void twoTrucksRunTheirRoundsByTheClock() {
    YardRun run = YardRun.exact("trucks_clock").run();
    TripBooks trips = run.books.trips;
    assertThat(trips.trips(0)).isEqualTo(26);
    assertThat(run.books.balesWeighedIn(0)).isEqualTo(270);
    assertThat(run.books.weighedIn.kg(0)).isCloseTo(135_000, within(1e-6));
    assertThat(trips.turnaroundS(0) / 26).isCloseTo(103 * YardRun.MIN, within(1e-6));
    assertThat(trips.waitS(0)).isZero();
    assertThat(run.busyShare("scale")).isCloseTo(214.0 / 1440, within(1e-12));
    assertThat(run.busyShare("loader")).isCloseTo(405.0 / 1440, within(1e-12));
    assertThat(run.waitMeanS("scale")).isZero();
    assertThat(run.resources.books().waitingPeak(run.resource("scale"))).isZero();
    assertThat(run.resources.books().requests(run.resource("scale"))).isEqualTo(27 + 27);
  }

  @Test
  void twoStreamsOfLoadsShareOneScale() {
    YardRun run = YardRun.exact("loads_scale").run();
    int cotton = 0;
    int stalk = 1;
    TripBooks trips = run.books.trips;
    assertThat(trips.trips(stalk)).isEqualTo(8);
    assertThat(trips.trips(cotton)).isEqualTo(7);
    assertThat(trips.turnaroundS(stalk) / 8).isCloseTo(16.625 * YardRun.MIN, within(1e-9));
    assertThat(trips.turnaroundS(cotton) / 7).isCloseTo(20 * YardRun.MIN, within(1e-9));
    assertThat(trips.waitS(stalk) / 8).isCloseTo(2.625 * YardRun.MIN, within(1e-9));
    assertThat(trips.waitS(cotton) / 7).isCloseTo(6 * YardRun.MIN, within(1e-9));
    assertThat(run.waitMeanS("scale")).isCloseTo(2.1 * YardRun.MIN, within(1e-9));
    assertThat(run.busyShare("scale")).isCloseTo(206.0 / 250, within(1e-12));
    assertThat(run.books.balesWeighedIn(stalk)).isEqualTo(32);
    assertThat(run.books.balesWeighedIn(cotton)).isEqualTo(14);
    assertThat(run.books.weighedIn.kg(cotton)).isCloseTo(28_000, within(1e-9));
    assertThat(run.hauling.moreToCome(stalk, 0.5 * YardRun.D)).isTrue();
    assertThat(run.hauling.moreToCome(stalk, YardRun.D)).isFalse();
  }

  @Test
  void balesRotByThePlaceThatTheyLieIn() {
    double daysLying = 15.25;
    YardRun run = YardRun.exact("yard_loss");
    run.at(
        daysLying * YardRun.D,
        nowS -> {
          for (int bale = 0; bale < 10; bale++) {
            run.lift(0, nowS);
          }
        });
    run.run();
    double months = daysLying / 30.4375;
    double leftDryKg = 4 * 400 * Math.pow(0.9, months) + 6 * 400 * Math.pow(0.5, months);
    assertThat(run.books.setOnTable.dryKg(0)).isCloseTo(leftDryKg, within(1e-8));
    assertThat(run.books.lostInYard.dryKg(0)).isCloseTo(4000 - leftDryKg, within(1e-8));
    assertThat(run.books.lostInYard.waterKg(0)).isCloseTo((4000 - leftDryKg) / 4, within(1e-8));
    assertThat(run.books.ageS(0)).isCloseTo(10 * daysLying * YardRun.D, within(1e-6));
    assertThat(run.stacking.inYard(0)).isZero();
  }

  @Test
  void aStreamRunsInItsHoursOnlyAndPaysHandsOnDaysOfArrival() {
    YardRun run = YardRun.exact("two_campaigns").run();
    assertThat(run.books.balesOnHand(0) + run.books.balesWeighedIn(0)).isEqualTo(330);
    assertThat(run.books.trips.trips(0)).isEqualTo(6);
    assertThat(run.books.trips.arrivedOn(0, 0)).isTrue();
    assertThat(run.books.trips.arrivedOn(0, 1)).isTrue();
    assertThat(run.books.trips.arrivedOn(0, 2)).isFalse();
    assertThat(run.books.weighedIn.kg(0)).isCloseTo(15_300, within(1e-8));
    assertThat(run.books.levels.dayPeak(0, 0, 0)).isEqualTo(315);
    assertThat(run.books.levels.dayPeak(0, 0, 13)).isEqualTo(330);
  }

  @Test
  void theSameReplicationComesOutTheSameFromUsedObjects() {
    YardRun run = YardRun.exact("loads_scale").run(5, 3).run(5, 3);
    assertThat(run.books.trips.waitS(1)).isCloseTo(8 * 2.625 * YardRun.MIN, within(1e-9));
    assertThat(run.resources.books().requests(0)).isEqualTo(30);
  }
}
