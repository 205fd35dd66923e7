package hurdline.chart.compare;

import hurdline.answer.CompareAnswer;
import hurdline.answer.Outline;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.Memoized;
import hurdline.text.GainWords;
import hurdline.text.MillWords;
import hurdline.text.Wording;
import hurdline.text.WorthWords;
import java.util.List;
import java.util.stream.Stream;

/** The charts of a comparison, by the question they answer. */
public final class CompareCharts {
  private final CompareAnswer answer;
  private final Wording wording;
  private final Memoized<List<Chart>> differences = new Memoized<>(this::drawDifferences);
  private final Memoized<List<Chart>> holders = new Memoized<>(this::drawHolders);
  private final Memoized<List<Chart>> cash = new Memoized<>(this::drawCash);
  private final Memoized<List<Chart>> afterTax = new Memoized<>(this::drawAfterTax);
  private final Memoized<List<Chart>> payback = new Memoized<>(this::drawPayback);
  private final Memoized<List<Chart>> gains = new Memoized<>(this::drawGains);
  private final Memoized<List<Chart>> mills = new Memoized<>(this::drawMills);
  private final Memoized<List<Chart>> tornado = new Memoized<>(this::drawTornado);

  public CompareCharts(CompareAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** How far each option lies from the base. */
  public List<Chart> differences() {
    return differences.get();
  }

  private List<Chart> drawDifferences() {
    return answer.options().stream()
        .map(option -> new DifferenceChart(answer, option.name(), wording))
        .filter(DifferenceChart::isWanted)
        .map(DifferenceChart::figure)
        .toList();
  }

  /** What holds each line, base and options side by side. */
  public List<Chart> holders() {
    return holders.get();
  }

  private List<Chart> drawHolders() {
    return answer.outline().lines().stream()
        .map(Outline.Line::name)
        .map(line -> new BottleneckShiftChart(answer, line, wording))
        .filter(BottleneckShiftChart::isWanted)
        .map(BottleneckShiftChart::figure)
        .toList();
  }

  /** What each option that is bought has brought in, year by year. */
  public List<Chart> cash() {
    return cash.get();
  }

  private List<Chart> drawCash() {
    return answer.options().stream()
        .filter(CompareAnswer.Option::isPurchase)
        .filter(
            option -> answer.cash().stream().anyMatch(row -> row.option().equals(option.name())))
        .map(option -> new CashChart(answer, option.name(), wording).figure())
        .toList();
  }

  /** What each purchase brings by year, and what is left of it after loan and tax. */
  public List<Chart> afterTax() {
    return afterTax.get();
  }

  private List<Chart> drawAfterTax() {
    return answer.options().stream()
        .map(option -> new AfterTaxChart(answer, option.name(), wording))
        .filter(AfterTaxChart::isWanted)
        .map(AfterTaxChart::figure)
        .toList();
  }

  /** Each mill by month, and the peaks of the plant. */
  public List<Chart> mills() {
    return mills.get();
  }

  private List<Chart> drawMills() {
    MillWords words = new MillWords(answer, wording);
    MillCharts charts = new MillCharts(words, wording);
    return words.mills().isEmpty()
        ? List.of()
        : Stream.concat(words.mills().stream().map(charts::perTonne), Stream.of(charts.peaks()))
            .toList();
  }

  /** By when each option has paid back. */
  public List<Chart> payback() {
    return payback.get();
  }

  private List<Chart> drawPayback() {
    return answer.options().stream()
        .map(option -> new PaybackChart(answer, option, wording))
        .filter(PaybackChart::isWanted)
        .map(PaybackChart::figure)
        .toList();
  }

  /** What a tenth more of each thing brings, a chart a measure. */
  public List<Chart> gains() {
    return gains.get();
  }

  private List<Chart> drawGains() {
    GainWords words =
        new GainWords(
            answer.further().gains(),
            answer.holdersOf(answer.header().option()),
            answer.outline(),
            wording);
    return words.measures().stream()
        .map(measure -> new GainChart(words, measure, wording).figure())
        .toList();
  }

  /** What the worth of each option hangs on. */
  public List<Chart> tornado() {
    return tornado.get();
  }

  private List<Chart> drawTornado() {
    WorthWords words = new WorthWords(answer, wording);
    return answer.options().stream()
        .map(CompareAnswer.Option::name)
        .filter(option -> !words.ranked(option).isEmpty())
        .map(
            option -> new TornadoChart(words, option, answer.header().currency(), wording).figure())
        .toList();
  }

  /** Every chart, in the order of the report. */
  public List<Chart> all() {
    return Stream.of(
            differences(), holders(), gains(), mills(), payback(), afterTax(), cash(), tornado())
        .flatMap(List::stream)
        .toList();
  }
}
