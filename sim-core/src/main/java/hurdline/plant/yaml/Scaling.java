package hurdline.plant.yaml;

import hurdline.plant.yaml.tree.MessageText;
import hurdline.plant.yaml.tree.SourcePosition;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.plant.yaml.tree.UnreadableException;
import hurdline.unit.Amount;
import hurdline.unit.QuantityException;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A value such as {@code x0.8}: what the file says, times a factor.
 *
 * <p>Of a distribution every number with a unit is scaled, so that its mean, its spread and the
 * range to which it is cut all grow alike; a shape is not. The product is formed in decimal, so
 * that {@code x1} leaves every amount as it was to the last bit.
 */
final class Scaling implements RelativeValue {
  private final String path;
  private final BigDecimal factor;
  private final SourcePosition place;

  private Scaling(String path, BigDecimal factor, SourcePosition place) {
    this.path = path;
    this.factor = factor;
    this.place = place;
  }

  /**
   * The scaling that a value asks for; empty where the value is another.
   *
   * @param place where the value stands
   * @throws UnreadableException if it begins like a scaling and has no factor
   */
  static Optional<RelativeValue> of(String path, String value, SourcePosition place) {
    try {
      return Amount.factor(value).map(factor -> new Scaling(path, factor, place));
    } catch (QuantityException e) {
      throw ValueChange.refuse(path, e.getMessage(), "a bare number, 0 or more, such as x0.8");
    }
  }

  /** The value times the factor. */
  @Override
  public Tree changed(Tree at, String here) {
    if (at instanceof Scalar scalar) {
      return times(scalar, here);
    }
    if (at instanceof Entries entries && distribution(entries).isPresent()) {
      String name = distribution(entries).get();
      Entry entry = entries.map().get(name);
      Tree inside = insides(entry.value(), here + "." + name);
      return new Entries(Map.of(name, new Entry(entry.keyPlace(), inside)), entries.place());
    }
    throw ValueChange.refuse(
        path,
        at instanceof Items
            ? MessageText.quoted(here)
                + " is a list, and x would not know which of its numbers is meant"
            : MessageText.quoted(here) + " is " + MessageText.of(at) + " and no amount",
        "a path to a quantity, a bare number or a distribution; further names, places or * lead"
            + " into it");
  }

  private static Optional<String> distribution(Entries entries) {
    Set<String> keys = entries.map().keySet();
    return keys.size() == 1
        ? keys.stream().filter(RandomQuantityReader.NAMES::contains).findFirst()
        : Optional.empty();
  }

  /** Of a distribution: all that has a unit. */
  private Tree insides(Tree at, String here) {
    if (at instanceof Items items) {
      List<Tree> values =
          items.list().stream().map(value -> scalarOf(value, here)).map(Tree.class::cast).toList();
      return new Items(values, items.place());
    }
    if (!(at instanceof Entries entries)) {
      throw noNumber(at, here);
    }
    Map<String, Entry> scaled = new LinkedHashMap<>();
    entries
        .map()
        .forEach(
            (key, entry) ->
                scaled.put(
                    key,
                    key.equals("shape") || entry.value().isNothing()
                        ? entry
                        : new Entry(entry.keyPlace(), scalarOf(entry.value(), here + "." + key))));
    return new Entries(scaled, entries.place());
  }

  private Scalar scalarOf(Tree at, String here) {
    if (at instanceof Scalar scalar) {
      return times(scalar, here);
    }
    throw noNumber(at, here);
  }

  private Scalar times(Scalar scalar, String here) {
    Amount amount = Amount.find(scalar.text()).orElseThrow(() -> noNumber(scalar, here));
    String scaled = amount.with(amount.number().multiply(factor)).text();
    return new Scalar(scaled, scalar.plain(), place);
  }

  private UnreadableException noNumber(Tree at, String here) {
    return ValueChange.refuse(
        path,
        MessageText.quoted(here) + " says " + MessageText.of(at) + ", which is no number to scale",
        "a path to a quantity, a bare number or a distribution");
  }

  @Override
  public String path() {
    return path;
  }

  @Override
  public String verb() {
    return "scale";
  }
}
