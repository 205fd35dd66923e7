package hurdline.study.yard;

import hurdline.answer.AcresRow;
import hurdline.answer.YardAnswer;
import hurdline.measure.Measure;
import hurdline.plant.Change;
import hurdline.plant.Delivery;
import hurdline.plant.Line;
import hurdline.plant.ProblemsException;
import hurdline.plant.SeasonEntry;
import hurdline.statistics.Interval;
import hurdline.statistics.Intervals;
import hurdline.study.PlantOrigin;
import hurdline.study.replicate.ReplicationResults;
import hurdline.unit.FileUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * How many acres of a crop can be contracted: all its fields larger or smaller by one factor, on
 * the same chance, first at even steps, then by halves between the last that does and the first
 * that does not.
 */
final class Acreage {
  /** Factors are counted in steps of this; it is the tolerance of the answer. */
  private static final double STEP = 0.005;

  private static final int ONCE = 200;
  private static final int[] EVEN = {100, 120, 140, 160, 180, 200, 220, 240, 260, 280, 300};
  private static final int[] BEYOND = {400, 600, 800, 1200, 1600};
  private static final int[] BELOW = {80, 60, 40, 20, 10};
  private static final Edge NONE = new Edge(Double.NaN, Double.NaN);

  private final double share;
  private final int carryOver;
  private final String line;
  private final List<Delivery.Field> fields;
  private final YardUnderStudy yard;
  private Function<Change, Optional<ReplicationResults>> simulator = change -> Optional.empty();
  private final Map<Integer, ReplicationResults> simulated = new TreeMap<>();

  /**
   * @param share of seasons that must finish
   * @param carryOver bales that may be left over
   * @throws ProblemsException if the crop has no fields or no line works it
   */
  Acreage(double share, int carryOver, YardUnderStudy yard, PlantOrigin source) {
    this.share = share;
    this.carryOver = carryOver;
    this.yard = yard;
    String crop = yard.crop().name();
    fields =
        yard.plant().deliveries().stream()
            .filter(delivery -> delivery.crop().equals(crop))
            .flatMap(delivery -> delivery.fields().stream())
            .toList();
    if (fields.isEmpty()) {
      throw source.refusal(
          "\"" + crop + "\" has no fields whose acres could be asked for",
          "fields under deliveries." + crop);
    }
    List<String> lines =
        yard.plant().lines().stream()
            .filter(l -> l.crop().equals(yard.crop().base()))
            .map(Line::name)
            .toList();
    line =
        yard.plant().season().stream()
            .filter(SeasonEntry.Campaign.class::isInstance)
            .map(SeasonEntry.Campaign.class::cast)
            .filter(campaign -> lines.contains(campaign.line()))
            .max(Comparator.comparing(SeasonEntry.Campaign::to))
            .map(SeasonEntry.Campaign::line)
            .orElseThrow(
                () ->
                    source.refusal(
                        "\"" + crop + "\" is worked by no line in the season",
                        "a campaign of one of its lines"));
  }

  /** About how many plants are simulated. */
  static int plants() {
    return EVEN.length + 15;
  }

  /** Who simulates the plant with something more changed. */
  void simulator(Function<Change, Optional<ReplicationResults>> who) {
    simulator = who;
  }

  void known(ReplicationResults asTheFileHasIt) {
    simulated.put(ONCE, asTheFileHasIt);
  }

  /**
   * Finds the answer, or ends early where it is stopped.
   *
   * <p>Each season has a factor up to which it finishes, and what is looked for is a quantile of
   * these; so its interval lies between two of them, as that of any quantile does, and each is
   * where one season less finishes.
   *
   * @see Intervals#quantile95
   */
  YardAnswer.Land simulate() {
    for (int steps : EVEN) {
      if (at(steps).isEmpty()) {
        return land(NONE, NONE, NONE);
      }
    }
    int count = simulated.get(EVEN[0]).count();
    double[] ranks = IntStream.rangeClosed(1, count).asDoubleStream().toArray();
    Interval limits = Intervals.quantile95(ranks, 1 - share);
    Edge answer = edge((int) Math.ceil(share * count - 1e-9));
    return land(answer, edge(count + 1 - limits.low()), edge(count + 1 - limits.high()));
  }

