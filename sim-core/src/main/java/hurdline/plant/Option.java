package hurdline.plant;

import java.util.Optional;

/**
 * Something that might be bought or changed; what it changes is a patch on the plant file.
 *
 * @param loan on its purchase; as the plant's where absent
 */
public record Option(
    String name,
    String says,
    double cost,
    double lifeYr,
    double salvage,
    Optional<CashTerms.Borrowing> loan) {
  public Option {
    Check.notBelow0("cost", cost);
    Check.above0("lifeYr", lifeYr);
    Check.finite("salvage", salvage);
  }
}
