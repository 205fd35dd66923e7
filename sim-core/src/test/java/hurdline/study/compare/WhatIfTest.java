package hurdline.study.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.CompareAnswer;
import hurdline.answer.CompareFact;
import hurdline.answer.DifferenceRow;
import hurdline.answer.Samples;
import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Scenario;
import hurdline.study.Studied;
import hurdline.study.option.InputRange;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Changes that cost nothing, beside the plant on the same random draws. */
class WhatIfTest {
  private static final PlantOrigin FOUR_WEEKS = Studied.fourWeeks();
  private static final String MARGIN = "money.margin";
  private static final WhatIfChange WAGE = whatIf("money.wage", "x1.2");
  private static final WhatIfChange POWER = whatIf("machines.mill.power", "x1.5");

  private static WhatIfChange whatIf(String path, String value) {
    return new WhatIfChange(List.of(new Change.Value(path, value)));
  }

  private static CompareAsk ask(List<String> among, WhatIfChange... whatIfs) {
    return new CompareAsk(
        among,
        List.of(whatIfs),
        OptionalDouble.empty(),
        OptionalInt.of(2),
        false,
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  private static Compare compare(CompareAsk ask) {
    return new Compare(FOUR_WEEKS, PlantChanges.base(), ask, Studied.effort(4, 2));
  }

  private static CompareAnswer simulated(Compare compare) {
    return compare.simulate((done, of) -> {}, () -> false).orElseThrow();
  }

  private static double[] series(Samples samples, String measure) {
    int at = samples.measures().stream().map(Samples.Measured::measure).toList().indexOf(measure);
    return Arrays.stream(samples.values()).mapToDouble(of -> of[at]).toArray();
  }

  @Test
  void aWhatIfIsTheRunWithThatValueSetReplicationByReplication() {
    CompareAnswer answer = simulated(compare(ask(List.of(), WAGE, POWER)));
    Samples base = Studied.run(FOUR_WEEKS, PlantChanges.base(), Studied.effort(4, 1)).samples();
    for (WhatIfChange whatIf : List.of(WAGE, POWER)) {
      Change.Value value = whatIf.values().get(0);
      Samples set =
          Studied.run(FOUR_WEEKS, Studied.set(value.path(), value.value()), Studied.effort(4, 1))
              .samples();
      double sum = 0;
      for (int replication = 0; replication < 4; replication++) {
        sum += series(set, MARGIN)[replication] - series(base, MARGIN)[replication];
      }
      DifferenceRow row = answer.difference(whatIf.name(), MARGIN).orElseThrow();
      assertThat(row.difference()).isCloseTo(sum / 4, within(1e-9 * Math.abs(sum)));
      assertThat(row.difference()).as("it moves the margin").isNotZero();
    }
  }

  @Test
  void ofAWhatIfNoServiceLifeIsSimulatedAndNoWorthIsGiven() {
    Compare alone = compare(ask(List.of(), WAGE, POWER));
    assertThat(alone.livesSimulations()).isZero();
    assertThat(alone.simulations()).isEqualTo(3 * 4);
    Compare both = compare(ask(List.of("bigger_mill"), WAGE));
    assertThat(both.livesSimulations())
        .isEqualTo(compare(ask(List.of("bigger_mill"))).livesSimulations())
        .isPositive();
    CompareAnswer answer = simulated(both);
    assertThat(answer.options())
        .extracting(CompareAnswer.Option::name)
        .containsExactly("bigger_mill", "money.wage=x1.2");
    assertThat(answer.payback()).isNotEmpty().allMatch(row -> row.option().equals("bigger_mill"));
    assertThat(answer.cash()).allMatch(row -> row.option().equals("bigger_mill"));
    assertThat(answer.lives()).allMatch(row -> row.option().equals("bigger_mill"));
    assertThat(answer.assumptions())
        .contains(new CompareFact.ChangesWithoutCost(List.of("money.wage=x1.2")));
    CompareAnswer without = simulated(compare(ask(List.of("bigger_mill"))));
    assertThat(answer.payback())
        .as("worths are the same beside a what-if")
        .isEqualTo(without.payback());
  }

  @Test
  void severalValuesAreChangedAtOnceAfterTheBase() {
    WhatIfChange both =
        new WhatIfChange(
            List.of(
                new Change.Value("money.wage", "x1.5"),
                new Change.Value("machines.mill.power", "30 hp")));
    Compare compare =
        new Compare(
            Studied.source(Studied.SMALL),
            Studied.set("money.wage", "20 USD/h"),
            ask(List.of(), both),
            Studied.effort(2, 1));
    List<Scenario> plants = compare.alternatives();
    assertThat(plants)
        .extracting(Scenario::name)
        .containsExactly("base", "money.wage=x1.5; machines.mill.power=30 hp");
    assertThat(plants.get(1).bought()).isFalse();
    assertThat(plants.get(1).with(List.of()))
        .isEqualTo(
            Studied.source(Studied.SMALL)
                .variants()
                .with(
                    new Change.Value("money.wage", "30 USD/h"),
                    new Change.Value("machines.mill.power", "30 hp")));
  }

  @Test
  void aPlantWithoutOptionsHasWhatIfs() throws IOException {
    String text = Files.readString(Studied.SMALL);
    PlantFile file = PlantFile.of("small.yaml", text.substring(0, text.indexOf("\noptions:")));
    PlantOrigin source =
        new PlantOrigin(file.variants(), "small.yaml", file.contentHash(), "0", List.of());
    Compare compare =
        new Compare(source, PlantChanges.base(), ask(List.of(), WAGE), Studied.effort(2, 1));
    assertThat(simulated(compare).options())
        .containsExactly(CompareAnswer.Option.whatIf("money.wage=x1.2"));
    assertThatThrownBy(
            () -> new Compare(source, PlantChanges.base(), ask(List.of()), Studied.effort(2, 1)))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining(
            "the file has no options to compare; expected an entry under options, or a change such as --what-if");
  }

  @Test
  void whatCannotBeAskedIsRefused() {
    assertThatThrownBy(() -> compare(ask(List.of(), WAGE, WAGE)))
        .hasMessageContaining("what-if \"money.wage=x1.2\" is asked for twice");
    assertThatThrownBy(() -> compare(ask(List.of(), whatIf("money.wage", "x1"))))
        .hasMessageContaining("what-if \"money.wage=x1\" changes nothing");
    assertThatThrownBy(() -> compare(ask(List.of(), whatIf("options.bigger_mill.cost", "x2"))))
        .hasMessageContaining("changes nothing; expected a change of the plant itself");
    assertThatThrownBy(() -> compare(ask(List.of(), whatIf("money.wag", "x2"))))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("perhaps \"wage\"");
    assertThatThrownBy(() -> compare(ask(List.of(), whatIf("machines.mill.power", "+3d"))))
        .hasMessageContaining("which is no date to move");
    CompareAsk tornado =
        new CompareAsk(
            List.of(),
            List.of(WAGE),
            OptionalDouble.empty(),
            OptionalInt.empty(),
            false,
            Optional.of(List.of(InputRange.around("money.wage", 0.2))),
            List.of(),
            Optional.empty());
    assertThatThrownBy(() -> compare(tornado))
        .hasMessageContaining("a what-if costs nothing and has no net present value");
  }
}
