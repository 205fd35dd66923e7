package hurdline.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityTest {

  // Factors: NIST Special Publication 811 (2008), appendix B.8; the products are worked out in
  // decimal.
  @ParameterizedTest
  @CsvSource({
    "1050 lb, MASS, 476.2719885", "9 t, MASS, 9000", "60 ton, MASS, 54431.0844",
        "3.6 t/h, MASS_RATE, 1", "12min, TIME, 720",
    "1 month, TIME, 2629800", "12 yr, TIME, 378691200", "2 wk, TIME, 1209600",
        "25 hp, POWER, 18642.496789556756", "12 kWh/t, ENERGY_PER_MASS, 43200",
    "57 %, SHARE, 0.57", "0.25 in, LENGTH, 0.00635", "3 ft, LENGTH, 0.9144",
        "410 acre, AREA, 1659211.133184", "1 ha, AREA, 10000",
    "80 yd3, VOLUME, 61.16438863872", "15 L, VOLUME, 0.015", "1 bale, BALES, 1",
        "2 modules, BALES, 2", "86400 bales/d, BALE_RATE, 1",
    "-12 USD/t, PRICE, -0.012", "1e3 kg, MASS, 1000", "+.5 t, MASS, 500",
        "1 MJ/kg, ENERGY_PER_MASS, 1000000", "36 USD/month/kW, DEMAND_PRICE, 1.3689254e-8"
  })
  void aNumberAndAUnitComeToSi(String text, Dimension due, double si) {
    double read = Quantity.read(text, due).si();
    assertThat(read).isCloseTo(si, org.assertj.core.data.Offset.offset(Math.abs(si) * 1e-7));
    if (due != Dimension.DEMAND_PRICE) {
      assertThat(read).isEqualTo(si);
    }
  }

  @Test
  void moneyKeepsItsCurrency() {
    assertThat(Quantity.read("250 EUR/d", Dimension.MONEY_RATE).currency())
        .isEqualTo(Optional.of("EUR"));
    assertThat(Quantity.read("250 t", Dimension.MASS).currency()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "25 hpp|\"25 hpp\" has no known unit; perhaps \"hp\" was meant",
        "25 Hp|\"25 Hp\" has no known unit; perhaps \"hp\" was meant",
        "25 frobs|\"25 frobs\" has no known unit",
        "25|\"25\" has no unit",
        "25 kg|\"25 kg\" has the wrong unit",
        "25 USD/kW|\"25 USD/kW\" has the wrong unit",
        "25 kW/USD|\"25 kW/USD\" has no known unit",
        "hp|\"hp\" is not a number and a unit",
        "1,400 hp|\"1,400 hp\" has a comma in its number; write the digits together, with a point"
            + " for decimals",
        "1_400 hp|\"1_400 hp\" does not begin with a plain number",
        "1e999 hp|\"1e999 hp\" does not begin with a plain number",
        "2 5 hp|\"2 5 hp\" is not a number and a unit",
        "25 kW/|\"25 kW/\" has no known unit",
      })
  void whatIsNoPowerIsToldWithTheReason(String text, String said) {
    assertThatThrownBy(() -> Quantity.read(text, Dimension.POWER))
        .isInstanceOf(QuantityException.class)
        .hasMessage(said);
  }

  @ParameterizedTest
  @EnumSource(Dimension.class)
  void theSampleOfADimensionIsReadAsOne(Dimension due) {
    String sample = due.phrase().substring(due.phrase().indexOf('"') + 1);
    assertThat(Quantity.read(sample.substring(0, sample.indexOf('"')), due).si()).isPositive();
  }

  @ParameterizedTest
  @EnumSource(FileUnit.class)
  void everySymbolFindsItsUnitAndBack(FileUnit unit) {
    assertThat(unit.symbols()).allSatisfy(symbol -> assertThat(FileUnit.of(symbol)).contains(unit));
    assertThat(unit.fromSi(unit.inSi())).isEqualTo(1);
  }
}
