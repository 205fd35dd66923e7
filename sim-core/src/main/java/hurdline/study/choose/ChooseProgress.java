package hurdline.study.choose;

import hurdline.study.replicate.ProgressListener;

/** Told how a choosing goes. */
public interface ChooseProgress extends ProgressListener {
  /** A stage is done. */
  void stage(Stage said);

  /** Other machines are ready to simulate. */
  default void ready(ClusterSize said) {}

  /**
   * A stage that is done.
   *
   * @param round judged, from 1; 0 for the years that choose the first leader
   * @param of rounds in all
   * @param left plans that may be the best
   * @param years simulated so far
   * @param gap what the best may be above the leader; NaN where it is not known yet
   * @param unit of the gap
   */
  record Stage(int round, int of, int left, long years, double gap, String unit) {}
}
