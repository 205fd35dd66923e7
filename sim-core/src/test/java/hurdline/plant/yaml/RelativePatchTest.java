package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.Variants;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** Options and plans that scale or move what the plant has. */
class RelativePatchTest {
  private static final String PLANS = "\nplans:\n";

  private static Edited withOptions(String... options) {
    return Edited.with(PLANS, "\n" + String.join("\n", options) + PLANS);
  }

  private static Plant with(Edited file, String option) {
    return file.read().variants().with(new Change.Named(option));
  }

  private static Plant set(Edited file, String path, String value) {
    return file.read().variants().with(new Change.Value(path, value));
  }

  @Test
  void anOptionScalesAnAmountAndADistribution() {
    Edited file =
        withOptions(
            "  stronger: {with: {machines: {mill: {power: x1.2}}}}",
            "  fewer_chokes: {with: {machines: {saw: {stops: {choke: {every: x2}}}}}}");
    assertThat(with(file, "stronger").machines())
        .isEqualTo(set(file, "machines.mill.power", "30 hp").machines());
    assertThat(with(file, "fewer_chokes").machines())
        .isEqualTo(set(file, "machines.saw.stops.choke.every", "x2").machines());
  }

  @Test
  void anOptionMovesADate() {
    Edited file =
        withOptions("  later: {with: {deliveries: {stalk: {fields: {bench: {ready: +2w}}}}}}");
    assertThat(with(file, "later").deliveries())
        .isEqualTo(set(file, "deliveries.stalk.fields.bench.ready", "2027-06-24").deliveries());
  }

  @Test
  void inQuotesItIsAText() {
    Edited file = withOptions("  stronger: {with: {machines: {mill: {power: \"x1.2\"}}}}");
    assertThat(file.problems())
        .singleElement()
        .asString()
        .contains("machines.mill.power")
        .contains("x1.2");
  }

  @Test
  void whatComesOutMustBeAllowedAndIsToldAtTheOption() {
    Edited file = withOptions("  half_a_clamp: {with: {resources: {scale: {count: x0.3}}}}");
    assertThat(file.problems())
        .singleElement()
        .asString()
        .startsWith("p.yaml:" + lineOf(file, "half_a_clamp") + ":")
        .contains("resources.scale.count");
  }

  private static long lineOf(Edited file, String text) {
    return 1
        + file.text()
            .substring(0, file.text().indexOf(text))
            .chars()
            .filter(c -> c == '\n')
            .count();
  }

  @Test
  void whatThePlantDoesNotHaveIsNotScaled() {
    Edited file =
        withOptions(
            "  boxes: {with: {machines: {saw: {rate: x1.2}}, bins: {mill: {holds: x1.2}}}}");
    assertThat(file.problems()).isNotEmpty();
  }

  @Test
  void timesOneChangesNothing() {
    assertThat(withOptions("  same: {with: {machines: {mill: {power: x1.0}}}}").problems())
        .singleElement()
        .asString()
        .contains("the option changes nothing");
  }

  @Test
  void aDateByAFactorIsRefused() {
    assertThat(
            withOptions("  later: {with: {deliveries: {stalk: {fields: {bench: {ready: x2}}}}}}")
                .problems())
        .singleElement()
        .asString()
        .contains("\"x2\" is not a date; expected a date such as");
  }

  @Test
  void twoThatScaleOneThingAreNotAppliedTwice() {
    Edited file =
        withOptions(
            "  stronger: {with: {machines: {mill: {power: x1.2}}}}",
            "  stronger_too: {with: {machines: {mill: {power: x1.2}}}}");
    Variants variants = file.read().variants();
    ProblemsException refused =
        Assertions.assertThrows(
            ProblemsException.class,
            () -> variants.with(new Change.Named("stronger+stronger_too")));
    assertThat(refused.lines())
        .singleElement()
        .asString()
        .contains(
            "option \"stronger\" and option \"stronger_too\" both scale or move it; expected only one of them, or one that sets a value");
  }
}
