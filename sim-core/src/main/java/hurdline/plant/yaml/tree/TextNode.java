package hurdline.plant.yaml.tree;

import java.util.List;
import java.util.Optional;

/** Where every key and value of a YAML text begins and ends, in characters from the top. */
sealed interface TextNode {
  int from();

  /** Behind the last letter that belongs to it; trailing comments and blank lines do not. */
  int to();

  /** How a scalar is written. */
  enum Style {
    PLAIN,
    QUOTED,
    BLOCK
  }

  record Word(int from, int to, String text, Style style) implements TextNode {
    boolean isEmpty() {
      return style == Style.PLAIN && text.isEmpty();
    }
  }

  record Pair(Word key, TextNode value) {}

  /**
   * @param flow whether it stands in braces
   */
  record MapNode(int from, int to, boolean flow, List<Pair> pairs) implements TextNode {
    Optional<Pair> at(String key) {
      return pairs.stream().filter(pair -> pair.key().text().equals(key)).findFirst();
    }
  }

  /**
   * @param flow whether it stands in brackets
   */
  record ListNode(int from, int to, boolean flow, List<TextNode> items) implements TextNode {
    Optional<TextNode> at(String place) {
      boolean there = place.matches("[0-9]{1,6}") && Integer.parseInt(place) < items.size();
      return there ? Optional.of(items.get(Integer.parseInt(place))) : Optional.empty();
    }
  }

  /** What an anchor further up names. */
  record AliasNode(int from, int to, String anchor) implements TextNode {}
}
