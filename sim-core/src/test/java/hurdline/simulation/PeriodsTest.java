package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Weeks and months are parts of the year: together they are what the whole horizon is told to be.
 */
class PeriodsTest {
  private static Plant plant;
  private static Outcome year;

  @BeforeAll
  static void simulate() {
    plant = PlantFile.read(Path.of("../line-configs/small.yaml")).plant();
    year = Ready.replication(plant).run(new RandomStreams(3), 1, null);
  }

  private static double sum(double[][] periods, int column) {
    return Stream.of(periods).mapToDouble(period -> period[column]).sum();
  }

  private static int month(Measure measure) {
    List<String> names = year.monthColumns().stream().map(Outcome.Column::name).toList();
    return names.indexOf(measure.of());
  }

  @Test
  void weeksAddUpToTheYearInEveryColumn() {
    for (int column = 0; column < year.weekColumns().size(); column++) {
      String name = year.weekColumns().get(column).name();
      assertThat(sum(year.weeks(), column))
          .as(name)
          .isCloseTo(year.value(name), within(1e-9 * (1 + year.value(name))));
      int at = column;
      assertThat(Stream.of(year.weeks()).mapToDouble(week -> week[at]).min().orElseThrow())
          .as(name)
          .isGreaterThan(-1e-9);
    }
  }

  @Test
  void theHoursOfAMachineFillEveryWeek() {
    String machine = plant.machines().get(0).name();
    int[] columns =
        IntStream.range(0, year.weekColumns().size())
            .filter(
                column ->
                    year.weekColumns()
                        .get(column)
                        .name()
                        .startsWith("machine." + machine + ".hours."))
            .toArray();
    assertThat(columns).hasSize(State.values().length);
    // from Monday 2027-03-01 to Friday 2027-05-28
    double[] hours =
        Stream.of(year.weeks())
            .mapToDouble(week -> IntStream.of(columns).mapToDouble(column -> week[column]).sum())
            .toArray();
    assertThat(hours).hasSize(13);
    for (int week = 0; week < hours.length; week++) {
      assertThat(hours[week]).as("week " + week).isCloseTo(week == 12 ? 120 : 168, within(1e-6));
    }
  }

  @Test
  void monthsAddUpToTheYearAndTheHighestPeakIsItsPeak() {
    assertThat(year.months()).hasNumberOfRows(3);
    for (Measure measure :
        List.of(
            Measure.ENERGY_TOTAL,
            Measure.MONEY_WAGES,
            Measure.MONEY_REVENUE,
            Measure.MONEY_DEMAND)) {
      double whole = year.value(measure.of());
      assertThat(whole).as(measure.of()).isPositive();
      assertThat(sum(year.months(), month(measure)))
          .as(measure.of())
          .isCloseTo(whole, within(1e-9 * whole));
    }
    double peak =
        Stream.of(year.months())
            .mapToDouble(each -> each[month(Measure.ENERGY_PEAK)])
            .max()
            .orElseThrow();
    assertThat(peak).isEqualTo(year.value(Measure.ENERGY_PEAK.of()));
  }

  @Test
  void anotherYearIsToldAsIfItWereTheFirst() {
    Replication twice = Ready.replication(plant);
    twice.run(new RandomStreams(3), 2, null);
    Outcome again = twice.run(new RandomStreams(3), 1, null);
    assertThat(again.values()).isEqualTo(year.values());
    assertThat(again.weeks()).isDeepEqualTo(year.weeks());
    assertThat(again.months()).isDeepEqualTo(year.months());
  }

  private static Outcome until(String last) {
    Change[] changes = {
      new Change.Value("calendar.repeats", "end-to-end"),
      new Change.Value("calendar.to", last),
      new Change.Value("season.0.to", last),
      new Change.Value("yard.places.shed.holds", "30000 bales"),
      new Change.Value("yard.on_hand.stalk", "9000 bales"),
      new Change.Value("machines.saw.stops.choke.cost", "7 USD")
    };
    Plant longer = PlantFile.read(Path.of("../line-configs/small.yaml")).variants().with(changes);
    return Ready.replication(longer).run(new RandomStreams(3), 1, null);
  }

  /**
   * What a year of several earns is what the calendar would earn if it ended there, and all years
   * together the whole.
   */
  @Test
  void eachYearOfSeveralEarnsWhatItWouldAlone() {
    Outcome all = until("2028-05-12");
    Outcome first = until("2028-02-29");
    assertThat(first.years().values()).isDeepEqualTo(new double[][] {first.values()});
    assertThat(all.years().values()).hasNumberOfRows(2);
    List<String> names = all.years().columns().stream().map(Outcome.Column::name).toList();
    assertThat(names)
        .contains(
            "money.revenue",
            "money.stock_change",
            "money.wages",
            "money.demand",
            "product.fiber.revenue");
    int moved = 0;
    for (int column = 0; column < names.size(); column++) {
      String name = names.get(column);
      double whole = all.value(name);
      assertThat(sum(all.years().values(), column))
          .as(name)
          .isCloseTo(whole, within(1e-9 * (1 + Math.abs(whole))));
      double alone = first.value(name);
      assertThat(all.years().values()[0][column])
          .as(name + " of the first year")
          .isCloseTo(alone, within(1e-9 * (1 + Math.abs(alone))));
      moved += Math.abs(whole - alone) > 1 ? 1 : 0;
    }
    assertThat(moved).isGreaterThan(8);
  }
}
