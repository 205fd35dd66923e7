package hurdline.capacity;

import hurdline.random.Distribution;

/** Means of what is drawn, an amount below 0 counted as 0 as in a replication. */
final class Means {
  private Means() {}

  static double of(Distribution amount) {
    return amount.meanWithin(0, Double.POSITIVE_INFINITY);
  }
}
