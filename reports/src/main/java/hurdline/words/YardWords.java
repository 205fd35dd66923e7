package hurdline.words;

import hurdline.answer.AcresRow;
import hurdline.answer.CapacityRow;
import hurdline.answer.GainRow;
import hurdline.answer.Header;
import hurdline.answer.PeakRow;
import hurdline.answer.Titles;
import hurdline.answer.YardAnswer;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The answer on a yard for the terminal, and in two sentences for the head of the report. */
public final class YardWords {
  private static final int SHORTER_TOLD = 3;

  private final YardAnswer answer;
  private final Wording wording;

  public YardWords(YardAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** What the terminal shows. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(title());
    lines.add("needs     " + needs());
    lines.add("no limit  " + noLimit());
    answer.at(answer.asked().holds()).ifPresent(row -> lines.add("now       " + now(row)));
    answer.cheapest().ifPresent(row -> lines.add("cheapest  " + cheapest(row)));
    shorter().ifPresent(told -> lines.add("shorter   " + told));
    acres().ifPresent(told -> lines.add("land      " + told));
    DrawnCropWords.of(answer, wording).clauses().forEach(clause -> lines.add("drawn     " + clause));
    lines.add("The largest stack and the lanes are for the local fire code and the insurer to say.");
    if (seasons() > 1) {
      lines.add("In brackets: 95 % intervals over " + seasons() + " seasons.");
    }
    return lines;
  }

