package hurdline.table;

import java.io.IOException;

/**
 * A file is no record that can be read; the message says where, what, what was expected and what to
 * do.
 */
public final class RecordFault extends IOException {
  private static final long serialVersionUID = 1L;

  RecordFault(String message) {
    super(message);
  }
}
