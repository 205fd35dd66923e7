package hurdline.fit;

import hurdline.fit.AmountFit.AmountUnit;
import hurdline.fit.LawChoice.Chosen;
import hurdline.fit.Observations.Seen;
import hurdline.plant.Stop;
import hurdline.random.RandomStreams;
import hurdline.records.Records;
import hurdline.records.Spans;
import hurdline.records.StopRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Fits how long repairs took. */
final class RepairFits {
  private static final double MINUTE_S = 60;
  private static final double NEVER_TOLD = 0.01;
  private static final int ENOUGH = 30;

  /** Times the ninth decile from which on a repair is worth a look. */
  private static final double FAR = 20;

  /** What is known to no better than this is left out of the test of fit. */
  private static final double WIDE_S = 12 * MINUTE_S;

  private final Records records;
  private final StopClocks clocks;
  private final RandomStreams streams;
  private final double endS;

  RepairFits(Records records, StopClocks clocks, RandomStreams streams, double endS) {
    this.records = records;
    this.clocks = clocks;
    this.streams = streams;
    this.endS = endS;
  }

  AmountFit of(String key, Optional<Stop> known, List<StopRecord> rows) {
    String machine = rows.get(0).machine();
    double lowS = records.map().loggedFromS().getOrDefault(rows.get(0).key(), 0.0);
    boolean anyTime = known.map(Stop::repairAnyTime).orElse(false);
    StopAmounts.Lasts read =
        new StopAmounts(rows, List.of(), List.of(), endS)
            .lasts(clocks.crewed(machine), anyTime, lowS);
    List<String> notes = new ArrayList<>();
    if (read.belowLow() > 0) {
      notes.add(read.belowLow() + " shorter than what was said to be written down: not used");
    }
    double longestS = read.seen().stream().mapToDouble(RepairFits::endS).max().orElse(0);
    double usualS = ninth(read.seen());
    if (longestS > FAR * usualS) {
      notes.add(
          String.format(
              Locale.ROOT,
              "the longest, %.1f h, is by far the longest: is it one?",
              longestS / 3600));
    }
    if (read.inSteps()) {
      notes.add("fitted as rounded to the clock's step");
    }
    if (known.filter(stop -> !stop.needs().isEmpty()).isPresent()) {
      notes.add(
          "the file's \"needs\" waits besides: as logged, the wait is in it already unless the log has \"work began\"");
    }
    if (read.seen().isEmpty()) {
      return new AmountFit(
          key,
          AmountUnit.SECONDS,
          new Taken.Left("no repair whose length is known"),
          null,
          List.of(),
          Double.NaN,
          notes);
    }
    AmountFit fit = lasts(key, read.seen(), lowS, notes);
    double hiddenS = lowS == 0 ? hidden(fit) : 0;
    if (hiddenS == 0) {
      return fit;
    }
    notes.add(
        String.format(
            Locale.ROOT,
            "nothing below %.0f min was logged, which chance explains in less than 1 %%: fitted above it; say \"logged_from: {%s: %.0f min}\"",
            hiddenS / MINUTE_S,
            rows.get(0).key(),
            hiddenS / MINUTE_S));
    StopAmounts.Lasts above =
        new StopAmounts(rows, List.of(), List.of(), endS)
            .lasts(clocks.crewed(machine), anyTime, hiddenS);
    return lasts(key, above.seen(), hiddenS, notes);
  }

  /** How long a job took whose rows are told as those of stops, whoever was there. */
  AmountFit ofJob(String key, List<StopRecord> rows, List<String> told) {
    StopAmounts.Lasts read =
        new StopAmounts(rows, List.of(), List.of(), endS).lasts(Spans.of(List.of()), true, 0);
    List<String> notes = new ArrayList<>(told);
    if (read.seen().isEmpty()) {
      return new AmountFit(
          key,
          AmountUnit.SECONDS,
          new Taken.Left("no row whose length is known"),
          null,
          List.of(),
          Double.NaN,
          notes);
    }
    if (read.inSteps()) {
      notes.add("fitted as rounded to the clock's step");
    }
    return lasts(key, read.seen(), 0, notes);
  }

  private static double endS(Seen one) {
    return one.isGoing() ? one.low() : (one.low() + one.high()) / 2;
  }

  private static double ninth(List<Seen> seen) {
    double[] rising = seen.stream().mapToDouble(RepairFits::endS).sorted().toArray();
    return rising.length < LawChoice.THIN
        ? Double.POSITIVE_INFINITY
        : rising[(int) (0.9 * (rising.length - 1))];
  }

  private AmountFit lasts(String key, List<Seen> all, double lowS, List<String> notes) {
    Observations seen = Observations.of(all);
    List<Seen> closed = all.stream().filter(one -> one.high() - one.low() <= WIDE_S).toList();
    Observations tested = closed.isEmpty() ? seen : Observations.of(closed);
    Chosen chosen =
        new LawChoice(tested, GoodnessOfFit.amounts(tested, lowS), lowS, streams.of(1, key))
            .lasts();
    List<String> said = new ArrayList<>(notes);
    said.addAll(chosen.notes());
    return new AmountFit(
        key,
        AmountUnit.SECONDS,
        chosen.taken(),
        seen,
        chosen.tried(),
        chosen.taken().meanErrorShare(),
        said);
  }

  /**
   * Below which length nothing seems to have been written down, in whole minutes; 0 where nothing
   * points to it.
   */
  private static double hidden(AmountFit fit) {
    if (!(fit.taken() instanceof Taken.OfLaw law) || fit.ended() < ENOUGH) {
      return 0;
    }
    double least =
        fit.seen().all().stream()
            .filter(one -> !one.isGoing())
            .mapToDouble(one -> one.low())
            .min()
            .orElse(0);
    double survivalLog =
        least > 0 ? law.fit().law().logSurvival(least / law.fit().unit(), law.fit().t()) : 0;
    boolean isHidden = Math.exp(fit.ended() * survivalLog) < NEVER_TOLD;
    return isHidden ? Math.floor(least / MINUTE_S) * MINUTE_S : 0;
  }
}
