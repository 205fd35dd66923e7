package hurdline.plant;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.random.Constant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Rules speak of records and know no file: a small plant made by hand. */
class RulesTest {
  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

  private static Step step(String machine, double kgPerS, Step.Outlet... outlets) {
    return new Step(
        machine,
        kgPerS > 0 ? OptionalDouble.of(kgPerS) : OptionalDouble.empty(),
        List.of(outlets),
        Optional.empty(),
        List.of(),
        0,
        Optional.empty(),
        OptionalInt.empty(),
        1,
        Curve.NONE,
        Curve.NONE,
        Map.of(),
        new Step.FirstScreen(),
        0,
        Map.of());
  }

  private static Step.Outlet to(String name) {
    return new Step.Outlet(name, Optional.empty(), Map.of(), Map.of(), Map.of());
  }

  private static Step.Outlet some(String name, double share) {
    return new Step.Outlet(name, Optional.of(Map.of("hurd", share)), Map.of(), Map.of(), Map.of());
  }

  private static Machine bin(String name) {
    return new Machine.Bin(name, 1000, false, 0, 0);
  }

  private static Machine plain(String name) {
    return new Machine.Plain(name, Machine.PlainKind.CONVEYOR, Machine.Common.NONE);
  }

  private static List<Problem> problems(Step... steps) {
    Bale bale =
        new Bale(
            new Constant(500),
            new Constant(0.1),
            Optional.empty(),
            Map.of(),
            Map.of("hurd", 1.0),
            0,
            Optional.empty());
    Calendar.Shift day =
        new Calendar.Shift("day", EnumSet.allOf(java.time.DayOfWeek.class), 0, 3600, List.of());
    Yard yard =
        new Yard(
            Map.of(),
            List.of(
                new Yard.Place(
                    "shed",
                    10,
                    0,
                    List.of(),
                    Optional.empty(),
                    0,
                    10,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty())),
            new Yard.OldestFirst(),
            false,
            0,
            Map.of());
    return Rules.problems(
        new Plant(
            "by hand",
            new Calendar(MONDAY, MONDAY.plusDays(6), List.of(day), Set.of(), Optional.empty()),
            List.of(new Component("hurd", OptionalDouble.empty())),
            List.of(new Crop("stalk", false, bale, 0.15, Optional.empty())),
            List.of(
                new Machine.BaleFeeder("feeder", Machine.Common.NONE, 2),
                plain("first"),
                plain("last"),
                bin("bin_a"),
                bin("bin_b")),
            List.of(
                new Product(
                    "hurds",
                    0,
                    Optional.empty(),
                    List.of(),
                    false,
                    Product.Moisture.notSaid(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty())),
            List.of(),
            List.of(),
            List.of(new Line("line", "stalk", "feeder", List.of(), List.of(steps))),
            List.of(new SeasonEntry.Campaign("line", MONDAY, MONDAY, List.of("day"))),
            List.of(),
            Hands.allCome(),
            List.of(),
            yard,
            List.of(),
            List.of(),
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            List.of()),
        Optional.empty());
  }

  private static List<String> said(Step... steps) {
    return problems(steps).stream().map(problem -> problem.path() + " " + problem.said()).toList();
  }

  @Test
  void aPlantMadeByHandCanBeSound() {
    assertThat(problems(step("feeder", 1, to("first")), step("first", 0, to("hurds")))).isEmpty();
  }

  @Test
  void aLoopOfTwoMachinesHoldsEverything() {
    assertThat(
            said(
                step("feeder", 1, to("first")),
                step("first", 0, to("last")),
                step("last", 0, to("first"))))
        .containsExactly(
            "lines.line.steps.first a loop returns everything: \"hurd\" cannot leave first, last");
  }

  @Test
  void aMachineThatLeadsToItselfHoldsEverything() {
    assertThat(said(step("feeder", 1, to("first")), step("first", 0, to("first"))))
        .containsExactly(
            "lines.line.steps.first a loop returns everything: \"hurd\" cannot leave first");
  }

  @Test
  void aLoopThroughABinIsACircleOfOne() {
    assertThat(
            said(
                step("feeder", 1, to("bin_a")),
                step("bin_a", 0, to("first")),
                step("first", 1, some("bin_a", 0.5), to("hurds"))))
        .containsExactly(
            "lines.line.steps.bin_a material returns into the bin \"bin_a\" that it was drawn from,"
                + " and that bin has no \"stop_at\" above 0");
  }

  @Test
  void aBinIntoABinHasNothingThatLimitsIt() {
    assertThat(
            said(
                step("feeder", 1, to("bin_a")),
                step("bin_a", 0, to("bin_b")),
                step("bin_b", 0, to("first")),
                step("first", 1, to("hurds"))))
        .containsExactly(
            "lines.line.steps.bin_a nothing limits what is drawn from the bin \"bin_a\", so it"
                + " would empty in no time");
  }

  @Test
  void twoBinsInACircleAreToldOnce() {
    assertThat(
            said(
                step("feeder", 1, to("bin_a")),
                step("bin_a", 0, to("first")),
                step("first", 1, to("bin_b")),
                step("bin_b", 0, to("last")),
                step("last", 1, some("bin_a", 0.5), to("hurds"))))
        .singleElement()
        .asString()
        .startsWith(
            "lines.line.steps.bin_a a circle through two or more bins: bin_a, bin_b, bin_a;");
  }
}
