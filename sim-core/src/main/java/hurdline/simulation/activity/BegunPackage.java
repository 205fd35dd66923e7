package hurdline.simulation.activity;

import java.util.Arrays;

/** What a begun or a full package holds, at an instant since which the rates have held. */
final class BegunPackage {
  private double sinceS;
  double componentKg;
  double dryKg;
  double componentKgPerS;
  double dryKgPerS;
  final double[] fitKg; // by line, at the product's moisture basis
  final double[] tooWetKg;
  final double[] fitKgPerS;
  final double[] tooWetKgPerS;

  BegunPackage(int lines) {
    fitKg = new double[lines];
    tooWetKg = new double[lines];
    fitKgPerS = new double[lines];
    tooWetKgPerS = new double[lines];
  }

  void reset() {
    sinceS = 0;
    stand();
    empty();
  }

  void empty() {
    componentKg = 0;
    dryKg = 0;
    Arrays.fill(fitKg, 0);
    Arrays.fill(tooWetKg, 0);
  }

  void stand() {
    componentKgPerS = 0;
    dryKgPerS = 0;
    Arrays.fill(fitKgPerS, 0);
    Arrays.fill(tooWetKgPerS, 0);
  }

  void carry(double nowS) {
    double dtS = nowS - sinceS;
    sinceS = nowS;
    if (dryKgPerS > 0) {
      componentKg += componentKgPerS * dtS;
      dryKg += dryKgPerS * dtS;
      for (int l = 0; l < fitKg.length; l++) {
        fitKg[l] += fitKgPerS[l] * dtS;
        tooWetKg[l] += tooWetKgPerS[l] * dtS;
      }
    }
  }

  /** Mass at the product's moisture basis that is fit to sell. */
  double allFitKg() {
    double sum = 0;
    for (double kg : fitKg) {
      sum += kg;
    }
    return sum;
  }

  /** Mass at the product's moisture basis, fit to sell or not. */
  double allKg() {
    double sum = allFitKg();
    for (double kg : tooWetKg) {
      sum += kg;
    }
    return sum;
  }

  double share() {
    return dryKg > 0 ? Math.min(1, componentKg / dryKg) : 0;
  }
}
