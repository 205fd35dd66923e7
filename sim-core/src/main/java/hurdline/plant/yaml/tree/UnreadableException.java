package hurdline.plant.yaml.tree;

import hurdline.plant.Problem;

/** A file, document or change of which no tree can be made; one reason, one place. */
public final class UnreadableException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient Finding finding;

  public UnreadableException(SourcePosition place, String said, String expected) {
    this(new Finding(place, new Problem("", said, expected)));
  }

  public UnreadableException(Finding finding) {
    super(finding.problem().said(), null, false, false);
    this.finding = finding;
  }

  public Finding finding() {
    return finding;
  }
}
