package hurdline.study;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What is asked of a comparison.
 *
 * @param among options such as {@code A} or {@code A+B}; none for each of the file alone
 * @param withinYr the time within which it is asked how likely an option pays back; else its life
 * @param gain whether it is asked what a tenth more of each thing brings
 */
public record CompareAsk(List<String> among, OptionalDouble withinYr, boolean gain) {
  public CompareAsk {
    among = List.copyOf(among);
    withinYr.ifPresent(
        years -> {
          if (!(years > 0)) {
            throw new IllegalArgumentException("withinYr is " + years + "; expected above 0");
          }
        });
  }

  /** Of these options, and nothing besides. */
  public static CompareAsk of(String... options) {
    return new CompareAsk(List.of(options), OptionalDouble.empty(), false);
  }
}
