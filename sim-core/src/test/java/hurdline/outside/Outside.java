package hurdline.outside;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Properties;

/**
 * Values from outside, one file a case under {@code outside}; a file without its source is refused.
 */
public record Outside(String file, Properties entries) {
  public static Outside of(String name) {
    String file = "/outside/" + name + ".properties";
    Properties entries = new Properties();
    try (InputStream in = Outside.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new AssertionError(file + " is missing");
      }
      entries.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    Outside outside = new Outside(file, entries);
    outside.text("source");
    outside.text("made-by");
    return outside;
  }

  public String text(String key) {
    String value = entries.getProperty(key, "").strip();
    if (value.isEmpty()) {
      throw new AssertionError(file + " has no " + key);
    }
    return value;
  }

  public double number(String key) {
    return Double.parseDouble(text(key));
  }

  public double[] numbers(String key) {
    return Arrays.stream(text(key).split("\\s+")).mapToDouble(Double::parseDouble).toArray();
  }
}
