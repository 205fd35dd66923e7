package hurdline.compiled;

import static hurdline.compiled.Sketch.D;
import static hurdline.compiled.Sketch.H;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Receiving, loads, weeks and months, worked out by hand. Day 0 is Monday, March 1, 2027. */
class ReceivingTest {
  @Test
  void receivingKeepsItsDaysAndNeverAClosedOne() {
    Roster roster = new Sketch(7).closed(3).loads(2, 4, "Mon Tue Wed Thu", 7, 17, 7, 17).roster();
    assertThat(roster.receiving("stalk"))
        .isEqualTo(
            TimeWindows.of(7 * H, 17 * H, D + 7 * H, D + 17 * H, 3 * D + 7 * H, 3 * D + 17 * H));
    assertThat(roster.receiving("seed_cotton")).isEqualTo(TimeWindows.NONE);
  }

  @Test
  void aStreamOfLoadsRunsBetweenItsDatesInItsHours() {
    Roster roster = new Sketch(7).closed(3).loads(2, 4, "", 7, 17, 8, 24).roster();
    assertThat(roster.loadsHours("stalk"))
        .isEqualTo(TimeWindows.of(D + 8 * H, 2 * D, 3 * D + 8 * H, 4 * D));
    assertThat(roster.loadsHours("seed_cotton")).isEqualTo(TimeWindows.NONE);
  }

  @Test
  void aStreamAllDayIsOneStretchAndTheHorizonCutsIt() {
    Roster roster = new Sketch(3).loads(-4, 40, "", 0, 24, 0, 24).roster();
    assertThat(roster.loadsHours("stalk")).isEqualTo(TimeWindows.of(0, 3 * D));
  }

  /**
   * The case two_campaigns: a load every 3 h of a 10 h day comes at 10:00, 13:00, 16:00, then
   * 09:00, 12:00, 15:00.
   */
  @Test
  void aCountOfStreamHoursStandsStillAtNight() {
    TimeWindows stream = new Sketch(14).loads(1, 2, "", 7, 17, 7, 17).roster().loadsHours("stalk");
    double[] atH = new double[6];
    for (int load = 0; load < 6; load++) {
      atH[load] = stream.afterS((load + 1) * 3 * H) / H;
    }
    assertThat(atH).containsExactly(10, 13, 16, 24 + 9, 24 + 12, 24 + 15);
    assertThat(stream.afterS(7 * 3 * H)).isInfinite();
  }

  @Test
  void weeksStartOnMondayAndTheFirstMayBeShort() {
    Roster roster = new Sketch(16).from(3).roster();
    assertThat(roster.weeks().count()).isEqualTo(3);
    assertThat(roster.weeks().toS(0)).isEqualTo(5 * D);
    assertThat(roster.weeks().toS(2)).isEqualTo(14 * D);
    assertThat(roster.weeks().firstDate(1)).isEqualTo(Sketch.march(8));
    assertThat(roster.weeks().at(5 * D - 1)).isZero();
    assertThat(roster.weeks().at(5 * D)).isEqualTo(1);
  }

  @Test
  void monthsAreThoseThatTheHorizonTouches() {
    Roster roster = new Sketch(32).from(31).roster();
    assertThat(roster.months().count()).isEqualTo(2);
    assertThat(roster.months().fromS(1)).isEqualTo(D);
    assertThat(roster.months().at(2 * D)).as("the very end").isEqualTo(1);
    assertThat(roster.horizonS()).isEqualTo(2 * D);
    assertThat(roster.days()).isEqualTo(2);
    assertThat(roster.dayAt(D - 1)).isZero();
    assertThat(roster.dayAt(2 * D)).isEqualTo(1);
    assertThat(roster.date(1)).isEqualTo(Sketch.march(32));
    assertThat(roster.day(Sketch.march(32))).isEqualTo(1);
    assertThat(roster.midnightS(2)).isEqualTo(2 * D);
  }
}
