package hurdline.plant;

/**
 * Something wrong with a plant.
 *
 * @param path of the key, such as {@code machines.mill.power}
 * @param said what is wrong
 * @param expected what was expected, and what to do
 */
public record Problem(String path, String said, Expected expected) {
  public Problem(String path, String said, String expected) {
    this(path, said, Expected.of(expected));
  }

  /** The same with something added to what is wrong. */
  public Problem adding(String more) {
    return new Problem(path, said + more, expected);
  }
}
