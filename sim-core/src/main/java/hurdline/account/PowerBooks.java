package hurdline.account;

import java.util.Arrays;

/**
 * Electricity: each machine's energy, and the highest mean over a clock quarter-hour of every
 * period.
 *
 * <p>Power is constant between two changes, so the quarter-hours that a span of constant power
 * covers whole all have that power as their mean; only the two it shares with its neighbours are
 * summed up. No event is spent on a quarter-hour.
 */
public final class PowerBooks {
  private static final double QUARTER_S = 900;

  private final double[] watts;
  private final double[] sinceS;
  private final double[] joules;
  private final double[] periodPeakW;
  private boolean changed; // since the plant's power was last worked out
  private double totalW;
  private double totalSinceS;
  private double totalJ;
  private double quarterJ;
  private int period;

  /**
   * @param periods how many periods peaks are kept for
   */
  public PowerBooks(int machines, int periods) {
    watts = new double[machines];
    sinceS = new double[machines];
    joules = new double[machines];
    periodPeakW = new double[periods];
  }

  public void reset() {
    Arrays.fill(watts, 0);
    Arrays.fill(sinceS, 0);
    Arrays.fill(joules, 0);
    Arrays.fill(periodPeakW, 0);
    changed = true;
    totalW = 0;
    totalSinceS = 0;
    totalJ = 0;
    quarterJ = 0;
    period = 0;
  }

  /**
   * A machine draws this from now on; {@link #total} is to be called after all machines are told.
   */
  public void draws(int machine, double now, double nowS) {
    if (watts[machine] != now) {
      joules[machine] += watts[machine] * (nowS - sinceS[machine]);
      sinceS[machine] = nowS;
      watts[machine] = now;
      changed = true;
    }
  }

  /** Works out the plant's power after machines were told. */
  public void total(double nowS) {
    if (!changed) {
      return;
    }
    changed = false;
    double sum = sum();
    if (sum != totalW) {
      advance(nowS);
      totalW = sum;
    }
  }

  /** In two sums side by side: one would wait for each addition before it began the next. */
  private double sum() {
    double even = 0;
    double odd = 0;
    int m = 0;
    for (; m + 1 < watts.length; m += 2) {
      even += watts[m];
      odd += watts[m + 1];
    }
    return even + odd + (m < watts.length ? watts[m] : 0);
  }

  private void advance(double nowS) {
    double fromS = totalSinceS;
    totalJ += totalW * (nowS - fromS);
    double endS = (Math.floor(fromS / QUARTER_S) + 1) * QUARTER_S;
    if (nowS < endS) {
      quarterJ += totalW * (nowS - fromS);
    } else {
      quarterEnds(quarterJ + totalW * (endS - fromS));
      double lastS = Math.floor(nowS / QUARTER_S) * QUARTER_S;
      if (lastS > endS) {
        quarterEnds(totalW * QUARTER_S);
      }
      quarterJ = totalW * (nowS - lastS);
    }
    totalSinceS = nowS;
  }

  private void quarterEnds(double energyJ) {
    periodPeakW[period] = Math.max(periodPeakW[period], energyJ / QUARTER_S);
  }

  /**
   * A period ends at a full quarter-hour: all is booked up to now, and what follows is of the next.
   */
  public void periodEnds(double nowS) {
    bookAll(nowS);
    if (period < periodPeakW.length - 1) {
      period++;
    }
  }

  /** Books all up to now; the running quarter-hour counts only when it is over. */
  public void bookAll(double nowS) {
    advance(nowS);
    for (int m = 0; m < watts.length; m++) {
      joules[m] += watts[m] * (nowS - sinceS[m]);
      sinceS[m] = nowS;
    }
  }

  /** Energy of a machine up to now. */
  public double joules(int machine, double nowS) {
    return joules[machine] + watts[machine] * (nowS - sinceS[machine]);
  }

  public double totalJ() {
    return totalJ;
  }

  /** Highest quarter-hour mean of a period. */
  public double peakW(int which) {
    return periodPeakW[which];
  }
}
