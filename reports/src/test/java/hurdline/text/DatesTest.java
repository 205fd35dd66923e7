package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DatesTest {
  private static final LocalDate DATE = LocalDate.of(2027, 7, 6);

  @ParameterizedTest
  @CsvSource({
    "und,    2027-07-06,    07-06, 2027-07",
    "en-US, 'Jul 6, 2027', Jul 6, Jul 2027",
    "en-GB, 6 Jul 2027,    6 Jul, Jul 2027",
    "de,    6 Jul 2027,    6 Jul, Jul 2027",
    "fr-CA, 2027-07-06,    07-06, 2027-07",
    "ja-JP, 2027-07-06,    07-06, 2027-07"
  })
  void aDateStandsInTheReadersOrder(String tag, String date, String day, String month) {
    Dates dates = new Dates(Locale.forLanguageTag(tag));
    assertThat(dates.date(DATE)).isEqualTo(date);
    assertThat(dates.day(DATE)).isEqualTo(day);
    assertThat(dates.month(YearMonth.from(DATE))).isEqualTo(month);
  }
}
