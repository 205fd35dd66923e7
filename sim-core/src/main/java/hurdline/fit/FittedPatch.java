package hurdline.fit;

import hurdline.answer.FitAnswer;
import hurdline.answer.FitRow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * {@code fitted.yaml}: the fitted figures as a patch on the plant file (RFC 7396), each with a
 * comment that says on what it rests.
 */
public final class FittedPatch {
  private static final int COMMENT_AT = 60;

  private FittedPatch() {}

  public static String text(FitAnswer answer) {
    StringBuilder out = new StringBuilder();
    out.append("# Figures of ")
        .append(answer.header().file())
        .append(" from the records in ")
        .append(answer.records())
        .append(", by hurdline ")
        .append(answer.header().version())
        .append(".\n");
    out.append("# Use: hurdline run ")
        .append(answer.header().file())
        .append(" --patch fitted.yaml; or paste it under options: as_recorded: {with: ...}\n");
    out.append("# Records: SHA-256 ")
        .append(answer.recordsHash())
        .append(" of all files. A season that was fitted is no test of the model.\n");
    out.append(
        "# Errors are standard errors of the mean. Figures that the records cannot tell are left out.\n");
    Branch top = new Branch(new LinkedHashMap<>(), null);
    answer.figures().stream().filter(FitRow::isFitted).forEach(row -> top.put(row, 0));
    top.write(out, 0);
    return out.toString();
  }

  /**
   * A key of the patch: with others below it, in the order in which they were first named, or with
   * the value of a figure.
   */
  private record Branch(Map<String, Branch> below, FitRow row) {
    private void put(FitRow figure, int depth) {
      List<String> steps = List.of(figure.key().split("\\."));
      boolean isLast = depth == steps.size() - 1;
      Branch next =
          below.computeIfAbsent(
              steps.get(depth), step -> new Branch(new LinkedHashMap<>(), isLast ? figure : null));
      if (!isLast) {
        next.put(figure, depth + 1);
      }
    }

    private void write(StringBuilder out, int depth) {
      below.forEach(
          (step, branch) -> {
            String line = "  ".repeat(depth) + step + ":";
            if (branch.row == null) {
              out.append(line).append('\n');
              branch.write(out, depth + 1);
            } else {
              line += " " + branch.row.patch();
              out.append(line)
                  .append(" ".repeat(Math.max(2, COMMENT_AT - line.length())))
                  .append("# ")
                  .append(comment(branch.row))
                  .append('\n');
            }
          });
    }
  }

  static String comment(FitRow row) {
    boolean ofStop = row.key().contains(".stops.");
    String kind =
        ofStop && row.key().endsWith(".every")
            ? " stops"
            : ofStop && row.key().endsWith(".lasts") ? " repairs" : " rows";
    List<String> said = new ArrayList<>(List.of(row.ended() + kind));
    if (row.rows() > row.ended()) {
      said.add(row.rows() - row.ended() + " cut short");
    }
    if (!Double.isNaN(row.mean())) {
      said.add("mean drawn " + LawText.digits(row.mean()) + " " + row.unit());
    }
    if (!Double.isNaN(row.errorShare())) {
      said.add(String.format(Locale.ROOT, "error %.1f %%", 100 * row.errorShare()));
    }
    said.add(row.verdict());
    return String.join(", ", said);
  }
}
