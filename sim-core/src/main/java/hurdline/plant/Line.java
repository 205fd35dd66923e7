package hurdline.plant;

import java.util.List;

/**
 * A way of one crop through machines.
 *
 * @param feed the bale feeder at its head
 * @param alongside machines that run with the line and take no material
 * @param steps in the file's order
 */
public record Line(
    String name, String crop, String feed, List<String> alongside, List<Step> steps) {
  public Line {
    alongside = List.copyOf(alongside);
    steps = List.copyOf(steps);
  }
}
