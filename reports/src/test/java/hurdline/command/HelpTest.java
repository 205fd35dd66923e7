package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.service.Studies;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {
  /** Help asks the engine nothing. */
  private static final Studies NONE = null;

  private static String pageOf(String name) throws IOException {
    try (InputStream in = HelpTest.class.getResourceAsStream(name + ".txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "hurdline",
        "check",
        "run",
        "compare",
        "choose",
        "yard",
        "season",
        "page",
        "fit",
        "backtest",
        "new",
        "open"
      })
  void aHelpPageReadsAsItWasWritten(String name) throws IOException {
    StringWriter out = new StringWriter();
    String[] args =
        name.equals("hurdline") ? new String[] {"--help"} : new String[] {name, "--help"};
    assertThat(
            Hurdline.call(
                new CommandContext(
                    new PrintWriter(out, true), new PrintWriter(out, true), false, NONE),
                args))
        .isZero();
    assertThat(out.toString()).isEqualTo(pageOf(name));
  }

  @Test
  void aCallWithoutAVerbShowsThePageAsAnError() throws IOException {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    assertThat(
            Hurdline.call(
                new CommandContext(
                    new PrintWriter(out, true), new PrintWriter(err, true), false, NONE)))
        .isEqualTo(2);
    assertThat(err.toString()).isEqualTo(pageOf("hurdline"));
    assertThat(out.toString()).isEmpty();
  }
}
