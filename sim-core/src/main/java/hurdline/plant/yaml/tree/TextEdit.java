package hurdline.plant.yaml.tree;

/**
 * What is put where in a text; all else stays to the letter.
 *
 * @param from where the old text begins that goes, in characters from the top
 * @param to behind the last of it; the same as {@code from} where nothing goes
 * @param with what comes in its place
 */
public record TextEdit(int from, int to, String with) {
  /** The text after the edit. */
  public String in(String text) {
    return text.substring(0, from) + with + text.substring(to);
  }
}
