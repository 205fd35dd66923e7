package hurdline.web;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;

/** Another site of this machine that tries to use the page. */
final class HostileSite implements AutoCloseable {
  private final HttpServer server;
  private final List<String> heard = new CopyOnWriteArrayList<>();

  private HostileSite(HttpServer server) {
    this.server = server;
  }

  static HostileSite start() throws IOException {
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getByName("127.0.0.1"), 0), 0);
    HostileSite site = new HostileSite(server);
    server.createContext(
        "/",
        exchange -> {
          site.heard.add(
              exchange.getRequestURI()
                  + " cookie="
                  + exchange.getRequestHeaders().getFirst("Cookie"));
          byte[] page = "<!doctype html><title>other</title>".getBytes(StandardCharsets.UTF_8);
          exchange.getResponseHeaders().set("Content-Type", "text/html");
          exchange.sendResponseHeaders(200, page.length);
          exchange.getResponseBody().write(page);
          exchange.close();
        });
    server.start();
    return site;
  }

  List<String> origins() {
    int port = server.getAddress().getPort();
    return List.of(
        "http://127.0.0.1:" + port, "http://localhost:" + port, "http://rebound.example:" + port);
  }

  List<String> heard() {
    return heard;
  }

  /** Scripts that tell {@code done} what came of an attempt; "refused" first where nothing did. */
  Map<String, String> attempts(String target) {
    Map<String, String> all = new LinkedHashMap<>();
    all.put(
        "read the page", fetched("'" + target + "/'", "").replace("STATUS", "'READ ' + r.status"));
    all.put(
        "read a call without leave",
        fetched("'" + target + "/api/files'", ", {mode: 'no-cors'}")
            .replace("STATUS", "(r.type === 'opaque' ? 'refused: opaque' : 'READ')"));
    all.put(
        "a post with a header",
        fetched(
                "'" + target + "/api/studies'",
                ", {method: 'POST', body: '{}', headers: {'Content-Type': 'application/json',"
                    + " 'X-Hurdline-Key': 'x'}}")
            .replace("STATUS", "'READ ' + r.status"));
    all.put("a script", loaded("script", target + "/page.js"));
    all.put("an image", loaded("img", target + "/api/files"));
    all.put(
        "a frame",
        "const f = document.createElement('iframe'); f.src = '"
            + target
            + "/'; f.onload = () => { try { done(f.contentDocument &&"
            + " f.contentDocument.getElementById('editor') ? 'REACHED' : 'refused: not reached'); }"
            + " catch (e) { done('refused: ' + e.name); } }; document.body.append(f);");
    all.put(
        "a socket",
        "const s = new WebSocket('"
            + target.replace("http", "ws")
            + "/api/files'); s.onopen = () => done('OPEN'); s.onerror = () => done('refused');");
    all.put(
        "an event stream",
        "const s = new EventSource('"
            + target
            + "/api/studies'); s.onopen = () => done('OPEN'); s.onerror = () => done('refused');");
    return all;
  }

  private static String fetched(String what, String how) {
    return "fetch(" + what + how + ").then(r => done(STATUS), e => done('refused: ' + e.message));";
  }

  private static String loaded(String tag, String address) {
    return "const s = document.createElement('"
        + tag
        + "'); s.onload = () => done('LOADED'); s.onerror = () => done('refused'); s.src = '"
        + address
        + "'; document.head.append(s);";
  }

  @Override
  public void close() {
    server.stop(0);
  }
}
