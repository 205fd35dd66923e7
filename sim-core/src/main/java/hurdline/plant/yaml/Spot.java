package hurdline.plant.yaml;

/**
 * Where something stands.
 *
 * @param line from 1; 0 for what no file holds, such as a value set from outside
 * @param column from 1
 */
record Spot(int line, int column) {
  static final Spot TOP = new Spot(1, 1);
  static final Spot NOWHERE = new Spot(0, 0);

  boolean isNowhere() {
    return line == 0;
  }
}
