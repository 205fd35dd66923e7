package hurdline.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A name with places for other names, as {@code machine.<machine>.mass_in}, that takes filled names
 * apart. A short run asks some hundred patterns for each name, so what stands before the first
 * place and behind the last is compared before anything is matched.
 */
final class NamePattern {
  private static final String PLAIN_NAME = "([A-Za-z0-9_-]+)";
  private static final String CAUSE = "([A-Za-z0-9_-]+(?:\\.[A-Za-z0-9_-]+)?)";

  private final String pattern;
  private final String begin;
  private final String end;
  private Pattern matcher; // made when first needed; any thread makes the same

  NamePattern(String pattern) {
    this.pattern = pattern;
    int first = pattern.indexOf('<');
    begin = first < 0 ? pattern : pattern.substring(0, first);
    end = pattern.substring(pattern.lastIndexOf('>') + 1);
  }

  /** The names in its places; empty where the name is none of the pattern. */
  Optional<List<String>> takeApart(String name) {
    if (!name.startsWith(begin) || !name.endsWith(end)) {
      return Optional.empty();
    }
    Matcher found = matcher().matcher(name);
    if (!found.matches()) {
      return Optional.empty();
    }
    List<String> names = new ArrayList<>();
    for (int group = 1; group <= found.groupCount(); group++) {
      names.add(found.group(group));
    }
    return Optional.of(List.copyOf(names));
  }

  private Pattern matcher() {
    Pattern known = matcher;
    if (known == null) {
      known = matcherOf(pattern);
      matcher = known;
    }
    return known;
  }

  /** A pattern that matches every filled name; only a cause may hold a dot. */
  private static Pattern matcherOf(String pattern) {
    StringBuilder regex = new StringBuilder();
    Matcher places = Names.PLACEHOLDER.matcher(pattern);
    int from = 0;
    while (places.find()) {
      regex.append(Pattern.quote(pattern.substring(from, places.start())));
      regex.append(places.group().equals("<cause>") ? CAUSE : PLAIN_NAME);
      from = places.end();
    }
    return Pattern.compile(regex.append(Pattern.quote(pattern.substring(from))).toString());
  }
}
