package hurdline.account;

import java.util.Arrays;

/** Levels of bins over straight lines: means, peaks, and time full and empty. */
public final class BinBooks {
  private final double[] kgSeconds;
  private final double[] peakKg;
  private final double[] fullS;
  private final double[] emptyS;

  public BinBooks(int bins) {
    kgSeconds = new double[bins];
    peakKg = new double[bins];
    fullS = new double[bins];
    emptyS = new double[bins];
  }

  public void reset() {
    Arrays.fill(kgSeconds, 0);
    Arrays.fill(peakKg, 0);
    Arrays.fill(fullS, 0);
    Arrays.fill(emptyS, 0);
  }

  /** What lies in a bin as the horizon begins. */
  public void opens(int bin, double kg) {
    peakKg[bin] = kg;
  }

  /** A span in which the level went straight from one value to another. */
  public void span(int bin, double dtS, double fromKg, double toKg, boolean full, boolean empty) {
    kgSeconds[bin] += 0.5 * (fromKg + toKg) * dtS;
    peakKg[bin] = Math.max(peakKg[bin], toKg);
    if (full) {
      fullS[bin] += dtS;
    }
    if (empty) {
      emptyS[bin] += dtS;
    }
  }

  public double kgSeconds(int bin) {
    return kgSeconds[bin];
  }

  public double peakKg(int bin) {
    return peakKg[bin];
  }

  public double fullS(int bin) {
    return fullS[bin];
  }

  public double emptyS(int bin) {
    return emptyS[bin];
  }
}
