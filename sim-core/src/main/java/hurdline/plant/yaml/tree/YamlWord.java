package hurdline.plant.yaml.tree;

/** A value of one line as it is written in a YAML text. */
final class YamlWord {
  private YamlWord() {}

  /** Whether it is YAML that stands for itself and not a bare word. */
  static boolean isStructured(String value) {
    return value.startsWith("{")
        || value.startsWith("[")
        || value.startsWith("\"")
        || value.startsWith("'");
  }

  /**
   * As it may stand here: in quotation marks where it would else be read as something different.
   *
   * @param inFlow whether it stands in braces or brackets
   */
  static String written(String value, boolean inFlow) {
    if (isStructured(value)) {
      return value;
    }
    boolean begins = value.matches("[-?:&*!|>%@`~].*") && !value.matches("-?[0-9.].*");
    boolean risky =
        value.isEmpty()
            || value.contains("#")
            || value.contains(": ")
            || value.endsWith(":")
            || value.chars().anyMatch(c -> c < ' ')
            || value.equalsIgnoreCase("null")
            || value.strip().length() < value.length();
    boolean parts = inFlow && value.matches(".*[,\\[\\]{}].*");
    return begins || risky || parts ? quoted(value) : value;
  }

  static String quoted(String value) {
    StringBuilder out = new StringBuilder("\"");
    value
        .codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                out.append('\\').appendCodePoint(c);
              } else if (c < ' ') {
                out.append(String.format("\\x%02x", c));
              } else {
                out.appendCodePoint(c);
              }
            });
    return out.append('"').toString();
  }
}
