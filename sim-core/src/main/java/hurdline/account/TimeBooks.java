package hurdline.account;

import java.util.Arrays;

/**
 * How long each of many things was in each of a few states; a thing is always in one state, or in
 * none (−1), for which nothing is booked.
 */
public final class TimeBooks {
  private final int states;
  private final int[] state;
  private final double[] sinceS;
  private final double[] lastedS;

  public TimeBooks(int things, int states) {
    this.states = states;
    state = new int[things];
    sinceS = new double[things];
    lastedS = new double[things * states];
  }

  public void reset() {
    Arrays.fill(state, -1);
    Arrays.fill(sinceS, 0);
    Arrays.fill(lastedS, 0);
  }

  /** The thing is in this state from now on. */
  public void is(int thing, int now, double nowS) {
    if (state[thing] != now) {
      book(thing, nowS);
      state[thing] = now;
    }
  }

  public int state(int thing) {
    return state[thing];
  }

  /** Books one thing up to now. */
  void book(int thing, double nowS) {
    if (state[thing] >= 0) {
      lastedS[thing * states + state[thing]] += nowS - sinceS[thing];
    }
    sinceS[thing] = nowS;
  }

  /** Books all up to now, so that {@link #lastedS} is up to date. */
  public void bookAll(double nowS) {
    for (int thing = 0; thing < state.length; thing++) {
      book(thing, nowS);
    }
  }

  /** Seconds that a thing was in a state, as far as booked. */
  public double lastedS(int thing, int which) {
    return lastedS[thing * states + which];
  }
}
