package hurdline.plant.yaml;

import hurdline.plant.yaml.Tree.Entries;
import hurdline.plant.yaml.Tree.Items;
import hurdline.plant.yaml.Tree.Scalar;
import hurdline.unit.Amount;
import java.util.Optional;

/** A value as a message shows it. */
final class Shown {
  private static final int LONGEST = 60;
  private static final String ODD_SPACE = "non-breaking space";

  private Shown() {}

  static String of(Tree tree) {
    if (tree instanceof Scalar scalar) {
      return quoted(scalar.text());
    }
    if (tree instanceof Items) {
      return "a list";
    }
    return "a map with "
        + String.join(
            ", ", ((Entries) tree).map().keySet().stream().limit(4).map(Shown::cut).toList());
  }

  static String quoted(String text) {
    return "\"" + cut(text) + "\"";
  }

  /** Names the space that makes a value wrong and that nobody can see in it; empty where there is none. */
  static String oddSpace(Optional<Tree> tree, String said) {
    boolean holds =
        tree.filter(at -> at instanceof Scalar scalar && Amount.oddSpace(scalar.text()).isPresent()).isPresent();
    return holds && !said.contains(ODD_SPACE) ? ", and holds a " + ODD_SPACE : "";
  }

  private static String cut(String text) {
    String line = text.replaceAll("\\s+", " ").strip();
    return line.length() > LONGEST ? line.substring(0, LONGEST - 3) + "..." : line;
  }
}
