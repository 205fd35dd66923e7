package hurdline.study.yard;

import hurdline.answer.GroundPlan;
import hurdline.answer.Layers;
import hurdline.economics.CapitalRecovery;
import hurdline.plant.Bale;
import hurdline.plant.Yard;
import java.util.Optional;

/**
 * The ground that a place's stacks take.
 *
 * <p>n bales are ⌈n / b⌉ stacks of b = long · wide · high bales, or of round ones, each layer of
 * which is one narrower, long · ({@link Layers}). Each has half a lane on every side: (length +
 * lane) · (width + lane).
 */
record Ground(Yard.Place place, Yard.Stack stack, Bale.Size bale) {

  /** Where the file says how the crop's bales are stacked there. */
  static Optional<Ground> of(Yard.Place place, YardUnderStudy yard) {
    Optional<Bale.Size> bale = yard.crop().bale().size();
    return place
        .stack()
        .filter(stack -> bale.isPresent())
        .map(stack -> new Ground(place, stack, bale.get()));
  }

  private double longM() {
    return stack.longBales() * bale.longM();
  }

  private double wideM() {
    return stack.wideBales() * bale.wideM();
  }

  private int balesOfStack() {
    return stack.bales(bale.round());
  }

  int stacks(int bales) {
    return (bales + balesOfStack() - 1) / balesOfStack();
  }

  double areaM2(int bales) {
    return stacks(bales) * (longM() + stack.laneM()) * (wideM() + stack.laneM());
  }

  /** The even yearly payment that gives the cost of the ground back over its life. */
  double moneyPerYear(int bales, double discountPerYr) {
    return place.costPerM2() > 0
        ? place.costPerM2() * areaM2(bales) * CapitalRecovery.factor(discountPerYr, place.lifeYr())
        : 0;
  }

  GroundPlan plan(int bales) {
    return new GroundPlan(
        place.name(),
        bales,
        stacks(bales),
        stack.longBales(),
        stack.wideBales(),
        stack.highBales(),
        longM(),
        wideM(),
        Layers.heightM(bale.highM(), stack.highBales(), bale.round()),
        stack.laneM(),
        bale.round(),
        areaM2(bales));
  }
}
