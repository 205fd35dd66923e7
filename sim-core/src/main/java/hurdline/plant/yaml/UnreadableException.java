package hurdline.plant.yaml;

import hurdline.plant.Problem;

/** A file, document or change of which no tree can be made; one reason, one place. */
final class UnreadableException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient Finding finding;

  UnreadableException(Spot place, String said, String expected) {
    this(new Finding(place, new Problem("", said, expected)));
  }

  UnreadableException(Finding finding) {
    super(finding.problem().said(), null, false, false);
    this.finding = finding;
  }

  Finding finding() {
    return finding;
  }
}
