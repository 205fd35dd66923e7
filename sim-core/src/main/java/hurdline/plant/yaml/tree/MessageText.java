package hurdline.plant.yaml.tree;

import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.unit.Amount;
import java.util.Optional;

/** A value as a message shows it. */
public final class MessageText {
  private static final int LONGEST = 60;
  private static final String ODD_SPACE = "non-breaking space";

  private MessageText() {}

  public static String of(Tree tree) {
    if (tree instanceof Scalar scalar) {
      return quoted(scalar.text());
    }
    if (tree instanceof Items) {
      return "a list";
    }
    return "a map with "
        + String.join(
            ", ", ((Entries) tree).map().keySet().stream().limit(4).map(MessageText::cut).toList());
  }

  public static String quoted(String text) {
    return "\"" + cut(text) + "\"";
  }

  /**
   * Names the space that makes a value wrong and that nobody can see in it; empty where there is
   * none.
   */
  public static String oddSpace(Optional<Tree> tree, String said) {
    boolean holds =
        tree.filter(at -> at instanceof Scalar scalar && Amount.oddSpace(scalar.text()).isPresent())
            .isPresent();
    return holds && !said.contains(ODD_SPACE) ? ", and holds a " + ODD_SPACE : "";
  }

  private static String cut(String text) {
    String line = text.replaceAll("\\s+", " ").strip();
    return line.length() > LONGEST ? line.substring(0, LONGEST - 3) + "..." : line;
  }
}
