package hurdline.study;

import hurdline.plant.yaml.PlantFile;
import hurdline.simulation.CompiledPlant;
import hurdline.study.replicate.ReplicationRange;
import hurdline.study.replicate.ReplicationRunner;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Whether what threads lose is the program's or the machine's: the same replications of the example
 * on one thread, on as many threads as there are processors, and in as many processes of one
 * thread, in turn. Processes share nothing of the program, so threads can do no better than they
 * do.
 *
 * <p>{@code scripts/bench threads} prints the medians and quartiles of the rounds' ratios and ends
 * with 1 where threads reach less than {@value #LEAST} of processes. All work is done by processes
 * that were started and warmed up before the first round.
 */
public final class ThreadsOrProcesses {
  private static final double LEAST = 0.97;
  private static final int ROUNDS = 31;
  private static final int REPLICATIONS = 12; // for each processor
  private static final int WARM = 40;

  private ThreadsOrProcesses() {}

  public static void main(String[] args) throws IOException {
    if (args.length > 0) {
      work(Integer.parseInt(args[0]));
      return;
    }
    int processors = Runtime.getRuntime().availableProcessors();
    List<Worker> single = new ArrayList<>();
    for (int i = 0; i < processors; i++) {
      single.add(new Worker(1));
    }
    List<Worker> threaded = List.of(new Worker(processors));
    double[] threads = new double[ROUNDS];
    double[] processes = new double[ROUNDS];
    double[] ratio = new double[ROUNDS];
    for (int round = 0; round < ROUNDS; round++) {
      double one = perSecond(single.subList(0, 1), REPLICATIONS);
      boolean threadsFirst = round % 2 == 0;
      double first = perSecond(threadsFirst ? threaded : single, processors * REPLICATIONS);
      double second = perSecond(threadsFirst ? single : threaded, processors * REPLICATIONS);
      threads[round] = (threadsFirst ? first : second) / one;
      processes[round] = (threadsFirst ? second : first) / one;
      ratio[round] = threads[round] / processes[round];
    }
    say(processors + " threads to one thread", threads);
    say(processors + " processes to one process", processes);
    boolean held = say("threads to processes", ratio) >= LEAST;
    System.out.println((held ? "yes" : "NO") + "  at least " + LEAST + " expected");
    single.forEach(Worker::end);
    threaded.forEach(Worker::end);
    System.exit(held ? 0 : 1);
  }

  private static double say(String what, double[] rounds) {
    double[] sorted = rounds.clone();
    Arrays.sort(sorted);
    double median = sorted[ROUNDS / 2];
    System.out.printf(
        Locale.ROOT,
        "%-28s %.3f  (quartiles %.3f and %.3f of %d rounds)%n",
        what,
        median,
        sorted[ROUNDS / 4],
        sorted[3 * ROUNDS / 4],
        ROUNDS);
    return median;
  }

  /** Replications a second of all workers together, which share them evenly. */
  private static double perSecond(List<Worker> workers, int replications) throws IOException {
    long began = System.nanoTime();
    for (Worker worker : workers) {
      worker.begin(replications / workers.size());
    }
    for (Worker worker : workers) {
      worker.await();
    }
    return replications / ((System.nanoTime() - began) / 1e9);
  }

  /** A process that simulates as many replications as each line of its input says. */
  private static void work(int threads) throws IOException {
    BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.US_ASCII));
    CompiledPlant plant = plant();
    try (ReplicationRunner runner = new ReplicationRunner(1, threads)) {
      int last = 0;
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        int next = last + Integer.parseInt(line);
        runner.run(
            plant, new ReplicationRange(last + 1, next + 1), outcome -> {}, () -> {}, () -> false);
        last = next;
        System.out.println("done");
      }
    }
  }

  private static CompiledPlant plant() throws IOException {
    String name = "sweetgum-bend.yaml";
    try (InputStream file = ThreadsOrProcesses.class.getResourceAsStream("/line-configs/" + name)) {
      String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
      return CompiledPlant.of(PlantFile.of(name, text).plant());
    }
  }

  private static final class Worker {
    private final Process process;
    private final PrintStream to;
    private final BufferedReader from;

    Worker(int threads) throws IOException {
      process =
          new ProcessBuilder(
                  ProcessHandle.current().info().command().orElse("java"),
                  "-Xmx1g",
                  "-XX:+UseSerialGC", // as the launcher starts it
                  "-cp",
                  System.getProperty("java.class.path"),
                  ThreadsOrProcesses.class.getName(),
                  Integer.toString(threads))
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      to = new PrintStream(process.getOutputStream(), true, StandardCharsets.US_ASCII);
      from =
          new BufferedReader(
              new InputStreamReader(process.getInputStream(), StandardCharsets.US_ASCII));
      begin(WARM * threads);
      await();
    }

    void begin(int replications) {
      to.println(replications);
    }

    void await() throws IOException {
      if (!"done".equals(from.readLine())) {
        throw new IOException("a worker has ended");
      }
    }

    void end() {
      to.close();
      process.destroy();
    }
  }
}
