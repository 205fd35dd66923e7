package hurdline.fit;

import hurdline.fit.StopAmounts.Every;
import hurdline.plant.Stop;
import hurdline.plant.Stop.Counted;
import hurdline.records.Records;
import hurdline.records.StopRecord;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** On what a stop is counted: as somebody said, or as the log fits best. */
final class CountChoice {
  private static final double HOUR_S = 3600;

  /** Akaike's criteria that differ by less name no count. */
  private static final double CLEARLY = 4;

  /** Pace of a count that stood still when a stop began, over its usual pace. */
  private static final double STILL = 0.01;

  private final Records records;
  private final StopClocks clocks;
  private final StopLog log;

  CountChoice(Records records, StopClocks clocks, StopLog log) {
    this.records = records;
    this.clocks = clocks;
    this.log = log;
  }

  /**
   * The plant file's word, else that of records.yaml, else the count on which the log fits best.
   */
  Counted of(
      String machine,
      String name,
      Optional<Stop> known,
      List<StopRecord> rows,
      List<String> warnings) {
    Counted said =
        known.map(Stop::counted).orElse(records.map().counted().get(machine + "." + name));
    Map<Counted, Double> criteria = criteria(machine, name, rows, log.only(known));
    Optional<Counted> best =
        criteria.entrySet().stream().min(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    if (said == null) {
      double running = criteria.getOrDefault(Counted.RUNNING, Double.POSITIVE_INFINITY);
      return best.filter(found -> criteria.get(found) < running - CLEARLY).orElse(Counted.RUNNING);
    }
    if (best.isPresent()
        && criteria.containsKey(said)
        && criteria.get(best.get()) < criteria.get(said) - CLEARLY) {
      warnings.add(
          String.format(
              Locale.ROOT,
              "counted on %s; the log fits better counted on %s (Akaike's criterion %.0f lower)",
              said.name().toLowerCase(Locale.ROOT),
              best.get().name().toLowerCase(Locale.ROOT),
              criteria.get(said) - criteria.get(best.get())));
    }
    return said;
  }

  /**
   * Akaike's criterion of a Weibull law on each count, made comparable by the pace of the count at
   * each stop (the density of an instant is that of the amount times the pace). A stop that came
   * while the count stood still speaks against it, once and not for good, since clocks are read to
   * the minute.
   */
  private Map<Counted, Double> criteria(
      String machine, String name, List<StopRecord> rows, Set<String> only) {
    Map<Counted, Double> criteria = new LinkedHashMap<>();
    List<LocalDate> changes = log.changes(machine + "." + name);
    for (Counted counted : Counted.values()) {
      Optional<Count> count = clocks.count(counted, machine, only);
      List<StopRecord> used = rows.stream().filter(StopRecord::onShift).toList();
      if (count.isEmpty() || used.size() < LawChoice.FEW) {
        continue;
      }
      double[] paces =
          used.stream().mapToDouble(stop -> count.get().pacePerS(stop.beganS())).toArray();
      double most = java.util.Arrays.stream(paces).max().orElse(0);
      double pace =
          java.util.Arrays.stream(paces)
              .map(one -> Math.log(Math.max(one, STILL * most) * HOUR_S))
              .sum();
      double sum = 0;
      for (Every period :
          log.amounts(used, machine, Counted.RUNNING, changes)
              .every(count.get(), StopLog.least(counted))) {
        Optional<LawFit> fit =
            period.seen().isEmpty()
                ? Optional.empty()
                : MaximumLikelihood.fit(Law.WEIBULL, Observations.of(period.seen()), 0);
        sum += fit.map(f -> -2 * f.logLikelihood() + 4).orElse(0.0);
      }
      if (pace > Double.NEGATIVE_INFINITY) {
        criteria.put(counted, sum - 2 * pace);
      }
    }
    return criteria;
  }
}
