package hurdline.flow;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Lot;
import hurdline.flow.rates.IndexSet;
import hurdline.flow.rates.RateSolver;
import java.util.Arrays;

/**
 * All heads and bins of a plant between two events: what each draws, at which rate, and what lies
 * in the bins.
 *
 * <p>Work says what stands, which heads are in their hours and what the feeds draw; {@link #solve}
 * then finds rates on which limits, bins and blends agree, and {@link #advance} carries a stretch
 * of time at these rates into the bins. Amounts follow from the mass that each head has drawn and
 * from nothing else, so that books balance to rounding.
 *
 * <p>Hot path: no allocation after construction but for the growth of a bin's ring of lots.
 *
 * <p>One file because rates, contents and amounts change together at an event, and order matters.
 */
public final class Network {
  /** Blends that differ by no more than this agree with their rates. */
  private static final double SETTLED = 1e-13;

  private static final int MOST_BLEND_ROUNDS = 500;

  /** Told before a head's lot changes, so that what it has drawn can be booked. */
  public interface LotBooks {
    void lotEnds(int head);
  }

  private final CompiledLines layout;
  private final LotBooks books;
  private final int heads;
  private final RateSolver solver;
  private final HeadLoads[] loads;
  private final Limits limits;
  private final Bins bins;
  private final AffectedHeads involved;
  private final LimitSharing contest;
  private final Blends blends;
  private final Passage passage;
  private final NetFlows netFlows;
  private final Inflows inflows;

  /** What work says of machines, heads and bins. */
  public final RateInputs asked;

  /**
   * [machine] the screen that is in each mill; written by work, which then calls {@link #remap}.
   */
  public final int[] screen;

  /** [head] what is left of a feed's lot, kg; written by work at each new lot. */
  public final double[] restKg;

  /** [head] mass drawn since its lot began, kg. */
  public final double[] drawnKg;

  /** [machine] inflow, kg/s, and the share of its limit that is used (0 without a limit). */
  public final double[] inflowKgPerS;

  public final double[] usedShare;

  /** Heads and bins that have moved since {@link #seen} was last called. */
  public final IndexSet moved;

  public final IndexSet binMoved;

  public Network(CompiledLines layout, LotBooks books) {
    this.layout = layout;
    this.books = books;
    heads = layout.heads;
    int contested = layout.shared.length + 2 * layout.bins;
    solver = new RateSolver(heads, contested, layout.precedence);
    loads = new HeadLoads[heads];
    for (int h = 0; h < heads; h++) {
      loads[h] = new HeadLoads(layout, layout.stretch[h]);
    }
    limits = new Limits(layout);
    bins = new Bins(layout);
    asked = new RateInputs(layout);
    screen = new int[layout.machines];
    restKg = new double[heads];
    drawnKg = new double[heads];
    involved = new AffectedHeads(layout, asked, bins, solver.reachKgPerS());
    contest = new LimitSharing(layout, asked, solver, loads, limits, bins, involved);
    blends = new Blends(layout, solver, loads, bins);
    passage = new Passage(layout, loads, bins);
    netFlows = new NetFlows(layout, this, solver, loads, contest, blends, bins);
    inflows = new Inflows(layout, solver, loads, limits, netFlows, involved);
    inflowKgPerS = inflows.kgPerS;
    usedShare = inflows.usedShare;
    moved = inflows.moved;
    binMoved = inflows.binMoved;
  }

  /** Everything up, off and unloaded, bins empty or as full as they are on the first day. */
  public void reset() {
    asked.reset();
    Arrays.fill(screen, 0);
    Arrays.fill(restKg, 0);
    Arrays.fill(drawnKg, 0);
    inflows.reset();
    Arrays.fill(solver.rateKgPerS(), 0);
    bins.reset();
    for (int h : layout.headOrder) {
      standIn(h);
    }
    for (int b = 0; b < layout.bins; b++) {
      if (layout.opensAt[b] > 0) {
        open(b);
      }
    }
  }

