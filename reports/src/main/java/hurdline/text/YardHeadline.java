package hurdline.text;

import hurdline.answer.AcresRow;
import hurdline.answer.YardAnswer;
import hurdline.answer.YardSizeRow;
import hurdline.unit.FileUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How large a yard must be, how sure that is, and what the yard as it stands does: sentences that
 * one could say aloud.
 */
public final class YardHeadline {

  /**
   * An upper limit of a quantile begins where the greatest of all values lies above it with this
   * doubt left.
   */
  private static final double HALF_OF_THE_DOUBT = 0.025;

  private final YardAnswer answer;
  private final Wording wording;
  private final Spoken spoken;
  private final SpokenNames names;

  public YardHeadline(YardAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    this.spoken = new Spoken(wording);
    this.names = new SpokenNames(answer.outline().titles());
  }

  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    sentences.add(needs());
    howSure().ifPresent(sentences::add);
    answer.at(answer.asked().holds()).ifPresent(row -> sentences.add(now(row)));
    answer.cheapest().ifPresent(row -> sentences.add(cheapest(row)));
    land().ifPresent(sentences::add);
    return sentences.stream().map(sentence -> sentence + ".").toList();
  }

  private boolean isFound() {
    return !Double.isNaN(answer.byRule().bales());
  }

  private String needs() {
    YardAnswer.Size size = answer.byRule();
    if (!isFound()) {
      return "How large the yard of "
          + crop()
          + " must be was not found before the end was asked for";
    }
    boolean isBounded = !Double.isNaN(size.low95()) && !Double.isNaN(size.high95());
    return "The yard needs room for about "
        + spoken.amount(size.bales(), size.low95(), size.high95(), unit())
        + " of "
        + crop()
        + (isBounded ? spoken.giveOrTake(size.bales(), size.low95(), size.high95(), unit()) : "")
        + (Double.isNaN(size.areaM2())
            ? ""
            : ", on " + spoken.rough(size.areaM2() / FileUnit.ACRE.inSi(), "acre") + " of ground")
        + (answer.asked().turnsAway()
            ? ", if loads are to be turned away in at most "
            : ", if loads are to wait for room in at most ")
        + allowed()
        + " of seasons";
  }

  /** What the seasons cannot say, and how many could. */
  private Optional<String> howSure() {
    YardAnswer.Size size = answer.byRule();
    int seasons = answer.header().replications();
    if (seasons == 1) {
      return Optional.of("This is one simulated season, and another may differ much");
    }
    if (!isFound() || !Double.isNaN(size.high95())) {
      return Optional.empty();
    }
    double needed =
        Math.ceil(Math.log(HALF_OF_THE_DOUBT) / Math.log(1 - answer.asked().overflow()));
    String least =
        Double.isNaN(size.low95())
            ? "no limits"
            : "no upper limit, only that it takes "
                + spoken.amount(size.low95(), Double.NaN, Double.NaN, unit())
                + " or more";
    return Optional.of(
        spoken.amount(seasons, Double.NaN, Double.NaN, "count")
            + (seasons == 1 ? " simulated season gives " : " simulated seasons give ")
            + least
            + "; "
            + wording.count((long) needed)
            + " would give one");
  }

  private String now(YardSizeRow row) {
    return "As it stands it holds "
        + spoken.amount(row.bales(), Double.NaN, Double.NaN, unit())
        + " and overflows in "
        + (row.chance() > 0 ? spoken.ofHundred(row.chance()) + " of 100 seasons" : "no season");
  }

  private String cheapest(YardSizeRow row) {
    List<YardSizeRow> alike = answer.hardlyMatters();
    YardSizeRow.Cost cost = row.cost();
    String currency = answer.header().currency();
    return "The cheapest size simulated, "
        + spoken.amount(row.bales(), Double.NaN, Double.NaN, unit())
        + ", costs "
        + spoken.amount(cost.perYear(), cost.low95(), cost.high95(), currency)
        + " a year"
        + spoken.giveOrTake(cost.perYear(), cost.low95(), cost.high95(), currency)
        + (alike.size() < 2
            ? ""
            : "; from "
                + number(alike.get(0))
                + " to "
                + number(alike.get(alike.size() - 1))
                + " "
                + unit()
                + " the choice hardly matters")
        + overflowsThen(row);
  }

  /**
   * Where the cheapest size overflows more often than the yard may: that it does, and whether the
   * file has a price for what it brings about, since a wait without one makes a small yard cheap.
   */
  private String overflowsThen(YardSizeRow row) {
    if (!(row.chance() > answer.asked().overflow())) {
      return "";
    }
    boolean away = answer.asked().turnsAway();
    boolean free = !away && answer.capacity().stream().allMatch(of -> of.cost().waiting() == 0);
    return "; at "
        + number(row)
        + " "
        + unit()
        + " loads "
        + (away ? "are turned away in " : "wait for room in ")
        + spoken.ofHundred(row.chance())
        + " of 100 seasons"
        + (free ? ", which costs nothing here, since the file has no waiting_cost" : "");
  }

  private String number(YardSizeRow row) {
    return spoken.number(row.bales(), Double.NaN, Double.NaN, unit());
  }

  private Optional<String> land() {
    YardAnswer.Land land = answer.land();
    if (!land.isAsked()) {
      return Optional.empty();
    }
    String goal =
        wording.asGiven(land.share(), "share")
            + " of seasons "
            + (land.carryOver() > 0
                ? "leave " + wording.plain(land.carryOver()) + " " + unit() + " or fewer"
                : "finish the crop");
    Optional<AcresRow> most = answer.acresAt(land.times());
    if (most.isEmpty()) {
      return Optional.of("No acreage was found with which " + goal);
    }
    double low = acres(land.low95());
    double high = acres(land.high95());
    boolean isBounded = !Double.isNaN(low) && !Double.isNaN(high);
    return Optional.of(
        "Up to "
            + spoken.amount(most.get().acres(), low, high, "acre")
            + " can be contracted"
            + (isBounded ? spoken.giveOrTake(most.get().acres(), low, high, "acre") : "")
            + ", with which "
            + goal
            + (isBounded ? "" : "; " + seasonsAreFew()));
  }

  private String seasonsAreFew() {
    return wording.count(answer.header().replications())
        + (answer.header().replications() == 1
            ? " season gives no interval of it"
            : " seasons give no interval of it");
  }

  private double acres(double times) {
    return answer.acresAt(times).map(AcresRow::acres).orElse(Double.NaN);
  }

  private String allowed() {
    return wording.asGiven(answer.asked().overflow(), "share");
  }

  private String crop() {
    return names.crop(answer.asked().crop());
  }

  private String unit() {
    return answer.asked().unit();
  }
}
