package hurdline.plant.yaml;

import java.util.Optional;

/** What is shared while one tree is bound: the findings and the file's one currency. */
final class Binding {
  private final Findings findings;
  private final Findings cautions;
  private String currency;

  Binding(Findings findings, Findings cautions) {
    this.findings = findings;
    this.cautions = cautions;
  }

  Findings findings() {
    return findings;
  }

  /** What is allowed but does nothing where it stands. */
  Findings cautions() {
    return cautions;
  }

  /** The currency that the file keeps to, once one has been seen. */
  Optional<String> currency() {
    return Optional.ofNullable(currency);
  }

  void keepTo(String code) {
    currency = code;
  }
}
