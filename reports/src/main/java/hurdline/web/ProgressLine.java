package hurdline.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The line in which a study says how far it is: names with numbers or texts. */
final class ProgressLine {
  private static final Pattern PART =
      Pattern.compile("\"(\\w+)\":(?:\"([^\"]*)\"|(-?[0-9.eE+-]+))");

  private ProgressLine() {}

  static Map<String, String> values(String line) {
    Map<String, String> values = new LinkedHashMap<>();
    Matcher part = PART.matcher(line);
    while (part.find()) {
      values.put(part.group(1), part.group(2) == null ? part.group(3) : part.group(2));
    }
    return values;
  }
}
