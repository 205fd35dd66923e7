package hurdline.plant.yaml;

import hurdline.plant.yaml.tree.Findings;
import java.util.Optional;

/**
 * What is shared while one tree is bound: findings, rain files, misspelt keys and the file's one
 * currency.
 */
final class Binding {
  private final Findings findings;
  private final Findings cautions;
  private final RainFiles rains;
  private final BoundBefore before;
  private final Misspellings misspellings = new Misspellings();
  private String currency;

  Binding(RainFiles rains, Findings findings, Findings cautions) {
    this(rains, findings, cautions, BoundBefore.nothing());
  }

  /**
   * @param before from which is taken over what no change has touched, without its cautions
   */
  Binding(RainFiles rains, Findings findings, Findings cautions, BoundBefore before) {
    this.before = before;
    this.rains = rains;
    this.findings = findings;
    this.cautions = cautions;
  }

  Findings findings() {
    return findings;
  }

  /** The rain files that were read with the plant file. */
  RainFiles rains() {
    return rains;
  }

  /** What was bound before and may be taken over: nothing that is in another currency. */
  BoundBefore before() {
    return before.where(before.currency().equals(currency()));
  }

  /** What is allowed but does nothing where it stands. */
  Findings cautions() {
    return cautions;
  }

  /** The keys that were read as others. */
  Misspellings misspellings() {
    return misspellings;
  }

  /** The currency that the file keeps to, once one has been seen. */
  Optional<String> currency() {
    return Optional.ofNullable(currency);
  }

  void keepTo(String code) {
    currency = code;
  }
}
