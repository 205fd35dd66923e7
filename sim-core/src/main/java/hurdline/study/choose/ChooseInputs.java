package hurdline.study.choose;

import hurdline.plant.InputDraws;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.statistics.PairwiseLooks;
import hurdline.statistics.ScreeningYears;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.StudyInputs;
import hurdline.study.replicate.DrawnPlants;
import hurdline.study.replicate.ReplicationRange;
import hurdline.study.replicate.RunSettings;
import hurdline.unit.Counted;
import java.util.List;
import java.util.Optional;

/**
 * Draws of inputs over the years of a choosing. Each year takes a fresh row, the same for all
 * plans: a row that came twice would be counted as news in rounds that must be independent. Of
 * doubts there are as many rows as years; a file with fewer rows ends the choosing after fewer
 * rounds, which is settled before anything is simulated.
 */
final class ChooseInputs {
  /** So many plants are made beforehand, to see what is wrong with draws. */
  private static final int TRIED = 20;

  private final ScreeningYears usual;
  private final boolean looks;
  private final int last;
  private final Optional<InputDraws> draws;

  /**
   * @param looks whether plans left are set all against all in the end
   * @param usual years without draws
   */
  ChooseInputs(Plant plant, RunSettings effort, boolean looks, ScreeningYears usual) {
    this.usual = usual;
    this.looks = looks;
    last = effort.replications();
    draws = new StudyInputs(plant, effort, needed(usual, true)).draws();
  }

  Optional<InputDraws> draws() {
    return draws;
  }

  private static int lookYears() {
    List<Integer> years = PairwiseLooks.usualLooks();
    return years.get(years.size() - 1);
  }

  private int needed(ScreeningYears of, boolean withLooks) {
    return of.before(of.rounds().size()) + (withLooks ? lookYears() : 0) + last;
  }

  /** The years that choose and judge; empty where rows are too few for one round. */
  Optional<ScreeningYears> years() {
    if (draws.isEmpty()) {
      return Optional.of(usual);
    }
    for (int rounds = usual.rounds().size(); rounds > 0; rounds--) {
      ScreeningYears fewer =
          new ScreeningYears(usual.choosing(), usual.rounds().subList(0, rounds));
      if (needed(fewer, looks) <= draws.get().rows().size()) {
        return Optional.of(fewer);
      }
    }
    return Optional.empty();
  }

  private int fewest() {
    return needed(new ScreeningYears(usual.choosing(), usual.rounds().subList(0, 1)), looks);
  }

  ProblemsException tooFew(PlantOrigin source) {
    return source.refusal(
        draws.map(InputDraws::said).orElse("")
            + " has "
            + Counted.of(draws.map(of -> of.rows().size()).orElse(0), "row")
            + ", and each simulated year takes one of its own",
        fewest() + " rows or more");
  }

  /**
   * Numbers of the last years, behind all others; without draws looks have theirs whether they are
   * asked for or not.
   */
  ReplicationRange lastYears(int count) {
    ScreeningYears of = years().orElseThrow();
    int from = 1 + needed(of, looks || draws.isEmpty()) - last;
    return new ReplicationRange(from, from + count);
  }

  /**
   * @throws hurdline.plant.ProblemsException if draws do not suit the plant
   */
  void check(PlantOrigin source, PlantChanges chosen) {
    draws.ifPresent(
        of ->
            new DrawnPlants(source.variants(), chosen.single(), chosen.changes(), of).check(TRIED));
  }
}
