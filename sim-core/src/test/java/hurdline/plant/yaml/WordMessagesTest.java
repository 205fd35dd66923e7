package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the reader says of keys, words, names, dates and clock times. */
class WordMessagesTest {
  private static final String CAMPAIGN =
      "to: 2027-06-11, shifts: [day]}\n"
          + "  - {changeover: 5 d, hands: 6}\n"
          + "  - {line: cotton_line, from: 2027-10-04";

  @Test
  void anUnknownKeyIsToldWithTheNearestAndItsOwnPlace() {
    assertThat(Edited.with("composition_cv: 5 %", "composition_spred: 5 %").problems())
        .containsExactly(
            "p.yaml:"
                + Edited.plantFile().line("composition_cv: 5 %")
                + ":5 crops.stalk.composition_spred: unknown key \"composition_spred\"; expected"
                + " a key of a crop, perhaps \"composition_cv\"");
  }

  @Test
  void aMisspeltKeyIsNotAlsoMissing() {
    Edited.with("bag_hand: {count: 2}", "bag_hand: {coutn: 2}")
        .saysOnly(
            "resources.bag_hand.coutn: unknown key \"coutn\"; expected a key of a resource, perhaps"
                + " \"count\"");
  }

  @Test
  void aMissingKeyIsToldAtItsMap() {
    Edited.with("scale:    {count: 1}", "scale:    {}")
        .saysOnlyAt(
            "scale:    {}",
            "resources.scale.count: the key \"count\" is missing; expected a bare whole number,"
                + " such as \"count: 1\"");
  }

  @Test
  void aKeyWithoutAValueIsToldAtTheKey() {
    Edited.with("scale:    {count: 1}", "scale:    {count: }")
        .saysOnly(
            "resources.scale.count: the key \"count\" has no value; expected a bare whole number,"
                + " such as \"count: 1\"");
  }

  @Test
  void aBinDrawsNoPowerAndDoesNotStop() {
    Edited.with("holds: 60 m3,", "holds: 60 m3, power: 3 kW,")
        .saysOnly(
            "machines.surge_bin.power: unknown key \"power\": a bin draws no power, does not stop"
                + " and has no parts that move; expected one of title, kind, holds, start_at,"
                + " stop_at");
  }

  @Test
  void aKeyOfAnotherKindOfMachineIsToldWithItsOwner() {
    Edited.with("boxes: 2", "boxes: 2, spouts: 2")
        .saysOnly(
            "machines.press.spouts: unknown key \"spouts\": a bag-filler has spouts, a press does"
                + " not; expected one of title, kind, power, draws, stops, boxes");
    Edited.with("rate: 2 t/h, packs: fiber", "rate: 2 t/h, packs: fiber, min_run: 3 h")
        .saysOnly(
            "lines.stalk_line.steps.press.min_run: unknown key \"min_run\": a hammer-mill stays on"
                + " a screen, a step does not; expected one of rate, to, outlets, packs, package,"
                + " breakage, dries, priority, rate_by_moisture, rate_by_diameter, rate_by");
    Edited.with("surge_bin: {to: mill,", "surge_bin: {rate: 2 t/h, to: mill,")
        .saysOnly(
            "lines.stalk_line.steps.surge_bin.rate: unknown key \"rate\": a bin only hands on; put"
                + " it in the step of the machine that it leads to; expected one of to, own_hours,"
                + " priority");
  }

