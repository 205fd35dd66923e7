package hurdline.account;

import java.util.Arrays;

/**
 * What becomes of bales by the place that they lay in: age and moisture when they are set on the
 * table, and loss.
 */
public final class PlaceBooks {
  private final int[] lifted;
  private final int crops;
  private final int[] came; // [place * crops + crop]
  private final int[] damp;
  private final double[] ageS;
  private final double[] liftedKg;
  private final double[] liftedWaterKg;
  private final double[] lostKg;
  private final double[] lostDryKg;

  PlaceBooks(int places, int crops) {
    this.crops = crops;
    came = new int[places * crops];
    lifted = new int[places];
    damp = new int[places];
    ageS = new double[places];
    liftedKg = new double[places];
    liftedWaterKg = new double[places];
    lostKg = new double[places];
    lostDryKg = new double[places];
  }

  void reset() {
    Arrays.fill(came, 0);
    Arrays.fill(lifted, 0);
    Arrays.fill(damp, 0);
    Arrays.fill(ageS, 0);
    Arrays.fill(liftedKg, 0);
    Arrays.fill(liftedWaterKg, 0);
    Arrays.fill(lostKg, 0);
    Arrays.fill(lostDryKg, 0);
  }

  /** A bale that was weighed in comes to lie in the place. */
  public void came(int place, int crop) {
    came[place * crops + crop]++;
  }

  /**
   * Bales of the crop that came; what lay there at time zero and what was put back is not in it.
   */
  public int cameTo(int place, int crop) {
    return came[place * crops + crop];
  }

  /** A bale leaves the place for the table. */
  public void lifted(int place, double baleAgeS, double massKg, double moisture, boolean isDamp) {
    lifted[place]++;
    damp[place] += isDamp ? 1 : 0;
    ageS[place] += baleAgeS;
    liftedKg[place] += massKg;
    liftedWaterKg[place] += massKg * moisture;
  }

  public void lost(int place, double massKg, double moisture) {
    lostKg[place] += massKg;
    lostDryKg[place] += massKg * (1 - moisture);
  }

  /** Mean age when set on the table, s; NaN if none was. */
  public double meanAgeS(int place) {
    return lifted[place] > 0 ? ageS[place] / lifted[place] : Double.NaN;
  }

  /** Water over mass of all that was set on the table; NaN if nothing was. */
  public double moisture(int place) {
    return liftedKg[place] > 0 ? liftedWaterKg[place] / liftedKg[place] : Double.NaN;
  }

  /** Share of damp ones among those set on the table; NaN if none was. */
  public double damp(int place) {
    return lifted[place] > 0 ? (double) damp[place] / lifted[place] : Double.NaN;
  }

  public double lostKg(int place) {
    return lostKg[place];
  }

  public double lostDryKg(int place) {
    return lostDryKg[place];
  }
}
