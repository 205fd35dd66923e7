package hurdline.text;

import hurdline.answer.BottleneckRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.CompareAnswer.Option;
import hurdline.answer.DifferenceRow;
import hurdline.answer.Outline;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Many alternatives in one table, the greatest margin first: how far it differs, what is fed, and
 * what limits each line then.
 */
public final class RankedAlternatives {
  private static final int FEW = 3;

  private final CompareAnswer answer;
  private final Wording wording;
  private final Titles titles;

  public RankedAlternatives(CompareAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    this.titles = wording.reading(answer).titles();
  }

  /** Whether there are so many that one looks for the best. */
  public boolean isWanted() {
    return answer.options().size() > FEW && !ranked().isEmpty();
  }

  /** For a terminal of so many columns: a row each, and under it what is fed and what limits. */
  public List<String> lines(int width) {
    List<MainTable.Row> rows = new ArrayList<>();
    String by = isMoney() ? "margin" : fedOf(firstLine());
    for (Option option : ranked()) {
      DifferenceRow row = difference(option).orElseThrow();
      rows.add(difference(name(option), row));
      fed(option).stream()
          .filter(other -> isMoney())
          .forEach(other -> rows.add(difference("  " + crop(other) + " fed", other)));
      limits(option)
          .forEach(limit -> rows.add(MainTable.Row.text("", "  limited by", limit, "count")));
    }
    List<String> lines = new ArrayList<>();
    lines.add("Ranked by " + by + ", against the plant as it stands");
    lines.addAll(new MainTable(rows, "difference", wording).lines(width));
    return lines;
  }

  /** The names of the columns of {@link #grid}. */
  public List<String> head() {
    List<String> head =
        new ArrayList<>(
            List.of(
                "",
                (isMoney() ? "margin" : fedOf(firstLine())) + " difference",
                "unit",
                "95 % interval",
                "limited by"));
    if (isMoney()) {
      lines().forEach(line -> head.add(fedOf(line) + " difference"));
    }
    return head;
  }

  /** For a page: a row each. */
  public List<List<String>> grid() {
    List<List<String>> rows = new ArrayList<>();
    for (Option option : ranked()) {
      MainTable table =
          new MainTable(
              List.of(difference(name(option), difference(option).orElseThrow())), wording);
      MainTable.Cells cells = table.cells().get(0);
      List<String> row =
          new ArrayList<>(
              List.of(
                  cells.label(),
                  cells.mean(),
                  cells.unit(),
                  cells.interval(),
                  String.join("; ", limits(option))));
      if (isMoney()) {
        lines()
            .forEach(
                line ->
                    row.add(
                        answer
                            .difference(option.name(), Measure.MASS_FED.of(line.crop()))
                            .map(this::inOne)
                            .orElse("")));
      }
      rows.add(row);
    }
    return rows;
  }

  private String inOne(DifferenceRow row) {
    MainTable.Cells cells = new MainTable(List.of(difference("", row)), wording).cells().get(0);
    return cells.mean() + " " + cells.unit();
  }

  /** The greatest difference first; alternatives without one are left out. */
  private List<Option> ranked() {
    return answer.options().stream()
        .filter(option -> difference(option).isPresent())
        .sorted(
            Comparator.comparingDouble(
                    (Option option) -> difference(option).orElseThrow().difference())
                .reversed())
        .toList();
  }

  private boolean isMoney() {
    return answer.differences().stream()
        .anyMatch(row -> row.measure().equals(Measure.MONEY_MARGIN.of()));
  }

  private Optional<DifferenceRow> difference(Option option) {
    return answer.difference(
        option.name(),
        isMoney() ? Measure.MONEY_MARGIN.of() : Measure.MASS_FED.of(firstLine().crop()));
  }

  private List<DifferenceRow> fed(Option option) {
    return lines().stream()
        .flatMap(
            line -> answer.difference(option.name(), Measure.MASS_FED.of(line.crop())).stream())
        .toList();
  }

  /** What limits each line longest. */
  private List<String> limits(Option option) {
    List<String> limits = new ArrayList<>();
    for (Outline.Line line : answer.outline().lines()) {
      Optional<BottleneckRow> first =
          answer.holdersOf(option.name()).stream()
              .filter(row -> row.line().equals(line.name()) && row.share() > 0)
              .max(Comparator.comparingDouble(BottleneckRow::share));
      String of =
          answer.outline().lines().size() > 1
              ? " (" + Titles.inText(titles.line(line.name())) + ")"
              : "";
      first.ifPresent(
          row ->
              limits.add(
                  CauseWords.by(row.cause(), titles)
                      + ", "
                      + wording.fixed(row.share(), 0, "share")
                      + " %"
                      + of));
    }
    return limits;
  }

  private static MainTable.Row difference(String label, DifferenceRow row) {
    return MainTable.Row.difference(
        "",
        label,
        row.unit(),
        MainTable.Figures.of(row.difference(), row.lowJoint(), row.highJoint()));
  }

  private String name(Option option) {
    return SpokenNames.upper(titles.option(option.name()));
  }

  private Outline.Line firstLine() {
    return answer.outline().lines().get(0);
  }

  /** A line of each crop. */
  private List<Outline.Line> lines() {
    List<String> crops = new ArrayList<>();
    List<Outline.Line> lines = new ArrayList<>();
    for (Outline.Line line : answer.outline().lines()) {
      if (!crops.contains(line.crop())) {
        crops.add(line.crop());
        lines.add(line);
      }
    }
    return lines;
  }

  private String fedOf(Outline.Line line) {
    return Titles.inText(titles.crop(line.crop())) + " fed";
  }

  private String crop(DifferenceRow row) {
    return lines().stream()
        .filter(line -> Measure.MASS_FED.of(line.crop()).equals(row.measure()))
        .map(line -> Titles.inText(titles.crop(line.crop())))
        .findFirst()
        .orElseThrow();
  }
}
