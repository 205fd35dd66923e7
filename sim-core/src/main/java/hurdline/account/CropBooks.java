package hurdline.account;

import java.util.Arrays;

/**
 * How long each machine was in each state for each crop. A machine changes hands a few times a
 * year, so what its states have come to is looked up only then, and costs nothing while it works.
 */
public final class CropBooks {
  private final int crops;
  private final int states;
  private final int[] owner; // one past the last crop where it is nobody's
  private final double[] markS; // [machine * states + state]
  private final double[] lastedS; // [(machine * (crops + 1) + crop) * states + state]

  public CropBooks(int machines, int crops, int states) {
    this.crops = crops;
    this.states = states;
    owner = new int[machines];
    markS = new double[machines * states];
    lastedS = new double[machines * (crops + 1) * states];
  }

  public void reset() {
    Arrays.fill(owner, crops);
    Arrays.fill(markS, 0);
    Arrays.fill(lastedS, 0);
  }

  /**
   * The machine is this crop's from now on.
   *
   * @param crop below 0 where it is nobody's
   * @param books of the states of all machines; booked up to now for this one
   */
  public void belongs(int machine, int crop, TimeBooks books, double nowS) {
    int now = crop < 0 ? crops : crop;
    if (owner[machine] != now) {
      books.book(machine, nowS);
      take(machine, books);
      owner[machine] = now;
    }
  }

  private void take(int machine, TimeBooks books) {
    int to = (machine * (crops + 1) + owner[machine]) * states;
    for (int s = 0; s < states; s++) {
      double lasted = books.lastedS(machine, s);
      lastedS[to + s] += lasted - markS[machine * states + s];
      markS[machine * states + s] = lasted;
    }
  }

  /** Takes in all that is booked, so that {@link #lastedS} is up to date. */
  public void takeAll(TimeBooks books) {
    for (int machine = 0; machine < owner.length; machine++) {
      take(machine, books);
    }
  }

  /** Seconds that a machine was in a state for a crop, as far as taken in. */
  public double lastedS(int machine, int crop, int state) {
    return lastedS[(machine * (crops + 1) + crop) * states + state];
  }
}
