package hurdline.study.choose;

import hurdline.plant.PlantTexts;

/** A way to simulate blocks on other machines; the program finds it on its class path. */
public interface Cluster {
  /** Whether it can be reached at such an address. */
  boolean knows(String address);

  /** What addresses look like, for a message. */
  String expected();

  /**
   * Begins, and waits until there is something to simulate with.
   *
   * @param threads of this machine, where the address means it
   * @param plant read again wherever its plans are simulated
   * @throws hurdline.plant.ProblemsException if no machine answers, or one whose numbers differ
   *     from those of this machine
   */
  BlockRunner open(String address, int threads, PlantTexts plant, PlanRecipe recipe);
}
