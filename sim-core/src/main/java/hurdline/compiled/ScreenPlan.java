package hurdline.compiled;

import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.SpareScreen;
import hurdline.plant.Step;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How one line chooses the screen of one mill: by shares of what is milled, or by orders and, while
 * none is open, by shares of what is milled then. Never changes once made.
 */
public final class ScreenPlan {
  private static final double TIE = 1e-9;
  private static final int NOT_IN_IT = Integer.MAX_VALUE;

  private final boolean byOrders;
  private final double stayS;
  private final double[] share; // by screen
  private final int[] turn; // by screen, its place in the mix
  private final int inMix;

  private ScreenPlan(Machine.HammerMill mill, Step step, Step.Shares mix) {
    byOrders = step.mix() instanceof Step.ByOrders;
    stayS = Math.max(Step.SHORTEST_STAY.toSeconds(), step.stayS());
    List<String> screens = mill.screens().stream().map(Machine.Screen::name).toList();
    share = new double[screens.size()];
    turn = new int[screens.size()];
    Arrays.fill(turn, NOT_IN_IT);
    inMix = mix.shares().size();
    for (int i = 0; i < inMix; i++) {
      int screen = screens.indexOf(mix.shares().get(i).screen());
      share[screen] = mix.shares().get(i).share();
      turn[screen] = i;
    }
  }

  /** Compiles the mix of a mill's step. */
  public static ScreenPlan of(Plant plant, Machine.HammerMill mill, Step step) {
    return new ScreenPlan(mill, step, shares(plant, mill, step));
  }

  private static Step.Shares shares(Plant plant, Machine.HammerMill mill, Step step) {
    if (step.mix() instanceof Step.Shares mix) {
      return mix;
    }
    String first = mill.screens().get(0).name();
    Optional<Step.Shares> shares =
        step.mix() instanceof Step.ByOrders
            ? SpareScreen.of(plant, mill, step)
            : Optional.of(new Step.Shares(List.of(new Step.MixShare(first, 1))));
    return shares.orElse(new Step.Shares(List.of()));
  }

  /** Whether the earliest unmet order chooses. */
  public boolean byOrders() {
    return byOrders;
  }

  /** Whether there are shares; a mill by orders without them stands still while none is open. */
  public boolean hasShares() {
    return inMix > 0;
  }

  /** Running time on a screen before the shares may ask for the next. */
  public double stayS() {
    return stayS;
  }

  /** Share of a screen, 0 where it is not in the mix. */
  public double share(int screen) {
    return share[screen];
  }

  /** Whether the shares may ask for another screen while this one is in. */
  public boolean mayLeave(int screen) {
    return inMix > 1 || inMix == 1 && turn[screen] == NOT_IN_IT;
  }

  /**
   * The screen with the greatest share · all milled − milled on it; ties go to the larger share,
   * then to the earlier in the list.
   *
   * @param milledKg by screen
   * @return −1 where there are no shares
   */
  public int furthestBehind(double[] milledKg) {
    double allKg = 0;
    for (double kg : milledKg) {
      allKg += kg;
    }
    int best = -1;
    double bestLagKg = 0;
    for (int s = 0; s < share.length; s++) {
      if (turn[s] < NOT_IN_IT) {
        double lagKg = share[s] * allKg - milledKg[s];
        if (best < 0
            || lagKg > bestLagKg + TIE * allKg
            || lagKg >= bestLagKg - TIE * allKg && comesBefore(s, best)) {
          best = s;
          bestLagKg = lagKg;
        }
      }
    }
    return best;
  }

  private boolean comesBefore(int screen, int other) {
    return share[screen] != share[other]
        ? share[screen] > share[other]
        : turn[screen] < turn[other];
  }
}
