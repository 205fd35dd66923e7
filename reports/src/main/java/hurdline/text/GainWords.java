package hurdline.text;

import hurdline.answer.BottleneckRow;
import hurdline.answer.GainRow;
import hurdline.answer.Outline;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a tenth more of each thing brings, in order, and what the holders of the line would suggest.
 */
public final class GainWords {
  private static final int TOLD = 3;

  private final List<GainRow> gains;
  private final List<BottleneckRow> holders;
  private final List<Outline.Line> lines;
  private final Wording wording;

  /**
   * @param holders of the plant as it stands
   */
  public GainWords(
      List<GainRow> gains, List<BottleneckRow> holders, Outline outline, Wording wording) {
    this.gains = gains;
    this.holders = holders;
    lines = outline.lines();
    this.wording = wording;
  }

  /** The measures that were asked, in their order. */
  public List<String> measures() {
    return gains.stream().map(GainRow::measure).distinct().toList();
  }

  /** The rows of a measure, the greatest gain first. */
  public List<GainRow> ranked(String measure) {
    return gains.stream()
        .filter(row -> row.measure().equals(measure))
        .sorted(Comparator.comparingDouble(GainRow::gain).reversed())
        .toList();
  }

  /** A sentence for each measure, and whether the holders of the line suggest the same. */
  public List<String> sentences() {
    return measures().stream().map(measure -> sentence(measure) + suggested(measure)).toList();
  }

  private String sentence(String measure) {
    List<GainRow> ranked = ranked(measure);
    List<GainRow> better =
        ranked.stream().filter(row -> row.significant() && row.gain() > 0).toList();
    String label = label(measure);
    if (better.isEmpty()) {
      return "Of " + label + " nothing brings more that can be significant";
    }
    long more = better.size() - Math.min(TOLD, better.size());
    return "Of "
        + label
        + " most comes from "
        + better.stream().limit(TOLD).map(this::told).collect(Collectors.joining(", then "))
        + (more > 0 ? ", less from " + others(more, "") : "")
        + (ranked.size() > better.size()
            ? "; what " + others(ranked.size() - better.size(), "s") + " cannot be significant"
            : "");
  }

  private static String others(long count, String ofOne) {
    String verb = ofOne.isEmpty() ? "" : " bring";
    return count == 1
        ? "one other" + (verb.isEmpty() ? "" : verb + ofOne)
        : count + " others" + verb;
  }

  private String told(GainRow row) {
    return IncreaseWords.what(row, wording)
        + " ("
        + IncreaseWords.of(row.more(), wording)
        + ") +"
        + wording.withInterval(row.gain(), row.low95(), row.high95(), row.unit());
  }

  /** Where anything is told from none: what would be thought from the holders. */
  private String suggested(String measure) {
    GainRow first = ranked(measure).get(0);
    return mostHolding(measure)
        .filter(holder -> first.significant() && first.gain() > 0)
        .map(
            holder ->
                holder.cause().equals(first.what())
                    ? "; by hours it is the first bottleneck too"
                    : "; by hours the first bottleneck is "
                        + wording.titles().cause(holder.cause()))
        .orElse("");
  }

  /**
   * What has an entry here and holds for the most hours, of all lines or of those that work the
   * crop.
   */
  private Optional<BottleneckRow> mostHolding(String measure) {
    return holders.stream()
        .filter(row -> gains.stream().anyMatch(gain -> gain.what().equals(row.cause())))
        .filter(row -> concerns(measure, row.line()))
        .max(Comparator.comparingDouble(BottleneckRow::hours));
  }

  private boolean concerns(String measure, String line) {
    return Measure.find(measure)
        .filter(match -> match.measure() == Measure.MASS_FED)
        .map(match -> match.names().get(0))
        .map(
            crop -> lines.stream().anyMatch(of -> of.name().equals(line) && of.crop().equals(crop)))
        .orElse(true);
  }

  /** For how long the thing alone, by its rate or its queue, holds the line that it holds most. */
  public Optional<BottleneckRow> held(String what, String measure) {
    return holders.stream()
        .filter(row -> row.cause().equals(what))
        .filter(row -> concerns(measure, row.line()))
        .max(Comparator.comparingDouble(BottleneckRow::hours));
  }

  /** {@code stalk fed}, or {@code margin}. */
  public String label(String measure) {
    return Measure.find(measure)
        .map(
            match ->
                switch (match.measure()) {
                  case MASS_FED ->
                      Titles.inText(wording.titles().crop(match.names().get(0))) + " fed";
                  case MONEY_MARGIN -> "margin";
                  default -> measure;
                })
        .orElse(measure);
  }
}
