package hurdline.study;

import hurdline.answer.AcresRow;
import hurdline.answer.GainRow;
import hurdline.answer.Fact;
import hurdline.answer.PeakRow;
import hurdline.answer.Replayed;
import hurdline.answer.Samples;
import hurdline.answer.SummaryRow;
import hurdline.answer.YardAnswer;
import hurdline.answer.YardFact;
import hurdline.estimate.Interval;
import hurdline.estimate.Intervals;
import hurdline.estimate.Quantiles;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Makes the answer on a yard from what its plants came to. */
final class YardAnswers {
  private static final int[] PERCENTS = IntStream.rangeClosed(1, 19).map(at -> 5 * at).toArray();

  private final Source source;
  private final Chosen chosen;
  private final Effort effort;
  private final YardAsk ask;
  private final Stage stage;
  private final Stage free;
  private final CropYard yard;
  private final Gathered unlimited;
  private final Optional<Figures> base;
  private final YardCurve curve;

  YardAnswers(
      Source source, Chosen chosen, Effort effort, YardAsk ask, Stage stage, Stage free, CropYard yard,
      Gathered unlimited, Optional<Figures> base, YardCurve curve) {
    this.source = source;
    this.chosen = chosen;
    this.effort = effort;
    this.ask = ask;
    this.stage = stage;
    this.free = free;
    this.yard = yard;
    this.unlimited = unlimited;
    this.base = base;
    this.curve = curve;
  }

  YardAnswer answer(
      OptionalInt byRule, YardAnswer.Land land, List<AcresRow> acres, List<GainRow> gains, boolean stopped) {
    Outlines outlines = new Outlines(stage);
    List<SummaryRow> summary = new ArrayList<>();
    List<Samples> samples = new ArrayList<>();
    base.ifPresent(
        figures -> {
          Rows rows = new Rows(chosen.option(), stage, figures, outlines);
          summary.addAll(rows.summary());
          samples.add(rows.samples());
        });
    Rows rows = new Rows(YardAnswer.noLimit(), free, unlimited.figures(), new Outlines(free));
    summary.addAll(rows.summary());
    samples.add(rows.samples());
    return new YardAnswer(
        outlines.header(source, chosen, effort, unlimited.figures().count(), stopped),
        outlines.outline(),
        new YardAnswer.Asked(
            yard.crop().name(),
            yard.unit(),
            ask.overflow(),
            yard.holds(),
            yard.grown().name(),
            yard.others(),
            yard.plant().yard().turnAway()),
        summary,
        peaks(),
        withoutLimit(),
        byRule.isPresent() ? byRule(byRule.getAsInt()) : YardAnswer.Size.none(),
        curve.rows(),
        new YearRows(YardAnswer.noLimit(), free, unlimited, rows).levels(),
        land,
        acres,
        gains,
        yard.plans(byRule.orElse(yard.holds())),
        new StoredFacts(yard).facts(),
        FirstLoads.of(stage, yard.crop().name(), effort.seed()),
        assumptions(rows, summary, stopped),
        new SafetyFacts(stage.plant()).facts(),
        source.warnings(),
        new Replayed(samples));
  }

  private double[] series(Measure measure) {
    return unlimited.figures().series(measure.of(yard.crop().name()));
  }

  private List<PeakRow> peaks() {
    double[] peaks = series(Measure.YARD_PEAK);
    return Arrays.stream(PERCENTS)
        .mapToObj(
            percent -> {
              Interval known = Intervals.quantile95(peaks, percent / 100.0);
              return new PeakRow(
                  yard.crop().name(),
                  String.format(java.util.Locale.ROOT, "p%02d", percent),
                  yard.unit(),
                  Quantiles.of(peaks, percent / 100.0),
                  known.low(),
                  known.high());
            })
        .toList();
  }

  private YardAnswer.Size withoutLimit() {
    double[] peaks = series(Measure.YARD_PEAK);
    int bales = new LeastRoom(ask.overflow()).of(peaks);
    int over = (int) Arrays.stream(peaks).filter(peak -> peak > bales).count();
    return size(bales, peaks, over);
  }

  private YardAnswer.Size byRule(int bales) {
    return size(
        bales, series(Measure.YARD_ROOM_NEEDED), curve.refused(curve.at(bales).orElseThrow()));
  }

  /** The size is the quantile of what the seasons need, so the quantile's interval is its own. */
  private YardAnswer.Size size(int bales, double[] needs, int over) {
    Interval known = Intervals.quantile95(needs, 1 - ask.overflow());
    Interval chance = Intervals.chance95(over, needs.length);
    return new YardAnswer.Size(
        bales,
        known.low(),
        known.high(),
        yard.areaM2(bales),
        over / (double) needs.length,
        chance.low(),
        chance.high());
  }

  private List<Fact> assumptions(Rows rows, List<SummaryRow> summary, boolean stopped) {
    Figures figures = unlimited.figures();
    List<Fact> facts = new ArrayList<>(new RunFacts(rows, effort, figures, new Goal(effort)).facts(stopped));
    IntervalFacts.of(summary).ifPresent(facts::add);
    if (effort.until().isPresent()) {
      facts.add(new YardFact.AimWithoutLimit());
    }
    facts.addAll(new YardFacts(yard, ask, figures.count()).facts());
    return facts;
  }
}
