package hurdline.study.compare;

import hurdline.study.option.InputRange;
import hurdline.study.replicate.IndifferenceZone;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What is asked of a comparison.
 *
 * @param among options such as {@code A} or {@code A+B}; none for each of the file alone, or for no
 *     option where there are what-ifs
 * @param whatIfs changes without a cost that are compared too
 * @param withinYr the time within which it is asked how likely an option pays back; else its life
 * @param lives how many lives are simulated year after year where a year opens with what the one
 *     before left
 * @param gain whether it is asked what a tenth more of each thing brings
 * @param tornado inputs on which the worth of an option may hang; an empty list for the usual ones
 * @param breakEven keys for which it is asked at which value an option is worth nothing
 * @param best in what the best of base and options is to be picked
 */
public record CompareAsk(
    List<String> among,
    List<WhatIfChange> whatIfs,
    OptionalDouble withinYr,
    OptionalInt lives,
    boolean gain,
    Optional<List<InputRange>> tornado,
    List<String> breakEven,
    Optional<IndifferenceZone> best) {
  public CompareAsk {
    among = List.copyOf(among);
    whatIfs = List.copyOf(whatIfs);
    tornado = tornado.map(List::copyOf);
    breakEven = List.copyOf(breakEven);
    withinYr.ifPresent(
        years -> {
          if (!(years > 0)) {
            throw new IllegalArgumentException("withinYr is " + years + "; expected above 0");
          }
        });
    lives.ifPresent(
        count -> {
          if (!(count >= fewestLives())) {
            throw new IllegalArgumentException(
                "lives is " + count + "; expected from " + fewestLives() + " on");
          }
        });
  }

  /** Without what-ifs. */
  public CompareAsk(
      List<String> among,
      OptionalDouble withinYr,
      OptionalInt lives,
      boolean gain,
      Optional<List<InputRange>> tornado,
      List<String> breakEven,
      Optional<IndifferenceZone> best) {
    this(among, List.of(), withinYr, lives, gain, tornado, breakEven, best);
  }

  /** The fewest lives that have a spread. */
  public static int fewestLives() {
    return 2;
  }

  /** Of these options, and nothing besides. */
  public static CompareAsk of(String... options) {
    return new CompareAsk(
        List.of(options),
        OptionalDouble.empty(),
        OptionalInt.empty(),
        false,
        Optional.empty(),
        List.of(),
        Optional.empty());
  }
}
