package hurdline.web.http;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;

/** Words of 256 random bits, and their comparison in a time that says nothing about them. */
public final class Secret {
  private static final int BYTES = 32;

  private Secret() {}

  public static String fresh() {
    byte[] bytes = new byte[BYTES];
    new SecureRandom().nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  static boolean same(String a, String b) {
    return MessageDigest.isEqual(
        a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));
  }
}
