package hurdline.chart;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.LineFlow;
import hurdline.answer.SummaryRow;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleFlow;
import hurdline.words.UnitSystem;
import hurdline.words.Wording;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whether a line's drawing can be read: nothing lies on anything else, whatever the line. */
class FlowDiagramTest {
  private static final Wording US = new Wording(UnitSystem.US, Locale.ROOT);

  static Stream<LineFlow> lines() {
    Stream<LineFlow> made =
        IntStream.of(5, 12, 25, 40)
            .boxed()
            .flatMap(machines -> IntStream.range(1, 9).mapToObj(n -> SampleFlow.of(machines, n)));
    return Stream.concat(SampleAnswer.year().flows().stream(), made);
  }

  private static FlowDiagram draw(LineFlow flow) {
    return new FlowDiagram(flow, FlowDiagramTest::level, US);
  }

  private static Optional<SummaryRow> level(String measure) {
    double none = Double.NaN;
    return measure.startsWith("bin.")
        ? Optional.of(
            new SummaryRow(
                "base", measure, "t", 3.2, none, none, none, none, none, none, none, none, 1))
        : Optional.empty();
  }

  private static List<Rectangle2D> boxes(FlowDiagram diagram) {
    return diagram.layout().nodes().stream().map(FlowPipes::box).toList();
  }

  private static List<Rectangle2D> labels(FlowDiagram diagram) {
    return diagram.layout().ways().stream().map(diagram.pipes()::label).toList();
  }

  @ParameterizedTest
  @MethodSource("lines")
  void noBoxLiesOnAnother(LineFlow flow) {
    assertThat(meetings(boxes(draw(flow)))).isZero();
  }

  @ParameterizedTest
  @MethodSource("lines")
  void noFigureLiesOnAnotherOrOnABox(LineFlow flow) {
    FlowDiagram diagram = draw(flow);
    List<Rectangle2D> all = new ArrayList<>(boxes(diagram));
    all.addAll(labels(diagram));
    assertThat(all).hasSize(flow.nodes().size() + flow.edges().size());
    assertThat(meetings(all)).isZero();
  }

  @ParameterizedTest
  @MethodSource("lines")
  void noPipeRunsThroughABox(LineFlow flow) {
    FlowDiagram diagram = draw(flow);
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
    Figure figure = draw(SampleAnswer.year().flows().get(0)).figure();
    assertThat(figure.svg()).contains("bin: mean 3.5, peak 3.5 ton").contains("holds 62 %");
    assertThat(figure.title()).isEqualTo("Flow through stalk_line, mean ton/h");
  }
}
