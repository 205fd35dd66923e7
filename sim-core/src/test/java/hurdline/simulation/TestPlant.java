package hurdline.simulation;

import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A plant for a test: one that stands here, and what the test changes of it by paths, so that a
 * test tells only what it is about. Without a change nothing in it is random, and all of it can be
 * worked out by hand.
 *
 * @param text of the plant file
 * @param changes in their order
 */
public record TestPlant(String text, List<Change> changes) {

  public TestPlant {
    changes = List.copyOf(changes);
  }

  /**
   * Stalks of 60 % fiber go Monday to Wednesday at 2 t/h through a saw, and from Friday to Tuesday
   * cotton at 1 t/h through the same, eight hours a day; Thursday is for the changeover. Bales of
   * half a tonne, 200 and 100 on hand.
   */
  public static TestPlant twoLines() {
    return new TestPlant(
        """
        hurdline: 1
        plant: Two lines and a saw
        calendar:
          from: 2027-03-01
          to: 2027-03-12
          shifts: {day: {days: [Mon, Tue, Wed, Thu, Fri], from: "06:00", to: "14:00"}}
        components: [fiber, hurd]
        crops:
          stalk: {bale: {mass: 500 kg}, moisture: 12 %, composition: {fiber: 60 %, hurd: 40 %}}
          cotton: {bale: {mass: 500 kg}, moisture: 12 %, composition: {fiber: 100 %}}
        machines:
          feeder: {kind: bale-feeder, power: 10 kW}
          gin: {kind: bale-feeder, power: 20 kW}
          saw: {kind: separating-saw, power: 40 kW}
        products: {tow: {price: 400 USD/t}, hurds: {price: 100 USD/t}, lint: {price: 1000 USD/t}}
        lines:
          stalk_line:
            crop: stalk
            feed: feeder
            steps:
              feeder: {rate: 2 t/h, to: saw}
              saw: {rate: 2 t/h, outlets: [{to: hurds, takes: {hurd: 100 %}}, {to: tow}]}
          cotton_line:
            crop: cotton
            feed: gin
            steps:
              gin: {rate: 1 t/h, to: saw}
              saw: {rate: 2 t/h, to: lint}
        season:
          - {line: stalk_line, from: 2027-03-01, to: 2027-03-03, shifts: [day]}
          - {changeover: 1 d, hands: 3}
          - {line: cotton_line, from: 2027-03-05, to: 2027-03-09, shifts: [day]}
        crews: {stalk_line: {day: 4}, cotton_line: {day: 2}}
        yard:
          on_hand: {stalk: 200 bales, cotton: 100 bales}
          places: {barn: {holds: 500 bales}}
        money: {currency: USD, wage: 10 USD/h}
        """,
        List.of());
  }

  /**
   * The same with one value changed.
   *
   * @param path such as {@code machines.saw.power}
   * @param value as the file would have it
   */
  public TestPlant with(String path, String value) {
    List<Change> more = new ArrayList<>(changes);
    more.add(new Change.Value(path, value));
    return new TestPlant(text, more);
  }

  public Plant plant() {
    return PlantFile.of("test.yaml", text).variants().with(changes.toArray(Change[]::new));
  }

  /** What one replication came to. */
  public Outcome outcome() {
    return Ready.replication(plant()).run(new RandomStreams(1), 1, null);
  }

  /** Every measure of one replication by its full name, those of crops and building included. */
  public Map<String, Double> figures() {
    Outcome outcome = outcome();
    Map<String, Double> figures = new TreeMap<>();
    put(outcome.columns(), outcome.values(), figures);
    put(outcome.shared().columns(), outcome.shared().values(), figures);
    return figures;
  }

  private static void put(
      List<Outcome.Column> columns, double[] values, Map<String, Double> figures) {
    for (int k = 0; k < values.length; k++) {
      figures.put(columns.get(k).name(), values[k]);
    }
  }
}
