package hurdline.simulation.activity;

/** The simulation does not move on; a fault in the program, with the names involved. */
public final class StuckException extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  public StuckException(String message) {
    super(message);
  }
}
