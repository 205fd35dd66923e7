package hurdline.plant;

import hurdline.unit.Counted;
import java.time.Month;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The yard and what comes into it. */
final class YardRules {
  private YardRules() {}

  static void check(Plant plant, Names names, Problems found) {
    Yard yard = plant.yard();
    Set<String> crops = names.crops.keySet();
    yard.onHand()
        .keySet()
        .forEach(crop -> found.known("yard.on_hand." + crop, crop, crops, "no crop", "a crop"));
    yard.lifts()
        .keySet()
        .forEach(crop -> found.known("yard.lift." + crop, crop, crops, "no crop", "a crop"));
    for (Yard.Place place : yard.places()) {
      for (int i = 0; i < place.crops().size(); i++) {
        found.known(
            "yard.places." + place.name() + ".crops." + i,
            place.crops().get(i),
            crops,
            "no crop",
            "a crop");
      }
    }
    yard.places().forEach(place -> ground(place, plant, found));
    yard.places().forEach(place -> limits(place, found));
    yard.places().forEach(place -> cover(place, found));
    yard.places().forEach(place -> rain(place, plant, found));
    if (yard.pick() instanceof Yard.ByPlace pick) {
      picks(pick.places(), names, found);
    }
    fits(yard, plant.crops(), crops, found);
    plant.deliveries().forEach(delivery -> delivery(delivery, crops, found));
  }

  /** A stack's ground follows from the bales in it, and what the ground costs from the stacks. */
  private static void ground(Yard.Place place, Plant plant, Problems found) {
    String path = "yard.places." + place.name();
    if (place.costPerM2() > 0 && place.stack().isEmpty()) {
      found.add(
          path + ".cost",
          "a price of ground for a place that names no stack, from which its ground follows",
          "\"stack: {long: 10, wide: 4, high: 4, lane: 20 ft}\" beside it");
    }
    if (place.stack().isPresent()) {
      plant.crops().stream()
          .filter(crop -> place.takes(crop.name()))
          .filter(crop -> crop.bale().size().isEmpty())
          .forEach(
              crop ->
                  found.add(
                      path + ".stack",
                      "a stack of bales of \"" + crop.name() + "\", whose size is not given",
                      "\"long\", \"wide\" and \"high\" under crops."
                          + crop.name()
                          + (crop.modules() ? ".module" : ".bale")
                          + ", or \"diameter\" and \"width\" of a round one"));
      plant.crops().stream()
          .filter(crop -> place.takes(crop.name()))
          .filter(crop -> crop.bale().size().filter(Bale.Size::round).isPresent())
          .filter(crop -> place.stack().get().highBales() > place.stack().get().wideBales())
          .forEach(
              crop ->
                  found.add(
                      path + ".stack.high",
                      "round bales of \""
                          + crop.name()
                          + "\" in more layers than the lowest is bales across",
                      "at most "
                          + Counted.of(place.stack().get().wideBales(), "layer")
                          + ", each one narrower"));
    }
  }

  private static void cover(Yard.Place place, Problems found) {
    if (place.cover().isPresent() && place.stack().isEmpty()) {
      found.add(
          "yard.places." + place.name() + ".cover",
          "a cover for stacks of a place that names no stack",
          "\"stack: {long: 10, wide: 4, high: 4, lane: 20 ft}\" beside it");
    }
  }

  private static void limits(Yard.Place place, Problems found) {
    boolean ofStacks =
        place
            .limits()
            .map(limits -> limits.stackKg().isPresent() || limits.stackValue().isPresent())
            .orElse(false);
    if (ofStacks && place.stack().isEmpty()) {
      found.add(
          "yard.places." + place.name() + ".limits",
          "a limit of stacks in a place that names no stack",
          "\"stack: {long: 10, wide: 4, high: 4, lane: 20 ft}\" beside it");
    }
  }

  /** Rain is drawn with what brings a crop. */
  private static void rain(Yard.Place place, Plant plant, Problems found) {
    boolean isWetted =
        place.climateAsCovered().map(climate -> climate.wet().isPresent()).orElse(false);
    if (isWetted
        && plant.deliveries().stream()
            .noneMatch(delivery -> place.takes(delivery.crop()) && delivery.mayRain())) {
      found.add(
          "yard.places." + place.name() + ".moisture.wet",
          "rain would wet bales there, and no crop that lies there has wet days",
          "\"weather\" of such a crop under \"deliveries\", or neither \"wet\" nor \"wet_within\"");
    }
  }

  private static void picks(List<String> places, Names names, Problems found) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < places.size(); i++) {
      String path = "yard.pick.places." + i;
      found.known(path, places.get(i), names.places.keySet(), "no place of the yard", "a place");
      if (!seen.add(places.get(i))) {
        found.add(
            path, "\"" + Problems.cut(places.get(i)) + "\" stands here twice", "each place once");
      }
    }
  }

  private static void fits(Yard yard, List<Crop> all, Set<String> crops, Problems found) {
    if (yard.places().stream().anyMatch(place -> !crops.containsAll(place.crops()))) {
      return; // what a place is for is not known
    }
    yard.withoutRoom()
        .forEach(
            (crop, left) -> {
              int bales = yard.onHand().get(crop);
              boolean modules = all.stream().anyMatch(c -> c.name().equals(crop) && c.modules());
              String counted = modules ? " modules" : " bales";
              if (left > 0 && crops.contains(crop)) {
                found.add(
                    "yard.on_hand." + crop,
                    bales
                        + counted
                        + " on hand are "
                        + left
                        + " more than the places for \""
                        + crop
                        + "\" hold",
                    "at most " + (bales - left) + counted + ", or larger places");
              }
            });
  }

  private static void delivery(Delivery delivery, Set<String> crops, Problems found) {
    String path = "deliveries." + delivery.crop();
    found.known(path, delivery.crop(), crops, "no crop", "a crop");
    if (delivery.weather() instanceof Delivery.WetChain chain) {
      weather(chain.usual(), path + ".weather", found);
      chain
          .byMonth()
          .forEach((month, wet) -> weather(wet, path + ".weather.by_month." + word(month), found));
    }
    delivery
        .loads()
        .filter(loads -> !(loads.everyS().meanWithin(0, Double.POSITIVE_INFINITY) >= 1))
        .ifPresent(
            loads ->
                found.add(
                    path + ".loads.every",
                    "loads would come faster than one a second",
                    "a mean time of 1 s or more between loads"));
    delivery
        .loads()
        .filter(loads -> loads.to().isBefore(loads.from()))
        .ifPresent(
            loads ->
                found.add(
                    path + ".loads.to",
                    loads.to() + " is before " + loads.from() + ", its first day",
                    "a date from " + loads.from() + " on"));
  }

  /** As a plant file has it: {@code Jan}. */
  private static String word(Month month) {
    return month.name().charAt(0) + month.name().substring(1, 3).toLowerCase(Locale.ROOT);
  }

  /** After a dry day it is wet with chance w(1 − q)/(1 − w); w of 0 and 1 mean never and always. */
  private static void weather(Delivery.Wetness weather, String path, Problems found) {
    double w = weather.wetDay();
    double q = weather.wetAfterWet();
    double afterDry = w * (1 - q) / (1 - w);
    if (w > 0 && w < 1 && afterDry > 1 + 1e-12) {
      found.add(
          path + ".wet_after_wet",
          "such weather cannot be: with "
              + Problems.percent(w)
              + " wet days, a dry day would be followed by a wet one with a chance of "
              + Problems.percent(afterDry),
          "at least "
              + Problems.percent(2 - 1 / w)
              + " of wet days after a wet one, or fewer wet days");
    }
  }
}
