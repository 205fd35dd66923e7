package hurdline.flow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.PivotSelectionRule;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/** The linear programs that the rates of a net can be held against; the unknowns are paces. */
final class LimitSharingPrograms {
  // what bounds from above and from below give way, so that rounding leaves a program solvable
  private static final double SLACK = 1e-11;
  private static final double SLACK_BELOW = 1e-9;

  private final LimitSharingNet net;
  private final LimitSharingOracle oracle;

  LimitSharingPrograms(LimitSharingNet net) {
    this.net = net;
    this.oracle = new LimitSharingOracle(net);
  }

  /**
   * P2: by how much, in paces summed over the heads, heads could still run faster with none of them
   * slower.
   */
  double couldStillGain(double[] pace) {
    List<LinearConstraint> rules = new ArrayList<>();
    for (int limit = 0; limit < net.limits; limit++) {
      if (net.active[limit]) {
        rules.add(
            new LinearConstraint(
                weights(limit), Relationship.LEQ, Math.max(0, oracle.left(limit, pace))));
      }
    }
    double[] all = new double[net.heads];
    for (int head = 0; head < net.heads; head++) {
      double most = net.reach[head] > 0 ? Math.max(0, 1 - pace[head]) : 0;
      rules.add(new LinearConstraint(unit(head), Relationship.LEQ, most));
      all[head] = 1;
    }
    return best(all, rules)[net.heads];
  }

  /**
   * The lexicographic max-min of the paces, group after group of heads that depend on each other.
   */
  double[] fairPaces() {
    double[] pace = new double[net.heads];
    Arrays.fill(pace, Double.NaN);
    boolean[][] depends = dependence();
    while (Arrays.stream(pace).anyMatch(Double::isNaN)) {
      int[] group = nextGroup(depends, pace);
      fillGroup(group, pace);
    }
    return pace;
  }

