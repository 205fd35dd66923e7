package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Rules on shares, loops, bins and what limits them. */
class FlowRulesTest {
  private static final String CYCLONE = "      cyclone: {rate: 2 t/h, to: dust}\n";
  private static final String PRESS = "          - {to: press}\n";

  @Test
  void oneOutletGetsTheRest() {
    Edited.with(PRESS, PRESS + "          - {to: waste}\n")
        .saysOnly(
            "lines.stalk_line.steps.saw.outlets.3: a second of the outlets has no \"takes\"; only"
                + " one can get the rest; expected \"takes\" with a share of each component, for"
                + " all outlets but one");
  }

  @Test
  void withoutOneThatGetsTheRestAllIsTaken() {
    Edited.with("{to: lint}]", "{to: lint, takes: {lint: 90 %}}]")
        .saysOnly(
            "lines.cotton_line.steps.gin.outlets: the outlets do not take all of lint, and none"
                + " gets the rest; expected one outlet without \"takes\", or shares of 100 % in"
                + " all");
    assertThat(Edited.with("{to: lint}]", "{to: lint, takes: {lint: 100 %}}]").problems())
        .isEmpty();
  }

  @Test
  void noComponentIsTakenTwice() {
    Edited.with("takes: {fines: 45 %}", "takes: {fines: 45 %, hurd: 20 %}")
        .saysOnly(
            "lines.stalk_line.steps.saw.outlets: the outlets take 110 % of \"hurd\"; expected at"
                + " most 100 % of each component in all \"takes\" together");
  }

  @Test
  void correctedSharesLeaveARestToSomeone() {
    Edited.with(
            "{to: lint}]", "{to: lint, takes: {lint: 100 %}, by_moisture: {lint: [[8 %, 0.9]]}}]")
        .saysOnly(
            "lines.cotton_line.steps.gin.outlets: shares are corrected, but no outlet gets what"
                + " they then leave; expected one outlet without \"takes\"");
  }

  @Test
  void aLoopThatReturnsEverythingIsRefused() {
    Edited.with(
            PRESS,
            "          - {to: press, takes: {long_fiber: 10 %}}\n          - {to: cyclone}\n")
        .and(CYCLONE, "      cyclone: {rate: 2 t/h, to: saw}\n")
        .and("collects: 98.5 %", "collects: 100 %")
        .saysOnly(
            "lines.stalk_line.steps.saw: a loop returns everything: \"fines\", \"lint\" cannot"
                + " leave saw, cyclone; expected an outlet on the way round that lets some of it"
                + " out");
  }

  @Test
  void aLoopThatLetsSomeOutIsAllowed() {
    assertThat(
            Edited.with(
                    CYCLONE,
                    "      cyclone: {rate: 2 t/h, outlets: [{to: saw, takes: {fines: 90 %}}, {to:"
                        + " dust}]}\n")
                .problems())
        .isEmpty();
  }

  @Test
  void aLoopThatACorrectionClosesIsRefused() {
    assertThat(
            Edited.with(
                    CYCLONE,
                    "      cyclone: {rate: 2 t/h, outlets: [{to: cyclone, takes: {fines: 60 %},"
                        + " by_moisture: {fines: [[8 %, 1], [20 %, 2]]}}, {to: dust}]}\n")
                .and("collects: 98.5 %", "collects: 100 %")
                .problems())
        .singleElement()
        .asString()
        .contains(
            "a loop returns everything: \"fines\" cannot leave cyclone where the corrections are"
                + " largest");
  }

  @Test
  void somethingLimitsWhatIsDrawnFromABin() {
    Edited.with("surge_bin: {to: mill,", "surge_bin: {to: dust,")
        .saysOnly(
            "lines.stalk_line.steps.surge_bin: nothing limits what is drawn from the bin"
                + " \"surge_bin\", so it would empty in no time; expected a \"rate\" in a step"
                + " behind it");
  }

  @Test
  void aCircleThroughTwoBinsIsRefused() {
    Edited.with(
            "  fans:     {kind: fan, power: 60 kW}",
            "  fans:     {kind: fan, power: 60 kW}\n  late_bin: {kind: bin, holds: 3 t}")
        .and(
            "        to: bagger\n",
            "        outlets: [{to: late_bin, takes: {hurd: 10 %}}, {to: bagger}]\n"
                + "      late_bin: {to: screen}\n"
                + "      screen: {rate: 1 t/h, outlets: [{to: surge_bin, takes: {hurd: 50 %}}, {to:"
                + " dust}]}\n")
        .and(
            "  gin:      {kind: gin-stand",
            "  screen: {kind: conveyor}\n  gin:      {kind: gin-stand")
        .saysOnly(
            "lines.stalk_line.steps.surge_bin: a circle through two or more bins: surge_bin,"
                + " late_bin, surge_bin; fresh feed can crowd out the return until all stands"
                + " still; expected a return within a stretch, or into the bin it was drawn from");
  }

