package hurdline.text;

import hurdline.answer.BottleneckRow;
import hurdline.answer.Outline;
import hurdline.measure.Cause;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What limits a line, as one says it. The causes of one machine, and those of a lack of crop, count
 * together where together they limit the line longest.
 *
 * <p>So do those of machines that stop together since no bin lies between them, where these have
 * the least expected capacity: each by itself may hold the line for fewer hours than a machine
 * ahead of them that waits for all of them and that nobody would gain by making faster.
 */
final class LimitWords {
  /** In one simulated year alone, shares that are no further apart are as good as alike. */
  private static final double CLOSE = 0.05;

  /** What limits a line in less than half of a percent of its hours is not reported. */
  private static final double LEAST = 0.005;

  private final List<BottleneckRow> rows;
  private final String line;
  private final int replications;
  private final SpokenNames names;
  private final Spoken spoken;
  private final List<Limit> limits;

  /**
   * @param rows of one plant; those of other lines are left out
   */
  LimitWords(
      List<BottleneckRow> rows,
      Outline.Line line,
      int replications,
      SpokenNames names,
      Spoken spoken) {
    this(rows, line, replications, names, spoken, List.of());
  }

  /**
   * @param together machines that stop together and have the least expected capacity; none where
   *     that is not known
   */
  LimitWords(
      List<BottleneckRow> rows,
      Outline.Line line,
      int replications,
      SpokenNames names,
      Spoken spoken,
      List<String> together) {
    this.rows = rows.stream().filter(row -> row.line().equals(line.name())).toList();
    this.line = names.line(line.name());
    this.names = names;
    this.replications = replications;
    this.spoken = spoken;
    this.limits = joined(limits(names.crop(line.crop())), together);
  }

  /**
   * @param cause the word of its longest cause
   * @param own the share of its own rate, where that is a machine's and alone longer than any other
   *     cause; else NaN
   * @param share of all its causes
   */
  private record Limit(
      String what,
      String cause,
      double own,
      double share,
      double low,
      double high,
      boolean isPlural) {
    double told() {
      return Double.isNaN(own) ? share : own;
    }
  }

  /** One sentence without its stop; empty where nothing limited the line. */
  Optional<String> sentence() {
    if (limits.isEmpty()) {
      return Optional.empty();
    }
    Limit first = limits.get(0);
    return Optional.of(
        limits.size() > 1 && isClose(first, limits.get(1))
            ? alike(first, limits.get(1))
            : alone(first));
  }

  /**
   * What limits longest, {@code the mill} or {@code a lack of stalk}, and in how many of 100 hours;
   * empty as above.
   */
  Optional<String> inShort() {
    if (limits.isEmpty()) {
      return Optional.empty();
    }
    Limit first = limits.get(0);
    boolean two = limits.size() > 1 && isClose(first, limits.get(1));
    String what =
        two
            ? first.what() + " and " + limits.get(1).what() + " limit "
            : first.what() + (first.isPlural() ? " limit " : " limits ");
    String hours =
        two
            ? "about equally, in "
                + spoken.ofHundred(first.share())
                + " and "
                + spoken.ofHundred(limits.get(1).share())
                + " of 100 scheduled hours"
            : hours(first);
    return Optional.of(what + line + (two ? " " : ", ") + hours);
  }

  /** What limits the line longest; empty where nothing does. */
  String first() {
    return limits.isEmpty() ? "" : limits.get(0).what();
  }

  /** The machine whose own rate alone limits the line longest; empty where it is anything else. */
  Optional<String> slowest() {
    return limits.isEmpty()
            || Double.isNaN(limits.get(0).own())
            || limits.size() > 1 && isClose(limits.get(0), limits.get(1))
        ? Optional.empty()
        : Optional.of(Cause.machineOf(limits.get(0).cause()));
  }

  /** Of what limits the line longest; 0 where nothing does. */
  double share() {
    return limits.isEmpty() ? 0 : limits.get(0).told();
  }

  /**
   * {@code The mill still limits the stalk line, in 52 of 100 scheduled hours}; only where
   * something limits it.
   */
  String still() {
    Limit first = limits.get(0);
    return SpokenNames.upper(first.what())
        + " still "
        + (first.isPlural() ? "limit " : "limits ")
        + line
        + ", "
        + hours(first);
  }

  /**
   * Shares of the same hours trade off, so their spreads add: intervals that touch leave it open
   * which limits longer.
   */
  private boolean isClose(Limit first, Limit second) {
    return Double.isNaN(first.low()) || Double.isNaN(second.high())
        ? first.share() - second.share() < CLOSE
        : first.low() <= second.high();
  }

