package hurdline.study.backtest;

import hurdline.answer.BacktestAnswer;
import hurdline.answer.BacktestAnswer.Kind;
import hurdline.answer.BacktestAnswer.Verdict;
import hurdline.answer.Fact;
import hurdline.answer.RunFact;
import hurdline.plant.InputDraws;
import hurdline.problem.LocatedProblem;
import hurdline.records.Records;
import hurdline.simulation.CompiledPlant;
import hurdline.statistics.LinearUpdate;
import hurdline.statistics.Quantiles;
import hurdline.statistics.SeasonScore;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.PlantOutline;
import hurdline.study.SafetyFacts;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.RunFacts;
import hurdline.unit.AmountsInText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Makes the answer of a backtest: scores, verdicts, and which inputs the season would move. */
final class BacktestAnswers {
  private static final double Z = 1.96;
  private static final double LEVEL = 0.05;

  /** Draws of so many replications tell inputs apart. */
  private static final int FEWEST_FOR_MOVES = 99;

  private final PlantOrigin source;
  private final PlantChanges chosen;
  private final RunSettings effort;
  private final CompiledPlant stage;
  private final List<SeasonSeries> series;
  private final Optional<InputDraws> draws;

  BacktestAnswers(
      PlantOrigin source,
      PlantChanges chosen,
      RunSettings effort,
      CompiledPlant stage,
      List<SeasonSeries> series,
      Optional<InputDraws> draws) {
    this.source = source;
    this.chosen = chosen;
    this.effort = effort;
    this.stage = stage;
    this.series = series;
    this.draws = draws;
  }

  /**
   * @param values [replication][series][period]
   */
  BacktestAnswer answer(Records records, String folder, double[][][] values, boolean stopped) {
    PlantOutline outlines = new PlantOutline(stage);
    List<SeasonScore> scores = new ArrayList<>();
    List<BacktestAnswer.Period> periods = new ArrayList<>();
    for (int at = 0; at < series.size(); at++) {
      double[][] simulated = known(values, at);
      scores.add(SeasonScore.of(seen(at), simulated));
      periods.addAll(periods(at, simulated));
    }
    double[] together =
        SeasonScore.together(scores.stream().mapToDouble(SeasonScore::totalTail).toArray());
    List<BacktestAnswer.Series> rows = new ArrayList<>();
    for (int at = 0; at < series.size(); at++) {
      rows.add(row(at, scores.get(at), together[at]));
    }
    List<LocatedProblem> warnings = new ArrayList<>(source.warnings());
    warnings.addAll(records.cautions());
    return new BacktestAnswer(
        outlines.header(source, chosen, effort, values.length, stopped),
        outlines.outline(),
        folder,
        records.hash(),
        draws.map(InputDraws::said).orElse(""),
        rows,
        periods,
        draws
            .filter(of -> values.length >= FEWEST_FOR_MOVES)
            .map(of -> moves(of, values))
            .orElse(List.of()),
        facts(values.length, stopped),
        new SafetyFacts(stage.plant()).facts(),
        warnings);
  }

  private static List<Fact> facts(int replications, boolean stopped) {
    return RunFacts.around(Stream.of(new RunFact.Replications(replications, stopped)));
  }

  private double[] seen(int at) {
    return Arrays.stream(series.get(at).known())
        .mapToDouble(p -> series.get(at).seen()[p])
        .toArray();
  }

  private double[][] known(double[][][] values, int at) {
    int[] known = series.get(at).known();
    return Arrays.stream(values)
        .map(of -> Arrays.stream(known).mapToDouble(p -> of[at][p]).toArray())
        .toArray(double[][]::new);
  }

  private List<BacktestAnswer.Period> periods(int at, double[][] simulated) {
    SeasonSeries of = series.get(at);
    int[] known = of.known();
    List<BacktestAnswer.Period> rows = new ArrayList<>();
    for (int p = 0; p < known.length; p++) {
      int period = p;
      double[] column = Arrays.stream(simulated).mapToDouble(row -> row[period]).toArray();
      double[] band = Quantiles.of(column, 0.05, 0.5, 0.95);
      rows.add(
          new BacktestAnswer.Period(
              kind(of),
              of.of(),
              of.unit(),
              of.firsts().get(known[p]),
              of.seen()[known[p]],
              Arrays.stream(column).average().orElseThrow(),
              band[0],
              band[1],
              band[2]));
    }
    return rows;
  }

  private static Kind kind(SeasonSeries of) {
    return Kind.valueOf(of.kind().name());
  }

  private BacktestAnswer.Series row(int at, SeasonScore score, double together) {
    SeasonSeries of = series.get(at);
    double per = of.kind() == SeasonSeries.Kind.YARD ? of.known().length : 1;
    double mean = score.mean() / per;
    double off = score.mean() == 0 ? Double.NaN : score.total() / score.mean() - 1;
    double open = Z * score.sd() / score.mean();
    return new BacktestAnswer.Series(
        kind(of),
        of.of(),
        of.unit(),
        score.total() / per,
        mean,
        score.sd() / per,
        off,
        off - open,
        off + open,
        of.kind().tolerance(),
        score.totalTail(),
        together,
        score.crps(),
        score.crpsP(),
        score.rankP(),
        score.outside90(),
        score.outsideP(),
        verdict(off, open, of.kind().tolerance(), together));
  }

  private static Verdict verdict(double off, double open, double tolerance, double chance) {
    boolean within = Math.abs(off) + open <= tolerance;
    boolean beyond = !(Math.abs(off) - open <= tolerance);
    if (chance >= LEVEL) {
      return within ? Verdict.AGREES : Verdict.CANNOT_TELL;
    }
    return within ? Verdict.TOO_SMALL_TO_MATTER : beyond ? Verdict.MISSES : Verdict.PROBABLY_OFF;
  }

  /** By the linear update of each input's number by all totals together. */
  private List<BacktestAnswer.Move> moves(InputDraws of, double[][][] values) {
    double[][] totals = new double[values.length][series.size()];
    double[] seen = new double[series.size()];
    for (int at = 0; at < series.size(); at++) {
      double[][] simulated = known(values, at);
      for (int r = 0; r < values.length; r++) {
        totals[r][at] = Arrays.stream(simulated[r]).sum();
      }
      seen[at] = Arrays.stream(seen(at)).sum();
    }
    LinearUpdate update = new LinearUpdate(totals, seen);
    List<BacktestAnswer.Move> moves = new ArrayList<>();
    for (int key = 0; key < of.keys().size(); key++) {
      double[] input = new double[values.length];
      for (int r = 0; r < input.length; r++) {
        input[r] = AmountsInText.numbers(of.rows().get(of.row(r + 1)).get(key))[first(of, key)];
      }
      String name = of.keys().get(key);
      update
          .of(input)
          .ifPresent(
              found ->
                  moves.add(
                      new BacktestAnswer.Move(
                          name, found.was(), found.becomes(), found.errors(), found.told())));
    }
    moves.sort(
        Comparator.comparingDouble((BacktestAnswer.Move move) -> Math.abs(move.errors()))
            .reversed());
    return moves;
  }

  /** The number that stands for the input: its scale where a shape stands first. */
  private static int first(InputDraws of, int key) {
    String value = of.rows().get(0).get(key);
    return value.contains("shape") && AmountsInText.numbers(value).length > 1 ? 1 : 0;
  }
}
