package hurdline.spark;

import hurdline.plant.PlantTexts;
import hurdline.study.choose.BlockRunner;
import hurdline.study.choose.Cluster;
import hurdline.study.choose.PlanRecipe;

/** Apache Spark, in this Java machine or on a cluster of its own kind. */
public final class SparkCluster implements Cluster {
  private static final String LOCAL = "local";

  @Override
  public boolean knows(String address) {
    return address.equals(LOCAL)
        || address.matches("local\\[\\d+,\\d+]")
        || address.matches("spark://[^:/]+:\\d+");
  }

  @Override
  public String expected() {
    return "local, or spark://HOST:PORT of a standalone cluster";
  }

  @Override
  public BlockRunner open(String address, int threads, PlantTexts plant, PlanRecipe recipe) {
    return SparkBlocks.open(address, master(address, threads), plant, recipe, TaskFault.NONE);
  }

  /** Spark tries a task once alone in its plain local mode. */
  private static String master(String address, int threads) {
    return address.equals(LOCAL) ? "local[" + threads + ",4]" : address;
  }
}
