package hurdline.web.http;

import java.io.IOException;

/** Answers what the page asks for under one name. */
@FunctionalInterface
public interface Call {
  /**
   * @throws Refusal if it cannot be answered
   */
  Reply answer(Ask ask) throws IOException;
}
