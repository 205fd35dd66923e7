package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.plant.Change;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WhatIfReaderTest {
  @Test
  void oneChangeOrSeveralWithSemicolonsBetween() {
    assertThat(WhatIfReader.of("money.wage = x1.2").name()).isEqualTo("money.wage=x1.2");
    assertThat(WhatIfReader.of("money.wage=x1.2;a.b=\"x; y\" ").values())
        .containsExactly(
            new Change.Value("money.wage", "x1.2"), new Change.Value("a.b", "\"x; y\""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"money.wage", "=3", "money.wage=", "a=1;;b=2", "a=1;", "a=1;b"})
  void whatIsNoChangeIsRefusedWithAnExample(String text) {
    assertThatThrownBy(() -> WhatIfReader.of(text))
        .isInstanceOf(CallException.class)
        .hasMessageStartingWith("--what-if \"" + text + "\" has no")
        .hasMessageContaining("expected a change such as money.wage=x1.2");
  }
}