  private String alike(Limit first, Limit second) {
    String both =
        SpokenNames.upper(first.what())
            + " and "
            + second.what()
            + " limit "
            + line
            + " about equally, in "
            + spoken.ofHundred(first.share())
            + " and "
            + spoken.ofHundred(second.share())
            + " of 100 scheduled hours";
    if (replications < 2) {
      return both;
    }
    double half = (first.high() - first.low() + second.high() - second.low()) / 2;
    double needed = Spoken.needed(replications, first.share() - second.share(), half);
    return both
        + "; "
        + spoken.wouldDecide(needed, replications, "replications", "which limits it longer");
  }

  private String alone(Limit of) {
    String in = hours(of);
    return switch (Cause.kindOf(of.cause())) {
      case NO_BALES, CROP_DONE ->
          SpokenNames.upper(of.what())
              + ", not a machine, limits "
              + line
              + ": it has none to feed "
              + in
              + second();
      case KEPT_APART ->
          SpokenNames.upper(of.what())
              + ", not a machine, limits "
              + line
              + ": nothing may be fed "
              + in
              + second();
      case NO_ORDER ->
          "A lack of orders, not a machine, limits " + line + ": no order is open " + in + second();
      case NO_CREW -> "A lack of crew, not a machine, limits " + line + " " + in + second();
      default ->
          SpokenNames.upper(of.what())
              + (of.isPlural() ? " are" : " is")
              + " the bottleneck: "
              + (of.isPlural() ? "they limit " : "it limits ")
              + line
              + " "
              + in
              + (!Double.isNaN(of.own()) ? "" : stopsIncluded(of));
    };
  }

  private static String stopsIncluded(Limit of) {
    return Cause.machinesOf(of.cause()).isEmpty() ? "" : ", stops and changes included";
  }

  private String second() {
    return limits.size() < 2
        ? ""
        : ". After that comes " + limits.get(1).what() + ", " + hours(limits.get(1));
  }

  private String hours(Limit of) {
    return of.told() >= 1 - LEAST
        ? "in all scheduled hours"
        : "in " + spoken.ofHundred(of.told()) + " of 100 scheduled hours";
  }

  /**
   * The longest first; causes that belong together are one, with the limits of their shares added.
   */
  private List<Limit> limits(String crop) {
    Map<String, List<BottleneckRow>> together = new LinkedHashMap<>();
    rows.stream()
        .filter(row -> row.share() > 0)
        .forEach(
            row ->
                together
                    .computeIfAbsent(
                        CauseWords.belongsTo(row.cause(), crop, names), key -> new ArrayList<>())
                    .add(row));
    double longest = rows.stream().mapToDouble(BottleneckRow::share).max().orElse(0);
    List<Limit> found = new ArrayList<>();
    together.forEach((what, causes) -> found.add(limit(what, causes, longest)));
    found.removeIf(limit -> limit.share() < LEAST);
    found.sort(Comparator.comparingDouble(Limit::share).reversed());
    return found;
  }

  /** With the limits of these machines as one, where together they hold the line longest. */
  private List<Limit> joined(List<Limit> found, List<String> together) {
    List<Limit> of =
        found.stream()
            .filter(limit -> !Cause.machinesOf(limit.cause()).isEmpty())
            .filter(limit -> together.containsAll(Cause.machinesOf(limit.cause())))
            .toList();
    double share = of.stream().mapToDouble(Limit::share).sum();
    if (of.size() < 2 || of.contains(found.get(0)) || share <= found.get(0).share()) {
      return found;
    }
    List<Limit> all = new ArrayList<>(found);
    all.removeAll(of);
    all.add(
        0,
        new Limit(
            names.machines(together.stream().filter(name -> isIn(of, name)).toList()),
            of.get(0).cause(),
            Double.NaN,
            share,
            of.stream().mapToDouble(Limit::low).sum(),
            of.stream().mapToDouble(Limit::high).sum(),
            true));
    return all;
  }

  private static boolean isIn(List<Limit> limits, String machine) {
    return limits.stream().anyMatch(limit -> Cause.machinesOf(limit.cause()).contains(machine));
  }

  private static Limit limit(String what, List<BottleneckRow> causes, double longest) {
    BottleneckRow first =
        causes.stream().max(Comparator.comparingDouble(BottleneckRow::share)).orElseThrow();
    boolean own =
        Cause.kindOf(first.cause()) == Cause.RATE
            && (first.share() == longest || causes.size() == 1);
    return new Limit(
        what,
        first.cause(),
        own ? first.share() : Double.NaN,
        causes.stream().mapToDouble(BottleneckRow::share).sum(),
        causes.stream().mapToDouble(BottleneckRow::shareLow95).sum(),
        causes.stream().mapToDouble(BottleneckRow::shareHigh95).sum(),
        Cause.machinesOf(first.cause()).size() > 1);
  }
}
