package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the reader says of a number, a unit or an amount that cannot be. */
class QuantityMessagesTest {

  @Test
  void anUnknownUnitIsToldWithItsPlaceAndWhatWasDue() {
    assertThat(Edited.with("    power: 25 hp", "    power: 25 hpp").problems())
        .containsExactly(
            "p.yaml:"
                + Edited.plantFile().line("    power: 25 hp")
                + ":12 machines.mill.power: \"25 hpp\" has no known unit; perhaps \"hp\" was"
                + " meant; expected a power such as \"15 kW\" or \"25 hp\", 0 or more");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "45|\"45\" has no unit",
        "1,400 kW|\"1,400 kW\" has a comma in its number; write the digits together, with a point"
            + " for decimals",
        "45 t/h|\"45 t/h\" has the wrong unit",
        "45 bananas|\"45 bananas\" has no known unit",
        "45 KW|\"45 KW\" has no known unit; perhaps \"kW\" was meant",
        "much|\"much\" is not a number and a unit",
        "-45 kW|\"-45 kW\" is below 0, which cannot be",
        "4.5.6 kW|\"4.5.6 kW\" does not begin with a plain number",
        "[1 kW]|a list stands where one fixed value is due; this may not vary",
      })
  void aPowerThatIsNoneIsToldWithTheReason(String value, String said) {
    Edited.with("power: 45 kW", "power: " + value)
        .saysOnlyAt(
            "power: " + value,
            "machines.saw.power: "
                + said
                + "; expected a power such as \"15 kW\" or \"25 hp\""
                + (value.startsWith("[") ? "" : ", 0 or more"));
  }

  @Test
  void theSpaceBeforeAUnitMayBeLeftOut() {
    assertThat(Edited.with("power: 45 kW", "power: 45kW").plant())
        .isEqualTo(Edited.plantFile().plant());
  }

  @Test
  void aDistributionIsRefusedWhereNothingMayVary() {
    Edited.with("power: 45 kW", "power: {normal: {mean: 45 kW, sd: 1 kW}}")
        .saysOnly(
            "machines.saw.power: a map with normal stands where one fixed value is due; this may"
                + " not vary; expected a power such as \"15 kW\" or \"25 hp\"");
  }

  @Test
  void aCountTakesNoUnit() {
    Edited.with("bag_hand: {count: 2}", "bag_hand: {count: 2 bales}")
        .saysOnly(
            "resources.bag_hand.count: \"2 bales\" is not a bare whole number; expected a bare"
                + " whole number, 0 or more");
  }

  @Test
  void aCountIsWhole() {
    Edited.with("bag_hand: {count: 2}", "bag_hand: {count: 2.5}")
        .saysOnly(
            "resources.bag_hand.count: \"2.5\" is not a bare whole number; expected a bare whole"
                + " number, 0 or more");
    Edited.with("feed_table: 6 bales", "feed_table: 6.5 bales")
        .saysOnly(
            "machines.feeder.feed_table: \"6.5 bales\" is not a whole number; expected a number of"
                + " bales such as \"6 bales\"");
  }

  @Test
  void anExponentIsABareNumber() {
    Edited.with("exponent: 0.75", "exponent: 75 %")
        .saysOnly(
            "machines.mill.grinding.exponent: \"75 %\" is not a bare number; expected a bare"
                + " number, at least 0");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "mean: 12 %, sd: 1 %, low: 7 %, high: 15 %|mean: 120 %, sd: 1 %, low: 7 %, high: 15"
            + " %|beta.mean: \"120 %\" is 100 % or more, which leaves nothing",
      })
  void aMoistureOfAllWaterCannotBe(String old, String now, String said) {
    Edited.with(old, now)
        .saysOnly(
            "crops.stalk.moisture."
                + said
                + "; expected a share such as \"12.5 %\", from 0 % to below 100 %");
    Edited.with("moisture: 9 %", "moisture: 100 %")
        .saysOnly(
            "crops.seed_cotton.moisture: \"100 %\" is 100 % or more, which leaves nothing; expected"
                + " a share such as \"12.5 %\", from 0 % to below 100 %");
  }

  @Test
  void aShareOverTheWholeCannotBe() {
    Edited.with("takes: {fines: 45 %}", "takes: {fines: 145 %}")
        .saysOnly(
            "lines.stalk_line.steps.saw.outlets.0.takes.fines: \"145 %\" is over 100 %; expected a"
                + " share such as \"12.5 %\", from 0 % to 100 %");
  }

  @Test
  void aRateIsAboveZero() {
    Edited.with("rate: 4.2 t/h", "rate: -4.2 t/h")
        .saysOnly(
            "lines.stalk_line.steps.saw.rate: \"-4.2 t/h\" is below 0, which cannot be; expected a"
                + " rate such as \"3.6 t/h\", above 0");
    Edited.with("rate: 4.2 t/h", "rate: 0 t/h")
        .saysOnly(
            "lines.stalk_line.steps.saw.rate: \"0 t/h\" is 0, which cannot be; expected a rate such"
                + " as \"3.6 t/h\", above 0");
  }

  @Test
  void moneyIsInTheFilesOneCurrency() {
    Edited.with("cost: 13 USD", "cost: 13 EUR")
        .saysOnly("packages.bag.cost: \"13 EUR\" is in EUR; expected the file's one currency, USD");
  }

  @Test
  void moneyIsRefusedWhereNoneIsDue() {
    Edited.with("power: 45 kW", "power: 45 USD")
        .saysOnly(
            "machines.saw.power: \"45 USD\" has the wrong unit; expected a power such as \"15 kW\""
                + " or \"25 hp\", 0 or more");
  }

  @Test
  void aLossOfEverythingLeavesNothing() {
    Edited.with("field_loss: 3 %/month", "field_loss: 100 %/month")
        .saysOnly(
            "yard.field_loss: \"100 %/month\" would leave nothing; expected a loss below 100 % of"
                + " what lies there, such as \"0.4 %/month\"");
  }

  @Test
  void anUnknownDistributionIsToldWithTheNearest() {
    Edited.with("{exponential: {mean: 32 min}}", "{exponental: {mean: 32 min}}")
        .saysOnly(
            "deliveries.seed_cotton.loads.every.exponental: \"exponental\" is no distribution;"
                + " expected a distribution, perhaps \"exponential\"");
  }

  @Test
  void aDistributionHasAllItsKeys() {
    Edited.with(
            "{triangular: {low: 2 min, mode: 3 min, high: 7 min}}",
            "{triangular: {low: 2 min, high: 7 min}}")
        .saysOnly(
            "packages.bag.change.triangular.mode: the key \"mode\" is missing; expected the key"
                + " \"mode\" here");
  }

  @Test
  void aDistributionThatLeavesNothingToDrawIsRefused() {
    Edited.with("mode: 3 min, high: 7 min", "mode: 9 min, high: 7 min")
        .saysOnly(
            "packages.bag.change.triangular: nothing can be drawn from this; expected \"low\","
                + " \"mode\" and \"high\" in rising order");
    Edited.with("lasts: {observed: [2 h, 3 h, 5 h]}", "lasts: {observed: []}")
        .saysOnly(
            "machines.saw.stops.saws.lasts.observed: nothing can be drawn from this; expected at"
                + " least one observed value");
    Edited.with("sd: 1 %, low: 7 %, high: 15 %", "sd: 5 %, low: 7 %, high: 15 %")
        .saysOnly(
            "crops.stalk.moisture.beta: nothing can be drawn from this; expected \"mean\" between"
                + " \"low\" and \"high\", and an \"sd\" that such a range can have");
  }

  @Test
  void loadsThatComeWithoutPauseAreRefused() {
    Edited.with("{exponential: {mean: 32 min}}", "0 min")
        .saysOnly(
            "deliveries.seed_cotton.loads.every: \"0 min\" is 0, which cannot be; expected a time"
                + " such as \"12 min\" or \"8 h\", above 0");
    Edited.with("{exponential: {mean: 32 min}}", "{observed: [0 min, 0 min]}")
        .saysOnly(
            "deliveries.seed_cotton.loads.every.observed: this is never above 0; expected a time"
                + " such as \"12 min\" or \"8 h\", above 0");
  }

  @Test
  void aStopIsCountedInItsOwnKindOfAmount() {
    Edited.with(
            "{every: 400 t, counted: mass, lasts: 5 h}",
            "{every: 400 h, counted: mass, lasts: 5 h}")
        .saysOnly(
            "machines.mill.stops.hammers.every: \"400 h\" has the wrong unit; expected a mass such"
                + " as \"1050 lb\" or \"9 t\", 0 or more");
    Edited.with(
            "{every: 30 d, counted: calendar, lasts: 1 h}",
            "{every: 30 t, counted: calendar, lasts: 1 h}")
        .saysOnly(
            "machines.press.stops.oil.every: \"30 t\" has the wrong unit; expected a time such as"
                + " \"12 min\" or \"8 h\", 0 or more");
  }

  @Test
  void aStopWithoutIntervalAndLengthIsRefused() {
    Edited.with(
            "{every: 400 t, counted: mass, lasts: 5 h}", "{every: 0 t, counted: mass, lasts: 0 h}")
        .saysOnly(
            "machines.mill.stops.hammers.every: \"every\" and \"lasts\" are both 0, so it would"
                + " stop without end; expected an amount above 0 for one of them");
  }
}
