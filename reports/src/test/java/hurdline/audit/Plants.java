package hurdline.audit;

import java.nio.file.Path;

/** Plant files that are audited. */
final class Plants {
  private static final Path ROOT = Path.of(System.getProperty("hurdline.root"));

  private Plants() {}

  /** Of a few busy weeks a year, with everything that an answer can have; in seconds. */
  static Path small() {
    return ROOT.resolve("reports/src/test/resources/hurdline/audit/alder-landing.yaml");
  }

  static Path shipped(String name) {
    return ROOT.resolve("line-configs").resolve(name);
  }
}
