package hurdline.plant.yaml.tree;

import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Builds a {@link Tree} from YAML text.
 *
 * <p>It goes by the parser's events and not by composed nodes: these have lost whether a tag was
 * written out, and they expand a chain of aliases before anybody can count. Nothing is ever
 * constructed from a tag. Depth and size are limited, aliases counted as often as they are used.
 */
public final class TreeReader {
  private static final int DEEPEST = 32;
  private static final int MOST_VALUES = 100_000;

  private final Parser parser;
  private final Findings findings;
  private final Map<String, Tree> anchors = new HashMap<>();
  private final Map<String, Integer> sizes = new HashMap<>();
  private int values;
  private int lastEnd; // of the last scalar, counted in characters from the top

  private TreeReader(String text, Findings findings) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Math.max(text.length(), 1));
    options.setNestingDepthLimit(DEEPEST);
    this.parser = new ParserImpl(new StreamReader(text), options);
    this.findings = findings;
  }

  /**
   * The tree of the only document in the text.
   *
   * @throws UnreadableException if the text is not one YAML document within the limits
   */
  public static Tree read(String text, Findings findings) {
    try {
      return new TreeReader(text, findings).document();
    } catch (MarkedYAMLException e) {
      throw YamlFault.of(text, e);
    } catch (YAMLException
        | IndexOutOfBoundsException
        | NumberFormatException
        | StackOverflowError e) {
      throw YamlFault.of(text, e);
    }
  }

  private Tree document() {
    parser.getEvent(); // the stream's start
    if (parser.checkEvent(Event.ID.StreamEnd)) {
      throw new UnreadableException(
          SourcePosition.TOP,
          "it holds nothing but comments",
          "a plant file that begins with \"hurdline: 1\"");
    }
    parser.getEvent(); // the document's start
    Tree tree = value(0, "");
    parser.getEvent(); // the document's end
    Event after = parser.getEvent();
    if (after instanceof DocumentStartEvent) {
      throw new UnreadableException(
          place(after.getStartMark()),
          "a second document begins here",
          "one document in a plant file");
    }
    return tree;
  }

  private Tree value(int depth, String path) {
    Event event = parser.getEvent();
    SourcePosition place = place(event.getStartMark());
    if (depth > DEEPEST) {
      throw new UnreadableException(
          place, "it is nested more than " + DEEPEST + " deep", "the few levels of a plant file");
    }
    count(place, 1);
    if (event instanceof AliasEvent alias) {
      return aliased(alias, place);
    }
    refuseTag(event, place, path);
    int before = values;
    Tree tree = built(event, place, depth, path);
    String anchor = ((NodeEvent) event).getAnchor();
    if (anchor != null) {
      anchors.put(anchor, tree);
      sizes.put(anchor, values - before + 1);
    }
    return tree;
  }

  private Tree built(Event event, SourcePosition place, int depth, String path) {
    if (event instanceof SequenceStartEvent) {
      return items(place, depth, path);
    }
    if (event instanceof MappingStartEvent map) {
      return entries(place, depth, path, map.isFlow());
    }
    ScalarEvent scalar = (ScalarEvent) event;
    lastEnd = scalar.getEndMark().getIndex();
    return new Scalar(scalar.getValue(), scalar.isPlain(), place);
  }

  private Tree aliased(AliasEvent alias, SourcePosition place) {
    Tree known = anchors.get(alias.getAnchor());
    if (known == null) {
      throw new UnreadableException(
          place,
          "\"*"
              + alias.getAnchor()
              + "\" would repeat what \"&"
              + alias.getAnchor()
              + "\" names, and nothing before it has that name",
          "a name that is given further up, or quotation marks around a text that begins with \"*\"");
    }
    count(place, sizes.get(alias.getAnchor()));
    return known;
  }

  private void count(SourcePosition place, int more) {
    values += more;
    if (values > MOST_VALUES) {
      throw new UnreadableException(
          place,
          "it holds more than 100,000 values, repeated ones counted",
          "a plant file of a reasonable size");
    }
  }

  private Tree items(SourcePosition place, int depth, String path) {
    List<Tree> list = new ArrayList<>();
    while (!parser.checkEvent(Event.ID.SequenceEnd)) {
      int end = lastEnd;
      boolean touches = !list.isEmpty() && parser.peekEvent().getStartMark().getIndex() == end + 1;
      Tree item = value(depth + 1, join(path, String.valueOf(list.size())));
      if (touches && SplitNumber.isRestWithUnit(list.get(list.size() - 1), item)) {
        list.set(list.size() - 1, SplitNumber.joined(list.get(list.size() - 1), item));
      } else {
        list.add(item);
      }
    }
    parser.getEvent();
    return new Items(list, place);
  }

  /**
   * @param inBraces where a comma parts entries
   */
  private Tree entries(SourcePosition place, int depth, String path, boolean inBraces) {
    Map<String, Entry> map = new LinkedHashMap<>();
    String last = null;
    while (!parser.checkEvent(Event.ID.MappingEnd)) {
      Tree key = value(depth + 1, path);
      String inner = key instanceof Scalar word ? join(path, word.text()) : path;
      Tree value = value(depth + 1, inner);
      if (inBraces
          && last != null
          && value.isNothing()
          && SplitNumber.isRest(map.get(last).value(), key)) {
        Entry number = map.get(last);
        map.put(last, new Entry(number.keyPlace(), SplitNumber.joined(number.value(), key)));
        continue;
      }
      last = key instanceof Scalar word ? word.text() : null;
      if (key instanceof Scalar word) {
        putOnce(map, word, value, inner);
      } else {
        findings.add(key.place(), path, "a key is a list or a map", "a plain word as a key");
      }
    }
    parser.getEvent();
    return new Entries(map, place);
  }

  private void putOnce(Map<String, Entry> map, Scalar key, Tree value, String path) {
    Entry first = map.putIfAbsent(key.text(), new Entry(key.place(), value));
    if (first != null) {
      findings.add(
          key.place(),
          path,
          "the key \""
              + key.text()
              + "\" stands here a second time, first in line "
              + first.keyPlace().line(),
          "each key once in its map");
    }
  }

  private void refuseTag(Event event, SourcePosition place, String path) {
    String tag =
        event instanceof ScalarEvent scalar
            ? scalar.getTag()
            : event instanceof SequenceStartEvent sequence
                ? sequence.getTag()
                : event instanceof MappingStartEvent mapping ? mapping.getTag() : null;
    if (tag != null) {
      findings.add(
          place,
          path,
          "the YAML tag \"" + tag + "\" is not allowed",
          "plain keys and values without tags");
    }
  }

  private static String join(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  private static SourcePosition place(Mark mark) {
    return new SourcePosition(mark.getLine() + 1, mark.getColumn() + 1);
  }
}
