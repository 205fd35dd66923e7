package hurdline.plant.yaml;

/**
 * Where something stands.
 *
 * @param line from 1; 0 for what no file holds, such as a value set from outside
 * @param column from 1
 */
record Place(int line, int column) {
  static final Place TOP = new Place(1, 1);
  static final Place NOWHERE = new Place(0, 0);

  boolean isNowhere() {
    return line == 0;
  }
}
