package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.Capacity;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class OrderWordsTest {
  private static OrderWords words(double ofHours, double ofCrop, String firstLate) {
    Capacity.Orders orders = new Capacity.Orders(List.of("fine"), 100, ofHours, ofCrop, firstLate);
    return new OrderWords(
        new Capacity(List.of(), List.of(orders)), new Wording(UnitSystem.METRIC, Locale.ROOT));
  }

  @Test
  void ordersThatCanBeMetAreToldWithoutAWarning() {
    assertThat(words(0.2, 0.1, "").all())
        .containsExactly(
            "fine, 100.0 t: take 10.0 % of what the mean crop can make and 20.0 % of what the"
                + " scheduled hours can");
    assertThat(words(0.2, 0.1, "").warnings()).isEmpty();
  }

  @Test
  void ordersBeyondTheHoursAreWarnedOf() {
    assertThat(words(1.25, 0.1, "2027-05-01").warnings())
        .containsExactly(
            "orders for fine, 100.0 t: take 10.0 % of what the mean crop can make and 125 % of what"
                + " the scheduled hours can; they cannot all be met, some 20.0 t will be missing");
  }

  @Test
  void aTitleIsSmallWithinAWarning() {
    Wording titled =
        new Wording(UnitSystem.METRIC, Locale.ROOT)
            .reading(
                hurdline.sample.Draft.from(hurdline.sample.SampleAnswer.year())
                    .with(
                        hurdline.answer.RunAnswer::outline,
                        new hurdline.answer.Outline(
                            List.of(),
                            List.of(),
                            List.of(),
                            List.of(),
                            new hurdline.answer.Titles(
                                java.util.Map.of(
                                    hurdline.answer.Titles.key("product", "fine"), "Fine hurd"))))
                    .made());
    Capacity.Orders orders = new Capacity.Orders(List.of("fine"), 100, 1.25, 0.1, "");
    assertThat(new OrderWords(new Capacity(List.of(), List.of(orders)), titled).warnings())
        .singleElement()
        .asString()
        .startsWith("orders for fine hurd, ");
  }

  @Test
  void ordersThatAreDueTooEarlyAreWarnedOf() {
    assertThat(words(0.2, 0.1, "2027-05-01").warnings())
        .singleElement()
        .asString()
        .endsWith("; what is due by 2027-05-01 cannot be met in time");
  }

  @Test
  void ordersForWhatNothingMakesAreWarnedOf() {
    double endless = Double.POSITIVE_INFINITY;
    assertThat(words(endless, endless, "2027-05-01").warnings())
        .containsExactly("orders for fine, 100.0 t: cannot be met, since none is made");
  }
}
