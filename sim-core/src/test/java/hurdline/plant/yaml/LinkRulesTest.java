package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.measure.Cause;
import org.junit.jupiter.api.Test;

/** Rules on names that lead somewhere and on what may lead where. */
class LinkRulesTest {

  @Test
  void aLinkToNothingIsToldWithTheNearest() {
    Edited.with("rate: 3.6 t/h, to: saw", "rate: 3.6 t/h, to: sav")
        .saysOnly(
            "lines.stalk_line.steps.feeder.to: \"sav\" is no machine, bin or product; expected a"
                + " machine, a bin, a product or \"waste\", perhaps \"saw\"");
  }

  @Test
  void aMachineThatIsLedToHasAStep() {
    Edited.with("      cyclone: {rate: 2 t/h, to: dust}\n", "")
        .saysOnly(
            "lines.stalk_line.steps.saw.outlets.0.to: \"cyclone\" has no step in this line, so what"
                + " reaches it goes nowhere; expected a step \"cyclone: {to: ...}\" in"
                + " lines.stalk_line.steps");
  }

  @Test
  void nothingLeadsIntoABaleFeeder() {
    Edited.with("cyclone: {rate: 2 t/h, to: dust}", "cyclone: {rate: 2 t/h, to: feeder}")
        .saysOnly(
            "lines.stalk_line.steps.cyclone.to: \"feeder\" is a bale-feeder and takes nothing but"
                + " bales; expected another machine, a bin, a product or \"waste\"");
  }

  @Test
  void theFeedIsABaleFeeder() {
    Edited.with("crop: stalk\n    feed: feeder", "crop: stalk\n    feed: saw")
        .saysOnly(
            "lines.stalk_line.feed: the line's feed \"saw\" is not a bale-feeder; expected a"
                + " machine of kind bale-feeder, one of feeder");
  }

  @Test
  void theFeedHasARate() {
    Edited.with("{rate: 3.6 t/h, to: saw, feed_table", "{to: saw, feed_table")
        .saysOnly(
            "lines.stalk_line.steps.feeder: the feed has no \"rate\"; expected a rate such as"
                + " \"rate: 3.6 t/h\"");
  }

  @Test
  void theFeedHasAStep() {
    Edited.with("      feeder: {rate: 9 t/h, feed_table: 2 modules, to: gin}\n", "")
        .saysOnly(
            "lines.cotton_line.feed: the feed \"feeder\" has no step in this line; expected a step"
                + " \"feeder: {rate: 3.6 t/h, to: ...}\"");
  }

  @Test
  void aLineHasOneFeed() {
    Edited.with(
            "  fans:     {kind: fan, power: 60 kW}",
            "  fans:     {kind: fan, power: 60 kW}\n  feeder_2: {kind: bale-feeder}")
        .and(
            "      cyclone: {rate: 2 t/h, to: dust}",
            "      cyclone: {rate: 2 t/h, to: dust}\n      feeder_2: {rate: 1 t/h, to: saw}")
        .saysOnly(
            "lines.stalk_line.steps.feeder_2: a second bale-feeder; the line is fed by \"feeder\";"
                + " expected one feed in a line");
  }

  @Test
  void whatRunsAlongsideTakesNoMaterial() {
    Edited.with("auxiliaries: [fans]", "auxiliaries: [fan]")
        .saysOnly(
            "lines.stalk_line.auxiliaries.0: \"fan\" is no machine; expected a machine, perhaps"
                + " \"fans\"");
    Edited.with("auxiliaries: [fans]", "auxiliaries: [surge_bin]")
        .saysOnly(
            "lines.stalk_line.auxiliaries.0: \"surge_bin\" is a bin and runs with nothing; expected a"
                + " machine that takes no material, such as a fan");
    Edited.with("auxiliaries: [fans]", "auxiliaries: [press]")
        .saysOnlyAt(
            "auxiliaries: [press]",
            "lines.stalk_line.auxiliaries.0: \"press\" has a step in this line too; expected a"
                + " machine that takes no material of this line");
    Edited.with("auxiliaries: [fans]", "auxiliaries: [fans, fans]")
        .saysOnly(
            "lines.stalk_line.auxiliaries.1: \"fans\" stands here twice; expected each machine once");
  }

