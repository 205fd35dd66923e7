package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.TornadoRow;
import hurdline.sample.Draft;
import hurdline.sample.SampleCompare;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class WorthWordsTest {
  private static final double NONE = Double.NaN;

  private static TornadoRow row(String input, double low, double high) {
    return Draft.of(TornadoRow.class)
        .with(TornadoRow::option, "bigger_mill")
        .with(TornadoRow::input, input)
        .with(TornadoRow::low, 0.8)
        .with(TornadoRow::high, 1.2)
        .with(TornadoRow::unit, "x")
        .with(TornadoRow::netPresentValueAtLow, low)
        .with(TornadoRow::netPresentValueAtHigh, high)
        .with(TornadoRow::netPresentValue, 300)
        .made();
  }

  /**
   * Both ends of the yield move the worth up, the one by 60 and the other by 106; a price moves it
   * by 47 either way.
   */
  @Test
  void whatMovesTheWorthFarthestComesFirstWhicheverWayItsEndsGo() {
    List<TornadoRow> asked =
        List.of(row("wage", 320, 280), row("price", 253, 347), row("yield", 360, 406));
    WorthWords words =
        new WorthWords(SampleCompare.with(asked), new Wording(UnitSystem.METRIC, Locale.ROOT));
    assertThat(words.ranked("bigger_mill"))
        .extracting(TornadoRow::input)
        .containsExactly("yield", "price", "wage");
    assertThat(words.ranked("bigger_mill"))
        .extracting(TornadoRow::swing)
        .containsExactly(106.0, 94.0, 40.0);
    assertThat(words.hangsOn("bigger_mill"))
        .startsWith("yield (360 to 406 USD from 0.8 to 1.2 times), then price");
  }

  /** A price of what the option does not touch moves the last digits of a sum, and no worth. */
  @Test
  void whatMovesTheLastDigitsOnlyMovesNothing() {
    TornadoRow price = row("price", 300, Math.nextUp(300 + 3e-11));
    assertThat(price.netPresentValueAtHigh()).isGreaterThan(300);
    assertThat(price.swing()).isZero();
    assertThat(row("wage", 300, 300.0001).swing()).isGreaterThan(0);
    assertThat(row("law", 300, NONE).swing()).isNaN();
    WorthWords words =
        new WorthWords(
            SampleCompare.with(List.of(price, row("wage", 320, 280))),
            new Wording(UnitSystem.METRIC, Locale.ROOT));
    assertThat(words.hangsOn("bigger_mill")).contains("wage").doesNotContain("price");
  }
}
