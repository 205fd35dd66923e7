package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Change;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.SeasonEntry;
import hurdline.plant.Variants;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** Options, plans and single values: what they change, and what is said of those that cannot be. */
class VariantsTest {
  private static final Edited FILE = Edited.plantFile();
  private static final Variants VARIANTS = FILE.read().variants();

  private static Change option(String name) {
    return new Change.Named(name);
  }

  private static Change set(String path, String value) {
    return new Change.Value(path, value);
  }

  private static List<String> refused(Variants variants, Change... changes) {
    return Assertions.assertThrows(ProblemsException.class, () -> variants.with(changes)).lines();
  }

  private static double powerHp(Plant plant) {
    return plant.machines().stream()
            .filter(m -> m.name().equals("mill"))
            .findFirst()
            .orElseThrow()
            .common()
            .powerW()
        / 745.69987158227022;
  }

  @Test
  void noChangeGivesThePlantAsItIs() {
    assertThat(VARIANTS.with()).isEqualTo(Edited.plantFile().plant());
  }

  @Test
  void anOptionPatchesThePlant() {
    assertThat(powerHp(VARIANTS.with(option("bigger_mill")))).isEqualTo(75);
  }

  @Test
  void nothingDeletes() {
    Machine.HammerMill mill =
        (Machine.HammerMill)
            VARIANTS.with(option("no_mechanic")).machines().stream()
                .filter(m -> m.name().equals("mill"))
                .findFirst()
                .orElseThrow();
    assertThat(mill.swapNeeds()).isEmpty();
  }

  @Test
  void aPlanReplacesListsWhole() {
    SeasonEntry.Campaign cotton =
        (SeasonEntry.Campaign) VARIANTS.with(option("late_cotton")).season().get(2);
    assertThat(cotton.from()).isEqualTo("2027-10-11");
  }

  @Test
  void optionsTogetherApplyInTurn() {
    Plant both = VARIANTS.with(option("bigger_mill+no_mechanic"));
    assertThat(both).isEqualTo(VARIANTS.with(option("no_mechanic"), option("bigger_mill")));
    assertThat(powerHp(both)).isEqualTo(75);
  }

  @Test
  void optionsThatChangeTheSameToSomethingElseConflict() {
    assertThat(refused(VARIANTS, option("bigger_mill"), option("smaller_mill")))
        .containsExactly(
            "p.yaml:"
                + FILE.line("with: {machines: {mill: {power: 15 hp}}}")
                + ":37 machines.mill.power: option \"bigger_mill\" and option \"smaller_mill\""
                + " both change it, each to something else; expected options that agree on what"
                + " they both change, or only one of them");
  }

  @Test
  void removingCountsAsAValue() {
    Variants variants =
        Edited.with(
                "  no_mechanic:\n",
                "  other_mechanic:\n"
                    + "    with: {machines: {mill: {needs: loader}}}\n"
                    + "  no_mechanic:\n")
            .read()
            .variants();
    assertThat(refused(variants, option("other_mechanic+no_mechanic")))
        .singleElement()
        .asString()
        .contains(" machines.mill.needs: ");
  }

  @Test
  void optionsThatAgreeDoNotConflict() {
    Variants variants =
        Edited.with(
                "  no_mechanic:\n",
                "  same_mill:\n"
                    + "    with: {machines: {mill: {power: 75 hp, screen_change: 1 h}}}\n"
                    + "  no_mechanic:\n")
            .read()
            .variants();
    assertThat(powerHp(variants.with(option("bigger_mill+same_mill")))).isEqualTo(75);
  }

  @Test
  void anUnknownOptionIsToldWithTheNearest() {
    assertThat(refused(VARIANTS, option("biger_mill")))
        .containsExactly(
            "p.yaml: \"biger_mill\" is neither an option nor a plan of this file; expected an"
                + " option or plan, perhaps \"bigger_mill\"");
  }

