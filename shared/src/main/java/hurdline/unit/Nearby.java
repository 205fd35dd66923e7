package hurdline.unit;

import java.util.Map;
import java.util.Optional;

/** The unit that a foreign or misspelt symbol was likely to mean. */
final class Nearby {

  private static final Map<String, String> OTHER_WORDS =
      Map.ofEntries(
          Map.entry("lbs", "lb"),
          Map.entry("pounds", "lb"),
          Map.entry("tons", "ton"),
          Map.entry("tonne", "t"),
          Map.entry("tonnes", "t"),
          Map.entry("kgs", "kg"),
          Map.entry("sec", "s"),
          Map.entry("secs", "s"),
          Map.entry("mins", "min"),
          Map.entry("minutes", "min"),
          Map.entry("hr", "h"),
          Map.entry("hrs", "h"),
          Map.entry("hour", "h"),
          Map.entry("hours", "h"),
          Map.entry("day", "d"),
          Map.entry("days", "d"),
          Map.entry("week", "wk"),
          Map.entry("weeks", "wk"),
          Map.entry("mo", "month"),
          Map.entry("months", "month"),
          Map.entry("year", "yr"),
          Map.entry("years", "yr"),
          Map.entry("a", "yr"),
          Map.entry("hpp", "hp"),
          Map.entry("acres", "acre"),
          Map.entry("ac", "acre"),
          Map.entry("inch", "in"),
          Map.entry("feet", "ft"),
          Map.entry("percent", "%"));

  private Nearby() {}

  static Optional<String> symbol(String symbol) {
    String lower = symbol.strip().toLowerCase(java.util.Locale.ROOT);
    for (FileUnit unit : FileUnit.values()) {
      for (String known : unit.symbols()) {
        if (known.toLowerCase(java.util.Locale.ROOT).equals(lower)) {
          return Optional.of(known);
        }
      }
    }
    return Optional.ofNullable(OTHER_WORDS.get(lower));
  }
}
