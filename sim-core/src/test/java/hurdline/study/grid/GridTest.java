package hurdline.study.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.GridAnswer;
import hurdline.answer.GridBest;
import hurdline.answer.GridCell;
import hurdline.answer.GridChange;
import hurdline.answer.GridFact;
import hurdline.answer.GridKey;
import hurdline.answer.GridLead;
import hurdline.answer.GridRow;
import hurdline.answer.RunAnswer;
import hurdline.answer.Samples;
import hurdline.answer.SimulatedCell;
import hurdline.answer.SummaryRow;
import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.PlantFile;
import hurdline.problem.LocatedProblem;
import hurdline.statistics.Summary;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Scenario;
import hurdline.study.Studied;
import hurdline.study.compare.Compare;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.Run;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class GridTest {
  private static final String FED = "mass.stalk.fed";
  private static final String MARGIN = "money.margin";

  /** 9 hours of feeding, 10 of pay at 10 USD; see line-configs/exact/cut_night.md. */
  private static PlantOrigin nights(String more) throws IOException {
    String text =
        Files.readString(Path.of("../line-configs/exact/cut_night.yaml"))
            .replace("tow: {}", "tow: {price: 10 USD/t}");
    PlantFile file = PlantFile.of("cut_night.yaml", text + more);
    return new PlantOrigin(file.variants(), "cut_night.yaml", file.contentHash(), "0", List.of());
  }

  /** The plant to start from, for two weeks. */
  private static PlantOrigin small() {
    try {
      String text = Files.readString(Path.of("../line-configs/small.yaml"));
      PlantFile file = PlantFile.of("small.yaml", text.replace("2027-05-28", "2027-03-12"));
      return new PlantOrigin(file.variants(), "small.yaml", file.contentHash(), "0", List.of());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static GridKey key(String path, String unit, String... numbers) {
    List<GridKey.Value> values =
        Stream.of(numbers)
            .map(
                number ->
                    new GridKey.Value(
                        unit.equals("x") ? "x" + number : number + unit,
                        Double.parseDouble(number)))
            .toList();
    return new GridKey(
        path,
        numbers[0] + ".." + numbers[numbers.length - 1],
        unit.equals("x") ? GridKey.Scale.FACTOR : GridKey.Scale.AMOUNT,
        unit.equals("x") ? "" : unit,
        values);
  }

  private static Grid grid(PlantOrigin source, RunSettings effort, GridKey... keys) {
    return new Grid(
        source,
        PlantChanges.base(),
        "option",
        List.of(new Scenario("base", source, List.of())),
        List.of(keys),
        effort);
  }

  /** Keeps cells in memory. */
  private static final class Kept implements CellStore {
    private final Map<Integer, SimulatedCell> cells = new TreeMap<>();

    @Override
    public Optional<SimulatedCell> kept(int cell) {
      return Optional.ofNullable(cells.get(cell));
    }

    @Override
    public void keep(SimulatedCell cell) {
      assertThat(cells.put(cell.cell(), cell)).as("simulated only once").isNull();
    }
  }

  private static GridAnswer simulated(Grid grid) {
    return grid.simulate(new Kept(), (done, of) -> {}, () -> false).orElseThrow();
  }

  private static double mean(GridAnswer answer, int cell, String measure) {
    return answer.row(cell, "base", measure).orElseThrow().mean();
  }

  @Test
  void aPlantWithAKnownAnswerGivesItInEachCell() throws IOException {
    GridAnswer answer =
        simulated(
            grid(
                nights(""),
                Studied.effort(2, 2),
                key("lines.stalk_line.steps.feeder.rate", " t/h", "1", "2", "3"),
                key("crews.stalk_line.night", "", "1", "2")));
    assertThat(answer.cells())
        .extracting(GridCell::at)
        .containsExactly(
            List.of(0, 0),
            List.of(0, 1),
            List.of(1, 0),
            List.of(1, 1),
            List.of(2, 0),
            List.of(2, 1));
    for (int cell = 0; cell < 6; cell++) {
      double rate = answer.value(cell, 0).number();
      double hands = answer.value(cell, 1).number();
      assertThat(mean(answer, cell, FED)).isCloseTo(9 * rate, within(1e-9));
      assertThat(mean(answer, cell, MARGIN)).isCloseTo(90 * rate - 100 * hands, within(1e-6));
    }
    assertThat(answer.best()).contains(new GridBest(MARGIN, "base", 4, List.of()));
    assertThat(answer.best()).contains(new GridBest(FED, "base", 4, List.of(5)));
    assertThat(answer.leads()).isEmpty();
    assertThat(answer.cells()).noneMatch(GridCell::asItStands);
  }

  @Test
  void aCellIsTheRunOfItsValuesOnTheSameChance() {
    GridAnswer answer =
        simulated(
            grid(
                small(), Studied.effort(6, 2), key("machines.mill.power", "x", "0.8", "1", "1.4")));
    PlantChanges scaled =
        new PlantChanges(
            "base", List.of(), List.of(new Change.Value("machines.mill.power", "x0.8")));
    RunAnswer run =
        new Run(small(), scaled, Studied.effort(6, 1))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
    List<GridRow> rows = answer.all().rows().stream().filter(row -> row.cell() == 0).toList();
    assertThat(rows).hasSameSizeAs(run.summary());
    for (int at = 0; at < rows.size(); at++) {
      SummaryRow due = run.summary().get(at);
      assertThat(rows.get(at))
          .isEqualTo(
              new GridRow(
                  0,
                  "base",
                  due.measure(),
                  due.unit(),
                  due.mean(),
                  due.low95(),
                  due.high95(),
                  due.replications(),
                  due.interval()));
    }
    assertThat(answer.cells()).extracting(GridCell::asItStands).containsExactly(false, true, false);
    assertThat(answer.drawn())
        .contains(MARGIN, FED, "yard.stalk.peak", "season.stalk_line.left_over");
  }

  @Test
  void theAnswerDoesNotHangOnThreads() {
    GridKey key = key("machines.mill.power", "x", "0.8", "1", "1.2", "1.4");
    GridAnswer one = simulated(grid(small(), Studied.effort(11, 1), key));
    GridAnswer five = simulated(grid(small(), Studied.effort(11, 5), key));
    assertThat(five).isEqualTo(one);
  }

  @Test
  void aGridThatWasStoppedGoesOnWithoutSimulatingFinishedCellsAgain() {
    GridKey key = key("machines.mill.power", "x", "0.8", "0.9", "1", "1.1");
    Kept kept = new Kept();
    AtomicInteger simulations = new AtomicInteger();
    Optional<GridAnswer> stopped =
        grid(small(), Studied.effort(5, 2), key)
            .simulate(kept, (done, of) -> simulations.set(done), () -> simulations.get() >= 12);
    assertThat(stopped).isEmpty();
    assertThat(kept.cells).hasSizeBetween(1, 3);
    int finished = kept.cells.size();
    AtomicInteger further = new AtomicInteger();
    GridAnswer whole =
        grid(small(), Studied.effort(5, 2), key)
            .simulate(kept, (done, of) -> further.incrementAndGet(), () -> false)
            .orElseThrow();
    assertThat(further).hasValue(5 * (4 - finished));
    assertThat(whole).isEqualTo(simulated(grid(small(), Studied.effort(5, 1), key)));
  }

  @Test
  void whatAFinishedCellHangsOnIsInTheSettings() throws IOException {
    GridKey key = key("machines.feeder.power", " kW", "8", "9");
    List<String> settings = grid(nights(""), Studied.effort(5, 2), key).settings();
    assertThat(settings)
        .startsWith("program: 0", "seed: 1", "replications: 5", "vary: machines.feeder.power=8..9")
        .hasSize(5);
    assertThat(grid(nights(""), Studied.effort(5, 1), key).settings()).isEqualTo(settings);
    assertThat(grid(nights(""), Studied.effort(6, 2), key).settings()).isNotEqualTo(settings);
    assertThat(grid(nights("# edited\n"), Studied.effort(5, 2), key).settings())
        .isNotEqualTo(settings);
  }

  @Test
  void aCellWhosePlantHasProblemsIsLeftOutAndTold() {
    Grid grid =
        grid(small(), Studied.effort(2, 2), key("machines.hurd_bin.holds", " t", "0", "3", "6"));
    assertThat(grid.leftOut()).hasSize(1);
    assertThat(grid.simulations()).isEqualTo(4);
    GridAnswer answer = simulated(grid);
    LocatedProblem problem = answer.cells().get(0).leftOut().get(0).problem();
    assertThat(problem.path()).isEqualTo("machines.hurd_bin.holds");
    assertThat(problem.found()).startsWith("\"0 t\"");
    assertThat(answer.row(0, "base", FED)).isEmpty();
    assertThat(answer.row(1, "base", FED)).isPresent();
    assertThat(answer.cells()).extracting(GridCell::asItStands).containsExactly(false, false, true);
  }

  @Test
  void aKeyThatIsNowhereIsToldBeforeAnythingIsSimulated() {
    assertThatThrownBy(
            () -> grid(small(), Studied.effort(2, 2), key("machines.mil.power", " hp", "10", "20")))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("there is no \"mil\" in machines");
  }

  /**
   * A bin that starts its consumer at 4 t must hold as much; where it cannot there is nobody to be
   * better than.
   */
  @Test
  void aPlantWhoseRivalsAreLeftOutLeadsNothing() {
    PlantOrigin source = small();
    Change later = new Change.Value("machines.hurd_bin.start_at", "4 t");
    GridAnswer answer =
        simulated(
            new Grid(
                source,
                PlantChanges.base(),
                "option",
                List.of(
                    new Scenario("base", source, List.of()),
                    new Scenario("later", source, List.of(later))),
                List.of(key("machines.hurd_bin.holds", " t", "3", "6")),
                Studied.effort(2, 2)));
    assertThat(answer.cells().get(0).leftOut())
        .extracting(GridCell.LeftOut::plant)
        .containsExactly("later");
    assertThat(answer.leads()).isNotEmpty().allMatch(lead -> lead.cell() == 1);
  }

  /** By 9 t more a price p pays 100 USD for one hand more where p is above 100/9. */
  @Test
  void theBestPlantChangesWhereTheHandPaysForItself() throws IOException {
    PlantOrigin source =
        nights(
            "options:\n  more:\n    with: {crews: {stalk_line: {night: 4}}, lines: {stalk_line:"
                + " {steps: {feeder: {rate: 3 t/h}}}}}\n");
    GridAnswer answer =
        simulated(
            new Grid(
                source,
                PlantChanges.base(),
                "option",
                List.of(
                    new Scenario("base", source, List.of()),
                    new Scenario("more", source, List.of(new Change.Named("more")))),
                List.of(key("products.tow.price", " USD/t", "5", "10", "15", "20")),
                Studied.effort(3, 2)));
    assertThat(answer.leads().stream().filter(lead -> lead.measure().equals(MARGIN)))
        .extracting(GridLead::plant)
        .containsExactly("base", "base", "more", "more");
    GridChange change =
        answer.changes().stream()
            .filter(one -> one.measure().equals(MARGIN))
            .findFirst()
            .orElseThrow();
    assertThat(change.before()).isEqualTo("base");
    assertThat(change.after()).isEqualTo("more");
    assertThat(change.at()).isCloseTo(100.0 / 9, within(1e-6));
    assertThat(change.lastBefore()).isEqualTo(1);
    assertThat(change.firstAfter()).isEqualTo(2);
    assertThat(answer.changes()).as("more feeds more at any price").hasSize(1);
  }

  @Test
  void whatAnOptionIsWorthIsThatOfALifeOfLikeCalendars() throws IOException {
    String text =
        Files.readString(Path.of("../line-configs/small.yaml")).replace("2027-05-28", "2027-03-12");
    PlantFile file =
        PlantFile.of(
            "small.yaml",
            text
                + "\n  better:\n    cost: 3000 USD\n    life: 3 yr\n"
                + "    with: {machines: {mill: {power: 25 hp}}}\n");
    PlantOrigin source =
        new PlantOrigin(file.variants(), "small.yaml", file.contentHash(), "0", List.of());
    Compare compare =
        new Compare(source, PlantChanges.base(), Studied.ask("better"), Studied.effort(6, 2));
    List<Samples> samples =
        compare.simulate((done, of) -> {}, () -> false).orElseThrow().samples().of();
    int margin =
        samples.get(0).measures().stream().map(Samples.Measured::measure).toList().indexOf(MARGIN);
    double[] worth = new double[6];
    for (int one = 0; one < worth.length; one++) {
      double added = samples.get(1).values()[one][margin] - samples.get(0).values()[one][margin];
      worth[one] = -3_000;
      for (int calendar = 0; calendar < 3; calendar++) {
        worth[one] += added * Math.pow(1.09, -calendar - 12 / 365.25);
      }
    }
    Summary due = Summary.of(worth);
    GridAnswer answer =
        simulated(
            new Grid(
                source,
                PlantChanges.base(),
                "option",
                compare.alternatives(),
                List.of(key("products.hurd.price", "x", "1", "2")),
                Studied.effort(6, 2)));
    GridRow row = answer.row(0, "better", "net_present_value").orElseThrow();
    assertThat(row.mean()).isCloseTo(due.mean(), within(1e-6));
    assertThat(row.high95()).isCloseTo(due.mean95().high(), within(1e-6));
    assertThat(answer.row(1, "base", "net_present_value").orElseThrow().mean()).isZero();
    assertThat(answer.row(1, "better", "net_present_value").orElseThrow().mean())
        .isGreaterThan(due.mean());
    assertThat(answer.drawn()).startsWith("net_present_value", MARGIN, FED);
  }

  /** Nobody pays for an option without a cost, so no net present value is said of it. */
  @Test
  void anOptionThatCostsNothingHasNoNetPresentValueUnlessItsCostIsVaried() throws IOException {
    String text =
        Files.readString(Path.of("../line-configs/small.yaml")).replace("2027-05-28", "2027-03-05");
    PlantFile file =
        PlantFile.of(
            "small.yaml", text + "\n  faster:\n    with: {machines: {mill: {power: 25 hp}}}\n");
    PlantOrigin source =
        new PlantOrigin(file.variants(), "small.yaml", file.contentHash(), "0", List.of());
    Compare compare =
        new Compare(source, PlantChanges.base(), Studied.ask("faster"), Studied.effort(2, 2));
    for (boolean ofCost : new boolean[] {false, true}) {
      GridAnswer answer =
          simulated(
              new Grid(
                  source,
                  PlantChanges.base(),
                  "option",
                  compare.alternatives(),
                  List.of(
                      ofCost
                          ? key("options.faster.cost", " USD", "1000", "9000")
                          : key("products.hurd.price", "x", "1", "2")),
                  Studied.effort(2, 2)));
      assertThat(answer.row(0, "faster", "net_present_value").isPresent()).isEqualTo(ofCost);
      assertThat(answer.drawn().contains("net_present_value")).isEqualTo(ofCost);
      assertThat(answer.assumptions().stream().anyMatch(GridFact.ValueInACell.class::isInstance))
          .isEqualTo(ofCost);
    }
  }

  @Test
  void withoutAWordOnHowTheCalendarRepeatsThereIsNoWorthAndTheNotesSayWhy() throws IOException {
    String text =
        Files.readString(Path.of("../line-configs/small.yaml"))
            .replace("2027-05-28", "2027-03-05")
            .replace("  repeats: yearly", "  #");
    PlantFile file = PlantFile.of("small.yaml", text);
    PlantOrigin source =
        new PlantOrigin(file.variants(), "small.yaml", file.contentHash(), "0", List.of());
    Compare compare =
        new Compare(source, PlantChanges.base(), Studied.ask("bigger_mill"), Studied.effort(2, 2));
    GridAnswer answer =
        simulated(
            new Grid(
                source,
                PlantChanges.base(),
                "option",
                compare.alternatives(),
                List.of(key("products.hurd.price", "x", "1", "2")),
                Studied.effort(2, 2)));
    assertThat(answer.drawn()).startsWith(MARGIN, FED);
    assertThat(answer.row(0, "bigger_mill", "net_present_value")).isEmpty();
    assertThat(answer.assumptions())
        .contains(new GridFact.NoValue(5))
        .noneMatch(GridFact.ValueInACell.class::isInstance);
  }
}
