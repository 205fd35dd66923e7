package hurdline.study.run;

import hurdline.account.Trace;
import hurdline.answer.Outline;
import hurdline.compiled.CompiledLines;
import hurdline.measure.EventKind;
import hurdline.simulation.CompiledPlant;
import hurdline.study.PlantOutline;
import hurdline.study.replicate.TraceWindow;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Writes down what happens in a span of one replication, with the rates after each instant. */
final class TraceRecorder implements Trace {
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS", Locale.ROOT);
  private static final double T_PER_H = 3.6;
  private static final double TONNE_KG = 1000;

  private final CompiledLines layout;
  private final TraceWindow span;
  private final LocalDateTime start;
  private final DayRecorder day;
  private final List<Noted> now = new ArrayList<>();
  private final List<hurdline.answer.Trace.Row> rows = new ArrayList<>();
  private boolean told;

  private record Noted(LocalDateTime at, String where, EventKind what, double amount) {}

  /**
   * @param span that has something of the calendar in it
   */
  TraceRecorder(CompiledPlant stage, TraceWindow span) {
    layout = stage.layout();
    this.span = span;
    start = stage.plant().calendar().from().atStartOfDay();
    LocalDateTime end = stage.plant().calendar().to().plusDays(1).atStartOfDay();
    Outline outline = new PlantOutline(stage).outline();
    List<String> heads = IntStream.range(0, layout.heads).mapToObj(this::head).toList();
    TraceWindow within =
        new TraceWindow(span.replication(), later(span.from(), start), earlier(span.to(), end));
    day = new DayRecorder(layout, outline, heads, crops(stage, outline), start, within);
  }

  /** In the order in which the yard numbers them. */
  private static List<Outline.Crop> crops(CompiledPlant stage, Outline outline) {
    return IntStream.range(0, stage.yard().crops())
        .mapToObj(stage.yard()::crop)
        .flatMap(name -> outline.crops().stream().filter(crop -> crop.name().equals(name)))
        .toList();
  }

  private static LocalDateTime later(LocalDateTime one, LocalDateTime other) {
    return one.isAfter(other) ? one : other;
  }

  private static LocalDateTime earlier(LocalDateTime one, LocalDateTime other) {
    return one.isBefore(other) ? one : other;
  }

  boolean isOf(int replication) {
    return replication == span.replication();
  }

  @Override
  public void note(double clockS, String where, EventKind what, double amount) {
    told = true;
    day.note(where, what);
    LocalDateTime at = start.plusNanos(Math.round(clockS * 1e3) * 1_000_000);
    if (!at.isBefore(span.from()) && !at.isAfter(span.to())) {
      now.add(new Noted(at, where, what, amount));
    }
  }

  @Override
  public void standing(double clockS, int[] state, int[] inYard) {
    day.standing(clockS, state, inYard);
  }

  @Override
  public void flows(double clockS, double[] rateKgPerS, double[] levelKg) {
    day.flows(clockS, rateKgPerS, levelKg);
    if (now.isEmpty()) {
      return;
    }
    double[] rates = Arrays.stream(rateKgPerS).map(rate -> rate * T_PER_H).toArray();
    double[] levels = Arrays.stream(levelKg).map(level -> level / TONNE_KG).toArray();
    for (Noted one : now) {
      rows.add(
          new hurdline.answer.Trace.Row(
              CLOCK.format(one.at), one.where, one.what, one.amount, rates, levels));
    }
    now.clear();
  }

  /** What was written down; none if the replication was not simulated. */
  hurdline.answer.Trace trace() {
    if (!told) {
      return hurdline.answer.Trace.none();
    }
    return new hurdline.answer.Trace(
        span.replication(),
        IntStream.range(0, layout.heads).mapToObj(this::head).toList(),
        IntStream.range(0, layout.bins).mapToObj(layout.naming.bins::name).toList(),
        rows,
        day.day());
  }

  /**
   * A head by the feeder or bin it draws from, with its line where several lines draw from that.
   */
  private String head(int head) {
    String name = entry(head);
    long several = IntStream.range(0, layout.heads).filter(h -> entry(h).equals(name)).count();
    return several == 1 ? name : name + "." + layout.naming.lines.name(layout.headLine[head]);
  }

  private String entry(int head) {
    int bin = layout.headBin[head];
    return bin >= 0
        ? layout.naming.bins.name(bin)
        : layout.machine[layout.stretch[head].machine[0]].name();
  }
}
