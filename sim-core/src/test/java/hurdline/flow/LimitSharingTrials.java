package hurdline.flow;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.flow.rates.RateSolver;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.PermutationSampler;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Checks of the rate solver over many random nets, each against an oracle that shares no code with
 * it. Seeds are fixed, so a check that passes always passes; {@code RateSolverNetsTest} and {@code
 * RateSolverProofTest} choose how many nets.
 */
public final class LimitSharingTrials {
  private static final double GRAIN = 1e-12;
  private static final double LIKE_THE_PROGRAM =
      1e-5; // the programs' own slack, magnified by coefficients of a hundredth

  private final int count;

  public LimitSharingTrials(int count) {
    this.count = count;
  }

  private void onNets(LimitSharingNets nets, BiConsumer<LimitSharingNet, RateSolver> check) {
    for (int i = 0; i < count; i++) {
      LimitSharingNet net = nets.next();
      check.accept(net, net.solved());
    }
  }

  private static LimitSharingNets plants(long seed) {
    return new LimitSharingNets(seed, 12, 10, false);
  }

  /**
   * P1 and P3, with a holder named that holds; returns in how many nets a head was held, and in how
   * many a knot tied.
   */
  public int[] feasibleAndFair(long seed) {
    int[] seen = new int[2];
    onNets(
        plants(seed),
        (net, solver) -> {
          LimitSharingOracle oracle = new LimitSharingOracle(net);
          double[] pace = solver.pace();
          assertThat(oracle.overrun(pace)).as("P1 %s", net).isLessThanOrEqualTo(GRAIN);
          assertThat(oracle.unheld(pace, GRAIN)).as("P3 %s", net).isEqualTo(-1);
          boolean held = false;
          for (int head = 0; head < net.heads; head++) {
            int limit = solver.heldBy()[head];
            held |= limit >= 0;
            boolean said =
                limit >= 0
                    ? oracle.holds(limit, head, pace, GRAIN)
                    : pace[head] == (net.reach[head] > 0 ? 1 : 0);
            assertThat(said).as("holder %d of head %d in %s", limit, head, net).isTrue();
            assertThat(solver.rateKgPerS()[head]).isEqualTo(pace[head] * net.reach[head]);
          }
          seen[0] += held ? 1 : 0;
          seen[1] += solver.knotRounds() > 0 ? 1 : 0;
        });
    return seen;
  }

  public void aHolderIsWhatTheDefinitionSays(long seed) {
    onNets(
        plants(seed),
        (net, solver) -> {
          LimitSharingOracle oracle = new LimitSharingOracle(net);
          for (int head = 0; head < net.heads; head++) {
            for (int limit = 0; limit < net.limits; limit++) {
              boolean said = solver.isHolder(limit, head);
              boolean surely = oracle.holds(limit, head, solver.pace(), GRAIN);
              boolean atAll = oracle.holds(limit, head, solver.pace(), 1e-8);
              assertThat(said).as("limit %d, head %d of %s", limit, head, net).isIn(surely, atAll);
            }
          }
        });
  }

  public void maximal(long seed) {
    onNets(
        plants(seed),
        (net, solver) ->
            assertThat(new LimitSharingPrograms(net).couldStillGain(solver.pace()))
                .as("P2 %s", net)
                .isLessThan(1e-8));
  }

  /** Returns how many nets were compared, and how many programs rounding had made unsolvable. */
  public int[] lexicographic(long seed) {
    int[] seen = new int[2];
    onNets(
        plants(seed),
        (net, solver) -> {
          LimitSharingPrograms programs = new LimitSharingPrograms(net);
          if (programs.aGroupFeedsItself() || new LimitSharingOracle(net).smallestPart() < 0.01) {
            return; // the first is another question than P3, see oneOfAllAnswers; the second
            // magnifies the programs' slack
          }
          try {
            double[] fair = programs.fairPaces();
            assertThat(LimitSharingOracle.distance(fair, solver.pace()))
                .as("max-min %s", net)
                .isLessThan(LIKE_THE_PROGRAM);
            seen[0]++;
          } catch (MathIllegalStateException unsolvable) {
            seen[1]++;
          }
        });
    return seen;
  }

