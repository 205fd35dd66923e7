package hurdline.compiled;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TimeWindowsTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;
  private static final TimeWindows TWO = TimeWindows.of(10, 20, 30, 50);

  @Test
  void intervalsComeInOrderWhateverTheirOrderWas() {
    assertThat(TimeWindows.of(30, 50, 10, 20))
        .isEqualTo(TWO)
        .hasToString("hours [10.0, 20.0) [30.0, 50.0)");
    assertThat(TWO.count()).isEqualTo(2);
    assertThat(TWO.fromS(1)).isEqualTo(30);
    assertThat(TWO.toS(1)).isEqualTo(50);
  }

  @Test
  void intervalsThatTouchOrOverlapAreOneAndEmptyOnesAreNone() {
    assertThat(TimeWindows.of(10, 20, 20, 30, 25, 40, 26, 27)).isEqualTo(TimeWindows.of(10, 40));
    assertThat(TimeWindows.of(10, 10)).isEqualTo(TimeWindows.NONE);
    assertThat(TimeWindows.NONE.lengthS()).isZero();
  }

  @Test
  void aStartIsInAndAnEndIsNot() {
    assertThat(TWO.in(9.999)).isFalse();
    assertThat(TWO.in(10)).isTrue();
    assertThat(TWO.in(19.999)).isTrue();
    assertThat(TWO.in(20)).isFalse();
    assertThat(TWO.in(50)).isFalse();
    assertThat(TimeWindows.NONE.in(0)).isFalse();
  }

  @Test
  void theNextChangeLiesAfterTheInstant() {
    assertThat(
            new double[] {
              TWO.nextChangeS(0),
              TWO.nextChangeS(10),
              TWO.nextChangeS(15),
              TWO.nextChangeS(20),
              TWO.nextChangeS(30),
              TWO.nextChangeS(50)
            })
        .containsExactly(10, 20, 20, 30, 50, NEVER);
    assertThat(TWO.nextInS(15)).isEqualTo(15);
    assertThat(TWO.nextInS(20)).isEqualTo(30);
    assertThat(TWO.nextInS(50)).isEqualTo(NEVER);
    assertThat(TimeWindows.NONE.nextChangeS(0)).isEqualTo(NEVER);
  }

  @Test
  void lengthsCountWhatLiesBefore() {
    assertThat(TWO.lengthS()).isEqualTo(30);
    assertThat(
            new double[] {
              TWO.lengthBeforeS(5),
              TWO.lengthBeforeS(15),
              TWO.lengthBeforeS(25),
              TWO.lengthBeforeS(30),
              TWO.lengthBeforeS(99)
            })
        .containsExactly(0, 5, 10, 10, 30);
    assertThat(TWO.lengthS(15, 35)).isEqualTo(10);
  }

  /**
   * A count of hours that is reached at an end is reached then, not when the next interval starts.
   */
  @Test
  void aLengthIsReachedAtTheEndOfAnIntervalRatherThanTheNextStart() {
    assertThat(
            new double[] {
              TWO.afterS(0),
              TWO.afterS(5),
              TWO.afterS(10),
              TWO.afterS(11),
              TWO.afterS(30),
              TWO.afterS(30.1)
            })
        .containsExactly(10, 15, 20, 31, 50, NEVER);
    assertThat(TimeWindows.NONE.afterS(0)).isEqualTo(NEVER);
  }

  @Test
  void setsOfHoursAddMeetAndDiffer() {
    TimeWindows other = TimeWindows.of(0, 12, 15, 35, 60, 70);
    assertThat(TWO.union(other)).isEqualTo(TimeWindows.of(0, 50, 60, 70));
    assertThat(TWO.intersect(other)).isEqualTo(TimeWindows.of(10, 12, 15, 20, 30, 35));
    assertThat(TWO.minus(other)).isEqualTo(TimeWindows.of(12, 15, 35, 50));
    assertThat(TWO.minus(TimeWindows.NONE)).isEqualTo(TWO);
    assertThat(TWO.minus(TWO)).isEqualTo(TimeWindows.NONE);
    assertThat(TimeWindows.NONE.minus(TWO)).isEqualTo(TimeWindows.NONE);
    assertThat(TWO.intersect(TimeWindows.NONE)).isEqualTo(TimeWindows.NONE);
  }
}