  /** A bin that is not empty holds what typical lots bring, or the crop where none reach it. */
  private void open(int bin) {
    if (!blends.typical(bin)) {
      Lot lot = loads[layout.draws[bin][0]].lot;
      double[] fresh = bins.fresh();
      System.arraycopy(lot.dry, 0, fresh, 0, lot.dry.length);
      System.arraycopy(lot.water, 0, fresh, lot.dry.length, lot.water.length);
      lot.mixAttributes(fresh, 1);
    }
    bins.arrives(bin);
    bins.open(bin, layout.opensAt[bin]);
  }

  /** A typical lot, so that reaches are defined before anything has come. */
  private void standIn(int head) {
    HeadLoads lot = loads[head];
    int bin = layout.headBin[head];
    if (bin < 0 || !blends.typical(bin)) {
      layout.typicalLot(layout.headLine[head], lot.lot);
    } else {
      bins.arrives(bin);
      bins.handOn(bin, lot);
    }
    spread(head);
  }

  /** The lot that a head draws; to be filled with a feed's new one. */
  public Lot lot(int head) {
    return loads[head].lot;
  }

  /** A feed draws another lot from now on, which is written already. */
  public void newLot(int head, double massKg) {
    restKg[head] = massKg;
    spread(head);
  }

  /** To be called before {@link #lot} is written, and before a screen changes. */
  public void endLot(int head) {
    books.lotEnds(head);
    drawnKg[head] = 0;
  }

  /** A mill has another screen: loads and limits of these heads are worked out anew. */
  public void remap(int[] changedHeads) {
    for (int h : changedHeads) {
      spread(h);
    }
  }

  /** For tests: the solver is asked even where nobody can compete. */
  public void withoutShortCuts() {
    contest.alwaysMayCompete();
  }

  /** Nothing can be taken as it was. */
  public void allMoved() {
    inflows.allMoved();
  }

  /**
   * Heads that what was asked since the last solve can change; what it says stands until the next
   * one.
   */
  IndexSet involved() {
    return involved.heads;
  }

  /** Finds whom a cause may concern that has changed, though no rate need have. */
  public void involve() {
    involved.find();
  }

  /** All that has moved is taken note of. */
  public void seen() {
    inflows.seen();
    involved.clear();
  }

  private void spread(int head) {
    moved.add(head);
    asked.heads.add(head);
    loads[head].spread(screen);
    limits.set(head, loads[head], screen);
    contest.loadsChanged(head);
    blends.loadsChanged(head);
  }

  /**
   * Finds the rates of all that has been asked anew since they were last found, and of what that
   * involves.
   */
  public void solve() {
    for (int round = 0; round < MOST_BLEND_ROUNDS; round++) {
      handOnBlends();
      contest.writeReaches();
      involved.find();
      if (contest.writeLimits()) {
        solver.solve(involved.heads);
      } else {
        solver.runFree(involved.heads);
      }
      if (!blendsMoved() && !settle()) {
        asked.heads.clear();
        return;
      }
    }
    throw new IllegalStateException("the blends of the empty bins do not settle");
  }

  /** From above to below: what arrives at each bin, and what an empty one hands on. */
  private void handOnBlends() {
    for (int b : layout.binOrder) {
      if (bins.fill[b] == Bins.Fill.EMPTY
          && (involved.bin.has(b) || blends.isStale(b))
          && blends.atRates(b)
          && Blends.differ(bins.prepared(), bins.blend[b]) > SETTLED) {
        bins.arrives(b);
        handOn(b);
      }
    }
  }

  private void handOn(int bin) {
    for (int h : layout.draws[bin]) {
      endLot(h);
      bins.handOn(bin, loads[h]);
      spread(h);
    }
  }

  private boolean blendsMoved() {
    boolean moved = false;
    for (int b : layout.binOrder) {
      if (bins.fill[b] == Bins.Fill.EMPTY
          && involved.bin.has(b)
          && layout.producers[b].length > 1
          && blends.atRates(b)) {
        moved |= Blends.differ(bins.prepared(), bins.blend[b]) > SETTLED;
      }
    }
    return moved;
  }

  /**
   * From rates to bins that leave full or empty, net flows, and what hangs on them.
   *
   * @return whether a bin hands on another lot now, so that the rates must be found again
   */
  private boolean settle() {
    boolean renamed = false;
    for (int b : layout.binOrder) {
      if (involved.bin.has(b) && netFlows.settle(b)) {
        handOn(b);
        renamed = true;
      }
    }
    if (renamed) {
      return true;
    }
    inflows.follow();
    return false;
  }

