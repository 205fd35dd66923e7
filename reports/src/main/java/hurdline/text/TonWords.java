package hurdline.text;

import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a ton fed brings, what it costs and what is left of it, line by line: mean sums of the
 * calendar over the mean mass fed.
 *
 * <p>What all lines share is told only of a plant with one line; how it would be split among
 * several is not for this program to say. Nor is anything told of lines that share a crop, whose
 * mass is known together alone.
 */
public final class TonWords {
  /** Tenths: parts that are rounded to whole units of money miss their sum by two or three. */
  private static final int LAST_PLACE = -1;

  private final RunAnswer answer;
  private final Wording wording;
  private final SpokenNames names;

  public TonWords(RunAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    this.names = new SpokenNames(answer.outline().titles());
  }

  /** One of each line, without its full stop. */
  public List<String> sentences() {
    return answer.outline().lines().stream().flatMap(line -> sentence(line).stream()).toList();
  }

  private Optional<String> sentence(Outline.Line line) {
    double fedT = answer.meanOr0(Measure.MASS_FED.of(line.crop()));
    return answer.outline().isAlone(line)
            && fedT > 0
            && answer.find(Measure.MONEY_LINE_REVENUE.of(line.name())).isPresent()
        ? answer
            .find(Measure.MONEY_LINE_MARGIN.of(line.name()))
            .map(margin -> sentence(line, fedT, margin.mean()))
        : Optional.empty();
  }

  private String sentence(Outline.Line line, double fedT, double margin) {
    double brought =
        of(line, Measure.MONEY_LINE_REVENUE) + of(line, Measure.MONEY_LINE_PRODUCT_STOCK);
    String took = took(line, fedT);
    return (answer.header().replications() > 1 ? "Over all simulated years a " : "A ")
        + wording.units().ton()
        + " of "
        + names.crop(line.crop())
        + " fed brings "
        + money(brought / fedT)
        + (took.isEmpty() ? "" : " and takes " + took)
        + ": "
        + left(margin / fedT)
        + " before electricity and overhead"
        + shared(fedT);
  }

  private String took(Outline.Line line, double fedT) {
    double crop =
        of(line, Measure.MONEY_LINE_CROP_COST) - of(line, Measure.MONEY_LINE_STOCK_CHANGE);
    List<String> parts = new ArrayList<>();
    add(parts, crop / fedT, "for " + names.crop(line.crop()));
    add(parts, of(line, Measure.MONEY_LINE_WAGES) / fedT, "in wages");
    add(parts, of(line, Measure.MONEY_LINE_PACKAGES) / fedT, "for packages");
    add(parts, of(line, Measure.MONEY_LINE_FREIGHT) / fedT, "for freight");
    add(parts, of(line, Measure.MONEY_LINE_STOPS) / fedT, "for parts and services at stops");
    add(parts, of(line, Measure.MONEY_LINE_DRIER_FUEL) / fedT, "for drier fuel");
    add(parts, of(line, Measure.MONEY_LINE_COVERS) / fedT, "for covers");
    add(parts, of(line, Measure.MONEY_LINE_LATE_PENALTIES) / fedT, "for late orders");
    return CapacityWords.and(parts);
  }

  private void add(List<String> parts, double perT, String what) {
    if (!wording.isZero(perT, LAST_PLACE, perTonne())) {
      parts.add(number(perT) + " " + what);
    }
  }

  private String left(double perT) {
    return perT < 0 && !wording.isZero(perT, LAST_PLACE, perTonne())
        ? money(-perT) + " are missing"
        : money(perT) + " are left";
  }

  /** Electricity and overhead, where one line has them all. */
  private String shared(double fedT) {
    Optional<SummaryRow> margin = answer.find(Measure.MONEY_MARGIN.of());
    if (answer.outline().lines().size() > 1 || margin.isEmpty()) {
      return "";
    }
    double perT = margin.get().mean() / fedT;
    return ", which take "
        + number(answer.meanOr0(Measure.MONEY_ELECTRICITY.of()) / fedT)
        + " and "
        + number(answer.meanOr0(Measure.MONEY_OVERHEAD.of()) / fedT)
        + ", so that a "
        + wording.units().ton()
        + (perT < 0 ? " loses " : " earns ")
        + money(Math.abs(perT))
        + " before interest and tax";
  }

  private double of(Outline.Line line, Measure measure) {
    return answer.meanOr0(measure.of(line.name()));
  }

  private String money(double perT) {
    return number(perT) + " " + answer.header().currency();
  }

  private String number(double perT) {
    return wording.rounded(perT, LAST_PLACE, perTonne());
  }

  private String perTonne() {
    return answer.header().currency() + "/t";
  }
}
