package hurdline.fit;

import hurdline.answer.FitAnswer;
import hurdline.answer.FitRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

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
    List<String> open = new ArrayList<>();
    for (FitRow row : answer.figures()) {
      if (row.isFitted()) {
        add(out, open, row);
      }
    }
    return out.toString();
  }

  private static void add(StringBuilder out, List<String> open, FitRow row) {
    List<String> steps = List.of(row.key().split("\\."));
    int same = 0;
    while (same < Math.min(open.size(), steps.size() - 1)
        && open.get(same).equals(steps.get(same))) {
      same++;
    }
    open.subList(same, open.size()).clear();
    for (int depth = same; depth < steps.size() - 1; depth++) {
      out.append("  ".repeat(depth)).append(steps.get(depth)).append(":\n");
      open.add(steps.get(depth));
    }
    String line = "  ".repeat(steps.size() - 1) + steps.get(steps.size() - 1) + ": " + row.patch();
    out.append(line)
        .append(" ".repeat(Math.max(2, COMMENT_AT - line.length())))
        .append("# ")
        .append(comment(row))
        .append('\n');
  }

  static String comment(FitRow row) {
    String kind =
        row.key().endsWith(".every")
            ? " stops"
            : row.key().endsWith(".lasts") ? " repairs" : " rows";
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
