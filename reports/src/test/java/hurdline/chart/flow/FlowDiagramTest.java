package hurdline.chart.flow;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.LineFlow;
import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.chart.kit.Chart;
import hurdline.sample.Draft;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleFlow;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whether a line's drawing can be read: nothing lies on anything else, whatever the line. */
class FlowDiagramTest {
  private static final Wording US = new Wording(UnitSystem.US, Locale.ROOT);

  /** Lines with their drawings, each drawn once. */
  private static final Map<LineFlow, List<FlowDiagram>> DRAWN = drawn();

  private static Map<LineFlow, List<FlowDiagram>> drawn() {
    Map<LineFlow, List<FlowDiagram>> drawn = new LinkedHashMap<>();
    SampleAnswer.year().flows().forEach(flow -> drawn.put(flow, draw(flow)));
    for (int machines : new int[] {5, 12, 25, 40}) {
      for (int n = 1; n < 9; n++) {
        LineFlow flow = SampleFlow.of(machines, n);
        drawn.put(flow, draw(flow));
      }
    }
    return drawn;
  }

  static Stream<LineFlow> lines() {
    return DRAWN.keySet().stream();
  }

  static Stream<FlowDiagram> parts() {
    return DRAWN.values().stream().flatMap(List::stream);
  }

  private static List<FlowDiagram> draw(LineFlow flow) {
    return FlowDiagram.of(flow, FlowDiagramTest::level, US);
  }

  private static Optional<SummaryRow> level(String measure) {
    double none = Double.NaN;
    return measure.startsWith("bin.")
        ? Optional.of(
            Draft.of(SummaryRow.class)
                .with(SummaryRow::option, "base")
                .with(SummaryRow::measure, measure)
                .with(SummaryRow::unit, "t")
                .with(SummaryRow::mean, 3.2)
                .with(SummaryRow::replications, 1)
                .made())
        : Optional.empty();
  }

  private static List<Rectangle2D> boxes(FlowDiagram diagram) {
    return diagram.layout().nodes().stream().map(FlowPipes::box).toList();
  }

  private static List<Rectangle2D> labels(FlowDiagram diagram) {
    return diagram.layout().ways().stream().map(diagram.pipes()::label).toList();
  }

  @ParameterizedTest
  @MethodSource("parts")
  void noBoxLiesOnAnother(FlowDiagram diagram) {
    assertThat(meetings(boxes(diagram))).isZero();
  }

  @ParameterizedTest
  @MethodSource("parts")
  void noFigureLiesOnAnotherOrOnABox(FlowDiagram diagram) {
    List<Rectangle2D> all = new ArrayList<>(boxes(diagram));
    all.addAll(labels(diagram));
    assertThat(meetings(all)).isZero();
  }

  @ParameterizedTest
  @MethodSource("parts")
  void noPipeRunsThroughABox(FlowDiagram diagram) {
    for (FlowLayout.Way way : diagram.layout().ways()) {
      for (FlowLayout.Spot spot : diagram.layout().nodes()) {
        if (!way.spots().contains(spot)) {
          assertThat(passes(diagram, way, FlowPipes.box(spot)))
              .as(way.edge() + " through " + spot.name)
              .isFalse();
        }
      }
    }
  }

  private static boolean passes(FlowDiagram diagram, FlowLayout.Way way, Rectangle2D box) {
    PathIterator path = diagram.pipes().path(way).getPathIterator(null, 0.5);
    double[] at = new double[6];
    double x = 0;
    double y = 0;
    for (; !path.isDone(); path.next()) {
      boolean draws = path.currentSegment(at) != PathIterator.SEG_MOVETO;
      if (draws && box.intersectsLine(x, y, at[0], at[1])) {
        return true;
      }
      x = at[0];
      y = at[1];
    }
    return false;
  }

