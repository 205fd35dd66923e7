package hurdline.plant.yaml;

import java.util.Map;

/** What a missing key might look like. */
final class Wanted {
  private static final Map<String, String> BY_KEY =
      Map.ofEntries(
          Map.entry("hurdline", "\"hurdline: 1\""),
          Map.entry("plant", "the plant's name, such as \"plant: Willow Fork gin\""),
          Map.entry("calendar", "\"calendar:\" with from, to and shifts"),
          Map.entry("crops", "\"crops:\" with what a bale of each crop is like"),
          Map.entry("machines", "\"machines:\" with the kind of each machine"),
          Map.entry("lines", "\"lines:\" with a crop, a feed and steps"),
          Map.entry("season", "\"season:\" with at least one campaign"),
          Map.entry("yard", "\"yard:\" with its places"),
          Map.entry(
              "shifts",
              "\"shifts: [day]\" in a campaign, and in the calendar \"day: {from: \"06:00\", to: \"14:30\"}\" below it"),
          Map.entry(
              "composition",
              "shares of dry matter, such as \"composition: {hurd: 70 %, fines: 30 %}\""),
          Map.entry("mass", "a mass, such as \"mass: 1050 lb\""),
          Map.entry("kind", "a kind, such as \"kind: separating-saw\""),
          Map.entry(
              "holds",
              "what it holds, such as \"holds: 9 t\" for a bin or \"holds: 1200 bales\" for a"
                  + " place"),
          Map.entry("power", "a power, such as \"power: 25 hp\""),
          Map.entry("grinding", "\"grinding:\" with energy, measured_at, exponent and motor_load"),
          Map.entry("screens", "\"screens:\" with the opening of each"),
          Map.entry("energy", "an energy per mass, such as \"energy: 12 kWh/t\""),
          Map.entry("measured_at", "an opening, such as \"measured_at: 6 mm\""),
          Map.entry("exponent", "a bare number, such as \"exponent: 0.75\""),
          Map.entry("motor_load", "a share, such as \"motor_load: 80 %\""),
          Map.entry("opening", "a length, such as \"opening: 6 mm\""),
          Map.entry("every", "an amount, such as \"every: 9 h\""),
          Map.entry("counted", "\"counted: running\", mass, crewed or calendar"),
          Map.entry("lasts", "a time, such as \"lasts: 20 min\""),
          Map.entry("due", "a date, such as \"due: 2027-06-30\""),
          Map.entry("crop", "the name of a crop, such as \"crop: stalk\""),
          Map.entry("feed", "the name of a bale-feeder, such as \"feed: feeder\""),
          Map.entry("steps", "\"steps:\" with where each machine sends its material"),
          Map.entry("to", "where it leads or when it ends"),
          Map.entry("from", "where it begins, a date or a clock time"),
          Map.entry("into", "the name of a component, such as \"into: short_fiber\""),
          Map.entry("share", "a share, such as \"share: 8 %\""),
          Map.entry("screen", "the name of a screen"),
          Map.entry("line", "the name of a line"),
          Map.entry("changeover", "whole days, such as \"changeover: 5 d\""),
          Map.entry("below", "how few bales, such as \"below: 1 bale\""),
          Map.entry("after", "weekly hours, such as \"after: 40 h\""),
          Map.entry("pays", "a bare number, such as \"pays: 1.5\""),
          Map.entry("count", "a bare whole number, such as \"count: 1\""),
          Map.entry("places", "\"places:\" with what each holds"),
          Map.entry("long", "bales along a stack, such as \"long: 10\""),
          Map.entry("wide", "bales across a stack, such as \"wide: 4\""),
          Map.entry("high", "bales on top of each other, such as \"high: 4\""),
          Map.entry("lane", "the clear way between stacks, such as \"lane: 20 ft\""),
          Map.entry("area", "an area, such as \"area: 410 acre\""),
          Map.entry("yield", "a yield, such as \"yield: 3.3 ton/acre\""),
          Map.entry("ready", "a date, such as \"ready: 2027-06-10\""),
          Map.entry("baling", "what its baler makes, such as \"baling: 380 bales/d\""),
          Map.entry("drive", "the time one way, such as \"drive: 38 min\""),
          Map.entry("wet_day", "the share of wet days, such as \"wet_day: 22 %\", or a \"file\" of past rain"),
          Map.entry("wet_threshold", "the rain of a wet day, such as \"wet_threshold: 2 mm\""),
          Map.entry("currency", "a currency code, such as \"currency: USD\""),
          Map.entry(
              "with", "a patch on this file, such as \"with: {machines: {mill: {power: 75 hp}}}\""),
          Map.entry("at", "a clock time in quotes, such as \"at: \"10:00\"\""),
          Map.entry("bales", "a bare whole number, such as \"bales: 34\""));

  private Wanted() {}

  static String of(String key) {
    return BY_KEY.getOrDefault(key, "the key \"" + key + "\" here");
  }
}
