package hurdline.flow;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Random plants as the rate solver sees them: 1 to 12 heads, 0 to 10 bins in any state, 0 to 3
 * shared machines, splits, own returns, machines that let nothing through, heads that stand, ties
 * and precedence. Half of the nets take their numbers from a few round ones, so that ties are
 * common.
 */
public final class LimitSharingNets {
  private static final double[] ROUND = {0.25, 0.5, 1, 1, 2, 3};

  private final UniformRandomProvider chance;
  private final int mostHeads;
  private final int mostBins;
  private final boolean loops; // whether material may run in a circle through two bins or more
  private boolean round;
  int sharing = 5;
  int mostMachines = 3;

  public LimitSharingNets(long seed, int mostHeads, int mostBins, boolean loops) {
    chance = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
    this.mostHeads = mostHeads;
    this.mostBins = mostBins;
    this.loops = loops;
  }

  public LimitSharingNet next() {
    round = chance.nextBoolean();
    int bins = chance.nextInt(mostBins + 1);
    int machines = chance.nextInt(mostMachines + 1);
    LimitSharingNet net = new LimitSharingNet(1 + chance.nextInt(mostHeads), bins + machines);
    int[] source = new int[net.heads];
    boolean ranked = chance.nextInt(3) == 0;
    for (int head = 0; head < net.heads; head++) {
      source[head] = bins == 0 || chance.nextInt(4) == 0 ? -1 : chance.nextInt(bins);
      net.reach[head] = chance.nextInt(10) == 0 ? 0 : number();
      net.precedence[head] = ranked ? chance.nextInt(3) : 0;
    }
    linkBins(net, bins, source);
    for (int machine = 0; machine < machines; machine++) {
      share(net, bins + machine);
    }
    return net;
  }

  private double number() {
    return round ? ROUND[chance.nextInt(ROUND.length)] : 0.1 + 5 * chance.nextDouble();
  }

  private void linkBins(LimitSharingNet net, int bins, int[] source) {
    double[] arrives = new double[bins * net.heads]; // [bin * heads + head]
    for (int head = 0; head < net.heads; head++) {
      double left =
          round
              ? 1
              : 0.5
                  + chance
                      .nextDouble(); // a head that gathers on the way may bring more than it draws
      int outlets = bins == 0 ? 0 : chance.nextInt(4);
      for (int outlet = 0; outlet < outlets; outlet++) {
        int bin = chance.nextInt(bins);
        double part = left * (round ? 0.5 : chance.nextDouble());
        boolean own = bin == source[head];
        if ((loops || bin >= source[head]) && !(own && chance.nextInt(2) == 0)) {
          arrives[bin * net.heads + head] += part;
          left -= part;
        }
      }
    }
    for (int bin = 0; bin < bins; bin++) {
      int state = chance.nextInt(5);
      net.active[bin] = state != 0;
      for (int head = 0, at = bin * net.heads; head < net.heads; head++, at++) {
        double in = source[head] == bin ? Math.min(arrives[at], 0.9) : arrives[at];
        double net0 = in - (source[head] == bin ? 1 : 0);
        net.coefficient[at] = state <= 2 ? net0 : -net0; // full, else empty
      }
    }
  }

  private void share(LimitSharingNet net, int machine) {
    net.room[machine] = 1;
    boolean stands = chance.nextInt(20) == 0;
    for (int head = 0; head < net.heads; head++) {
      if (chance.nextInt(10) < sharing) {
        double load = (round ? 1 : chance.nextDouble()) / number();
        net.coefficient[machine * net.heads + head] = load;
        net.reach[head] = stands ? 0 : Math.min(net.reach[head], 1 / load);
      }
    }
  }
}
