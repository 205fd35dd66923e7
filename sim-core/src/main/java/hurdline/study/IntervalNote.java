package hurdline.study;

import hurdline.answer.Note;
import hurdline.answer.SummaryRow;
import hurdline.estimate.MeanInterval;
import java.util.List;
import java.util.Optional;

/** Which intervals an answer has, in whole sentences. */
final class IntervalNote {
  private static final int NAMED = 3;

  private final List<SummaryRow> summary;

  private IntervalNote(List<SummaryRow> summary) {
    this.summary = summary;
  }

  /** Empty where no measure has an interval, since there is one replication only. */
  static Optional<Note> of(List<SummaryRow> summary) {
    boolean any = summary.stream().anyMatch(row -> !row.interval().isEmpty());
    return any ? Optional.of(new Note("Intervals", new IntervalNote(summary).text())) : Optional.empty();
  }

  private String text() {
    List<String> hall = those(MeanInterval.HALL.word());
    List<String> skewed = those(MeanInterval.SKEWED.word());
    List<String> cut = those("cut");
    return "An interval of a mean is Student's t, or from 40 replications on Hall's (1992) where the values have a"
        + " skewness above 1 or below -1: Student's then misses the truth more often than in 5 %, on the side of the long"
        + " tail. "
        + (hall.isEmpty() ? "" : "Hall's have " + named(hall) + ". ")
        + (skewed.isEmpty()
            ? ""
            : "With fewer than 40 replications Student's intervals of strongly skewed values (beyond 2) hold less often"
                + " than they say: " + named(skewed) + ". ")
        + "A limit ends where the measure cannot lie: at 0, at what a place or a bin holds, at the hours of the calendar"
        + (cut.isEmpty() ? ". " : "; so cut are those of " + named(cut) + ". ")
        + "The column interval of summary.csv says which each is.";
  }

  private List<String> those(String word) {
    return summary.stream()
        .filter(row -> List.of(row.interval().split(" ")).contains(word))
        .map(SummaryRow::measure)
        .distinct()
        .toList();
  }

  /** {@code 12 measures, a, b and c among them}, or all where they are few. */
  private static String named(List<String> measures) {
    return measures.size() <= NAMED
        ? String.join(", ", measures)
        : measures.size() + " measures, such as " + String.join(", ", measures.subList(0, NAMED));
  }
}
