package hurdline.records;

import hurdline.plant.Nearest;
import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import hurdline.records.RecordKind.Column;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds what each column of a file is, by its head: in any order and case, with a unit behind it or
 * not.
 */
final class HeadReader {
  private static final Pattern IN_BRACKETS =
      Pattern.compile("^(.*?)[\\s_]*[(\\[]([^)\\]]{1,20})[)\\]]$");
  private static final Pattern UNIT_BEHIND =
      Pattern.compile(
          "^(.+?)[\\s_]+(kg|lb|lbs|t|ton|tons|mm|in|min|h|hours|%|percent)$",
          Pattern.CASE_INSENSITIVE);

  private final RecordKind kind;
  private final Map<String, String> called;
  private final Map<String, Integer> at = new LinkedHashMap<>();
  private final Map<String, String> units = new HashMap<>();
  private final Map<String, Integer> others = new LinkedHashMap<>();

  /**
   * @param called heads of this file by the column that they mean, as {@code records.yaml} has them
   */
  private HeadReader(RecordKind kind, Map<String, String> called) {
    this.kind = kind;
    this.called = called;
  }

  /**
   * @throws ProblemsException if a column that is needed is not there, or two heads mean one
   */
  static RecordTable table(RecordKind kind, String name, String text, Map<String, String> called) {
    CsvRows csv = CsvRows.of(name, text);
    HeadReader reader = new HeadReader(kind, called);
    List<LocatedProblem> problems = reader.read(name, csv.head());
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
    return new RecordTable(
        kind, name, csv.separator(), reader.at, reader.units, reader.others, csv.rows());
  }

  private List<LocatedProblem> read(String name, Row head) {
    List<LocatedProblem> problems = new ArrayList<>();
    for (int i = 0; i < head.size(); i++) {
      String title = head.cell(i);
      Optional<Column> column = title.isEmpty() ? Optional.empty() : column(title);
      if (column.isEmpty()) {
        others.put(title.isEmpty() ? "column " + (i + 1) : title, i);
      } else if (at.putIfAbsent(column.get().name(), i) != null) {
        problems.add(
            LocatedProblem.at(
                name,
                head.line(),
                "two columns are \""
                    + column.get().name()
                    + "\", the second headed \""
                    + title
                    + "\"",
                "one of them, or \"columns\" of records.yaml that says which",
                column.get().name()));
      } else {
        unit(title).ifPresent(unit -> units.put(column.get().name(), unit));
      }
    }
    missing(name, head, problems);
    return problems;
  }

  private void missing(String name, Row head, List<LocatedProblem> problems) {
    for (Column column : kind.columns()) {
      boolean fromDuration =
          kind == RecordKind.SHIFTS && column.name().equals("to") && at.containsKey("hours paid");
      if (column.isRequired() && !at.containsKey(column.name()) && !fromDuration) {
        Optional<String> near =
            others.keySet().stream()
                .filter(o -> Nearest.to(o.toLowerCase(Locale.ROOT), words(column)).isPresent())
                .findFirst();
        problems.add(
            LocatedProblem.at(
                name,
                head.line(),
                "no column is \""
                    + column.name()
                    + "\""
                    + near.map(o -> "; \"" + o + "\" may be it").orElse(""),
                "a head \""
                    + column.name()
                    + "\""
                    + (column.words().isEmpty()
                        ? ""
                        : " (or " + String.join(", ", column.words()) + ")")
                    + ", or \"columns: {"
                    + column.name()
                    + ": ITS HEAD}\" in records.yaml",
                near.orElse("")));
      }
    }
  }

  private static List<String> words(Column column) {
    List<String> words = new ArrayList<>(column.words());
    words.add(column.name());
    return words;
  }

  /**
   * Heads named in records.yaml first, then whole heads, heads less a unit, and heads that end in
   * several words of a column.
   */
  private Optional<Column> column(String title) {
    for (Map.Entry<String, String> own : called.entrySet()) {
      if (plain(own.getValue()).equals(plain(title))) {
        return kind.columns().stream()
            .filter(column -> column.name().equals(own.getKey()))
            .findFirst();
      }
    }
    return whole(title).or(() -> whole(bare(title))).or(() -> ending(bare(title)));
  }

  private Optional<Column> whole(String title) {
    String plain = plain(title);
    return kind.columns().stream()
        .filter(column -> !called.containsKey(column.name()))
        .filter(column -> words(column).stream().anyMatch(word -> plain(word).equals(plain)))
        .findFirst();
  }

  private Optional<Column> ending(String title) {
    String plain = plain(title);
    return kind.columns().stream()
        .filter(column -> !called.containsKey(column.name()))
        .filter(
            column ->
                words(column).stream()
                    .anyMatch(word -> word.contains(" ") && plain.endsWith(plain(word))))
        .findFirst();
  }

  /** The head without a unit behind it. */
  private static String bare(String title) {
    Matcher brackets = IN_BRACKETS.matcher(title);
    if (brackets.matches()) {
      return brackets.group(1);
    }
    Matcher behind = UNIT_BEHIND.matcher(title);
    return behind.matches() ? behind.group(1) : title;
  }

  private static Optional<String> unit(String title) {
    Matcher brackets = IN_BRACKETS.matcher(title);
    if (brackets.matches()) {
      return Optional.of(brackets.group(2).strip());
    }
    Matcher behind = UNIT_BEHIND.matcher(title);
    return behind.matches() ? Optional.of(behind.group(2)) : Optional.empty();
  }

  static String plain(String word) {
    return word.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}%]", "");
  }
}
