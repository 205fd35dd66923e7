package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.InputUncertainty;
import hurdline.answer.InputUncertainty.Holds;
import hurdline.answer.InputUncertainty.Plants;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** In how many plants of the draws something holds, as it is said. */
class PlantCountWordsTest {
  private static List<String> said(String source, Plants... plants) {
    InputUncertainty inputs =
        new InputUncertainty(source, 200, List.of("a"), List.of(), List.of(), List.of(plants));
    return new PlantCountWords(inputs, new Wording(UnitSystem.US, Locale.ROOT)).sentences();
  }

  private static Plants pays(double cost, int plants, int in, int years) {
    return new Plants(Holds.PAYS, "bigger_mill", "base", "", cost, "USD", plants, in, years, 0, 0);
  }

  private static Plants done(int plants, int in, int years) {
    return new Plants(Holds.DONE, "base", "", "stalk_line", 0, "", plants, in, years, 40, 33);
  }

  private static final String ONE_YEAR =
      "Each of these plants was simulated in one year, so the chance of that year is in the count;"
          + " 400 replications tell the two apart.";

  @Test
  void whatPaysIsToldOfAHundredAndChanceApart() {
    assertThat(said("draws.csv", pays(17_432, 200, 167, 2)))
        .containsExactly(
            "In 84 of 100 plants that your records allow, the bigger mill adds more to the yearly"
                + " margin than 17,400 USD, the purchase as an even yearly payment.",
            "The chance of single years is taken out of that count.");
    assertThat(said("draws.csv", pays(0, 40, 31, 1)))
        .containsExactly(
            "In 31 of 40 plants that your records allow, the bigger mill adds to the margin.",
            ONE_YEAR);
  }

  /** Chance is told once, however many are counted. */
  @Test
  void allAndNoneAreSaidSo() {
    assertThat(said("draws.csv and doubt", pays(0, 200, 200, 1), pays(0, 40, 0, 1)))
        .containsExactly(
            "In all 100 plants that your records and the file's doubt allow, the bigger mill adds to"
                + " the margin.",
            "In none of 40 plants that your records and the file's doubt allow, the bigger mill adds"
                + " to the margin.",
            ONE_YEAR);
  }

  @Test
  void aLineThatIsDoneInSomePlantsIsToldBesideTheInputsAsGiven() {
    assertThat(said("doubt", done(40, 29, 1)))
        .containsExactly(
            "In 29 of 40 plants that the file's doubt allows, the stalk line is done in time (with"
                + " the inputs as given in 33 of 40 years).",
            ONE_YEAR);
    assertThat(said("doubt", done(200, 29, 2)))
        .contains("Each of these plants was simulated in 2 years.")
        .anyMatch(one -> one.contains("is done in time in at least half of its years"));
  }

  @Test
  void aLineThatIsDoneInAllPlantsAndFewPlantsAreNotTold() {
    assertThat(said("draws.csv", done(40, 40, 1), done(40, 0, 1), pays(0, 12, 3, 1))).isEmpty();
  }
}
