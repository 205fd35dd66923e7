package hurdline.plant.yaml;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The keys of every kind of map in a plant file; a key that must be there ends in {@code !}.
 *
 * <p>The binder asks for nothing that is not here, and the JSON Schema beside the format reference
 * is tested against this table.
 */
enum Shape {
  PLANT(
      "a plant",
      "hurdline! plant! calendar! components crops! machines! products packages lines! season!"
          + " crews resources yard! deliveries money options plans"),
  CALENDAR("a calendar", "from! to! shifts! closed repeats"),
  SHIFT("a shift", "title days from! to! rests"),
  REST("a rest", "at! lasts!"),
  COMPONENT("a component", "title bulk_density"),
  CROP("a crop", "title bale module moisture diameter composition! composition_cv"),
  BALE("a bale", "mass! long wide high"),
  FEEDER("a bale-feeder", "title kind! power draws stops feed_table"),
  PLAIN("a machine of this kind", "title kind! power draws stops"),
  CYCLONE("a cyclone", "title kind! power draws stops collects"),
  FILLER("a bag-filler", "title kind! power draws stops spouts"),
  PRESS("a press", "title kind! power draws stops boxes"),
  BIN("a bin", "title kind! holds! start_at stop_at"),
  MILL("a hammer-mill", "title kind! power! draws stops grinding! screens! screen_change needs"),
  GRINDING("the grinding", "energy! measured_at! exponent! motor_load! no_load by_moisture"),
  SCREEN("a screen", "title opening! fines"),
  STOP("a stop", "title every! counted! lasts! initial_age repair needs cost"),
  PRODUCT("a product", "title price package orders sells moisture"),
  PRODUCT_MOISTURE("a product's moisture", "basis at_most dock"),
  ORDER("an order", "mass! due! late_penalty price"),
  PACKAGE("a package", "mass! change cost needs"),
  LINE("a line", "title crop! feed! auxiliaries steps!"),
  STEP("a step", "rate to outlets packs breakage dries priority rate_by_moisture rate_by_diameter"),
  FEEDER_STEP(
      "a feeder's step",
      "rate to outlets packs breakage dries feed_table priority rate_by_moisture rate_by_diameter"),
  MILL_STEP(
      "a mill's step",
      "rate to outlets packs breakage dries priority rate_by_moisture rate_by_diameter mix then"
          + " min_run makes"),
  BIN_STEP("a bin's step", "to own_hours priority"),
  BREAK("a breakage", "into! share!"),
  OUTLET("an outlet", "to! takes by_moisture by_diameter"),
  OWN_HOURS("own hours", "shifts from to"),
  MIX_SHARE("a screen of a mix", "screen! share!"),
  CAMPAIGN("a campaign", "line! from! to! shifts! send_home"),
  SEND_HOME("a send-home rule", "below! back_at"),
  CHANGEOVER("a changeover", "changeover! hands tasks"),
  TASK("a task", "title lasts! hands after"),
  RESOURCE("a resource", "title count! priority"),
  YARD("a yard", "on_hand places! pick when_full field_loss lift"),
  YARD_PLACE("a place", "title holds! loss crops stack cost life"),
  STACK("a stack", "long! wide! high! lane!"),
  PICK("a pick", "places!"),
  LIFT("a lift", "lasts needs bales modules"),
  DELIVERY("a delivery", "fields balers yield_factor weather hours hands trucks loads weigh unload waiting_cost"),
  FIELD(
      "a field",
      "title area! yield! ready! ready_sd baling! bale module moisture diameter composition"
          + " composition_cv"),
  HOURS("hours", "from! to! days"),
  TRUCKS("trucks", "count! bales modules load drive!"),
  LOADS("loads", "every! bales modules from to hours"),
  WEATHER("the weather", "wet_day wet_after_wet file wet_threshold dry_days"),
  JOB("a job", "lasts! needs"),
  MONEY("money", "currency! electricity wage overtime rent crop_prices moisture_basis overhead discount_rate escalation"),
  OVERTIME("overtime", "after! pays!"),
  RENT("a rent", "line! fixed fed"),
  ELECTRICITY("electricity", "energy demand"),
  ESCALATION("escalation", "products crops wages electricity"),
  OPTION("an option", "title description cost life salvage with!"),
  PLAN("a plan", "title description with!"),
  NORMAL("normal", "mean! sd! low high"),
  LOGNORMAL("lognormal", "mean! sd! low high"),
  EXPONENTIAL("exponential", "mean! low high"),
  GAMMA("gamma", "mean! sd! low high"),
  WEIBULL("weibull", "shape! scale! low high"),
  UNIFORM("uniform", "low! high!"),
  TRIANGULAR("triangular", "low! mode! high!"),
  BETA("beta", "mean! sd! low! high!");

  private final String phrase;
  private final Set<String> keys = new LinkedHashSet<>();
  private final List<String> required = new ArrayList<>();

  Shape(String phrase, String table) {
    this.phrase = phrase;
    for (String key : table.split(" ")) {
      String name = key.replace("!", "");
      keys.add(name);
      if (!name.equals(key)) {
        required.add(name);
      }
    }
  }

  String phrase() {
    return phrase;
  }

  Set<String> keys() {
    return keys;
  }

  List<String> required() {
    return required;
  }
}