  @Test
  void aStepLeadsSomewhereOnce() {
    Edited.with("cyclone: {rate: 2 t/h, to: dust}", "cyclone: {rate: 2 t/h}")
        .saysOnly(
            "lines.stalk_line.steps.cyclone: it leads nowhere: it has none of to, outlets and"
                + " packs; expected one of them, such as \"to: waste\" or \"packs: tow\"");
    Edited.with("packs: from-mill", "packs: from-mill, to: waste")
        .saysOnly(
            "lines.stalk_line.steps.bagger.packs: it has to and packs; expected one of to, outlets"
                + " and packs");
  }

  @Test
  void onlyFillersAndPressesPack() {
    Edited.with("cyclone: {rate: 2 t/h, to: dust}", "cyclone: {rate: 2 t/h, packs: fiber}")
        .saysOnly(
            "lines.stalk_line.steps.cyclone.packs: \"cyclone\" is neither a bag-filler nor a press;"
                + " expected \"to\" or \"outlets\" for a machine that does not pack");
  }

  @Test
  void whatIsPackedHasAPackage() {
    Edited.with("packs: fiber, package: bale", "packs: dust")
        .saysOnly(
            "lines.stalk_line.steps.press.packs: the product \"dust\" has no package to fill;"
                + " expected a \"package\" here or in products.dust, or \"to: dust\" here");
  }

  @Test
  void componentsAreKnownWhereverTheyAreNamed() {
    Edited.with("{into: short_fiber, share: 8 %}", "{into: shrt_fiber, share: 8 %}")
        .saysOnly(
            "lines.stalk_line.steps.saw.breakage.long_fiber.into: \"shrt_fiber\" is no component;"
                + " expected a component, perhaps \"short_fiber\"");
    Edited.with("{into: short_fiber, share: 8 %}", "{into: long_fiber, share: 8 %}")
        .saysOnly(
            "lines.stalk_line.steps.saw.breakage.long_fiber.into: \"long_fiber\" would break into"
                + " itself; expected another component");
    Edited.with("takes: {fines: 45 %}", "takes: {finess: 45 %}")
        .saysOnly(
            "lines.stalk_line.steps.saw.outlets.0.takes.finess: \"finess\" is no component;"
                + " expected a component, perhaps \"fines\"");
  }

  @Test
  void aCorrectionHasAShareToCorrect() {
    Edited.with("by_moisture: {hurd:", "by_moisture: {hurdd:")
        .saysOnly(
            "lines.stalk_line.steps.saw.outlets.1.by_moisture.hurdd: \"hurdd\" has no share in this"
                + " outlet's \"takes\" to correct; expected a component that it takes, perhaps"
                + " \"hurd\"");
  }

  @Test
  void aCorrectionOfTheRateHasARateToCorrect() {
    Edited.with("rate: 8 t/h, outlets", "rate_by_moisture: [[8 %, 1]], outlets")
        .saysOnly(
            "lines.cotton_line.steps.gin.rate_by_moisture: there is no \"rate\" here that it could"
                + " correct; expected a rate such as \"rate: 4 t/h\" in the same step");
  }

  @Test
  void aCorrectionByDiameterNeedsACropWithOne() {
    Edited.with("rate: 8 t/h, outlets", "rate: 8 t/h, rate_by_diameter: [[8 mm, 1]], outlets")
        .saysOnly(
            "lines.cotton_line.steps.gin.rate_by_diameter: the line's crop \"seed_cotton\" has no"
                + " \"diameter\" to go by; expected a diameter in crops.seed_cotton, such as"
                + " \"diameter: 11 mm\"");
  }

  @Test
  void pointsOfACorrectionRiseAndHaveAFactor() {
    Edited.with("[[8 %, 0.9], [20 %, 1.3]]", "[[20 %, 0.9], [8 %, 1.3]]")
        .saysOnly(
            "machines.mill.grinding.by_moisture.1.0: \"8 %\" does not lie above the one before it;"
                + " expected values that rise from pair to pair");
    Edited.with("[[8 %, 0.9], [20 %, 1.3]]", "[[8 %, 0], [20 %, 1.3]]")
        .saysOnly(
            "machines.mill.grinding.by_moisture.0.1: \"0\" is too small; expected a bare number"
                + " above 0");
    Edited.with("[[8 %, 0.9], [20 %, 1.3]]", "[[8 %]]")
        .saysOnly(
            "machines.mill.grinding.by_moisture.0: the list has 1 place; expected a value and a"
                + " factor, such as [12 %, 1.0]");
  }

