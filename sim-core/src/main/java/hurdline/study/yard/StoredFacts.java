package hurdline.study.yard;

import hurdline.answer.Fact;
import hurdline.answer.SafetyFact;
import hurdline.plant.Machine;
import hurdline.plant.Yard;
import java.util.ArrayList;
import java.util.List;

/**
 * What may lie in one block, place by place and bin by bin: how much of it is allowed is for the
 * local code to say, and model codes let less stand together than a large shed or bin holds.
 */
final class StoredFacts {
  private final YardUnderStudy yard;

  StoredFacts(YardUnderStudy yard) {
    this.yard = yard;
  }

  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    yard.places().forEach(place -> facts.add(place(place)));
    for (Machine machine : yard.plant().machines()) {
      if (machine instanceof Machine.Bin bin) {
        facts.add(bin(bin));
      }
    }
    return facts;
  }

  private Fact place(Yard.Place place) {
    double massKg = place.holds() * yard.crop().bale().massKg().mean();
    return Ground.of(place, yard)
        .map(ground -> ground.plan(place.holds()))
        .map(
            plan ->
                new SafetyFact.StoredInPlace(
                    place.name(),
                    place.holds(),
                    yard.unit(),
                    massKg,
                    plan.balesOfStack(),
                    plan.laneM()))
        .orElseGet(
            () ->
                new SafetyFact.StoredInPlace(
                    place.name(), place.holds(), yard.unit(), massKg, 0, Double.NaN));
  }

  private static Fact bin(Machine.Bin bin) {
    return bin.byVolume()
        ? new SafetyFact.StoredInBin(bin.name(), bin.holds(), Double.NaN)
        : new SafetyFact.StoredInBin(bin.name(), Double.NaN, bin.holds());
  }
}
