package hurdline.answer;

import java.util.Arrays;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The name of a what-if is what was typed: {@code money.wage=x1.2}, or several changes with
 * semicolons between them. Names of options and plans hold no equals sign, so the one is never
 * taken for the other.
 */
public final class WhatIf {
  /** What stands between two changes in a name. */
  private static final String BETWEEN = "; ";

  private static final Pattern RELATIVE = Pattern.compile("x *[-+.0-9].*|[-+] *[0-9]+ *(?:d|w|wk)");

  /** Neither a date nor a word. */
  private static final Pattern NUMBER = Pattern.compile("x? *[-+]?[0-9.]+(?: ?[^-0-9].*)?");

  private WhatIf() {}

  /** Whether an alternative of this name is a what-if, and not an option. */
  public static boolean isOne(String name) {
    return name.contains("=");
  }

  /** Whether it changes several values. */
  public static boolean isOfSeveral(String name) {
    return name.contains(BETWEEN);
  }

  /** The name of one with these changes, each {@code KEY=VALUE}. */
  public static String name(Iterable<String> changes) {
    return String.join(BETWEEN, changes);
  }

  /**
   * {@code wage x1.2}, {@code power of the hammer mill at 50 hp}.
   *
   * @param marks writes a number as its reader does
   */
  public static String read(String name, Titles titles, UnaryOperator<String> marks) {
    return Arrays.stream(name.split(BETWEEN))
        .map(change -> change(change, titles, marks))
        .collect(Collectors.joining(" and "));
  }

  private static String change(String change, Titles titles, UnaryOperator<String> marks) {
    int equals = change.indexOf('=');
    if (equals < 0) {
      return change;
    }
    String value = change.substring(equals + 1);
    return KeyNames.of(change.substring(0, equals), titles)
        + (RELATIVE.matcher(value).matches() ? " " : " at ")
        + (NUMBER.matcher(value).matches() ? marks.apply(value) : value);
  }
}
