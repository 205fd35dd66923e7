package hurdline.plant;

/** A change of a plant that a study asks for. */
public sealed interface Change {

  /** The option or plan of that name. */
  record Named(String name) implements Change {}

  /**
   * One value at a path such as {@code machines.mill.power} or {@code season.2.changeover}; places
   * in a list count from 0, {@code *} is every one. A value {@code x0.8} scales what is there,
   * {@code +30d} moves a date.
   */
  record Value(String path, String value) implements Change {}
}
