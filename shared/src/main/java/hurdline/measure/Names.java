package hurdline.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Fills the placeholders of a name pattern, and takes a filled name apart again. */
final class Names {
  private static final Pattern PLACEHOLDER = Pattern.compile("<[a-z]+>");
  private static final String PLAIN_NAME = "([A-Za-z0-9_-]+)";
  private static final String DRY = "_dry";
  private static final String CAUSE = "([A-Za-z0-9_-]+(?:\\.[A-Za-z0-9_-]+)?)";

  private Names() {}

  static String fill(String pattern, String... names) {
    Matcher places = PLACEHOLDER.matcher(pattern);
    StringBuilder out = new StringBuilder();
    int used = 0;
    while (places.find()) {
      if (used == names.length) {
        throw new IllegalArgumentException(pattern + " needs more names than " + List.of(names));
      }
      places.appendReplacement(out, Matcher.quoteReplacement(names[used++]));
    }
    if (used < names.length) {
      throw new IllegalArgumentException(
          pattern + " takes " + used + " names, not " + List.of(names));
    }
    return places.appendTail(out).toString();
  }

  /** A pattern that matches every filled name; only a cause may hold a dot. */
  static Pattern matcherOf(String pattern) {
    StringBuilder regex = new StringBuilder();
    Matcher places = PLACEHOLDER.matcher(pattern);
    int from = 0;
    while (places.find()) {
      regex.append(Pattern.quote(pattern.substring(from, places.start())));
      regex.append(places.group().equals("<cause>") ? CAUSE : PLAIN_NAME);
      from = places.end();
    }
    return Pattern.compile(regex.append(Pattern.quote(pattern.substring(from))).toString());
  }

  /** What follows the name of a measure in that of its dry twin. */
  static String dry() {
    return DRY;
  }

  /** The measure that a full name belongs to. */
  static Optional<MeasureName> find(String name) {
    boolean dry = name.endsWith(DRY);
    for (Measure measure : Measure.values()) {
      Optional<List<String>> names = measure.takeApart(name);
      if (names.isPresent()) {
        return Optional.of(new MeasureName(measure, names.get(), false));
      }
      if (dry && measure.isMass()) {
        names = measure.takeApart(name.substring(0, name.length() - DRY.length()));
        if (names.isPresent()) {
          return Optional.of(new MeasureName(measure, names.get(), true));
        }
      }
    }
    return Optional.empty();
  }

  static Optional<List<String>> takeApart(Pattern matcher, String name) {
    Matcher found = matcher.matcher(name);
    if (!found.matches()) {
      return Optional.empty();
    }
    List<String> names = new ArrayList<>();
    for (int group = 1; group <= found.groupCount(); group++) {
      names.add(found.group(group));
    }
    return Optional.of(List.copyOf(names));
  }
}
