package hurdline.chart;

import hurdline.answer.CompareAnswer;
import hurdline.answer.Outline;
import hurdline.words.GainWords;
import hurdline.words.MillWords;
import hurdline.words.Wording;
import hurdline.words.WorthWords;
import java.util.List;
import java.util.stream.Stream;

/** The charts of a comparison, by the question they answer. */
public final class CompareFigures {
  private final CompareAnswer answer;
  private final Wording wording;
  private final Once<List<Figure>> differences = new Once<>(this::drawDifferences);
  private final Once<List<Figure>> holders = new Once<>(this::drawHolders);
  private final Once<List<Figure>> cash = new Once<>(this::drawCash);
  private final Once<List<Figure>> payback = new Once<>(this::drawPayback);
  private final Once<List<Figure>> gains = new Once<>(this::drawGains);
  private final Once<List<Figure>> mills = new Once<>(this::drawMills);
  private final Once<List<Figure>> tornado = new Once<>(this::drawTornado);

  public CompareFigures(CompareAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** How far each option lies from the base. */
  public List<Figure> differences() {
    return differences.get();
  }

  private List<Figure> drawDifferences() {
    return answer.options().stream()
        .map(option -> new DifferenceChart(answer, option.name(), wording))
        .filter(DifferenceChart::isWanted)
        .map(DifferenceChart::figure)
        .toList();
  }

  /** What holds each line, base and options side by side. */
  public List<Figure> holders() {
    return holders.get();
  }

  private List<Figure> drawHolders() {
    return answer.outline().lines().stream()
        .map(Outline.Line::name)
        .map(line -> new HolderShiftChart(answer, line, wording))
        .filter(HolderShiftChart::isWanted)
        .map(HolderShiftChart::figure)
        .toList();
  }

  /** What each option has brought in, year by year. */
  public List<Figure> cash() {
    return cash.get();
  }

  private List<Figure> drawCash() {
    return answer.options().stream()
        .filter(
            option -> answer.cash().stream().anyMatch(row -> row.option().equals(option.name())))
        .map(option -> new CashChart(answer, option.name(), wording).figure())
        .toList();
  }

  /** Each mill by month, and the peaks of the plant. */
  public List<Figure> mills() {
    return mills.get();
  }

  private List<Figure> drawMills() {
    MillWords words = new MillWords(answer, wording);
    MillCharts charts = new MillCharts(words, wording);
    return words.mills().isEmpty()
        ? List.of()
        : Stream.concat(words.mills().stream().map(charts::perTonne), Stream.of(charts.peaks()))
            .toList();
  }

  /** By when each option has paid back. */
  public List<Figure> payback() {
    return payback.get();
  }

  private List<Figure> drawPayback() {
    return answer.options().stream()
        .map(option -> new PaybackChart(answer, option, wording))
        .filter(PaybackChart::isWanted)
        .map(PaybackChart::figure)
        .toList();
  }

  /** What a tenth more of each thing brings, a chart a measure. */
  public List<Figure> gains() {
    return gains.get();
  }

  private List<Figure> drawGains() {
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
  public List<Figure> tornado() {
    return tornado.get();
  }

  private List<Figure> drawTornado() {
    WorthWords words = new WorthWords(answer, wording);
    return answer.options().stream()
        .map(CompareAnswer.Option::name)
        .filter(option -> !words.ranked(option).isEmpty())
        .map(
            option -> new TornadoChart(words, option, answer.header().currency(), wording).figure())
        .toList();
  }

  /** Every chart, in the order of the report. */
  public List<Figure> all() {
    return Stream.of(differences(), holders(), gains(), mills(), payback(), cash(), tornado())
        .flatMap(List::stream)
        .toList();
  }
}
