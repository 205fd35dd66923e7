package hurdline.study;

import hurdline.answer.GroundPlan;
import hurdline.plant.Change;
import hurdline.plant.Crop;
import hurdline.plant.Nearest;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.Yard;
import java.util.ArrayList;
import java.util.List;

/**
 * The places that take a crop, of which the last can be made to hold more or less.
 *
 * @param places in the order in which they are filled
 */
record CropYard(Plant plant, Crop crop, List<Yard.Place> places) {
  /** No yard of this world holds as many. */
  private static final int NO_LIMIT = 1_000_000;

  /** @throws ProblemsException if the plant has no such crop, or no place takes it */
  static CropYard of(Plant plant, YardAsk ask, Source source) {
    String wanted = ask.crop().orElse(plant.crops().get(0).name());
    List<String> known = plant.crops().stream().map(Crop::name).toList();
    if (!known.contains(wanted)) {
      throw source.refusal(
          "\"" + wanted + "\" is no crop of this file", Nearest.expected("a crop", wanted, known));
    }
    List<Yard.Place> places =
        plant.yard().places().stream().filter(place -> takes(place, wanted)).toList();
    if (places.isEmpty()) {
      throw source.refusal(
          "no place of the yard takes \"" + wanted + "\"", "one under yard.places");
    }
    return new CropYard(plant, plant.crops().get(known.indexOf(wanted)), places);
  }

  private static boolean takes(Yard.Place place, String crop) {
    return place.crops().isEmpty() || place.crops().contains(crop);
  }

  String unit() {
    return Outlines.unit(crop);
  }

  Yard.Place last() {
    return places.get(places.size() - 1);
  }

  /** What all places hold as the file has it. */
  int holds() {
    return places.stream().mapToInt(Yard.Place::holds).sum();
  }

  /** What the places before the last hold. */
  int before() {
    return holds() - last().holds();
  }

  /** The smallest yard that can be: the last place gone, and whatever is on hand on the first day still fits. */
  int least() {
    int onHand =
        plant.crops().stream()
            .map(Crop::name)
            .filter(name -> places.stream().anyMatch(place -> takes(place, name)))
            .mapToInt(name -> plant.yard().onHand().getOrDefault(name, 0))
            .sum();
    return Math.max(before(), onHand);
  }

  /** All places of the crop are to hold so many together. */
  Change sized(int bales) {
    return holding(bales - before());
  }

  /** Ground of all places of which the file says how they are stacked; NaN if it says so of none. */
  double areaM2(int bales) {
    List<Double> areas = new ArrayList<>();
    for (Yard.Place place : places) {
      Ground.of(place, this).ifPresent(ground -> areas.add(ground.areaM2(holds(place, bales))));
    }
    return areas.isEmpty() ? Double.NaN : areas.stream().mapToDouble(Double::doubleValue).sum();
  }

  /** What a place holds if all hold so many together. */
  int holds(Yard.Place place, int bales) {
    return place.equals(last()) ? Math.max(0, bales - before()) : place.holds();
  }

  /** What the ground of all places costs a year. */
  double groundPerYear(int bales, double discountPerYr) {
    return places.stream()
        .flatMap(place -> Ground.of(place, this).stream())
        .mapToDouble(ground -> ground.moneyPerYear(holds(ground.place(), bales), discountPerYr))
        .sum();
  }

  /** The ground of each place of which the file says how it is stacked, if all hold so many together. */
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
    return new Change.Value("yard.places." + last().name() + ".holds", bales + " bales");
  }
}
