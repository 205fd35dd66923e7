package hurdline.plant.yaml;

import hurdline.plant.Nearest;
import hurdline.plant.yaml.tree.MessageText;
import hurdline.plant.yaml.tree.SourcePosition;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.UnreadableException;
import java.util.Optional;
import java.util.Set;

/**
 * A value that says how what the file has is changed: {@code x0.8} times a factor, {@code +30d} a
 * date moved. This is the one place that says which values are such, for single values, what-ifs,
 * grids and options alike.
 */
sealed interface RelativeValue permits Scaling, DateMove {

  /**
   * What a value asks for; empty where the value is one to be set.
   *
   * @param place where the value stands
   * @throws UnreadableException if it begins like a scaling and has no factor
   */
  static Optional<RelativeValue> of(String path, String value, SourcePosition place) {
    return Scaling.of(path, value, place).or(() -> DateMove.of(path, value, place));
  }

  /**
   * What stands at a place, changed.
   *
   * @param here the place, every star replaced by a name
   * @throws UnreadableException if it cannot be changed so
   */
  Tree changed(Tree at, String here);

  /** The path as it was asked for. */
  String path();

  /** What it does: scale, or move. */
  String verb();

  /**
   * Nothing stands at a place.
   *
   * @param step the name that is not there
   * @param known the names that are
   */
  default UnreadableException nothing(String here, String step, Set<String> known) {
    return ValueChange.refuse(
        path(),
        "the file does not say " + MessageText.quoted(here) + ", so there is nothing to " + verb(),
        Nearest.expected("a name or key", step, known));
  }
}
