package hurdline.study.choose;

import hurdline.answer.ChooseAnswer;
import hurdline.answer.ChooseTerms;
import hurdline.measure.Unit;
import hurdline.plant.Change;
import hurdline.plant.Choice;
import hurdline.plant.Choices;
import hurdline.plant.Expected;
import hurdline.plant.InputDraws;
import hurdline.plant.Nearest;
import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import hurdline.random.RandomStreams;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.results.Outcome;
import hurdline.statistics.ScreeningYears;
import hurdline.study.AimCurrency;
import hurdline.study.AnswerRows;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.PlantOutline;
import hurdline.study.replicate.LifeCalendar;
import hurdline.study.replicate.ReplicationRange;
import hurdline.study.replicate.ReplicationResults;
import hurdline.study.replicate.RunSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Which of very many plans is the best: all that is settled before anything is simulated. */
public final class Choose {
  /** More plans than this nobody has the time for on one machine. */
  private static final int MOST_PLANS = 1_000_000;

  /** With a bound on a share of years more of them are needed to see it. */
  private static final int CHOOSING_WITH_BOUNDS = 20;

  private static final double ALPHA = 0.05;

  private final PlantOrigin source;
  private final PlantChanges chosen;
  private final ChooseAsk ask;
  private final Choices choices;
  private final RunSettings effort;
  private final PlanSpace space;
  private final ChooseInputs inputs;
  private final ScreeningYears years;
  private final CompiledPlant base;
  private final ChooseTerms terms;

  /**
   * @param chosen what is changed in all plans before any choice is made
   * @param ofFile what the file leaves open
   * @param effort its replications are the years that show the plans in the end
   * @throws ProblemsException with all that is wrong: choices of which no value makes a plant, too
   *     many plans, measures that the plant has not
   */
  public Choose(
      PlantOrigin source, PlantChanges chosen, Choices ofFile, ChooseAsk ask, RunSettings effort) {
    this.source = source;
    this.chosen = chosen;
    this.ask = ask;
    this.effort = effort;
    List<LocatedProblem> wrong = new ArrayList<>();
    choices = OpenChoices.of(source.file(), ofFile, ask.narrowed(), wrong);
    if (!wrong.isEmpty()) {
      throw new ProblemsException(wrong);
    }
    refuseCounts();
    space = new PlanSpace(choices);
    base = CompiledPlant.of(source.variants().with(chosen.asArray()));
    new AimCurrency(source, chosen).check(ask.best());
    ScreeningYears usual =
        ask.bounds().isEmpty()
            ? ScreeningYears.usual()
            : ScreeningYears.usual().choosing(CHOOSING_WITH_BOUNDS);
    inputs = new ChooseInputs(base.plant(), effort, ask.eachGap(), usual);
    years = inputs.years().orElseThrow(() -> inputs.tooFew(source));
    inputs.check(source, chosen);
    refuseSharedDraws(wrong);
    choices.all().forEach(choice -> wrong.addAll(ofNoPlant(choice)));
    terms = terms(wrong);
    if (space.first().isEmpty()) {
      wrong.add(problem("every plan is left out by \"never\"", "some that are not", ""));
    }
    if (ask.mostYears() > 0 && ask.mostYears() < fewestYears()) {
      wrong.add(
          problem(
              "--years "
                  + ask.mostYears()
                  + (ask.independent()
                      ? " ends within the first stage"
                      : " ends before the first round is judged"),
              "at least " + fewestYears() + " for " + candidates().size() + " plans",
              ""));
    }
    if (!wrong.isEmpty()) {
      throw new ProblemsException(wrong);
    }
  }

  /** A row of draws is the same for all plans, which would then not be independent. */
  private void refuseSharedDraws(List<LocatedProblem> wrong) {
    if (ask.independent() && inputs.draws().isPresent()) {
      wrong.add(
          problem(
              "--procedure independent needs draws that plans do not share, and those of inputs ("
                  + inputs.draws().get().said()
                  + ") are shared",
              "a plant without doubt and a call without --draws, or --procedure rounds",
              ""));
    }
  }

