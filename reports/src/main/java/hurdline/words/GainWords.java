package hurdline.words;

import hurdline.answer.GainRow;
import hurdline.answer.HolderRow;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a tenth more of each thing brings, in order, and what the holders of the line would suggest. */
public final class GainWords {
  private static final int TOLD = 3;

  private final List<GainRow> gains;
  private final List<HolderRow> holders;
  private final Wording wording;

  /** @param holders of the plant as it stands */
  public GainWords(List<GainRow> gains, List<HolderRow> holders, Wording wording) {
    this.gains = gains;
    this.holders = holders;
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

  /** A sentence for each measure, and one that sets the order against the holders. */
  public List<String> sentences() {
    List<String> all = new ArrayList<>();
    measures().forEach(measure -> all.add(sentence(measure)));
    String suggested = suggested();
    if (!suggested.isEmpty()) {
      all.add(suggested);
    }
    return all;
  }

  private String sentence(String measure) {
    List<GainRow> ranked = ranked(measure);
    List<GainRow> better = ranked.stream().filter(row -> row.toldApart() && row.gain() > 0).toList();
    String label = label(measure);
    if (better.isEmpty()) {
      return "Of " + label + " nothing brings more that can be told from none";
    }
    long more = better.size() - Math.min(TOLD, better.size());
    return "Of "
        + label
        + " most comes from "
        + better.stream().limit(TOLD).map(this::told).collect(Collectors.joining(", then "))
        + (more > 0 ? ", less from " + others(more, "") : "")
        + (ranked.size() > better.size()
            ? "; what " + others(ranked.size() - better.size(), "s") + " cannot be told from none"
            : "");
  }

  private static String others(long count, String ofOne) {
    String verb = ofOne.isEmpty() ? "" : " bring";
    return count == 1 ? "one other" + (verb.isEmpty() ? "" : verb + ofOne) : count + " others" + verb;
  }

  private String told(GainRow row) {
    String range = wording.interval(row.gain(), row.low95(), row.high95(), row.unit());
    return row.what()
        + " ("
        + row.more()
        + ") +"
        + wording.number(row.gain(), row.low95(), row.high95(), row.unit())
        + " "
        + wording.unit(row.unit())
        + (range.isEmpty() ? "" : " (" + range + ")");
  }

  private String suggested() {
    Optional<GainRow> holder = mostHolding();
    Optional<GainRow> first =
        measures().stream().findFirst().map(this::ranked).map(ranked -> ranked.get(0));
    if (holder.isEmpty() || first.isEmpty() || !first.get().toldApart() || first.get().gain() <= 0) {
      return "";
    }
    String measure = label(first.get().measure());
    return holder.get().what().equals(first.get().what())
        ? "The holders suggest the same: " + holder.get().what() + " holds longest"
        : "The holders suggest another: "
            + holder.get().what()
            + " holds longest, but more of "
            + first.get().what()
            + " brings more of "
            + measure;
  }

  /** The thing that holds some line for the greatest share of its hours. */
  private Optional<GainRow> mostHolding() {
    return gains.stream()
        .filter(row -> held(row.what()).isPresent())
        .max(Comparator.comparingDouble(row -> held(row.what()).orElseThrow().share()));
  }

  /** For how long the thing alone, by its rate or its queue, holds the line that it holds most. */
  public Optional<HolderRow> held(String what) {
    return holders.stream()
        .filter(row -> row.cause().equals(what))
        .max(Comparator.comparingDouble(HolderRow::share));
  }

  /** {@code stalk fed}, or {@code margin}. */
  public static String label(String measure) {
    return Measure.find(measure)
        .map(
            match ->
                switch (match.measure()) {
                  case MASS_FED -> match.names().get(0) + " fed";
                  case MONEY_MARGIN -> "margin";
                  default -> measure;
                })
        .orElse(measure);
  }
}
