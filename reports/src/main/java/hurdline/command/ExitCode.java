package hurdline.command;

/** How a call ended. */
enum ExitCode {
  DONE(0),
  FAULT(1),
  WRONG_CALL(2),
  STOPPED(130);

  private final int number;

  ExitCode(int number) {
    this.number = number;
  }

  int number() {
    return number;
  }
}
