package hurdline.study.yard;

import hurdline.answer.GroundPlan;
import hurdline.plant.Change;
import hurdline.plant.Crop;
import hurdline.plant.Nearest;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.Yard;
import hurdline.study.PlantOrigin;
import hurdline.study.PlantOutline;
import java.util.ArrayList;
import java.util.List;

/**
 * The places that take a crop, of which one can be made to hold more or less.
 *
 * @param places in the order in which they are filled
 * @param grown the one whose size is changed
 */
record YardUnderStudy(Plant plant, Crop crop, List<Yard.Place> places, Yard.Place grown) {
  /** No yard of this world holds as many. */
  private static final int NO_LIMIT = 1_000_000;

  /**
   * @throws ProblemsException if the plant has no such crop, no place takes it, or the place asked
   *     for does not
   */
  static YardUnderStudy of(Plant plant, YardAsk ask, PlantOrigin source) {
    String wanted = ask.crop().orElse(plant.crops().get(0).name());
    List<String> known = plant.crops().stream().map(Crop::name).toList();
    if (!known.contains(wanted)) {
      throw source.refusal(
          "\"" + wanted + "\" is no crop of this file", Nearest.expected("a crop", wanted, known));
    }
    List<Yard.Place> places =
        plant.yard().places().stream().filter(place -> place.takes(wanted)).toList();
    if (places.isEmpty()) {
      throw source.refusal(
          "no place of the yard takes \"" + wanted + "\"", "one under yard.places");
    }
    Yard.Place grown =
        ask.place().isPresent()
            ? named(ask.place().get(), wanted, places, source)
            : pricedOrLast(places);
    return new YardUnderStudy(plant, plant.crops().get(known.indexOf(wanted)), places, grown);
  }

  private static Yard.Place named(
      String name, String crop, List<Yard.Place> places, PlantOrigin source) {
    List<String> known = places.stream().map(Yard.Place::name).toList();
    if (!known.contains(name)) {
      throw source.refusal(
          "\"" + name + "\" is no place that takes \"" + crop + "\"",
          Nearest.expected("a place", name, known));
    }
    return places.get(known.indexOf(name));
  }

  /**
   * Ground that costs nothing is no question of money, so the last place with a price goes first.
   */
  private static Yard.Place pricedOrLast(List<Yard.Place> places) {
    Yard.Place last = places.get(places.size() - 1);
    return places.stream()
        .filter(place -> place.costPerM2() > 0)
        .reduce(last, (before, place) -> place);
  }

  String unit() {
    return PlantOutline.unit(crop);
  }

  /** What all places hold as the file has it. */
  int holds() {
    return places.stream().mapToInt(Yard.Place::holds).sum();
  }

  /** What the places beside the one that grows hold. */
  int others() {
    return holds() - grown.holds();
  }

  /**
   * The smallest yard that can be: as little of the place that grows as lets all that is on hand on
   * the first day fit.
   */
  int least() {
    int tooSmall = -1;
    int fits = grown.holds();
    while (fits - tooSmall > 1) {
      int middle = tooSmall + (fits - tooSmall) / 2;
      if (plant.yard().with(grown, middle).withoutRoom().values().stream()
          .allMatch(left -> left == 0)) {
        fits = middle;
      } else {
        tooSmall = middle;
      }
    }
    return others() + fits;
  }

  /** All places of the crop are to hold so many together. */
  Change sized(int bales) {
    return holding(bales - others());
  }

  /**
   * Ground of all places of which the file says how they are stacked; NaN if it says so of none.
   */
  double areaM2(int bales) {
    List<Double> areas = new ArrayList<>();
    for (Yard.Place place : places) {
      Ground.of(place, this).ifPresent(ground -> areas.add(ground.areaM2(holds(place, bales))));
    }
    return areas.isEmpty() ? Double.NaN : areas.stream().mapToDouble(Double::doubleValue).sum();
  }

  /** What a place holds if all hold so many together. */
  int holds(Yard.Place place, int bales) {
    return place.equals(grown) ? Math.max(0, bales - others()) : place.holds();
  }

  /** What the ground of all places costs a year. */
  double groundPerYear(int bales, double discountPerYr) {
    return places.stream()
        .flatMap(place -> Ground.of(place, this).stream())
        .mapToDouble(ground -> ground.moneyPerYear(holds(ground.place(), bales), discountPerYr))
        .sum();
  }

  /**
   * The ground of each place of which the file says how it is stacked, if all hold so many
   * together.
   */
  List<GroundPlan> plans(int bales) {
    return places.stream()
        .flatMap(place -> Ground.of(place, this).stream())
        .map(ground -> ground.plan(holds(ground.place(), bales)))
        .filter(plan -> plan.stacks() > 0)
        .toList();
  }

  Change withoutLimit() {
    return holding(NO_LIMIT);
  }

  private Change holding(int bales) {
    return new Change.Value("yard.places." + grown.name() + ".holds", bales + " bales");
  }
}