  /**
   * Between which two factors so many seasons cease to finish.
   *
   * @param does the last that does, or NaN
   * @param doesNot the first that does not, or NaN
   */
  private record Edge(double does, double doesNot) {}

  /**
   * @param seasons that must finish; NaN where so few cannot tell
   */
  private Edge edge(double seasons) {
    for (int at = 0; seasons > 0 && firstThatDoes(seasons).isEmpty() && at < BELOW.length; at++) {
      if (at(BELOW[at]).isEmpty()) {
        return NONE;
      }
    }
    OptionalInt from = firstThatDoes(seasons);
    if (from.isEmpty()) {
      return NONE;
    }
    for (int at = 0;
        firstThatDoesNot(from.getAsInt(), seasons).isEmpty() && at < BEYOND.length;
        at++) {
      if (at(BEYOND[at]).isEmpty()) {
        return NONE;
      }
    }
    OptionalInt to = firstThatDoesNot(from.getAsInt(), seasons);
    return to.isEmpty()
        ? new Edge(BEYOND[BEYOND.length - 1], Double.NaN)
        : halve(to.getAsInt(), seasons);
  }

  private Edge halve(int to, double seasons) {
    int from =
        simulated.keySet().stream()
            .filter(steps -> steps < to)
            .mapToInt(i -> i)
            .max()
            .orElseThrow();
    OptionalInt bad =
        OverflowQuantile.halve(from, to, steps -> at(steps).map(figures -> !does(steps, seasons)));
    return bad.isPresent() ? new Edge(bad.getAsInt() - 1, bad.getAsInt()) : NONE;
  }

  private OptionalInt firstThatDoes(double seasons) {
    return simulated.keySet().stream()
        .mapToInt(i -> i)
        .filter(steps -> does(steps, seasons))
        .findFirst();
  }

  private OptionalInt firstThatDoesNot(int from, double seasons) {
    return simulated.keySet().stream()
        .mapToInt(i -> i)
        .filter(steps -> steps > from && !does(steps, seasons))
        .findFirst();
  }

  /** The interval is widened by what is not known of its ends. */
  private YardAnswer.Land land(Edge answer, Edge low, Edge high) {
    return new YardAnswer.Land(
        share, carryOver, answer.does() / ONCE, STEP, low.does() / ONCE, high.doesNot() / ONCE);
  }

  private Optional<ReplicationResults> at(int steps) {
    if (!simulated.containsKey(steps)) {
      String times =
          new BigDecimal(steps)
              .multiply(new BigDecimal("0.005"))
              .stripTrailingZeros()
              .toPlainString();
      String path = "deliveries." + yard.crop().name() + ".fields.*.area";
      simulator
          .apply(new Change.Value(path, "x" + times))
          .ifPresent(figures -> simulated.put(steps, figures));
    }
    return Optional.ofNullable(simulated.get(steps));
  }

  private boolean does(int steps, double seasons) {
    return finished(simulated.get(steps)) >= seasons;
  }

  /** Seasons with no more left over than may be when the crop's last campaign ends. */
  private int finished(ReplicationResults figures) {
    return (int) Arrays.stream(leftOver(figures)).filter(left -> left <= carryOver).count();
  }

  private double[] leftOver(ReplicationResults figures) {
    return figures.series(Measure.SEASON_LEFT_OVER.of(line));
  }

  List<AcresRow> rows() {
    double acres = fields.stream().mapToDouble(Delivery.Field::areaM2).sum() / FileUnit.ACRE.inSi();
    List<AcresRow> rows = new ArrayList<>();
    simulated.forEach(
        (steps, figures) -> {
          int finished = finished(figures);
          Interval chance = Intervals.chance95(finished, figures.count());
          double times = steps / (double) ONCE;
          rows.add(
              new AcresRow(
                  times,
                  Math.rint(times * acres * 1e6) / 1e6,
                  finished / (double) figures.count(),
                  chance.low(),
                  chance.high(),
                  figures.mean(Measure.SEASON_LEFT_OVER.of(line))));
        });
    return rows;
  }
}
