package hurdline.study.yard;

import hurdline.answer.AcresRow;
import hurdline.answer.Fact;
import hurdline.answer.GainRow;
import hurdline.answer.PeakRow;
import hurdline.answer.Replayed;
import hurdline.answer.Samples;
import hurdline.answer.SummaryRow;
import hurdline.answer.YardAnswer;
import hurdline.answer.YardFact;
import hurdline.measure.Measure;
import hurdline.simulation.CompiledPlant;
import hurdline.statistics.Interval;
import hurdline.statistics.Intervals;
import hurdline.statistics.Quantiles;
import hurdline.study.AnswerRows;
import hurdline.study.DrawnResults;
import hurdline.study.InputRows;
import hurdline.study.IntervalFacts;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.PlantOutline;
import hurdline.study.SafetyFacts;
import hurdline.study.replicate.ReplicationResults;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.StoppingRule;
import hurdline.study.run.RunAccumulator;
import hurdline.study.run.RunFacts;
import hurdline.study.run.YearRows;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Makes the answer on a yard from what its plants came to. */
final class YardAnswers {
  private static final int[] PERCENTS = IntStream.rangeClosed(1, 19).map(at -> 5 * at).toArray();

  private final PlantOrigin source;
  private final PlantChanges chosen;
  private final RunSettings effort;
  private final YardAsk ask;
  private final CompiledPlant stage;
  private final CompiledPlant free;
  private final YardUnderStudy yard;
  private final RunAccumulator unlimited;
  private final Optional<ReplicationResults> base;
  private final YardCurve curve;
  private Optional<DrawnResults> drawn = Optional.empty();
  private Optional<DrawnResults> freeDrawn = Optional.empty();

  YardAnswers(
      PlantOrigin source,
      PlantChanges chosen,
      RunSettings effort,
      YardAsk ask,
      CompiledPlant stage,
      CompiledPlant free,
      YardUnderStudy yard,
      RunAccumulator unlimited,
      Optional<ReplicationResults> base,
      YardCurve curve) {
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

  /** Both plants once more, with drawn inputs. */
  YardAnswers inputs(Optional<DrawnResults> asItStands, Optional<DrawnResults> withoutLimit) {
    drawn = asItStands;
    freeDrawn = withoutLimit;
    return this;
  }

  YardAnswer answer(
      OptionalInt byRule,
      YardAnswer.Land land,
      List<AcresRow> acres,
      List<GainRow> gains,
      boolean stopped) {
    PlantOutline outlines = new PlantOutline(stage);
    List<SummaryRow> summary = new ArrayList<>();
    List<Samples> samples = new ArrayList<>();
    InputRows inputs = new InputRows(drawn.map(DrawnResults::draws));
    base.ifPresent(
        figures -> {
          AnswerRows rows = new AnswerRows(chosen.option(), stage, figures, outlines, drawn);
          inputs.add(rows);
          summary.addAll(rows.summary());
          samples.add(rows.samples());
        });
    AnswerRows rows =
        new AnswerRows(
            YardAnswer.noLimit(), free, unlimited.figures(), new PlantOutline(free), freeDrawn);
    inputs.add(rows);
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
        inputs.answer(),
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
    int bales = new OverflowQuantile(ask.overflow()).of(peaks);
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

  private List<Fact> assumptions(AnswerRows rows, List<SummaryRow> summary, boolean stopped) {
    ReplicationResults figures = unlimited.figures();
    List<Fact> facts =
        new ArrayList<>(
            new RunFacts(rows, effort, figures, new StoppingRule(effort)).facts(stopped));
    IntervalFacts.of(summary).ifPresent(facts::add);
    if (effort.until().isPresent()) {
      facts.add(new YardFact.AimWithoutLimit());
    }
    facts.addAll(new YardFacts(yard, ask, figures.count()).facts());
    return facts;
  }
}
