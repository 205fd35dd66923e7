package hurdline.study;

import hurdline.answer.CompareAnswer;
import hurdline.answer.Further;
import hurdline.chance.Streams;
import hurdline.plant.Nearest;
import hurdline.plant.Option;
import hurdline.plant.Plant;
import hurdline.worth.BreakEven;
import hurdline.plant.ProblemsException;
import hurdline.work.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Which of several options is better than the plant as it stands, by how much, and does it pay. */
public final class Compare {
  private final Source source;
  private final Chosen base;
  private final CompareAsk ask;
  private final Besides besides;
  private final LifeCount lives;
  private final Effort effort;
  private final List<CompareAnswer.Option> options = new ArrayList<>();
  private final List<Stage> stages = new ArrayList<>();

  /**
   * @param base single changed keys that hold for the base and for every option; no option itself
   * @throws ProblemsException if an option is not there, is asked for twice, changes nothing, or makes
   *     a plant with problems
   */
  public Compare(Source source, Chosen base, CompareAsk ask, Effort effort) {
    this.source = source;
    this.base = base;
    this.ask = ask;
    this.effort = effort;
    OptionPlants plants = new OptionPlants(source, base);
    Plant plant = plants.base();
    List<String> asked =
        ask.among().isEmpty()
            ? plant.options().stream().map(Option::name).toList()
            : ask.among();
    refuse(asked, plant.options());
    AimCurrency currency = new AimCurrency(source, base);
    currency.check(effort);
    ask.best().ifPresent(currency::check);
    stages.add(Stage.of(plant));
    for (String option : asked) {
      Plant changed = plants.of(option);
      if (changed.equals(plant)) {
        throw source.refusal("option \"" + option + "\" changes nothing", "an option that changes the plant");
      }
      options.add(OptionPlants.joined(option, plant.options()));
      stages.add(Stage.of(changed));
    }
    besides = new Besides(source, base, ask, stages, options, effort);
    lives =
        new LifeCount(
            effort.replications(), stages.stream().map(Stage::plant).toList(), options, ask.lives());
  }

  private void refuse(List<String> asked, List<Option> known) {
    if (known.isEmpty() && !ask.gain()) {
      throw source.refusal("the file has no options to compare", "an entry under options");
    }
    List<String> names = known.stream().map(Option::name).toList();
    Set<Set<String>> seen = new LinkedHashSet<>();
    for (String option : asked) {
      List<String> parts = OptionPlants.parts(option);
      for (String part : parts) {
        if (!names.contains(part)) {
          throw source.refusal(
              "\"" + part + "\" is no option of this file",
              Nearest.expected("an option", part, names));
        }
      }
      Set<String> set = new LinkedHashSet<>(parts);
      if (set.size() < parts.size() || !seen.add(set)) {
        throw source.refusal("\"" + option + "\" is asked for twice", "each option once");
      }
    }
  }

  private static Consumer<Outcome> both(Figures figures, PeriodFigures months) {
    return outcome -> {
      figures.add(outcome);
      months.add(outcome.monthColumns(), outcome.months());
    };
  }

  /** The base and the options as plants of a grid. */
  public List<Alternative> alternatives() {
    OptionPlants plants = new OptionPlants(source, base);
    List<Alternative> all = new ArrayList<>();
    all.add(new Alternative(Chosen.BASE, source, base.changes()));
    for (CompareAnswer.Option option : options) {
      all.add(new Alternative(option.name(), source, plants.changes(option.name()), true));
    }
    return all;
  }

  /** How often a calendar is simulated in all; with an aim, to begin with. */
  public int plays() {
    return new Goal(effort).first() * (stages.size() + besides.plants()) + livesPlays();
  }

  /** How many service lives of each option are simulated. */
  public int lives() {
    return lives.lives();
  }

  /** How many calendars the lives of all plants have, a search for a break-even not counted; 0 where no option is worth anything. */
  public int livesPlays() {
    return lives.plays() * (1 + besides.livesAgain());
  }

  /** What searches for a break-even cost on top; nothing where no key but prices is asked for. */
  public BreakEvenWork breakEvenWork() {
    List<Integer> searches = besides.simulatedSearches();
    int each = searches.stream().mapToInt(lives::plays).sum();
    return new BreakEvenWork(searches.size(), each, BreakEven.usualTries(), BreakEven.mostTries());
  }

  /** Simulates one calendar of the base and forgets it: to see how long one takes. */
  public void trial() {
    stages.get(0).replication().run(new Streams(effort.seed()), 1, null);
  }

  /**
   * Plays base and options.
   *
   * @param progress told of all plays together, never two at once
   * @param stop asked now and then whether to finish early
   * @return what the finished replications say; empty if there was no time for any
   */
  public Optional<CompareAnswer> play(Run.Progress progress, BooleanSupplier stop) {
    Plays plays = new Plays(effort, progress, stop);
    List<Figures> figures = stages.stream().map(stage -> new Figures()).toList();
    List<PeriodFigures> months = stages.stream().map(stage -> new PeriodFigures()).toList();
    List<Consumer<Outcome>> takers = new ArrayList<>();
    for (int at = 0; at < stages.size(); at++) {
      takers.add(both(figures.get(at), months.get(at)));
    }
    Rounds.Played played = new Rounds(stages, effort).play(plays, figures, takers);
    if (played.figures().get(0).count() == 0) {
      return Optional.empty();
    }
    LifeMargins margins =
        new LifeMargins(stages, options, played, new LifeYears(stages, played, lives, plays));
    Further further = besides.play(played, plays, margins);
    return Optional.of(
        new CompareAnswers(source, base, ask, effort, stages, options, played, months, margins)
            .answer(further, besides.facts(), plays.isCut()));
  }
}
