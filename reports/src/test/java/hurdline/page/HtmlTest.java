package hurdline.page;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.chart.kit.Chart;
import java.util.List;
import org.junit.jupiter.api.Test;

class HtmlTest {
  private static String column(String... cells) {
    List<List<String>> rows = List.of(cells).stream().map(cell -> List.of("row", cell)).toList();
    return new Html().table("t", new Chart.Grid(List.of("what", "is"), rows)).toString();
  }

  @Test
  void numbersWithUnitsAndIntervalsStandToTheRight() {
    for (String cell :
        List.of(
            "-1.234,5",
            "0.8 yr (0.4 to 1.1)",
            "36 (5 or more; no upper limit)",
            "3 of 40",
            "0 % (0 to 71 %)",
            "1.2 ton/h",
            "56.4 to 57.3")) {
      assertThat(column(cell))
          .as(cell)
          .contains("<th scope=\"col\" class=\"n\">is<", "<td class=\"n\">");
    }
  }

  @Test
  void aTextThatBeginsWithANumberStandsToTheLeft() {
    for (String cell :
        List.of(
            "75 hp mill in place of the 25 hp one",
            "10 % more power",
            "51 min longer, from 05:09")) {
      assertThat(column(cell))
          .as(cell)
          .contains("<th scope=\"col\">is<")
          .doesNotContain("class=\"n\"");
    }
  }

  @Test
  void aWordInPlaceOfANumberStandsWhereTheNumberWould() {
    assertThat(column("12.4", "none", "11.9")).contains("<td class=\"r\">none<");
  }

  @Test
  void aNumberAmongTextsStandsWithThem() {
    assertThat(column("sweetgum-bend.yaml", "base", "40")).contains("<td>40<");
  }

  @Test
  void aLongTextGetsRoomAndAShortOneNone() {
    assertThat(column("a feeder and a cleaner of its own")).contains("<td class=\"t\">a feeder");
    assertThat(column("base")).contains("<td>base");
    String long24 = "a row of more than 24 letters";
    Chart.Grid grid = new Chart.Grid(List.of(long24, "is"), List.of(List.of(long24, "1")));
    assertThat(new Html().table("t", grid).toString())
        .contains("<th scope=\"col\" class=\"t\">a row", "<th scope=\"row\" class=\"t\">a row")
        .contains("<th scope=\"col\" class=\"n\">is");
  }

  @Test
  void theHeadOfAColumnMayGoOnWhereItsPartsJoinAndStaysText() {
    Chart.Grid grid =
        new Chart.Grid(
            List.of("what", "big_mill+<b> %", "end_"), List.of(List.of("row", "1", "2")));
    assertThat(new Html().table("t", grid).toString())
        .contains(">big_<wbr>mill+<wbr>&lt;b&gt; %<", ">end_<")
        .doesNotContain("<b>");
  }
}
