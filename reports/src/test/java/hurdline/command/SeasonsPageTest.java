package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.service.EngineStudies;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What SEASONS.md says of each question is what the program answers: tables to the digit, sentences
 * to the letter.
 */
class SeasonsPageTest {
  private static final Path CONFIGS = Path.of(System.getProperty("hurdline.root"), "line-configs");
  private static final Pattern NUMBER = Pattern.compile("-?[0-9][0-9,]*");
  private static final int YEARS = 40;

  @TempDir Path dir;

  /** One question: its file, the header of its table, a row for each plan, and what is quoted. */
  private record Section(
      String file, List<String> head, List<List<String>> rows, List<String> quotes) {
    @Override
    public String toString() {
      return file;
    }
  }

  static List<Section> sections() throws IOException {
    List<Section> all = new ArrayList<>();
    for (String part : Files.readString(CONFIGS.resolve("SEASONS.md")).split("\n## ")) {
      Matcher file = Pattern.compile("`(seasons/[a-z_]+\\.yaml)`").matcher(part);
      if (file.find()) {
        List<List<String>> rows =
            part.lines()
                .filter(line -> line.startsWith("|") && !line.startsWith("|---"))
                .map(SeasonsPageTest::cells)
                .toList();
        List<String> quotes =
            part.lines()
                .filter(line -> line.startsWith("> "))
                .map(line -> line.substring(2))
                .toList();
        all.add(new Section(file.group(1), rows.get(0), rows.subList(1, rows.size()), quotes));
      }
    }
    return all;
  }

  private static List<String> cells(String line) {
    return Arrays.stream(line.substring(1, line.lastIndexOf('|')).split("\\|"))
        .map(String::strip)
        .toList();
  }

  @Test
  void thePageHasASectionForEachFile() throws IOException {
    assertThat(sections())
        .hasSize(9)
        .allMatch(section -> section.rows().size() > 2 && section.quotes().size() == 2);
  }

  @ParameterizedTest
  @MethodSource("sections")
  @Tag("proof")
  void theFiguresAreThoseOfThePage(Section section) throws IOException {
    Path answer = simulate(section.file(), YEARS);
    String page = plain(Files.readString(answer.resolve("report.html")));
    assertThat(section.quotes()).allSatisfy(quote -> assertThat(page).contains(quote));
    Map<String, double[]> figures = figures(answer);
    for (List<String> row : section.rows()) {
      String plan = row.get(0).replace("`", "");
      for (int column = 1; column < row.size(); column++) {
        String head = section.head().get(column);
        assertSame(
            section.file() + " " + plan + " " + head, row.get(column), figure(figures, plan, head));
      }
    }
  }

  /**
   * The plan with the best margin, where the page tells it apart from all others, has it in four
   * years as well.
   */
  @Test
  void theBestPlanOfAClearQuestionIsBestInAFewYears() throws IOException {
    Section late = sections().get(2);
    Map<String, double[]> figures = figures(simulate(late.file(), 4));
    double best = figures.get("late_stalks_on money.margin")[0];
    assertThat(late.quotes().get(0)).startsWith("The plan \"Late stalks on\" earns the most: ");
    for (String other : List.of("base", "late_as_planned", "late_at_home")) {
      assertThat(figures.get(other + " money.margin")[0]).as(other).isLessThan(best);
    }
  }

  private Path simulate(String file, int years) {
    Path answer = dir.resolve("answer");
    StringWriter said = new StringWriter();
    int exit =
        Hurdline.call(
            new CommandContext(
                new PrintWriter(said, true),
                new PrintWriter(said, true),
                false,
                new EngineStudies()),
            "season",
            CONFIGS.resolve(file).toString(),
            "--replications",
            "" + years,
            "--units",
            "metric",
            "--out",
            answer.toString());
    assertThat(exit).as(said.toString()).isZero();
    return answer;
  }

  private static String plain(String html) {
    return html.replaceAll("<[^>]+>", "")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&amp;", "&");
  }

  /** Mean and interval of each plan and measure. */
  private static Map<String, double[]> figures(Path answer) throws IOException {
    Map<String, double[]> figures = new HashMap<>();
    for (String line : Files.readAllLines(answer.resolve("plans.csv"))) {
      String[] cells = line.split(",", -1);
      if (!cells[0].equals("alternative") && !cells[3].isEmpty()) {
        double[] three =
            Arrays.stream(cells, 3, 6)
                .mapToDouble(c -> c.isEmpty() ? Double.NaN : Double.parseDouble(c))
                .toArray();
        figures.put(cells[0] + " " + cells[1], three);
      }
    }
    return figures;
  }

  private static double[] figure(Map<String, double[]> figures, String plan, String head) {
    return switch (head) {
      case "margin" -> figures.get(plan + " money.margin");
      case "owner" -> figures.get(plan + " money.owner.margin");
      case "tenant" -> figures.get(plan + " money.tenant.margin");
      case "worked h" -> figures.get(plan + " building.hours.staffed");
      case "stalk fed t" -> figures.get(plan + " mass.stalk.fed");
      case "carry-over of stalk, bales" -> figures.get(plan + " season.stalk_line.left_over");
      case "finished of 40" -> new double[] {YEARS * figures.get(plan + " season.finished")[0]};
      case "standing h" -> new double[] {standing(figures, plan)};
      default -> throw new AssertionError("no figure is known for the column " + head);
    };
  }

  private static double standing(Map<String, double[]> figures, String plan) {
    Pattern feeder =
        Pattern.compile(
            Pattern.quote(plan)
                + " machine\\.[a-z_]*feeder\\.crop\\.stalk\\.hours\\.(starved|blocked)");
    return figures.keySet().stream()
        .filter(key -> feeder.matcher(key).matches())
        .mapToDouble(key -> figures.get(key)[0])
        .sum();
  }

  /**
   * Each number of a cell is the figure to the last place that the cell shows in any of its
   * numbers.
   */
  private static void assertSame(String what, String cell, double[] figure) {
    List<String> shown = NUMBER.matcher(cell).results().map(MatchResult::group).toList();
    assertThat(shown.size()).as(what + ": " + cell).isIn(1, 3);
    double least = shown.stream().mapToDouble(SeasonsPageTest::place).min().orElseThrow();
    double place = least < Double.POSITIVE_INFINITY ? least : 1;
    for (int k = 0; k < shown.size(); k++) {
      double number = Double.parseDouble(shown.get(k).replace(",", ""));
      assertThat(number).as(what + ": " + cell).isCloseTo(figure[k], within(place * 0.5000001));
    }
  }

  /** Of the last digit that is not 0; a 0 alone says nothing of its place. */
  private static double place(String number) {
    String digits = number.replace(",", "");
    return digits.matches("-?0")
        ? Double.POSITIVE_INFINITY
        : Math.pow(10, digits.length() - digits.replaceAll("0+$", "").length());
  }
}
