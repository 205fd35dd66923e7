package hurdline.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the lines of a file end, each for itself: an editor shows none of it, and a line that nobody
 * has edited is saved as it was.
 */
final class LineEnds {
  private static final Pattern END = Pattern.compile("\r\n|\r|\n");

  /** Of more lines that differ than this only those above and below all of them are found again. */
  private static final int MOST_DIFFERENT = 2000;

  private final List<String> lines = new ArrayList<>();
  private final List<String> ends = new ArrayList<>(); // one fewer: the last line has none

  private LineEnds(String text) {
    Matcher end = END.matcher(text);
    int from = 0;
    while (end.find()) {
      lines.add(text.substring(from, end.start()));
      ends.add(end.group());
      from = end.end();
    }
    lines.add(text.substring(from));
  }

  /** A text as an editor has it. */
  static String plain(String text) {
    return END.matcher(text).replaceAll("\n");
  }

  /**
   * A text with the ends of the lines that it has of a file; a new line ends like the one above.
   *
   * @param now as an editor has it
   */
  static String asIn(String file, String now) {
    LineEnds was = new LineEnds(file);
    if (was.ends.isEmpty()) {
      return now;
    }
    String end = was.ends.get(0);
    if (new HashSet<>(was.ends).size() == 1) {
      return now.replace("\n", end);
    }
    List<String> lines = List.of(now.split("\n", -1));
    int[] found = sameLines(was.lines, lines);
    StringBuilder text = new StringBuilder(lines.get(0));
    for (int line = 1; line < lines.size(); line++) {
      int above = found[line - 1];
      end = above >= 0 && above < was.ends.size() ? was.ends.get(above) : end;
      text.append(end).append(lines.get(line));
    }
    return text.toString();
  }

  /**
   * Which line of the one text each line of the other is, -1 for a new one, by the fewest edits.
   *
   * @see "Myers, An O(ND) difference algorithm and its variations, Algorithmica 1 (1986), from
   *     memory"
   */
  private static int[] sameLines(List<String> was, List<String> now) {
    int[] found = new int[now.size()];
    Arrays.fill(found, -1);
    int most = Math.min(MOST_DIFFERENT, was.size() + now.size());
    int zero = most + 1; // place of diagonal 0: lines of the file less lines of the text
    int[] farthest = new int[2 * most + 3];
    List<int[]> before = new ArrayList<>();
    for (int edits = 0; edits <= most; edits++) {
      before.add(Arrays.copyOfRange(farthest, zero - edits - 1, zero + edits + 2));
      for (int diagonal = -edits; diagonal <= edits; diagonal += 2) {
        int at = from(before.get(edits), edits, diagonal);
        while (isSame(was, at, now, at - diagonal)) {
          at++;
        }
        farthest[zero + diagonal] = at;
        if (at >= was.size() && at - diagonal >= now.size()) {
          walkBack(before, diagonal, at, found);
          return found;
        }
      }
    }
    matchEnds(was, now, found);
    return found;
  }

  private static boolean isSame(List<String> was, int at, List<String> now, int of) {
    return at < was.size() && of < now.size() && was.get(at).equals(now.get(of));
  }

  /** Lines of the file behind the next edit, which leaves one out or puts one in. */
  private static int from(int[] farthest, int edits, int diagonal) {
    if (edits == 0) {
      return 0;
    }
    int middle = edits + 1 + diagonal;
    return isPutIn(farthest, edits, diagonal) ? farthest[middle + 1] : farthest[middle - 1] + 1;
  }

  private static boolean isPutIn(int[] farthest, int edits, int diagonal) {
    int middle = edits + 1 + diagonal;
    return diagonal == -edits || diagonal != edits && farthest[middle - 1] < farthest[middle + 1];
  }

  private static void walkBack(List<int[]> before, int last, int end, int[] found) {
    int diagonal = last;
    int at = end;
    for (int edits = before.size() - 1; edits >= 0; edits--) {
      int[] farthest = before.get(edits);
      int begin = from(farthest, edits, diagonal);
      for (; at > begin; at--) {
        found[at - 1 - diagonal] = at - 1;
      }
      if (edits > 0) {
        boolean isPutIn = isPutIn(farthest, edits, diagonal);
        at = isPutIn ? begin : begin - 1;
        diagonal += isPutIn ? 1 : -1;
      }
    }
  }

  private static void matchEnds(List<String> was, List<String> now, int[] found) {
    int above = 0;
    while (isSame(was, above, now, above)) {
      found[above] = above;
      above++;
    }
    int shift = was.size() - now.size();
    for (int line = now.size() - 1;
        line >= above && line + shift >= above && now.get(line).equals(was.get(line + shift));
        line--) {
      found[line] = line + shift;
    }
  }
}
