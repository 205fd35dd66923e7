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
}
