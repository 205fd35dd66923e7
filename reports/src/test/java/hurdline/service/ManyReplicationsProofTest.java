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

/** A hundred thousand replications of a small plant in a Java of 512 MB, in one range and in seven, to the byte the same. */
@Tag("proof")
class ManyReplicationsProofTest {
  private static final int REPLICATIONS = 100_000;

  @Test
  void aHundredThousandReplicationsFitIn512MegabytesInOneRangeOrSeveral() throws Exception {
    String whole = output("-Xmx512m", REPLICATIONS, 1);
    assertThat(whole).startsWith(REPLICATIONS + " replications, files ");
    assertThat(output("-Xmx512m", REPLICATIONS, 7)).isEqualTo(whole);
  }

  @Test
  void theTestSeesWhatDoesNotFit() throws Exception {
    assertThat(output("-Xmx64m", REPLICATIONS, 1)).contains("OutOfMemoryError");
  }

  private static String output(String memory, int replications, int ranges) throws IOException, InterruptedException {
    List<String> call =
        Stream.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), memory, "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"), ManyReplications.class.getName(),
                "../line-configs/small.yaml", String.valueOf(replications), String.valueOf(ranges))
            .collect(Collectors.toList());
    Process java = new ProcessBuilder(call).redirectErrorStream(true).start();
    String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(java.waitFor(10, TimeUnit.MINUTES)).isTrue();
    return said;
  }
}
