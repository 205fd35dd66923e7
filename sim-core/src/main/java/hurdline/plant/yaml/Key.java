package hurdline.plant.yaml;

/**
 * A key that may stand in a map of the plant file: a row of {@link KeyTable}.
 *
 * @param isRequired whether the map must have it
 * @param type what may stand there, in the words of the table
 * @param fallback what holds where it is left out; empty where it must be there
 * @param meaning a sentence for the reference and for editors
 * @param sample what it might look like, for the message where it is missing; may be empty
 */
record Key(String name, boolean isRequired, String type, String fallback, String meaning, String sample) {
  private static final int CELLS = 5;

  /**
   * Reads a row.
   *
   * @throws IllegalArgumentException if it is none
   */
  static Key of(String row) {
    String[] cells = row.split("\\|", -1);
    if (cells.length < CELLS - 1 || cells.length > CELLS) {
      throw new IllegalArgumentException("\"" + row + "\" is no row of the table of keys");
    }
    String name = cells[0].strip();
    boolean isRequired = name.endsWith("!");
    return new Key(
        isRequired ? name.substring(0, name.length() - 1) : name,
        isRequired,
        cells[1].strip(),
        cells[2].strip(),
        cells[3].strip(),
        cells.length == CELLS ? cells[4].strip() : "");
  }

  /** What to write where it is missing. */
  String wanted() {
    return sample.isEmpty() ? "the key \"" + name + "\" here" : sample;
  }
}
