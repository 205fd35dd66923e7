package hurdline.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.compiled.YardPlan;
import hurdline.simulation.TestPlant;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Levels, peaks, bale hours and hours without room against a book kept minute by minute. Fixed
 * seed, no false alarms.
 */
class YardLevelsTest {
  private static final int DAYS = 3;
  private static final int MINUTES = DAYS * 1440;
  private static final int[] HOLDS = {3, 2, 5};

  /** [place][crop]: one for each alone, one for both. */
  private static final boolean[][] TAKES = {{true, false}, {false, true}, {true, true}};

  private static final YardPlan PLAN =
      YardPlan.of(
          TestPlant.oneLine()
              .days(3)
              .says(
                  "crops",
                  "{ash: {bale: {mass: 1 t}, composition: {fiber: 100 %}}, birch: {bale: {mass: 1"
                      + " t}, composition: {fiber: 100 %}}}")
              .says(
                  "lines",
                  "{stalk_line: {crop: ash, feed: feeder, steps: {feeder: {rate: 1 t/h, to:"
                      + " tow}}}}")
              .says(
                  "yard",
                  "{places: {first: {holds: 3 bales, crops: [ash]}, second: {holds: 2 bales, crops:"
                      + " [birch]}, third: {holds: 5 bales}}}")
              .plant());

  @Test
  void levelsAreThoseOfABookKeptMinuteByMinute() {
    SplittableRandom chance = new SplittableRandom(11);
    YardLevels levels = new IntakeBooks(PLAN, 0).levels;
    double fullS = 0;
    for (int trial = 0; trial < 40; trial++) {
      levels.reset();
      PlainBook book = new PlainBook();
      for (int minute = 0; minute < MINUTES; minute++) {
        if (chance.nextInt(30) == 0) {
          change(levels, book, chance, minute);
        }
        book.passMinute(minute);
      }
      levels.finish(MINUTES * 60);
      book.agreesWith(levels);
      fullS += levels.fullS(0) + levels.fullS(1);
    }
    assertThat(fullS).as("no room at times").isPositive();
  }

  /** A bale comes or goes; one put back may lie in excess of what the place holds. */
  private static void change(
      YardLevels levels, PlainBook book, SplittableRandom chance, int minute) {
    int place = chance.nextInt(3);
    int crop = chance.nextInt(2);
    boolean comes = chance.nextInt(3) > 0;
    boolean room = book.inPlace(place) < HOLDS[place] || chance.nextInt(5) == 0;
    if (comes && TAKES[place][crop] && room) {
      levels.enters(crop, place, minute * 60.0);
      book.changes(crop, place, 1, minute);
    } else if (!comes && book.level[crop][place] > 0) {
      levels.leaves(crop, place, minute * 60.0);
      book.changes(crop, place, -1, minute);
    }
  }

  private static final class PlainBook {
    final int[][] level = new int[2][3];
    final int[] peak = new int[2];
    final int[] placePeak = new int[3];
    final double[] baleS = new double[2];
    final double[] fullS = new double[2];
    final int[][][] dayPeak = new int[2][4][DAYS];

    int inPlace(int place) {
      return level[0][place] + level[1][place];
    }

    int inYard(int crop) {
      return level[crop][0] + level[crop][1] + level[crop][2];
    }

    /** What lay there as a day began is of that day, though it left on the stroke of midnight. */
    void changes(int crop, int place, int more, int minute) {
      see(crop, minute);
      level[crop][place] += more;
      peak[crop] = Math.max(peak[crop], inYard(crop));
      placePeak[place] = Math.max(placePeak[place], inPlace(place));
      see(crop, minute);
    }

    void passMinute(int minute) {
      for (int crop = 0; crop < 2; crop++) {
        see(crop, minute);
        baleS[crop] += 60 * inYard(crop);
        boolean room = false;
        for (int place = 0; place < 3; place++) {
          room |= TAKES[place][crop] && inPlace(place) < HOLDS[place];
        }
        fullS[crop] += room ? 0 : 60;
      }
    }

    private void see(int crop, int minute) {
      int day = minute / 1440;
      for (int place = 0; place < 4; place++) {
        int lies = place == 3 ? inYard(crop) : level[crop][place];
        dayPeak[crop][place][day] = Math.max(dayPeak[crop][place][day], lies);
      }
    }

    void agreesWith(YardLevels levels) {
      for (int place = 0; place < 3; place++) {
        assertThat(levels.placePeak(place)).isEqualTo(placePeak[place]);
      }
      for (int crop = 0; crop < 2; crop++) {
        assertThat(levels.inYard(crop)).isEqualTo(inYard(crop));
        assertThat(levels.peak(crop)).isEqualTo(peak[crop]);
        assertThat(levels.baleSeconds(crop)).isCloseTo(baleS[crop], within(1e-6));
        assertThat(levels.fullS(crop)).isCloseTo(fullS[crop], within(1e-6));
        for (int place = 0; place < 4; place++) {
          for (int day = 0; day < DAYS; day++) {
            assertThat(levels.dayPeak(crop, place, day)).isEqualTo(dayPeak[crop][place][day]);
          }
        }
      }
    }
  }
}
