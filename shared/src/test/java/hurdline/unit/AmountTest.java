package hurdline.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmountTest {
  @Test
  void aNumberKeepsItsUnitAsItIsWritten() {
    assertThat(Amount.read(" 2.5e1hp ")).isEqualTo(new Amount(new BigDecimal("2.5e1"), "hp"));
    assertThat(Amount.read("3")).isEqualTo(new Amount(new BigDecimal("3"), ""));
    assertThat(Amount.find("much")).isEmpty();
  }

  @Test
  void aBareNumberIsInNoCurrency() {
    assertThat(Amount.read("10000").currency()).isEmpty();
    assertThat(Amount.read("10000 USD").currency()).contains("USD");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,400 bales | \"1,400 bales\" has a comma in its number; write the digits together, with a point for decimals",
        "much | \"much\" is not a number and a unit",
        "0x1p3 % | \"0x1p3 %\" does not begin with a plain number",
        "1_000 kg | \"1_000 kg\" does not begin with a plain number",
        "1e400 kg | \"1e400 kg\" does not begin with a plain number",
      })
  void whatIsNoAmountIsToldWithTheReason(String text, String said) {
    assertThatThrownBy(() -> Amount.read(text))
        .isInstanceOf(QuantityException.class)
        .hasMessage(said);
  }

  @ParameterizedTest
  @ValueSource(strings = {"45\u00a0kW", "45\u202fkW", "45\u2007kW", "4\u00a0500 kW", "\u00a045 kW"})
  void aSpaceThatIsNoneToAProgramIsNamed(String text) {
    assertThatThrownBy(() -> Amount.read(text))
        .isInstanceOf(QuantityException.class)
        .hasMessageEndingWith(
            "holds a non-breaking space; type a plain space in its place, or none");
  }

  @ParameterizedTest
  @CsvSource({
    "500 ton, t, 453.59237",
    "500 kg, t, 0.5",
    "2 t/h, kg/s, 0.5555555555555556",
    "90 min, h, 1.5",
    "3 modules, bales, 3",
    "5 USD/ton, USD/t, 5.511556554621939"
  })
  void anAmountIsSoManyOfAnotherUnitOfItsKind(String text, String unit, double number) {
    assertThat(Amount.read(text).in(unit)).isEqualTo(number, within(1e-12 * number));
  }

  @ParameterizedTest
  @CsvSource({"5 kWh, t", "5 EUR, USD", "5 bananas, t", "5, t"})
  void anAmountOfAnotherKindIsRefused(String text, String unit) {
    assertThatThrownBy(() -> Amount.read(text).in(unit)).isInstanceOf(QuantityException.class);
  }

  /** What the program writes into a plant it must be able to read, however long or small. */
  @ParameterizedTest
  @ValueSource(
      strings = {"0.1", "1e30", "1.5e-20", "123456789012345678901234567890", "0", "-3.25", "9e99"})
  void whatIsWrittenIsReadAsTheSame(String number) {
    Amount written = new Amount(new BigDecimal(number), "kg");
    assertThat(Amount.read(written.text()).value()).isEqualTo(written.value());
  }

  @Test
  void aFactorIsABareNumberBehindAnX() {
    assertThat(Amount.factor("x 1.5")).contains(new BigDecimal("1.5"));
    assertThat(Amount.factor("12 hp")).isEmpty();
    assertThat(Amount.factor("xenon")).isEmpty();
    assertThatThrownBy(() -> Amount.factor("x-1"))
        .hasMessage("\"x-1\" has no plain factor after its x");
    assertThatThrownBy(() -> Amount.factor("x2 hp"))
        .hasMessage("\"x2 hp\" has no plain factor after its x");
  }

  @Test
  void aLevelIsAnAmountOrAFactor() {
    assertThat(Level.read("x0.80").text()).isEqualTo("x0.8");
    assertThat(Level.read("x0.8").unit()).isEqualTo("x");
    assertThat(Level.read("20hp").text()).isEqualTo("20 hp");
    assertThat(Level.read("20hp").with(new BigDecimal("2.5e1")).text()).isEqualTo("25 hp");
  }
}