  /**
   * Carries a stretch of time into the bins.
   *
   * @param dtS its length
   * @param planned [head] whether the head uses up its lot at the end of it; read
   */
  public void advance(double dtS, boolean[] planned) {
    passage.carry(dtS, solver.rateKgPerS(), planned, restKg, drawnKg);
  }

  /** Seconds until a bin's oldest lot is used up at the present rates; infinite if it is not. */
  public double untilLotEndsS(int head) {
    return netFlows.untilLotEndsS(head);
  }

  /** The oldest lot of a head's bin is used up. */
  public void lotUsedUp(int head) {
    int bin = layout.headBin[head];
    for (int h : layout.draws[bin]) {
      endLot(h);
    }
    bins.dropFront(bin);
    handOn(bin);
  }

  /** Seconds until a bin's level next crosses full, start or stop; infinite if it does not. */
  public double untilLevelS(int bin) {
    return netFlows.untilLevelS(bin);
  }

  /** A level that {@link #untilLevelS} spoke of is reached. */
  public void levelReached(int bin) {
    asked.ofBin(bin);
    netFlows.levelReached(bin);
  }

  /** Sets levels anew from the lots. */
  public void sumLots() {
    bins.sumLots();
  }

  boolean hasNothing(int head) {
    return contest.hasNothing(head);
  }

  int alongsideCause(int head) {
    return contest.alongsideCause(head);
  }

  public double rateKgPerS(int head) {
    return solver.rateKgPerS()[head];
  }

  double reachOf(int head) {
    return solver.reachKgPerS()[head];
  }

  int heldBy(int head) {
    return solver.heldBy()[head];
  }

  boolean isHolder(int limit, int head) {
    return solver.isHolder(limit, head);
  }

  HeadLoads loads(int head) {
    return loads[head];
  }

  double limitKgPerS(int head, int node) {
    return limits.kgPerS[head][node];
  }

  public boolean isFull(int bin) {
    return bins.fill[bin] == Bins.Fill.FULL;
  }

  public boolean isEmpty(int bin) {
    return bins.fill[bin] == Bins.Fill.EMPTY;
  }

  /** Mass in a bin, kg. */
  public double massKg(int bin) {
    return bins.massKg[bin];
  }

  public double dryKg(int bin, int component) {
    return bins.dryKg(bin, component);
  }

  public double waterKg(int bin) {
    return bins.waterKg(bin);
  }

  /** As-is mass that a head brings to a node of its stretch per kg drawn. */
  public double load(int head, int node) {
    return loads[head].load[node];
  }

  public double loadDry(int head, int node) {
    return loads[head].loadDry[node];
  }

  /** What the mill at a node may take as its motor allows it, kg/s. */
  public double motorLimitKgPerS(int head, int node) {
    return limits.motorLimitKgPerS[head][node];
  }

  /**
   * As-is mass that leaves by each outlet, per kg drawn, from a node's {@link #outletStart} on;
   * read only.
   */
  public double[] ways(int head) {
    return loads[head].way;
  }

  public int outletStart(int head, int node) {
    return loads[head].outletStart(node);
  }

  /** As-is mass that a head brings to a sink of its stretch per kg drawn. */
  public double sinkKg(int head, int sink) {
    return loads[head].sinkMass[sink];
  }

  /** Components that can reach a sink with the present lot; read only. */
  public int[] landed(int head, int sink) {
    return loads[head].landed(sink);
  }

  /**
   * Per kg drawn, dry matter by component, the water of each behind it, from {@link #sinkAt} on;
   * read only.
   */
  public double[] sinkKg(int head) {
    return loads[head].kg;
  }

  public int sinkAt(int head, int sink) {
    return loads[head].sinkAt(sink);
  }

  public double driedPerKg(int head) {
    return loads[head].dried;
  }

  /** [component] dry matter that breaking adds per kg drawn; read only. */
  public double[] broken(int head) {
    return loads[head].broken;
  }
}
