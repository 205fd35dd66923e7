package hurdline.spark;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A master and two workers of one core each as processes of this machine, heard by nobody else. */
final class StandaloneCluster implements AutoCloseable {
  private static final String HERE = "127.0.0.1";

  private final Path folder;
  private final Path home;
  private final int port;
  private final List<Process> processes = new ArrayList<>();
  private final Map<String, String> before = new TreeMap<>();

  /**
   * @param folder for logs and work
   * @param home with the libraries of Spark in {@code jars}
   */
  StandaloneCluster(Path folder, Path home) throws IOException {
    this.folder = folder;
    this.home = home;
    try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getByName(HERE))) {
      port = free.getLocalPort();
    }
    set("spark.jars", String.join(",", jars()));
    set("spark.driver.host", HERE);
    set("spark.driver.bindAddress", HERE);
    set("spark.executor.memory", "512m");
    set("spark.executor.extraJavaOptions", "-XX:TieredStopAtLevel=1 -XX:+UseSerialGC");
    start("master", "org.apache.spark.deploy.master.Master", "--port", "" + port);
    awaitMaster();
    for (String worker : List.of("worker1", "worker2")) {
      start(
          worker,
          "org.apache.spark.deploy.worker.Worker",
          "--cores",
          "1",
          "--memory",
          "600m",
          "--work-dir",
          folder.resolve(worker).toString(),
          address());
    }
  }

  String address() {
    return "spark://" + HERE + ":" + port;
  }

  /** Ends one of the workers as a machine does whose power fails. */
  void kill(int worker) {
    processes.get(worker).destroyForcibly();
  }

  boolean isAlive(int worker) {
    return processes.get(worker).isAlive();
  }

  private void set(String key, String value) {
    before.put(key, System.getProperty(key));
    System.setProperty(key, value);
  }

  private void start(String name, String type, String... more) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Dspark.master.rest.enabled=false",
                "-cp",
                home.resolve("jars") + "/*",
                type,
                "--host",
                HERE,
                "--webui-port",
                "0"));
    command.addAll(List.of(more));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("SPARK_HOME", home.toString());
    builder.environment().put("SPARK_SCALA_VERSION", "2.13");
    builder.environment().put("SPARK_LOCAL_IP", HERE);
    builder.redirectErrorStream(true);
    builder.redirectOutput(folder.resolve(name + ".log").toFile());
    processes.add(builder.start());
  }

  /** A worker that comes too early asks again only after a quarter of a minute. */
  private void awaitMaster() {
    for (int tries = 0; tries < 600; tries++) {
      try {
        Thread.sleep(100);
        new java.net.Socket(HERE, port).close();
        return;
      } catch (IOException notYet) {
        // asked again
      } catch (InterruptedException interrupted) {
        throw new IllegalStateException(interrupted);
      }
    }
    throw new IllegalStateException("no master after a minute; its log: " + folder);
  }

  /** What workers fetch: this build's classes and the libraries that they need, not Spark's own. */
  private List<String> jars() throws IOException {
    List<String> jars = new ArrayList<>();
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      Path path = Path.of(entry);
      if (Files.isDirectory(path)) {
        Path jar = folder.resolve("classes" + jars.size() + ".jar");
        pack(path, jar);
        jars.add(jar.toString());
      } else if (path.getFileName()
          .toString()
          .matches(
              "((shared|sim-core)-\\d|snakeyaml|commons-(rng|statistics|math3|csv|numbers)).*")) {
        jars.add(entry);
      }
    }
    return jars;
  }

  private static void pack(Path classes, Path jar) throws IOException {
    try (Stream<Path> all = Files.walk(classes);
        JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
      for (Path file : all.filter(Files::isRegularFile).collect(Collectors.toList())) {
        String name = classes.relativize(file).toString().replace(File.separatorChar, '/');
        out.putNextEntry(new JarEntry(name));
        Files.copy(file, out);
        out.closeEntry();
      }
    }
  }

  /** The last lines of every process, for a test that fails. */
  String logs() {
    StringBuilder all = new StringBuilder();
    for (String name : List.of("master", "worker1", "worker2")) {
      try {
        List<String> lines = Files.readAllLines(folder.resolve(name + ".log"));
        all.append(name).append('\n');
        lines
            .subList(Math.max(0, lines.size() - 20), lines.size())
            .forEach(line -> all.append(line).append('\n'));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return all.toString();
  }

  @Override
  public void close() {
    before.forEach(
        (key, value) -> {
          if (value == null) {
            System.clearProperty(key);
          } else {
            System.setProperty(key, value);
          }
        });
    for (Process process : processes) {
      List<ProcessHandle> children = process.descendants().toList();
      process.destroyForcibly();
      children.forEach(ProcessHandle::destroyForcibly);
    }
    for (Process process : processes) {
      try {
        process.waitFor(10, TimeUnit.SECONDS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
