package hurdline.fit;

import hurdline.records.MadeRecord;
import hurdline.records.ShiftRecord;
import hurdline.records.Spans;
import hurdline.records.Spans.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * What was fed in a shift, or in a part of it where the records say in which.
 *
 * @param worked its hours less rests
 */
record FedPart(Span of, List<Span> worked, double kg) {
  FedPart times(double share) {
    return new FedPart(of, worked, kg * share);
  }

  /**
   * @param byShift what each shift fed in all
   * @param rows of what was fed
   */
  static List<FedPart> of(
      Map<ShiftRecord, Double> byShift, List<MadeRecord> rows, ToDoubleFunction<MadeRecord> kg) {
    Map<String, List<MadeRecord>> own = new HashMap<>();
    rows.forEach(
        row ->
            own.computeIfAbsent(row.date() + "|" + row.shift(), key -> new ArrayList<>()).add(row));
    List<FedPart> parts = new ArrayList<>();
    byShift.forEach(
        (shift, allKg) -> {
          List<MadeRecord> here = own.getOrDefault(shift.date() + "|" + shift.shift(), List.of());
          if (followEachOther(here)) {
            here.forEach(row -> parts.add(part(row.when().get(), kg.applyAsDouble(row))));
          } else {
            parts.add(new FedPart(whole(shift), shift.worked(), allKg));
          }
        });
    return parts;
  }

  private static FedPart part(Span of, double kg) {
    return new FedPart(of, List.of(of), kg);
  }

  /** Whether all of them say when, and no two of them the same time. */
  private static boolean followEachOther(List<MadeRecord> rows) {
    if (rows.isEmpty() || rows.stream().anyMatch(row -> row.when().isEmpty())) {
      return false;
    }
    List<Span> spans = rows.stream().map(row -> row.when().get()).toList();
    double eachS = spans.stream().mapToDouble(span -> span.toS() - span.fromS()).sum();
    return Spans.of(spans).totalS() >= eachS;
  }

  static Span whole(ShiftRecord shift) {
    return new Span(shift.fromS(), shift.toS());
  }
}
