package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Rules on the calendar, the season, the yard and what comes into it. */
class SeasonAndYardRulesTest {

  @Test
  void aStackNeedsTheSizeOfABale() {
    Edited.with(", long: 8 ft, wide: 4 ft, high: 3 ft}", "}")
        .saysOnlyAt(
            "stack: {long",
            "yard.places.shed.stack: a stack of bales of \"stalk\", whose size is not given;"
                + " expected \"long\", \"wide\" and \"high\" under crops.stalk.bale, or \"diameter\" and \"width\" of a round one");
  }

  @Test
  void aBaleHasAllThreeMeasuresOrNone() {
    Edited.with(", long: 8 ft, wide: 4 ft, high: 3 ft}", ", long: 8 ft}")
        .and("stack: {long: 10, wide: 4, high: 4, lane: 20 ft}, cost: 14 USD/m2, ", "")
        .and(OF_STACKS, "}")
        .saysOnly(
            "crops.stalk.bale: a part of its measures is missing: wide, high; expected all three or"
                + " none, such as \"long: 8 ft, wide: 4 ft, high: 3 ft\"");
  }

  @Test
  void thePriceOfGroundNeedsAStack() {
    Edited.with("stack: {long: 10, wide: 4, high: 4, lane: 20 ft}, ", "")
        .and(OF_STACKS, "}")
        .saysOnlyAt(
            "cost: 14 USD/m2",
            "yard.places.shed.cost: a price of ground for a place that names no stack, from which its"
                + " ground follows; expected \"stack: {long: 10, wide: 4, high: 4, lane: 20 ft}\""
                + " beside it");
  }

  private static final String OF_STACKS =
      ", limits: {stack_mass: 100 ton, stack_value: 20000 USD, mass: 700 ton, value: 90000 USD},"
          + " cover: {cost: 60 USD, hands: 2, lasts: 30 min, loss: 0.3 %/month}}";

  private static final String ATTENDANCE =
      "hands: {attendance: {stalk_line: {day: {least: 4, own: 5, absence: 5 %, shares: helpers}}},"
          + " shared: {helpers: {hands: 2, absence: 4 %}}}\n";

  private static final String HANDS =
      "  hands: {keys: [crews.stalk_line.day, crews.cotton_line.day], values: [x1, x2], cost: {per:"
          + " 900 USD, fixed: 50 USD, above: x1.5}}\n";

  private static final String STALKS =
      "  - {line: stalk_line, from: 2027-01-04, to: 2027-06-11, shifts: [day]}\n"
          + "  - {changeover: 5 d, hands: 6}\n"
          + "  - {line: cotton_line, from: 2027-10-04";

  @Test
  void aCampaignLiesInTheCalendar() {
    Edited.with(
            "from: 2027-10-04, to: 2027-12-16, shifts", "from: 2027-10-04, to: 2028-01-16, shifts")
        .saysOnly(
            "season.2.to: a campaign outside the calendar: 2028-01-16; expected a date from"
                + " 2027-01-04 to 2027-12-31");
    Edited.with(
            "from: 2027-10-04, to: 2027-12-16, shifts", "from: 2027-10-04, to: 2027-09-16, shifts")
        .saysOnly(
            "season.2.to: 2027-09-16 is before 2027-10-04, its first day; expected a date from"
                + " 2027-10-04 on");
  }

  @Test
  void campaignsThatShareAMachineFollowOneAnother() {
    Edited.with(
            "from: 2027-10-04, to: 2027-12-16, shifts", "from: 2027-06-11, to: 2027-12-16, shifts")
        .saysOnly(
            "season.2: the campaign overlaps that of season.0, and both use feeder; expected"
                + " campaigns one after the other where lines share a machine");
  }

  @Test
  void aNightThatRunsIntoTheNextCampaignOverlapsIt() {
    assertThat(
            Edited.with(
                    STALKS,
                    "  - {line: stalk_line, from: 2027-01-04, to: 2027-06-11, shifts: [night]}\n"
                        + "  - {line: stalk_line, from: 2027-06-12, to: 2027-06-30, shifts:"
                        + " [early]}\n"
                        + "  - {line: cotton_line, from: 2027-10-04")
                .and(
                    "    any:   {from: \"08:00\", to: \"16:00\"}",
                    "    any:   {from: \"08:00\", to: \"16:00\"}\n"
                        + "    early: {from: \"05:00\", to: \"13:00\"}")
                .problems())
        .singleElement()
        .asString()
        .startsWith(
            "p.yaml:"
                + Edited.plantFile().line("2027-12-16, shifts: [day, night], send_home")
                + ":5 season.1: the campaign overlaps that of season.0, and both use ");
  }

