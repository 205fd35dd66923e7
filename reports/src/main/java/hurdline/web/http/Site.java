package hurdline.web.http;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The files of the page, by a fixed list, and the policy under which a browser shows them.
 *
 * <p>Nothing comes from elsewhere: scripts, styles and calls are this server's own, the one script
 * within the page is allowed by its hash, and text never becomes markup (Trusted Types without any
 * policy).
 */
public final class Site {
  private static final String SCRIPT = "text/javascript; charset=utf-8";

  private final Map<String, Reply> files = new LinkedHashMap<>();
  private final String policy;

  private Site(String policy) {
    this.policy = policy;
  }

  /**
   * The page's own files and the modules of its editor.
   *
   * @param folder of resources that holds {@code index.html} and the named files
   * @param names of scripts, styles and pictures in it
   * @param modules resources by the name under which a script imports them
   */
  public static Site of(String folder, Iterable<String> names, Map<String, String> modules)
      throws IOException {
    String map = importMap(modules);
    // For the one style sheet that the editor writes by script; new at each start.
    String nonce = Secret.fresh();
    Site site = new Site(policy(map, nonce));
    String page = resource(folder + "/index.html");
    site.files.put(
        "/",
        Reply.of(
            "text/html; charset=utf-8",
            page.replace("IMPORT_MAP", map).replace("STYLE_NONCE", nonce)));
    for (String name : names) {
      site.files.put("/" + name, Reply.of(type(name), resource(folder + "/" + name)));
    }
    for (Map.Entry<String, String> module : modules.entrySet()) {
      site.files.put(address(module.getKey()), Reply.of(SCRIPT, resource(module.getValue())));
    }
    return site;
  }

  private static String type(String name) {
    return switch (name.substring(name.lastIndexOf('.') + 1)) {
      case "css" -> "text/css; charset=utf-8";
      case "svg" -> "image/svg+xml";
      default -> SCRIPT;
    };
  }

  private static String policy(String map, String nonce) {
    return String.join(
        "; ",
        "default-src 'none'",
        "script-src 'self' 'sha256-" + sha256(map) + "'",
        "style-src 'self' 'nonce-" + nonce + "'",
        "img-src 'self' data:",
        "connect-src 'self'",
        "frame-src 'self'",
        "base-uri 'none'",
        "form-action 'none'",
        "frame-ancestors 'none'",
        "require-trusted-types-for 'script'",
        "trusted-types 'none'");
  }

  private static String importMap(Map<String, String> modules) {
    Map<String, String> addresses = new LinkedHashMap<>();
    modules.keySet().forEach(name -> addresses.put(name, address(name)));
    return new String(Reply.json(Map.of("imports", addresses)).bytes(), StandardCharsets.UTF_8);
  }

  private static String address(String module) {
    return "/lib/" + module.replace("@", "").replace('/', '-') + ".js";
  }

  /**
   * The file at a path.
   *
   * @throws Refusal if it is not in the list
   */
  Reply at(String path) {
    Reply file = files.get(path);
    if (file == null) {
      throw Refusal.notThere();
    }
    return file;
  }

  String policy() {
    return policy;
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = Site.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is not packed with the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String sha256(String text) {
    try {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
