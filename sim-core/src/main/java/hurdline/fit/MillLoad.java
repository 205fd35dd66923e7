package hurdline.fit;

import hurdline.fit.MillDays.Day;
import hurdline.fit.MillDays.Hour;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a mill took for a tonne on one screen, from the hourly readings of days on that screen.
 *
 * <p>In an hour of k kWh in which the mill was up for h, a mill that is fed fully or waits milled
 * with P·(k − p·h)/(P − p) of them, P its full load and p its draw without material; one that is
 * fed evenly with k − p·s, s the time for which a logged stop held its line. A bin that has
 * something in it feeds the mill fully, an empty one as evenly as material comes, which is less: so
 * readings below some draw are of an even feed and those above it of waits. Which draw no record
 * says. Each share of the readings is tried in turn, from none to all, and weighed by the
 * likelihood of what the days leave over: exp(−(S − S₀)/2σ²), S the sum of squares of t − x/e over
 * n days, x their kWh of milling, S₀ the least S and σ² = S₀/(n − 2). Where most readings lie a
 * little below full load, all k may be milling too, with a full load that differs from day to day.
 * Where days are too alike to tell, all weigh the same and the error says so.
 *
 * @param error standard error of {@code kWhPerT}
 * @param waits weight of the shares below all: that below full load it waited in some hours
 * @param days that it rests on; those unlike the others are left out
 */
record MillLoad(double kWhPerT, double error, double waits, int days) {
  /** Of all readings so many shares are tried as those of an even feed. */
  private static final int STEPS = 40;

  /** Between these shares of a full load a mill may be fed fully with a load that varies. */
  private static final double NEAR = 0.9;

  private static final double FULL = 0.99;

  /** Robust deviations from which on a day is unlike the others: a product nobody wrote down. */
  private static final double OFF = 5;

  private static final double OF_NORMAL = 1.4826;

  /** Packages are no finer, as a share of a day's mass. */
  private static final double FINEST = 0.004;

  static MillLoad of(List<Day> days, int screen, double fullKW, double idleKW) {
    List<Day> like = like(days, screen, fullKW, idleKW);
    List<Feed> feeds = feeds(like, fullKW);
    int n = like.size();
    Ratio[] energy = new Ratio[feeds.size()];
    double[] squares = new double[feeds.size()];
    for (int i = 0; i < feeds.size(); i++) {
      double[][] pairs = pairs(like, screen, fullKW, idleKW, feeds.get(i));
      energy[i] = Ratio.of(pairs);
      double e = energy[i].value();
      squares[i] = Arrays.stream(pairs).mapToDouble(of -> Math.pow(of[1] - of[0] / e, 2)).sum();
    }
    double least = Arrays.stream(squares).min().orElseThrow();
    double variance = Math.max(least, n * Math.pow(FINEST * meanT(like, screen), 2)) / (n - 2);
    double[] weight =
        Arrays.stream(squares).map(s -> Math.exp(-(s - least) / 2 / variance)).toArray();
    double all = Arrays.stream(weight).sum();
    double mean = 0;
    double waits = 0;
    for (int i = 0; i < weight.length; i++) {
      mean += weight[i] / all * energy[i].value();
      waits += Double.isInfinite(feeds.get(i).evenBelowKW()) ? 0 : weight[i] / all;
    }
    double spread = 0;
    for (int i = 0; i < weight.length; i++) {
      double off = energy[i].value() - mean;
      spread += weight[i] / all * (off * off + energy[i].error() * energy[i].error());
    }
    return new MillLoad(mean, Math.sqrt(spread), waits, n);
  }

  /**
   * How a mill may be fed.
   *
   * @param evenBelowKW readings below it are of an even feed
   * @param standsWithLine whether the feed stops when a logged stop holds the line
   */
  record Feed(double evenBelowKW, boolean standsWithLine) {
    static Feed full() {
      return new Feed(0, true);
    }

    static Feed even() {
      return new Feed(Double.POSITIVE_INFINITY, true);
    }
  }

  private static List<Feed> feeds(List<Day> days, double fullKW) {
    double[] kW =
        days.stream()
            .flatMap(day -> day.hours().stream())
            .filter(hour -> hour.upH() > 0)
            .mapToDouble(MillLoad::drawKW)
            .sorted()
            .toArray();
    List<Feed> feeds = new ArrayList<>(List.of(Feed.full(), Feed.even()));
    double middleKW = kW[kW.length / 2];
    if (middleKW > NEAR * fullKW && middleKW < FULL * fullKW) {
      feeds.add(new Feed(Double.POSITIVE_INFINITY, false));
    }
    for (int i = 1; i < STEPS; i++) {
      feeds.add(new Feed(kW[kW.length * i / STEPS], true));
    }
    return feeds;
  }

  private static double drawKW(Hour hour) {
    return hour.kWh() / hour.upH();
  }

  /** kWh of a day that were milling. */
  static double milling(Day day, double fullKW, double idleKW, Feed feed) {
    double milled = 0;
    for (Hour hour : day.hours()) {
      boolean isEven = hour.upH() > 0 && drawKW(hour) < feed.evenBelowKW();
      double kWh =
          isEven
              ? hour.kWh() - (feed.standsWithLine() ? idleKW * hour.stoodH() : 0)
              : fullKW * (hour.kWh() - idleKW * hour.upH()) / (fullKW - idleKW);
      milled += Math.max(0, Math.min(hour.kWh(), kWh));
    }
    return milled;
  }

  private static double[][] pairs(
      List<Day> days, int screen, double fullKW, double idleKW, Feed feed) {
    return days.stream()
        .map(day -> new double[] {milling(day, fullKW, idleKW, feed), day.t()[screen]})
        .toArray(double[][]::new);
  }

  private static double meanT(List<Day> days, int screen) {
    return days.stream().mapToDouble(day -> day.t()[screen]).average().orElse(0);
  }

  /** Days on which the kWh for a tonne lie near the others', whichever the feed was. */
  private static List<Day> like(List<Day> days, int screen, double fullKW, double idleKW) {
    boolean[] isLike = new boolean[days.size()];
    for (Feed feed : List.of(Feed.full(), Feed.even())) {
      double[] each =
          Arrays.stream(pairs(days, screen, fullKW, idleKW, feed))
              .mapToDouble(of -> of[0] / of[1])
              .toArray();
      double middle = median(each);
      double[] off = Arrays.stream(each).map(one -> Math.abs(one - middle)).toArray();
      double most = OFF * Math.max(FINEST * middle, OF_NORMAL * median(off));
      IntStream.range(0, off.length).forEach(i -> isLike[i] |= off[i] <= most);
    }
    return IntStream.range(0, days.size()).filter(i -> isLike[i]).mapToObj(days::get).toList();
  }

  private static double median(double[] of) {
    double[] rising = of.clone();
    Arrays.sort(rising);
    int n = rising.length;
    return n == 0 ? 0 : (rising[(n - 1) / 2] + rising[n / 2]) / 2;
  }
}
