package hurdline.web;

import hurdline.web.http.Door;
import java.io.IOException;

/** Another process serves this folder already, and can open a further page of it. */
public final class AlreadyOpenException extends IOException {
  private static final long serialVersionUID = 1L;
  private final int port;
  private final transient String word;

  AlreadyOpenException(int port, String word) {
    super("the folder is open already");
    this.port = port;
    this.word = word;
  }

  /** An address of the other process that opens the page once. */
  public String newAddress() throws IOException {
    return Door.newAddress(port, word);
  }
}
