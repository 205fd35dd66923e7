package hurdline.service;

import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import hurdline.study.choose.Cluster;
import java.util.List;
import java.util.ServiceLoader;

/** The ways to simulate on other machines that this program was started with. */
final class Clusters {
  private Clusters() {}

  /**
   * @throws ProblemsException if nothing here knows such an address
   */
  static Cluster at(String address) {
    List<Cluster> all =
        ServiceLoader.load(Cluster.class).stream().map(ServiceLoader.Provider::get).toList();
    return all.stream()
        .filter(cluster -> cluster.knows(address))
        .findFirst()
        .orElseThrow(() -> refusal(address, all));
  }

  private static ProblemsException refusal(String address, List<Cluster> all) {
    return new ProblemsException(
        List.of(
            all.isEmpty()
                ? LocatedProblem.of(
                    "",
                    "--on "
                        + address
                        + " needs Apache Spark, which this program was started without",
                    "a start by scripts/hurdline with SPARK_HOME set to a folder of Spark 4.1 or newer",
                    "")
                : LocatedProblem.of(
                    "",
                    "--on " + address + " is no address of a cluster",
                    all.get(0).expected(),
                    "")));
  }
}
