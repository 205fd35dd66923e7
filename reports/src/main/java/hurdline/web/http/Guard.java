package hurdline.web.http;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Who may ask what.
 *
 * <p>The server hears this machine only, but any page in any browser on it can send requests there,
 * and so can another user's program. A request must name this server (a name bound to the loopback
 * address does not), must come from the server's own page, and must show the key that only that
 * page was given. The key stands in a header: cookies are shared by all ports of a host (RFC 6265,
 * section 8.5).
 */
final class Guard {
  private static final Set<String> METHODS = Set.of("GET", "POST", "PUT", "DELETE");
  private static final long CODE_LASTS_NS = 120_000_000_000L;
  private static final int MOST_CODES = 8;

  private final String host;
  private final String origin;
  private final String key = Secret.fresh();
  private final Map<String, Long> codes = new HashMap<>();

  Guard(int port) {
    host = "127.0.0.1:" + port;
    origin = "http://" + host;
  }

  /** A code with which a browser is opened; it serves once and for two minutes. */
  synchronized String newCode() {
    long now = System.nanoTime();
    codes.values().removeIf(until -> until - now < 0);
    if (codes.size() >= MOST_CODES) {
      throw new Refusal(429, "Too many pages are being opened; wait two minutes.");
    }
    String code = Secret.fresh();
    codes.put(code, now + CODE_LASTS_NS);
    return code;
  }

  /**
   * The key for a code.
   *
   * @throws Refusal if the code is none, or was used
   */
  synchronized String exchange(String shown) {
    long now = System.nanoTime();
    for (Map.Entry<String, Long> code : codes.entrySet()) {
      if (Secret.same(code.getKey(), shown) && code.getValue() - now > 0) {
        codes.remove(code.getKey());
        return key;
      }
    }
    throw new Refusal(401, "This address was used already or is too old.");
  }

  synchronized boolean awaitsPages() {
    long now = System.nanoTime();
    return codes.values().stream().anyMatch(until -> until - now > 0);
  }

  /** What every request must pass, a picture's too. */
  void admit(HttpExchange exchange) {
    Headers asked = exchange.getRequestHeaders();
    List<String> hosts = asked.getOrDefault("Host", List.of());
    if (hosts.size() != 1 || !hosts.get(0).equals(host)) {
      throw new Refusal(421, "This is not the host that was asked for.");
    }
    if (exchange.getRequestURI().isAbsolute()
        || exchange.getRequestURI().getRawAuthority() != null) {
      throw new Refusal(400, "The address must be a path.");
    }
    if (!METHODS.contains(exchange.getRequestMethod())) {
      throw new Refusal(405, "This method is not served.");
    }
    List<String> origins = asked.getOrDefault("Origin", List.of());
    if (origins.size() > 1 || origins.size() == 1 && !origins.get(0).equals(origin)) {
      throw new Refusal(403, "The request comes from another page.");
    }
    if (!isOwnPage(exchange, asked)) {
      throw new Refusal(403, "The request comes from another site.");
    }
  }

  /** By what the browser says of itself; opening the page by its address is anybody's right. */
  private static boolean isOwnPage(HttpExchange exchange, Headers asked) {
    String site = asked.getFirst("Sec-Fetch-Site");
    boolean opened =
        exchange.getRequestMethod().equals("GET")
            && "navigate".equals(asked.getFirst("Sec-Fetch-Mode"))
            && "document".equals(asked.getFirst("Sec-Fetch-Dest"));
    return site == null || site.equals("same-origin") || opened;
  }

  /** What only the page may ask. */
  void admitCall(HttpExchange exchange) {
    List<String> keys = exchange.getRequestHeaders().getOrDefault("X-hurdline-key", List.of());
    if (keys.size() != 1 || !Secret.same(keys.get(0), key)) {
      throw new Refusal(401, "This page was opened without its key.");
    }
    admitChange(exchange);
  }

  /** Browsers name the origin of everything but a plain GET. */
  void admitChange(HttpExchange exchange) {
    boolean reads = exchange.getRequestMethod().equals("GET");
    if (!reads && exchange.getRequestHeaders().getFirst("Origin") == null) {
      throw new Refusal(403, "The request does not say which page it comes from.");
    }
  }
}
