package hurdline.command;

import java.util.concurrent.atomic.AtomicBoolean;
import sun.misc.Signal;
import sun.misc.SignalHandler;

/**
 * Ctrl-C asks for an early end instead of killing the program; a second one kills it.
 *
 * <p>Not a shutdown hook: in one, the page could not be drawn any more, since Java refuses new
 * hooks while it shuts down and its graphics need some.
 */
final class StopRequest implements AutoCloseable {
  private final AtomicBoolean asked = new AtomicBoolean();
  private final Runnable told;
  private final SignalHandler before;

  /**
   * @param told called once, when the user has asked
   */
  StopRequest(Runnable told) {
    this.told = told;
    this.before = Signal.handle(new Signal("INT"), signal -> ask());
  }

  /** Asks as Ctrl-C does; asked twice it ends at once. */
  void ask() {
    if (asked.getAndSet(true)) {
      Runtime.getRuntime().halt(ExitCode.STOPPED.number());
    }
    told.run();
  }

  boolean isAsked() {
    return asked.get();
  }

  @Override
  public void close() {
    Signal.handle(new Signal("INT"), before);
  }
}
