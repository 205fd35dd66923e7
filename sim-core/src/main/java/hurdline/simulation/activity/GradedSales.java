package hurdline.simulation.activity;

import hurdline.plant.Product;
import java.util.Arrays;
import java.util.List;

/** Masses of all packages of a product, each times its factor. */
final class GradedSales {
  double fitKg; // without the factor
  final double[] fit; // by order, the rest last
  final double[] fitOfPoint; // the same with a percentage point more in each package
  final double[] fitOfLine;
  final double[] tooWetOfLine;
  double tooWet;
  double tooWetOfPoint;
  int packages;
  double meanShare;
  double squares; // sum of squared deviations from the mean share

  GradedSales(int orders, int lines) {
    fit = new double[orders + 1];
    fitOfPoint = new double[orders + 1];
    fitOfLine = new double[lines];
    tooWetOfLine = new double[lines];
  }

  void set(GradedSales other) {
    fitKg = other.fitKg;
    copy(other.fit, fit);
    copy(other.fitOfPoint, fitOfPoint);
    copy(other.fitOfLine, fitOfLine);
    copy(other.tooWetOfLine, tooWetOfLine);
    tooWet = other.tooWet;
    tooWetOfPoint = other.tooWetOfPoint;
  }

  private static void copy(double[] from, double[] to) {
    System.arraycopy(from, 0, to, 0, to.length);
  }

  void reset() {
    fitKg = 0;
    Arrays.fill(fit, 0);
    Arrays.fill(fitOfPoint, 0);
    Arrays.fill(fitOfLine, 0);
    Arrays.fill(tooWetOfLine, 0);
    tooWet = 0;
    tooWetOfPoint = 0;
    packages = 0;
    meanShare = 0;
    squares = 0;
  }

  void add(BegunPackage one, double factor, double factorOfPoint, List<Product.Order> orders) {
    double all = 0;
    for (int l = 0; l < fitOfLine.length; l++) {
      all += one.fitKg[l];
      fitOfLine[l] += factor * one.fitKg[l];
      tooWetOfLine[l] += factor * one.tooWetKg[l];
      tooWet += factor * one.tooWetKg[l];
      tooWetOfPoint += factorOfPoint * one.tooWetKg[l];
    }
    shareOut(all, factor, factorOfPoint, orders);
    fitKg += all;
  }

  /** Fills orders in turn from where the last package has left off. */
  private void shareOut(
      double kg, double factor, double factorOfPoint, List<Product.Order> orders) {
    double left = kg;
    double untilKg = 0;
    for (int at = 0; at < fit.length; at++) {
      boolean last = at == orders.size();
      untilKg = last ? Double.POSITIVE_INFINITY : untilKg + orders.get(at).massKg();
      double taken = last ? left : Math.min(left, Math.max(0, untilKg - (fitKg + kg - left)));
      fit[at] += factor * taken;
      fitOfPoint[at] += factorOfPoint * taken;
      left -= taken;
    }
  }

  void count(double share) {
    packages++;
    double off = share - meanShare;
    meanShare += off / packages;
    squares += off * (share - meanShare);
  }
}
