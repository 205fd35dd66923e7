package hurdline.simulation;

import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.results.Outcome;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A plant for a test: one that stands here, and what the test says otherwise of it, by sections of
 * the file or by paths, so that a test tells only what it is about. Unless the test says so,
 * nothing in it is random, and all of it can be worked out by hand.
 *
 * @param text of the plant file, its sections not indented
 * @param changes in their order
 */
public record TestPlant(String text, List<Change> changes) {

  public TestPlant {
    changes = List.copyOf(changes);
  }

  /**
   * Bales of half a tonne, all fiber and enough of them, go round the clock at 2 t/h through a
   * feeder: three months from 2027-01-01.
   */
  public static TestPlant oneLine() {
    return new TestPlant(
        """
        hurdline: 1
        plant: One line
        calendar: {from: 2027-01-01, to: 2027-03-31, shifts: {always: {from: "00:00", to: "24:00"}}}
        components: [fiber]
        crops: {stalk: {bale: {mass: 500 kg}, composition: {fiber: 100 %}}}
        machines: {feeder: {kind: bale-feeder}}
        products: {tow: {}}
        lines: {stalk_line: {crop: stalk, feed: feeder, steps: {feeder: {rate: 2 t/h, to: tow}}}}
        season: [{line: stalk_line, from: 2027-01-01, to: 2027-03-31, shifts: [always]}]
        yard: {on_hand: {stalk: 10000 bales}, places: {barn: {holds: 10000 bales}}}
        """,
        List.of());
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

  /** The line of {@link #oneLine} for so many days from 2027-01-01. */
  public TestPlant days(int days) {
    return days("2027-01-01", LocalDate.of(2027, 1, 1).plusDays(days - 1L).toString());
  }

  /** The line of {@link #oneLine} from one day to another, that day too. */
  public TestPlant days(String from, String to) {
    return shift(from, to, "00:00", "24:00");
  }

  /** The same in one shift a day. */
  public TestPlant shift(String from, String to, String begins, String ends) {
    String hours = "{from: \"" + begins + "\", to: \"" + ends + "\"}";
    return says("calendar", "{from: %s, to: %s, shifts: {always: %s}}", from, to, hours)
        .says("season", "[{line: stalk_line, from: %s, to: %s, shifts: [always]}]", from, to);
  }

  /** The line of {@link #oneLine} at another rate. */
  public TestPlant feeds(String rate) {
    return steps("feeder: {rate: " + rate + ", to: tow}");
  }

  /**
   * The line of {@link #oneLine} by other steps.
   *
   * @param steps one in a row, or all with commas between
   */
  public TestPlant steps(String steps) {
    return says(
        "lines",
        "{stalk_line: {crop: stalk, feed: feeder, steps: {%s}}}",
        steps.strip().replaceAll("\\s*\n\\s*", ", "));
  }

  /**
   * With another section of the file, or a further one.
   *
   * @param yaml in one line or indented below its name; with arguments it is a format
   */
  public TestPlant says(String section, String yaml, Object... arguments) {
    String body = arguments.length == 0 ? yaml : yaml.formatted(arguments);
    String said = section + ":" + (body.contains("\n") ? "\n" + body.indent(2) : " " + body + "\n");
    Matcher old = Pattern.compile("(?m)^" + section + ":.*\\n(?:[ ].*\\n)*").matcher(text);
    return new TestPlant(
        old.find() ? old.replaceFirst(Matcher.quoteReplacement(said)) : text + said, changes);
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

  public PlantFile file() {
    return PlantFile.of("test.yaml", text);
  }

  public Plant plant() {
    return file().variants().with(changes.toArray(Change[]::new));
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
