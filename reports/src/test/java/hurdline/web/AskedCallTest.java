package hurdline.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AskedCallTest {
  private static AskedCall of(Question question, String... words) {
    return AskedCall.of(List.of(words), "small.yaml", question);
  }

  @Test
  void whatATerminalWasToldFillsTheFieldsOfThePage() {
    assertThat(
            of(
                Question.COMPARE,
                "compare",
                "--replications",
                "12",
                "my/small.yaml",
                "--among",
                "bigger_mill,second_spout",
                "--service-lives=5",
                "--tornado",
                "--out=x",
                "--units=metric"))
        .isEqualTo(
            new AskedCall(
                Map.of(
                    "among", List.of("bigger_mill", "second_spout"),
                    "lives", "5",
                    "tornado", "true"),
                ""));
    assertThat(of(Question.RUN, "run", "small.yaml", "--option", "a", "--option=b+c").fields())
        .isEqualTo(Map.of("option", List.of("a", "b", "c")));
    assertThat(of(Question.GRID, "run", "small.yaml", "--vary", "a=1,2", "--vary", "b=3").fields())
        .isEqualTo(Map.of("vary", "a=1,2", "vary2", "b=3"));
    assertThat(of(Question.BACKTEST, "backtest", "small.yaml", "last-year").fields())
        .isEqualTo(Map.of("records", "last-year"));
  }

  @Test
  void whatThePageHasNoFieldForIsNamed() {
    assertThat(of(Question.RUN, "run", "small.yaml", "--set", "money.wage=3 USD/h").other())
        .isEqualTo("--set money.wage=3 USD/h");
    assertThat(of(Question.GRID, "compare", "small.yaml", "--vary=a=1,2").other())
        .isEqualTo("compare small.yaml --vary=a=1,2");
  }

  @Test
  void whatTheTerminalSaysIsToldInTheWordsOfThePage() {
    assertThat(
            Question.RUN.told(
                "hurdline: --until \"abc\" names no measure; expected one. See hurdline run --help"))
        .isEqualTo("\"Go on until known to\" \"abc\" names no measure; expected one.");
    assertThat(
            Question.RUN.told(
                "hurdline: writing failed: a holds nothing; make room and ask again, or name another"
                    + " folder with --out"))
        .isEqualTo("writing failed: a holds nothing; make room and ask again");
    assertThat(Question.GRID.told("--vary-x stays")).isEqualTo("--vary-x stays");
  }
}
