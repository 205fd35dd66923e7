package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import org.junit.jupiter.api.Test;

/** What is worth a look though it may be meant. */
class CautionsTest {

  private static void cautions(Edited file, String... lines) {
    assertThat(file.read().warnings())
        .extracting(warning -> file.placed(warning.text()))
        .containsExactly(lines);
  }

  @Test
  void aSoundPlantGivesNone() {
    cautions(Edited.plantFile());
  }

  @Test
  void aMixWithoutAStayIsToldHowItIsSimulated() {
    assertThat(Edited.with("        min_run: 16 h\n", "").read().warnings())
        .singleElement()
        .extracting(LocatedProblem::text, STRING)
        .contains("lines.stalk_line.steps.mill", "it counts as 1 min");
  }

  @Test
  void aMixThatFollowsOrdersNeedsAStayToo() {
    assertThat(
            Edited.with(
                    "mix: [{screen: coarse, share: 60 %}, {screen: fine, share: 40 %}]\n"
                        + "        min_run: 16 h",
                    "mix: orders\n"
                        + "        then: [{screen: coarse, share: 60 %}, {screen: fine, share: 40"
                        + " %}]")
                .and("sells: orders, orders", "orders")
                .read()
                .warnings())
        .singleElement()
        .extracting(LocatedProblem::text, STRING)
        .contains("lines.stalk_line.steps.mill", "it counts as 1 min");
  }

  @Test
  void aScreenWhoseProductSellsOnOrdersOnlyIsToldWhereNoOrderIsOpen() {
    cautions(
        Edited.with(
            "mix: [{screen: coarse, share: 60 %}, {screen: fine, share: 40 %}]",
            "mix: orders\n        then: fine"),
        "p.yaml lines.stalk_line.steps.mill.then: it makes \"fine\" without an order, which"
            + " sells on orders only; what is made beyond the orders earns nothing; name another"
            + " screen, or \"sells: all\" in the product");
  }

  @Test
  void wetBalesAreToldWithWhatTheyCanDo() {
    cautions(
        Edited.with(
            "mean: 12 %, sd: 1 %, low: 7 %, high: 15 %",
            "mean: 16 %, sd: 1 %, low: 7 %, high: 20 %"),
        "p.yaml crops.stalk.moisture: one bale in ten or more has 15 % moisture or more, from"
            + " where it counts as damp (damp_from); damp ones heat, rot and can set themselves on"
            + " fire; check the moisture before stacking and keep to local fire codes");
    cautions(
        Edited.with("moisture: 9 %", "moisture: 14.5 %"),
        "p.yaml crops.seed_cotton.moisture: one module in ten or more has 14.2 % moisture or more,"
            + " from where it counts as damp (damp_from); damp ones heat, rot and can set"
            + " themselves on fire; check the moisture before stacking and keep to local fire"
            + " codes");
  }

  @Test
  void anOutletThatNothingReachesIsTold() {
    cautions(
        Edited.with("{to: waste, takes: {fines: 100 %}}", "{to: waste, takes: {hurd: 100 %}}"),
        "p.yaml lines.cotton_line.steps.gin.outlets.0.to: nothing can reach \"waste\" by"
            + " this outlet; check the shares of the outlets before it");
  }

  @Test
  void aStepThatNothingReachesIsTold() {
    cautions(
        Edited.with(
            "          - {to: cyclone, takes: {fines: 45 %}}",
            "          - {to: waste, takes: {fines: 45 %}}"),
        "p.yaml lines.stalk_line.steps.cyclone: nothing reaches \"cyclone\" in this line;"
            + " leave its step out, or lead something to it");
  }

  @Test
  void aResourceOfNobodyIsTold() {
    cautions(
        Edited.with("bag_hand: {count: 2}", "bag_hand: {count: 0}"),
        "p.yaml resources.bag_hand.count: a count of 0 never serves; whatever needs"
            + " \"bag_hand\" waits for good");
  }

