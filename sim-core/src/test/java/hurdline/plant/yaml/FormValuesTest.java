package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.TreeReader;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormValuesTest {
  @Test
  void aPlantIsShownLineByLineAndMachineByMachine() {
    String text =
        "machines:\n  saw: {title: Big saw, kind: separating-saw, power: 50 hp, stops: {choke: {every: {exponential: {mean: 7 h}}}}}\n"
            + "  spare: {kind: fan, power: 1 kW}\n"
            + "lines:\n  hemp_line: {crop: stalk, steps: {saw: {rate: 4 t/h, to: out}}}\n"
            + "calendar: {from: 2027-03-01, shifts: {day: {from: \"07:00\", days: [Mon]}}}\n"
            + "money: {wage: 20 USD/h}\n";
    assertThat(FormValues.of(text))
        .containsExactly(
            new FormValues.Value(
                "hemp line", "Big saw", "lines.hemp_line.steps.saw.rate", "rate", "4 t/h"),
            new FormValues.Value("hemp line", "Big saw", "machines.saw.power", "power", "50 hp"),
            new FormValues.Value(
                "hemp line",
                "Big saw",
                "machines.saw.stops.choke.every.exponential.mean",
                "stops, choke, every, exponential, mean",
                "7 h"),
            new FormValues.Value(
                "Machines beside the lines", "spare", "machines.spare.power", "power", "1 kW"),
            new FormValues.Value("Calendar and shifts", "", "calendar.from", "from", "2027-03-01"),
            new FormValues.Value(
                "Calendar and shifts", "shifts", "calendar.shifts.day.from", "day, from", "07:00"),
            new FormValues.Value("Money", "", "money.wage", "wage", "20 USD/h"));
    assertThat(FormValues.count(text)).isEqualTo(13);
  }

  @ParameterizedTest
  @ValueSource(strings = {"small.yaml", "stalk.yaml", "sweetgum-bend.yaml"})
  void everyFigureShownIsWhereItsPathSays(String name) {
    String text = PlantFiles.text(name);
    Tree tree = TreeReader.read(text, new Findings());
    List<FormValues.Value> values = FormValues.of(text);
    assertThat(values).hasSizeGreaterThan(25);
    assertThat(values).extracting(FormValues.Value::path).doesNotHaveDuplicates();
    assertThat(values)
        .allSatisfy(
            value ->
                assertThat(((Tree.Scalar) Tree.find(tree, value.path()).orElseThrow()).text())
                    .isEqualTo(value.text()));
    assertThat(FormValues.count(text)).isGreaterThan(values.size());
  }

  @Test
  void ofAHalfTypedTextNothingIsShown() {
    assertThat(FormValues.of("machines: {saw: {power: 5")).isEmpty();
    assertThat(FormValues.of("- a list")).isEmpty();
  }
}
