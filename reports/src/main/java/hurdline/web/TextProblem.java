package hurdline.web;

import hurdline.problem.LocatedProblem;
import java.util.List;

/**
 * A problem or warning with its place in a text.
 *
 * @param warning whether it may well be meant
 * @param from where it begins, in characters from the top; -1 where no line holds it
 * @param to behind its word
 * @param text what is said, without the place
 * @param fix the known word that was probably meant in its place; empty where there is none
 */
record TextProblem(
    boolean warning, int line, int from, int to, String path, String text, String fix) {
  /** Where lines end in YAML; an editor shows the last three within one line. */
  private static final String LINE_END = "[\n\u0085\u2028\u2029]";

  private static final String ENDS_A_VALUE = ",}]#\"'";

  static List<TextProblem> of(List<LocatedProblem> problems, String text) {
    String[] lines = text.split(LINE_END, -1);
    int[] begins = new int[lines.length];
    for (int i = 1; i < lines.length; i++) {
      begins[i] = begins[i - 1] + lines[i - 1].length() + 1;
    }
    return problems.stream().map(problem -> of(problem, lines, begins)).toList();
  }

  private static TextProblem of(LocatedProblem problem, String[] lines, int[] begins) {
    boolean warning = problem.severity() == LocatedProblem.Severity.WARNING;
    int line = problem.line();
    if (line < 1 || line > lines.length) {
      return new TextProblem(warning, 0, -1, -1, problem.path(), said(problem), "");
    }
    String said = lines[line - 1];
    int points = Math.max(0, problem.column() - 1);
    int begin =
        points > said.codePointCount(0, said.length())
            ? said.length()
            : said.offsetByCodePoints(0, points);
    int end = end(said, begin);
    String word = said.substring(begin, end);
    boolean fixable = !problem.nearest().isEmpty() && word.matches("[A-Za-z0-9_-]+");
    int at = begins[line - 1];
    return new TextProblem(
        warning,
        line,
        at + begin,
        at + end,
        problem.path(),
        said(problem),
        fixable ? problem.nearest() : "");
  }

  private static String said(LocatedProblem problem) {
    LocatedProblem alone =
        new LocatedProblem(
            problem.severity(),
            "",
            0,
            0,
            problem.path(),
            problem.found(),
            problem.expected(),
            problem.nearest(),
            problem.change());
    return alone.text();
  }

  /** Behind the key, word or amount that begins here. */
  private static int end(String line, int begin) {
    int end = begin;
    while (end < line.length()
        && ENDS_A_VALUE.indexOf(line.charAt(end)) < 0
        && !isColon(line, end)) {
      end++;
    }
    while (end > begin && line.charAt(end - 1) == ' ') {
      end--;
    }
    return Math.max(end, Math.min(line.length(), begin + 1));
  }

  private static boolean isColon(String line, int at) {
    return line.charAt(at) == ':' && (at + 1 == line.length() || line.charAt(at + 1) == ' ');
  }
}
