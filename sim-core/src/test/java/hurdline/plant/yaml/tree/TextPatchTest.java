package hurdline.plant.yaml.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextPatchTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "a: 1 # one|a|2|a: 2 # one",
        "a: {b: 1, c: 2}  # both|a.b|9 h|a: {b: 9 h, c: 2}  # both",
        "a: {b: {x: {y: 1}}, c: 2}|a.b|7|a: {b: 7, c: 2}",
        "a: \"one, two\" # q|a|3|a: 3 # q",
        "a: {b: 'it, is', c: [1, 2]}|a.c|[3]|a: {b: 'it, is', c: [3]}",
        "a:\\n  b:\\n    x: 1 # in\\n    y: 2\\n  c: 3|a.b|5|a:\\n  b: 5\\n  c: 3",
        "a:\\n  b: 1\\n  c: 2  # two\\nd: 3|a.e|4|a:\\n  b: 1\\n  c: 2  # two\\n  e: 4\\nd: 3",
        "a: {b: 1} # end|a.c.d|4|a: {b: 1, c: {d: 4}} # end",
        "a: {b: {x: 1}, # why\\n  c: 2}|a.c|3|a: {b: {x: 1}, # why\\n  c: 3}"
      })
  void aValueIsPutInItsPlace(String text, String path, String value, String due) {
    assertThat(with(text.replace("\\n", "\n"), Map.of(path, value)))
        .isEqualTo(due.replace("\\n", "\n"));
    assertThat(with(text.replace("\\n", "\r\n"), Map.of(path, value)))
        .isEqualTo(due.replace("\\n", "\r\n"));
  }

  @Test
  void severalValuesLeaveAllElseToTheLetter() {
    String text =
        "# head\n"
            + "m:\n"
            + "  saw: {every: 9 h, lasts: {normal: {mean: 1 min}}}   # saw\n\n"
            + "  mill: {power: 5 kW}\n"
            + "# tail\n";
    Map<String, String> values = new LinkedHashMap<>();
    values.put("m.saw.every", "8 h");
    values.put("m.saw.lasts", "2 min");
    values.put("m.mill.stops.jam", "{every: 1 h}");
    assertThat(with(text, values))
        .isEqualTo(
            "# head\n"
                + "m:\n"
                + "  saw: {every: 8 h, lasts: 2 min}   # saw\n\n"
                + "  mill: {power: 5 kW, stops: {jam: {every: 1 h}}}\n"
                + "# tail\n");
  }

  private static String with(String text, Map<String, String> values) {
    return TextPatch.with(text, values);
  }
}