  @Test
  void daysLostToAChangeoverAreTold() {
    cautions(
        Edited.with(
            "{changeover: 5 d, hands: 6}\n  - {line: cotton_line, from: 2027-10-04",
            "{changeover: 5 d, hands: 6}\n  - {line: cotton_line, from: 2027-06-15"),
        "p.yaml season.2.from: the changeover before it lasts to the end of 2027-06-18 and"
            + " costs it 4 working days; begin it later, or the changeover sooner, if that is not"
            + " meant");
  }

  @Test
  void tasksThatDoNotFitIntoTheirDaysAreTold() {
    cautions(
        Edited.with(
            "{changeover: 5 d, hands: 6}\n  - {line: cotton_line, from: 2027-10-04",
            "{changeover: 1 d, hands: 6, tasks: {clear: {title: Clear the floor, lasts: 9 h},"
                + " trial: {lasts: 8 h, after: [clear]}}}\n"
                + "  - {line: cotton_line, from: 2027-10-04"),
        "p.yaml season.1.changeover: its tasks take 17.0 h with its hands, 3 days of shift \"day\""
            + " with 8.0 h each, and only 1 is given; more days or hands, or tasks that may go on"
            + " side by side");
  }

  @Test
  void aShiftWithoutHandsIsTold() {
    cautions(
        Edited.with("cotton_line: {day: 8, night: 7}", "cotton_line: {day: 8}"),
        "p.yaml crews: line \"cotton_line\" works shift \"night\" without a paid hand; name"
            + " its hands under crews.cotton_line; nobody should run machines alone or unattended");
  }

  @Test
  void aProductThatNeverSellsIsTold() {
    cautions(
        Edited.with("fiber:  {title: Long fiber,", "fiber:  {sells: orders, title: Long fiber,"),
        "p.yaml products.fiber.sells: it sells on orders only and has none; it will earn"
            + " nothing");
  }

  @Test
  void aLoadThatNeverFindsRoomIsTold() {
    cautions(
        Edited.with("modules: 4, from", "modules: 900, from"),
        "p.yaml deliveries.seed_cotton: one load is 900 modules and all places for"
            + " \"seed_cotton\" hold 500; such a load never finds room");
  }

  @Test
  void aPriceWithoutAMoistureBasisIsTold() {
    cautions(
        Edited.with("  moisture_basis: {stalk: 12 %}\n", ""),
        "p.yaml products.coarse.price: a price without a moisture basis; it is taken at 12 %; say"
            + " at which moisture it is sold, such as \"moisture: 12 %\", \"moisture: as is\" for"
            + " what is sold as it is weighed, or money.moisture_basis of its crop",
        "p.yaml products.fine.price: a price without a moisture basis; it is taken at 12 %; say at"
            + " which moisture it is sold, such as \"moisture: 12 %\", \"moisture: as is\" for what"
            + " is sold as it is weighed, or money.moisture_basis of its crop",
        "p.yaml money.crop_prices.stalk: a price without a moisture basis; it is paid as weighed,"
            + " water too; say at which moisture it is paid, such as \"moisture_basis: {stalk: 12"
            + " %}\", or \"as is\" if it is paid as weighed");
    assertThat(
            Edited.with("moisture_basis: {stalk: 12 %}", "moisture_basis: {stalk: as is}")
                .read()
                .warnings())
        .hasSize(2)
        .allSatisfy(told -> assertThat(told.path()).startsWith("products."));
    cautions(Edited.with("  lint:   {}", "  lint:   {price: 0.12 USD/lb, moisture: as is}"));
  }

  @Test
  void aProductOfCropsThatArePaidAtDifferentMoisturesIsTold() {
    cautions(
        Edited.with(
                "moisture_basis: {stalk: 12 %}", "moisture_basis: {stalk: 12 %, seed_cotton: 8 %}")
            .and("  dust:   {price: -3 USD/ton, moisture: as is}", "  dust:   {price: -3 USD/ton}")
            .and("{to: waste, takes: {fines: 100 %}}", "{to: dust, takes: {fines: 100 %}}"),
        "p.yaml products.dust.price: it is made from crops that are paid at different moistures (12"
            + " %, 8 %); it is taken as sold at the first; say its own, such as \"moisture: 12"
            + " %\"");
  }

