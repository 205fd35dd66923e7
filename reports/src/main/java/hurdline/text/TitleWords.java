package hurdline.text;

import hurdline.answer.Header;

/** What the titles of all answers have in common: what was changed, and what was simulated. */
final class TitleWords {
  private final Header header;
  private final Wording wording;

  TitleWords(Header header, Wording wording) {
    this.header = header;
    this.wording = wording;
  }

  /** {@code with machines.mill.power=50 hp}, or empty. */
  String changes() {
    return header.changes().isEmpty() ? "" : " with " + ChangeWords.of(header.changes(), ", ");
  }

  /** {@code 2027-01-04 to 2027-12-31, 7 replications (stopped; 40 were asked for), seed 1}. */
  String simulated() {
    String stopped =
        header.stopped() ? " (stopped; " + header.replicationsAsked() + " were asked for)" : "";
    return simulated(stopped);
  }

  /** The same of a grid, whose cells are each simulated in full. */
  String simulatedEach() {
    return simulated(" each");
  }

  private String simulated(String more) {
    String count =
        header.replications() == 1 ? "1 replication" : header.replications() + " replications";
    return wording.span(header.from(), header.to())
        + ", "
        + count
        + more
        + ", seed "
        + header.seed();
  }
}
