package hurdline.study;

import hurdline.plant.Plant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The years of which lives are made, for a base and an option on the same chance. Where neither leaves crop over each
 * replication is a year that stands alone; else years follow each other in chains. A plant that has been played, be it at other
 * prices, is not played again.
 */
final class LifeYears {
  private static final int KEPT = 16;

  private final int count;
  private final LifeCount lives;
  private final Plays plays;
  private final Map<Key, Figures> compared = new HashMap<>();
  private final Map<Key, Figures> lately = new LinkedHashMap<>();
  private int inChains;
  private int playedAnew;

  /** @param years of a chain; {@link #ALONE} for years that stand alone */
  private record Key(Plant plant, int years, int stride) {
    private static final int ALONE = 0;
  }

  /** @param played the plants of the comparison */
  LifeYears(List<Stage> stages, Rounds.Played played, LifeCount lives, Plays plays) {
    this.lives = lives;
    this.plays = plays;
    count = played.figures().get(0).count();
    for (int at = 0; at < stages.size(); at++) {
      compared.put(alone(stages.get(at).plant()), played.figures().get(at));
    }
  }

  /**
   * What the option adds to the margin, year by year.
   *
   * @param following whether years are to follow each other even where neither plant leaves crop over
   * @return empty if stop was asked for before both plants were whole
   */
  Optional<MarginYears> of(Plant base, Plant option, double lifeYr, boolean following) {
    int years = (int) Math.ceil(lifeYr);
    boolean follow = following;
    if (!follow || count < years) {
      Optional<Figures> before = figures(alone(base));
      Optional<Figures> after = before.flatMap(whole -> figures(alone(option)));
      follow = after.isPresent() && count >= years && (before.get().leavesCrop() || after.get().leavesCrop());
      if (!follow) {
        return after.map(whole -> MarginYears.of(before.get(), whole));
      }
    }
    int stride = lives.stride(years);
    return figures(new Key(played(base), stride, stride))
        .flatMap(
            before ->
                figures(new Key(played(option), years, stride))
                    .map(after -> MarginYears.following(before.firstOf(stride, years), after, years)));
  }

  /** Years in the chains of the compared plants. */
  int inChains() {
    return inChains;
  }

  /** Those of them that had to be played, the others being replications as they were. */
  int playedAnew() {
    return playedAnew;
  }

  private Optional<Figures> figures(Key key) {
    Optional<Figures> known = Optional.ofNullable(known(key)).or(() -> priced(key));
    if (known.isPresent()) {
      return known;
    }
    boolean isCompared = compared.containsKey(alone(key.plant()));
    Optional<Figures> played = key.years() == Key.ALONE ? replications(key.plant()) : chains(key, isCompared);
    played.ifPresent(figures -> keep(isCompared ? compared : lately, key, figures));
    return played;
  }

  private Figures known(Key key) {
    return compared.getOrDefault(key, lately.get(key));
  }

  private Optional<Figures> priced(Key key) {
    return Stream.of(compared, lately)
        .flatMap(where -> where.entrySet().stream())
        .filter(of -> of.getKey().years() == key.years() && of.getKey().stride() == key.stride())
        .flatMap(of -> OtherPrices.of(of.getValue(), of.getKey().plant(), key.plant()).stream())
        .findFirst();
  }

  private Optional<Figures> replications(Plant plant) {
    plays.expect(count);
    return plays.whole(Stage.of(plant), count);
  }

  private Optional<Figures> chains(Key key, boolean isCompared) {
    Optional<Figures> alone = Optional.ofNullable(known(alone(key.plant())));
    Chains chains =
        new Chains(Stage.of(key.plant()), key.years(), key.stride(), lives.chains(key.stride()), alone);
    Optional<Figures> played = plays.chained(chains);
    if (isCompared) {
      inChains += chains.years();
      playedAnew += chains.playedAnew();
    }
    return played;
  }

  private void keep(Map<Key, Figures> where, Key key, Figures figures) {
    if (where == lately && lately.size() >= KEPT) {
      lately.remove(lately.keySet().iterator().next());
    }
    where.put(key, figures);
  }

  private static Key alone(Plant plant) {
    return new Key(played(plant), Key.ALONE, Key.ALONE);
  }

  /** Neither options nor plans have a part in what is played. */
  private static Plant played(Plant p) {
    return p.with(p.products(), p.money(), List.of(), List.of());
  }
}
