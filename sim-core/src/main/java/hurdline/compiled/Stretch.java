package hurdline.compiled;

/**
 * All that the material of one draw reaches before it comes to rest, compiled: a directed graph of
 * nodes with shares on its edges.
 *
 * <p>Node 0 is where the draw enters: the feeder itself, or the bin that is drawn from (then {@link
 * #machine} is −1 and the node limits nothing). In a stretch without returns nodes stand in flow
 * order, so that one pass over them carries the material through. Sinks are where material leaves
 * the stretch. All arrays are read only.
 */
public final class Stretch {

  /** What a sink is. */
  public enum Sink {
    /** A product that material reaches without a filler or press. */
    PILED,
    /** A product in the filler or press of {@link #sinkNode}. */
    PACKED,
    /**
     * The product of the screen that is in mill {@link #sinkTarget}, in the filler of {@link
     * #sinkNode}.
     */
    PACKED_FROM_MILL,
    WASTE,
    /** What a cyclone lets go. */
    DUST,
    /** Bin {@link #sinkTarget}. */
    BIN
  }

  public final int line;
  public final int nodes;
  public final boolean returns;

  /** [node] machine number, −1 for a bin as entry. */
  public final int[] machine;

  /** Nodes by number of machines between the entry and them, then by name. */
  public final int[] nearest;

  /** [node] machines between the entry and it, the node itself counted, the entry at 0. */
  public final int[] distance;

  /** [node] the step's own limit on inflow, kg/s; infinite where it has none. */
  public final double[] rateKgPerS;

  public final Polyline[] rateByMoisture;

  /** [node][attribute]. */
  public final Polyline[][] rateByAttribute;

  /** [node][k] what breaks into what by which share. */
  public final int[][] breaksFrom;

  public final int[][] breaksInto;
  public final double[][] breaksShare;

  /** [node] share of the inflow's water that goes to the air. */
  public final double[] dries;

  /** [node] share that a cyclone keeps; 1 for all others. */
  public final double[] collects;

  /** [node] sink of what a cyclone lets go, or −1. */
  public final int[] dustSink;

  /** [node][outlet] a node number, or −1 − sink. */
  public final int[][] outletTo;

  /** [node][outlet][component] share taken. */
  public final double[][][] takes;

  /** [node] outlet that gets the rest. */
  public final int[] restOutlet;

  /** [node][outlet][component], null where an outlet has no corrections. */
  public final Polyline[][][] byMoisture;

  /** [node][outlet][attribute][component], null likewise. */
  public final Polyline[][][][] byAttribute;

  public final int sinks;
  public final Sink[] sinkKind;

  /** [sink] product, mill or bin number; −1 where there is none. */
  public final int[] sinkTarget;

  /** [sink] node of the filler or press, −1 elsewhere. */
  public final int[] sinkNode;

  Stretch(Builder from) {
    line = from.line;
    nodes = from.nodes;
    returns = from.returns;
    machine = from.machine;
    nearest = from.nearest;
    distance = from.distance;
    rateKgPerS = from.rateKgPerS;
    rateByMoisture = from.rateByMoisture;
    rateByAttribute = from.rateByAttribute;
    breaksFrom = from.breaksFrom;
    breaksInto = from.breaksInto;
    breaksShare = from.breaksShare;
    dries = from.dries;
    collects = from.collects;
    dustSink = from.dustSink;
    outletTo = from.outletTo;
    takes = from.takes;
    restOutlet = from.restOutlet;
    byMoisture = from.byMoisture;
    byAttribute = from.byAttribute;
    sinks = from.sinkKind.size();
    sinkKind = from.sinkKind.toArray(Sink[]::new);
    sinkTarget = from.sinkTarget.stream().mapToInt(Integer::intValue).toArray();
    sinkNode = from.sinkNode.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Node of a machine, or −1. */
  public int nodeOf(int machineIndex) {
    for (int node = 0; node < nodes; node++) {
      if (machine[node] == machineIndex) {
        return node;
      }
    }
    return -1;
  }

  /** The arrays while they are being filled. */
  static final class Builder {
    int line;
    int nodes;
    boolean returns;
    int[] machine;
    int[] nearest;
    int[] distance;
    double[] rateKgPerS;
    Polyline[] rateByMoisture;
    Polyline[][] rateByAttribute;
    int[][] breaksFrom;
    int[][] breaksInto;
    double[][] breaksShare;
    double[] dries;
    double[] collects;
    int[] dustSink;
    int[][] outletTo;
    double[][][] takes;
    int[] restOutlet;
    Polyline[][][] byMoisture;
    Polyline[][][][] byAttribute;
    final java.util.List<Sink> sinkKind = new java.util.ArrayList<>();
    final java.util.List<Integer> sinkTarget = new java.util.ArrayList<>();
    final java.util.List<Integer> sinkNode = new java.util.ArrayList<>();

    int sink(Sink kind, int target, int node) {
      for (int s = 0; s < sinkKind.size(); s++) {
        if (sinkKind.get(s) == kind && sinkTarget.get(s) == target && sinkNode.get(s) == node) {
          return s;
        }
      }
      sinkKind.add(kind);
      sinkTarget.add(target);
      sinkNode.add(node);
      return sinkKind.size() - 1;
    }
  }
}
