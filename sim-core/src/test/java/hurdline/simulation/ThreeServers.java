package hurdline.simulation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Three exponential servers in line, the first never short of jobs and the last never held, with
 * rooms before the second and the third, the job in service counted.
 *
 * @param rates of the servers, jobs per time
 * @param second room before the second server
 * @param third room before the third
 */
record ThreeServers(int[] rates, int second, int third) {
  private static final int WARM_UP = 2_000;
  private static final int JOBS = 50;

  /** All designs whose rates add up to 20 and whose rooms do: 3,249 of them. */
  static List<ThreeServers> all() {
    List<ThreeServers> all = new ArrayList<>();
    for (int a = 1; a <= 18; a++) {
      for (int b = 1; a + b <= 19; b++) {
        for (int room = 1; room <= 19; room++) {
          all.add(new ThreeServers(new int[] {a, b, 20 - a - b}, room, 20 - room));
        }
      }
    }
    return all;
  }

  /**
   * How full the rooms are, and whether the first and the second server hold a job that is done.
   */
  private record State(int second, int third, boolean firstHeld, boolean secondHeld) {}

  private interface Step {
    void to(State next, double rate);
  }

  private void steps(State at, Step step) {
    if (!at.firstHeld()) {
      boolean room = at.second() < second;
      step.to(
          new State(at.second() + (room ? 1 : 0), at.third(), !room, at.secondHeld()), rates[0]);
    }
    int refilled = at.second() - 1 + (at.firstHeld() ? 1 : 0);
    if (at.second() >= 1 && !at.secondHeld()) {
      step.to(
          at.third() < third
              ? new State(refilled, at.third() + 1, false, false)
              : new State(at.second(), at.third(), at.firstHeld(), true),
          rates[1]);
    }
    if (at.third() >= 1) {
      step.to(
          at.secondHeld()
              ? new State(refilled, at.third(), false, false)
              : new State(at.second(), at.third() - 1, at.firstHeld(), false),
          rates[2]);
    }
  }

  /** Jobs per time in the long run, by the stationary law of the Markov chain. */
  double throughput() {
    Map<State, Integer> numbers = new LinkedHashMap<>();
    Deque<State> due = new ArrayDeque<>();
    State empty = new State(0, 0, false, false);
    numbers.put(empty, 0);
    due.add(empty);
    while (!due.isEmpty()) {
      steps(
          due.poll(),
          (next, rate) -> {
            if (numbers.putIfAbsent(next, numbers.size()) == null) {
              due.add(next);
            }
          });
    }
    int count = numbers.size();
    double[][] flow = new double[count][count];
    numbers.forEach(
        (state, from) ->
            steps(
                state,
                (next, rate) -> {
                  flow[numbers.get(next)][from] += rate;
                  flow[from][from] -= rate;
                }));
    Arrays.fill(flow[count - 1], 1);
    double[] sums = new double[count];
    sums[count - 1] = 1;
    double[] shares =
        new LUDecomposition(new Array2DRowRealMatrix(flow, false))
            .getSolver()
            .solve(new ArrayRealVector(sums, false))
            .toArray();
    double busy = 0;
    for (Map.Entry<State, Integer> state : numbers.entrySet()) {
      busy += state.getKey().third() >= 1 ? shares[state.getValue()] : 0;
    }
    return rates[2] * busy;
  }

  /**
   * A year: 50 jobs over the time they take after 2,000 others. All designs of a number have the
   * same draws.
   */
  double year(long seed, int number) {
    UniformRandomProvider generator =
        RandomSource.XO_SHI_RO_256_PP.create(new long[] {seed, number, 20, 3_249});
    ZigguratSampler.Exponential draws = ZigguratSampler.Exponential.of(generator);
    double[] secondLeft = new double[21];
    double[] thirdLeft = new double[21];
    double first = 0;
    double middle = 0;
    double last = 0;
    double from = 0;
    for (int job = 0; job < WARM_UP + JOBS; job++) {
      double roomAt = job >= second ? secondLeft[(job - second) % 21] : 0;
      first = Math.max(first + draws.sample() / rates[0], roomAt);
      double nextRoomAt = job >= third ? thirdLeft[(job - third) % 21] : 0;
      middle = Math.max(Math.max(middle, first) + draws.sample() / rates[1], nextRoomAt);
      last = Math.max(last, middle) + draws.sample() / rates[2];
      secondLeft[job % 21] = middle;
      thirdLeft[job % 21] = last;
      from = job == WARM_UP - 1 ? last : from;
    }
    return JOBS / (last - from);
  }
}