  /** What it takes, and what the yard as it stands does. */
  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    sentences.add("The yard of " + crop() + " needs " + needs() + ".");
    answer
        .at(answer.asked().holds())
        .ifPresent(row -> sentences.add("As the file has it, " + now(row) + "."));
    answer
        .cheapest()
        .ifPresent(row -> sentences.add("Of the sizes simulated the cheapest is " + cheapest(row) + "."));
    shorter().ifPresent(told -> sentences.add("The peak without limit: " + told + "."));
    acres().ifPresent(told -> sentences.add("Land for " + crop() + ": " + told + "."));
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
        + title.played();
  }

  private String needs() {
    YardAnswer.Size size = answer.byRule();
    if (Double.isNaN(size.bales())) {
      return "a size that was not found before the end was asked for";
    }
    String rule =
        answer.asked().turnsAway()
            ? "so that loads are turned away in at most "
            : "so that something waits for room in at most ";
    return sized(size)
        + inPlace(size)
        + area(size)
        + " "
        + rule
        + allowed()
        + " of seasons";
  }

  /** {@code 5,400 bales (5,100 to 5,800)}, or what limits there are. */
  public String sized(YardAnswer.Size size) {
    return count(size.bales()) + " " + unit() + " (" + limits(count(size.low95()), count(size.high95())) + ")";
  }

  /** @param low as it is written, empty where there is none */
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

  /** {@code , of them 5,200 in open,} where other places hold some too. */
  private String inPlace(YardAnswer.Size size) {
    YardAnswer.Asked asked = answer.asked();
    return asked.others() > 0
        ? ", of them " + count(size.bales() - asked.others()) + " in " + wording.titles().placeInText(asked.place()) + (Double.isNaN(size.areaM2()) ? "," : "")
        : "";
  }

  private String area(YardAnswer.Size size) {
    return Double.isNaN(size.areaM2()) ? "" : ", " + wording.rough(size.areaM2(), "m2") + " of ground,";
  }

  private String noLimit() {
    String peak = Measure.YARD_PEAK.of(answer.asked().crop());
    return "peak "
        + answer.find(YardAnswer.noLimit(), peak).map(wording::withInterval).orElse("not defined")
        + " on the mean"
        + answer.peaks().stream().filter(row -> row.quantile().equals("p95")).findFirst().map(this::percentile).orElse("");
  }

  /** As peaks.csv and the chart have it; a size of the yard that few enough seasons exceed is a season's own peak. */
  private String percentile(PeakRow row) {
    return ", 95th percentile "
        + count(row.value())
        + " "
        + unit()
        + " ("
        + limits(count(row.low95()), count(row.high95()))
        + ")";
  }

  /** The file's own yard. */
  private String now(CapacityRow row) {
    return "a yard of "
        + count(row.bales())
        + " "
        + unit()
        + " overflows in "
        + chance(row)
        + " of seasons; "
        + effects(row);
  }

  private String effects(CapacityRow row) {
    String crop = answer.asked().crop();
    String held = Measure.INTAKE_HELD_AT_FIELD_PEAK.of(crop);
    String field =
        answer
            .find(answer.header().option(), held)
            .filter(summary -> summary.mean() > 0)
            .map(summary -> "at most " + wording.withInterval(summary) + " lie at the fields, ")
            .orElse("");
    return field
        + wording.rough(row.lostT(), "t")
        + " of dry matter are lost"
        + waits(row);
  }

  private String waits(CapacityRow row) {
    if (row.waitingD() == 0) {
      return ", nothing waits for room";
    }
    String waited =
        answer
            .find(answer.header().option(), Measure.TRUCKS_WAITED_FOR_ROOM.of(answer.asked().crop()))
            .map(wording::withInterval)
            .orElse(wording.rough(row.waitingD(), "d"));
    return ", trucks and loads wait " + waited + " for room, in total";
  }

  private String cheapest(CapacityRow row) {
    String currency = answer.header().currency();
    CapacityRow.Cost cost = row.cost();
    return count(row.bales())
        + " "
        + unit()
        + " at "
        + wording.withInterval(cost.perYear(), cost.low95(), cost.high95(), currency)
        + " a year: "
        + (hasPrice() ? "ground" : "ground without a price")
        + ", waiting, and margin below that without limit"
        + region();
  }

  private boolean hasPrice() {
    return answer.capacity().stream().anyMatch(row -> row.cost().ground() > 0);
  }

  private String region() {
    List<CapacityRow> alike = answer.hardlyMatters();
    return alike.size() < 2
        ? "; every other size simulated costs significantly more"
        : "; from "
            + count(alike.get(0).bales())
            + " to "
            + count(alike.get(alike.size() - 1).bales())
            + " "
            + unit()
            + " the choice hardly matters";
  }

  private Optional<String> shorter() {
    if (answer.gains().isEmpty()) {
      return Optional.empty();
    }
    String told =
        answer.gains().stream()
            .filter(row -> row.toldApart() && row.gain() < 0)
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

  private Optional<String> acres() {
    YardAnswer.Land land = answer.land();
    if (!land.isAsked()) {
      return Optional.empty();
    }
    String goal = wording.asGiven(land.share(), "share") + " of seasons finish";
    Optional<AcresRow> most = answer.acresAt(land.times());
    if (most.isEmpty()) {
      return Optional.of("none was found with which " + goal);
    }
    return Optional.of(
        "up to "
            + acres(most.get())
            + " "
            + wording.unit("acre")
            + " ("
            + limits(acresAt(land.low95()), acresAt(land.high95()))
            + "), "
            + wording.fixed(land.times(), 3, "times")
            + " times the file's to within "
            + wording.asGiven(land.tolerance(), "share")
            + ", with which "
            + goal
            + "; there "
            + count(most.get().leftOver())
            + " "
            + unit()
            + " are left over on the mean");
  }

  private String acresAt(double times) {
    return answer.acresAt(times).map(this::acres).orElse("");
  }

  private String acres(AcresRow row) {
    return wording.fixed(row.acres(), 0, "acre");
  }

  private String chance(CapacityRow row) {
    return wording.fixed(row.chance(), 0, "share")
        + " % ("
        + wording.fixed(row.low95(), 0, "share")
        + " to "
        + wording.fixed(row.high95(), 0, "share")
        + " %)";
  }

  private String allowed() {
    return wording.asGiven(answer.asked().overflow(), "share");
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