  @Test
  void aFillerBehindAMillNamesAMillOfItsLine() {
    Edited.with("packs: from-mill", "packs: from-saw")
        .saysOnly(
            "lines.stalk_line.steps.bagger.packs: \"saw\" is no hammer-mill; expected \"from-\" and"
                + " the name of a hammer-mill, one of mill");
    Edited.with("packs: from-mill", "packs: from-mil")
        .saysOnly(
            "lines.stalk_line.steps.bagger.packs: \"mil\" is no machine; expected \"from-\" and the"
                + " name of a hammer-mill, perhaps \"mill\"");
  }

  @Test
  void everyScreenInUseMakesAProductWithAPackage() {
    Edited.with("makes: {coarse: coarse, fine: fine}", "makes: {coarse: coarse}")
        .saysOnly(
            "lines.stalk_line.steps.mill.makes: the screen \"fine\" makes no product for the filler"
                + " behind it; expected a product, such as \"fine: fine_hurd\"");
    Edited.with("makes: {coarse: coarse, fine: fine}", "makes: {coarse: coarse, fine: dust}")
        .saysOnly(
            "lines.stalk_line.steps.mill.makes.fine: the product \"dust\" has no package for the"
                + " filler to fill; expected a \"package\" in products.dust or in the filler's"
                + " step");
    Edited.with(
            "makes: {coarse: coarse, fine: fine}", "makes: {coarse: coarse, fine: fine, fin: fine}")
        .saysOnly(
            "lines.stalk_line.steps.mill.makes.fin: \"fin\" is no screen of \"mill\"; expected a"
                + " screen, perhaps \"fine\"");
  }

  @Test
  void aMixNamesEachScreenOnceAndSumsToTheWhole() {
    Edited.with("{screen: fine, share: 40 %}", "{screen: fine, share: 30 %}")
        .saysOnly(
            "lines.stalk_line.steps.mill.mix: the shares sum to 90 %; expected shares that sum to"
                + " 100 %");
    Edited.with("{screen: fine, share: 40 %}", "{screen: fin, share: 40 %}")
        .saysOnly(
            "lines.stalk_line.steps.mill.mix.1.screen: \"fin\" is no screen of \"mill\"; expected a"
                + " screen, perhaps \"fine\"");
    Edited.with("{screen: fine, share: 40 %}", "{screen: coarse, share: 40 %}")
        .saysOnly(
            "lines.stalk_line.steps.mill.mix.1.screen: the screen \"coarse\" stands here twice;"
                + " expected each screen once");
  }

  @Test
  void ordersThatChooseAScreenMustBeThere() {
    Edited.with("mix: [{screen: coarse, share: 60 %}, {screen: fine, share: 40 %}]", "mix: orders")
        .and("makes: {coarse: coarse, fine: fine}", "makes: {coarse: coarse}")
        .saysOnly(
            "lines.stalk_line.steps.mill.mix: orders choose the screen, but no product that it"
                + " makes has one; expected \"orders\" in a product, or a mix of shares");
  }

  private static Edited byOrders(String then) {
    return Edited.with(
        "mix: [{screen: coarse, share: 60 %}, {screen: fine, share: 40 %}]",
        "mix: orders\n        then: " + then);
  }

  @Test
  void whatFollowsOrdersIsAScreenAMixOrNothing() {
    assertThat(byOrders("coarse").problems()).isEmpty();
    assertThat(byOrders("stand-still").problems()).isEmpty();
    assertThat(byOrders("[{screen: coarse, share: 60 %}, {screen: fine, share: 40 %}]").problems())
        .isEmpty();
    byOrders("coarce")
        .saysOnly(
            "lines.stalk_line.steps.mill.then: \"coarce\" is no screen of \"mill\"; expected a"
                + " screen, a mix of them or \"stand-still\", perhaps \"coarse\"");
    byOrders("stand still")
        .saysOnly(
            "lines.stalk_line.steps.mill.then: \"stand still\" is no screen of \"mill\"; expected a"
                + " screen, a mix of them or \"stand-still\", perhaps \"stand-still\"");
    byOrders("[{screen: coarse, share: 60 %}, {screen: fine, share: 30 %}]")
        .saysOnly(
            "lines.stalk_line.steps.mill.then: the shares sum to 90 %; expected shares that sum to"
                + " 100 %");
    byOrders("[]")
        .saysOnly(
            "lines.stalk_line.steps.mill.then: the mix names no screen; expected at least one,"
                + " such as {screen: medium, share: 100 %}");
  }

  @Test
  void nothingFollowsWhereNoOrdersChoose() {
    Edited.with("        min_run: 16 h\n", "        min_run: 16 h\n        then: coarse\n")
        .saysOnlyAt(
            "then: coarse",
            "lines.stalk_line.steps.mill.then: it follows no orders; expected \"mix: orders\""
                + " before it, or no \"then\"");
  }

