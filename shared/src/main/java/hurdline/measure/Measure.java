package hurdline.measure;

import static hurdline.measure.Unit.BALES;
import static hurdline.measure.Unit.COUNT;
import static hurdline.measure.Unit.DAY;
import static hurdline.measure.Unit.HOUR;
import static hurdline.measure.Unit.KILOGRAM;
import static hurdline.measure.Unit.KILOWATT;
import static hurdline.measure.Unit.KILOWATT_HOUR;
import static hurdline.measure.Unit.MINUTE;
import static hurdline.measure.Unit.MONEY;
import static hurdline.measure.Unit.MONEY_PER_TONNE;
import static hurdline.measure.Unit.PER_HOUR;
import static hurdline.measure.Unit.SHARE;
import static hurdline.measure.Unit.TONNE;
import static hurdline.measure.Unit.TONNE_PER_HOUR;

import java.util.List;
import java.util.Optional;

/**
 * Everything that one replication is measured by; its names are spelled here alone.
 *
 * <p>A name is a pattern whose places in angle brackets stand for names of the plant file: {@code
 * MACHINE_MASS_IN.of("mill")} is {@code machine.mill.mass_in}. Measures of mass have a dry twin,
 * {@code MACHINE_MASS_IN.dryOf("mill")}, {@code machine.mill.mass_in_dry}.
 *
 * <p>One file because it is the one list of measures; a part of it would be looked for in vain.
 */
