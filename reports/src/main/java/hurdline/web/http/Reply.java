package hurdline.web.http;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import java.nio.charset.StandardCharsets;

/**
 * What is answered.
 *
 * @param type of the bytes, as HTTP names it
 * @param policy the content security policy that it is shown under; empty for the page's own
 */
public record Reply(int status, String type, byte[] bytes, String policy) {
  private static final Gson GSON =
      new GsonBuilder().serializeNulls().disableHtmlEscaping().create();
  private static final int DONE = 200;

  /** A record or map as JSON; it may hold no number that is none. */
  public static Reply json(Object said) {
    return of("application/json; charset=utf-8", GSON.toJson(said));
  }

  public static Reply of(String type, String text) {
    return new Reply(DONE, type, text.getBytes(StandardCharsets.UTF_8), "");
  }

  static Reply refused(Refusal why) {
    byte[] said = why.getMessage().getBytes(StandardCharsets.UTF_8);
    return new Reply(why.status(), "text/plain; charset=utf-8", said, "");
  }

  /** The same under a policy of its own. */
  public Reply under(String other) {
    return new Reply(status, type, bytes, other);
  }
}
