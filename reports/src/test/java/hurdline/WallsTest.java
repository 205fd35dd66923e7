package hurdline;

import static org.assertj.core.api.Assertions.assertThat;

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
  private static final JavaClasses OURS =
      new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("hurdline");

  private static final Map<String, Room> HOUSE = new LinkedHashMap<>();

  static {
    var shared = List.of("unit", "measure", "problem", "answer");
    var simCore = List.of("chance", "estimate", "worth", "event", "plant", "line", "flow", "account", "capacity", "work", "study");

    room("unit").knows("tech.units", "systems.uom", "si.uom", "javax.measure");
    room("measure").uses("unit");
    room("problem");
    room("answer").uses("measure", "unit", "problem");

    room("chance").knows("org.apache.commons.rng", "org.apache.commons.statistics");
    room("estimate").knows("org.apache.commons.math3", "org.apache.commons.statistics");
    room("worth").knows("org.apache.commons.math3");
    room("event");
    room("plant").uses("chance", "problem");
    room("plant.yaml").uses("plant", "chance", "unit", "problem").knows("org.yaml.snakeyaml", "java.nio.file", "java.io.File");
    room("line").uses("plant", "chance").knows("org.apache.commons.math3");
    room("flow").uses("line");
    room("account").uses("line", "measure");
    room("capacity").uses("plant", "chance", "line", "flow");
    room("work").uses("plant", "chance", "line", "flow", "event", "account", "measure");
    room("study").uses(simCore).uses(shared);

    room("words").uses(shared);
    room("words.notes").uses(shared).uses("words");
    room("table").uses(shared).knows("org.apache.commons.csv", "com.google.gson", "java.nio.file", "java.io.File");
    room("chart").uses(shared).uses("words")
        .knows("org.jfree", "org.apache.batik", "org.w3c.dom", "javax.xml.parsers", "java.awt", "java.nio.file", "java.io.File");
    room("page").uses(shared).uses("words", "words.notes", "table", "chart");
    room("service").uses(shared).uses("plant", "plant.yaml", "study").knows("java.nio.file");
    room("command").uses(shared).uses("plant", "study", "service", "words", "words.notes", "table", "chart", "page")
        .knows("picocli", "me.tongfei.progressbar", "sun.misc", "java.nio.file", "java.io.File"); // sun.misc: Ctrl-C
  }

  /** What every room may use of the platform; files and pictures only where the table says so. */
  private static final List<String> EVERYWHERE =
      List.of("java.lang", "java.util", "java.time", "java.text", "java.math", "java.io", "java.net", "java.nio", "java.security");
  private static final List<String> NOT_EVERYWHERE = List.of("java.nio.file", "java.io.File");

  /** Chance that no seed steers, the clock on the wall, and the standard streams. */
  private static final Set<String> NOT_IN_THE_ENGINE = Set.of(
      "java.util.Random", "java.util.SplittableRandom", "java.util.concurrent.ThreadLocalRandom",
      "java.security.SecureRandom", "java.lang.Math.random", "java.lang.StrictMath.random", "java.util.UUID.randomUUID",
      "java.lang.System.currentTimeMillis", "java.lang.System.nanoTime", "java.time.Clock", "java.time.Instant.now",
      "java.time.LocalDate.now", "java.time.LocalTime.now", "java.time.LocalDateTime.now", "java.time.ZonedDateTime.now",
      "java.time.ZoneId.systemDefault", "java.lang.System.out", "java.lang.System.err", "java.lang.System.in");

  static Stream<Room> rooms() {
    return HOUSE.values().stream();
  }

  @Test
  void everyPackageIsInTheTableAndNoRoomIsEmpty() {
    Set<String> standing = OURS.stream().map(WallsTest::roomOf).collect(Collectors.toCollection(TreeSet::new));
    assertThat(standing).isEqualTo(new TreeSet<>(HOUSE.keySet()));
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void aRoomUsesOnlyWhatTheTableAllows(Room room) {
    assertThat(breaches(room)).isEmpty();
  }

  @Test
  void aBreachIsSeen() {
    assertThat(breaches(new Room("work"))).as("work without leave to use line").isNotEmpty();
    assertThat(breaches(new Room("plant.yaml").uses("plant", "chance", "unit", "problem")))
        .anyMatch(breach -> breach.contains("snakeyaml"))
        .anyMatch(breach -> breach.contains("java.nio.file"));
  }

  @Test
  void theEngineHasNoChanceOfItsOwnNoClockAndNoVoice() {
    var heard = new TreeSet<String>();
    for (JavaClass type : OURS) {
      if (!inTheEngine(type)) continue;
      type.getAccessesFromSelf().stream()
          .filter(access -> NOT_IN_THE_ENGINE.contains(access.getTargetOwner().getName())
              || NOT_IN_THE_ENGINE.contains(access.getTargetOwner().getName() + "." + access.getName()))
          .forEach(access -> heard.add(access.getDescription()));
    }
    assertThat(heard).isEmpty();
  }

  /** The compiler copies such constants into the class that reads them, where no wall sees them. */
  @Test
  void noPublicConstantIsCopiedAcrossAWall() {
    assertThat(OURS.stream().flatMap(type -> type.getFields().stream()).filter(WallsTest::isCopied).map(JavaField::getFullName))
        .isEmpty();
  }

  private static boolean isCopied(JavaField field) {
    return field.getModifiers().containsAll(Set.of(JavaModifier.PUBLIC, JavaModifier.STATIC, JavaModifier.FINAL))
        && field.getOwner().getModifiers().contains(JavaModifier.PUBLIC)
        && (field.getRawType().isPrimitive() || field.getRawType().isEquivalentTo(String.class));
  }

  private static boolean inTheEngine(JavaClass type) {
    return Set.of("chance", "estimate", "worth", "event", "plant", "plant.yaml", "line", "flow", "account", "work", "study")
        .contains(roomOf(type));
  }

  private static Set<String> breaches(Room room) {
    return OURS.stream().filter(type -> roomOf(type).equals(room.name))
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

  /** A line of the table: a package, the packages of ours it may use, and the libraries it may know. */
  private static final class Room {
    private final String name;
    private final Set<String> uses = new TreeSet<>();
    private final Set<String> knows = new TreeSet<>();

    Room(String name) {
      this.name = name;
      uses.add(name);
    }

    Room uses(String... rooms) {
      return uses(List.of(rooms));
    }

    Room uses(List<String> rooms) {
      uses.addAll(rooms);
      return this;
    }

    Room knows(String... libraries) {
      knows.addAll(List.of(libraries));
      return this;
    }

    boolean allows(JavaClass target) {
      if (target.isPrimitive()) return true;
      String full = target.getName();
      if (full.startsWith("hurdline.")) return uses.contains(roomOf(target));
      if (knows.stream().anyMatch(library -> lies(full, library))) return true;
      return EVERYWHERE.stream().anyMatch(library -> lies(full, library))
          && NOT_EVERYWHERE.stream().noneMatch(library -> lies(full, library));
    }

    /** A name lies in a package or is the class itself; "java.io.File" holds FileReader and its like too. */
    private static boolean lies(String full, String prefix) {
      return full.startsWith(prefix)
          && (full.length() == prefix.length() || prefix.endsWith("File") || full.charAt(prefix.length()) == '.');
    }

    @Override
    public String toString() {
      return name;
    }
  }
}
