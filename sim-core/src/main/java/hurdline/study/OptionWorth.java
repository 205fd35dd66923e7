package hurdline.study;

import hurdline.plant.Change;
import hurdline.plant.Plant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What options are worth with something changed in base and option alike, on the same chance as the
 * comparison itself. A plant that has been played is not played again: what changes only the terms of
 * an option costs no play.
 */
final class OptionWorth {
  private static final int KEPT = 16;

  private final OptionPlants plants;
  private final int count;
  private final Plays plays;
  private final Map<Plant, Figures> compared = new HashMap<>();
  private final Map<Plant, Figures> lately = new LinkedHashMap<>();

  /** @param played the plants of the comparison */
  OptionWorth(OptionPlants plants, List<Stage> stages, Rounds.Played played, Plays plays) {
    this.plants = plants;
    this.plays = plays;
    count = played.figures().get(0).count();
    for (int at = 0; at < stages.size(); at++) {
      compared.put(withoutOptions(stages.get(at).plant()), played.figures().get(at));
    }
  }

  /**
   * The mean net present value over the replications.
   *
   * @return NaN if stop was asked for before both plants were whole
   * @throws hurdline.plant.ProblemsException if a changed plant has problems
   */
  double of(String option, Change... change) {
    Plant base = plants.base(change);
    Plant changed = plants.of(option, change);
    Optional<Figures> before = figures(base);
    Optional<Figures> after = before.flatMap(whole -> figures(changed));
    return after
        .map(
            figures ->
                new LifeCash(
                        OptionPlants.joined(option, base.options()),
                        base.money().orElseThrow(),
                        MarginYears.of(before.get(), figures))
                    .value()
                    .mean())
        .orElse(Double.NaN);
  }

  private Optional<Figures> figures(Plant plant) {
    Plant key = withoutOptions(plant);
    Figures known = compared.getOrDefault(key, lately.get(key));
    if (known != null) {
      return Optional.of(known);
    }
    plays.expect(count);
    Optional<Figures> played = plays.whole(Stage.of(plant), count);
    played.ifPresent(figures -> keep(key, figures));
    return played;
  }

  private void keep(Plant key, Figures figures) {
    if (lately.size() >= KEPT) {
      lately.remove(lately.keySet().iterator().next());
    }
    lately.put(key, figures);
  }

  /** Neither options nor plans have a part in what is played. */
  private static Plant withoutOptions(Plant p) {
    return new Plant(
        p.name(),
        p.calendar(),
        p.components(),
        p.crops(),
        p.machines(),
        p.products(),
        p.packages(),
        p.lines(),
        p.season(),
        p.crews(),
        p.resources(),
        p.yard(),
        p.deliveries(),
        p.money(),
        List.of(),
        List.of());
  }
}