  /**
   * Returns how many nets were tried, how many of them had a knot, and how many more than one
   * answer.
   */
  public int[] oneOfAllAnswers(long seed) {
    int[] seen = new int[3];
    onNets(
        new LimitSharingNets(seed, 6, 4, false),
        (net, solver) -> {
          LimitSharingOracle oracle = new LimitSharingOracle(net);
          if (oracle.waysToNameHolders() > 400) {
            return;
          }
          List<double[]> answers = oracle.allAnswers(1e-9);
          assertThat(answers).as("answers of %s", net).isNotEmpty();
          assertThat(
                  answers.stream()
                      .mapToDouble(each -> LimitSharingOracle.distance(each, solver.pace()))
                      .min()
                      .orElse(1))
              .as("nearest answer of %s", net)
              .isLessThan(1e-9);
          seen[0]++;
          seen[1] += solver.knotRounds() > 0 ? 1 : 0;
          seen[2] += answers.size() > 1 ? 1 : 0;
          boolean ranked = Arrays.stream(net.precedence).distinct().count() > 1;
          assertThat(answers.size() > 1 && !ranked)
              .as("several answers without precedence %s", net)
              .isFalse();
        });
    return seen;
  }

  public void sameUnderOtherNumbers(long seed) {
    UniformRandomProvider chance = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
    onNets(
        plants(seed),
        (net, solver) -> {
          int[] headOrder = shuffled(net.heads, chance);
          double[] other = net.renumbered(headOrder, shuffled(net.limits, chance)).solved().pace();
          for (int head = 0; head < net.heads; head++) {
            assertThat(Math.abs(other[head] - solver.pace()[headOrder[head]]))
                .as("%s", net)
                .isLessThan(1e-9);
          }
        });
  }

  private static int[] shuffled(int size, UniformRandomProvider chance) {
    int[] order = PermutationSampler.natural(size);
    PermutationSampler.shuffle(chance, order);
    return order;
  }

  /** Control: returns how many paces were slowed, and how many of these the oracle let pass. */
  public int[] slowedByAMillionth(long seed) {
    int[] seen = new int[2];
    onNets(
        plants(seed),
        (net, solver) -> {
          for (int head = 0; head < net.heads; head++) {
            double[] pace = solver.pace().clone();
            pace[head] *= 1 - 1e-6;
            if (pace[head] > 0) {
              seen[0]++;
              seen[1] += passes(net, pace) ? 1 : 0;
            }
          }
        });
    return seen;
  }

  /** Control of the program: a head slowed by a millionth must leave at least that to be gained. */
  public int[] slowedAndGivenToTheProgram(long seed) {
    int[] seen = new int[2];
    onNets(
        plants(seed),
        (net, solver) -> {
          for (int head = 0; head < net.heads; head++) {
            double[] pace = solver.pace().clone();
            double lost = pace[head] * 1e-6;
            pace[head] -= lost;
            if (lost > 5e-8) {
              seen[0]++;
              seen[1] += new LimitSharingPrograms(net).couldStillGain(pace) < 0.9 * lost ? 1 : 0;
            }
          }
        });
    return seen;
  }

  /** Control: a hundred-thousandth goes from one head to another that the same limit holds. */
  public int[] movedBetweenRivals(long seed) {
    int[] seen = new int[2];
    onNets(
        plants(seed),
        (net, solver) -> {
          LimitSharingOracle oracle = new LimitSharingOracle(net);
          for (int to = 0; to < net.heads; to++) {
            for (int from = 0; from < net.heads; from++) {
              int limit = solver.heldBy()[to];
              if (to != from
                  && limit >= 0
                  && limit == solver.heldBy()[from]
                  && solver.pace()[from] > 1e-3
                  && net.precedence[to] == net.precedence[from]) {
                double[] pace = solver.pace().clone();
                double moved =
                    1e-5
                        * pace[from]
                        * Math.min(oracle.weight(limit, to), oracle.weight(limit, from));
                pace[to] += moved / oracle.weight(limit, to);
                pace[from] -= moved / oracle.weight(limit, from);
                seen[0]++;
                seen[1] += passes(net, pace) ? 1 : 0;
              }
            }
          }
        });
    return seen;
  }

  /** Control: names each other limit that a held head uses; those that pass are ties. */
  public int[] anotherHolderNamed(long seed) {
    int[] seen = new int[2];
    onNets(
        plants(seed),
        (net, solver) -> {
          LimitSharingOracle oracle = new LimitSharingOracle(net);
          for (int head = 0; head < net.heads; head++) {
            for (int limit = 0; limit < net.limits; limit++) {
              int holder = solver.heldBy()[head];
              if (holder >= 0
                  && limit != holder
                  && net.active[limit]
                  && oracle.weight(limit, head) > 0) {
                seen[0]++;
                seen[1] += oracle.holds(limit, head, solver.pace(), GRAIN) ? 1 : 0;
              }
            }
          }
        });
    return seen;
  }

  private static boolean passes(LimitSharingNet net, double[] pace) {
    LimitSharingOracle oracle = new LimitSharingOracle(net);
    return oracle.overrun(pace) <= GRAIN && oracle.unheld(pace, GRAIN) < 0;
  }
}
