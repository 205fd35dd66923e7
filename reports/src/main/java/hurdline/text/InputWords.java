package hurdline.text;

import hurdline.answer.InputUncertainty;
import hurdline.answer.KeyNames;
import hurdline.answer.Outline;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What of the intervals comes from chance, and what from inputs that are not known for certain;
 * else that intervals cover the simulation alone.
 */
public final class InputWords {
  private static final int NAMED = 2;

  private final InputUncertainty inputs;
  private final Outline outline;
  private final Wording wording;

  public InputWords(InputUncertainty inputs, Outline outline, Wording wording) {
    this.inputs = inputs;
    this.outline = outline;
    this.wording = wording;
  }

  /** A row that is told. */
  public record Told(InputUncertainty.Row row, String label) {}

  /** For a terminal: one sentence, or one for each figure that is asked for first. */
  public List<String> sentences() {
    if (!inputs.isGiven()) {
      return List.of(simulationAlone());
    }
    List<String> sentences =
        new ArrayList<>(
            told().stream()
                .filter(one -> isFirst(one.row().measure()))
                .map(this::sentence)
                .toList());
    if (sentences.isEmpty()) {
      sentences.add("Drawn inputs were not simulated often enough to say what they make.");
    }
    sentences.addAll(plants());
    sentences.add(
        "Intervals of weeks, months, service lives and sizes of a yard cover chance only.");
    return sentences;
  }

  /** In how many of the plants that the draws allow something holds; whole sentences. */
  public List<String> plants() {
    return new PlantCountWords(inputs, wording).sentences();
  }

  /** That nothing is said of how well inputs are known. */
  public static String simulationAlone() {
    return "Intervals cover the simulation alone, not how well the figures of the plant file are known;"
        + " doubt in the file or --draws adds that.";
  }

  public boolean isGiven() {
    return inputs.isGiven();
  }

  /**
   * Figures and differences that one asks for first; those that nothing makes vary are left out.
   */
  public List<Told> told() {
    List<Told> told = new ArrayList<>();
    boolean differs = inputs.rows().stream().anyMatch(row -> !row.against().isEmpty());
    List<MainMeasures> main = MainMeasures.of(outline, wording);
    for (InputUncertainty.Row row : inputs.rows()) {
      main.stream()
          .filter(of -> of.measure().equals(row.measure()) && differs == !row.against().isEmpty())
          .filter(of -> row.high95() > row.low95())
          .findFirst()
          .ifPresent(of -> told.add(new Told(row, label(row, of.label()))));
    }
    return told;
  }

  private String label(InputUncertainty.Row row, String measure) {
    boolean several =
        inputs.rows().stream().map(InputUncertainty.Row::option).distinct().count() > 1;
    if (row.against().isEmpty()) {
      return several ? wording.titles().option(row.option()) + ": " + measure : measure;
    }
    boolean alone =
        inputs.rows().stream()
                .map(InputUncertainty.Row::against)
                .filter(against -> !against.isEmpty())
                .distinct()
                .count()
            == 1;
    return wording.titles().option(row.option())
        + (alone ? "" : " against " + wording.titles().option(row.against()))
        + ": "
        + measure;
  }

  private static boolean isFirst(String measure) {
    return Measure.find(measure)
        .filter(
            match ->
                match.measure() == Measure.MASS_FED
                    || match.measure() == Measure.MONEY_MARGIN
                    || match.measure() == Measure.YARD_PEAK)
        .isPresent();
  }

  private String sentence(Told of) {
    InputUncertainty.Row row = of.row();
    return Titles.capital(of.label())
        + " "
        + wording.withInterval(row.mean(), row.low95(), row.high95(), row.unit())
        + ": give or take "
        + half(row.chance(), row)
        + " by chance and "
        + (row.inputs() > 0 ? byInputs(row) : "nothing that shows")
        + " by the inputs"
        + largest(row).map(largest -> ", most by " + largest).orElse("")
        + (row.bends()
            ? ". The answer bends within what is open of the inputs: the interval leans"
            : "")
        + ".";
  }

  /** Half the width that the inputs make, as a bound where it is no more than that. */
  public String byInputs(InputUncertainty.Row row) {
    return (row.bound() && row.inputs() > 0 ? "at most " : "") + half(row.inputs(), row);
  }

  /** Half a width. */
  public String half(double width, InputUncertainty.Row row) {
    return wording.rough(width, row.unit());
  }

  /** What to measure next: inputs that contribute more than chance, with their shares. */
  public Optional<String> largest(InputUncertainty.Row row) {
    List<InputUncertainty.Share> largest =
        inputs.largest(row.option(), row.against(), row.measure());
    return largest.isEmpty()
        ? Optional.empty()
        : Optional.of(
            largest.stream()
                .limit(NAMED)
                .map(
                    one ->
                        name(one.input()) + " (" + wording.fixed(one.share(), 0, "share") + " %)")
                .collect(Collectors.joining(" and ")));
  }

  private String name(String key) {
    return KeyNames.of(key, wording.titles());
  }

  /** What to measure next, of the last figure of which that can be said; a whole sentence. */
  public Optional<String> next() {
    List<String> found =
        told().stream()
            .map(Told::row)
            .map(row -> inputs.largest(row.option(), row.against(), row.measure()))
            .filter(list -> !list.isEmpty())
            .map(list -> list.get(0).input())
            .toList();
    return found.isEmpty()
        ? Optional.empty()
        : Optional.of("To be surer, measure first: " + name(found.get(found.size() - 1)) + ".");
  }

  /** How drawn inputs were simulated; whole sentences. */
  public String explanation() {
    return "Each year was simulated twice on the same random draws: with the inputs as given, and with a row of joint draws of "
        + wording.count(inputs.inputs().size())
        + (inputs.inputs().size() == 1 ? " input (" : " inputs (")
        + inputs.source()
        + ", "
        + wording.count(inputs.draws())
        + " rows). Means are those with the inputs as given; 95 % intervals and percentiles cover chance and inputs together,"
        + " those by week and by month, of service lives, of sizes of a yard and of figures adjusted for the drawn crop chance alone."
        + " More replications narrow the part by chance, better known inputs the other. A share is what one input alone"
        + " explains of the variance that inputs make; it is named where that is more than chance.";
  }
}
