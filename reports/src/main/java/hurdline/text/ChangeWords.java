package hurdline.text;

import java.util.List;

/** The changed keys of a call in a sentence: each where they are few, else how many. */
public final class ChangeWords {
  private static final int FEW = 6;

  private ChangeWords() {}

  /**
   * @param changes each {@code KEY=VALUE}; the settings of a page have them all
   * @param between what stands between two
   */
  public static String of(List<String> changes, String between) {
    return changes.size() <= FEW
        ? String.join(between, changes)
        : changes.size()
            + " changed keys, from "
            + key(changes.get(0))
            + " to "
            + key(changes.get(changes.size() - 1));
  }

  private static String key(String change) {
    return change.replaceFirst("=.*", "");
  }
}
