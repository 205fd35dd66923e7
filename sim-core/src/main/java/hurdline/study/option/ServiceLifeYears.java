package hurdline.study.option;

import hurdline.plant.Plant;
import hurdline.simulation.CompiledPlant;
import hurdline.study.replicate.CarryOverYears;
import hurdline.study.replicate.InterleavedRuns;
import hurdline.study.replicate.LifeCalendar;
import hurdline.study.replicate.ReplicationBudget;
import hurdline.study.replicate.ReplicationResults;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The calendars of which lives are made, for a base and an option on the same chance. A plant that
 * has been simulated, be it at other prices, is not simulated again.
 */
public final class ServiceLifeYears {
  private static final int KEPT = 16;

  private final CompiledPlant base;
  private final ServiceLifeCount count;
  private final ReplicationBudget simulations;
  private final Map<Plant, ReplicationResults> replications = new HashMap<>();
  private final Map<Key, ReplicationResults> compared = new HashMap<>();
  private final Map<Key, ReplicationResults> lately = new LinkedHashMap<>();
  private int inLives;
  private int simulatedAnew;

  /**
   * @param calendars of a life
   * @param stride replications from the first of a life to that of the next
   */
  private record Key(Plant plant, int calendars, int stride) {}

  /**
   * @param stages the plants of the comparison, of which {@code simulated} has the replications
   */
  public ServiceLifeYears(
      List<CompiledPlant> stages,
      InterleavedRuns.Simulated simulated,
      ServiceLifeCount count,
      ReplicationBudget simulations) {
    base = stages.get(0);
    this.count = count;
    this.simulations = simulations;
    for (int at = 0; at < stages.size(); at++) {
      replications.put(simulated(stages.get(at).plant()), simulated.figures().get(at));
    }
  }

  /**
   * What base and option earn over lives.
   *
   * @return empty if stop was asked for before both plants were whole
   * @throws java.util.NoSuchElementException if one of them does not say how its calendar repeats
   */
  Optional<AnnualMarginGain> of(Plant base, Plant option, double lifeYr) {
    LifeCalendar ofBase = LifeCalendar.of(base.calendar()).orElseThrow();
    LifeCalendar ofOption = LifeCalendar.of(option.calendar()).orElseThrow();
    int baseNeeds = ofBase.calendars(lifeYr);
    int optionNeeds = ofOption.calendars(lifeYr);
    int baseHas = count.ofBase(baseNeeds);
    int stride = count.stride(Math.max(baseHas, optionNeeds));
    return figures(new Key(simulated(base), baseHas, stride))
        .map(years -> years.firstOf(baseHas * ofBase.years(), baseNeeds * ofBase.years()))
        .flatMap(
            before ->
                figures(new Key(simulated(option), optionNeeds, stride))
                    .map(
                        after ->
                            new AnnualMarginGain(
                                MoneyYears.inChains(ofBase, before, baseNeeds),
                                MoneyYears.inChains(ofOption, after, optionNeeds))));
  }

  int lives() {
    return count.lives();
  }

  /** Calendars in the lives of the compared plants. */
  public int inLives() {
    return inLives;
  }

  /** Those of them that had to be simulated, the others being replications as they were. */
  public int simulatedAnew() {
    return simulatedAnew;
  }

  private Optional<ReplicationResults> figures(Key key) {
    Optional<ReplicationResults> known =
        Optional.ofNullable(compared.getOrDefault(key, lately.get(key))).or(() -> priced(key));
    if (known.isPresent()) {
      return known;
    }
    Optional<ReplicationResults> alone = Optional.ofNullable(replications.get(key.plant()));
    CarryOverYears chains =
        new CarryOverYears(
            base.changedTo(key.plant()), key.calendars(), key.stride(), count.lives(), alone);
    Optional<ReplicationResults> simulated = simulations.chained(chains);
    if (alone.isPresent()) {
      inLives += chains.calendars();
      simulatedAnew += chains.simulatedAnew();
    }
    simulated.ifPresent(figures -> keep(alone.isPresent() ? compared : lately, key, figures));
    return simulated;
  }

  private Optional<ReplicationResults> priced(Key key) {
    return Stream.of(compared, lately)
        .flatMap(where -> where.entrySet().stream())
        .filter(
            of ->
                of.getKey().calendars() == key.calendars() && of.getKey().stride() == key.stride())
        .flatMap(of -> Repricing.of(of.getValue(), of.getKey().plant(), key.plant()).stream())
        .findFirst();
  }

  private void keep(Map<Key, ReplicationResults> where, Key key, ReplicationResults figures) {
    if (where == lately && lately.size() >= KEPT) {
      lately.remove(lately.keySet().iterator().next());
    }
    where.put(key, figures);
  }

  /** Neither options nor plans have a part in what is simulated. */
  private static Plant simulated(Plant p) {
    return p.with(p.products(), p.money(), List.of(), List.of());
  }
}
