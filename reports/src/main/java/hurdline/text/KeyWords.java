package hurdline.text;

import hurdline.answer.GridAnswer;
import hurdline.answer.GridCell;
import hurdline.answer.GridKey;
import hurdline.answer.Header;
import hurdline.answer.KeyNames;
import hurdline.answer.Titles;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The keys, values and cells of a grid in words: values in the units in which they were asked for,
 * with the reader's marks.
 */
public final class KeyWords {
  private final GridAnswer answer;
  private final Wording wording;

  public KeyWords(GridAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** What stands at an axis: what is varied, and how its values are to be read. */
  public String axis(int key) {
    GridKey of = answer.keys().get(key);
    return switch (of.scale()) {
      case AMOUNT -> read(key) + (of.unit().isEmpty() ? "" : ", " + of.unit());
      case FACTOR -> read(key) + ", times what the file says";
      case DATE -> read(key) + ", date";
    };
  }

  /** {@code power of the hammer mill}. */
  public String read(int key) {
    return KeyNames.of(answer.keys().get(key).path(), wording.titles());
  }

  /** {@code power of the hammer mill from 20 hp to 80 hp}. */
  public String range(int key) {
    List<String> values = values(key);
    return read(key) + " from " + values.get(0) + " to " + values.get(values.size() - 1);
  }

  /** The values of a key as people read them. */
  public List<String> values(int key) {
    GridKey of = answer.keys().get(key);
    return of.values().stream()
        .map(
            value ->
                of.scale() == GridKey.Scale.DATE
                    ? wording.date(LocalDate.parse(value.text()))
                    : wording.marks(value.text()))
        .toList();
  }

  /** A cell's value of a key. */
  public String value(int cell, int key) {
    return values(key).get(answer.cells().get(cell).at().get(key));
  }

  /** The keys with their first and last values. */
  public String ranges() {
    return IntStream.range(0, answer.keys().size())
        .mapToObj(this::range)
        .collect(Collectors.joining(" and "));
  }

  /** A plant of the grid within a sentence: an option, or a season plan. */
  public String plant(String name) {
    return Titles.inText(plantTitle(name));
  }

  /** The same by itself, in a legend or a table. */
  public String plantTitle(String name) {
    return answer.called().equals("plan")
        ? wording.titles().plan(name)
        : wording.titles().option(name);
  }

  public String plants(List<String> names) {
    return names.stream().map(this::plant).collect(Collectors.joining(", "));
  }

  /** {@code the plant as it stands}, or {@code the plant as it stands against A, B}. */
  String plants() {
    List<String> others = answer.plants().subList(1, answer.plants().size());
    return plant(answer.plants().get(0)) + (others.isEmpty() ? "" : " against " + plants(others));
  }

  /** The plants in the head of a page. */
  public String subjects() {
    return answer.plants().stream().map(this::plant).collect(Collectors.joining(" against "));
  }

  /** What a page says under the plant's name. */
  public String subtitle() {
    Header header = answer.header();
    boolean bare = answer.plants().equals(List.of("base"));
    String changes =
        header.changes().isEmpty() ? "" : ", changed: " + ChangeWords.of(header.changes(), ", ");
    return (bare ? "The plant as it stands" : capital(plants()))
        + changes
        + ", over "
        + ranges()
        + ". "
        + wording.span(header.from(), header.to())
        + ".";
  }

  /**
   * A sentence's first word; a name of the file with more than letters keeps them as they are
   * there.
   */
  static String capital(String text) {
    if (text.split(" ", 2)[0].contains("_")) {
      return text;
    }
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** The value as a tick of an axis that names the unit already. */
  public String tick(int key, int value) {
    GridKey of = answer.keys().get(key);
    String text = values(key).get(value);
    return of.scale() == GridKey.Scale.AMOUNT && !of.unit().isEmpty()
        ? text.substring(0, text.length() - of.unit().length()).strip()
        : text;
  }

  /** The values of a cell: {@code 20 hp}, or with two keys {@code power 20 hp, count 2}. */
  public String cell(int cell) {
    if (answer.keys().size() == 1) {
      return value(cell, 0);
    }
    return IntStream.range(0, answer.keys().size())
        .mapToObj(key -> name(key) + " " + value(cell, key))
        .collect(Collectors.joining(", "));
  }

  /** The last word of a path, or what it is of where both would be the same. */
  public String name(int key) {
    List<String> last =
        answer.keys().stream()
            .map(of -> of.path().substring(of.path().lastIndexOf('.') + 1))
            .toList();
    boolean clear = last.stream().distinct().count() == last.size() && !last.get(key).equals("*");
    return clear ? Titles.ofName(last.get(key)) : read(key);
  }

  /** A value between those of a key, to one digit more than they have. */
  public String between(int key, double number) {
    GridKey of = answer.keys().get(key);
    if (of.scale() == GridKey.Scale.DATE) {
      return wording.date(LocalDate.ofEpochDay(Math.round(number)));
    }
    int digits =
        1
            + of.values().stream()
                .filter(value -> value.number() != 0)
                .mapToInt(value -> BigDecimal.valueOf(value.number()).stripTrailingZeros().scale())
                .max()
                .orElse(0);
    String text =
        wording.marks(
            new BigDecimal(number)
                .setScale(digits, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString());
    if (of.scale() == GridKey.Scale.FACTOR) {
      return "x" + text;
    }
    return of.unit().isEmpty() ? text : text + " " + of.unit();
  }

  /**
   * Cells of one key in rising order, those without a gap drawn together: {@code 20 hp to 40 hp}.
   */
  public String runs(List<Integer> cells) {
    List<String> parts = new ArrayList<>();
    int at = 0;
    while (at < cells.size()) {
      int end = at;
      while (end + 1 < cells.size() && cells.get(end + 1) == cells.get(end) + 1) {
        end++;
      }
      String first = cell(cells.get(at));
      parts.add(
          end == at ? first : first + (end == at + 1 ? " and " : " to ") + cell(cells.get(end)));
      at = end + 1;
    }
    return String.join(", ", parts);
  }

  /** Whether two cells lie beside each other in one key and level in the other. */
  public boolean areNeighbours(int one, int other) {
    int steps = 0;
    for (int key = 0; key < answer.keys().size(); key++) {
      steps +=
          Math.abs(answer.cells().get(one).at().get(key) - answer.cells().get(other).at().get(key));
    }
    return steps == 1;
  }

  /**
   * Whether a cell lies at an end of the values of some key, and the cell before that end is not
   * among those that are like it or left out: what rises may rise on.
   */
  public boolean mayRiseOn(int cell, List<Integer> alike) {
    List<Integer> at = answer.cells().get(cell).at();
    for (int key = 0; key < at.size(); key++) {
      int last = answer.keys().get(key).values().size() - 1;
      if (last > 0 && (at.get(key) == 0 || at.get(key) == last)) {
        List<Integer> inward = new ArrayList<>(at);
        inward.set(key, at.get(key) == 0 ? 1 : last - 1);
        int before = answer.cells().stream().map(GridCell::at).toList().indexOf(inward);
        if (!alike.contains(before) && answer.cells().get(before).leftOut().isEmpty()) {
          return true;
        }
      }
    }
    return false;
  }
}
