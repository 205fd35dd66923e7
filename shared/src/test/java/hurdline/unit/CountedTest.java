package hurdline.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CountedTest {
  @Test
  void oneIsOneAndNoneAreSeveral() {
    assertThat(Counted.of(1, "row")).isEqualTo("1 row");
    assertThat(Counted.of(0, "row")).isEqualTo("0 rows");
    assertThat(Counted.of(12, "row")).isEqualTo("12 rows");
    assertThat(Counted.of(1200, "1,200", "day")).isEqualTo("1,200 days");
    assertThat(Counted.of(1, "service life")).isEqualTo("1 service life");
    assertThat(Counted.of(2, "service life")).isEqualTo("2 service lives");
    assertThat(Counted.noun(1, "plan") + " " + Counted.are(1)).isEqualTo("plan is");
    assertThat(Counted.noun(2, "plan") + " " + Counted.are(2)).isEqualTo("plans are");
  }
}