public enum Measure {
  INTAKE_ON_HAND_AT_START(
      "intake.<crop>.on_hand_at_start",
      BALES,
      "Stock in the yard at the start, which nobody weighed or paid for."),
  INTAKE_WEIGHED_IN(
      "intake.<crop>.weighed_in",
      BALES,
      "Came over the scale and was paid for; stock on hand at the start is not in it."),
  INTAKE_FED("intake.<crop>.fed", BALES, "Used up by the feeder."),
  INTAKE_ON_HAND_AT_END(
      "intake.<crop>.on_hand_at_end",
      BALES,
      "In places, on the table and in the feeder on the last day; a begun one counts as one."),
  INTAKE_TURNED_AWAY("intake.<crop>.turned_away", BALES, "Turned away for want of room."),
  INTAKE_REJECTED("intake.<crop>.rejected", BALES, "Weighed and sent away."),
  INTAKE_FAILED("intake.<crop>.failed", BALES, "Failed their test and were sent away."),
  INTAKE_HELD_AT_FIELD_PEAK("intake.<crop>.held_at_field.peak", BALES, "The most at its fields."),
  YARD_PEAK("yard.<crop>.peak", BALES, "The most that lay in the yard's places at once."),
  YARD_MEAN("yard.<crop>.mean", BALES, "The mean in its places, over the whole horizon."),
  YARD_AGE_MEAN("yard.<crop>.age.mean", DAY, "The mean age when set on the table."),
  YARD_HOURS_FULL(
      "yard.<crop>.hours.full", HOUR, "Hours in which no place that takes the crop had room."),
  YARD_ROOM_NEEDED(
      "yard.<crop>.room_needed",
      BALES,
      "The most room that was wanted at once: by what lay in the places, was promised to what was"
          + " on its way, and was asked for."),
  YARD_WITHOUT_ROOM(
      "yard.<crop>.without_room",
      COUNT,
      "Trucks and loads that had to wait because the yard had no room for them, or were turned"
          + " away."),
  YARD_KEPT_APART("yard.<crop>.kept_apart", BALES, "The most that waited for their release."),
  YARD_PLACE_PEAK("yard.place.<place>.peak", BALES, "The most that lay in this place at once."),
  YARD_PLACE_AGE_MEAN(
      "yard.place.<place>.age.mean", DAY, "The mean age when set on the table from this place."),
  YARD_PLACE_MOISTURE_MEAN(
      "yard.place.<place>.moisture.mean",
      SHARE,
      "Water over mass of all that was set on the table from this place."),
  YARD_PLACE_DAMP("yard.place.<place>.damp", SHARE, "Damp ones of bales set on the table."),
  YARD_PLACE_MASS_PEAK("yard.place.<place>.mass.peak", TONNE, "The most mass that lay there."),
  YARD_PLACE_OVER_MASS("yard.place.<place>.mass.hours_over", HOUR, "Hours above its limit."),
  YARD_PLACE_TIMES_OVER_MASS("yard.place.<place>.mass.times_over", COUNT, "How often above it."),
  YARD_PLACE_VALUE_PEAK("yard.place.<place>.value.peak", MONEY, "The most it was worth."),
  YARD_PLACE_OVER_VALUE("yard.place.<place>.value.hours_over", HOUR, "Hours above its limit."),
  YARD_PLACE_TIMES_OVER_VALUE("yard.place.<place>.value.times_over", COUNT, "How often above."),
  YARD_PLACE_COVERED("yard.place.<place>.covered", COUNT, "Stacks that were covered there."),
  YARD_PLACE_COVER_HOURS("yard.place.<place>.cover_hours", HOUR, "Hand hours of covering them."),
  YARD_PLACE_LOST("yard.place.<place>.lost", TONNE, "Mass that wasted away in this place."),
  MASS_DRAWN(
      "mass.<crop>.drawn",
      TONNE,
      "Mass that the crop's fields were drawn to bear: season factor times yields times areas,"
          + " before any of it is baled."),
  MASS_DRAWN_OVER_MEAN(
      "mass.<crop>.drawn_over_mean",
      SHARE,
      "The drawn crop over its mean under the file's season factor and yields; 1 in a mean year, no"
          + " value where that mean is 0."),
  MASS_ON_HAND_AT_START(
      "mass.<crop>.on_hand_at_start", TONNE, "Mass of the stock in the yard at the start."),
  MASS_WEIGHED_IN(
      "mass.<crop>.weighed_in",
      TONNE,
      "Mass that came over the scale and was paid for; stock on hand at the start is not in it."),
  MASS_FED("mass.<crop>.fed", TONNE, "Mass that the feeder has drawn, part bales included."),
  MASS_LOST_IN_YARD("mass.<crop>.lost_in_yard", TONNE, "Mass that wasted away in the yard."),
  MASS_REJECTED("mass.<crop>.rejected", TONNE, "Mass weighed and sent away."),
  MASS_FAILED("mass.<crop>.failed", TONNE, "Mass that failed its test and was sent away."),
  MASS_PRICE_FACTOR("mass.<crop>.price_factor", SHARE, "Paid over what one price would come to."),
  MASS_LOST_AT_FIELD(
      "mass.<crop>.lost_at_field", TONNE, "Mass that wasted away between baling and the scale."),
  MASS_ON_HAND_AT_END(
      "mass.<crop>.on_hand_at_end",
      TONNE,
      "Mass that was neither fed nor lost in the yard: in places, on trucks, on the table and in"
          + " the feeder on the last day."),
  /** Water only, so it has no dry twin. */
  MASS_DRIED("mass.<crop>.dried", TONNE, "Water that the line's driers sent to the air."),
  /** Water only, too; below 0 where bales took up more. */
  MASS_DRIED_IN_YARD("mass.<crop>.dried_in_yard", TONNE, "Water that went to the air in the yard."),
  LINE_HOURS_SCHEDULED(
      "line.<line>.hours.scheduled", HOUR, "Its shifts less their rests, in its campaigns."),
  LINE_HOURS_LIMITED_BY(
      "line.<line>.hours.limited_by.<cause>",
      HOUR,
      "Scheduled hours in which this limited the line; over all causes they add up to the scheduled"
          + " hours."),
  LINE_HOURS_AFTER_SHIFT(
      "line.<line>.hours.after_shift",
      HOUR,
      "What lifts, package changes and screen changes took beyond the line's hours."),
  LINE_THROUGHPUT("line.<line>.throughput", TONNE_PER_HOUR, "Mass fed per scheduled hour."),
  LINE_TURNOUT("line.<line>.turnout.<product>", SHARE, "Mass of this product over mass fed."),
  LINE_PACKAGES_PER_HOUR(
      "line.<line>.packages_per_hour.<product>", PER_HOUR, "Packages filled per scheduled hour."),
  MACHINE_HOURS("machine.<machine>.hours.<state>", HOUR, "Hours of the horizon in this state."),
  MACHINE_MASS_IN("machine.<machine>.mass_in", TONNE, "Mass that the machine took in."),
  MACHINE_ENERGY("machine.<machine>.energy", KILOWATT_HOUR, "Electricity that the machine drew."),
  MACHINE_CROP_HOURS(
      "machine.<machine>.crop.<crop>.hours.<state>",
      HOUR,
      "Hours that the machine was in this state while this crop had it."),
  MACHINE_CROP_MASS_IN(
      "machine.<machine>.crop.<crop>.mass_in", TONNE, "Mass taken in for lines of this crop."),
  MACHINE_KPI(
      "machine.<machine>.kpi.<kpi>", SHARE, "Ratio of its hours by ISO 22400-2, from memory."),
  MACHINE_STOP_COUNT("machine.<machine>.stop.<stop>.count", COUNT, "How often this stop began."),
  MACHINE_STOP_HOURS(
      "machine.<machine>.stop.<stop>.hours",
      HOUR,
      "Time in which the repair went forward or waited for its resource."),
  MACHINE_SCREEN_HOURS("machine.<machine>.screen.<screen>.hours", HOUR, "Hours on this screen."),
  MACHINE_SCREEN_MASS_IN(
      "machine.<machine>.screen.<screen>.mass_in", TONNE, "Mass taken in on this screen."),
  MACHINE_SCREEN_ENERGY(
      "machine.<machine>.screen.<screen>.energy", KILOWATT_HOUR, "Drawn with this screen in."),
  MACHINE_SCREEN_CHANGES("machine.<machine>.screen_changes", COUNT, "Screen changes of the mill."),
  BIN_LEVEL_MEAN(
      "bin.<bin>.level.mean", TONNE, "Mean that lay in the bin, over the whole horizon."),
  BIN_LEVEL_PEAK("bin.<bin>.level.peak", TONNE, "The most that lay in the bin."),
  BIN_LEVEL_START("bin.<bin>.level.start", TONNE, "What lay in the bin at the start, if known."),
  BIN_LEVEL_END("bin.<bin>.level.end", TONNE, "What lay in the bin at the end of the horizon."),
  BIN_HOURS_FULL("bin.<bin>.hours.full", HOUR, "Hours that the bin was full, nights included."),
  BIN_HOURS_EMPTY("bin.<bin>.hours.empty", HOUR, "Hours that the bin was empty, nights included."),
  PRODUCT_MASS("product.<product>.mass", TONNE, "Mass made."),
  PRODUCT_SOLD(
      "product.<product>.sold",
      TONNE,
      "Mass made, brought to the moisture at which the product is sold, less what found no buyer:"
          + " too wet, or more than was ordered of what sells on orders only."),
  PRODUCT_TOO_WET(
      "product.<product>.too_wet",
      TONNE,
      "Of what was made, the as-is mass that was wetter than the product's at_most."),
  PRODUCT_PACKAGES("product.<product>.packages", COUNT, "Full packages."),
  PRODUCT_PACKAGES_OF("product.<product>.packages.<package>", COUNT, "Full ones of a kind."),
  PRODUCT_REVENUE("product.<product>.revenue", MONEY, "What the product earned."),
  PRODUCT_FREIGHT("product.<product>.freight", MONEY, "Paid to bring it to its buyers."),
  PRODUCT_LEFT("product.<product>.left", TONNE, "As-is mass that left its store."),
  PRODUCT_STOCK_START("product.<product>.stock_at_start", TONNE, "What its store held at first."),
  PRODUCT_STOCK("product.<product>.stock", TONNE, "As-is mass of it that has not left its store."),
  PRODUCT_PICK_UPS("product.<product>.pick_ups", COUNT, "Trucks that fetched it."),
  PRODUCT_STOCK_WORTH("product.<product>.stock_worth", MONEY, "What is left of it is worth."),
  PRODUCT_STOCK_WORTH_START("product.<product>.stock_worth_at_start", MONEY, "What that is worth."),
  STORE_LEVEL_MEAN("store.<store>.level.mean", TONNE, "Mean as-is mass that lay in the store."),
  STORE_LEVEL_PEAK("store.<store>.level.peak", TONNE, "The most that lay in the store."),
  STORE_LEVEL_END("store.<store>.level.end", TONNE, "What lay in the store at the end."),
  STORE_HOURS_FULL("store.<store>.hours.full", HOUR, "Hours in which a package found no room."),
  PRODUCT_SHARE_MEAN(
      "product.<product>.share.<component>.mean", SHARE, "Mean share of a package's dry matter."),
  PRODUCT_SHARE_SD(
      "product.<product>.share.<component>.sd", SHARE, "Standard deviation of it by package."),
  PRODUCT_PRICE_FACTOR(
      "product.<product>.price_factor",
      SHARE,
      "What the product earned over what it would at one price for every package."),
  PRODUCT_POINT_COST(
      "product.<product>.point_cost",
      MONEY,
      "What the product would earn less if each package held one percentage point more of the"
          + " component."),
  PRODUCT_BEYOND_MARKET(
      "product.<product>.beyond_market",
      TONNE,
      "Beyond what its market takes at the price, at its moisture basis: sold for less or not at"
          + " all."),
  PRODUCT_MARKET_COST(
      "product.<product>.market_cost", MONEY, "What it would earn more at its price for all."),
  PRODUCT_PURGE_PACKAGES("product.<product>.purge_packages", COUNT, "Full purge packages."),
  PRODUCT_PURGE("product.<product>.purge", TONNE, "Purge packages, at its moisture basis."),
  PRODUCT_PURGE_COST("product.<product>.purge_cost", MONEY, "What they would earn more."),
  PRODUCT_LATE_DAYS(
      "product.<product>.late_days", DAY, "Days that its orders were late, in total."),
  PRODUCT_ORDER_MET(
      "product.<product>.order.<n>.met", DAY, "Day of the horizon when the n-th was met."),
  PRODUCT_ORDER_LATE_DAYS(
      "product.<product>.order.<n>.late_days", DAY, "Days begun after its date until it was met."),
  PRODUCT_ORDER_MISSING(
      "product.<product>.order.<n>.missing",
      TONNE,
      "What of it was never made or did not leave, at its moisture."),
  PRODUCT_ORDER_PENALTY(
      "product.<product>.order.<n>.penalty", MONEY, "What was charged for its being late."),
  RESOURCE_BUSY(
      "resource.<resource>.busy", SHARE, "Share of its hours that one was in use (utilization)."),
  RESOURCE_WAIT_MEAN(
      "resource.<resource>.wait.mean", MINUTE, "Mean wait of a request, waits of zero included."),
  RESOURCE_QUEUE_PEAK(
      "resource.<resource>.queue.peak", COUNT, "The most requests that waited at once."),
  TRUCKS_TRIPS("trucks.<crop>.trips", COUNT, "Trips ended, loads included."),
  TRUCKS_WAIT_MEAN(
      "trucks.<crop>.wait.mean",
      MINUTE,
      "Mean of a trip's waits at field, gate, scale and loader, by the clock."),
  TRUCKS_TURNAROUND_MEAN(
      "trucks.<crop>.turnaround.mean",
      MINUTE,
      "Mean time from the start of a trip to its end, by the clock."),
  TRUCKS_WAITED_FOR_ROOM(
      "trucks.<crop>.waited_for_room",
      DAY,
      "Days that trucks and loads waited for room in the yard, in total, nights included."),
  MACHINE_AIR_DUST("machine.<machine>.air_dust", KILOGRAM, "What the cyclone let go."),
  AIR_DUST("air.dust", KILOGRAM, "What the cyclones let go."),
  WASTE_MASS("waste.mass", TONNE, "What left the plant as waste."),
  BUILDING_HOURS(
      "building.hours.<use>", HOUR, "Hours of the horizon that the building was in this use."),
  BUILDING_ALONE(
      "building.hours.alone.<line>", HOUR, "Hours in which this line worked and no other did."),
  CREW_LABOR_HOURS(
      "crew.<line>.labor_hours", HOUR, "Hand hours of its shifts worked, rests included."),
  CREW_OVERTIME(
      "crew.<line>.overtime",
      HOUR,
      "Hand hours paid as overtime: those of the line's shifts beyond the weekly limit, and those"
          + " after a shift, which the line's labor hours leave out."),
  CREW_SENT_HOME(
      "crew.<line>.sent_home",
      HOUR,
      "Hand hours of shifts that were not worked nor paid because the yard was empty."),
  CREW_ABSENT("crew.<line>.absent", HOUR, "Hand hours missing in shifts that were worked."),
  CREW_SHORT("crew.<line>.short", HOUR, "Hours of shifts not run since too few came."),
  CREW_CHANGEOVER(
      "crew.<line>.changeover", HOUR, "Hand hours of the changeovers that follow this line."),
  CREW_RECEIVING(
      "crew.<crop>.receiving", HOUR, "Hand hours of receiving, on days with an arrival."),
  ENERGY_TOTAL("energy.total", KILOWATT_HOUR, "Electricity drawn by all machines and base loads."),
  ENERGY_PEAK("energy.peak", KILOWATT, "The highest mean over a clock quarter-hour."),
  ENERGY_PERIOD("energy.<period>.total", KILOWATT_HOUR, "Drawn at this tariff period's price."),
  ENERGY_PERIOD_PEAK("energy.<period>.peak", KILOWATT, "Peak in this tariff period's hours."),
  BASE_LOAD_ENERGY("base_load.<load>.energy", KILOWATT_HOUR, "Drawn by this base load."),
  MONEY_REVENUE("money.revenue", MONEY, "What products earned."),
  MONEY_CROP_COST(
      "money.crop_cost",
      MONEY,
      "Paid for crops weighed in; stock on hand at the start is not in it."),
  MONEY_CROP_AREA("money.crop.<crop>.area", MONEY, "Paid for its area, in its cost."),
  MONEY_CROP_AREA_STOCK("money.crop.<crop>.area_stock", MONEY, "That part of its stock change."),
  MONEY_CROP_FAILED("money.crop.<crop>.failed", MONEY, "Costs of failed loads, in its cost."),
  MONEY_ADVANCE("money.crop.<crop>.advance", MONEY, "Paid for its fields on contract."),
  MONEY_ADVANCE_INTEREST("money.crop.<crop>.advance_interest", MONEY, "Its cost until earned."),
  MONEY_ADVANCE_OPEN("money.crop.<crop>.advance_open", MONEY, "Of it, on bales still to come."),
  MONEY_ADVANCE_SHORT("money.crop.<crop>.advance_short", MONEY, "Of it, more than bales earned."),
  MONEY_WAGES(
      "money.wages",
      MONEY,
      "Paid for shifts, changeovers and receiving, and for overtime in shifts and after them."),
  MONEY_ELECTRICITY(
      "money.electricity", MONEY, "Paid for energy and for each month's peak demand."),
  MONEY_DEMAND(
      "money.demand",
      MONEY,
      "Of what is paid for electricity, the part for each month's peak demand."),
  MONEY_RATCHET("money.ratchet", MONEY, "Paid for demand that was billed and not reached."),
  MONEY_PERIOD_ENERGY(
      "money.electricity.<period>.energy", MONEY, "Paid for energy at this tariff period's price."),
  MONEY_PERIOD_DEMAND(
      "money.electricity.<period>.demand", MONEY, "Paid for peaks in this tariff period's hours."),
  MONEY_PACKAGES("money.packages", MONEY, "Paid for packages."),
  MONEY_STOPS("money.stops", MONEY, "Paid for stops: parts and services."),
  MONEY_LATE_PENALTIES("money.late_penalties", MONEY, "Charged for orders met late."),
  MONEY_DRIER_FUEL("money.drier_fuel", MONEY, "Paid for the heat of driers."),
  MONEY_COVERS("money.covers", MONEY, "Paid for covers of stacks and for covering them."),
  MONEY_COVER_HANDS("money.cover_hands", MONEY, "Of that, for the hands that cover them."),
  MONEY_LINE_COVERS("money.<line>.covers", MONEY, "Paid for covers of this line's crop."),
  MONEY_FREIGHT("money.freight", MONEY, "Paid to bring products to their buyers."),
  MONEY_OVERHEAD("money.overhead", MONEY, "Insurance, upkeep, office and rent."),
  MONEY_STOCK_CHANGE(
      "money.stock_change",
      MONEY,
      "Stock at the end less stock on the first day, at the crop's price."),
  MONEY_PRODUCT_STOCK("money.product_stock", MONEY, "Worth that stored products have gained."),
  MONEY_MARGIN("money.margin", MONEY, "Revenue and stock less all costs, before interest and tax."),
  MONEY_RENT("money.rent", MONEY, "What the tenant pays the owner."),
  MONEY_OWNER(
      "money.owner.margin", MONEY, "The margin less that of the tenant's line, and the rent."),
  MONEY_TENANT(
      "money.tenant.margin",
      MONEY,
      "The margin of the tenant's line less the rent, which covers power and building."),
  MONEY_LINE_REVENUE("money.<line>.revenue", MONEY, "What this line's products earned."),
  MONEY_LINE_CROP_COST("money.<line>.crop_cost", MONEY, "Paid for this line's crop."),
  MONEY_LINE_WAGES(
      "money.<line>.wages",
      MONEY,
      "Paid for this line's shifts, the changeover after it and receiving, and for overtime in"
          + " shifts and after them."),
  MONEY_LINE_PACKAGES("money.<line>.packages", MONEY, "Paid for this line's packages."),
  MONEY_LINE_STOPS("money.<line>.stops", MONEY, "Paid for stops in this line."),
  MONEY_LINE_LATE_PENALTIES(
      "money.<line>.late_penalties", MONEY, "Charged for late orders of this line's products."),
  MONEY_LINE_DRIER_FUEL("money.<line>.drier_fuel", MONEY, "Paid for this line's driers."),
  MONEY_LINE_FREIGHT("money.<line>.freight", MONEY, "Paid for this line's freight."),
  MONEY_LINE_STOCK_CHANGE(
      "money.<line>.stock_change",
      MONEY,
      "Stock of this line's crop at the end less that on the first day."),
  MONEY_LINE_PRODUCT_STOCK("money.<line>.product_stock", MONEY, "What its unsold ones gained."),
  MONEY_LINE_MARGIN(
      "money.<line>.margin",
      MONEY,
      "Revenue and stock of this line less its own costs, before electricity and overhead."),
  MONEY_LINE_MARGIN_PER_TONNE(
      "money.<line>.margin_per_tonne", MONEY_PER_TONNE, "The line's margin per tonne fed."),
  CASH_INTEREST("cash.interest", MONEY, "Interest on its loan, before your accountant."),
  CASH_REPAYMENT("cash.repayment", MONEY, "Paid back of its loan, before your accountant."),
  CASH_DEPRECIATION("cash.depreciation", MONEY, "Written off, before your accountant."),
  CASH_TAX("cash.tax", MONEY, "Tax; below 0 where it lowers other tax; before your accountant."),
  CASH_LEFT("cash.left", MONEY, "Left after loan and tax, before your accountant."),
  SEASON_ENDED(
      "season.<line>.ended",
      DAY,
      "Day of the horizon on which the line's last shift began that was worked, in whichever"
          + " campaign; 1 is the first."),
  SEASON_LEFT_OVER(
      "season.<line>.left_over", BALES, "Bales left when its last campaign ended, anywhere."),
  SEASON_NTH_ENDED(
      "season.<line>.<n>.ended",
      DAY,
      "Day of the horizon on which the last worked shift of the line's n-th campaign began; empty"
          + " where it had none."),
  SEASON_NTH_LEFT_OVER(
      "season.<line>.<n>.left_over", BALES, "Bales left when the line's n-th campaign ended."),
  SEASON_FINISHED(
      "season.finished",
      SHARE,
      "Is 1 where nothing is left of any crop when the last campaign of its lines ends, and of one"
          + " without campaigns at the end; else 0."),
  SEASON_LINE_FINISHED(
      "season.<line>.finished", SHARE, "Is 1 where its last campaign left nothing, else 0."),
  SEASON_MARGIN_FORGONE(
      "season.<line>.margin_forgone",
      MONEY,
      "What the crop left over would have added at the line's margin per bale or module fed."),
  MONEY_MARGIN_LESS_FORGONE(
      "money.margin_less_forgone",
      MONEY,
      "Margin less what the bales left over would have added at their crop's margin per bale fed,"
          + " where that is above 0; no value where crop is left of which nothing was fed."),
  BALANCE_RESIDUAL(
      "balance.residual",
      SHARE,
      "The largest gap in the mass balance over what was taken in; rounding only.");

  private final String pattern;
  private final Unit unit;
  private final String sentence;
  private final NamePattern names;

  Measure(String pattern, Unit unit, String sentence) {
    this.pattern = pattern;
    this.unit = unit;
    this.sentence = sentence;
    this.names = new NamePattern(pattern);
  }

  /** The measure that a full name belongs to. */
  public static Optional<MeasureName> find(String name) {
    return Names.find(name);
  }

  Optional<List<String>> takeApart(String name) {
    return names.takeApart(name);
  }

  /** The pattern, {@code machine.<machine>.mass_in}. */
  public String pattern() {
    return pattern;
  }

  /** The full name, the pattern's places filled in their order. */
  public String of(String... names) {
    return Names.fill(pattern, names);
  }

  /** The full name of the dry twin. */
  public String dryOf(String... names) {
    if (!isMass()) {
      throw new IllegalStateException(pattern + " is no measure of mass and has no dry twin");
    }
    return of(names) + Names.dry();
  }

  public Unit unit() {
    return unit;
  }

  /** Whether it measures mass and so has a dry twin. */
  public boolean isMass() {
    return DryTwins.has(this);
  }

  /** One sentence that explains it. */
  public String sentence() {
    return sentence;
  }
}
