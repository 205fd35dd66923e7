package hurdline.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class StudyProcessTest {
  private static String compiler(Question question, int replications, String... more) {
    List<String> call = new java.util.ArrayList<>(List.of(question.verb()));
    call.add("--replications=" + replications);
    call.addAll(List.of(more));
    return StudyProcess.compiler(question, call);
  }

  @Test
  void aStudyIsShortWhereTheLauncherTakesItsCallForShort() throws IOException {
    Path start = Path.of(System.getProperty("hurdline.root"), "scripts", "start.sh");
    Matcher few = Pattern.compile("\nfew_replications=(\\d+)\n").matcher(Files.readString(start));
    assertThat(few.find()).isTrue();
    int most = Integer.parseInt(few.group(1));
    String quick = "-XX:TieredStopAtLevel=1";
    assertThat(compiler(Question.RUN, most, "--option=bigger_mill")).isEqualTo(quick);
    assertThat(compiler(Question.RUN, most + 1)).isNotEqualTo(quick);
    assertThat(compiler(Question.RUN, 2, "--until=money.margin:1%")).isNotEqualTo(quick);
    assertThat(compiler(Question.GRID, 2)).isNotEqualTo(quick);
    assertThat(compiler(Question.COMPARE, 2)).isNotEqualTo(quick);
  }
}
