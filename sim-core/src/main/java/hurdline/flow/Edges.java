package hurdline.flow;

import hurdline.compiled.Stretch;
import java.util.Arrays;

/**
 * Where the components of a lot can get to in a stretch, as flat lists: for each node the
 * components that can be there, for each outlet an edge for each component that can take it.
 *
 * <p>A stalk bale holds four components of a plant that knows seven, and most outlets take one or
 * two, so a pass over all components and outlets would mostly multiply by 0. The lists are made
 * anew only when a lot holds other components than the one before. What is left out would have
 * added exactly 0, so sums keep their last bit: {@code HeadLoadsTest} holds the result against the
 * pass over everything.
 *
 * <p>Places are numbers in {@link HeadLoads}: dry matter stands at a place, its water behind it.
 */
final class Edges {
  private final Stretch stretch;
  private final int components;
  private final boolean[] held; // [component] in the lots for which the lists stand
  private boolean[][] at;
  private boolean[][] in;
  private int edges;

  /** [node + 1] its first entry in {@link #live}: places of components that can be in it. */
  final int[] liveStart;

  int[] live = new int[0];

  /** [node + 1] its first outlet, all outlets numbered through; [outlet + 1] its first edge. */
  final int[] outletStart;

  final int[] edgeStart;
  int[] component = new int[0]; // by edge
  int[] from = new int[0]; // by edge, a place
  int[] to = new int[0];
  double[] part = new double[0]; // written by HeadLoads

  /** [sink] components that can reach it. */
  final int[][] landed;

  Edges(Stretch stretch, int components) {
    this.stretch = stretch;
    this.components = components;
    held = new boolean[components];
    liveStart = new int[stretch.nodes + 1];
    outletStart = new int[stretch.nodes + 1];
    for (int node = 0; node < stretch.nodes; node++) {
      outletStart[node + 1] = outletStart[node] + stretch.outletTo[node].length;
    }
    edgeStart = new int[outletStart[stretch.nodes] + 1];
    landed = new int[stretch.sinks][0];
  }

  /**
   * Place of a node's first component; sinks stand behind the nodes, and behind them what leads
   * nowhere.
   */
  int place(int nodeOrSink) {
    return 2 * components * (nodeOrSink >= 0 ? nodeOrSink : stretch.nodes - 1 - nodeOrSink);
  }

  int places() {
    return 2 * components * (stretch.nodes + stretch.sinks + 1);
  }

  private int nowhere() {
    return 2 * components * (stretch.nodes + stretch.sinks);
  }

  /** Whether a lot holds just the components for which the lists stand. */
  boolean standFor(double[] lotDry, double[] lotWater) {
    for (int c = 0; c < components; c++) {
      if (held[c] != holds(lotDry, lotWater, c)) {
        return false;
      }
    }
    return true;
  }

  private static boolean holds(double[] lotDry, double[] lotWater, int component) {
    return lotDry[component] != 0 || lotWater[component] != 0;
  }

  /**
   * Makes the lists for the components of a lot.
   *
   * @param makesFines [node] whether hurd becomes fines there
   */
  void makeFor(double[] lotDry, double[] lotWater, boolean[] makesFines, int hurd, int fines) {
    at = new boolean[stretch.nodes][components];
    in = new boolean[stretch.sinks][components];
    for (int c = 0; c < components; c++) {
      held[c] = holds(lotDry, lotWater, c);
      at[0][c] = held[c];
    }
    if (stretch.returns) {
      for (boolean[] node : at) {
        Arrays.fill(node, true); // round and round: not worth following
      }
    }
    int most = components * edgeStart.length;
    component = new int[most];
    from = new int[most];
    to = new int[most];
    part = new double[most];
    live = new int[components * stretch.nodes];
    edges = 0;
    for (int node = 0; node < stretch.nodes; node++) {
      for (int k = 0; k < stretch.breaksFrom[node].length; k++) {
        at[node][stretch.breaksInto[node][k]] |= at[node][stretch.breaksFrom[node][k]];
      }
      if (makesFines[node]) {
        at[node][fines] |= at[node][hurd];
      }
      stay(node);
      leave(node);
    }
    for (int sink = 0; sink < in.length; sink++) {
      landed[sink] = list(in[sink]);
    }
  }

  private void stay(int node) {
    int n = liveStart[node];
    for (int c = 0; c < components; c++) {
      if (at[node][c]) {
        live[n++] = place(node) + 2 * c;
      }
    }
    liveStart[node + 1] = n;
  }

  private void leave(int node) {
    for (int o = 0; o < stretch.outletTo[node].length; o++) {
      int target = stretch.outletTo[node][o];
      boolean[] there = target < 0 ? in[-1 - target] : at[target];
      for (int c = 0; c < components; c++) {
        if (at[node][c] && (o == stretch.restOutlet[node] || stretch.takes[node][o][c] > 0)) {
          there[c] = true;
          component[edges] = c;
          from[edges] = place(node) + 2 * c;
          to[edges++] = (target >= 0 && stretch.returns ? nowhere() : place(target)) + 2 * c;
        }
      }
      edgeStart[outletStart[node] + o + 1] = edges;
    }
    if (stretch.collects[node] < 1) {
      for (int c = 0; c < components; c++) {
        in[stretch.dustSink[node]][c] |= at[node][c];
      }
    }
  }

  private int[] list(boolean[] which) {
    int[] list = new int[components];
    int n = 0;
    for (int c = 0; c < components; c++) {
      if (which[c]) {
        list[n++] = c;
      }
    }
    return Arrays.copyOf(list, n);
  }
}
