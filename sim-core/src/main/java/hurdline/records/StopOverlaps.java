package hurdline.records;

import hurdline.records.StopReader.Told;
import hurdline.records.StopRecord.Repair;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Sorts out rows that speak of one stop, or of stops at the same time: twins, overlaps of one
 * reason, repairs that wait for another of the machine; and by which step of the clock the log is
 * written.
 */
final class StopOverlaps {
  private static final double MINUTE_S = 60;
  private static final double FIVE_S = 5 * MINUTE_S;
  private static final double LONG_S = 3 * 24 * 3600.0;

  private final List<Told> told;
  private final Map<String, Spans> crewed;
  private final List<ShiftRecord> shifts;

  StopOverlaps(List<Told> told, Map<String, Spans> crewed, List<ShiftRecord> shifts) {
    this.told = told;
    this.crewed = crewed;
    this.shifts = shifts;
  }

  List<StopRecord> read() {
    List<Told> single = new ArrayList<>();
    byKey().values().forEach(rows -> single.addAll(joined(rows)));
    Map<String, List<Told>> machines = new LinkedHashMap<>();
    single.sort(
        Comparator.comparingDouble((Told t) -> t.stop().beganS())
            .thenComparingInt(t -> t.stop().line()));
    single.forEach(
        t -> machines.computeIfAbsent(t.stop().machine(), m -> new ArrayList<>()).add(t));
    Map<String, Double> stepS = steps(single);
    List<StopRecord> stops = new ArrayList<>();
    machines.values().forEach(rows -> stops.addAll(inTurn(rows, stepS)));
    stops.sort(Comparator.comparingDouble(StopRecord::beganS).thenComparingInt(StopRecord::line));
    return stops;
  }

  private Map<String, List<Told>> byKey() {
    Map<String, List<Told>> rows = new LinkedHashMap<>();
    told.stream()
        .sorted(
            Comparator.comparingDouble((Told t) -> t.stop().beganS())
                .thenComparingInt(t -> t.stop().line()))
        .forEach(t -> rows.computeIfAbsent(t.stop().key(), k -> new ArrayList<>()).add(t));
    return rows;
  }

  /** Rows of one machine and reason, twins and overlaps taken together. */
  private static List<Told> joined(List<Told> rows) {
    List<Told> single = new ArrayList<>();
    for (Told next : rows) {
      Told last = single.isEmpty() ? null : single.get(single.size() - 1);
      if (last != null && isTwin(last.stop(), next.stop())) {
        next.row().setAside("same as line " + last.stop().line());
      } else if (last != null && next.stop().beganS() < last.stop().endedS()) {
        double endS =
            Math.max(
                last.stop().endedS(),
                Double.isNaN(next.stop().endedS()) ? 0 : next.stop().endedS());
        next.row()
            .join(
                "overlaps line "
                    + last.stop().line()
                    + ": one stop from the first start to the last end");
        single.set(single.size() - 1, new Told(last.row(), last.wall(), last.stop().ending(endS)));
      } else {
        single.add(next);
      }
    }
    return single;
  }

  private static boolean isTwin(StopRecord one, StopRecord other) {
    return one.beganS() == other.beganS() && Double.compare(one.endedS(), other.endedS()) == 0;
  }

  /**
   * The stops of one machine in order: a repair begins when that of the stop before it has ended.
   */
  private List<StopRecord> inTurn(List<Told> rows, Map<String, Double> stepS) {
    List<StopRecord> stops = new ArrayList<>();
    double busyS = Double.NEGATIVE_INFINITY;
    int busyLine = 0;
    for (int i = 0; i < rows.size(); i++) {
      Told at = rows.get(i);
      StopRecord stop = at.stop();
      double nextS = i + 1 < rows.size() ? rows.get(i + 1).stop().beganS() : Double.NaN;
      if (stop.repair() == Repair.NO_END) {
        stop = open(at.row(), stop, nextS);
      } else if (stop.beganS() < busyS) {
        stop = behind(at.row(), stop, busyS, busyLine);
      }
      if (stop.endedS() > busyS) {
        busyS = stop.endedS();
        busyLine = stop.line();
      }
      stops.add(settled(at.row(), stop, stepS.getOrDefault(crew(at), MINUTE_S)));
    }
    return stops;
  }

  private StopRecord open(Row row, StopRecord stop, double nextS) {
    row.note(
        Double.isNaN(nextS)
            ? "no end, and nothing is seen of the machine after it"
            : "no end: it ended before the machine's next stop");
    return stop.repairing(stop.repairFromS(), Repair.NO_END).ending(nextS);
  }

  private static StopRecord behind(Row row, StopRecord stop, double busyS, int busyLine) {
    if (!(stop.endedS() > busyS)) {
      row.note("lies within the stop of line " + busyLine + ": used for \"every\" only");
      return stop.repairing(stop.repairFromS(), Repair.NOT_KNOWN);
    }
    row.note("begins inside the stop of line " + busyLine + ": repair counted from its end");
    return stop.repairing(Math.max(busyS, stop.repairFromS()), stop.repair());
  }

  private StopRecord settled(Row row, StopRecord stop, double stepS) {
    if (stop.repair() == Repair.WHOLE && stop.endedS() - stop.beganS() > LONG_S) {
      row.note(
          String.format(
              java.util.Locale.ROOT,
              "%.0f h: longer than three days",
              (stop.endedS() - stop.beganS()) / 3600));
    }
    if (!stop.onShift()) {
      boolean isNoShift = crewed.containsKey(stop.machine());
      row.note(
          isNoShift
              ? "began off shift: used for \"calendar\" only"
              : "no shift is known of the machine");
      row.use("calendar");
    } else {
      row.use(
          stop.repair() == Repair.NOT_KNOWN
                  || stop.repair() == Repair.NO_END && Double.isNaN(stop.endedS())
              ? "every"
              : "every lasts");
    }
    return new StopRecord(
        stop.line(),
        stop.machine(),
        stop.stop(),
        stop.beganS(),
        stop.repairFromS(),
        stop.endedS(),
        stop.repair(),
        stop.onShift(),
        stepS);
  }

  /**
   * Of the crews and reasons that write five minutes: where more than half of the times end in 0 or
   * 5, of which chance would make a fifth.
   */
  private Map<String, Double> steps(List<Told> rows) {
    Map<String, int[]> counts = new LinkedHashMap<>();
    for (Told at : rows) {
      int[] count = counts.computeIfAbsent(crew(at), c -> new int[2]);
      count[0] += at.stop().beganS() % FIVE_S == 0 ? 1 : 0;
      count[1]++;
    }
    Map<String, Double> steps = new LinkedHashMap<>();
    counts.forEach(
        (crew, count) ->
            steps.put(crew, count[1] >= 10 && count[0] * 2 > count[1] ? FIVE_S : MINUTE_S));
    return steps;
  }

  private String crew(Told at) {
    double beganS = at.stop().beganS();
    String shift =
        shifts.stream()
            .filter(one -> one.fromS() <= beganS && beganS < one.toS())
            .map(ShiftRecord::shift)
            .findFirst()
            .orElse("");
    return shift + " " + at.stop().stop();
  }
}
