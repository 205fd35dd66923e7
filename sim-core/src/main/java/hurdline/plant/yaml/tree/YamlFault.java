package hurdline.plant.yaml.tree;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.reader.ReaderException;

/**
 * Says why a text is not YAML in words that need no knowledge of it.
 *
 * <p>The parser tells what it was about to read and where it gave up; what somebody has mistyped
 * often lies before that. So each of the parser's reasons is looked into on the lines themselves,
 * and what is told is the bracket, mark, colon or indentation that is to be mended.
 */
final class YamlFault {
  private static final String YAML = "YAML, indented with spaces, brackets and quotes closed";
  private static final String QUOTED = "quotation marks around the whole text";
  private static final Pattern CANNOT_START =
      Pattern.compile("found character '(.)' that cannot start any token.*");
  private static final Pattern NO_SPACE = Pattern.compile("[^\\s:\"'#]+:[^\\s:/].*");

  private final FileLines lines;
  private final String problem;
  private final SourcePosition place;
  private final SourcePosition began;

  private YamlFault(FileLines lines, MarkedYAMLException fault) {
    this.lines = lines;
    this.problem = String.valueOf(fault.getProblem()).replaceAll("\\s+", " ").strip();
    this.place = spot(fault.getProblemMark());
    this.began = fault.getContextMark() == null ? place : spot(fault.getContextMark());
  }

  static UnreadableException of(String text, Throwable fault) {
    if (fault instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
      return new YamlFault(new FileLines(text), marked).told();
    }
    if (fault instanceof ReaderException special) {
      return new UnreadableException(
          placeOf(text, special.getPosition()),
          String.format("the character U+%04X may not stand in a text", special.getCodePoint()),
          "a text file; this one looks binary");
    }
    if (String.valueOf(fault.getMessage()).startsWith("Nesting Depth")) {
      return new UnreadableException(
          SourcePosition.NOWHERE, "it is nested too deep", "the few levels of a plant file");
    }
    return new UnreadableException(SourcePosition.NOWHERE, "it is not YAML", YAML);
  }

  private static SourcePosition spot(Mark mark) {
    return new SourcePosition(mark.getLine() + 1, mark.getColumn() + 1);
  }

  private UnreadableException told() {
    String line = lines.line(place.line());
    if (line.substring(0, FileLines.indent(line)).contains("\t")) {
      return fault(place, "a tab in the indentation", "spaces; YAML does not allow tabs there");
    }
    return oddSpace()
        .or(this::enclosing)
        .or(this::character)
        .or(this::keys)
        .orElseGet(() -> fault(place, "from here on it cannot be read", YAML));
  }

  private Optional<UnreadableException> oddSpace() {
    boolean near = place.line() - began.line() <= 2;
    SourcePosition odd =
        near && !lines.oddSpace(began.line()).isNowhere()
            ? lines.oddSpace(began.line())
            : lines.oddSpace(place.line());
    odd = odd.isNowhere() ? lines.oddSpace(lines.before(place.line())) : odd;
    return odd.isNowhere()
        ? Optional.empty()
        : Optional.of(fault(odd, "a non-breaking space stands here", "a plain space"));
  }

  /** Brackets, braces and quotation marks. */
  private Optional<UnreadableException> enclosing() {
    if (problem.startsWith("found unexpected end of stream")
        || problem.startsWith("found unexpected document separator")) {
      return Optional.of(openQuote(began));
    }
    if (problem.startsWith("expected ',' or")) {
      return Optional.of(inBrackets());
    }
    if (problem.startsWith("expected the node content")) {
      int open = EnclosedFile.upTo(lines.text(), lines.text().length()).leftOpen();
      return Optional.of(
          open >= 0
              ? openBracket(open)
              : fault(place, "a value is missing before this", "a value"));
    }
    if (problem.endsWith("but found '}'") || problem.endsWith("but found ']'")) {
      return Optional.of(closesNothing(place, problem.charAt(problem.length() - 2)));
    }
    if (problem.endsWith("but found '<scalar>'")) {
      return behindAQuote();
    }
    return Optional.empty();
  }

  private UnreadableException openBracket(int open) {
    boolean brace = lines.text().charAt(open) == '{';
    return fault(
        lines.spot(open),
        "the " + (brace ? "brace \"{\"" : "bracket \"[\"") + " that opens here is not closed",
        "a \"" + (brace ? "}" : "]") + "\" behind its last entry");
  }

  private static UnreadableException closesNothing(SourcePosition at, char bracket) {
    return fault(
        at,
        "\"" + bracket + "\" closes what was not opened",
        "as many brackets that close as open");
  }

  private UnreadableException openQuote(SourcePosition at) {
    return fault(
        at,
        "the quotation mark that opens here is not closed",
        "the same mark at the end of the text");
  }

  private UnreadableException inBrackets() {
    EnclosedFile bracket = EnclosedFile.bracket(lines.text(), lines.offset(began));
    int open = bracket.leftOpen();
    Optional<UnreadableException> quote = behindAQuote();
    if (quote.isPresent()) {
      return quote.get();
    }
    if (bracket.extra() >= 0) {
      return closesNothing(lines.spot(bracket.extra()), lines.text().charAt(bracket.extra()));
    }
    if (open >= 0) {
      return openBracket(open);
    }
    return fault(
        place,
        "two entries run into each other here",
        "a comma between the entries of a list or map in brackets");
  }

