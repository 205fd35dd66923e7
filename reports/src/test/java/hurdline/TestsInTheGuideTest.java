package hurdline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Each claim and each pitfall in the guide names a test that is there. */
class TestsInTheGuideTest {
  private static final Path ROOT = Path.of(System.getProperty("hurdline.root"));
  private static final String CLAIMS = "## What is proved, and where";
  private static final String PITFALLS = "## Pitfalls, and the tests that see them";

  private static List<String> rows(String head) throws IOException {
    String guide = Files.readString(ROOT.resolve("sim-core/TESTING.md"));
    assertThat(guide).contains(head);
    String part = guide.substring(guide.indexOf(head) + head.length());
    part = part.split("\n## ", 2)[0];
    return part.lines().filter(line -> line.startsWith("| ")).skip(1).toList();
  }

  private static Map<String, String> tests() throws IOException {
    Map<String, String> tests = new TreeMap<>();
    for (String module : List.of("sim-core", "sim-core/on-spark", "reports")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module + "/src/test/java"))) {
        for (Path file : files.filter(path -> path.toString().endsWith("Test.java")).toList()) {
          tests.put(file.getFileName().toString().replace(".java", ""), Files.readString(file));
        }
      }
    }
    return tests;
  }

  @Test
  void eachPitfallNamesATestThatIsThere() throws IOException {
    assertThat(rows(PITFALLS)).hasSizeGreaterThan(20);
    assertThat(missing(rows(PITFALLS))).isEmpty();
  }

  @Test
  void eachClaimNamesATestThatIsThere() throws IOException {
    assertThat(rows(CLAIMS)).hasSizeGreaterThan(10);
    assertThat(missing(rows(CLAIMS))).isEmpty();
  }

  private static List<String> missing(List<String> rows) throws IOException {
    Map<String, String> tests = tests();
    List<String> missing = new ArrayList<>();
    for (String row : rows) {
      Matcher name =
          Pattern.compile("`(exact/)?(\\w+)(?:\\.(\\w+))?`")
              .matcher(row.substring(row.indexOf('|', 1)));
      int named = 0;
      for (; name.find(); named++) {
        boolean there =
            name.group(1) != null
                ? Files.exists(ROOT.resolve("line-configs/exact/" + name.group(2) + ".expect.json"))
                : tests.getOrDefault(name.group(2), "").contains(" void " + name.group(3) + "(");
        if (!there) {
          missing.add(name.group());
        }
      }
      if (named == 0) {
        missing.add("a test for: " + row);
      }
    }
    return missing;
  }
}