  @Test
  void aLineWithoutACropIsTold() {
    cautions(
        Edited.with("on_hand: {stalk: 800 bales}", "on_hand: {}")
            .and("  stalk:\n    fields:", "  wood:\n    fields:")
            .and(
                "  seed_cotton:\n    module:",
                "  wood: {bale: {mass: 1 t}, composition: {hurd: 100 %}}\n"
                    + "  seed_cotton:\n"
                    + "    module:"),
        "p.yaml lines.stalk_line.crop: no \"stalk\" lies on hand and none is delivered; the"
            + " line will have nothing to work");
  }

  @Test
  void aChangedPlantHasCautionsOfItsOwn() {
    assertThat(Edited.plantFile().read().warnings(new Change.Value("resources.scale.count", "0")))
        .extracting(LocatedProblem::text)
        .containsExactly(
            "p.yaml resources.scale.count: a count of 0 never serves; whatever needs \"scale\""
                + " waits for good");
  }

  @Test
  void aPlaceInWhichBalesComeToBeDampIsTold() {
    cautions(
        Edited.with("wet: 13 %, wet_within: 20 d", "wet: 14.5 %, wet_within: 20 d"),
        "p.yaml yard.places.row.moisture: \"seed_cotton\" may come to have 14.5 % moisture here,"
            + " and counts as damp from 14.2 % (damp_from); damp ones heat, rot and can set"
            + " themselves on fire; measure what lies there and keep to local fire codes");
  }

  @Test
  void aStackOfMoreThanTheFileAllowsIsTold() {
    cautions(
        Edited.with("stack_mass: 100 ton", "stack_mass: 60 ton"),
        "p.yaml yard.places.shed.limits.stack_mass: a full stack of \"stalk\" comes to 140 % of it;"
            + " smaller stacks, as the local fire code and the insurer have them");
  }

  @Test
  void keysThatGoWithFieldsAreIdleWithoutThem() {
    cautions(
        Edited.with(
            "    loads: {every: {exp",
            "    hours: {from: \"01:00\", to: \"02:00\"}\n    loads: {every: {exp"),
        "p.yaml deliveries.seed_cotton.hours: \"hours\" goes with fields, of which there are"
            + " none; the hours of \"loads\" rule");
  }

  @Test
  void whatALifeWouldRestOnIsAskedFor() {
    cautions(
        Edited.with("  repeats: yearly\n", ""),
        "p.yaml calendar: the calendar of 362 days is shorter than a year and does not say how it"
            + " repeats over the life of an option; write \"repeats: yearly\" (every year at the"
            + " same season) or \"repeats: end-to-end\"; without it no net present value is given",
        "p.yaml money.assets: the calendar is neither of whole years nor a season that repeats"
            + " yearly, so no year's loan and tax can be set against its margin; a calendar of"
            + " whole years, or \"repeats: yearly\"; without it there is no cash view in run");
    assertThat(Edited.with("  discount_rate: 9 %/yr\n", "").read().warnings())
        .singleElement()
        .extracting(LocatedProblem::text, STRING)
        .contains(
            "money: no discount rate is given, so money of later years counts in full",
            "\"discount_rate: 9 %/yr\"");
    cautions(Edited.with("  discount_rate: 9 %/yr\n", "  discount_rate: 0 %/yr\n"));
  }

  /** Their makers rest on a plant without problems, so a change that cannot be is refused first. */
  @Test
  void aChangeThatCannotBeIsRefusedBeforeItIsLookedAt() {
    Change[] noDate = {
      new Change.Value("calendar.to", "2028-13-01"), new Change.Value("season.0.to", "2028-13-01")
    };
    assertThatThrownBy(() -> Edited.plantFile().read().warnings(noDate))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("is a date that does not exist");
  }
}
