package hurdline.chart.run;

import hurdline.answer.CheckAnswer;
import hurdline.chart.flow.FlowDiagram;
import hurdline.chart.kit.Chart;
import hurdline.text.Wording;
import java.util.List;

/** Drawings of what lines can do by formula. */
public final class CheckCharts {
  private CheckCharts() {}

  /** Each line with its flows at expected capacity. */
  public static List<Chart> flows(CheckAnswer answer, Wording wording) {
    return answer.flows().stream()
        .filter(flow -> !flow.nodes().isEmpty())
        .flatMap(flow -> FlowDiagram.expected(flow, wording).stream())
        .map(FlowDiagram::figure)
        .toList();
  }
}
