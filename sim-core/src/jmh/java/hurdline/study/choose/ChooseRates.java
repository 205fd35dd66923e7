package hurdline.study.choose;

import hurdline.answer.ChooseAnswer;
import hurdline.answer.SimulatedBlock;
import hurdline.plant.Choices;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStreams;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.Replication;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.replicate.IndifferenceZone;
import hurdline.study.replicate.ReplicationRunner;
import hurdline.study.replicate.RunSettings;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Simulated years per second of a choice among plans, beside plain replication in a loop, in turn:
 * on threads, in Spark's local mode, and on a cluster if one is named.
 *
 * <p>{@code scripts/bench choose} starts it and the cluster. Wages and overheads alone are open, so
 * that a year of a plan takes as long as one of the plant; the band is so wide that a choice ends
 * as soon as plans without spread may be judged, after 40 years of each. A turn before the first is
 * not counted; on a cluster, whose Java machines are new in each turn, a choice is made twice and
 * the second is counted. Blocks are kept in memory.
 */
public final class ChooseRates {
  private static final int THREADS = Runtime.getRuntime().availableProcessors();
  private static final int YEARS_EACH = 20; // that choose, and of the first round
  private static final String LOCAL = "local";
  private static final double NANO = 1e-9;

  private enum Way {
    PLAIN("plain replication in a loop"),
    THREADS("choose on threads"),
    LOCAL("choose on Spark, local mode"),
    CLUSTER("choose on Spark, three processes");

    private final String said;

    Way(String said) {
      this.said = said;
    }
  }

  private final PlantFile file;
  private final String master;
  private final Map<Way, double[]> perSecond = new EnumMap<>(Way.class);
  private final Map<Way, double[]> readyS = new EnumMap<>(Way.class);

