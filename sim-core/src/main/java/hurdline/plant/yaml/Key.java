package hurdline.plant.yaml;

/**
 * A key that may stand in a map of the plant file: a row of {@link KeyTable}.
 *
 * <p>Only name and need are read at once, since every start of the program reads the table; what is
 * for messages, the reference and editors waits until it is asked for.
 *
 * @param isRequired whether the map must have it
 * @param row its row in the table
 */
record Key(String name, boolean isRequired, String row) {
  private static final int TYPE = 1;
  private static final int FALLBACK = 2;
  private static final int MEANING = 3;
  private static final int SAMPLE = 4;

  static Key of(String row) {
    String name = row.substring(0, row.indexOf('|')).strip();
    boolean isRequired = name.endsWith("!");
    return new Key(isRequired ? name.substring(0, name.length() - 1) : name, isRequired, row);
  }

  /** What may stand there, in the words of the table. */
  String type() {
    return cell(TYPE);
  }

  /** What holds where it is left out; empty where it must be there. */
  String fallback() {
    return cell(FALLBACK);
  }

  /** A sentence for the reference and for editors. */
  String meaning() {
    return cell(MEANING);
  }

  /** What it might look like, for the message where it is missing; may be empty. */
  String sample() {
    return cell(SAMPLE);
  }

  /** What to write where it is missing. */
  String wanted() {
    return sample().isEmpty() ? "the key \"" + name + "\" here" : sample();
  }

  private String cell(int at) {
    return row.split("\\|", -1)[at].strip();
  }
}