  /** A page prints a drawing over the 180 mm between its margins. */
  @ParameterizedTest
  @MethodSource("parts")
  void lettersAreLargeEnoughOnAPhoneAndOnPaper(FlowDiagram diagram) {
    String svg = diagram.figure().svg();
    double wide = number(svg, "viewBox=\"0 0 ([0-9]+)");
    double high = number(svg, "viewBox=\"0 0 [0-9]+ ([0-9]+)");
    double smallest =
        all(svg, "font-size[:=]\"?([0-9.]+)").stream()
            .mapToDouble(Double::parseDouble)
            .min()
            .orElseThrow();
    double pointsPerPixel = Math.min(180 / wide, 225 / high) * 72 / 25.4;
    assertThat(smallest * pointsPerPixel).as("points rated").isGreaterThan(7);
    assertThat(smallest * number(svg, "min-width:([0-9.]+)px") / wide)
        .as("pixels")
        .isGreaterThanOrEqualTo(11);
  }

  private static double number(String text, String pattern) {
    return Double.parseDouble(all(text, pattern).get(0));
  }

  private static List<String> all(String text, String pattern) {
    return Pattern.compile(pattern).matcher(text).results().map(found -> found.group(1)).toList();
  }

  @ParameterizedTest
  @MethodSource("lines")
  void everyMachineStandsInOnePartAndEveryFlowIsDrawn(LineFlow flow) {
    List<FlowDiagram> parts = DRAWN.get(flow);
    List<String> drawn =
        parts.stream()
            .flatMap(part -> part.layout().nodes().stream())
            .map(spot -> FlowSheets.shown(spot.name))
            .toList();
    List<String> machines =
        flow.nodes().stream()
            .filter(
                node -> node.kind() == LineFlow.Kind.MACHINE || node.kind() == LineFlow.Kind.BIN)
            .map(LineFlow.Node::name)
            .toList();
    assertThat(drawn.stream().filter(machines::contains))
        .containsExactlyInAnyOrderElementsOf(machines);
    List<String> ends = new ArrayList<>(drawn);
    ends.removeAll(machines);
    assertThat(ends)
        .containsAll(
            flow.nodes().stream()
                .map(LineFlow.Node::name)
                .filter(name -> !machines.contains(name))
                .toList());
    long ways = parts.stream().mapToLong(part -> part.layout().ways().size()).sum();
    long cut =
        parts.stream()
            .mapToLong(part -> all(part.figure().svg(), ">(to part [0-9]+)<").size())
            .sum();
    assertThat(ways).isEqualTo(flow.edges().size() + cut);
    List<List<String>> rows =
        parts.stream().flatMap(part -> part.figure().table().rows().stream()).toList();
    assertThat(rows)
        .extracting(row -> row.get(0) + " to " + row.get(1))
        .containsExactlyInAnyOrderElementsOf(
            flow.edges().stream()
                .map(edge -> Titles.ofName(edge.from() + " to " + edge.to()))
                .toList());
  }

  @Test
  void aPipeThatIsCutGoesOnAtTheSameLetter() {
    List<String> to = new ArrayList<>();
    List<String> from = new ArrayList<>();
    for (FlowDiagram part : draw(SampleFlow.of(40, 1))) {
      String svg = part.figure().svg();
      to.addAll(all(svg, ">([A-Z][0-9]*)</text\\s*><text[^>]*>to part"));
      from.addAll(all(svg, ">([A-Z][0-9]*)</text\\s*><text[^>]*>from part"));
    }
    assertThat(to).isNotEmpty().doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(from);
  }

  private static int meetings(List<Rectangle2D> boxes) {
    int count = 0;
    for (int one = 0; one < boxes.size(); one++) {
      for (int other = 0; other < one; other++) {
        count += boxes.get(one).intersects(boxes.get(other)) ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void whatMeetsIsCounted() {
    Rectangle2D box = new Rectangle2D.Double(0, 0, 10, 10);
    assertThat(meetings(List.of(box, new Rectangle2D.Double(9, 9, 5, 5)))).isEqualTo(1);
  }

  @Test
  void aBinShowsItsMeanAndPeakAndTheHolderItsShare() {
    Chart figure = draw(SampleAnswer.year().flows().get(0)).get(0).figure();
    assertThat(figure.svg())
        .contains("bin: mean 3.5, peak 3.5 ton")
        .contains("limits 62 % of hours");
    assertThat(figure.title()).isEqualTo("Flow through the stalk line, mean ton/h");
  }
}
