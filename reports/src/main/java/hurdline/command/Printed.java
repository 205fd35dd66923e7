package hurdline.command;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/** Standard output, which keeps in mind why it could not be written; printers tell nobody. */
final class Printed extends OutputStream {
  private static final String READER_LEFT = "Broken pipe";

  private final OutputStream to;
  private IOException fault;

  Printed(OutputStream to) {
    this.to = to;
  }

  /**
   * Why something was not printed; empty too where the reader has seen enough, as {@code head}
   * does.
   */
  Optional<String> fault() {
    return Optional.ofNullable(fault)
        .map(thrown -> String.valueOf(thrown.getMessage()))
        .filter(said -> !said.contains(READER_LEFT));
  }

  @Override
  public void write(int single) throws IOException {
    write(new byte[] {(byte) single}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int count) throws IOException {
    try {
      to.write(bytes, from, count);
    } catch (IOException thrown) {
      fault = fault == null ? thrown : fault;
      throw thrown;
    }
  }

  @Override
  public void flush() throws IOException {
    to.flush();
  }
}
