package hurdline.text;

import hurdline.answer.CompareAnswer;
import hurdline.answer.MillRow;
import hurdline.answer.MonthRow;
import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** What the mills did with each option: energy per tonne, grades, swaps, and what peaks cost. */
public final class MillWords {
  private final CompareAnswer answer;
  private final Wording wording;

  public MillWords(CompareAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  public List<String> mills() {
    return answer.mills().stream().map(MillRow::mill).distinct().toList();
  }

  /** The base and the options. */
  public List<String> plants() {
    return answer.plants();
  }

  /** The screens of a mill in a plant. */
  public List<MillRow> rows(String mill, String option) {
    return answer.mills().stream()
        .filter(row -> row.mill().equals(mill) && row.option().equals(option))
        .toList();
  }

  public List<String> months() {
    return answer.months().stream().map(MonthRow::month).distinct().toList();
  }

  private Optional<SummaryRow> find(String option, String measure) {
    return answer.summary().stream()
        .filter(row -> row.option().equals(option) && row.measure().equals(measure))
        .findFirst();
  }

  /** The mean of a measure in a plant; NaN where it has none. */
  public double mean(String option, String measure) {
    return find(option, measure).map(SummaryRow::mean).orElse(Double.NaN);
  }

  /** The mean with the digits that its interval supports. */
  public String told(String option, String measure) {
    return find(option, measure)
        .map(row -> wording.number(row.mean(), row.low95(), row.high95(), row.unit()))
        .orElse("");
  }

  /** The mean of a measure in a month; NaN where there is none. */
  public double inMonth(String option, String month, String measure) {
    return answer.months().stream()
        .filter(
            row ->
                row.option().equals(option)
                    && row.month().equals(month)
                    && row.measure().equals(measure))
        .mapToDouble(MonthRow::mean)
        .findFirst()
        .orElse(Double.NaN);
  }

  /** Mean energy over mean mass on a screen, kWh per t; NaN where nothing was milled on it. */
  public double perTonne(String option, MillRow row) {
    double mass = mean(option, Measure.MACHINE_SCREEN_MASS_IN.of(row.mill(), row.screen()));
    double energy = mean(option, Measure.MACHINE_SCREEN_ENERGY.of(row.mill(), row.screen()));
    return mass > 0 ? energy / mass : Double.NaN;
  }

  /** Mean energy over mean mass in a month, all screens together. */
  public double perTonne(String option, String mill, String month) {
    return perTonne(option, mill, measure -> inMonth(option, month, measure));
  }

  /** Of what was milled, the share on a screen. */
  public double milled(String option, MillRow row) {
    double all = 0;
    for (MillRow other : rows(row.mill(), option)) {
      all += mean(option, Measure.MACHINE_SCREEN_MASS_IN.of(other.mill(), other.screen()));
    }
    return all > 0
        ? mean(option, Measure.MACHINE_SCREEN_MASS_IN.of(row.mill(), row.screen())) / all
        : Double.NaN;
  }

  /** A sentence a mill, and one on peaks; of plants that have such figures. */
  public List<String> sentences() {
    List<String> all = new ArrayList<>();
    for (String mill : mills()) {
      List<String> parts = new ArrayList<>();
      for (String plant : plants()) {
        double perTonne = perTonne(plant, mill, measure -> mean(plant, measure));
        if (!Double.isNaN(perTonne)) {
          parts.add(
              unit(perTonne)
                  + " and "
                  + told(plant, Measure.MACHINE_SCREEN_CHANGES.of(mill))
                  + " screen changes ("
                  + wording.titles().option(plant)
                  + ")");
        }
      }
      all.add(wording.titles().machine(mill) + " takes " + String.join(", ", parts));
    }
    String charges =
        plants().stream()
            .filter(plant -> mean(plant, Measure.MONEY_DEMAND.of()) > 0)
            .map(
                plant ->
                    told(plant, Measure.MONEY_DEMAND.of())
                        + " "
                        + answer.header().currency()
                        + " ("
                        + wording.titles().option(plant)
                        + ")")
            .collect(Collectors.joining(", "));
    if (!mills().isEmpty() && !charges.isEmpty()) {
      all.add("Peak demand costs " + charges);
    }
    return all;
  }

  private double perTonne(String option, String mill, ToDoubleFunction<String> mean) {
    double mass = 0;
    double energy = 0;
    for (MillRow row : rows(mill, option)) {
      mass += mean.applyAsDouble(Measure.MACHINE_SCREEN_MASS_IN.of(mill, row.screen()));
      energy += mean.applyAsDouble(Measure.MACHINE_SCREEN_ENERGY.of(mill, row.screen()));
    }
    return mass > 0 ? energy / mass : Double.NaN;
  }

  private String unit(double perTonne) {
    return wording.rough(perTonne, "kWh/t");
  }

  /** Energy per tonne in the shown unit, three digits; empty for NaN. */
  public String shown(double perTonne) {
    return Double.isNaN(perTonne) ? "" : wording.roughly(perTonne, "kWh/t");
  }
}
