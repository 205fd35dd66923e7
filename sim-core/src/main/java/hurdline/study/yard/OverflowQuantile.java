package hurdline.study.yard;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;

/** The smallest yard that overflows in few enough seasons. */
final class OverflowQuantile {
  private final double overflow;

  /**
   * @param overflow share of seasons in which it may
   */
  OverflowQuantile(double overflow) {
    this.overflow = overflow;
  }

  /** How many of so many seasons may overflow. */
  int allowed(int seasons) {
    return (int) Math.floor(overflow * seasons + 1e-9);
  }

  /**
   * The smallest size exceeded by few enough of these: with k of n allowed, the value k places
   * below the greatest.
   *
   * @param needs what each season needs, read only
   */
  int of(double[] needs) {
    double[] rising = needs.clone();
    Arrays.sort(rising);
    return (int) rising[rising.length - 1 - Math.min(allowed(needs.length), needs.length - 1)];
  }

  /** Whether a number does; nothing if that could not be found out. */
  interface Trial {
    Optional<Boolean> does(int number);
  }

  /**
   * Direct search from a good guess, first in growing steps, then by halves: two trials if the
   * guess is right.
   *
   * @param least the smallest size that can be tried
   * @return nothing if a trial could not be made
   */
  static OptionalInt search(int least, int guess, Trial trial) {
    int good = Math.max(least, guess);
    int bad = least - 1;
    for (int step = 1; ; step *= 2) {
      var does = trial.does(good);
      if (does.isEmpty()) {
        return OptionalInt.empty();
      }
      if (does.get()) {
        break;
      }
      bad = good;
      good += step;
    }
    for (int step = 1; good - step > bad; step *= 2) {
      var does = trial.does(good - step);
      if (does.isEmpty()) {
        return OptionalInt.empty();
      }
      if (!does.get()) {
        bad = good - step;
        break;
      }
      good -= step;
    }
    return halve(bad, good, trial);
  }

  /**
   * The first that does, by halves between one that does not and one that does.
   *
   * @return nothing if a trial could not be made
   */
  static OptionalInt halve(int below, int from, Trial trial) {
    int bad = below;
    int good = from;
    while (good - bad > 1) {
      int middle = bad + (good - bad) / 2;
      var does = trial.does(middle);
      if (does.isEmpty()) {
        return OptionalInt.empty();
      }
      if (does.get()) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return OptionalInt.of(good);
  }
}
