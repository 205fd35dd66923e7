package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.as;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import hurdline.plant.Change;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.Stop;
import hurdline.plant.Variants;
import hurdline.random.Beta;
import hurdline.random.Empirical;
import hurdline.random.Uniform;
import hurdline.random.Weibull;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Values such as {@code x0.8}: what the file says, times a factor. */
class ScalingTest {
  private static final Variants VARIANTS = Edited.plantFile().read().variants();
  private static final Plant BASE = VARIANTS.with();

  private static Plant scaled(String path, String factor) {
    return VARIANTS.with(new Change.Value(path, factor));
  }

  private static List<String> refused(String path, String factor) {
    return Assertions.assertThrows(ProblemsException.class, () -> scaled(path, factor)).lines();
  }

  private static Machine machine(Plant plant, String name) {
    return plant.machines().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
  }

  private static List<Stop> sawStops(Plant plant) {
    return machine(plant, "saw").common().stops();
  }

  @Test
  void aQuantityKeepsItsUnit() {
    assertThat(machine(scaled("machines.mill.power", "x1.2"), "mill"))
        .isEqualTo(
            machine(VARIANTS.with(new Change.Value("machines.mill.power", "30 hp")), "mill"));
  }

  @Test
  void pricesOfElectricityAreNoneWhereTheFileHasNone() {
    assertThat(
            Assertions.assertThrows(
                    ProblemsException.class,
                    () ->
                        VARIANTS.with(
                            new Change.Value("money.electricity", "{}"),
                            new Change.Value("money.electricity.*", "x1.2")))
                .lines())
        .singleElement(as(STRING))
        .contains("no price of electricity", "\"energy\" or \"demand\"");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "machines.*.power",
        "machines.*.stops.*.every",
        "machines.*.stops.*.lasts",
        "crops.*.moisture",
        "yard.on_hand.*",
        "resources.*.count"
      })
  void timesOneNothingChangesToTheLastBit(String path) {
    assertThat(scaled(path, "x1")).isEqualTo(BASE);
    assertThat(scaled(path, "x1.000")).isEqualTo(BASE);
    assertThat(scaled(path, "x2")).isNotEqualTo(BASE);
  }

  @Test
  void everyNumberWithAUnitOfADistributionIsScaledAndNoShape() {
    assertThat(sawStops(scaled("machines.saw.stops.choke.every", "x2")).get(0).every())
        .isEqualTo(new Weibull(1.5, 18 * 3600, 1200, 6 * 86_400));
    assertThat(scaled("crops.stalk.moisture", "x0.5").crops().get(0).bale().moisture())
        .isEqualTo(new Beta(0.06, 0.005, 0.035, 0.075));
    assertThat(scaled("crops.stalk.diameter", "x 1.5").crops().get(0).bale().diameterM())
        .contains(new Uniform(0.012, 0.021));
  }

  @Test
  void observedValuesAreScaledOneByOne() {
    assertThat(sawStops(scaled("machines.saw.stops.saws.lasts", "x0.5")).get(1).lastsS())
        .isEqualTo(Empirical.of(3600, 5400, 9000));
  }

  @Test
  void oneNumberOfADistributionMayBeScaledAlone() {
    assertThat(
            sawStops(scaled("machines.saw.stops.choke.every.weibull.shape", "x2")).get(0).every())
        .isEqualTo(new Weibull(3, 9 * 3600, 600, 3 * 86_400));
  }

  @Test
  void aBareNumberIsScaledWhereItIsTheValueItself() {
    assertThat(scaled("resources.*.count", "x3").resources())
        .zipSatisfy(
            BASE.resources(), (now, was) -> assertThat(now.count()).isEqualTo(3 * was.count()));
  }

  @Test
  void underAStarWhatDoesNotSayItStaysAsItIs() {
    Plant plant = scaled("machines.*.stops.*.every", "x2");
    assertThat(sawStops(plant).get(1).every().mean())
        .isEqualTo(2 * sawStops(BASE).get(1).every().mean());
    assertThat(machine(plant, "surge_bin")).isEqualTo(machine(BASE, "surge_bin"));
  }

  @Test
  void anOptionIsAppliedBeforeItIsScaled() {
    assertThat(
            VARIANTS.with(
                new Change.Named("bigger_mill"), new Change.Value("machines.mill.power", "x2")))
        .isEqualTo(VARIANTS.with(new Change.Value("machines.mill.power", "150 hp")));
  }

  @Test
  void aFactorOfManyDigitsIsTakenAsItIs() {
    double factor = 1.0000000001234567;
    assertThat(machine(scaled("machines.mill.power", "x" + factor), "mill").common().powerW())
        .isEqualTo(25 * 745.69987158227022 * factor, within(1e-10));
    assertThat(machine(scaled("machines.saw.power", "x1.5E-20"), "saw").common().powerW())
        .isEqualTo(machine(BASE, "saw").common().powerW() * 1.5e-20, within(1e-30));
  }

  @Test
  void ofACurveTheFactorsAreScaledByTheirPlaces() {
    assertThat(scaled("lines.stalk_line.steps.saw.rate_by_moisture.*.1", "x0.5"))
        .isEqualTo(
            VARIANTS.with(
                new Change.Value(
                    "lines.stalk_line.steps.saw.rate_by_moisture", "[[10 %, 0.5], [20 %, 0.4]]")));
  }

  @Test
  void aQuotedValueIsSetAndNotScaled() {
    assertThat(VARIANTS.with(new Change.Value("plant", "\"x1\"")).name()).isEqualTo("x1");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "machines.mill.power | x-1 | \"x-1\" has no plain factor after its x; expected a bare"
            + " number, 0 or more, such as x0.8",
        "machines.mill.power | x1,2 | \"x1,2\" has no plain factor after its x; expected a bare"
            + " number, 0 or more, such as x0.8",
        "machines.mill.power | x2 hp | \"x2 hp\" has no plain factor after its x; expected a bare"
            + " number, 0 or more, such as x0.8",
        "calendar.from | x2 | \"calendar.from\" says \"2027-01-04\", which is no number to scale;"
            + " expected a path to a quantity, a bare number or a distribution",
        "calendar.shifts.*.from | x2 | \"calendar.shifts.day.from\" says \"06:00\", which is no"
            + " number to scale; expected a path to a quantity, a bare number or a distribution",
        "machines.mill | x2 | \"machines.mill\" is a map with title, kind, power, draws and"
            + " no amount; expected a path to a quantity, a bare number or a distribution; further"
            + " names, places or * lead into it",
        "machines.mill.pwer | x2 | the file does not say \"machines.mill.pwer\", so there is nothing"
            + " to scale; expected a name or key, perhaps \"power\"",
        "resources.*.cont | x2 | the file does not say \"resources.scale.cont\", so there is nothing"
            + " to scale; expected a name or key, perhaps \"count\"",
        "lines.stalk_line.steps.saw.rate_by_moisture | x2 |"
            + " \"lines.stalk_line.steps.saw.rate_by_moisture\" is a list, and x would not know which"
            + " of its numbers is meant; expected a path to a quantity, a bare number or a"
            + " distribution; further names, places or * lead into it",
      })
  void whatCannotBeScaledIsToldWithItsPath(String path, String factor, String said) {
    assertThat(refused(path, factor)).containsExactly("p.yaml " + path + ": " + said);
  }
}
