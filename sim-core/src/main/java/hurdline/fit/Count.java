package hurdline.fit;

import hurdline.records.Spans;
import java.util.Arrays;

/** What a stop's amount is counted on: how much of it has gone by at any instant. */
sealed interface Count {
  /** Seconds or kilograms up to an instant, in seconds since 1970. */
  double untilInstant(double instantS);

  /** How fast it goes on at an instant, in its unit a second. */
  double pacePerS(double instantS);

  record Calendar() implements Count {
    @Override
    public double untilInstant(double instantS) {
      return instantS;
    }

    @Override
    public double pacePerS(double instantS) {
      return 1;
    }
  }

  record Hours(Spans spans) implements Count {
    private static final double LOOK_S = 600;

    @Override
    public double untilInstant(double instantS) {
      return spans.untilS(instantS);
    }

    /** Whether it went on at about that time. */
    @Override
    public double pacePerS(double instantS) {
      return spans.betweenS(instantS - LOOK_S, instantS + LOOK_S) > 0 ? 1 : 0;
    }
  }

  /**
   * Mass through a machine.
   *
   * @param atS instants between which it goes on evenly, rising
   * @param kg up to each of them
   */
  record Mass(double[] atS, double[] kg) implements Count {
    @Override
    public double untilInstant(double instantS) {
      int at = Arrays.binarySearch(atS, instantS);
      if (at >= 0) {
        return kg[at];
      }
      int next = -at - 1;
      if (next == 0 || next == atS.length) {
        return kg.length == 0 ? 0 : kg[next == 0 ? 0 : kg.length - 1];
      }
      double share = (instantS - atS[next - 1]) / (atS[next] - atS[next - 1]);
      return kg[next - 1] + share * (kg[next] - kg[next - 1]);
    }

    @Override
    public double pacePerS(double instantS) {
      double now = untilInstant(instantS);
      double before = now - untilInstant(instantS - Hours.LOOK_S);
      double after = untilInstant(instantS + Hours.LOOK_S) - now;
      return Math.max(before, after) / Hours.LOOK_S;
    }

    double totalKg() {
      return kg.length == 0 ? 0 : kg[kg.length - 1];
    }
  }
}
