package hurdline.study;

import hurdline.plant.ProblemsException;

/**
 * Two plants set side by side that are one, since a value put to both takes the place of what tells
 * them apart.
 */
public final class Twins {
  private Twins() {}

  /**
   * @param where at which values they are one: {@code at every value}
   */
  public static ProblemsException refusal(
      PlantOrigin source, String one, String other, String where, String expected) {
    return source.refusal(
        "\""
            + one
            + "\" and \""
            + other
            + "\" are the same plant "
            + where
            + ", for the varied values take the place of what makes them different",
        expected);
  }
}
