package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.problem.LocatedProblem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Slips of the fingers in a plant file are told at their place, in words that need no knowledge of
 * YAML.
 */
class YamlSlipsTest {
  private static final String SMALL = PlantFiles.withoutTitles("small.yaml");

  private static List<String> problems(String old, String now) {
    String from = unescaped(old);
    assertThat(SMALL).contains(from);
    return new Edited(SMALL.replace(from, unescaped(now))).problems();
  }

  private static String unescaped(String text) {
    return text.replace("\\n", "\n")
        .replace("\\t", "\t")
        .replace("_", "\u00a0")
        .replace("OPEN", "[")
        .replace("~", "_");
  }

  /** In the texts: an underscore is a non-breaking space, a tilde an underscore. */
  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '¦',
      ignoreLeadingAndTrailingWhitespace = false,
      quoteCharacter = '`',
      value = {
        "loader: {count: 1}¦loader: {count: 1¦72:11: the brace \"{\" that opens here is not closed; expected a \"}\" behind its last entry",
        "{spouts: 2}}}¦{spouts: 2}}¦98:11: the brace \"{\" that opens here is not closed; expected a \"}\" behind its last entry",
        "shifts: [day]}¦shifts: [day}¦66:66: the bracket \"[\" that opens here is not closed; expected a \"]\" behind its last entry",
        "Thu, Fri]¦Thu, Fri¦14:17: the bracket \"[\" that opens here is not closed; expected a \"]\" behind its last entry",
        "from: \"07:00\"¦from: \"07:00¦14:50: the quotation mark that opens here is not closed; expected the same mark at the end of the text",
        "from: \"07:00\"¦from: '07:00¦14:50: the quotation mark that opens here is not closed; expected the same mark at the end of the text",
        "plant: Willow¦plant: \"Willow¦7:8: the quotation mark that opens here is not closed; expected the same mark at the end of the text",
        "description: 30 hp mill in¦description: \"30 hp\" mill in¦91:26: a text goes on behind its closing quotation mark; expected quotation marks around the whole text, or none",
        "loader: {count: 1}¦loader: {count: 1}}¦72:21: \"}\" closes what was not opened; expected as many brackets that close as open",
        "shifts: [day]}¦shifts: [day]]}¦66:71: \"]\" closes what was not opened; expected as many brackets that close as open",
        "power: 30 hp, boxes¦power: 30 hp boxes¦32:42: two entries run into each other here; expected a comma between the entries of a list or map in brackets",
        "    power: 10 hp¦    power:10 hp¦25:5: no space behind the colon of \"power:10 hp\"; expected a key, a colon and a space",
        "    power: 10 hp¦    power 10 hp¦25:5: no colon in \"power 10 hp\"; expected a key, a colon and a space",
        "    feed~table: 4 bales¦    feed~table = 4 bales¦26:5: no colon in \"feed_table = 4 bales\"; expected a key, a colon and a space",
        "  feeder:\\n    kind¦  feeder\\n    kind¦23:3: no colon behind \"feeder\"; expected a key, a colon and a space",
        "  - {line¦  -{line¦66:3: no space behind the dash; expected \"- \" before each entry of a list",
        "description: 30 hp mill¦description: note: 30 hp mill¦91:22: a second colon in one line; expected quotation marks around the whole text that holds a colon, or a line for each key",
        "    feed~table: 4 bales¦   feed~table: 4 bales¦26:4: the indentation is that of no line above; expected the same indentation for all keys of a map",
        "    feed~table: 4 bales¦      feed~table: 4 bales¦26:17: the line is indented further than the one before, which has its value already; expected the same indentation for all keys of a map",
        "    feed~table: 4 bales¦  \\tfeed~table: 4 bales¦26:3: a tab in the indentation; expected spaces; YAML does not allow tabs there",
        "    feed~table: 4 bales¦    feed~table:\\t4 bales¦26:16: a tab stands here; expected a space",
        "description: 30 hp mill¦description: @30 hp mill¦91:18: a value may not begin with \"@\"; expected quotation marks around the whole text",
        "description: 30 hp mill¦description: > 30 hp mill¦91:20: a value may not begin with \"|\" or \">\"; expected quotation marks around the whole text",
        "description: 30 hp mill¦description: *30 hp mill¦91:18: \"*30\" would repeat what \"&30\" names, and nothing before it has that name; expected a name that is given further up, or quotation marks around a text that begins with \"*\"",
        "description: 30 hp mill in place of the 15 hp one¦description: \"30\\hp\"¦91:22: a backslash within double quotation marks; expected two backslashes, or single quotation marks around the text",
        "hurdline: 1¦%YAML\\nhurdline: 1¦6:1: a line may not begin with \"%\"; expected the keys of a plant",
        "plant: Willow¦...\\nplant: Willow¦8:1: the plant has ended before this line; expected one plant in a file, without a line \"...\"",
        "    power: 10 hp¦    power:_10 hp¦25:11: a non-breaking space stands here; expected a plain space",
        "    power: 10 hp¦   _power: 10 hp¦25:4: a non-breaking space stands here; expected a plain space",
        "    feed~table: 4 bales¦_\\n    feed~table: 4 bales¦26:1: a non-breaking space stands here; expected a plain space",
      })
  void aSlipThatMakesATextUnreadableIsToldAtItsPlace(String old, String now, String said) {
    assertThat(problems(old, now)).containsExactly("p.yaml:" + said);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '¦',
      ignoreLeadingAndTrailingWhitespace = false,
      quoteCharacter = '`',
      value = {
        "{stalk: 1600 bales}¦{stalk: 1,600 bales}¦75:20 yard.on~hand.stalk: \"1,600 bales\" has a comma in its number; write the digits together, with a point for decimals; expected a number of bales such as \"6 bales\", 0 or more",
        "cost: 7 USD}¦cost: 1, 007 USD}¦46:45 packages.bale.cost: \"1,007 USD\" has a comma in its number; write the digits together, with a point for decimals; expected an amount of money such as \"1400 USD\", 0 or more",
        "cost: 7 USD}¦cost: 1,007,000 USD}¦46:45 packages.bale.cost: \"1,007,000 USD\" has a comma in its number; write the digits together, with a point for decimals; expected an amount of money such as \"1400 USD\", 0 or more",
        "holds: 6 t}¦holds: 6,5 t}¦33:32 machines.hurd~bin.holds: \"6,5 t\" has a comma in its number; write the digits together, with a point for decimals; expected a mass such as \"1050 lb\" or \"9 t\", above 0",
        "{count: 1}¦{count: 1,000}¦72:19 resources.loader.count: \"1,000\" is not a bare whole number: it has a comma in it; expected a bare whole number, 0 or more",
        "{exponential: {mean: 7 h}}¦{observed: [1,400 s, 3 s]}¦31:34 machines.saw.stops.choke.every.observed.0: \"1,400 s\" has a comma in its number; write the digits together, with a point for decimals; expected a time such as \"12 min\" or \"8 h\", 0 or more",
        "    power: 10 hp¦    power: 10_hp¦25:12 machines.feeder.power: \"10 hp\" holds a non-breaking space; type a plain space in its place, or none; expected a power such as \"15 kW\" or \"25 hp\", 0 or more",
        "    power: 10 hp¦    power_: 10 hp¦25:5 machines.feeder.power_: the key \"power\" is written with a non-breaking space; expected plain spaces around keys",
        "shifts: [day]}¦shifts: [day_]}¦66:67 season.0.shifts.0: \"day_\" is no shift, and holds a non-breaking space; expected a shift of the calendar, perhaps \"day\"",
        "{count: 1}¦{count:1}¦72:12 resources.loader.count:1: no colon and space between \"count\" and its value in \"count:1\"; expected \"count: 1\"",
        "{count: 1}¦{count 1}¦72:12 resources.loader.count 1: no colon and space between \"count\" and its value in \"count 1\"; expected \"count: 1\"",
      })
  void aSlipInAValueIsOneProblem(String old, String now, String said) {
    assertThat(problems(old, now)).containsExactly("p.yaml:" + unescaped(said));
  }

  /** In a list bare numbers and numbers with a unit may well stand side by side. */
  @Test
  void aListOfNumbersIsNotTakenForOneWithACommaInIt() {
    assertThat(problems("{exponential: {mean: 7 h}}", "{observed: [1 h,400 min, 3 h]}")).isEmpty();
  }

  @Test
  void whereThereIsNoShiftThatIsToldOnce() {
    assertThat(
            problems(
                "    day: {days: [Mon, Tue, Wed, Thu, Fri], from: \"07:00\", to: \"15:30\", rests: OPEN{at: \"11:00\", lasts: 30 min}]}",
                "    {}"))
        .containsExactly(
            "p.yaml:13:3 calendar.shifts: there is no shift, so nothing would ever work; expected at least one, such as \"day: {from:"
                + " \"06:00\", to: \"14:30\"}\"");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "wage: 24 USD/h|wage: 9e99 USD/h|money.wage: \"9e99 USD/h\" is more than any plant has; expected money per time such as \"26 USD/h\", 0 or more",
        "cost: 60000 USD|cost: 9e99 USD|options.bigger_mill.cost: \"9e99 USD\" is more than any plant has; expected an amount of money such as \"1400 USD\", 0 or more",
        "price: 280 USD/ton|price: 2e15 USD/ton|products.hurd.price: \"2e15 USD/ton\" is more than any plant has; expected a price such as \"260 USD/ton\"",
        "holds: 6 t}|holds: 9e99 t}|machines.hurd_bin.holds: \"9e99 t\" is more than any plant has; expected a mass such as \"1050 lb\" or \"9 t\", above 0",
        "exponent: 0.75|exponent: 9e9|machines.mill.grinding.exponent: \"9e9\" is too large; expected a bare number, at least 0, up to 1000000",
      })
  void whatNoPlantHasIsRefused(String old, String now, String said) {
    assertThat(new Edited(SMALL.replace(old, now)).problems())
        .singleElement()
        .asString()
        .endsWith(said);
    String cents =
        "wage: 900000000000000 USD/h"; // in the smallest of currencies that may well be a wage bill
    assertThat(new Edited(SMALL.replace("wage: 24 USD/h", cents)).problems()).isEmpty();
  }

  @Test
  void aCampaignInWhichNoShiftStartsIsWarnedOf() {
    String weekend =
        SMALL.replace("from: 2027-03-01, to: 2027-05-28", "from: 2027-03-06, to: 2027-03-07");
    assertThat(new Edited(weekend).read().warnings())
        .extracting(LocatedProblem::text)
        .contains(
            "p.yaml:66:5 season.0: none of its shifts starts from 2027-03-06 to 2027-03-07; the line will not work; check dates, days of"
                + " the week and closed days");
    assertThat(new Edited(SMALL).read().warnings()).isEmpty();
  }
}
