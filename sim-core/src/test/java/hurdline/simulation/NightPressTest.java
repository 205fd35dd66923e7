package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * A press that draws from a heap by night in hours of its own, and is wanted by another line's
 * campaign from the third day on.
 */
class NightPressTest {
  private static final Offset<Double> EXACT = within(1e-9);

  private double[][] strips;

  private Map<String, Double> simulated(String cotton) {
    String text =
        """
        hurdline: 1
        plant: A press by night
        calendar:
          from: 2027-03-01
          to: 2027-03-10
          shifts: {day: {from: "06:00", to: "14:00"}, night: {from: "22:00", to: "06:00"}, early: {from: "04:00", to: "12:00"}}
        components: [fiber]
        crops:
          stalk: {bale: {mass: 500 kg}, composition: {fiber: 100 %%}}
          cotton: {bale: {mass: 500 kg}, composition: {fiber: 100 %%}}
        machines:
          feeder: {kind: bale-feeder}
          gin: {kind: bale-feeder, stops: {chain: {every: 3 h, counted: running, lasts: 30 min}}}
          heap: {kind: bin, holds: 90 t}
          press: {kind: press}
        products: {tow: {}, lint: {}}
        lines:
          stalk_line:
            crop: stalk
            feed: feeder
            steps: {feeder: {rate: 2 t/h, to: heap}, heap: {to: press, own_hours: {shifts: [night]}}, press: {rate: 1.5 t/h, to: tow}}
          cotton_line:
            crop: cotton
            feed: gin
            steps: {gin: {rate: 1 t/h, to: press}, press: {to: lint}}
        season:
          - {line: stalk_line, from: 2027-03-01, to: 2027-03-02, shifts: [day]}
          - {line: cotton_line, from: %s, shifts: [early]}
        yard:
          on_hand: {stalk: 200 bales, cotton: 50 bales}
          places: {barn: {holds: 500 bales}}
        """
            .formatted(cotton);
    Plant plant = PlantFile.of("night.yaml", text).plant();
    Outcome outcome = Ready.replication(plant).run(new RandomStreams(1), 1, null);
    Map<String, Double> got = new TreeMap<>();
    told(outcome.columns(), outcome.values(), got);
    told(outcome.shared().columns(), outcome.shared().values(), got);
    strips = outcome.shared().strips();
    return got;
  }

  private static void told(List<Outcome.Column> columns, double[] values, Map<String, Double> got) {
    for (int k = 0; k < values.length; k++) {
      got.put(columns.get(k).name(), values[k]);
    }
  }

  /**
   * The first night of eight hours is its own; the second ends at midnight, as the cotton's day
   * begins, though its shift is at four.
   */
  @Test
  void aDrawInItsOwnHoursStandsBackForAnothersCampaign() {
    Map<String, Double> got = simulated("2027-03-03, to: 2027-03-03");
    gives(got, "machine.press.crop.stalk.mass_in", 15);
    gives(got, "machine.press.crop.stalk.hours.full_rate", 10);
    gives(got, "machine.press.crop.stalk.hours.uncrewed", 48 - 10);
    gives(got, "machine.press.crop.cotton.mass_in", 7);
    gives(got, "machine.press.crop.cotton.hours.full_rate", 7);
    gives(got, "machine.press.crop.cotton.hours.starved", 1);
  }

  /**
   * Two days of eight hours and ten by night for the stalk, one shift for the cotton, whose gin
   * stands twice for half an hour.
   */
  @Test
  void hoursOfTheBuildingAreThoseOfItsLines() {
    Map<String, Double> got = simulated("2027-03-03, to: 2027-03-03");
    gives(got, "building.hours.alone.stalk_line", 26);
    gives(got, "building.hours.alone.cotton_line", 8);
    gives(got, "building.hours.concurrent", 0);
    gives(got, "building.hours.staffed", 34);
    gives(got, "building.hours.uncrewed", 3 * 24 - 34);
    gives(got, "building.hours.unused", 7 * 24);
    gives(got, "machine.gin.kpi.allocation_efficiency", 1);
    gives(got, "machine.gin.kpi.availability", 7 / 8.0);
    gives(got, "machine.gin.kpi.technical_efficiency", 7 / 8.0);
    gives(got, "machine.gin.kpi.utilization_efficiency", 7 / 8.0);
    gives(got, "machine.gin.kpi.setup_ratio", 0);
    gives(got, "machine.press.kpi.allocation_efficiency", 17 / 18.0);
    gives(got, "machine.press.kpi.technical_efficiency", 1);
  }

  /**
   * With a day of its own in the second week the cotton leaves the press both nights; 3 March has
   * the last of them.
   */
  @Test
  void whatAMachineDidIsBookedByWeekAndCrop() {
    Map<String, Double> got = simulated("2027-03-08, to: 2027-03-08");
    gives(got, "building.hours.alone.stalk_line", 32);
    int cotton = 0;
    int stalk = 1;
    int feeder = 0;
    int gin = 1;
    int press = 2;
    assertThat(strips).hasDimensions(2, 2 * 3 * 2);
    double[][] hours = {
      {16, 0}, {0, 7}, {16, 7}
    }; // by machine, of stalk in the first week and cotton in the second
    double[][] tonnes = {{32, 0}, {0, 7}, {24, 7}};
    for (int m : new int[] {feeder, gin, press}) {
      for (int week = 0; week < 2; week++) {
        int does = 2 * (2 * m + (week == 0 ? stalk : cotton));
        int other = 2 * (2 * m + (week == 0 ? cotton : stalk));
        assertThat(strips[week][does]).isCloseTo(hours[m][week], EXACT);
        assertThat(strips[week][does + 1]).isCloseTo(tonnes[m][week], EXACT);
        assertThat(strips[week][other]).isZero();
        assertThat(strips[week][other + 1]).isZero();
      }
    }
  }

  private static void gives(Map<String, Double> got, String measure, double value) {
    assertThat(got).containsKey(measure);
    assertThat(got.get(measure)).as(measure).isCloseTo(value, EXACT);
  }
}
