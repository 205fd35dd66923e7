package hurdline.study;

import hurdline.answer.CompareAnswer;
import java.util.List;
import java.util.OptionalInt;

/**
 * How many lives are played year after year, and with which replications each begins.
 *
 * <p>Options share the years of the longest life of which the replications hold some, so that the base is played once for all. A
 * life takes about as much time as its years played alone; not to double what a comparison costs, lives take half as many
 * years as there are replications unless it is asked for more, but some lives there are always, as far as the replications go.
 */
final class LifeCount {
  private static final int SOME = 3;

  private final int replications;
  private final OptionalInt asked;
  private final int longest;

  /** @param asked how many lives are to be played; else as many as seem worth their time */
  LifeCount(int replications, List<CompareAnswer.Option> options, OptionalInt asked) {
    this.replications = replications;
    this.asked = asked;
    longest =
        options.stream()
            .mapToInt(option -> (int) Math.ceil(option.lifeYr()))
            .filter(years -> SOME * years <= replications)
            .max()
            .orElse(1);
  }

  /** Replications from the first year of a life of so many years to that of the next life. */
  int stride(int years) {
    return Math.max(years, longest);
  }

  /** Lives with that stride. */
  int chains(int stride) {
    int whole = replications / stride;
    return asked.orElse(Math.min(whole, Math.max(SOME, replications / 2 / stride)));
  }
}