  @Test
  void aChangeoverComesAfterACampaign() {
    assertThat(
            Edited.with(
                    STALKS,
                    STALKS.replace("  - {line: cotton", "  - {changeover: 0 d}\n  - {line: cotton"))
                .problems())
        .isEmpty();
    Edited.with(STALKS, "  - {changeover: 5 d, hands: 6}\n  - {line: cotton_line, from: 2027-10-04")
        .saysOnly(
            "season.0.changeover: a changeover before any campaign; expected a campaign before it,"
                + " on whose working days it falls");
    Edited.with(STALKS, STALKS.replace("5 d", "36 h"))
        .saysOnly(
            "season.1.changeover: \"36 h\" is not a whole number; expected whole days, such as"
                + " \"5 d\"");
  }

  @Test
  void shiftsOfACampaignDoNotOverlap() {
    Edited.with(
            "from: 2027-10-04, to: 2027-12-16, shifts: [day, night]",
            "from: 2027-10-04, to: 2027-12-16, shifts: [day, any]")
        .saysOnly(
            "season.2.shifts: the shifts \"day\" and \"any\" overlap; expected shifts of a line"
                + " that follow one another");
    Edited.with(
            "from: 2027-10-04, to: 2027-12-16, shifts: [day, night]",
            "from: 2027-10-04, to: 2027-12-16, shifts: [day, nigt]")
        .saysOnly(
            "season.2.shifts.1: \"nigt\" is no shift; expected a shift of the calendar, perhaps"
                + " \"night\"");
  }

  @Test
  void aRestLiesInItsShift() {
    Edited.with(
            "rests: [{at: \"10:00\", lasts: 30 min}]", "rests: [{at: \"14:15\", lasts: 30 min}]")
        .saysOnly(
            "calendar.shifts.day.rests.0: the rest lies outside its shift; expected a rest that"
                + " begins and ends between the shift's \"from\" and \"to\"");
    Edited.with(
            "rests: [{at: \"10:00\", lasts: 30 min}]",
            "rests: [{at: \"10:00\", lasts: 30 min}, {at: \"10:20\", lasts: 30 min}]")
        .saysOnly(
            "calendar.shifts.day.rests.1: the rest overlaps another rest of the shift; expected"
                + " rests one after the other");
    Edited.with("rests: [{at: \"10:00\", lasts: 30 min}]", "rests: [{at: \"06:00\", lasts: 8.5 h}]")
        .saysOnly(
            "calendar.shifts.day.rests: the rests fill the whole shift; expected a shift with some"
                + " hours to work");
  }

  @Test
  void theCalendarRunsForward() {
    assertThat(
            Edited.with(
                    "  from: 2027-01-04\n  to: 2027-12-31", "  from: 2027-01-04\n  to: 2026-12-31")
                .problems())
        .first()
        .isEqualTo(
            "p.yaml:6:7 calendar.to: 2026-12-31 is before the calendar's first day; expected a date"
                + " from 2027-01-04 on");
  }

  @Test
  void crewsAreOfLinesAndShifts() {
    Edited.with("stalk_line:  {day: 6}", "stalk_lin:  {day: 6}")
        .and(HANDS, "")
        .and(ATTENDANCE, "")
        .saysOnly(
            "crews.stalk_lin: \"stalk_lin\" is no line; expected a line, perhaps \"stalk_line\"");
    Edited.with("stalk_line:  {day: 6}", "stalk_line:  {dya: 6}")
        .and(HANDS, "")
        .and(ATTENDANCE, "")
        .saysOnly(
            "crews.stalk_line.dya: \"dya\" is no shift; expected a shift of the calendar, perhaps"
                + " \"day\"");
  }

  @Test
  void ownHoursLieInTheCalendar() {
    Edited.with("from: 2027-02-01, to: 2027-03-31}", "from: 2026-02-01, to: 2027-03-31}")
        .saysOnly(
            "lines.stalk_line.steps.surge_bin.own_hours.from: hours of its own outside the"
                + " calendar: 2026-02-01; expected a date from 2027-01-04 to 2027-12-31");
    Edited.with("own_hours: {shifts: [night]", "own_hours: {shifts: [nigth]")
        .saysOnly(
            "lines.stalk_line.steps.surge_bin.own_hours.shifts.0: \"nigth\" is no shift; expected a"
                + " shift of the calendar, perhaps \"night\"");
  }

