package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What-ifs from the call to the files, with the real engine. */
class WhatIfCommandTest {
  private static final String SMALL = "../line-configs/small.yaml";
  private static final String WAGE = "money.wage=x1.2";
  private static final String POWER = "machines.mill.power=30 hp";
  private static final String SEASON = "season.0.to=-4w";

  @TempDir private Path dir;

  private CommandCall call(String verb, String out, String... flags) {
    List<String> args =
        new java.util.ArrayList<>(
            List.of(verb, SMALL, "--out", dir.resolve(out).toString(), "--replications", "3"));
    args.addAll(List.of(flags));
    CommandCall call = CommandCall.of(args.toArray(String[]::new));
    assertThat(call.code()).as(call.err()).isZero();
    return call;
  }

  /** By plant and replication. */
  private Map<String, Double> margins(String out) throws IOException {
    List<String> lines = Files.readAllLines(dir.resolve(out).resolve("measures.csv"));
    List<String> head = List.of(lines.get(0).split(","));
    Map<String, Double> margins = new LinkedHashMap<>();
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",");
      if (cells[head.indexOf("measure")].equals("money.margin")) {
        margins.put(
            cells[head.indexOf("alternative")] + " " + cells[head.indexOf("replication")],
            Double.parseDouble(cells[head.indexOf("value")]));
      }
    }
    return margins;
  }

  @Test
  void measuresOfAWhatIfAreThoseOfARunWithTheSameValueSet() throws IOException {
    CommandCall answer = call("compare", "compare", "--what-if", WAGE, "--what-if", SEASON);
    Map<String, Double> compared = margins("compare");
    call("run", "base");
    for (String whatIf : List.of(WAGE, SEASON)) {
      String folder = whatIf.substring(0, whatIf.indexOf('.'));
      call("run", folder, "--set", whatIf);
      margins("base").forEach((at, margin) -> assertThat(compared).containsEntry(at, margin));
      margins(folder)
          .forEach(
              (at, margin) ->
                  assertThat(compared).containsEntry(at.replace("base", whatIf), margin));
    }
    assertThat(compared).hasSize(9);
    assertThat(answer.out())
        .contains("Wage x1.2 lowers the margin by ")
        .doesNotContain("pay")
        .doesNotContain("net present value")
        .doesNotContain("Ranked");
    assertThat(dir.resolve("compare").resolve("service_lives.csv")).content().hasLineCount(1);
    String page = Files.readString(dir.resolve("compare").resolve("report.html"));
    assertThat(page)
        .contains("Wage x1.2")
        .doesNotContain("Does it pay")
        .contains("2 alternatives have no cost");
    Path again = dir.resolve("again");
    CommandCall made =
        CommandCall.of(
            "page",
            dir.resolve("compare").resolve("record.json").toString(),
            "--out",
            again.toString());
    assertThat(made.code()).as(made.err()).isZero();
    assertThat(again.resolve("report.html"))
        .hasSameTextualContentAs(dir.resolve("compare").resolve("report.html"));
    Path german = dir.resolve("german");
    CommandCall.of(
        "page",
        dir.resolve("compare").resolve("record.json").toString(),
        "--locale",
        "de",
        "--out",
        german.toString());
    assertThat(german.resolve("report.html"))
        .content()
        .contains("Wage x1,2")
        .contains("last day of season entry 0 -4w")
        .doesNotContain("age x1.2");
  }

  @Test
  void moreThanThreeAlternativesBeginWithOneRankedTable() throws IOException {
    CommandCall answer =
        call(
            "compare",
            "ranked",
            "--service-lives",
            "2",
            "--among",
            "bigger_mill",
            "--what-if",
            WAGE,
            "--what-if",
            POWER,
            "--what-if",
            "money.wage=x0.5; machines.mill.power=30 hp");
    List<String> lines = answer.out().lines().toList();
    int at = lines.indexOf("Ranked by margin, against the plant as it stands");
    assertThat(at).isPositive().isLessThan(lines.indexOf("The plant as it stands"));
    List<String> ranked = lines.subList(at + 2, lines.indexOf("The plant as it stands"));
    assertThat(ranked.get(0)).startsWith("Wage x0.5 and");
    assertThat(answer.out())
        .contains("Wage x0.5 and power of the hammer mill at 30 hp raise the margin by ");
    assertThat(ranked.stream().filter(line -> line.startsWith("Wage x1.2"))).hasSize(1);
    assertThat(lines.subList(at, at + ranked.size())).allMatch(line -> line.length() <= 80);
    String page = Files.readString(dir.resolve("ranked").resolve("report.html"));
    assertThat(page).contains("alternatives by difference from the plant as it stands");
  }

  @Test
  void aGridSetsWhatIfsSideBySide() throws IOException {
    CommandCall answer =
        call("compare", "grid", "--what-if", WAGE, "--vary", "season.0.to=-2w..+0d..1wk");
    assertThat(Files.readString(dir.resolve("grid").resolve("grid.csv")))
        .contains(WAGE)
        .contains("-14");
    assertThat(answer.out()).contains("wage x1.2");
  }
}
