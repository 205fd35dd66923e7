package hurdline.study;

import hurdline.answer.AdjustedRow;
import hurdline.answer.CashRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.DifferenceRow;
import hurdline.answer.Further;
import hurdline.answer.HolderRow;
import hurdline.answer.LifeRow;
import hurdline.answer.MillRow;
import hurdline.answer.MonthRow;
import hurdline.answer.Fact;
import hurdline.answer.PaybackRow;
import hurdline.answer.Replayed;
import hurdline.answer.Samples;
import hurdline.answer.SummaryRow;
import hurdline.estimate.PairedDifference;
import hurdline.plant.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the answer of a comparison; the base is the first of the plants. */
final class CompareAnswers {
  private final Source source;
  private final Chosen base;
  private final CompareAsk ask;
  private final Effort effort;
  private final List<Stage> stages;
  private final List<CompareAnswer.Option> options;
  private final List<Figures> figures;
  private final List<PeriodFigures> months;
  private final LifeMargins margins;
  private final boolean stopped;

  CompareAnswers(
      Source source,
      Chosen base,
      CompareAsk ask,
      Effort effort,
      List<Stage> stages,
      List<CompareAnswer.Option> options,
      Rounds.Played played,
      List<PeriodFigures> months,
      LifeMargins margins) {
    this.source = source;
    this.base = base;
    this.ask = ask;
    this.effort = effort;
    this.stages = stages;
    this.options = options;
    figures = played.figures();
    this.months = months;
    this.margins = margins;
    stopped = played.stopped();
  }

  /**
   * @param besides what the further answers take for granted
   * @param cut whether some of them are missing because the user asked for an end
   */
  CompareAnswer answer(Further further, List<Fact> besides, boolean cut) {
    Outlines outlines = new Outlines(stages.get(0));
    int count = figures.get(0).count();
    List<SummaryRow> summary = new ArrayList<>();
    List<HolderRow> holders = new ArrayList<>();
    List<MonthRow> byMonth = new ArrayList<>();
    List<MillRow> mills = new ArrayList<>();
    List<Samples> samples = new ArrayList<>();
    for (int at = 0; at < stages.size(); at++) {
      String name = at == 0 ? Chosen.BASE : options.get(at - 1).name();
      Rows rows = new Rows(name, stages.get(at), figures.get(at), new Outlines(stages.get(at)));
      summary.addAll(rows.summary());
      holders.addAll(rows.holders());
      byMonth.addAll(rows.months(months.get(at)));
      mills.addAll(Mills.rows(name, stages.get(at).plant(), outlines.lines()));
      samples.add(rows.samples());
    }
    List<PaybackRow> payback = new ArrayList<>();
    List<CashRow> cash = new ArrayList<>();
    List<LifeRow> life = new ArrayList<>();
    money(payback, cash, life);
    return new CompareAnswer(
        outlines.header(source, base, effort, count, stopped || cut),
        outlines.outline(stages),
        options,
        summary,
        differences(samples.get(0)),
        adjusted(outlines),
        holders,
        byMonth,
        mills,
        payback,
        cash,
        life,
        margins.terms(),
        further,
        assumptions(summary, besides),
        new SafetyFacts(stages.get(0).plant()).facts(),
        source.warnings(),
        new Replayed(samples));
  }

  private List<DifferenceRow> differences(Samples ofBase) {
    List<DifferenceRow> rows = new ArrayList<>();
    for (int at = 0; at < options.size(); at++) {
      Figures other = figures.get(at + 1);
      for (Samples.Measured measured : ofBase.measures()) {
        String measure = measured.measure();
        if (other.has(measure)) {
          PairedDifference pair =
              PairedDifference.of(
                  figures.get(0).series(measure), other.series(measure), options.size());
          rows.add(row(options.get(at).name(), measured, pair));
        }
      }
    }
    return rows;
  }

  private List<AdjustedRow> adjusted(Outlines outlines) {
    CropAdjustments adjustments = new CropAdjustments(outlines.outline(), figures.get(0));
    Rows units = new Rows(Chosen.BASE, stages.get(0), figures.get(0), outlines);
    List<AdjustedRow> rows = new ArrayList<>();
    for (int at = 0; at < options.size(); at++) {
      rows.addAll(adjustments.differences(options.get(at).name(), figures.get(at + 1), units, options.size()));
    }
    return rows;
  }

  static DifferenceRow row(
      String option, Samples.Measured measured, PairedDifference pair) {
    return new DifferenceRow(
        option,
        measured.measure(),
        measured.unit(),
        pair.baseMean(),
        pair.optionMean(),
        pair.difference(),
        pair.at95().low(),
        pair.at95().high(),
        pair.joint().low(),
        pair.joint().high(),
        pair.interval().word(),
        pair.toldApart(),
        pair.replicationsNeeded().isPresent()
            ? pair.replicationsNeeded().getAsInt()
            : Double.NaN,
        pair.varianceRemoved(),
        pair.count());
  }

  private void money(
      List<PaybackRow> payback,
      List<CashRow> cash,
      List<LifeRow> rows) {
    for (CompareAnswer.Option option : options) {
      Optional<MarginYears> margin = margins.of(option.name());
      if (margin.isPresent()) {
        Money money = stages.get(0).plant().money().orElseThrow();
        Lives lives = new Lives(option, money, margin.get(), ask.withinYr());
        payback.addAll(lives.payback());
        cash.addAll(lives.cash());
        rows.addAll(lives.rows());
      }
    }
  }

  private List<Fact> assumptions(List<SummaryRow> summary, List<Fact> besides) {
    Goal goal = new Goal(effort, figures.subList(1, figures.size()));
    Rows rows = new Rows(Chosen.BASE, stages.get(0), figures.get(0), new Outlines(stages.get(0)));
    List<Fact> facts = new ArrayList<>(new RunFacts(rows, effort, figures.get(0), goal).facts(stopped));
    IntervalFacts.of(summary).ifPresent(facts::add);
    facts.addAll(new CompareFacts(stages.get(0).plant(), ask, effort, options.size(), margins).facts());
    facts.addAll(besides);
    return facts;
  }
}