  /**
   * @param master empty for no cluster
   */
  private ChooseRates(String name, String master) throws IOException {
    String text;
    try (InputStream in = ChooseRates.class.getResourceAsStream("/line-configs/" + name)) {
      text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    file = PlantFile.of(name, text.replaceAll("(?ms)^choices:.*?(?=^\\S)", ""));
    this.master = master;
  }

  /**
   * @param args rounds; plans of the small plant and of the example in each turn; plans of the
   *     small plant that are chosen from once, at the end; the cluster's address, if there is one
   */
  public static void main(String[] args) throws IOException {
    int rounds = Integer.parseInt(args[0]);
    String master = args.length > 4 ? args[4] : "";
    ChooseRates small = new ChooseRates("small.yaml", master);
    ChooseRates example = new ChooseRates("sweetgum-bend.yaml", master);
    System.out.printf(
        Locale.ROOT,
        "%d threads, %d rounds in turn; medians, least and most%n%n"
            + "| plant | way | years/s | least | most | over plain | ready after |%n"
            + "|---|---|---:|---:|---:|---:|---:|%n",
        THREADS,
        rounds);
    small.measure(rounds, Integer.parseInt(args[1]));
    small.tell();
    example.measure(rounds, Integer.parseInt(args[2]));
    example.tell();
    int many = Integer.parseInt(args[3]);
    long before = System.nanoTime();
    long years = simulated(small.choose(many), Optional.empty());
    double manyS = NANO * (System.nanoTime() - before);
    System.out.printf(
        Locale.ROOT,
        "%n%,d plans of %s on %d threads, from begin to end: %.0f s, measured (%,d years)%n",
        many,
        small.file.texts().name(),
        THREADS,
        manyS,
        years);
    example.tellByFormula();
  }

  private void measure(int rounds, int plans) {
    List<Way> ways = new ArrayList<>(List.of(Way.PLAIN, Way.THREADS));
    if (cluster().isPresent()) {
      ways.add(Way.LOCAL);
      if (!master.isEmpty()) {
        ways.add(Way.CLUSTER);
      }
    }
    ways.forEach(way -> perSecond.put(way, new double[rounds]));
    ways.forEach(way -> readyS.put(way, new double[rounds]));
    for (int round = -1; round < rounds; round++) {
      for (Way way : ways) {
        double[] found = way == Way.PLAIN ? plain(plans) : chosen(way, plans);
        if (round >= 0) {
          perSecond.get(way)[round] = found[0];
          readyS.get(way)[round] = found[1];
        }
      }
    }
  }

  private static Optional<Cluster> cluster() {
    return ServiceLoader.load(Cluster.class).findFirst();
  }

  /** As many years of the plant as it stands. */
  private double[] plain(int plans) {
    CompiledPlant compiled = CompiledPlant.of(file.plant());
    RandomStreams streams = new RandomStreams(1);
    AtomicInteger next = new AtomicInteger();
    int years = plans * YEARS_EACH;
    long before = System.nanoTime();
    try (ReplicationRunner runner = new ReplicationRunner(1, THREADS)) {
      runner.share(
          thread -> {
            Replication replication = compiled.replication();
            int mine;
            while ((mine = next.incrementAndGet()) <= years) {
              replication.run(streams, mine, null);
            }
          });
    }
    return new double[] {years / (NANO * (System.nanoTime() - before)), 0};
  }

  /** Years per second, and seconds until it could begin. */
  private double[] chosen(Way way, int plans) {
    Choose choose = choose(plans);
    if (way == Way.THREADS) {
      return new double[] {perSecond(choose, Optional.empty()), 0};
    }
    long before = System.nanoTime();
    try (BlockRunner runner =
        cluster()
            .orElseThrow()
            .open(way == Way.LOCAL ? LOCAL : master, THREADS, file.texts(), choose.recipe())) {
      double ready = NANO * (System.nanoTime() - before);
      if (way == Way.CLUSTER) {
        perSecond(choose, Optional.of(runner));
      }
      return new double[] {perSecond(choose, Optional.of(runner)), ready};
    }
  }

  private static double perSecond(Choose choose, Optional<BlockRunner> runner) {
    long before = System.nanoTime();
    long years = simulated(choose, runner);
    return years / (NANO * (System.nanoTime() - before));
  }

  /** How many years that took: plans that differ by nothing but a sum stay for 30. */
  private static long simulated(Choose choose, Optional<BlockRunner> runner) {
    Optional<ChooseAnswer> answer =
        runner.isEmpty()
            ? choose.simulate(new InMemory(), new Silent(), () -> false, () -> false)
            : choose.simulate(runner.get(), new InMemory(), new Silent(), () -> false, () -> false);
    return answer.orElseThrow().years();
  }

  /** Wages by overheads, at least as many plans as are asked for. */
  private Choose choose(int plans) {
    int wages = (int) Math.ceil(Math.sqrt(plans));
    int overheads = (plans + wages - 1) / wages;
    PlantOrigin source =
        new PlantOrigin(file.variants(), file.texts().name(), file.contentHash(), "0", List.of());
    return new Choose(
        source,
        PlantChanges.base(),
        Choices.none(),
        new ChooseAsk(
            List.of(factors("money.wage", wages), factors("money.overhead", overheads)),
            new IndifferenceZone("money.margin", 1e12, false, "money.margin:1e12"),
            false,
            List.of(),
            List.of(),
            false,
            0,
            false),
        new RunSettings(2, Optional.empty(), 1, THREADS, Optional.empty()));
  }

  private static ChoiceChange factors(String key, int count) {
    return new ChoiceChange(
        key,
        IntStream.range(0, count)
            .mapToObj(at -> String.format(Locale.ROOT, "x%.4f", 1 + 0.001 * at))
            .toList());
  }

  private double median(Way way) {
    double[] sorted = perSecond.get(way).clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private void tell() {
    for (Way way : perSecond.keySet()) {
      double[] each = perSecond.get(way);
      System.out.printf(
          Locale.ROOT,
          "| %s | %s | %.1f | %.1f | %.1f | %s | %s |%n",
          file.texts().name(),
          way.said,
          median(way),
          Arrays.stream(each).min().orElseThrow(),
          Arrays.stream(each).max().orElseThrow(),
          way == Way.PLAIN
              ? ""
              : String.format(Locale.ROOT, "%+.1f %%", 100 * (median(Way.PLAIN) / median(way) - 1)),
          way.ordinal() < Way.LOCAL.ordinal()
              ? ""
              : String.format(
                  Locale.ROOT, "%.1f s", Arrays.stream(readyS.get(way)).average().orElseThrow()));
    }
  }

  private void tellByFormula() {
    String name = file.texts().name();
    double here = 10_000.0 * YEARS_EACH / median(Way.THREADS);
    System.out.printf(
        Locale.ROOT,
        "10,000 plans of %s on %d threads, first round: %.0f s, by formula from its rate on threads%n",
        name,
        THREADS,
        here);
    Way far = perSecond.containsKey(Way.CLUSTER) ? Way.CLUSTER : Way.THREADS;
    System.out.printf(
        Locale.ROOT,
        "1,000,000 plans of %s on 200 cores, first round: %.0f s, by formula from the rate of a core, %s%n",
        name,
        1e6 * YEARS_EACH / (200 * median(far) / THREADS),
        far.said);
  }

  private static final class InMemory implements BlockStore {
    @Override
    public Optional<SimulatedBlock> kept(int stage, int number) {
      return Optional.empty();
    }

    @Override
    public void keep(SimulatedBlock block) {
      // the study has it
    }
  }

  private static final class Silent implements ChooseProgress {
    @Override
    public void done(int done, int of) {
      // nobody looks
    }

    @Override
    public void stage(Stage said) {
      // nobody looks
    }
  }
}
