package hurdline.plant;

import java.util.List;

/**
 * Something that is open: one of its values is chosen.
 *
 * @param name its own, or the path of the key that it is about
 * @param kind what its values are
 * @param values at least one, in the file's order, no text twice
 */
public record Choice(String name, Kind kind, List<Value> values) {
  public Choice {
    values = List.copyOf(values);
  }

  /** What values are. */
  public enum Kind {
    KEY,
    PLAN,
    OPTION
  }

  /**
   * A value that may be chosen.
   *
   * @param text by which it is called
   * @param changes that it makes in the plant; none for the plant as it stands
   * @param purchases what it costs
   */
  public record Value(String text, List<Change> changes, List<Purchase> purchases) {
    public Value {
      changes = List.copyOf(changes);
      purchases = List.copyOf(purchases);
    }
  }

  /**
   * Something that is bought.
   *
   * @param cost in the file's currency
   * @param salvage what it is worth at the end of its life
   */
  public record Purchase(double cost, double lifeYr, double salvage) {
    public Purchase {
      Check.notBelow0("cost", cost);
      Check.above0("lifeYr", lifeYr);
      Check.finite("salvage", salvage);
    }
  }
}
