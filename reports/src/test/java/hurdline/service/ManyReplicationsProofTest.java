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

/**
 * A hundred thousand replications of a small plant in a Java of 512 MB, some 50 s of CPU time each
 * way; ranges give the files of the whole.
 */
@Tag("proof")
class ManyReplicationsProofTest {
  private static final int REPLICATIONS = 100_000;

  @Test
  void aHundredThousandReplicationsFitIn512MegabytesInOneRangeAndInSeven() throws Exception {
    String whole = output("-Xmx512m", 1);
    assertThat(whole).matches(REPLICATIONS + " replications, files [0-9a-f]{64}\\s");
    assertThat(output("-Xmx512m", 7)).isEqualTo(whole);
  }

  private static String output(String memory, int ranges) throws IOException, InterruptedException {
    List<String> call =
        Stream.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                memory,
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                ManyReplications.class.getName(),
                "../line-configs/small.yaml",
                String.valueOf(REPLICATIONS),
                String.valueOf(ranges))
            .collect(Collectors.toList());
    Process java = new ProcessBuilder(call).redirectErrorStream(true).start();
    String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(java.waitFor(1, TimeUnit.MINUTES)).isTrue();
    return said;
  }
}
