package hurdline.study;

import hurdline.answer.BreakEvenRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.Fact;
import hurdline.answer.FollowUpFact;
import hurdline.answer.Further;
import hurdline.answer.GainRow;
import hurdline.answer.Selection;
import hurdline.answer.TornadoRow;
import hurdline.measure.Measure;
import hurdline.plant.Calendar;
import hurdline.plant.ProblemsException;
import hurdline.worth.BreakEven;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What is asked of a comparison besides the differences, each from plays of its own. */
final class Besides {
  private final CompareAsk ask;
  private final Chosen base;
  private final OptionPlants plants;
  private final List<Stage> stages;
  private final Optional<Mores> mores;
  private final Optional<Gains> gains;
  private final Optional<Tornado> tornado;
  private final Optional<BreakEvens> breakEvens;
  private final Optional<Selecting> selecting;

  /**
   * @param stages the base first
   * @throws ProblemsException if what is asked cannot be
   */
  Besides(
      Source source,
      Chosen base,
      CompareAsk ask,
      List<Stage> stages,
      List<CompareAnswer.Option> options,
      Effort effort) {
    this.base = base;
    this.ask = ask;
    this.stages = stages;
    plants = new OptionPlants(source, base);
    Stage stage = stages.get(0);
    if (stage.plant().money().isEmpty() && (ask.tornado().isPresent() || !ask.breakEven().isEmpty())) {
      throw source.refusal("without money no option is worth anything", "an entry under money");
    }
    refuseUnrepeated(source);
    mores = ask.gain() ? Optional.of(new Mores(source, base, stage)) : Optional.empty();
    gains = mores.map(all -> new Gains(source, base, all.all(), gained(stage)));
    tornado = ask.tornado().map(inputs -> new Tornado(plants, options, inputs, source));
    breakEvens =
        ask.breakEven().isEmpty()
            ? Optional.empty()
            : Optional.of(new BreakEvens(source, base, options, ask.breakEven()));
    selecting = selecting(source, ask, stages, options, effort);
  }

  private void refuseUnrepeated(Source source) {
    boolean asked = ask.tornado().isPresent() || !ask.breakEven().isEmpty();
    for (Stage stage : stages) {
      Calendar calendar = stage.plant().calendar();
      if (asked && LifeCalendar.of(calendar).isEmpty()) {
        throw source.refusal(
            "the calendar of "
                + calendar.days()
                + " days is shorter than a year and does not say how it repeats over an option's life, so no option is worth"
                + " anything",
            "\"repeats: yearly\" or \"repeats: end-to-end\" under calendar");
      }
    }
  }

  private static Optional<Selecting> selecting(
      Source source,
      CompareAsk ask,
      List<Stage> stages,
      List<CompareAnswer.Option> options,
      Effort effort) {
    int first = new Goal(effort).first();
    if (ask.best().isPresent() && (options.isEmpty() || first < 2)) {
      throw source.refusal(
          "the best is picked among two or more", "an option, and 2 replications or more");
    }
    List<String> names =
        Stream.concat(
                Stream.of(Chosen.BASE), options.stream().map(CompareAnswer.Option::name))
            .toList();
    return ask.best().map(zone -> new Selecting(zone, stages, names, first));
  }

  private static List<String> gained(Stage stage) {
    Set<String> measures = new LinkedHashSet<>();
    new Outlines(stage).lines().forEach(line -> measures.add(Measure.MASS_FED.of(line.crop())));
    measures.add(Measure.MONEY_MARGIN.of());
    return List.copyOf(measures);
  }

  /** How many plants are simulated, each as often as the base. */
  int plants() {
    return gains.map(Gains::plants).orElse(0);
  }

  /** How often the lives of all plants are simulated again; searches not counted. */
  int livesAgain() {
    return tornado.map(Tornado::simulatedEnds).orElse(0);
  }

  /** By option, the searches for a break-even that simulate lives at each value they try. */
  List<Integer> simulatedSearches() {
    return breakEvens.map(BreakEvens::simulatedSearches).orElse(List.of());
  }

  Further play(Rounds.Played played, Plays plays, LifeMargins margins) {
    Figures figures = played.figures().get(0);
    Rows rows = new Rows(base.option(), stages.get(0), figures, new Outlines(stages.get(0)));
    OptionWorth worth = new OptionWorth(plants, margins.years());
    Selection best =
        selecting.map(all -> all.play(played, rows, plays)).orElse(Selection.none());
    List<GainRow> gained = gains.map(all -> all.play(figures, rows, plays)).orElse(List.of());
    List<TornadoRow> swung = tornado.map(all -> all.rows(worth)).orElse(List.of());
    List<BreakEvenRow> even = breakEvens.map(all -> all.rows(worth, plays)).orElse(List.of());
    return new Further(ask.withinYr().orElse(Double.NaN), best, gained, swung, even);
  }

  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    selecting.ifPresent(all -> facts.add(new FollowUpFact.SelectionOfTheBest()));
    mores.ifPresent(all -> facts.add(new FollowUpFact.TenthMore(all.left())));
    tornado.ifPresent(all -> facts.add(new FollowUpFact.Sensitivity()));
    breakEvens.ifPresent(all -> facts.add(new FollowUpFact.BreakEvenSearch(BreakEven.tolerance())));
    return facts;
  }
}
