package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.OrderRow;
import hurdline.answer.RunAnswer;
import hurdline.sample.Draft;
import hurdline.sample.SampleAnswer;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class OrderRecordTest {
  private static OrderRow order(int met, int onTime, double metDay, double late, double missing) {
    return new OrderRow(
        "base",
        "fine_hurd",
        2,
        100,
        LocalDate.of(2027, 12, 15),
        40,
        met,
        onTime,
        0.5,
        0.9,
        metDay,
        late,
        late * 3,
        missing,
        late * 200);
  }

  private static OrderRecord record(OrderRow... rows) {
    RunAnswer answer =
        Draft.from(SampleAnswer.year()).with(RunAnswer::orders, List.of(rows)).made();
    return new OrderRecord(answer, new Wording(UnitSystem.METRIC, Locale.ROOT));
  }

  @Test
  void anOrderOnTimeIsSaidInOneClause() {
    assertThat(record(order(40, 40, 321, 0, 0)).sentences())
        .containsExactly("fine hurd, 100 t due 2027-12-15: on time in 40 of 40 years");
  }

  @Test
  void anOrderThatIsLateSaysHowLateAndWhatIsMissing() {
    assertThat(record(order(38, 30, 352, 4.5, 1.25)).sentences())
        .containsExactly(
            "fine hurd, 100 t due 2027-12-15: on time in 30 of 40 years, met in 38, 4.5 days late on average,"
                + " at 900 USD a year; 1.25 t are missing on average");
  }
}
