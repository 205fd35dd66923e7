package hurdline.simulation;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What {@link AnyLineTest} shows on many lines, on a few: fast enough to run against each mutant.
 */
class FewLinesTest {
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void theBooksAgree(long seed) {
    AnyLineTest.booksAgree(seed);
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13})
  void twiceAsFastChangesNothingButTheClock(long seed) {
    AnyLineTest.twiceAsFast(seed);
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22})
  void aFasterNeighbourTakesFromNobody(long seed) {
    AnyLineTest.nobodyLoses(seed);
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32})
  void onlyTheNamedHolderRaisesThroughput(long seed) {
    AnyLineTest.onlyTheHolderRaises(seed);
  }
}
