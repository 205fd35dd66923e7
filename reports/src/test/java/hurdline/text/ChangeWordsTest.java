package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ChangeWordsTest {
  @Test
  void fewChangesAreTold() {
    assertThat(ChangeWords.of(List.of("a.b=1 h", "c=2"), " and ")).isEqualTo("a.b=1 h and c=2");
  }

  /** A patch of fitted figures has dozens. */
  @Test
  void manyAreCounted() {
    List<String> many =
        IntStream.range(0, 26).mapToObj(i -> "key" + i + "={mean: " + i + "}").toList();
    assertThat(ChangeWords.of(many, ", ")).isEqualTo("26 changed keys, from key0 to key25");
  }
}
