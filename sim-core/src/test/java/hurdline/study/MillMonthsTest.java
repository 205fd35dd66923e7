package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.CompareAnswer;
import hurdline.answer.MillRow;
import hurdline.answer.SummaryRow;
import hurdline.plant.Money;
import hurdline.study.compare.Compare;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class MillMonthsTest {
  private static CompareAnswer answer;

  /**
   * No initial value of the class: the simulators' threads call back into it and would wait for it
   * to end.
   */
  @BeforeAll
  static void aComparisonIsSimulated() {
    answer =
        new Compare(
                Studied.source(Studied.EXAMPLE),
                PlantChanges.base(),
                Studied.ask("bigger_mill"),
                Studied.effort(2, 2))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
  }

  private static double year(String option, String measure) {
    return answer.summary().stream()
        .filter(row -> row.option().equals(option) && row.measure().equals(measure))
        .mapToDouble(SummaryRow::mean)
        .findFirst()
        .orElseThrow();
  }

  private static double months(String option, String measure) {
    return answer.months().stream()
        .filter(row -> row.option().equals(option) && row.measure().equals(measure))
        .mapToDouble(row -> row.mean())
        .sum();
  }

  @Test
  void theMonthsOfEachScreenAddUpToItsYear() {
    for (String option : List.of("base", "bigger_mill")) {
      for (String screen : List.of("coarse", "medium", "fine")) {
        for (String what : List.of("mass_in", "energy")) {
          String measure = "machine.mill.screen." + screen + "." + what;
          double year = year(option, measure);
          assertThat(year).isPositive();
          assertThat(months(option, measure))
              .as(option + " " + measure)
              .isCloseTo(year, within(1e-6 * year));
        }
      }
    }
  }

  /** 14 USD for each kW of each month's peak. */
  @Test
  void theDemandChargeIsThatOfEachMonthsPeak() {
    Money money = Studied.source(Studied.EXAMPLE).variants().with().money().orElseThrow();
    for (String option : List.of("base", "bigger_mill")) {
      double peaksKw = months(option, "energy.peak");
      double charge = year(option, "money.demand");
      assertThat(charge)
          .isCloseTo(1000 * peaksKw * money.tariff().demandPerWMonth(), within(1e-6 * charge));
      assertThat(months(option, "money.demand")).isCloseTo(charge, within(1e-6 * charge));
      assertThat(year(option, "money.electricity"))
          .isCloseTo(charge + 0.065 * year(option, "energy.total"), within(0.01 * charge));
    }
  }

  @Test
  void aMillIsSetBesideItsMixAndItsOrders() {
    assertThat(answer.mills())
        .startsWith(
            new MillRow("base", "mill", "coarse", "coarse_hurd", 0.35, 0),
            new MillRow("base", "mill", "medium", "medium_hurd", 0.5, 0),
            new MillRow("base", "mill", "fine", "fine_hurd", 0.15, 60 * 0.90718474))
        .hasSize(6);
  }
}
