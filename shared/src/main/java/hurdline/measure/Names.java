package hurdline.measure;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Fills the placeholders of a name pattern, and finds what a filled name measures. */
final class Names {
  static final Pattern PLACEHOLDER = Pattern.compile("<[a-z]+>");
  private static final String DRY = "_dry";

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
}
