package hurdline.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** Requests to a server of this machine, letter by letter, as no browser would send them. */
final class Raw {
  private static final int PATIENCE_MS = 20_000;

  private final int port;
  private String key = "";

  Raw(int port) {
    this.port = port;
  }

  /** What came back; status 0 where the connection was cut. */
  record Reply(int status, Map<String, String> headers, String body) {}

  String home() {
    return "127.0.0.1:" + port;
  }

  /** Exchanges a code for the key and shows it from now on. */
  Reply enter(String code) throws IOException {
    Reply reply = post("enter", "{\"code\": \"" + code + "\"}");
    if (reply.status() == 200) {
      key = reply.body().replaceAll(".*\"key\":\"([^\"]*)\".*", "$1");
    }
    return reply;
  }

  void forgetKey() {
    key = "";
  }

  Reply get(String path, String... more) throws IOException {
    return ask("GET", path, "Host: " + home(), more);
  }

  /** A request without body. */
  Reply ask(String method, String path, String host, String... more) throws IOException {
    StringBuilder text = new StringBuilder(method + " " + path + " HTTP/1.1\r\n");
    if (!host.isEmpty()) {
      text.append(host).append("\r\n");
    }
    for (String header : more) {
      text.append(header).append("\r\n");
    }
    return send(text + keyLine() + "Connection: close\r\n\r\n");
  }

  private String keyLine() {
    return key.isEmpty() ? "" : "X-Hurdline-Key: " + key + "\r\n";
  }

  Reply post(String call, String json) throws IOException {
    return body("POST", call, "application/json", json);
  }

  Reply body(String method, String call, String type, String body) throws IOException {
    return body(method, call, type, body, "Origin: http://" + home() + "\r\n");
  }

  Reply body(String method, String call, String type, String body, String origin)
      throws IOException {
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    return send(
        (method
                + " /api/"
                + call
                + " HTTP/1.1\r\nHost: "
                + home()
                + "\r\n"
                + origin
                + keyLine()
                + "Content-Type: "
                + type
                + "\r\nContent-Length: "
                + bytes.length
                + "\r\nConnection: close\r\n\r\n")
            + body);
  }

  Reply send(String text) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      socket.setSoTimeout(PATIENCE_MS);
      try {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.UTF_8));
      } catch (IOException cut) {
        // An answer may be there all the same.
      }
      ByteArrayOutputStream read = new ByteArrayOutputStream();
      byte[] some = new byte[1 << 16];
      try {
        for (int n = socket.getInputStream().read(some);
            n >= 0;
            n = socket.getInputStream().read(some)) {
          read.write(some, 0, n);
        }
      } catch (IOException cut) {
        // What has come is what there is.
      }
      return parsed(read.toString(StandardCharsets.UTF_8));
    }
  }

  private static Reply parsed(String all) {
    int end = all.indexOf("\r\n\r\n");
    if (!all.startsWith("HTTP/1.1 ") || end < 0) {
      return new Reply(0, Map.of(), all);
    }
    Map<String, String> headers = new LinkedHashMap<>();
    String[] lines = all.substring(0, end).split("\r\n");
    for (int i = 1; i < lines.length; i++) {
      int colon = lines[i].indexOf(':');
      headers.put(
          lines[i].substring(0, colon).toLowerCase(java.util.Locale.ROOT),
          lines[i].substring(colon + 1).strip());
    }
    int status = Integer.parseInt(lines[0].substring(9, 12));
    return new Reply(status, headers, all.substring(end + 4));
  }
}
