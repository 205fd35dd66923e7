package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TraceSpanTest {
  @Test
  void oneDateIsThatDay() {
    assertThat(TraceSpan.of("2027-06-07"))
        .isEqualTo(TraceSpan.of("2027-06-07T00:00..2027-06-08T00:00"));
  }

  @Test
  void theLastDayOfASpanIsWhole() {
    assertThat(TraceSpan.of("2027-06-07..2027-06-08"))
        .isEqualTo(TraceSpan.of("2027-06-07T00:00..2027-06-09T00:00"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2027-06-07T06:00",
        "2027-06-08..2027-06-06",
        "2027-06-07..",
        "June 7",
        "2027-06-07..2027-06-08..2027-06-09",
        ""
      })
  void whatIsNoSpanIsToldWhatOneIs(String text) {
    assertThatThrownBy(() -> TraceSpan.of(text))
        .isInstanceOf(CallException.class)
        .hasMessageContaining(
            "--trace \"" + text + "\" is no span; expected a day such as 2027-06-07, or FROM..TO");
  }
}