  @Test
  void whatIsOnHandFitsIntoThePlaces() {
    Edited.with("on_hand: {stalk: 800 bales}", "on_hand: {stalk: 1800 bales}")
        .saysOnly(
            "yard.on_hand.stalk: 1800 bales on hand are 100 more than the places for \"stalk\""
                + " hold; expected at most 1700 bales, or larger places");
  }

  /** As the simulation lays them: by name, whatever comes first in the file. */
  @Test
  void balesOnHandAreLaidCropByCropByName() {
    Edited.with(
            "on_hand: {stalk: 800 bales}", "on_hand: {stalk: 1300 bales, seed_cotton: 450 modules}")
        .saysOnly(
            "yard.on_hand.stalk: 1300 bales on hand are 50 more than the places for \"stalk\""
                + " hold; expected at most 1250 bales, or larger places");
    Edited.with(
            "on_hand: {stalk: 800 bales}", "on_hand: {stalk: 1250 bales, seed_cotton: 450 modules}")
        .read();
  }

  @Test
  void cropsAndPlacesOfTheYardAreKnown() {
    Edited.with("crops: [stalk]", "crops: [stak]")
        .saysOnly(
            "yard.places.shed.crops.0: \"stak\" is no crop; expected a crop, perhaps \"stalk\"");
    Edited.with("pick: {places: [row, shed]}", "pick: {places: [rows, shed]}")
        .saysOnly(
            "yard.pick.places.0: \"rows\" is no place of the yard; expected a place, perhaps"
                + " \"row\"");
    Edited.with(
            "    seed_cotton: {lasts: 6 min, modules: 1}",
            "    seed_coton: {lasts: 6 min, modules: 1}")
        .saysOnly(
            "yard.lift.seed_coton: \"seed_coton\" is no crop; expected a crop, perhaps"
                + " \"seed_cotton\"");
  }

  @Test
  void weatherThatCannotBeIsToldWithTheReason() {
    Edited.with("wet_day: 22 %, wet_after_wet: 45 %", "wet_day: 80 %, wet_after_wet: 50 %")
        .saysOnly(
            "deliveries.stalk.weather.wet_after_wet: such weather cannot be: with 80 % wet days, a"
                + " dry day would be followed by a wet one with a chance of 200 %; expected at"
                + " least 75 % of wet days after a wet one, or fewer wet days");
    assertThat(
            Edited.with("wet_day: 22 %, wet_after_wet: 45 %", "wet_day: 100 %, wet_after_wet: 50 %")
                .problems())
        .isEmpty();
  }

  @Test
  void aCropComesFromFieldsOrInLoads() {
    Edited.with(
            "    trucks: {count: 3, bales: 34, load: {lasts: 30 min, needs: loader}, drive: 38"
                + " min}\n",
            "")
        .saysOnly(
            "deliveries.stalk: it has fields but no \"trucks\"; expected the trucks that bring the"
                + " bales of the fields in");
    Edited.with(
            "    loads: {every: {exponential: {mean: 32 min}}, modules: 4, from: 2027-10-04, to:"
                + " 2027-12-10, hours: {from: \"07:00\", to: \"19:00\"}}",
            "    hands: 2")
        .saysOnly(
            "deliveries.seed_cotton: it has neither \"fields\" nor \"loads\"; expected fields with"
                + " hours and trucks, or loads");
    Edited.with("modules: 4, from", "from")
        .saysOnly(
            "deliveries.seed_cotton.loads.bales: the key \"bales\" is missing; expected a bare"
                + " whole number, such as \"bales: 34\"");
    Edited.with("to: 2027-12-10, hours", "to: 2027-09-10, hours")
        .saysOnly(
            "deliveries.seed_cotton.loads.to: 2027-09-10 is before 2027-10-04, its first day;"
                + " expected a date from 2027-10-04 on");
  }

  @Test
  void receivingHoursLieInOneDay() {
    Edited.with("hours: {from: \"07:00\", to: \"18:00\"", "hours: {from: \"18:00\", to: \"07:00\"")
        .saysOnly(
            "deliveries.stalk.hours.to: the hours end at or before they begin; expected hours"
                + " within one day, \"from\" before \"to\", up to \"24:00\"");
  }

