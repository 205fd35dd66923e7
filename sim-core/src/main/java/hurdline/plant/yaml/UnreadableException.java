package hurdline.plant.yaml;

/** A file or document of which no tree can be made; one reason, one place. */
final class UnreadableException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient Finding finding;

  UnreadableException(Spot place, String said, String expected) {
    super(said, null, false, false);
    this.finding = new Finding(place, new hurdline.plant.Problem("", said, expected));
  }

  Finding finding() {
    return finding;
  }
}
