package hurdline.simulation.results;

/** Mass was made or lost by the books; a fault in the program, with the place. */
public final class BalanceException extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  BalanceException(String message) {
    super(message);
  }
}
