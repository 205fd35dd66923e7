package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import hurdline.sample.SampleRow;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CleanlinessWordsTest {
  private static final Titles TITLES =
      new Titles(
          Map.of(
              Titles.key("product", "fiber"), "Long fiber",
              Titles.key("component", "hurd"), "Hurd core"));

  private static List<String> told(SummaryRow... rows) {
    return new CleanlinessWords(List.of(rows), TITLES, new Wording(UnitSystem.METRIC, Locale.ROOT))
        .sentences();
  }

  @Test
  void whatIsLeftAndWhatItCostsAreTold() {
    assertThat(
            told(
                SampleRow.of(Measure.PRODUCT_SHARE_MEAN.of("fiber", "hurd"), "share", 0.0417),
                SampleRow.of(Measure.PRODUCT_SHARE_SD.of("fiber", "hurd"), "share", 0.0052),
                SampleRow.of(Measure.PRODUCT_PRICE_FACTOR.of("fiber"), "share", 0.983),
                SampleRow.of(Measure.PRODUCT_POINT_COST.of("fiber"), "USD", 9_000)))
        .containsExactly(
            "Long fiber holds 4.2 % hurd core on average, from package to package give or take 0.5 %; it"
                + " is paid at 98.3 % of its price. One percentage point more hurd core in each package would"
                + " cost 9,000 USD");
  }

  @Test
  void oneBaleHasNoSpreadAndNoneHasNothing() {
    assertThat(
            told(
                SampleRow.of(Measure.PRODUCT_SHARE_MEAN.of("fiber", "hurd"), "share", 0.0417),
                SampleRow.of(Measure.PRODUCT_SHARE_SD.of("fiber", "hurd"), "share", Double.NaN)))
        .containsExactly("Long fiber holds 4.2 % hurd core on average");
    assertThat(
            told(SampleRow.of(Measure.PRODUCT_SHARE_MEAN.of("fiber", "hurd"), "share", Double.NaN)))
        .isEmpty();
  }
}