  /**
   * A text that goes on behind a quotation mark: the mark was meant to open what follows, or one is
   * missing before.
   */
  private Optional<UnreadableException> behindAQuote() {
    int end = lines.offset(place);
    EnclosedFile quotes = EnclosedFile.upTo(lines.text(), end);
    boolean behind =
        quotes.quoteFrom() >= 0
            && quotes.quoteTo() <= end
            && lines.text().substring(quotes.quoteTo(), end).isBlank();
    if (!behind) {
      return Optional.empty();
    }
    String quoted = lines.text().substring(quotes.quoteFrom(), quotes.quoteTo());
    boolean swallowed = quoted.contains("\n") || quoted.contains(": ");
    return Optional.of(
        swallowed
            ? openQuote(lines.spot(quotes.quoteFrom()))
            : fault(
                place, "a text goes on behind its closing quotation mark", QUOTED + ", or none"));
  }

  /** Characters that mean something else at the beginning of a value. */
  private Optional<UnreadableException> character() {
    if (lines.line(place.line()).startsWith("%")) {
      return Optional.of(percent(place.line()));
    }
    Matcher first = CANNOT_START.matcher(problem);
    if (problem.startsWith("found character '\\t")) {
      return Optional.of(fault(place, "a tab stands here", "a space"));
    }
    if (first.matches()) {
      return Optional.of(
          fault(place, "a value may not begin with \"" + first.group(1) + "\"", QUOTED));
    }
    if (problem.startsWith("expected a comment or a line break")
        || problem.contains("indentation indicator")) {
      return Optional.of(fault(place, "a value may not begin with \"|\" or \">\"", QUOTED));
    }
    if (problem.startsWith("found unknown escape character")
        || problem.startsWith("expected escape sequence")) {
      return Optional.of(
          fault(
              place,
              "a backslash within double quotation marks",
              "two backslashes, or single quotation marks around the text"));
    }
    if (problem.startsWith("expected alphabetic or numeric character")) {
      return Optional.of(fault(place, "a value may not begin with \"&\", \"*\" or \"!\"", QUOTED));
    }
    if (problem.startsWith("expected '<document start>'")) {
      int above = lines.before(place.line());
      return Optional.of(
          lines.line(above).startsWith("%")
              ? percent(above)
              : fault(
                  place,
                  "the plant has ended before this line",
                  "one plant in a file, without a line \"...\""));
    }
    return Optional.empty();
  }

  private static UnreadableException percent(int line) {
    return fault(
        new SourcePosition(line, 1), "a line may not begin with \"%\"", "the keys of a plant");
  }

  /** Keys, colons, dashes and how far lines are indented. */
  private Optional<UnreadableException> keys() {
    if (problem.startsWith("mapping values are not allowed")) {
      return Optional.of(strayColon());
    }
    if (problem.startsWith("could not find expected ':'")) {
      return Optional.of(noColon(began.line()));
    }
    if (problem.endsWith("sequence entries are not allowed here")) {
      return Optional.of(
          fault(
              place,
              "a list may not begin in the line of its key",
              "its first \"- \" on a line of its own"));
    }
    if (problem.startsWith("expected <block end>, but found")) {
      return Optional.of(
          fault(
              place,
              "the indentation is that of no line above",
              "the same indentation for all keys of a map"));
    }
    return Optional.empty();
  }

  private UnreadableException strayColon() {
    String line = lines.line(place.line());
    String before =
        line.substring(
            0,
            Math.min(
                line.offsetByCodePoints(
                    0, Math.min(place.column() - 1, line.codePointCount(0, line.length()))),
                line.length()));
    if (before.stripLeading().matches("-[^\\s-].*")) {
      return fault(
          new SourcePosition(place.line(), FileLines.indent(line) + 1),
          "no space behind the dash",
          "\"- \" before each entry of a list");
    }
    if (before.contains(": ")) {
      return fault(
          place,
          "a second colon in one line",
          QUOTED + " that holds a colon, or a line for each key");
    }
    int above = lines.before(place.line());
    String key = lines.line(above).strip();
    if (above > 0 && !key.contains(":")) {
      return fault(
          new SourcePosition(above, FileLines.indent(lines.line(above)) + 1),
          "no colon behind " + MessageText.quoted(key),
          "a key, a colon and a space");
    }
    return fault(
        place,
        "the line is indented further than the one before, which has its value already",
        "the same indentation for all keys of a map");
  }

  private UnreadableException noColon(int number) {
    String line = lines.line(number);
    SourcePosition at = new SourcePosition(number, FileLines.indent(line) + 1);
    String said = line.replaceFirst("\\s#.*", "").strip();
    if (NO_SPACE.matcher(said).matches()) {
      return fault(
          at,
          "no space behind the colon of " + MessageText.quoted(said),
          "a key, a colon and a space");
    }
    return fault(at, "no colon in " + MessageText.quoted(said), "a key, a colon and a space");
  }

  private static UnreadableException fault(SourcePosition at, String said, String expected) {
    return new UnreadableException(at, said, expected);
  }

  private static SourcePosition placeOf(String text, int position) {
    int end =
        text.offsetByCodePoints(
            0, Math.min(Math.max(position, 0), text.codePointCount(0, text.length())));
    String before = text.substring(0, end);
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    return new SourcePosition(line, end - (before.lastIndexOf('\n') + 1) + 1);
  }
}
