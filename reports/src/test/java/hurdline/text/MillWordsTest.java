package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.MillRow;
import hurdline.sample.SampleCompare;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class MillWordsTest {
  private static final MillWords WORDS =
      new MillWords(SampleCompare.two(), new Wording(UnitSystem.METRIC, Locale.ROOT));

  @Test
  void energyPerTonneIsThatOfAllThatWasMilled() {
    MillRow fine = WORDS.rows("mill", "base").get(1);
    assertThat(WORDS.perTonne("base", fine)).isCloseTo(23, within(1e-9));
    assertThat(WORDS.milled("base", fine)).isCloseTo(0.25, within(1e-9));
    assertThat(WORDS.perTonne("base", "mill", "2027-01")).isCloseTo(11.1, within(1e-9));
    assertThat(WORDS.perTonne("base", "mill", "2027-02")).as("nothing was milled").isNaN();
  }

  @Test
  void aSentenceAMillAndOneOnPeaks() {
    assertThat(WORDS.sentences())
        .containsExactly(
            "mill takes 10.2 kWh/t and 31 screen changes (the plant as it stands), 10.4 kWh/t and 31 screen changes (bigger mill)",
            "Peak demand costs 36,000 USD (the plant as it stands), 48,000 USD (bigger mill)");
  }
}
