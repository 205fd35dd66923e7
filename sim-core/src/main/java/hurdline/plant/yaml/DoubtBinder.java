package hurdline.plant.yaml;

import hurdline.plant.Change;
import hurdline.plant.Doubt;
import hurdline.plant.Plant;
import hurdline.plant.Problem;
import hurdline.plant.yaml.tree.Finding;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.Locator;
import hurdline.plant.yaml.tree.SourcePosition;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.UnreadableException;
import hurdline.unit.Dimension;
import java.util.List;

/** How well values are known. */
final class DoubtBinder {
  private DoubtBinder() {}

  static List<Doubt> doubts(NodeReader at) {
    return at.list("doubts", DoubtBinder::doubt);
  }

  /** Finds doubts of what the file does not say, or of no quantity, and those that stand twice. */
  static void refuseAstray(Plant plant, Tree tree, Findings findings) {
    for (int at = 0; at < plant.doubts().size(); at++) {
      Doubt doubt = plant.doubts().get(at);
      String path = "doubt." + at + ".value";
      SourcePosition place = Locator.of(tree, path);
      try {
        ValueChange.apply(tree, new Change.Value(doubt.key(), "x1"));
      } catch (UnreadableException e) {
        Problem why = e.finding().problem();
        findings.add(new Finding(place, new Problem(path, why.said(), why.expected())));
      }
      if (plant.doubts().subList(0, at).stream().anyMatch(of -> of.key().equals(doubt.key()))) {
        findings.add(
            place, path, "\"" + doubt.key() + "\" stands twice", "one doubt of each value");
      }
    }
  }

  private static Doubt doubt(NodeReader at) {
    Fields f = at.fields(MapKeys.DOUBT);
    return new Doubt(
        Words.text(f.at("value")),
        Quantities.of(f.at("give_or_take"), Dimension.SHARE, Range.SOME_SHARE, 1));
  }
}
