package hurdline.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How far each of a few plans can be below the best of them: all against all, looked at J times
 * that are said beforehand, on years that none of them was chosen by.
 *
 * <p>At a look with N years in all, u is the upper point of Student's t at α/(J·(K − 1)), and Uᵢⱼ
 * the upper limit of μⱼ − μᵢ ({@link UpperLimit}). K stays the number at the start. Plan i goes out
 * if Uⱼᵢ &lt; 0 for some j left; its gap is the greatest of 0 and Uᵢⱼ over all j left.
 *
 * <p>Let b be the best. With at least 1 − α its K − 1 limits Uᵢ_b hold at all J looks (Bonferroni);
 * then b never goes out, and every plan left is no more than its own gap below b, at every look at
 * once: so the looks may end at any of them, and any plan left may be taken with its gap.
 *
 * @see "Hsu, Constrained simultaneous confidence intervals for multiple comparisons with the best,
 *     Ann. Statist. 12 (1984) 1136-1144; from memory"
 */
public final class PairwiseLooks {
  /** More plans than this make too many pairs. */
  private static final int MOST = 50;

  private static final List<Integer> USUAL = List.of(40, 80, 160, 320);

  private final double chance;
  private final List<Integer> looks;
  private final List<Integer> left = new ArrayList<>();
  private double[] gaps;
  private int done;

  /**
   * @param plans numbers of the plans, 2 to 50
   * @param alpha chance with which the statement may fail, above 0 and below 1
   * @param looks years in all at each look, rising, each at least 2
   */
  public PairwiseLooks(List<Integer> plans, double alpha, List<Integer> looks) {
    if (!(plans.size() >= 2 && plans.size() <= MOST)) {
      throw new IllegalArgumentException(
          "plans are " + plans.size() + "; expected 2 to " + MOST + " of them");
    }
    if (!(alpha > 0 && alpha < 1)) {
      throw new IllegalArgumentException("alpha is " + alpha + "; expected above 0 and below 1");
    }
    left.addAll(plans);
    this.looks = List.copyOf(looks);
    chance = alpha / (looks.size() * (plans.size() - 1.0));
  }

  /** The most plans that can be looked at. */
  public static int most() {
    return MOST;
  }

  /** Looks at 40, 80, 160 and 320 years. */
  public static List<Integer> usualLooks() {
    return USUAL;
  }

  /** Numbers of the plans that are left. */
  public List<Integer> left() {
    return List.copyOf(left);
  }

  /** Whether no look may follow. */
  public boolean isOver() {
    return done == looks.size() || left.size() == 1;
  }

  /** Years in all at the next look. */
  public int next() {
    return looks.get(done);
  }

  /** The gap of a plan that is left, by the last look. */
  public double gap(int plan) {
    return gaps[left.indexOf(plan)];
  }

  /** The plan left of the least gap; the first of equal ones. */
  public int best() {
    int best = 0;
    for (int at = 1; at < gaps.length; at++) {
      best = gaps[at] < gaps[best] ? at : best;
    }
    return left.get(best);
  }

  /**
   * Looks once more.
   *
   * @param years [plan number][year since the fresh start], each plan left with at least the years
   *     of this look; read only
   */
  public void look(double[][] years) {
    if (isOver()) {
      throw new IllegalStateException("no look is left");
    }
    int count = next();
    double[][] limits = limits(years, count);
    List<Integer> before = List.copyOf(left);
    List<Integer> staying = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      if (!isBelowAnother(limits, i)) {
        staying.add(i);
      }
    }
    if (staying.isEmpty()) {
      throw new IllegalStateException("all plans went out at one look");
    }
    gaps = new double[staying.size()];
    for (int at = 0; at < gaps.length; at++) {
      for (int j : staying) {
        gaps[at] = Math.max(gaps[at], limits[staying.get(at)][j]);
      }
    }
    left.clear();
    staying.forEach(i -> left.add(before.get(i)));
    done++;
  }

  private static boolean isBelowAnother(double[][] limits, int i) {
    for (double[] of : limits) {
      if (of[i] < 0) {
        return true;
      }
    }
    return false;
  }

  /** Upper limits of μⱼ − μᵢ, [i][j] by place among those left; 0 of a plan against itself. */
  private double[][] limits(double[][] years, int count) {
    double[][] limits = new double[left.size()][left.size()];
    UpperLimit limit = new UpperLimit(count, chance);
    for (int i = 0; i < limits.length; i++) {
      for (int j = 0; j < limits.length; j++) {
        if (i != j) {
          limits[i][j] =
              limit.of(
                  PairedDifference.differences(
                      Arrays.copyOf(years[left.get(i)], count),
                      Arrays.copyOf(years[left.get(j)], count)));
        }
      }
    }
    return limits;
  }
}
