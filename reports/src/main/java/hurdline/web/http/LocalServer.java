package hurdline.web.http;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import hurdline.study.replicate.ReplicationRunner;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Map;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Serves one page on this machine.
 *
 * <p>Three kinds of addresses: files of the page by a fixed list, calls below {@code /api/} that
 * need the page's key, and reports under addresses that cannot be guessed.
 */
public final class LocalServer {
  /** A text of 4 MB and what JSON makes of it: two letters of a line's end. */
  private static final int LARGEST_BODY = (8 << 20) + (1 << 16);

  /** What is taken in of a larger body, so that the browser hears why it is refused. */
  private static final long MOST_TAKEN_IN = 64 << 20;

  private static final int MOST_AT_ONCE = 200;
  private static final int WAITING = 16;
  private static final int FAULT = 500;

  /** Where reports are found. */
  public interface Reports {
    /**
     * @throws Refusal if there is none under this word
     */
    Reply at(String word) throws IOException;
  }

  private final HttpServer server;
  private final Guard guard;
  private final Site site;
  private final Map<String, Call> calls;
  private final Reports reports;
  private final String doorWord = Secret.fresh();
  private final AtomicLong lastAskedNs = new AtomicLong(System.nanoTime());
  private final AtomicInteger atOnce = new AtomicInteger();

  private LocalServer(HttpServer server, Site site, Map<String, Call> calls, Reports reports) {
    this.server = server;
    this.guard = new Guard(server.getAddress().getPort());
    this.site = site;
    this.calls = Map.copyOf(calls);
    this.reports = reports;
  }

  /**
   * Starts to listen on the loopback address.
   *
   * @param port 0 for any that is free
   * @param calls by method and name, such as {@code POST check}
   */
  public static LocalServer start(int port, Site site, Map<String, Call> calls, Reports reports)
      throws IOException {
    // Read by the server's classes when they are loaded. Without the first, an answer waits 40 ms.
    System.setProperty("sun.net.httpserver.nodelay", "true");
    System.setProperty("sun.net.httpserver.maxReqTime", "30");
    InetAddress loopback = InetAddress.getByAddress(new byte[] {127, 0, 0, 1});
    HttpServer listening = HttpServer.create(new InetSocketAddress(loopback, port), WAITING);
    LocalServer local = new LocalServer(listening, site, calls, reports);
    listening.setExecutor(local::begin);
    listening.createContext("/", local::serve);
    listening.start();
    return local;
  }

  public int port() {
    return server.getAddress().getPort();
  }

  /** An address that opens the page once, within two minutes. */
  public String newAddress() {
    return "http://127.0.0.1:" + port() + "/#" + guard.newCode();
  }

  /** A word with which another start of the program, by the same user, gets an address too. */
  public String doorWord() {
    return doorWord;
  }

  /** Whether an address was given out that no page has used yet. */
  public boolean awaitsPages() {
    return guard.awaitsPages();
  }

  public double idleS() {
    return (System.nanoTime() - lastAskedNs.get()) * 1e-9;
  }

  public void stop() {
    server.stop(0);
  }

  private void begin(Runnable request) {
    if (atOnce.incrementAndGet() > MOST_AT_ONCE) {
      atOnce.decrementAndGet();
      throw new RejectedExecutionException("too many requests at once");
    }
    ReplicationRunner.inBackground(
        "page",
        () -> {
          try {
            request.run();
          } finally {
            atOnce.decrementAndGet();
          }
          return null;
        });
  }

  private void serve(HttpExchange exchange) throws IOException {
    try (exchange) {
      dress(exchange.getResponseHeaders());
      Reply reply;
      try {
        reply = reply(exchange);
      } catch (Refusal why) {
        reply = Reply.refused(why);
      } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
        reply = Reply.refused(new Refusal(FAULT, "A fault in the program: " + fault));
      }
      send(exchange, reply);
    }
  }

  private Reply reply(HttpExchange exchange) throws IOException {
    guard.admit(exchange);
    String path = exchange.getRequestURI().getRawPath();
    String method = exchange.getRequestMethod();
    if (path.startsWith("/api/")) {
      return called(exchange, method + " " + path.substring("/api/".length()));
    }
    if (!method.equals("GET")) {
      throw Refusal.notThere();
    }
    return path.startsWith("/report/")
        ? reports.at(path.substring("/report/".length()))
        : site.at(path);
  }

  private Reply called(HttpExchange exchange, String name) throws IOException {
    if (name.equals("POST enter")) {
      guard.admitChange(exchange);
      Reply key = Reply.json(Map.of("key", guard.exchange(asked(exchange).text("code"))));
      lastAskedNs.set(System.nanoTime());
      return key;
    }
    if (name.equals("POST door")) {
      return door(asked(exchange));
    }
    guard.admitCall(exchange);
    lastAskedNs.set(System.nanoTime());
    Call call = calls.get(name);
    if (call == null) {
      throw Refusal.notThere();
    }
    return call.answer(exchange.getRequestMethod().equals("GET") ? Ask.nothing() : asked(exchange));
  }

  private Reply door(Ask ask) {
    if (!Secret.same(ask.text("word"), doorWord)) {
      throw new Refusal(401, "This is not the word of this program.");
    }
    return Reply.json(Map.of("address", newAddress()));
  }

  private static Ask asked(HttpExchange exchange) throws IOException {
    String type = String.valueOf(exchange.getRequestHeaders().getFirst("Content-type"));
    if (!type.equals("application/json")) {
      throw new Refusal(415, "JSON is expected.");
    }
    byte[] bytes = exchange.getRequestBody().readNBytes(LARGEST_BODY + 1);
    if (bytes.length > LARGEST_BODY) {
      exchange.getRequestBody().skip(MOST_TAKEN_IN);
      throw new Refusal(413, "That is more than 4 MB.");
    }
    return Ask.of(bytes);
  }

  /** Before anything is answered, a refusal too. */
  private static void dress(Headers headers) {
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Permissions-Policy", "camera=(), geolocation=(), microphone=()");
    headers.set("Cache-Control", "no-store");
  }

  private void send(HttpExchange exchange, Reply reply) throws IOException {
    String policy = reply.policy().isEmpty() ? site.policy() : reply.policy();
    exchange.getResponseHeaders().set("Content-Security-Policy", policy);
    exchange.getResponseHeaders().set("Content-Type", reply.type());
    boolean bare = reply.bytes().length == 0 || exchange.getRequestMethod().equals("HEAD");
    exchange.sendResponseHeaders(reply.status(), bare ? -1 : reply.bytes().length);
    if (!bare) {
      exchange.getResponseBody().write(reply.bytes());
    }
  }
}
