package hurdline.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.answer.Answer;
import hurdline.answer.RunAnswer;
import hurdline.answer.Samples;
import hurdline.answer.Trace;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleCompare;
import hurdline.sample.SampleGrid;
import hurdline.sample.SampleYard;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecordFileTest {
  static List<Answer> answers() {
    return List.of(SampleAnswer.year(), SampleAnswer.richYears(), SampleAnswer.bare(), SampleAnswer.paper(), SampleCompare.two(),
        SampleGrid.line(), SampleGrid.tiles(), SampleYard.tooSmall(), SampleYard.stopped());
  }

  private static String text(Answer answer) throws IOException {
    StringWriter out = new StringWriter();
    RecordFile.write(answer, out);
    return out.toString();
  }

  @ParameterizedTest
  @MethodSource("answers")
  void whatIsReadBackIsWrittenAsTheSameBytes(Answer answer) throws IOException {
    String once = text(answer);
    assertThat(text(RecordFile.read(new StringReader(once)))).isEqualTo(once);
  }

  @Test
  void everythingButTheReplicationsComesBackEqual() throws IOException {
    RunAnswer year = SampleAnswer.year();
    RunAnswer back = (RunAnswer) RecordFile.read(new StringReader(text(year)));
    Samples none = Samples.none();
    assertThat(with(back, none)).isEqualTo(with(year, none));
    assertThat(back.samples().measures()).isEmpty();
    assertThat(RecordFile.read(new StringReader(text(SampleAnswer.paper()))))
        .isEqualTo(SampleAnswer.paper());
  }

  private static RunAnswer with(RunAnswer a, Samples samples) {
    return new RunAnswer(
        a.header(),
        a.outline(),
        a.summary(),
        a.adjusted(),
        a.holders(),
        a.machines(),
        a.weeks(),
        a.months(),
        a.levels(),
        a.flows(),
        a.capacity(),
        a.assumptions(),
        a.cautions(),
        a.warnings(),
        samples,
        Trace.none());
  }

  @Test
  void theUndefinedIsNullAndRowsStandOnLinesOfTheirOwn() throws IOException {
    List<String> lines = text(SampleAnswer.bare()).lines().toList();
    assertThat(lines).contains("  \"verb\": \"run\",");
    assertThat(lines)
        .anySatisfy(
            line ->
                assertThat(line.strip())
                    .isEqualTo(
                        "{\"option\":\"base\",\"measure\":\"mass.stalk.fed\",\"unit\":\"t\",\"mean\":88,\"low95\":null,\"high95\":null,\"sd\":null,\"p05\":88,\"p50\":88,\"p95\":88,\"least\":88,\"most\":88,\"replications\":1,\"interval\":\"\"}"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "[]",
        "{}",
        "nonsense",
        "{\"record\": 2, \"verb\": \"run\", \"answer\": {}}",
        "{\"record\": 1, \"verb\": \"bake\", \"answer\": {}}"
      })
  void whatIsNoRecordIsRefused(String text) {
    assertThatThrownBy(() -> RecordFile.read(new StringReader(text)))
        .isInstanceOf(IOException.class);
  }
}
