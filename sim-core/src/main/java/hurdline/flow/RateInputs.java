package hurdline.flow;

import hurdline.compiled.CompiledLines;
import hurdline.flow.rates.IndexSet;
import java.util.Arrays;

/**
 * What work says of machines, heads and bins, and of which heads it has said something since rates
 * were last found.
 *
 * <p>{@link #on} and {@link #runsEmpty} are written as they are, since the calendar changes many at
 * once; {@link #all} is then to be called.
 */
public final class RateInputs {
  private final CompiledLines layout;

  /**
   * Heads of which something was asked anew: a machine of theirs stands or is up, their lot, their
   * bin's state.
   */
  final IndexSet heads;

  /** [machine] cause for which it takes nothing, −1 if it is up. */
  final int[] standing;

  /** [head] cause for which a feed has nothing to draw, −1 if it has. */
  final int[] without;

  /** [head] whether it is in its hours. */
  public final boolean[] on;

  /** [bin] whether it lets go of its last, start and stop levels ignored. */
  public final boolean[] runsEmpty;

  RateInputs(CompiledLines layout) {
    this.layout = layout;
    heads = new IndexSet(layout.heads);
    standing = new int[layout.machines];
    without = new int[layout.heads];
    on = new boolean[layout.heads];
    runsEmpty = new boolean[layout.bins];
  }

  /** Everything up and off, as on the first day. */
  void reset() {
    Arrays.fill(standing, -1);
    Arrays.fill(without, layout.causes.noBales);
    Arrays.fill(on, false);
    Arrays.fill(runsEmpty, false);
    all();
  }

  /** A machine takes nothing for this cause from now on; −1 if it is up. */
  public void stands(int machine, int cause) {
    standing[machine] = cause;
    heads.addEach(layout.headsOf[machine]);
    for (int line : layout.linesAlongside[machine]) {
      heads.add(layout.feedHead[line]);
    }
  }

  public int standing(int machine) {
    return standing[machine];
  }

  /** A feed has nothing to draw for this cause from now on; −1 if it has. */
  public void lacks(int head, int cause) {
    without[head] = cause;
    heads.add(head);
  }

  public int without(int head) {
    return without[head];
  }

  /** A bin has become full, or lets its draws begin or not. */
  void ofBin(int bin) {
    heads.addEach(layout.producers[bin]);
    heads.addEach(layout.draws[bin]);
  }

  /** Nothing can be taken as it was when rates are next found. */
  public void all() {
    heads.addAll();
  }
}
