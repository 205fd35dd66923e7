package hurdline.spark;

import hurdline.answer.SimulatedBlock;
import hurdline.plant.PlantTexts;
import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import hurdline.study.choose.BlockRunner;
import hurdline.study.choose.ClusterSize;
import hurdline.study.choose.PlanBlock;
import hurdline.study.choose.PlanRecipe;
import hurdline.study.choose.PlanSimulator;
import hurdline.study.replicate.ReplicationRunner;
import java.io.Serializable;
import java.net.URL;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.spark.SparkConf;
import org.apache.spark.TaskContext;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import scala.Function2;
import scala.collection.Iterator;
import scala.reflect.ClassTag$;
import scala.runtime.BoxedUnit;

/**
 * Blocks as tasks of Spark, in waves whose tasks take some 15 seconds each. A task that fails or is
 * lost is tried again by Spark; years depend on seed and number alone, so it comes to the same.
 */
final class SparkBlocks implements BlockRunner {
  /** Tasks of the check: enough that each machine of a small cluster gets one. */
  private static final int CHECKS = 8;

  /** Alone on this machine, Spark need not be heard by others. */
  private static final String LOOPBACK = "127.0.0.1";

  private static final int WAIT_MS = 100;
  private static final long READY_WITHIN_NS = 300_000_000_000L;

  private final JavaSparkContext spark;
  private final Broadcast<WorkText> work;
  private final String expected;
  private final TaskFault fault;
  private final ClusterSize size;
  private final TaskPace pace;
  private int jobs;

  private SparkBlocks(JavaSparkContext spark, String address, WorkText text, TaskFault fault) {
    this.spark = spark;
    this.fault = fault;
    expected = TaskMachine.expected(text);
    work = spark.broadcast(text);
    List<TaskResult> checks = new ArrayList<>();
    long begunNs = System.nanoTime();
    BooleanSupplier late = () -> System.nanoTime() - begunNs > READY_WITHIN_NS;
    job(Collections.nCopies(CHECKS, new ArrayList<>()), checks::add, late);
    if (checks.isEmpty()) {
      throw refusal(
          "no machine of " + address + " has taken work within five minutes",
          "workers that run and can reach this machine; SPARK_LOCAL_IP sets the address by which they know it");
    }
    double fastest = checks.stream().mapToDouble(TaskResult::seconds).min().orElseThrow();
    // Of the machines that have come by now; Spark says 2 of a single core too.
    size = new ClusterSize(address, spark.defaultParallelism());
    pace = new TaskPace(size.cores(), fastest);
  }

  /**
   * Starts Spark and waits for the first machine.
   *
   * @param address as the call has it
   * @param master as Spark has it
   */
  static SparkBlocks open(
      String address, String master, PlantTexts plant, PlanRecipe recipe, TaskFault fault) {
    WorkText text = WorkText.of(UUID.randomUUID().toString(), plant, recipe);
    JavaSparkContext spark = null;
    try {
      spark = new JavaSparkContext(conf(master));
      return new SparkBlocks(spark, address, text, fault);
    } catch (ProblemsException told) {
      close(spark);
      throw told;
    } catch (RuntimeException broken) {
      close(spark);
      throw refusal(
          "Spark does not start on " + address + " (" + firstLine(broken) + ")",
          "a master that runs there, of the same version of Spark");
    }
  }

  private static void close(JavaSparkContext spark) {
    if (spark != null) {
      spark.close();
    }
  }

  /** Whatever is set as a system property stands. */
  private static SparkConf conf(String master) {
    SparkConf conf = new SparkConf(true).setMaster(master).setAppName("hurdline");
    conf.setIfMissing("spark.ui.enabled", "false");
    if (master.startsWith("local")) {
      conf.setIfMissing("spark.driver.host", LOOPBACK);
      conf.setIfMissing("spark.driver.bindAddress", LOOPBACK);
    } else {
      conf.setIfMissing("spark.jars", String.join(",", jars()));
    }
    return conf;
  }

  /** The program and this module, which each machine of a cluster fetches from here. */
  private static List<String> jars() {
    return Stream.of(PlanSimulator.class, SparkBlocks.class)
        .map(type -> type.getProtectionDomain().getCodeSource().getLocation())
        .map(URL::toString)
        .distinct()
        .toList();
  }

