package hurdline.study;

import hurdline.answer.Fact;
import hurdline.answer.RunFact;
import hurdline.answer.RunFact.Group;
import hurdline.answer.SummaryRow;
import hurdline.statistics.MeanInterval;
import java.util.List;
import java.util.Optional;

/** Which intervals an answer has. */
public final class IntervalFacts {
  private static final int NAMED = 3;

  private IntervalFacts() {}

  /** Empty where no measure has an interval, since there is one replication only. */
  public static Optional<Fact> of(List<SummaryRow> summary) {
    boolean any = summary.stream().anyMatch(row -> !row.interval().isEmpty());
    return any
        ? Optional.of(
            new RunFact.Intervals(
                those(summary, MeanInterval.HALL.word()),
                those(summary, MeanInterval.SKEWED.word()),
                those(summary, "cut")))
        : Optional.empty();
  }

  private static Group those(List<SummaryRow> summary, String word) {
    List<String> measures =
        summary.stream()
            .filter(row -> List.of(row.interval().split(" ")).contains(word))
            .map(SummaryRow::measure)
            .distinct()
            .toList();
    return new Group(measures.size(), measures.subList(0, Math.min(NAMED, measures.size())));
  }
}
