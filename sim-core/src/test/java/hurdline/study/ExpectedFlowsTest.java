package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.CheckAnswer;
import hurdline.answer.LineFlow;
import hurdline.answer.RunAnswer;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.run.Run;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What flows where when a line is fed its expected capacity. */
class ExpectedFlowsTest {
  private static final Path CONFIGS =
      Path.of(System.getProperty("hurdline.root")).resolve("line-configs");

  /** Nothing stops; 60 % of 3 t/h are hurd, of which the screen's 1.2 t/h let two thirds go on. */
  private static final String SAW_AND_SCREEN =
      """
      hurdline: 1
      plant: Saw and screen
      calendar: {from: 2027-03-01, to: 2027-03-31, shifts: {day: {from: "06:00", to: "14:00"}}}
      components: [hurd, fiber]
      crops: {stalk: {bale: {mass: 500 kg}, composition: {hurd: 60 %, fiber: 40 %}}}
      machines:
        feeder: {kind: bale-feeder}
        saw: {kind: separating-saw}
        screen: {kind: conveyor}
      products: {chips: {price: 100 USD/t}, fiber: {price: 100 USD/t}}
      lines:
        line:
          crop: stalk
          feed: feeder
          steps:
            feeder: {rate: 5 t/h, to: saw}
            saw: {outlets: [{to: screen, takes: {hurd: 100 %}}, {to: fiber}]}
            screen: {rate: 1.8 t/h, outlets: [{to: waste, takes: {hurd: 25 %}}, {to: chips}]}
      season: [{line: line, from: 2027-03-01, to: 2027-03-31, shifts: [day]}]
      yard: {on_hand: {stalk: 2000 bales}, places: {barn: {holds: 2000 bales}}}
      money: {currency: USD}
      """;

  private static PlantOrigin source(PlantFile file) {
    return new PlantOrigin(file.variants(), "plant.yaml", file.contentHash(), "0", file.warnings());
  }

  private static Map<String, Double> byWay(LineFlow flow) {
    return flow.edges().stream()
        .collect(Collectors.toMap(edge -> edge.from() + " " + edge.to(), LineFlow.Edge::tPerH));
  }

  @Test
  void aLineThatNothingStopsFlowsAsItsRatesSay() {
    PlantOrigin source = source(PlantFile.of("plant.yaml", SAW_AND_SCREEN));
    LineFlow flow = RatedCapacity.of(source, PlantChanges.base()).flows().get(0);
    assertThat(byWay(flow))
        .containsOnlyKeys("feeder saw", "saw screen", "saw fiber", "screen waste", "screen chips");
    assertThat(byWay(flow).get("feeder saw")).isCloseTo(3, within(1e-9));
    assertThat(byWay(flow).get("saw screen")).isCloseTo(1.8, within(1e-9));
    assertThat(byWay(flow).get("saw fiber")).isCloseTo(1.2, within(1e-9));
    assertThat(byWay(flow).get("screen waste")).isCloseTo(0.45, within(1e-9));
    assertThat(byWay(flow).get("screen chips")).isCloseTo(1.35, within(1e-9));
    assertThat(flow.nodes())
        .filteredOn(node -> node.heldShare() > 0)
        .extracting(LineFlow.Node::name)
        .containsExactly("screen");

    RunAnswer simulated =
        new Run(source, PlantChanges.base(), Studied.effort(2, 1))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
    byWay(simulated.flows().get(0))
        .forEach(
            (way, tPerH) ->
                assertThat(tPerH).as(way).isCloseTo(byWay(flow).get(way), within(1e-6)));
  }

  /** Water that a drier takes and dust that is let go stand as ways to the air. */
  @ParameterizedTest
  @ValueSource(strings = {"small.yaml", "stalk.yaml", "sweetgum-bend.yaml"})
  void whatIsFedComesOut(String name) throws IOException {
    CheckAnswer answer =
        RatedCapacity.of(source(PlantFile.read(CONFIGS.resolve(name))), PlantChanges.base());
    assertThat(answer.flows()).isNotEmpty();
    for (LineFlow flow : answer.flows()) {
      var line = answer.capacity().line(flow.line()).orElseThrow();
      double fed = line.limits().expected().fedTPerH();
      assertThat(sum(flow, line.feed(), true)).as(flow.line()).isCloseTo(fed, within(1e-6 * fed));
      double out =
          flow.nodes().stream()
              .filter(node -> flow.edges().stream().noneMatch(e -> e.from().equals(node.name())))
              .mapToDouble(node -> sum(flow, node.name(), false))
              .sum();
      assertThat(out).as(flow.line()).isCloseTo(fed, within(1e-6 * fed));
    }
  }

  private static double sum(LineFlow flow, String node, boolean leaves) {
    List<LineFlow.Edge> of =
        flow.edges().stream()
            .filter(edge -> (leaves ? edge.from() : edge.to()).equals(node))
            .toList();
    return of.stream().mapToDouble(LineFlow.Edge::tPerH).sum();
  }
}
