package hurdline.spark;

import hurdline.answer.SimulatedBlock;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.PlantOrigin;
import hurdline.study.choose.BlockWatch;
import hurdline.study.choose.PlanBlock;
import hurdline.study.choose.PlanSimulator;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * A Java machine that does tasks: it makes the plant once for each choosing and simulates the check
 * year before anything else.
 */
final class TaskMachine {
  /** Of so many check years at most the quickest tells how long a year takes. */
  private static final int CHECK_YEARS = 40;

  private static final double CHECK_S = 2;

  private static final double NANO = 1e-9;
  private static TaskMachine last; // one choosing at a time

  private final String id;
  private final BlockWatch watch;
  private final String digest;
  private final double secondsAYear;

  private TaskMachine(WorkText work, TaskFault fault) {
    id = work.id();
    PlanSimulator simulator = simulator(work);
    watch = fault.watch(simulator);
    double fastest = Double.POSITIVE_INFINITY;
    String year = "";
    double all = 0;
    for (int at = 0; at < CHECK_YEARS && all < CHECK_S; at++) {
      long before = System.nanoTime();
      year = simulator.checkYear();
      double seconds = (System.nanoTime() - before) * NANO;
      fastest = Math.min(fastest, seconds);
      all += seconds;
    }
    digest = digest(year);
    secondsAYear = fastest;
  }

  /** That of this Java machine; threads that come while it is made wait for it. */
  static synchronized TaskMachine of(WorkText work, TaskFault fault) {
    if (last == null || !last.id.equals(work.id())) {
      last = new TaskMachine(work, fault);
    }
    return last;
  }

  private static PlanSimulator simulator(WorkText work) {
    PlantFile file = PlantFile.of(work.name(), work.text(), work.rain());
    PlantOrigin source =
        new PlantOrigin(file.variants(), work.name(), file.contentHash(), "", List.of());
    return PlanSimulator.of(source, file.choices(), work.recipe());
  }

  /** The digest that machines are held to, simulated here. */
  static String expected(WorkText work) {
    return digest(simulator(work).checkYear());
  }

  private static String digest(String year) {
    try {
      byte[] text = year.getBytes(StandardCharsets.UTF_8);
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Does a task.
   *
   * @param due blocks of {@link BlockBytes}; none to be checked alone
   * @param attempt from 0; at the first a year that hangs fails the task, so that Spark tries it
   *     elsewhere, later it is told as the plan's problem
   * @param stop asked before each year
   */
  TaskResult result(List<byte[]> due, int attempt, BooleanSupplier stop) {
    if (due.isEmpty()) {
      return new TaskResult(machine(), digest, 1, secondsAYear, new ArrayList<>());
    }
    int[] years = {0};
    List<byte[]> done = new ArrayList<>();
    long before = System.nanoTime();
    for (byte[] bytes : due) {
      PlanBlock block = BlockBytes.due(bytes);
      Optional<SimulatedBlock> simulated =
          attempt == 0
              ? watch.once(block, () -> years[0]++, stop)
              : watch.block(block, () -> years[0]++, stop);
      simulated.ifPresent(whole -> done.add(BlockBytes.of(whole)));
    }
    double seconds = (System.nanoTime() - before) * NANO;
    return new TaskResult(machine(), digest, years[0], seconds, done);
  }

  private static String machine() {
    String java = System.getProperty("java.version") + " on " + System.getProperty("os.arch");
    try {
      return InetAddress.getLocalHost().getHostName() + " (Java " + java + ")";
    } catch (UnknownHostException e) {
      return "a machine without a name (Java " + java + ")";
    }
  }
}
