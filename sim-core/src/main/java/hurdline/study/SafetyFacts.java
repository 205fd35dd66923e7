package hurdline.study;

import hurdline.answer.Fact;
import hurdline.answer.SafetyFact;
import hurdline.plant.Calendar;
import hurdline.plant.Crop;
import hurdline.plant.Delivery;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Stop;
import hurdline.plant.Yard;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** What in this very plant can hurt someone, by name. */
public final class SafetyFacts {
  /** Common practice, no source: locking out and trying the start takes some minutes by itself. */
  private static final double SHORT_STOP_S = 10 * 60;

  private static final int LONG_SHIFT_S = 10 * 3600;

  private final Plant plant;

  public SafetyFacts(Plant plant) {
    this.plant = plant;
  }

  public List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    add(facts, plant.crops().stream().flatMap(this::wet), SafetyFact.WetBales::new);
    add(facts, dampPlaces(), SafetyFact.DampPlaces::new);
    add(facts, shortStops(), stops -> new SafetyFact.ShortStops(stops, SHORT_STOP_S));
    add(facts, stops(), SafetyFact.LockedOutWork::new);
    add(facts, dusty(), SafetyFact.SparksAndDust::new);
    add(facts, longShifts(), shifts -> new SafetyFact.LongShifts(shifts, LONG_SHIFT_S));
    return facts;
  }

  private static <T> void add(List<Fact> facts, Stream<T> found, Function<List<T>, Fact> fact) {
    List<T> all = found.toList();
    if (!all.isEmpty()) {
      facts.add(fact.apply(all));
    }
  }

  /**
   * By the limit of {@code check}'s warning, which names it; a field that is like its crop is not
   * named again.
   */
  private Stream<String> wet(Crop crop) {
    Stream<String> ofFields =
        plant.deliveries().stream()
            .filter(delivery -> delivery.crop().equals(crop.name()))
            .flatMap(delivery -> delivery.fields().stream())
            .filter(field -> !field.bale().moisture().equals(crop.bale().moisture()))
            .filter(field -> crop.isDamp(field.bale().moisture()))
            .map(Delivery.Field::name);
    Stream<String> ofCrop =
        crop.isDamp(crop.bale().moisture()) ? Stream.of(crop.name()) : Stream.of();
    return Stream.concat(ofCrop, ofFields);
  }

  /** Places in which bales of some crop that may lie there come to be damp. */
  private Stream<String> dampPlaces() {
    return plant.yard().places().stream()
        .filter(
            place ->
                plant.crops().stream()
                    .filter(crop -> place.takes(crop.name()))
                    .anyMatch(
                        crop ->
                            place
                                .climateAsCovered()
                                .map(climate -> climate.most() >= crop.dampFrom())
                                .orElse(false)))
        .map(Yard.Place::name);
  }

  private Stream<String> shortStops() {
    return plant.machines().stream()
        .flatMap(
            machine ->
                machine.common().stops().stream()
                    .filter(stop -> stop.lastsS().mean() < SHORT_STOP_S)
                    .map(stop -> machine.name() + "." + stop.name()));
  }

  private Stream<SafetyFact.StopsOf> stops() {
    return plant.machines().stream()
        .filter(machine -> !machine.common().stops().isEmpty())
        .map(
            machine ->
                new SafetyFact.StopsOf(
                    machine.name(), machine.common().stops().stream().map(Stop::name).toList()));
  }

  private Stream<String> dusty() {
    return plant.machines().stream()
        .filter(m -> m instanceof Machine.HammerMill || m instanceof Machine.Cyclone)
        .map(Machine::name);
  }

  private Stream<String> longShifts() {
    return plant.calendar().shifts().stream()
        .filter(shift -> shift.lengthS() > LONG_SHIFT_S || shift.toS() <= shift.fromS())
        .map(Calendar.Shift::name);
  }
}
