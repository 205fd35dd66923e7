package hurdline.account;

/** Where a replication tells what happens, if someone asked for it; {@code null} stands for nobody. */
public interface Trace {

  /**
   * @param clockS time of the event
   * @param where name of the crop, place, machine, bin or resource
   * @param what in a word or two
   * @param amount bales, kg or whatever the word implies
   */
  void note(double clockS, String where, String what, double amount);

  /**
   * All that was due at the instant of the last notes is done.
   *
   * @param rateKgPerS [head] from now on; read only, written again later
   * @param levelKg [bin] now; read only, written again later
   */
  default void flows(double[] rateKgPerS, double[] levelKg) {}
}