  @Test
  void aReturnIntoTheBinThatItWasDrawnFromNeedsAStopLevel() {
    Edited returns =
        Edited.with(
            "        to: bagger\n",
            "        outlets: [{to: surge_bin, takes: {hurd: 10 %}}, {to: bagger}]\n");
    assertThat(returns.problems()).isEmpty();
    returns
        .and("holds: 60 m3, start_at: 10 m3, stop_at: 2 m3", "holds: 60 m3")
        .saysOnly(
            "lines.stalk_line.steps.surge_bin: material returns into the bin \"surge_bin\" that it"
                + " was drawn from, and that bin has no \"stop_at\" above 0; expected \"start_at\""
                + " and \"stop_at\" in machines.surge_bin, or a return past the bin");
  }

  @Test
  void levelsOfABinAreInOrder() {
    Edited.with("start_at: 10 m3, stop_at: 2 m3", "start_at: 10 m3, stop_at: 12 m3")
        .saysOnly(
            "machines.surge_bin.stop_at: \"stop_at\" is not below \"start_at\"; expected 0 or more,"
                + " and below \"start_at\"");
    Edited.with("start_at: 10 m3", "start_at: 70 m3")
        .saysOnly(
            "machines.surge_bin.start_at: \"start_at\" is above what the bin holds, so its draw"
                + " would never start; expected a level up to \"holds\"");
    Edited.with("start_at: 10 m3, stop_at: 2 m3", "stop_at: 2 m3")
        .saysOnly(
            "machines.surge_bin.stop_at: \"stop_at\" stands without \"start_at\"; expected both, or"
                + " neither for a plain bin");
    Edited.with("start_at: 10 m3", "start_at: 10 t")
        .saysOnly(
            "machines.surge_bin.start_at: \"10 t\" has the wrong unit; expected a volume such as"
                + " \"60 m3\" or \"80 yd3\", above 0");
    Edited.with("holds: 60 m3, start_at: 10 m3, stop_at: 2 m3", "holds: 0 t")
        .saysOnly(
            "machines.surge_bin.holds: \"0 t\" is 0, which cannot be; expected a mass such as"
                + " \"1050 lb\" or \"9 t\", above 0");
  }

  @Test
  void aBinOfAVolumeKnowsHowLooseEverythingLies() {
    Edited.with("lint:        {bulk_density: 60 kg/m3}", "lint:        {}")
        .saysOnly(
            "machines.surge_bin.holds: the bin holds a volume, but there is no bulk density of"
                + " lint; expected components as a map with a density each, such as \"lint: {bulk_density:"
                + " 110 kg/m3}\", or a mass here");
  }

  @Test
  void whatDrawsWithItsFlowHasALimit() {
    Edited.with(
            "  gin:      {kind: gin-stand, power: 160 kW}",
            "  gin:      {kind: gin-stand, power: 160 kW, draws: with-flow}")
        .and("gin: {rate: 8 t/h, outlets", "gin: {outlets")
        .saysOnly(
            "machines.gin.draws: it draws with its flow, but has no rate in line \"cotton_line\" to"
                + " measure that flow by; expected a \"rate\" in its step there, or \"draws: while-up"
                + "\"");
  }

  @Test
  void aScreenThatMakesFinesNeedsThem() {
    Edited.with("  hurd:        {title: Hurd core, bulk", "  shive:       {title: Hurd core, bulk")
        .and("hurd: 60 %, fines: 10 %}", "shive: 60 %, fines: 10 %}")
        .and("{hurd: 90 %, short_fiber", "{shive: 90 %, short_fiber")
        .and("by_moisture: {hurd: [[12", "by_moisture: {shive: [[12")
        .and("hurd: 75 %", "shive: 75 %")
        .and("component: hurd", "component: shive")
        .and("opening: 20 mm, fines: 2 %}", "opening: 20 mm}")
        .saysOnly(
            "machines.mill.screens.fine.fines: a screen makes hurd into fines, but there is no"
                + " component \"hurd\"; expected both among the components, or no \"fines\" here");
  }

  @Test
  void aCompositionSumsToTheWhole() {
    Edited.with("hurd: 60 %, fines: 10 %}", "hurd: 60 %, fines: 9.5 %}")
        .saysOnly(
            "crops.stalk.composition: the shares sum to 99.5 %; expected shares of dry matter that"
                + " sum to 100 %");
    Edited.with("hurd: 75 %", "hurd: 85 %")
        .saysOnly(
            "deliveries.stalk.fields.bench.composition: the shares sum to 110 %; expected shares of"
                + " dry matter that sum to 100 %");
  }
}
