package hurdline.command;

/** The call is wrong in a way that only shows once it is looked at; one line for the user. */
final class CallException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  CallException(String message) {
    super(message);
  }
}
