package hurdline.text;

import hurdline.answer.GainRow;
import hurdline.answer.Header;
import hurdline.answer.Titles;
import hurdline.answer.YardAnswer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The answer on a yard for the terminal, and what goes with its figures in the report. */
public final class YardWords {
  private static final int SHORTER_TOLD = 3;

  private final YardAnswer answer;
  private final Wording wording;

  public YardWords(YardAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /**
   * What the terminal shows: what one would say of it, the main figures as a table, and what else
   * was asked.
   *
   * @param width columns that a line of the table may have
   */
  public List<String> lines(int width) {
    List<String> lines = new ArrayList<>();
    lines.add(title());
    lines.addAll(new YardHeadline(answer, wording).sentences());
    lines.add("");
    lines.addAll(YardTable.of(answer, wording).lines(width));
    lines.add("");
    answer.cheapest().ifPresent(row -> lines.add("costs     " + costs()));
    shorter().ifPresent(told -> lines.add("shorter   " + told));
    land().ifPresent(told -> lines.add("land      " + told));
    DrawnCropWords.of(answer, wording)
        .clauses()
        .forEach(clause -> lines.add("drawn     " + clause));
    lines.add(
        "The largest stack and the lanes are for the local fire code and the insurer to say.");
    lines.add(legend());
    lines.addAll(new InputWords(answer.inputs(), answer.outline(), wording).sentences());
    return lines;
  }

  /** What the figures of the table are. */
  public String legend() {
    return seasons() == 1
        ? "One simulated season: no interval can be given."
        : "Intervals rest on " + seasons() + " simulated seasons.";
  }

  /**
   * What short of the table is worth to be said of costs, of what shortens the peak and of land;
   * whole sentences.
   */
  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    answer.cheapest().ifPresent(row -> sentences.add("Costs: " + costs() + "."));
    shorter().ifPresent(told -> sentences.add("The peak without limit: " + told + "."));
    land().ifPresent(told -> sentences.add("Land for " + crop() + ": " + told + "."));
    return sentences;
  }

  private String title() {
    Header header = answer.header();
    TitleWords title = new TitleWords(header, wording);
    return header.plant()
        + ", "
        + wording.titles().option(header.option())
        + title.changes()
        + ", yard of "
        + crop()
        + " with "
        + wording.titles().placeInText(answer.asked().place())
        + " made larger or smaller, "
        + title.simulated();
  }

  /** {@code 5,400 bales (5,100 to 5,800)}, or what limits there are. */
  public String sized(YardAnswer.Size size) {
    return count(size.bales())
        + " "
        + unit()
        + " ("
        + limits(count(size.low95()), count(size.high95()))
        + ")";
  }

  /**
   * @param low as it is written, empty where there is none
   */
  private String limits(String low, String high) {
    if (!low.isEmpty() && !high.isEmpty()) {
      return low + " to " + high;
    }
    String none = seasons() == 1 ? " from 1 season" : " from " + seasons() + " seasons";
    if (!low.isEmpty()) {
      return low + " or more; no upper limit" + none;
    }
    return high.isEmpty() ? "no interval" + none : high + " or less; no lower limit" + none;
  }

  private String costs() {
    return (hasPrice() ? "ground" : "ground without a price")
        + ", waiting, and margin below that without limit"
        + region();
  }

  private boolean hasPrice() {
    return answer.capacity().stream().anyMatch(row -> row.cost().ground() > 0);
  }

  private String region() {
    return answer.hardlyMatters().size() < 2
        ? "; every other size simulated costs significantly more"
        : "";
  }

  private Optional<String> shorter() {
    if (answer.gains().isEmpty()) {
      return Optional.empty();
    }
    String told =
        answer.gains().stream()
            .filter(row -> row.significant() && row.gain() < 0)
            .sorted(Comparator.comparingDouble(GainRow::gain))
            .limit(SHORTER_TOLD)
            .map(this::shorter)
            .collect(Collectors.joining(", "));
    return Optional.of(told.isEmpty() ? "nothing that was tried shortens it significantly" : told);
  }

  private String shorter(GainRow row) {
    return IncreaseWords.what(row, wording)
        + " ("
        + IncreaseWords.of(row.more(), wording)
        + ") "
        + wording.withInterval(row.gain(), row.low95(), row.high95(), row.unit());
  }

  /** How near the acres that were found come to the most. */
  private Optional<String> land() {
    YardAnswer.Land land = answer.land();
    return answer.acresAt(land.times()).isEmpty()
        ? Optional.empty()
        : Optional.of(
            "found to within "
                + wording.asGiven(land.tolerance(), "share")
                + " of the factor on all fields");
  }

  private int seasons() {
    return answer.header().replications();
  }

  private String count(double bales) {
    return Double.isNaN(bales) ? "" : wording.fixed(bales, 0, unit());
  }

  private String crop() {
    return Titles.inText(wording.titles().crop(answer.asked().crop()));
  }

  private String unit() {
    return answer.asked().unit();
  }
}