  @Test
  void aScreenThatFollowsOrdersMakesAProductForTheFiller() {
    byOrders("fine")
        .and("makes: {coarse: coarse, fine: fine}", "makes: {coarse: coarse}")
        .and(
            "coarse: {package: bag,",
            "coarse: {orders: [{mass: 1 t, due: 2027-06-30}], package: bag,")
        .saysOnly(
            "lines.stalk_line.steps.mill.makes: the screen \"fine\" makes no product for the filler"
                + " behind it; expected a product, such as \"fine: fine_hurd\"");
  }

  @Test
  void namesThatAreTakenAreRefused() {
    for (Cause cause : Cause.values()) {
      String[] names =
          switch (cause) {
            case STOP -> new String[] {"a", "b"};
            case RATE, PACKAGE_CHANGE, SCREEN_CHANGE, RESOURCE, STORE -> new String[] {"a"};
            default -> new String[0];
          };
      String word = cause.of(names).replaceAll("\\..*", "");
      if (!word.equals("a")) { // not a machine's own
        Edited.with(
                "  fans:     {kind: fan, power: 60 kW}",
                "  " + word + ":     {kind: fan}\n  fans:     {kind: fan, power: 60 kW}")
            .saysOnly(
                "machines."
                    + word
                    + ": \""
                    + word
                    + "\" is the name of a cause that limits a line; expected another name for the"
                    + " machine");
      }
    }
    Edited.with("hammers: {every", "screen_change: {every")
        .saysOnly(
            "machines.mill.stops.screen_change: \"screen_change\" is a kind of job of its own; expected another name"
                + " for the stop");
    Edited.with("  lint:   {}", "  gin: {}\n  lint:   {}")
        .saysOnly(
            "products.gin: \"gin\" is already the name of a machine; expected another name; the two"
                + " would be mixed up");
    Edited.with("  lint:   {}", "  waste: {}\n  lint:   {}")
        .saysOnly(
            "products.waste: \"waste\" is already the name of what leaves the plant; expected"
                + " another name; the two would be mixed up");
    Edited.with("  late_cotton:", "  bigger_mill:")
        .and("  season: {plan: [base, late_cotton]}\n", "")
        .saysOnly(
            "plans.bigger_mill: \"bigger_mill\" is already the name of an option; expected another"
                + " name; the two would be mixed up");
    Edited.with("  late_cotton:", "  base:")
        .and("  season: {plan: [base, late_cotton]}\n", "")
        .saysOnly(
            "plans.base: \"base\" is already the name of the plant as it is; expected another name;"
                + " the two would be mixed up");
  }

  @Test
  void aResourceThatIsNeededIsThere() {
    Edited.with(
            "change: {triangular: {low: 2 min, mode: 3 min, high: 7 min}}, cost: 13 USD, needs:"
                + " bag_hand",
            "needs: bag_hands")
        .saysOnly(
            "packages.bag.needs: \"bag_hands\" is no resource; expected a resource, perhaps"
                + " \"bag_hand\"");
    Edited.with(
            "screen_change: 40 min\n    needs: mechanic",
            "screen_change: 40 min\n    needs: mechanics")
        .saysOnly(
            "machines.mill.needs: \"mechanics\" is no resource; expected a resource, perhaps"
                + " \"mechanic\"");
    Edited.with("weigh: {lasts: 4 min, needs: scale}", "weigh: {lasts: 4 min, needs: scales}")
        .saysOnly(
            "deliveries.stalk.weigh.needs: \"scales\" is no resource; expected a resource, perhaps"
                + " \"scale\"");
    Edited.with(
            "stalk:       {lasts: 3 min, needs: loader", "stalk:       {lasts: 3 min, needs: loder")
        .saysOnly(
            "yard.lift.stalk.needs: \"loder\" is no resource; expected a resource, perhaps"
                + " \"loader\"");
  }

  @Test
  void aResourceServesKindsOfJobThatAreKnown() {
    Edited.with("screen_change, saw.choke]", "screen_change, saw.chok]")
        .saysOnly(
            "resources.loader.priority.6: \"saw.chok\" is no kind of job; expected a kind of job, or a"
                + " machine and its stop such as saw.choke, perhaps \"saw.choke\"");
    Edited.with("screen_change, saw.choke]", "screen_change, screen_change]")
        .saysOnly(
            "resources.loader.priority.6: \"screen_change\" stands here twice; expected each kind of job once");
  }
}