  @Override
  public Optional<ClusterSize> cluster() {
    return Optional.of(size);
  }

  @Override
  public void run(
      List<PlanBlock> blocks, Consumer<SimulatedBlock> done, Runnable year, BooleanSupplier stop) {
    int next = 0;
    while (next < blocks.size() && !stop.getAsBoolean()) {
      List<List<PlanBlock>> tasks = pace.wave(blocks, next);
      List<List<byte[]>> due = new ArrayList<>();
      for (List<PlanBlock> task : tasks) {
        due.add(new ArrayList<>(task.stream().map(BlockBytes::of).toList()));
        next += task.size();
      }
      job(due, result -> take(result, done, year), stop);
    }
  }

  private void take(TaskResult result, Consumer<SimulatedBlock> done, Runnable year) {
    pace.took(result.seconds(), result.years());
    result.blocks().stream().map(BlockBytes::simulated).forEach(done);
    for (int told = 0; told < result.years(); told++) {
      year.run();
    }
  }

  /**
   * Has tasks done, each result handed on in the caller's thread as it comes.
   *
   * @param stop the rest is given up
   */
  private void job(List<List<byte[]>> tasks, Consumer<TaskResult> taker, BooleanSupplier stop) {
    BlockingQueue<TaskResult> arrived = new LinkedBlockingQueue<>();
    String group = "hurdline " + ++jobs;
    Future<?> job =
        ReplicationRunner.inBackground(
            "spark",
            () -> {
              spark.setJobGroup(group, "blocks of plans", false);
              submit(new ArrayList<>(tasks), arrived);
              return null;
            });
    try {
      while (!job.isDone() || !arrived.isEmpty()) {
        if (!job.isDone() && stop.getAsBoolean()) {
          return;
        }
        TaskResult result = arrived.poll(WAIT_MS, TimeUnit.MILLISECONDS);
        if (result != null) {
          taker.accept(checked(result, expected));
        }
      }
      job.get();
    } catch (ExecutionException broken) {
      throw new IllegalStateException(
          "Spark gave up: " + firstLine(broken.getCause()), broken.getCause());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while Spark was at work", interrupted);
    } finally {
      if (!job.isDone()) {
        spark.sc().cancelJobGroup(group);
      }
    }
  }

  private void submit(List<List<byte[]>> tasks, BlockingQueue<TaskResult> arrived) {
    Broadcast<WorkText> told = work;
    TaskFault made = fault;
    Function2<TaskContext, Iterator<List<byte[]>>, TaskResult> each =
        (Function2<TaskContext, Iterator<List<byte[]>>, TaskResult> & Serializable)
            (task, mine) -> {
              made.before(task.partitionId(), task.attemptNumber());
              return TaskMachine.of(told.value(), made)
                  .result(mine.next(), task.attemptNumber(), task::isInterrupted);
            };
    Function2<Object, TaskResult, BoxedUnit> done =
        (task, result) -> {
          arrived.add(result);
          return BoxedUnit.UNIT;
        };
    JavaRDD<List<byte[]>> all = spark.parallelize(tasks, tasks.size());
    // The one way that names no collection of Scala's, so any Spark of Scala 2.13 has it.
    spark.sc().runJob(all.rdd(), each, done, ClassTag$.MODULE$.apply(TaskResult.class));
  }

  /**
   * @param expected digest of the check year, simulated here
   */
  static TaskResult checked(TaskResult result, String expected) {
    if (!result.digest().equals(expected)) {
      throw refusal(
          "a check year simulated on "
              + result.machine()
              + " differs from the same year simulated here (Java "
              + System.getProperty("java.version")
              + " on "
              + System.getProperty("os.arch")
              + ")",
          "machines of one kind with one version of Java, or a cluster without that one");
    }
    return result;
  }

  private static ProblemsException refusal(String said, String expected) {
    return new ProblemsException(List.of(LocatedProblem.of("", said, expected, "")));
  }

  private static String firstLine(Throwable broken) {
    return String.valueOf(broken.getMessage()).lines().findFirst().orElse("");
  }

  @Override
  public void close() {
    spark.close();
  }
}
