package hurdline.plant.yaml.tree;

import hurdline.plant.yaml.tree.Tree.Scalar;
import java.util.regex.Pattern;

/**
 * A number with a comma in braces or brackets, such as {@code {stalk: 1,400 bales}}, which YAML
 * takes for two entries. Put together again it is told as what it is: a number with a comma.
 */
final class SplitNumber {
  private static final Pattern BEGINNING = Pattern.compile("[-+]?[0-9]{1,3}(,[0-9]{3})*");
  private static final Pattern REST = Pattern.compile("[0-9]+(\\.[0-9]+)?(\\s*[A-Za-z%].*)?");
  private static final Pattern REST_WITH_UNIT =
      Pattern.compile("[0-9]{3}(\\.[0-9]+)?\\s*[A-Za-z%].*");

  private SplitNumber() {}

  /** Whether a key without a value goes on where the value before it was cut. */
  static boolean isRest(Tree before, Tree key) {
    return isPlain(before, BEGINNING) && isPlain(key, REST);
  }

  /** The same of a place in a list, where a bare number may well stand by itself. */
  static boolean isRestWithUnit(Tree before, Tree item) {
    return isPlain(before, BEGINNING) && isPlain(item, REST_WITH_UNIT);
  }

  static Scalar joined(Tree before, Tree rest) {
    Scalar beginning = (Scalar) before;
    return new Scalar(beginning.text() + "," + ((Scalar) rest).text(), true, beginning.place());
  }

  private static boolean isPlain(Tree tree, Pattern pattern) {
    return tree instanceof Scalar scalar
        && scalar.plain()
        && pattern.matcher(scalar.text()).matches();
  }
}
