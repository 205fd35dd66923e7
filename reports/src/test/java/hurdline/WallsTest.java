package hurdline;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The house's walls: which package may use which, and which library each one alone knows. */
class WallsTest {
  private static final JavaClasses OURS = ours();

  private static final Map<String, Room> HOUSE = new LinkedHashMap<>();

  static {
    // shared
    room("unit");
    room("problem");
    room("measure");
    room("answer").uses("measure problem");

    // sim-core
    room("random").knows("org.apache.commons.rng org.apache.commons.statistics");
    room("statistics").knows("org.apache.commons.statistics");
    room("economics").knows("org.apache.commons.math3");
    room("event");
    room("plant").uses("problem random unit");
    room("plant.yaml").uses("plant plant.yaml.tree problem random unit").knows("java.nio.file");
    room("plant.yaml.tree").uses("plant problem unit").knows("org.yaml.snakeyaml java.nio.file");
    room("records")
        .uses("plant plant.yaml.tree problem unit")
        .knows("java.nio.file org.apache.commons.csv");
    room("fit")
        .uses("answer plant problem random records unit")
        .knows("org.apache.commons.math3 org.apache.commons.numbers org.apache.commons.statistics");
    room("compiled").uses("measure plant random");
    room("flow").uses("compiled flow.rates");
    room("flow.rates");
    room("account").uses("compiled measure");
    room("capacity").uses("compiled flow plant random");
    room("simulation")
        .uses(
            "account compiled event flow measure plant random simulation.activity"
                + " simulation.results simulation.yard");
    room("simulation.activity")
        .uses("account compiled event flow flow.rates measure plant random simulation.yard");
    room("simulation.yard").uses("account compiled event measure plant random");
    room("simulation.results")
        .uses(
            "account compiled economics event flow measure plant simulation.activity"
                + " simulation.yard");
    room("study")
        .uses(
            "answer capacity compiled measure plant problem random simulation simulation.results"
                + " statistics study.replicate unit");
    room("study.replicate")
        .uses(
            "account answer plant problem random simulation simulation.results simulation.yard"
                + " statistics unit");
    room("study.run")
        .uses(
            "account answer compiled measure plant simulation simulation.results study"
                + " study.replicate");
    room("study.option")
        .uses(
            "answer economics measure plant simulation simulation.results statistics study"
                + " study.replicate unit");
    room("study.gain")
        .uses("answer plant simulation simulation.results statistics study study.replicate");
    room("study.compare")
        .uses(
            "answer economics measure plant problem random simulation simulation.results statistics"
                + " study study.gain study.option study.replicate study.run unit");
    room("study.season")
        .uses(
            "answer compiled measure plant problem simulation simulation.results statistics study "
                + "study.replicate study.run");
    room("study.yard")
        .uses(
            "answer compiled economics measure plant random simulation simulation.yard statistics"
                + " study study.gain study.option study.replicate study.run unit");
    room("study.backtest")
        .uses(
            "account answer compiled measure plant random records simulation simulation.results"
                + " statistics study study.replicate study.run unit");
    room("study.rest")
        .uses(
            "answer compiled fit measure plant random records simulation statistics study"
                + " study.backtest study.replicate study.run");
    room("study.grid")
        .uses(
            "answer measure plant problem random simulation simulation.results statistics study"
                + " study.option study.replicate study.run");
    room("study.choose")
        .uses(
            "answer economics measure plant problem random simulation simulation.results statistics"
                + " study study.replicate study.run unit");

    // reports
    room("service")
        .uses(
            "answer fit plant plant.yaml problem records study study.backtest study.choose"
                + " study.compare study.grid study.option study.replicate study.rest study.run"
                + " study.season study.yard")
        .knows("java.nio.file");
    room("text").uses("answer measure unit");
    room("text.notes").uses("answer text unit");
    room("table")
        .uses("answer measure problem")
        .knows("org.apache.commons.csv com.google.gson java.nio.file");
    room("chart.kit")
        .uses("answer measure text")
        .knows(
            "org.jfree org.apache.batik org.w3c.dom javax.xml.parsers java.awt java.nio.file"
                + " java.io.File");
    room("chart.flow").uses("answer chart.kit measure text").knows("java.awt");
    room("chart.run").uses("answer chart.flow chart.kit measure text").knows("org.jfree java.awt");
    room("chart.compare").uses("answer chart.kit measure text unit").knows("org.jfree java.awt");
    room("chart.season").uses("answer chart.kit measure text").knows("org.jfree java.awt");
    room("chart.yard")
        .uses("answer chart.kit chart.run text")
        .knows("org.jfree java.awt org.apache.batik");
    room("chart.fit").uses("answer chart.kit text").knows("java.awt");
    room("chart.choose").uses("answer chart.kit text").knows("org.jfree java.awt");
    room("chart.grid").uses("answer chart.kit text").knows("org.jfree java.awt");
    room("page")
        .uses(
            "answer chart.choose chart.compare chart.fit chart.grid chart.kit chart.run"
                + " chart.season chart.yard measure problem table text text.notes");
    room("web.http").uses("study.replicate").knows("com.google.gson com.sun.net.httpserver");
    room("web")
        .uses(
            "answer chart.kit chart.run plant problem service study study.backtest study.replicate"
                + " table text unit web.http")
        .knows("java.nio.file java.nio.channels");
    room("command")
        .uses(
            "answer chart.choose chart.compare chart.fit chart.grid chart.kit chart.run"
                + " chart.season chart.yard measure page plant problem service study study.backtest"
                + " study.choose study.compare study.grid study.option study.replicate study.season"
                + " study.yard table text text.notes unit web")
        .knows("picocli me.tongfei.progressbar sun.misc java.nio.file java.io.File");
  }