  /** Whether some group has a head that gives to a limit which another of the group uses. */
  boolean aGroupFeedsItself() {
    boolean[][] depends = dependence();
    for (int limit = 0; limit < net.limits; limit++) {
      for (int giver = 0; giver < net.heads && contested(limit); giver++) {
        for (int user = 0; user < net.heads; user++) {
          if (oracle.weight(limit, giver) < 0
              && oracle.weight(limit, user) > 0
              && depends[giver][user]) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private boolean contested(int limit) {
    double used =
        IntStream.range(0, net.heads)
            .mapToDouble(head -> Math.max(0, oracle.weight(limit, head)))
            .sum();
    return net.active[limit] && used > net.room[limit] * (1 + 1e-12);
  }

  /**
   * [head][other] whether the rate of the head hangs on that of the other, directly or through
   * others.
   */
  private boolean[][] dependence() {
    boolean[][] on = new boolean[net.heads][net.heads];
    for (int limit = 0; limit < net.limits; limit++) {
      for (int head = 0; head < net.heads && contested(limit); head++) {
        for (int other = 0; other < net.heads; other++) {
          on[head][other] |= oracle.weight(limit, head) > 0 && oracle.weight(limit, other) != 0;
        }
      }
    }
    for (int via = 0; via < net.heads; via++) {
      for (int head = 0; head < net.heads; head++) {
        for (int other = 0; other < net.heads; other++) {
          on[head][other] |= on[head][via] && on[via][other];
        }
      }
    }
    return on;
  }

  private int[] nextGroup(boolean[][] depends, double[] pace) {
    for (int head = 0; head < net.heads; head++) {
      int each = head;
      int[] group =
          IntStream.range(0, net.heads)
              .filter(other -> other == each || depends[each][other] && depends[other][each])
              .toArray();
      boolean ready =
          IntStream.range(0, net.heads)
              .allMatch(
                  other ->
                      !depends[each][other]
                          || !Double.isNaN(pace[other])
                          || Arrays.stream(group).anyMatch(member -> member == other));
      if (Double.isNaN(pace[head]) && ready) {
        return group;
      }
    }
    throw new IllegalStateException("no group is ready");
  }

  private void fillGroup(int[] group, double[] pace) {
    int[] steps =
        Arrays.stream(group).map(head -> net.precedence[head]).sorted().distinct().toArray();
    double[] fixed = pace.clone();
    for (int step : steps) {
      List<Integer> free = new ArrayList<>();
      for (int head : group) {
        if (net.precedence[head] == step) {
          free.add(head);
        }
      }
      while (!free.isEmpty()) {
        double level = commonLevel(group, free, fixed);
        for (int head : List.copyOf(free)) {
          if (net.reach[head] == 0) {
            fixed[head] = 0;
          } else if (level >= 1 - 1e-9 || mostOf(head, level, group, free, fixed) <= level + 1e-7) {
            fixed[head] = Math.min(1, level);
          }
        }
        if (!free.removeIf(head -> !Double.isNaN(fixed[head]))) {
          throw new IllegalStateException("nobody stops at pace " + level);
        }
      }
    }
    for (int head : group) {
      pace[head] = fixed[head];
    }
  }

  /**
   * Highest pace that all free heads can have at once. The last unknown of this program is that
   * pace.
   */
  private double commonLevel(int[] group, List<Integer> free, double[] fixed) {
    List<LinearConstraint> rules = groupRules(group, fixed);
    for (int head : free) {
      if (net.reach[head] > 0) {
        double[] row = unit(head);
        row[net.heads] = -1;
        rules.add(new LinearConstraint(row, Relationship.GEQ, 0));
      }
    }
    rules.add(new LinearConstraint(unit(net.heads), Relationship.LEQ, 1));
    return best(unit(net.heads), rules)[net.heads + 1];
  }

  private double mostOf(int head, double level, int[] group, List<Integer> free, double[] fixed) {
    List<LinearConstraint> rules = groupRules(group, fixed);
    for (int other : free) {
      if (net.reach[other] > 0) {
        rules.add(
            new LinearConstraint(unit(other), Relationship.GEQ, Math.max(0, level - SLACK_BELOW)));
      }
    }
    return best(unit(head), rules)[net.heads + 1];
  }

  private List<LinearConstraint> groupRules(int[] group, double[] fixed) {
    List<LinearConstraint> rules = new ArrayList<>();
    for (int head = 0; head < net.heads; head++) {
      double most = Double.isNaN(fixed[head]) ? net.reach[head] > 0 ? 1 : 0 : fixed[head];
      rules.add(new LinearConstraint(unit(head), Relationship.LEQ, most));
      if (!Double.isNaN(fixed[head])) {
        rules.add(
            new LinearConstraint(unit(head), Relationship.GEQ, Math.max(0, most - SLACK_BELOW)));
      }
    }
    for (int limit = 0; limit < net.limits; limit++) {
      int each = limit;
      if (contested(limit)
          && Arrays.stream(group).anyMatch(head -> oracle.weight(each, head) > 0)) {
        double[] row = Arrays.copyOf(weights(limit), net.heads + 1);
        rules.add(
            new LinearConstraint(
                row, Relationship.LEQ, net.room[limit] + SLACK * oracle.scale(limit)));
      }
    }
    return rules;
  }

  private double[] weights(int limit) {
    return IntStream.range(0, net.heads).mapToDouble(head -> oracle.weight(limit, head)).toArray();
  }

  private double[] unit(int at) {
    double[] row = new double[net.heads + 1];
    row[at] = 1;
    return row;
  }

  /** The best point, and after it the best value. */
  private double[] best(double[] goal, List<LinearConstraint> rules) {
    List<LinearConstraint> even =
        rules.stream()
            .map(
                rule ->
                    new LinearConstraint(
                        Arrays.copyOf(rule.getCoefficients().toArray(), goal.length),
                        rule.getRelationship(),
                        rule.getValue()))
            .toList();
    var answer =
        new SimplexSolver(1e-11, 10, 1e-13)
            .optimize(
                new MaxIter(10_000),
                new LinearObjectiveFunction(goal, 0),
                new LinearConstraintSet(even),
                GoalType.MAXIMIZE,
                new NonNegativeConstraint(true),
                PivotSelectionRule.BLAND);
    double[] point = Arrays.copyOf(answer.getPoint(), goal.length + 1);
    point[goal.length] = answer.getValue();
    return point;
  }
}