  private void refuseCounts() {
    if (choices.all().isEmpty()) {
      throw source.refusal(
          "the file has no choices",
          "an entry under choices, or a choice such as --choice 'machines.mill.power=25 hp|45 hp'");
    }
    double count = PlanSpace.count(choices);
    if (count < 2) {
      throw source.refusal("the choices make one plan", "at least two plans to choose from");
    }
    if (count > MOST_PLANS) {
      throw source.refusal(
          String.format(Locale.ROOT, "the choices make %,.0f plans", count),
          String.format(Locale.ROOT, "at most %,d; take fewer values", MOST_PLANS));
    }
  }

  private LocatedProblem problem(String said, String expected, String nearest) {
    return LocatedProblem.of(source.file(), said, expected, nearest);
  }

  /** The problems of a choice whose values make no plant, none of them, each alone. */
  private List<LocatedProblem> ofNoPlant(Choice choice) {
    List<LocatedProblem> first = new ArrayList<>();
    for (Choice.Value value : choice.values()) {
      try {
        source
            .variants()
            .with(
                Stream.concat(chosen.changes().stream(), value.changes().stream())
                    .toArray(Change[]::new));
        return List.of();
      } catch (ProblemsException wrong) {
        if (first.isEmpty()) {
          first.addAll(wrong.problems());
        }
      }
    }
    return first;
  }

  private ChooseTerms terms(List<LocatedProblem> wrong) {
    Outcome outcome = base.replication().run(new RandomStreams(effort.seed()), 1, null);
    ReplicationResults one = new ReplicationResults();
    one.add(outcome);
    AnswerRows rows = new AnswerRows("", base, one, new PlantOutline(base));
    List<ChooseTerms.Bound> bounds = new ArrayList<>();
    for (ChooseTerms.Bound bound : ask.bounds()) {
      bounds.add(
          new ChooseTerms.Bound(
              bound.measure(),
              unit(rows, outcome, bound.measure(), wrong),
              bound.atLeast(),
              bound.value(),
              bound.share()));
    }
    refuseWorth(outcome, wrong);
    return new ChooseTerms(
        ask.best().measure(),
        unit(rows, outcome, ask.best().measure(), wrong),
        ask.best().width(),
        ask.worth(),
        ALPHA,
        ask.independent() ? TwoStages.FIRST_YEARS : years.choosing(),
        ask.independent() ? List.of() : years.rounds(),
        ask.eachGap(),
        bounds,
        ask.mostYears(),
        ask.independent());
  }

  private String unit(
      AnswerRows rows, Outcome outcome, String measure, List<LocatedProblem> wrong) {
    List<String> known = outcome.columns().stream().map(Outcome.Column::name).toList();
    if (known.contains(measure)) {
      return rows.unit(measure);
    }
    Expected expected = Nearest.expected("a measure", measure, known);
    wrong.add(
        problem(
            "the plant has no measure \"" + measure + "\"", expected.text(), expected.nearest()));
    return "";
  }

  private void refuseWorth(Outcome outcome, List<LocatedProblem> wrong) {
    if (!ask.worth()) {
      return;
    }
    boolean isMoney =
        outcome.columns().stream()
            .anyMatch(
                column ->
                    column.name().equals(ask.best().measure())
                        && column.measure().unit() == Unit.MONEY);
    if (!isMoney) {
      wrong.add(
          problem(
              "--worth takes a cost off \"" + ask.best().measure() + "\", which is no money",
              "a measure in money, such as money.margin",
              ""));
    }
    if (LifeCalendar.of(base.plant().calendar()).isEmpty()) {
      wrong.add(
          problem(
              "--worth needs to know how the calendar repeats over a year",
              "\"repeats: yearly\" or \"repeats: end-to-end\" under calendar",
              ""));
    }
  }

  /** How many plans there are, with those left out. */
  public int plans() {
    return space.count();
  }

  /** Plans that the file does not leave out. */
  List<Integer> candidates() {
    return IntStream.range(0, space.count()).filter(plan -> !space.isNever(plan)).boxed().toList();
  }

  /** How many plans {@code never} leaves out. */
  public int leftOut() {
    return space.count() - candidates().size();
  }

