package hurdline.account;

import hurdline.measure.EventKind;

/**
 * Where a replication tells what happens, if someone asked for it; {@code null} stands for nobody.
 */
public interface Trace {

  /**
   * @param clockS time of the event
   * @param where name of the crop, place, machine, bin or resource
   * @param what happened there
   * @param amount what {@link EventKind} says of it, or NaN
   */
  void note(double clockS, String where, EventKind what, double amount);

  /**
   * All that was due at the instant of the last notes is done.
   *
   * @param clockS that instant
   * @param rateKgPerS [head] from now on; read only, written again later
   * @param levelKg [bin] now; read only, written again later
   */
  default void flows(double clockS, double[] rateKgPerS, double[] levelKg) {}

  /**
   * How things stand after the same instant.
   *
   * @param state [machine] by its place in {@link hurdline.measure.State}; read only
   * @param inYard [crop] bales in the yard; read only
   */
  default void standing(double clockS, int[] state, int[] inYard) {}
}
