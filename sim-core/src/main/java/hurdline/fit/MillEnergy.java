package hurdline.fit;

import hurdline.plant.Machine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Energy of a mill by screen: kWh = Σ aₛ·tₛ + Σ pₛ·Hₛ + Σ qₛ·hₛ over days, with t the tonnes milled
 * on screen s, H the hours crewed and h those of them in which a logged stop held the line; the
 * last two only of screens on which the mill is not fully fed. Then eₛ = aₛ/(1 − pₛ/P), P its full
 * load: RECORDS.md says why.
 *
 * @param screens that have days enough
 * @param kWhPerT of each
 * @param covariance of these, with what the scale of masses adds
 * @param days on each
 * @param withoutIdling whether what it draws without material is not in it
 * @param unlike days that are left out
 */
record MillEnergy(
    List<Machine.Screen> screens,
    double[] kWhPerT,
    double[][] covariance,
    int[] days,
    List<Boolean> withoutIdling,
    int unlike) {
  boolean isWithoutIdling() {
    return withoutIdling.stream().allMatch(of -> of);
  }

  private static final int FEWEST = 5;

  /** Below this share of a full load the mill waits for material or for packages. */
  private static final double PART = 0.95;

  /** Days that differ by less differ by a package more or less. */
  private static final double VARIES = 0.03;

  /** The masses of packages scale all screens, as they do amounts that are counted on mass. */
  private static final double SCALE_ERROR = 0.01;

  /** Begun packages and waits of minutes are of each screen. */
  private static final double OWN_ERROR = 0.005;

  /** Nothing where the days cannot tell it. */
  static Optional<MillEnergy> of(Machine.HammerMill mill, MillDays.Found found) {
    List<Integer> used =
        IntStream.range(0, found.screens().size())
            .filter(s -> count(found.days(), s) >= FEWEST)
            .boxed()
            .toList();
    return used.isEmpty() ? Optional.empty() : Optional.ofNullable(byScreen(mill, found, used));
  }

  private static int count(List<MillDays.Day> days, int screen) {
    return (int) days.stream().filter(day -> day.t()[screen] > 0).count();
  }

  /** Null where the days cannot tell it. */
  private static MillEnergy byScreen(
      Machine.HammerMill mill, MillDays.Found found, List<Integer> used) {
    boolean isSingle =
        used.stream()
            .allMatch(s -> found.days().stream().filter(day -> day.isOf(s)).count() >= FEWEST);
    List<MillDays.Day> days =
        found.days().stream()
            .filter(
                day ->
                    IntStream.range(0, day.t().length)
                        .allMatch(s -> day.t()[s] == 0 || used.contains(s)))
            .filter(day -> !isSingle || used.stream().anyMatch(day::isOf))
            .toList();
    List<Integer> waits = new ArrayList<>();
    List<Integer> stands = new ArrayList<>();
    for (int s : used) {
      if (isPartLoaded(days, s, found.fullKW())) {
        if (isSingle && varies(days, s)) {
          waits.add(s);
        }
        if (days.stream().filter(day -> day.stoodH()[s] > 0).count() >= FEWEST) {
          stands.add(s);
        }
      }
    }
    List<MillDays.Day> like = isSingle ? like(days, used, waits) : days;
    double[] kWh = like.stream().mapToDouble(MillDays.Day::kWh).toArray();
    for (List<List<Integer>> idle :
        List.of(
            List.of(waits, stands),
            List.of(waits, List.<Integer>of()),
            List.of(List.<Integer>of(), List.<Integer>of()))) {
      double[][] columns = columns(like, used, idle.get(0), idle.get(1), isSingle);
      LeastSquares fit = LeastSquares.of(columns, kWh).orElse(null);
      if (fit != null) {
        return energies(mill, found, like, used, idle.get(0), fit, days.size() - like.size());
      }
    }
    return null;
  }

  private static List<MillDays.Day> like(
      List<MillDays.Day> days, List<Integer> used, List<Integer> waits) {
    List<MillDays.Day> like = days;
    for (int s : used) {
      like = MillOutliers.without(like, s, !waits.contains(s));
    }
    return like;
  }

  /** Whether the mill waits on a screen: on half of its days it draws less than a full load. */
  private static boolean isPartLoaded(List<MillDays.Day> days, int screen, double fullKW) {
    double[] kW =
        days.stream()
            .filter(day -> day.isOf(screen))
            .mapToDouble(day -> day.kWh() / day.crewedH()[screen])
            .sorted()
            .toArray();
    return kW.length == 0 || kW[kW.length / 2] < PART * fullKW;
  }

  /** Whether days differ by more than packages and scale make of them. */
  private static boolean varies(List<MillDays.Day> days, int screen) {
    double[] rates =
        days.stream()
            .filter(day -> day.isOf(screen))
            .mapToDouble(day -> day.t()[screen] / day.crewedH()[screen])
            .toArray();
    double mean = Arrays.stream(rates).average().orElse(0);
    double squares = Arrays.stream(rates).map(r -> (r - mean) * (r - mean)).sum();
    return rates.length > FEWEST && Math.sqrt(squares / (rates.length - 1)) > VARIES * mean;
  }

  /**
   * By e = a/(1 − p/P), P the full load: a mill that is either fully fed or idle draws a·t + p·H in
   * H hours, with a = e·(1 − p/P); one that is fed evenly has p = 0.
   */
  private static MillEnergy energies(
      Machine.HammerMill mill,
      MillDays.Found found,
      List<MillDays.Day> days,
      List<Integer> used,
      List<Integer> waits,
      LeastSquares fit,
      int unlike) {
    int k = used.size();
    double[] energy = new double[k];
    double[][] slope = new double[k][fit.b().length];
    for (int i = 0; i < k; i++) {
      int at = waits.indexOf(used.get(i));
      double fed = at < 0 ? 1 : 1 - fit.b()[k + at] / found.fullKW();
      energy[i] = fit.b()[i] / fed;
      slope[i][i] = 1 / fed;
      if (at >= 0) {
        slope[i][k + at] = energy[i] / fed / found.fullKW();
      }
      if (!(energy[i] > 0) || !(fed > 0)) {
        return null;
      }
    }
    RealMatrix of = new Array2DRowRealMatrix(slope, false);
    RealMatrix robust = new Array2DRowRealMatrix(fit.robust(), false);
    double[][] covariance = of.multiply(robust).multiply(of.transpose()).getData();
    for (int i = 0; i < k; i++) {
      for (int j = 0; j < k; j++) {
        double scale = SCALE_ERROR * SCALE_ERROR + (i == j ? OWN_ERROR * OWN_ERROR : 0);
        covariance[i][j] += scale * energy[i] * energy[j];
      }
    }
    return new MillEnergy(
        used.stream().map(s -> screen(mill, found.screens().get(s))).toList(),
        energy,
        covariance,
        used.stream().mapToInt(s -> count(days, s)).toArray(),
        used.stream()
            .map(s -> waits.contains(s) || !isPartLoaded(days, s, found.fullKW()))
            .toList(),
        unlike);
  }

  private static double[][] columns(
      List<MillDays.Day> days,
      List<Integer> used,
      List<Integer> waits,
      List<Integer> stands,
      boolean isSingle) {
    return days.stream()
        .map(
            day ->
                Stream.of(
                        used.stream().map(s -> day.t()[s]),
                        waits.stream().map(s -> day.isOf(s) ? day.crewedH()[s] : 0),
                        stands.stream().map(s -> isSingle && !day.isOf(s) ? 0 : day.stoodH()[s]))
                    .flatMap(column -> column)
                    .mapToDouble(Double::doubleValue)
                    .toArray())
        .toArray(double[][]::new);
  }

  private static Machine.Screen screen(Machine.HammerMill mill, String name) {
    return mill.screens().stream()
        .filter(screen -> screen.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
