package hurdline.plant.yaml.tree;

/**
 * Where something stands.
 *
 * @param line from 1; 0 for what no file holds, such as a value set from outside
 * @param column from 1
 */
public record SourcePosition(int line, int column) {
  public static final SourcePosition TOP = new SourcePosition(1, 1);
  public static final SourcePosition NOWHERE = new SourcePosition(0, 0);

  boolean isNowhere() {
    return line == 0;
  }
}
