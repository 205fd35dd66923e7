package hurdline.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A hundred thousand replications of a small plant in a Java of 512 MB; and ranges give the files of the whole. */
@Tag("proof")
class ManyReplicationsProofTest {
  private static final int MANY = 100_000;
  private static final int ENOUGH_TO_MERGE = 8_000; // four times those whose weeks are kept one by one

  @Test
  void aHundredThousandReplicationsInSevenRangesFitIn512Megabytes() throws Exception {
    assertThat(output("-Xmx512m", MANY, 7)).matches(MANY + " replications, files [0-9a-f]{64}\\s");
  }

  @Test
  void sevenRangesGiveTheFilesOfOne() throws Exception {
    assertThat(output("-Xmx512m", ENOUGH_TO_MERGE, 7)).isEqualTo(output("-Xmx512m", ENOUGH_TO_MERGE, 1));
  }

  private static String output(String memory, int replications, int ranges) throws IOException, InterruptedException {
    List<String> call =
        Stream.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), memory, "-XX:+UseSerialGC", "-cp", System.getProperty("java.class.path"), ManyReplications.class.getName(),
                "../line-configs/small.yaml", String.valueOf(replications), String.valueOf(ranges))
            .collect(Collectors.toList());
    Process java = new ProcessBuilder(call).redirectErrorStream(true).start();
    String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(java.waitFor(10, TimeUnit.MINUTES)).isTrue();
    return said;
  }
}
