package hurdline.web.http;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** What a call was asked with: values by name. */
public final class Ask {
  private final JsonObject values;

  private Ask(JsonObject values) {
    this.values = values;
  }

  static Ask nothing() {
    return new Ask(new JsonObject());
  }

  /**
   * @throws Refusal if it is no JSON object
   */
  static Ask of(byte[] json) {
    try {
      JsonElement read = JsonParser.parseString(new String(json, StandardCharsets.UTF_8));
      if (read.isJsonObject()) {
        return new Ask(read.getAsJsonObject());
      }
    } catch (JsonParseException | StackOverflowError none) {
      // Told below.
    }
    throw new Refusal(400, "A JSON object is expected.");
  }

  public boolean has(String name) {
    return values.has(name) && !values.get(name).isJsonNull();
  }

  /** A text; empty where there is none. */
  public String text(String name) {
    return has(name) && values.get(name).isJsonPrimitive() ? values.get(name).getAsString() : "";
  }

  /** Texts of a list; empty where there is none. */
  public List<String> texts(String name) {
    List<String> all = new ArrayList<>();
    if (has(name) && values.get(name).isJsonArray()) {
      values
          .getAsJsonArray(name)
          .forEach(
              one -> {
                if (one.isJsonPrimitive()) {
                  all.add(one.getAsString());
                }
              });
    }
    return all;
  }

  /**
   * A whole number.
   *
   * @throws Refusal if it is none of the range
   */
  public int whole(String name, int from, int to) {
    String said = text(name);
    int number = said.matches("[0-9]{1,9}") ? Integer.parseInt(said) : -1;
    if (number < from || number > to) {
      throw new Refusal(
          400, "\"" + name + "\" must be a whole number from " + from + " to " + to + ".");
    }
    return number;
  }
}
