package hurdline.study.compare;

import hurdline.answer.AdjustedRow;
import hurdline.answer.AfterTaxRow;
import hurdline.answer.BottleneckRow;
import hurdline.answer.CashRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.DifferenceRow;
import hurdline.answer.Fact;
import hurdline.answer.FollowUps;
import hurdline.answer.MillRow;
import hurdline.answer.MonthRow;
import hurdline.answer.PaybackRow;
import hurdline.answer.Replayed;
import hurdline.answer.Samples;
import hurdline.answer.ServiceLifeRow;
import hurdline.answer.SummaryRow;
import hurdline.economics.CapitalRecovery;
import hurdline.measure.Measure;
import hurdline.plant.Calendar;
import hurdline.plant.Money;
import hurdline.plant.Plant;
import hurdline.simulation.CompiledPlant;
import hurdline.study.AnswerRows;
import hurdline.study.CashFacts;
import hurdline.study.CropAdjustments;
import hurdline.study.DrawnResults;
import hurdline.study.InputRows;
import hurdline.study.IntervalFacts;
import hurdline.study.MillUse;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.PlantOutline;
import hurdline.study.SafetyFacts;
import hurdline.study.option.AnnualMarginGain;
import hurdline.study.option.Financing;
import hurdline.study.option.OptionMargins;
import hurdline.study.option.ServiceLives;
import hurdline.study.replicate.InterleavedRuns;
import hurdline.study.replicate.PeriodResults;
import hurdline.study.replicate.ReplicationResults;
import hurdline.study.replicate.RunSettings;
import hurdline.study.replicate.StoppingRule;
import hurdline.study.run.RunFacts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the answer of a comparison; the base is the first of the plants. */
public final class CompareAnswers {
  private final PlantOrigin source;
  private final PlantChanges base;
  private final CompareAsk ask;
  private final RunSettings effort;
  private final List<CompiledPlant> stages;
  private final List<CompareAnswer.Option> options;
  private final List<ReplicationResults> figures;
  private final List<Optional<DrawnResults>> drawn;
  private final InputRows inputs;
  private final List<PeriodResults> months;
  private final OptionMargins margins;
  private final boolean stopped;

  CompareAnswers(
      PlantOrigin source,
      PlantChanges base,
      CompareAsk ask,
      RunSettings effort,
      List<CompiledPlant> stages,
      List<CompareAnswer.Option> options,
      InterleavedRuns.Simulated simulated,
      List<Optional<DrawnResults>> drawn,
      List<PeriodResults> months,
      OptionMargins margins) {
    this.source = source;
    this.base = base;
    this.ask = ask;
    this.effort = effort;
    this.stages = stages;
    this.options = options;
    figures = simulated.figures();
    this.drawn = drawn;
    inputs = new InputRows(drawn.get(0).map(DrawnResults::draws));
    this.months = months;
    this.margins = margins;
    stopped = simulated.stopped();
  }

  /**
   * @param besides what the further answers take for granted
   * @param cut whether some of them are missing because the user asked for an end
   */
  CompareAnswer answer(FollowUps further, List<Fact> besides, boolean cut) {
    PlantOutline outlines = new PlantOutline(stages.get(0));
    int count = figures.get(0).count();
    List<SummaryRow> summary = new ArrayList<>();
    List<BottleneckRow> holders = new ArrayList<>();
    List<MonthRow> byMonth = new ArrayList<>();
    List<MillRow> mills = new ArrayList<>();
    List<Samples> samples = new ArrayList<>();
    for (int at = 0; at < stages.size(); at++) {
      String name = at == 0 ? PlantChanges.baseName() : options.get(at - 1).name();
      AnswerRows rows =
          new AnswerRows(
              name,
              stages.get(at),
              figures.get(at),
              new PlantOutline(stages.get(at)),
              drawn.get(at));
      inputs.add(rows);
      summary.addAll(rows.summary());
      holders.addAll(rows.holders());
      byMonth.addAll(rows.months(months.get(at)));
      mills.addAll(MillUse.rows(name, stages.get(at).plant(), outlines.lines()));
      samples.add(rows.samples());
    }
    List<PaybackRow> payback = new ArrayList<>();
    List<CashRow> cash = new ArrayList<>();
    List<ServiceLifeRow> life = new ArrayList<>();
    List<AfterTaxRow> afterTax = new ArrayList<>();
    money(payback, cash, life, afterTax);
    List<DifferenceRow> differences = differences(samples.get(0));
    samples.get(0).measures().stream()
        .filter(measured -> measured.measure().equals(Measure.MONEY_MARGIN.of()))
        .forEach(this::pays);
    return new CompareAnswer(
        outlines.header(source, base, effort, count, stopped || cut),
        outlines.outline(stages),
        options,
        summary,
        differences,
        adjusted(outlines),
        inputs.answer(),
        holders,
        byMonth,
        mills,
        payback,
        cash,
        life,
        afterTax,
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
      ReplicationResults other = figures.get(at + 1);
      for (Samples.Measured measured : ofBase.measures()) {
        String measure = measured.measure();
        if (other.has(measure)) {
          rows.add(
              inputs.difference(
                  new InputRows.Pair(
                      options.get(at).name(),
                      PlantChanges.baseName(),
                      measured,
                      figures.get(0),
                      other),
                  drawn.get(0),
                  drawn.get(at + 1),
                  options.size()));
        }
      }
    }
    return rows;
  }

