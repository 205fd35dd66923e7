package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.answer.GridKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VaryReaderTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "season.2.changeover=2d..10d..4d | AMOUNT | d | 2 d, 6 d, 10 d",
        "machines.mill.power=20 hp .. 40 hp..10hp | AMOUNT | hp | 20 hp, 30 hp, 40 hp",
        "a.*.area=x0.8..x1.2..x0.2 | FACTOR | '' | x0.8, x1, x1.2",
        "resources.loader.count=1..3..1 | AMOUNT | '' | 1, 2, 3",
        "crops.stalk.moisture=.5%..1.0%..0.25% | AMOUNT | % | 0.5 %, 0.75 %, 1 %",
        "p.price=100 USD/t..300 USD/t..100 USD/t | AMOUNT | USD/t | 100 USD/t, 200 USD/t, 300 USD/t",
        "machines.mill.power=2e1hp..3e1hp..1e1hp | AMOUNT | hp | 20 hp, 30 hp",
        "season.0.from=2027-02-26..2027-03-12..168 h | DATE | '' | 2027-02-26, 2027-03-05, 2027-03-12",
        "season.0.from=2027-02-26..2027-03-12..1wk | DATE | '' | 2027-02-26, 2027-03-05, 2027-03-12",
        "x=-1..1..1 | AMOUNT | '' | -1, 0, 1",
        "deliveries.*.fields.*.ready=-7d..+7d..7d | AMOUNT | d | -7 d, +0 d, +7 d",
        "season.0.from=+1w..+3w..1wk | AMOUNT | d | +7 d, +14 d, +21 d",
      })
  void aRangeIsTheValuesAsAFileWouldHaveThem(
      String text, GridKey.Scale scale, String unit, String values) {
    GridKey key = VaryReader.of(text);
    assertThat(key.path()).isEqualTo(text.substring(0, text.indexOf('=')));
    assertThat(key.scale()).isEqualTo(scale);
    assertThat(key.unit()).isEqualTo(unit);
    assertThat(key.values()).extracting(GridKey.Value::text).containsExactly(values.split(", "));
  }

  @Test
  void stepsAddUpInDecimal() {
    GridKey key = VaryReader.of("a=x0.1..x3.1..x0.1");
    assertThat(key.values()).hasSize(31);
    assertThat(key.values().get(2)).isEqualTo(new GridKey.Value("x0.3", 0.3));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "power | is no range of values; expected KEY=FROM..TO..STEP such as machines.mill.power=\"20"
            + " hp..80 hp..10 hp\" or deliveries.stalk.fields.*.area=x0.8..x1.4..x0.1",
        "=1..2..1 | is no range of values; expected KEY=FROM..TO..STEP such as"
            + " machines.mill.power=\"20 hp..80 hp..10 hp\" or"
            + " deliveries.stalk.fields.*.area=x0.8..x1.4..x0.1",
        "a=0...5..1 | is no range of values; expected KEY=FROM..TO..STEP such as"
            + " machines.mill.power=\"20 hp..80 hp..10 hp\" or"
            + " deliveries.stalk.fields.*.area=x0.8..x1.4..x0.1",
        "a=2d..10d | is no range of values; expected KEY=FROM..TO..STEP such as"
            + " machines.mill.power=\"20 hp..80 hp..10 hp\" or"
            + " deliveries.stalk.fields.*.area=x0.8..x1.4..x0.1",
        "a=2d..10d..3d | does not come out: steps of 3 d reach 8 d and then 11 d; expected a TO that"
            + " the steps reach",
        "a=-2d..10d..1d | has a sign before some of its days only; expected signs before FROM and TO, such as -14d..+14d..7d",
        "a=-2d..+10d..5d | does not come out: steps of 5 d reach +8 d and then +13 d; expected a TO that the steps reach",
        "a=10d..2d..1d | runs backwards; expected FROM below TO; a single value is set with --set",
        "a=2d..2d..1d | has one value only; expected FROM below TO; a single value is set with --set",
        "a=2d..10d..0d | has a step that never gets on; expected a step above 0",
        "a=2d..10d..-1d | has a step that never gets on; expected a step above 0",
        "a=2d..10h..1d | has different units; expected one unit in all three, such as 2d..10d..1d",
        "a=2..10d..1d | has different units; expected one unit in all three, such as 2d..10d..1d",
        "a=x1..2..x1 | has an x before some of its numbers only; expected x before all three or before"
            + " none",
        "a=x1 d..x2 d..x1 d | : \"x1 d\" has no plain factor after its x; expected numbers with a unit"
            + " (20 hp), bare (3), as factors (x0.8), or dates",
        "a=low..high..1 | : \"low\" is not a number and a unit; expected numbers with a unit (20 hp), bare"
            + " (3), as factors (x0.8), or dates",
        "a=1,000 hp..2,000 hp..500 hp | : \"1,000 hp\" has a comma in its number; write the digits together,"
            + " with a point for decimals; expected numbers with a unit (20 hp), bare (3), as factors (x0.8),"
            + " or dates",
        "a=0..1000..1 | has more than 400 values; expected at most 400 cells in all",
        "a=2027-06-01..2027-07-01..7d | does not come out: steps of 7 d reach 2027-06-29 and then"
            + " 2027-07-06; expected a TO that the steps reach",
        "a=2027-06-01..2027-06-31..1d | has a date that there is not; expected dates such as"
            + " 2027-06-01..2027-07-06..7d",
        "a=2027-06-01..2027-06-30..1h | has no step in whole days or weeks; expected one such as 7d or"
            + " 1wk",
      })
  void whatIsNoRangeIsTold(String text, String said) {
    assertThatThrownBy(() -> VaryReader.of(text))
        .isInstanceOf(CallException.class)
        .hasMessage("--vary \"" + text + "\"" + (said.startsWith(":") ? "" : " ") + said);
  }
}