  @Test
  void anOptionThatChangesNothingIsRefused() {
    Edited.with("{power: 15 hp}", "{power: 25 hp}")
        .saysOnly(
            "options.smaller_mill.with: the option changes nothing; expected a value that differs"
                + " from the plant's own (with option smaller_mill)");
  }

  @Test
  void anOptionThatNamesAMachineThatIsNotThereIsRefused() {
    Edited.with("{mill: {power: 15 hp}}", "{mil: {power: 15 hp}}")
        .saysOnly(
            "machines.mil: it names \"mil\", which is not there; expected a name of the file,"
                + " perhaps \"mill\" (with option smaller_mill)");
    Edited.with("{mill: {power: 15 hp}}", "{mil: null}")
        .saysOnly(
            "machines.mil: it removes \"mil\", which is not there; expected a name of the file,"
                + " perhaps \"mill\" (with option smaller_mill)");
    Edited.with(
            "with: {machines: {mill: {power: 15 hp}}}",
            "with: {resources: {bag_hands: {count: 3}}}")
        .saysOnly(
            "resources.bag_hands: it names \"bag_hands\", which is not there; expected a name of"
                + " the file, perhaps \"bag_hand\" (with option smaller_mill)");
  }

  @Test
  void anOptionMayAddAMachineThatTheLineUses() {
    assertThat(
            Edited.with(
                    "with: {machines: {mill: {power: 15 hp}}}",
                    "with: {machines: {press_2: {kind: press}}, lines: {stalk_line: {steps:"
                        + " {press_2: {rate: 1 t/h, packs: fiber}, cyclone: {to: press_2}}}}}")
                .problems())
        .isEmpty();
  }

  @Test
  void whatAnOptionBreaksIsToldInItsName() {
    Edited.with("{power: 15 hp}", "{power: 15 hpp}")
        .saysOnlyAt(
            "15 hpp",
            "machines.mill.power: \"15 hpp\" has no known unit; perhaps \"hp\" was meant; expected"
                + " a power such as \"15 kW\" or \"25 hp\", 0 or more (with option smaller_mill)");
    Edited.with("{machines: {mill: {power: 15 hp}}}", "{resources: {scale: null}}")
        .saysOnlyAt(
            "weigh: {lasts: 4 min",
            "deliveries.stalk.weigh.needs: \"scale\" is no resource; expected a resource, one of"
                + " loader, mechanic, bag_hand (with option smaller_mill)");
  }

  @Test
  void anOptionDoesNotChangeOptions() {
    Edited.with("with: {machines: {mill: {power: 15 hp}}}", "with: {options: {bigger_mill: null}}")
        .saysOnly(
            "options: a patch may not change \"options\"; expected changes of the plant itself"
                + " (with option smaller_mill)");
  }

  @Test
  void aValueIsSetAtAPath() {
    assertThat(powerHp(VARIANTS.with(set("machines.mill.power", "40 hp")))).isEqualTo(40);
    assertThat(VARIANTS.with(set("season.1.changeover", "9 d")).season().get(1))
        .isEqualTo(new SeasonEntry.Changeover(9, 6));
    assertThat(
            VARIANTS.with(
                set("machines.press.stops.oil.lasts", "{uniform: {low: 1 h, high: 2 h}}")))
        .isNotEqualTo(VARIANTS.with());
  }

  @Test
  void aStarIsEveryOne() {
    Plant plant = VARIANTS.with(set("resources.*.count", "4"));
    assertThat(plant.resources()).allSatisfy(resource -> assertThat(resource.count()).isEqualTo(4));
  }

  @Test
  void aKeyThatHasADefaultMayBeSetWhereTheFileHasNone() {
    assertThat(VARIANTS.with(set("machines.fans.draws", "while-up"))).isEqualTo(VARIANTS.with());
    assertThat(
            VARIANTS.with(
                set("machines.gin.stops.choke", "{every: 3 h, counted: running, lasts: 5 min}")))
        .isNotNull();
  }

