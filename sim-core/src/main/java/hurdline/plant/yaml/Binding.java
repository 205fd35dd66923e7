package hurdline.plant.yaml;

import java.util.Optional;

/** What is shared while one tree is bound: the findings and the file's one currency. */
final class Binding {
  private final Findings findings;
  private String currency;

  Binding(Findings findings) {
    this.findings = findings;
  }

  Findings findings() {
    return findings;
  }

  /** The currency that the file keeps to, once one has been seen. */
  Optional<String> currency() {
    return Optional.ofNullable(currency);
  }

  void keepTo(String code) {
    currency = code;
  }
}