  @Test
  void balesOfADayAreWhole() {
    Edited.with("baling: 380 bales/d", "baling: 50.5 bales/d")
        .saysOnly(
            "deliveries.stalk.fields.bench.baling: \"50.5 bales/d\" is not a whole number; expected"
                + " bales per time such as \"380 bales/d\"");
  }

  @Test
  void balesAreByTheDaySinceABalerWorksTheReceivingHoursAlone() {
    Edited.with("baling: 380 bales/d", "baling: 38 bales/h")
        .saysOnly(
            "deliveries.stalk.fields.bench.baling: \"38 bales/h\" is by the hour; expected what the"
                + " baler makes on a dry day, in the receiving hours, such as \"380 bales/d\"");
  }

  @Test
  void cropsThatArePaidAreKnown() {
    Edited.with("crop_prices: {stalk: 145 USD/ton}", "crop_prices: {stalks: 145 USD/ton}")
        .saysOnly(
            "money.crop_prices.stalks: \"stalks\" is no crop; expected a crop, perhaps \"stalk\"");
    Edited.with("moisture_basis: {stalk: 12 %}", "moisture_basis: {stalks: 12 %}")
        .saysOnly(
            "money.moisture_basis.stalks: \"stalks\" is no crop; expected a crop, perhaps"
                + " \"stalk\"");
    Edited.with("at_most: 15 %", "at_most: 100 %")
        .saysOnly(
            "products.fiber.moisture.at_most: \"100 %\" is 100 % or more, which leaves nothing;"
                + " expected a share such as \"12.5 %\", from 0 % to below 100 %");
    Edited.with("dock: 30 %", "dock: 130 %")
        .saysOnly(
            "products.fiber.moisture.dock: \"130 %\" is over 100 %; expected a share such as \"12.5"
                + " %\", from 0 % to 100 %");
    Edited.with("coarse: {package: bag,", "coarse: {package: bags,")
        .saysOnly(
            "products.coarse.package: \"bags\" is no package; expected a package, perhaps \"bag\"");
  }

  @Test
  void modulesStandForBalesOnlyWhereTheCropIsCountedSo() {
    Edited.with("trucks: {count: 3, bales: 34", "trucks: {count: 3, modules: 34")
        .saysOnly(
            "deliveries.stalk.trucks.modules: this crop is counted in bales; expected \"bales\""
                + " here, or a \"module\" in the crop");
    assertThat(Edited.with("modules: 4, from", "bales: 4, from").problems()).isEmpty();
  }

  @Test
  void whatWouldHappenManyTimesASecondIsRefused() {
    Edited.with("{exponential: {mean: 32 min}}", "{exponential: {mean: 0.01 s}}")
        .saysOnly(
            "deliveries.seed_cotton.loads.every: loads would come faster than one a second;"
                + " expected a mean time of 1 s or more between loads");
    Edited.with("bale: {mass: 500 lb}", "bale: {mass: 0.001 kg}")
        .saysOnly(
            "packages.bale.mass: a package so small would be full many times a second; expected a"
                + " mass such as \"260 lb\", 10 g or more");
    Edited.with("bale: {mass: 900 lb}", "bale: {mass: 0.9 kg}")
        .saysOnly(
            "deliveries.stalk.fields.bench.bale.mass: such a bale weighs next to nothing; expected"
                + " a mean mass such as \"1050 lb\", 1 kg or more");
    Edited.with(
            "{every: 400 t, counted: mass, lasts: 5 h}",
            "{every: 0 t, counted: mass, lasts: 0.0000001 s}")
        .saysOnly(
            "machines.mill.stops.hammers.every: \"every\" and \"lasts\" are both 0, so it would"
                + " stop without end; expected an amount above 0 for one of them");
  }

  @Test
  void aMillMovesSomethingThroughEachScreen() {
    Edited.with(
            "fine: {opening: 2 mm, fines: 11 %}}",
            "fine: {opening: 0.00000000001 mm, fines: 11 %}}")
        .saysOnly(
            "machines.mill.screens.fine.opening: the motor would move 1.82e-09 t/h through this"
                + " screen; expected an opening, energy and exponent that give a rate a mill can"
                + " have");
  }
}