  @Test
  void anUnknownKindIsToldWithTheNearest() {
    Edited.with("kind: hammer-mill", "kind: hamer-mill")
        .saysOnly(
            "machines.mill.kind: \"hamer-mill\" is not known here; expected a known word, perhaps"
                + " \"hammer-mill\"");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "counted: runing",
        "repair: anytime",
        "draws: with flo",
        "pick: oldest",
        "when_full: turn off",
        "repeats: year",
        "sells: order"
      })
  void aWordThatIsNoChoiceIsToldWithTheNearest(String wrong) {
    String key = wrong.substring(0, wrong.indexOf(':'));
    String right =
        switch (key) {
          case "counted" -> "counted: running";
          case "repair" -> "repair: any-time";
          case "draws" -> "draws: with-flow";
          case "pick" -> "pick: {places: [row, shed]}";
          case "when_full" -> "when_full: turn-away";
          case "repeats" -> "  repeats: yearly";
          default -> "sells: orders";
        };
    String indent = right.substring(0, right.indexOf(key));
    assertThat(Edited.with(right, indent + wrong).problems())
        .singleElement()
        .asString()
        .contains(
            "\""
                + wrong.substring(key.length() + 2)
                + "\" is not known here; expected a known word, ");
  }

  @Test
  void aDateThatDoesNotExistIsToldWithItsMonth() {
    Edited.with(CAMPAIGN, CAMPAIGN.replace("2027-06-11", "2027-06-31"))
        .saysOnly(
            "season.0.to: \"2027-06-31\" is a date that does not exist; expected a day from 01 to"
                + " 30 in 2027-06");
    Edited.with(CAMPAIGN, CAMPAIGN.replace("2027-06-11", "2027-13-01"))
        .saysOnly(
            "season.0.to: \"2027-13-01\" is a date that does not exist; expected a month from 01 to"
                + " 12, as in 2027-06-07");
    Edited.with(CAMPAIGN, CAMPAIGN.replace("2027-06-11", "6/11/2027"))
        .saysOnly("season.0.to: \"6/11/2027\" is not a date; expected a date such as 2027-06-07");
  }

  @Test
  void aClockTimeStandsInQuotes() {
    Edited.with("any:   {from: \"08:00\"", "any:   {from: 08:00")
        .saysOnly(
            "calendar.shifts.any.from: 08:00 stands without quotes, which YAML may read as a"
                + " number; expected a clock time in quotes such as \"06:00\", up to \"24:00\"");
    Edited.with("any:   {from: \"08:00\"", "any:   {from: \"25:00\"")
        .saysOnly(
            "calendar.shifts.any.from: \"25:00\" is not a clock time; expected a clock time in"
                + " quotes such as \"06:00\", up to \"24:00\"");
  }

  @Test
  void anUnknownDayIsToldWithTheNearest() {
    Edited.with("Sat]}\n    hands", "Sta]}\n    hands")
        .saysOnly(
            "deliveries.stalk.hours.days.5: \"Sta\" is no day of the week; expected a day, perhaps"
                + " \"Sat\"");
  }

  @Test
  void namesAreLettersDigitsUnderscoreAndHyphen() {
    Edited.with(
            "  fans:     {kind: fan, power: 60 kW}",
            "  fans:     {kind: fan, power: 60 kW}\n  \"big fan\": {kind: fan}")
        .saysOnly(
            "machines.big fan: \"big fan\" cannot be a name; expected letters, digits, _ and -, up"
                + " to 60 of them");
  }

  @Test
  void anotherVersionOfTheFormatIsRefused() {
    Edited.with("hurdline: 1", "hurdline: 2")
        .saysOnly(
            "hurdline: \"2\" is a version of the format that this program does not know; expected"
                + " \"hurdline: 1\"");
  }

  @Test
  void aMapWhereAListIsDueIsTold() {
    Edited.with("auxiliaries: [fans]", "auxiliaries: fans")
        .saysOnly("lines.stalk_line.auxiliaries: \"fans\" is not a list; expected a list of names");
  }

  @Test
  void allProblemsComeAtOnceInTheOrderOfTheFile() {
    assertThat(
            Edited.with("scale:    {count: 1}", "scale:    {count: x}")
                .and("plant: Every", "plnt: Every")
                .and("currency: USD", "currency: usd")
                .problems())
        .extracting(line -> line.substring(0, line.indexOf(": ")))
        .containsExactly(
            "p.yaml:3:1 plnt",
            "p.yaml:"
                + Edited.plantFile().line("scale:    {count: 1}")
                + ":21 resources.scale.count",
            "p.yaml:" + Edited.plantFile().line("currency: USD") + ":13 money.currency");
  }
}
