package hurdline.study;

import hurdline.answer.AvoidedRow;
import hurdline.answer.SeasonAnswer;
import hurdline.plant.Change;
import hurdline.plant.Money;
import hurdline.plant.Nearest;
import hurdline.plant.Plan;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import hurdline.work.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** How full a shared building is under each of several season plans, and which of them is best. */
public final class Season {
  private final List<Source> sources;
  private final Chosen chosen;
  private final Effort effort;
  private final List<Planned> plans = new ArrayList<>();
  private final Avoiding avoiding;

  /** Asks a file for what it warns of in a changed plant. */
  public interface Warnings {
    List<LocatedProblem> of(Source source, List<Change> changes);
  }

  /**
   * A plan that is compared.
   *
   * @param changes its own and those of all plans
   * @param warnings of its plant
   */
  record Planned(
      String name,
      String says,
      Source source,
      List<Change> changes,
      Stage stage,
      List<LocatedProblem> warnings) {}

  /**
   * @param sources one file with plans of its own, or several of which each is a plan
   * @param ask names plans of the one file, {@code base} being its season as it stands; none for
   *     that and each of the file's plans
   * @param chosen what is changed under every plan alike, after the plan's own changes
   * @throws ProblemsException if there is nothing to compare, names are equal, or plants differ in
   *     what must be alike
   */
  public Season(
      List<Source> sources, SeasonAsk ask, Chosen chosen, Warnings warnings, Effort effort) {
    this.sources = List.copyOf(sources);
    this.chosen = chosen;
    this.effort = effort;
    if (sources.size() == 1) {
      ofOneFile(sources.get(0), ask.plans(), warnings);
    } else {
      sources.forEach(source -> add(nameOf(source), "", source, chosen.changes(), warnings));
    }
    refuseUnlike();
    new AimCurrency(sources.get(0), chosen).check(effort);
    avoiding = new Avoiding(ask.changeovers() ? plans : List.of());
  }

  private void ofOneFile(Source source, List<String> asked, Warnings warnings) {
    Map<String, String> says = new LinkedHashMap<>(Map.of(Chosen.BASE, ""));
    List<Plan> known = source.variants().with().plans();
    known.forEach(plan -> says.put(plan.name(), plan.says()));
    if (known.isEmpty() && asked.isEmpty()) {
      throw source.refusal(
          "the file has no plans to compare",
          "an entry under plans, several files, or --plans base for the season as it stands");
    }
    for (String name : asked.isEmpty() ? List.copyOf(says.keySet()) : asked) {
      if (!says.containsKey(name)) {
        throw source.refusal(
            "\"" + name + "\" is no plan of this file",
            Nearest.expected("a plan", name, says.keySet()));
      }
      Stream<Change> own = name.equals(Chosen.BASE) ? Stream.of() : Stream.of(new Change.Named(name));
      List<Change> changes = Stream.concat(own, chosen.changes().stream()).toList();
      add(name, says.get(name), source, changes, warnings);
    }
  }

  private void add(
      String name, String says, Source source, List<Change> changes, Warnings warnings) {
    if (plans.stream().anyMatch(plan -> plan.name().equals(name))) {
      throw wrong(
          "two plans are named \"" + name + "\"",
          "each plan once, and files whose names differ without their folder and ending");
    }
    Plant plant = source.variants().with(changes.toArray(Change[]::new));
    plans.add(
        new Planned(name, says, source, changes, Stage.of(plant), warnings.of(source, changes)));
  }

  private static String nameOf(Source source) {
    return source.file().replaceFirst("\\.ya?ml$", "");
  }

  /** Money in two currencies, or years of different length, cannot be set side by side. */
  private void refuseUnlike() {
    Plant first = plans.get(0).stage().plant();
    for (Planned plan : plans) {
      Plant plant = plan.stage().plant();
      unlike(plan, "has money in", money(first), money(plant), "one currency for all plans");
      unlike(plan, "covers", dates(first), dates(plant), "one calendar from and to for all plans");
    }
  }

  private void unlike(Planned plan, String verb, String first, String other, String expected) {
    if (!first.equals(other)) {
      throw wrong(
          "plan \"" + plan.name() + "\" " + verb + " " + other + " and plan \""
              + plans.get(0).name() + "\" " + verb + " " + first,
          expected);
    }
  }

  private static String money(Plant plant) {
    return plant.money().map(Money::currency).orElse("no currency");
  }

  private static String dates(Plant plant) {
    return plant.calendar().from() + " to " + plant.calendar().to();
  }

  private static ProblemsException wrong(String said, String expected) {
    return new ProblemsException(List.of(LocatedProblem.of("", said, expected, "")));
  }

  /** The plans as plants of a grid. */
  public List<Alternative> alternatives() {
    return plans.stream()
        .map(plan -> new Alternative(plan.name(), plan.source().warning(plan.warnings()), plan.changes()))
        .toList();
  }

  /** How often a calendar is played in all; with an aim, to begin with. */
  public int plays() {
    return new Goal(effort).first() * (plans.size() + avoiding.count());
  }

  /**
   * Plays all plans.
   *
   * @param progress told of all plays together, never two at once
   * @param stop asked now and then whether to finish early
   * @return what the finished replications say; empty if there was no time for any
   */
  public Optional<SeasonAnswer> play(Run.Progress progress, BooleanSupplier stop) {
    List<SeasonFigures> figures = plans.stream().map(plan -> new SeasonFigures()).toList();
    List<Consumer<Outcome>> takers = figures.stream().<Consumer<Outcome>>map(plan -> plan::add).toList();
    Plays plays = new Plays(effort, progress, stop);
    Rounds.Played played =
        new Rounds(plans.stream().map(Planned::stage).toList(), effort)
            .play(plays, figures.stream().map(SeasonFigures::figures).toList(), takers);
    int count = played.figures().get(0).count();
    if (count == 0) {
      return Optional.empty();
    }
    plays.expect(count * avoiding.count());
    List<AvoidedRow> avoided = avoiding.play(plays, played.figures());
    boolean stopped = played.stopped() || avoided.size() < avoiding.count() && stop.getAsBoolean();
    return Optional.of(
        new SeasonAnswers(sources, chosen, effort, plans, figures, avoided).answer(stopped));
  }
}