  @Test
  void aPathThatLeadsNowhereIsToldWithTheNearest() {
    assertThat(refused(VARIANTS, set("machines.mil.power", "40 hp")))
        .containsExactly(
            "p.yaml machines.mil.power: there is no \"mil\" in machines; expected a name or key,"
                + " perhaps \"mill\"");
    assertThat(refused(VARIANTS, set("machins.mill.power", "40 hp")))
        .containsExactly(
            "p.yaml machins.mill.power: there is no \"machins\"; expected a name or key, perhaps"
                + " \"machines\"");
    assertThat(refused(VARIANTS, set("season.7.changeover", "4 d")))
        .containsExactly(
            "p.yaml season.7.changeover: \"7\" is no place in the list season; expected a place"
                + " from 0 to 2, or * for every one");
    assertThat(refused(VARIANTS, set("machines.mill.power.hp", "4")))
        .containsExactly(
            "p.yaml machines.mill.power.hp: \"machines.mill.power\" holds one value and no \"hp\";"
                + " expected a path that ends there");
  }

  @Test
  void aValueThatIsWrongIsToldWithTheChange() {
    assertThat(refused(VARIANTS, set("machines.mill.power", "40 hpp")))
        .containsExactly(
            "p.yaml machines.mill.power: \"40 hpp\" has no known unit; perhaps \"hp\" was meant;"
                + " expected a power such as \"15 kW\" or \"25 hp\", 0 or more (with"
                + " machines.mill.power=40 hpp)");
    assertThat(refused(VARIANTS, set("machines.mill.pwer", "40 hp")))
        .containsExactly(
            "p.yaml machines.mill.pwer: unknown key \"pwer\"; expected a key of a hammer-mill,"
                + " perhaps \"power\" (with machines.mill.pwer=40 hp)");
    assertThat(refused(VARIANTS, set("machines.mill.power", "{a: ")))
        .singleElement()
        .asString()
        .startsWith(
            "p.yaml machines.mill.power: \"{a:\": the brace \"{\" that opens here is not closed");
    assertThat(refused(VARIANTS, set("machines.mill.power", "")))
        .containsExactly(
            "p.yaml machines.mill.power: no value is given; expected a value such as"
                + " machines.mill.power=25 hp");
  }

  @Test
  void aRuleThatAChangeBreaksIsToldAtItsPlaceInTheFile() {
    assertThat(refused(VARIANTS, set("calendar.to", "2027-11-30")))
        .containsExactly(
            "p.yaml:"
                + FILE.line(
                    "{line: cotton_line, from: 2027-10-04, to: 2027-12-16, shifts: [day, night], send_home")
                + ":47 season.2.to: a campaign outside the calendar: 2027-12-16; expected a"
                + " date from 2027-01-04 to 2027-11-30 (with calendar.to=2027-11-30)");
  }

  @Test
  void anOptionMayBuildOnAnother() {
    Edited file =
        Edited.with(
            "  no_mechanic:\n",
            "  rerouted:\n"
                + "    with: {machines: {press_2: {kind: press}}, lines: {stalk_line: {steps:"
                + " {press_2: {rate: 1 t/h, packs: fiber}, cyclone: {to: press_2}}}}}\n"
                + "  two_boxes:\n"
                + "    with: {machines: {press_2: {boxes: 2}}}\n"
                + "  no_mechanic:\n");
    Variants variants = file.read().variants();
    assertThat(variants.with(option("rerouted+two_boxes")).machines()).hasSize(10);
    assertThat(refused(variants, option("two_boxes")))
        .containsExactly(
            "p.yaml:"
                + file.line("machines: {press_2: {boxes: 2}}")
                + ":23 machines.press_2.kind: the key \"kind\" is missing; expected a kind,"
                + " such as \"kind: separating-saw\" (with two_boxes)");
  }
}