  /** What every room may use of the platform; files and pictures only where the table says so. */
  private static final List<String> EVERYWHERE =
      List.of(
          "java.lang",
          "java.util",
          "java.time",
          "java.text",
          "java.math",
          "java.io",
          "java.net",
          "java.nio",
          "java.security");

  private static final List<String> NOT_EVERYWHERE = List.of("java.nio.file", "java.io.File");

  /** Chance that no seed steers, the clock on the wall, and the standard streams. */
  private static final Set<String> NOT_IN_THE_ENGINE =
      Set.of(
          "java.util.Random",
          "java.util.SplittableRandom",
          "java.util.concurrent.ThreadLocalRandom",
          "java.security.SecureRandom",
          "java.lang.Math.random",
          "java.lang.StrictMath.random",
          "java.util.UUID.randomUUID",
          "java.lang.System.currentTimeMillis",
          "java.lang.System.nanoTime",
          "java.time.Clock",
          "java.time.Instant.now",
          "java.time.LocalDate.now",
          "java.time.LocalTime.now",
          "java.time.LocalDateTime.now",
          "java.time.ZonedDateTime.now",
          "java.time.ZoneId.systemDefault",
          "java.lang.System.out",
          "java.lang.System.err",
          "java.lang.System.in");

  private static final Set<String> ENGINE =
      Set.of(
          "random",
          "fit",
          "records",
          "statistics",
          "economics",
          "event",
          "plant",
          "compiled",
          "flow",
          "account",
          "capacity",
          "simulation",
          "study");

  /** Walls go by names, so that classes of others, which are many, need not be read. */
  private static JavaClasses ours() {
    ArchConfiguration.get().setResolveMissingDependenciesFromClassPath(false);
    return new ClassFileImporter()
        .withImportOption(new ImportOption.DoNotIncludeTests())
        .importPackages("hurdline");
  }

  static Stream<Room> rooms() {
    return HOUSE.values().stream();
  }

