package hurdline.plant;

/**
 * Something wrong with a plant.
 *
 * @param path of the key, such as {@code machines.mill.power}
 * @param said what is wrong
 * @param expected what was expected, and what to do
 */
public record Problem(String path, String said, String expected) {}
