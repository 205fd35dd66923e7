package hurdline.plant.yaml;

import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.reader.ReaderException;

/** Says in the reader's words why a text is not YAML. */
final class YamlFault {
  private static final String YAML = "YAML, indented with spaces, brackets and quotes closed";

  private YamlFault() {}

  static UnreadableException of(String text, Throwable fault) {
    if (fault instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
      return marked(text, marked);
    }
    if (fault instanceof ReaderException special) {
      return new UnreadableException(
          placeOf(text, special.getPosition()),
          String.format("the character U+%04X may not stand in a text", special.getCodePoint()),
          "a text file; this one looks binary");
    }
    if (String.valueOf(fault.getMessage()).startsWith("Nesting Depth")) {
      return new UnreadableException(
          Spot.NOWHERE, "it is nested too deep", "the few levels of a plant file");
    }
    return new UnreadableException(Spot.NOWHERE, "it is not YAML", YAML);
  }

  private static UnreadableException marked(String text, MarkedYAMLException fault) {
    Mark mark = fault.getProblemMark();
    Spot place = new Spot(mark.getLine() + 1, mark.getColumn() + 1);
    if (tabAt(text, mark.getLine())) {
      return new UnreadableException(
          place, "a tab in the indentation", "spaces; YAML does not allow tabs there");
    }
    String problem = String.valueOf(fault.getProblem()).replaceAll("\\s+", " ").strip();
    String said = problem.length() > 120 ? problem.substring(0, 117) + "..." : problem;
    return new UnreadableException(place, "it is not YAML from here on (" + said + ")", YAML);
  }

  private static boolean tabAt(String text, int line) {
    String[] lines = text.split("\\R", line + 2);
    if (line >= lines.length) {
      return false;
    }
    String indent =
        lines[line].substring(0, lines[line].length() - lines[line].stripLeading().length());
    return indent.contains("\t");
  }

  private static Spot placeOf(String text, int position) {
    int end =
        text.offsetByCodePoints(
            0, Math.min(Math.max(position, 0), text.codePointCount(0, text.length())));
    String before = text.substring(0, end);
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    return new Spot(line, end - (before.lastIndexOf('\n') + 1) + 1);
  }
}