  @Test
  void everyPackageIsInTheTableAndNoRoomIsEmpty() {
    Set<String> standing =
        OURS.stream().map(WallsTest::roomOf).collect(Collectors.toCollection(TreeSet::new));
    assertThat(standing).isEqualTo(new TreeSet<>(HOUSE.keySet()));
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void aRoomUsesOnlyWhatTheTableAllows(Room room) {
    assertThat(breaches(room)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void nothingIsAllowedThatNobodyNeeds(Room room) {
    assertThat(room.notNeeded(targets(room))).isEmpty();
  }

  @Test
  void aBreachIsSeen() {
    assertThat(breaches(new Room("simulation")))
        .as("simulation without leave to use compiled")
        .isNotEmpty();
    assertThat(new Room("flow").uses("compiled event").notNeeded(targets(HOUSE.get("flow"))))
        .containsExactly("event");
    assertThat(breaches(new Room("plant.yaml.tree").uses("plant problem unit")))
        .anyMatch(breach -> breach.contains("snakeyaml"))
        .anyMatch(breach -> breach.contains("java.nio.file"));
  }

  @Test
  void theEngineHasNoChanceOfItsOwnNoClockAndNoVoice() {
    var heard = new TreeSet<String>();
    for (JavaClass type : OURS) {
      if (!inTheEngine(type)) continue;
      type.getAccessesFromSelf().stream()
          .filter(
              access ->
                  NOT_IN_THE_ENGINE.contains(access.getTargetOwner().getName())
                      || NOT_IN_THE_ENGINE.contains(
                          access.getTargetOwner().getName() + "." + access.getName()))
          .forEach(access -> heard.add(access.getDescription()));
    }
    assertThat(heard).isEmpty();
  }

  /** The compiler copies such constants into the class that reads them, where no wall sees them. */
  @Test
  void noPublicConstantIsCopiedAcrossAWall() {
    assertThat(
            OURS.stream()
                .flatMap(type -> type.getFields().stream())
                .filter(WallsTest::isCopied)
                .map(JavaField::getFullName))
        .isEmpty();
  }

  private static boolean isCopied(JavaField field) {
    return field
            .getModifiers()
            .containsAll(Set.of(JavaModifier.PUBLIC, JavaModifier.STATIC, JavaModifier.FINAL))
        && field.getOwner().getModifiers().contains(JavaModifier.PUBLIC)
        && (field.getRawType().isPrimitive() || field.getRawType().isEquivalentTo(String.class));
  }

  private static boolean inTheEngine(JavaClass type) {
    return ENGINE.contains(roomOf(type).split("\\.")[0]);
  }

  private static List<JavaClass> targets(Room room) {
    return OURS.stream()
        .filter(type -> roomOf(type).equals(room.name))
        .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
        .map(dependency -> dependency.getTargetClass().getBaseComponentType())
        .distinct()
        .toList();
  }

  private static Set<String> breaches(Room room) {
    return OURS.stream()
        .filter(type -> roomOf(type).equals(room.name))
        .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
        .filter(dependency -> !room.allows(dependency.getTargetClass().getBaseComponentType()))
        .map(Dependency::getDescription)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String roomOf(JavaClass type) {
    return type.getPackageName().replaceFirst("^hurdline\\.?", "");
  }

  private static Room room(String name) {
    var room = new Room(name);
    HOUSE.put(name, room);
    return room;
  }

  /**
   * A line of the table: a package, the packages of ours it may use, and the libraries it may know.
   */
  private static final class Room {
    private final String name;
    private final Set<String> uses = new TreeSet<>();
    private final Set<String> knows = new TreeSet<>();

    Room(String name) {
      this.name = name;
      uses.add(name);
    }

    /**
     * @param rooms their names, with spaces between
     */
    Room uses(String rooms) {
      uses.addAll(List.of(rooms.split(" ")));
      return this;
    }

    /**
     * @param libraries their packages or classes, with spaces between
     */
    Room knows(String libraries) {
      knows.addAll(List.of(libraries.split(" ")));
      return this;
    }

    /** What is allowed and nothing in the room needs. */
    Set<String> notNeeded(List<JavaClass> targets) {
      var left = new TreeSet<>(uses);
      left.addAll(knows);
      left.remove(name);
      for (JavaClass target : targets) {
        left.remove(roomOf(target));
        left.removeIf(library -> knows.contains(library) && lies(target.getName(), library));
      }
      return left;
    }

    boolean allows(JavaClass target) {
      if (target.isPrimitive()) return true;
      String full = target.getName();
      if (full.startsWith("hurdline.")) return uses.contains(roomOf(target));
      if (knows.stream().anyMatch(library -> lies(full, library))) return true;
      return EVERYWHERE.stream().anyMatch(library -> lies(full, library))
          && NOT_EVERYWHERE.stream().noneMatch(library -> lies(full, library));
    }

    /**
     * A name lies in a package or is the class itself; "java.io.File" holds FileReader and its like
     * too.
     */
    private static boolean lies(String full, String prefix) {
      return full.startsWith(prefix)
          && (full.length() == prefix.length()
              || prefix.endsWith("File")
              || full.charAt(prefix.length()) == '.');
    }

    @Override
    public String toString() {
      return name;
    }
  }
}