  /** Whether each plan has draws of its own and is judged in two stages. */
  public boolean isIndependent() {
    return ask.independent();
  }

  /** Years until the first round is judged, or of the first stage: more are due after them. */
  public long fewestYears() {
    return (long) candidates().size()
        * (ask.independent() ? TwoStages.FIRST_YEARS : years.before(1));
  }

  /** Years that show the plans in the end, about: how many others may be the best is not known. */
  public int lastYears() {
    int neighbors = space.all().stream().mapToInt(choice -> choice.values().size() - 1).sum();
    int shown = Math.min(candidates().size(), 1 + neighbors + ask.budgets().size());
    return effort.replications() * shown;
  }

  public int threads() {
    return effort.threads();
  }

  /** All that a finished block depends on, a line each. */
  public List<String> settings() {
    List<String> lines = new ArrayList<>();
    lines.add("program: " + source.version());
    lines.add("plant: " + source.contentHash());
    lines.add("changes: " + chosen.option() + " " + String.join("; ", chosen.sets()));
    lines.add("seed: " + effort.seed());
    lines.add("last years: " + effort.replications());
    inputs
        .draws()
        .ifPresent(
            of -> lines.add("draws: " + of.said() + " " + of.keys() + " " + of.rows().hashCode()));
    lines.add("best: " + ask.best().said() + (ask.worth() ? " worth" : ""));
    lines.add("procedure: " + (ask.independent() ? "independent" : "rounds"));
    lines.add("each gap: " + ask.eachGap());
    lines.add("budgets: " + ask.budgets());
    ask.bounds().forEach(bound -> lines.add("bound: " + bound));
    choices.all().forEach(choice -> lines.add("choice: " + choice));
    choices.never().forEach(of -> lines.add("never: " + new TreeMap<>(of.values())));
    choices.kept().forEach(of -> lines.add("keep: " + new TreeMap<>(of.values())));
    return lines.stream().map(line -> line.replaceAll("\\s+", " ")).toList();
  }

  /**
   * Simulates and judges; blocks that are kept are not simulated again.
   *
   * @param stop asked before each year whether to end without an answer
   * @param timeUp asked before each year whether to end with what is known
   * @return the answer; empty if it was stopped, or time was up before the first round was judged
   */
  public Optional<ChooseAnswer> simulate(
      BlockStore store, ChooseProgress progress, BooleanSupplier stop, BooleanSupplier timeUp) {
    return simulate(onThreads(), store, progress, stop, timeUp);
  }

  private ThreadBlocks onThreads() {
    PlanSimulator simulator = new PlanSimulator(source, base, space, recipe());
    return new ThreadBlocks(new BlockWatch(simulator), effort.seed(), effort.threads());
  }

  /** What its plans are made and simulated by, besides the plant itself. */
  public PlanRecipe recipe() {
    List<String> measures = new ArrayList<>(List.of(terms.measure()));
    terms.bounds().forEach(bound -> measures.add(bound.measure()));
    return new PlanRecipe(
        effort.seed(), chosen.changes(), ask.narrowed(), measures, inputs.draws());
  }

  /**
   * The same with blocks simulated elsewhere.
   *
   * @param runner simulates by this plant and {@link #recipe}
   */
  public Optional<ChooseAnswer> simulate(
      BlockRunner runner,
      BlockStore store,
      ChooseProgress progress,
      BooleanSupplier stop,
      BooleanSupplier timeUp) {
    runner.cluster().ifPresent(progress::ready);
    ChooseCosts costs = new ChooseCosts(space, base.plant(), ask.worth());
    ReplicationRange last = inputs.lastYears(effort.replications());
    Optional<Found> found =
        ask.independent()
            ? new TwoStages(terms, space, costs, last, runner)
                .simulate(candidates(), store, progress, stop, timeUp)
            : new ChooseRounds(ask, terms, space, costs, years, last, runner)
                .simulate(candidates(), store, progress, stop, timeUp);
    return found.map(
        of ->
            new ChooseAnswers(source, chosen, effort, base, terms, space, costs, of)
                .answer(inputs.draws().map(InputDraws::said).orElse("")));
  }
}