  /** Of a calendar that is no year, a purchase's yearly cost says nothing. */
  private void pays(Samples.Measured margin) {
    Plant plant = stages.get(0).plant();
    double interest = plant.money().map(Money::discountPerYr).orElse(0.0);
    boolean isYear = plant.calendar().repeats().equals(Optional.of(Calendar.Repeats.YEARLY));
    for (int at = 0; at < options.size(); at++) {
      CompareAnswer.Option option = options.get(at);
      ReplicationResults other = figures.get(at + 1);
      if (other.has(margin.measure()) && (isYear || !option.isPurchase())) {
        inputs.addPays(
            new InputRows.Pair(
                option.name(), PlantChanges.baseName(), margin, figures.get(0), other),
            drawn.get(0),
            drawn.get(at + 1),
            costPerYr(option, interest));
      }
    }
  }

  private static double costPerYr(CompareAnswer.Option option, double interest) {
    if (!option.isPurchase()) {
      return 0;
    }
    double recovery = CapitalRecovery.factor(interest, option.lifeYr());
    return option.cost() * recovery - option.salvage() * (recovery - interest);
  }

  private List<AdjustedRow> adjusted(PlantOutline outlines) {
    CropAdjustments adjustments = new CropAdjustments(outlines.outline(), figures.get(0));
    AnswerRows units =
        new AnswerRows(PlantChanges.baseName(), stages.get(0), figures.get(0), outlines);
    List<AdjustedRow> rows = new ArrayList<>();
    for (int at = 0; at < options.size(); at++) {
      rows.addAll(
          adjustments.differences(
              options.get(at).name(), figures.get(at + 1), units, options.size()));
    }
    return rows;
  }

  private void money(
      List<PaybackRow> payback,
      List<CashRow> cash,
      List<ServiceLifeRow> rows,
      List<AfterTaxRow> afterTax) {
    for (CompareAnswer.Option option : options) {
      Optional<AnnualMarginGain> margin = margins.of(option.name());
      if (margin.isPresent()) {
        Money money = stages.get(0).plant().money().orElseThrow();
        Financing financing = Financing.of(option.name(), stages.get(0).plant());
        ServiceLives lives =
            new ServiceLives(option, money, financing, margin.get(), ask.withinYr());
        payback.addAll(lives.payback());
        cash.addAll(lives.cash());
        rows.addAll(lives.rows());
        afterTax.addAll(lives.afterTaxRows());
      }
    }
  }

  private List<Fact> assumptions(List<SummaryRow> summary, List<Fact> besides) {
    StoppingRule goal = new StoppingRule(effort, figures.subList(1, figures.size()));
    AnswerRows rows =
        new AnswerRows(
            PlantChanges.baseName(),
            stages.get(0),
            figures.get(0),
            new PlantOutline(stages.get(0)));
    List<Fact> facts =
        new ArrayList<>(new RunFacts(rows, effort, figures.get(0), goal).facts(stopped));
    IntervalFacts.of(summary).ifPresent(facts::add);
    CashFacts.of(stages.get(0).plant()).ifPresent(facts::add);
    options.stream()
        .filter(CompareAnswer.Option::isPurchase)
        .flatMap(option -> Financing.of(option.name(), stages.get(0).plant()).facts().stream())
        .distinct()
        .forEach(facts::add);
    facts.addAll(new CompareFacts(stages.get(0).plant(), ask, effort, options, margins).facts());
    facts.addAll(besides);
    return facts;
  }
}
