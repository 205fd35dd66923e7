package hurdline.fit;

import hurdline.plant.Machine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Energy of a mill by screen: kWh of milling over tonnes. A reading between no load and full load
 * may be of a mill that is fed fully for a part of the hour and waits for the rest, or of one that
 * is fed evenly with less; {@link MillLoad} says how much of it was milling in either case, and by
 * days which of the two it was.
 *
 * @param screens that have days enough
 * @param kWhPerT of each
 * @param covariance of these, with what the scale of masses adds
 * @param days on each
 * @param waits by screen, chance that it waited below full load and was not fed evenly; NaN where
 *     days are not of one screen
 * @param unlike days that are left out
 */
record MillEnergy(
    List<Machine.Screen> screens,
    double[] kWhPerT,
    double[][] covariance,
    int[] days,
    double[] waits,
    int unlike) {
  private static final int FEWEST = 5;

  /** The masses of packages scale all screens, as they do amounts that are counted on mass. */
  private static final double SCALE_ERROR = 0.01;

  /** Of what is anywhere between two ends the standard deviation is their distance by this. */
  private static final double OF_UNIFORM = Math.sqrt(12);

  /** Nothing where the days cannot tell it. */
  static Optional<MillEnergy> of(Machine.HammerMill mill, MillDays.Found found) {
    List<Integer> used =
        IntStream.range(0, found.screens().size())
            .filter(s -> found.days().stream().filter(day -> day.t()[s] > 0).count() >= FEWEST)
            .boxed()
            .toList();
    if (used.isEmpty()) {
      return Optional.empty();
    }
    List<List<MillDays.Day>> own =
        used.stream().map(s -> found.days().stream().filter(day -> day.isOf(s)).toList()).toList();
    return own.stream().allMatch(days -> days.size() >= FEWEST)
        ? Optional.of(byScreen(mill, found, used, own))
        : together(mill, found, used);
  }

  private static MillEnergy byScreen(
      Machine.HammerMill mill,
      MillDays.Found found,
      List<Integer> used,
      List<List<MillDays.Day>> own) {
    int k = used.size();
    double[] energy = new double[k];
    double[] variance = new double[k];
    double[] waits = new double[k];
    int[] days = new int[k];
    int unlike = 0;
    for (int i = 0; i < k; i++) {
      MillLoad load = MillLoad.of(own.get(i), used.get(i), found.fullKW(), found.idleKW());
      energy[i] = load.kWhPerT();
      variance[i] = load.error() * load.error();
      waits[i] = load.waits();
      days[i] = load.days();
      unlike += own.get(i).size() - load.days();
    }
    double[][] covariance = new double[k][k];
    for (int i = 0; i < k; i++) {
      covariance[i][i] = variance[i];
    }
    return new MillEnergy(
        screens(mill, found, used), energy, scaled(covariance, energy), days, waits, unlike);
  }

  /**
   * Of days on which several screens were in, by least squares of kWh on tonnes; whether readings
   * are of an even feed or of waits such days cannot tell, so the middle of both is taken and their
   * distance is in the error.
   */
  private static Optional<MillEnergy> together(
      Machine.HammerMill mill, MillDays.Found found, List<Integer> used) {
    List<MillDays.Day> days =
        found.days().stream()
            .filter(
                day ->
                    IntStream.range(0, day.t().length)
                        .allMatch(s -> day.t()[s] == 0 || used.contains(s)))
            .toList();
    double[][] t =
        days.stream()
            .map(day -> used.stream().mapToDouble(s -> day.t()[s]).toArray())
            .toArray(double[][]::new);
    List<LeastSquares> ends = new ArrayList<>();
    for (MillLoad.Feed feed : List.of(MillLoad.Feed.full(), MillLoad.Feed.even())) {
      LeastSquares.of(
              t,
              days.stream()
                  .mapToDouble(day -> MillLoad.milling(day, found.fullKW(), found.idleKW(), feed))
                  .toArray())
          .ifPresent(ends::add);
    }
    if (ends.size() < 2) {
      return Optional.empty();
    }
    int k = used.size();
    double[] energy = new double[k];
    double[] half = new double[k];
    for (int i = 0; i < k; i++) {
      energy[i] = (ends.get(0).b()[i] + ends.get(1).b()[i]) / 2;
      half[i] = (ends.get(1).b()[i] - ends.get(0).b()[i]) / OF_UNIFORM;
    }
    if (Arrays.stream(energy).anyMatch(one -> !(one > 0))) {
      return Optional.empty();
    }
    double[][] covariance = new double[k][k];
    for (int i = 0; i < k; i++) {
      for (int j = 0; j < k; j++) {
        covariance[i][j] = ends.get(1).robust()[i][j] + half[i] * half[j];
      }
    }
    double[] waits = new double[k];
    Arrays.fill(waits, Double.NaN);
    int[] count =
        used.stream()
            .mapToInt(s -> (int) days.stream().filter(day -> day.t()[s] > 0).count())
            .toArray();
    return Optional.of(
        new MillEnergy(
            screens(mill, found, used), energy, scaled(covariance, energy), count, waits, 0));
  }

  private static double[][] scaled(double[][] covariance, double[] energy) {
    for (int i = 0; i < energy.length; i++) {
      for (int j = 0; j < energy.length; j++) {
        covariance[i][j] += SCALE_ERROR * SCALE_ERROR * energy[i] * energy[j];
      }
    }
    return covariance;
  }

  private static List<Machine.Screen> screens(
      Machine.HammerMill mill, MillDays.Found found, List<Integer> used) {
    return used.stream()
        .map(s -> found.screens().get(s))
        .flatMap(name -> mill.screens().stream().filter(screen -> screen.name().equals(name)))
        .toList();
  }
}
