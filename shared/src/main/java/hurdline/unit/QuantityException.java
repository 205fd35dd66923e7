package hurdline.unit;

/** A text that is not the quantity asked for; the message says what is wrong with it. */
public final class QuantityException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  QuantityException(String said) {
    super(said, null, false, false);
  }
}
