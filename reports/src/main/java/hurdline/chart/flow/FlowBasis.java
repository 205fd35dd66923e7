package hurdline.chart.flow;

import hurdline.answer.LineFlow;
import hurdline.text.Wording;

/** Where the flows of a drawing come from, and what it says of them. */
enum FlowBasis {
  /** The mean of simulated years. */
  SIMULATED("flow-", "", "mean ") {
    @Override
    String limits(LineFlow.Node node, Wording wording) {
      double share = node.heldShare();
      return "limits " + wording.fixed(share, share < 0.1 ? 1 : 0, "share") + " % of hours";
    }

    @Override
    String limitsInText(LineFlow.Node node, Wording wording) {
      return limits(node, wording) + " of the scheduled hours.";
    }
  },

  /** By formula, the line fed at its expected capacity. */
  EXPECTED("expected-flow-", " at expected capacity", "") {
    @Override
    String limits(LineFlow.Node node, Wording wording) {
      return "bottleneck";
    }

    @Override
    String limitsInText(LineFlow.Node node, Wording wording) {
      return "limits the line.";
    }
  };

  /** Before the line's name in that of the drawing. */
  final String prefix;

  /** Behind the line in the title. */
  final String at;

  /** Before the unit. */
  final String mean;

  FlowBasis(String prefix, String at, String mean) {
    this.prefix = prefix;
    this.at = at;
    this.mean = mean;
  }

  /** In the box of a machine that limits the line. */
  abstract String limits(LineFlow.Node node, Wording wording);

  /** The same behind its title. */
  abstract String limitsInText(LineFlow.Node node, Wording wording);
}
