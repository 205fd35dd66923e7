package hurdline.account;

import hurdline.compiled.MeterSchedule;
import java.util.Arrays;

/**
 * Electricity: each machine's energy, the plant's by price, and the highest mean over a clock
 * quarter-hour of every period and demand window.
 *
 * <p>Power is constant between two changes, so the quarter-hours that a span of constant power
 * covers whole all have that power as their mean; only the two it shares with its neighbours are
 * summed up. No event is spent on a quarter-hour. A span of constant power is cut where the meter's
 * schedule has a border, so the energy at each price is exact.
 */
public final class PowerBooks {
  private static final double QUARTER_S = MeterSchedule.quarterS();

  private final MeterSchedule meter;
  private final double[] watts;
  private final double[] sinceS;
  private final double[] joules;
  private final double[] priceJ;
  private final double[][] periodPeakW; // [period][window]
  private boolean changed; // since the plant's power was last worked out
  private double totalW;
  private double totalSinceS;
  private double totalJ;
  private double quarterJ;
  private int period;
  private int span; // of the meter's schedule

  /**
   * @param periods how many periods peaks are kept for
   */
  public PowerBooks(int machines, int periods, MeterSchedule meter) {
    this.meter = meter;
    watts = new double[machines];
    sinceS = new double[machines];
    joules = new double[machines];
    priceJ = new double[meter.prices()];
    periodPeakW = new double[periods][meter.windowCount()];
  }

  public void reset() {
    Arrays.fill(watts, 0);
    Arrays.fill(sinceS, 0);
    Arrays.fill(joules, 0);
    Arrays.fill(priceJ, 0);
    for (double[] peaksW : periodPeakW) {
      Arrays.fill(peaksW, 0);
    }
    changed = true;
    totalW = 0;
    totalSinceS = 0;
    totalJ = 0;
    quarterJ = 0;
    period = 0;
    span = 0;
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
    while (nowS > meter.toS[span] && span + 1 < meter.toS.length) {
      advanceWithinSpan(meter.toS[span]);
      span++;
    }
    advanceWithinSpan(nowS);
  }

  private void advanceWithinSpan(double nowS) {
    double fromS = totalSinceS;
    double powerW = totalW + meter.baseW[span];
    double drawnJ = powerW * (nowS - fromS);
    totalJ += drawnJ;
    priceJ[meter.price[span]] += drawnJ;
    double endS = (Math.floor(fromS / QUARTER_S) + 1) * QUARTER_S;
    if (nowS < endS) {
      quarterJ += drawnJ;
    } else {
      quarterEnds(quarterJ + powerW * (endS - fromS));
      double lastS = Math.floor(nowS / QUARTER_S) * QUARTER_S;
      if (lastS > endS) {
        quarterEnds(powerW * QUARTER_S);
      }
      quarterJ = powerW * (nowS - lastS);
    }
    totalSinceS = nowS;
  }

  private void quarterEnds(double energyJ) {
    double[] peaksW = periodPeakW[period];
    for (int window : meter.windows[span]) {
      peaksW[window] = Math.max(peaksW[window], energyJ / QUARTER_S);
    }
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

  /** What was drawn at one of the meter's prices. */
  public double pricedJ(int price) {
    return priceJ[price];
  }

  /** Highest quarter-hour mean of a period. */
  public double peakW(int which) {
    return periodPeakW[which][0];
  }

  /** Highest quarter-hour mean of a period within one of the meter's windows. */
  public double peakW(int which, int window) {
    return periodPeakW[which][window];
  }
}
