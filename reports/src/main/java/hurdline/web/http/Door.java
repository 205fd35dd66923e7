package hurdline.web.http;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.HttpURLConnection;
import java.net.URL;
import java.nio.charset.StandardCharsets;

/** How a second start of the program asks the first for a further page. */
public final class Door {
  private static final int PATIENCE_MS = 5000;

  private Door() {}

  /**
   * An address of the server on a port that opens its page once.
   *
   * @param word of that server, which only its own user can read
   */
  public static String newAddress(int port, String word) throws IOException {
    String host = "http://127.0.0.1:" + port;
    HttpURLConnection asked =
        (HttpURLConnection) new URL(host + "/api/door").openConnection(java.net.Proxy.NO_PROXY);
    asked.setConnectTimeout(PATIENCE_MS);
    asked.setReadTimeout(PATIENCE_MS);
    asked.setRequestMethod("POST");
    asked.setDoOutput(true);
    asked.setRequestProperty("Content-Type", "application/json");
    JsonObject said = new JsonObject();
    said.addProperty("word", word);
    try (OutputStream out = asked.getOutputStream()) {
      out.write(said.toString().getBytes(StandardCharsets.UTF_8));
    }
    try (InputStream in = asked.getInputStream()) {
      String reply = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return JsonParser.parseString(reply).getAsJsonObject().get("address").getAsString();
    }
  }
}
