package hurdline.plant.yaml.tree;

import hurdline.plant.yaml.tree.TextNode.AliasNode;
import hurdline.plant.yaml.tree.TextNode.ListNode;
import hurdline.plant.yaml.tree.TextNode.MapNode;
import hurdline.plant.yaml.tree.TextNode.Pair;
import hurdline.plant.yaml.tree.TextNode.Style;
import hurdline.plant.yaml.tree.TextNode.Word;
import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Finds where keys and values stand in a text.
 *
 * <p>The parser's marks count code points, Java's texts count chars, so each goes through a table.
 * A map or list in braces ends where its mark says; one written as a block ends, by its mark, where
 * the next thing begins, so its end is that of its last value.
 */
final class TextNodeReader {
  private static final int DEEPEST = 40;

  private final String text;
  private final ParserImpl parser;
  private final int[] chars;

  private TextNodeReader(String text) {
    this.text = text;
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Math.max(1, text.length()));
    parser = new ParserImpl(new StreamReader(text), options);
    int[] points = text.codePoints().toArray();
    chars = new int[points.length + 1];
    for (int i = 0; i < points.length; i++) {
      chars[i + 1] = chars[i] + Character.charCount(points[i]);
    }
  }

  /**
   * The nodes of the first document of a text.
   *
   * @throws UnreadableException if it is no YAML
   */
  static TextNode read(String text) {
    try {
      return new TextNodeReader(text).top();
    } catch (YAMLException
        | IndexOutOfBoundsException
        | NumberFormatException
        | StackOverflowError e) {
      throw YamlFault.of(text, e);
    }
  }

  private TextNode top() {
    parser.getEvent(); // the stream's start
    if (parser.checkEvent(Event.ID.StreamEnd)) {
      return new MapNode(0, 0, false, List.of());
    }
    parser.getEvent(); // the document's start
    return node(0);
  }

  private TextNode node(int depth) {
    if (depth > DEEPEST) {
      throw new UnreadableException(
          SourcePosition.NOWHERE, "it is nested too deep", "the few levels of a plant file");
    }
    Event event = parser.getEvent();
    if (event instanceof AliasEvent alias) {
      return new AliasNode(from(event), to(event), alias.getAnchor());
    }
    if (event instanceof ScalarEvent scalar) {
      return word(scalar);
    }
    if (event instanceof SequenceStartEvent start) {
      return list(start, depth);
    }
    return map((MappingStartEvent) event, depth);
  }

  private Word word(ScalarEvent scalar) {
    Style style =
        switch (scalar.getScalarStyle()) {
          case DOUBLE_QUOTED, SINGLE_QUOTED -> Style.QUOTED;
          case LITERAL, FOLDED -> Style.BLOCK;
          default -> Style.PLAIN;
        };
    int end = to(scalar);
    while (style == Style.BLOCK
        && end > from(scalar)
        && Character.isWhitespace(text.charAt(end - 1))) {
      end--;
    }
    return new Word(from(scalar), end, scalar.getValue(), style);
  }

  private ListNode list(SequenceStartEvent start, int depth) {
    List<TextNode> items = new ArrayList<>();
    while (!parser.checkEvent(Event.ID.SequenceEnd)) {
      items.add(node(depth + 1));
    }
    int end = to(parser.getEvent());
    return new ListNode(
        from(start), start.isFlow() ? end : last(items, to(start)), start.isFlow(), items);
  }

  private MapNode map(MappingStartEvent start, int depth) {
    List<Pair> pairs = new ArrayList<>();
    while (!parser.checkEvent(Event.ID.MappingEnd)) {
      if (!(node(depth + 1) instanceof Word key)) {
        throw new UnreadableException(
            SourcePosition.NOWHERE, "a key is a list or a map", "a plain word as a key");
      }
      pairs.add(new Pair(key, node(depth + 1)));
    }
    int end = to(parser.getEvent());
    List<TextNode> values = pairs.stream().map(Pair::value).toList();
    return new MapNode(
        from(start), start.isFlow() ? end : last(values, to(start)), start.isFlow(), pairs);
  }

  private static int last(List<TextNode> parts, int otherwise) {
    return parts.isEmpty() ? otherwise : parts.get(parts.size() - 1).to();
  }

  private int from(Event event) {
    return chars[Math.min(event.getStartMark().getIndex(), chars.length - 1)];
  }

  private int to(Event event) {
    return chars[Math.min(event.getEndMark().getIndex(), chars.length - 1)];
  }
}
