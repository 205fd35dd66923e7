package hurdline.flow;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.compiled.CompiledLines;
import hurdline.plant.Machine;
import hurdline.plant.yaml.PlantFile;
import hurdline.random.RandomStream;
import hurdline.random.RandomStreams;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The pass over edges gives, bit for bit, what a pass over every node, outlet and component gives.
 */
class HeadLoadsTest {
  static List<Path> plants() throws IOException {
    try (java.util.stream.Stream<Path> files = Files.walk(Path.of("../line-configs"), 2)) {
      return files
          .filter(p -> p.toString().endsWith(".yaml") && !p.toString().contains("wrong"))
          .filter(p -> !p.toString().contains("records"))
          .filter(p -> !p.toString().contains("target"))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("plants")
  void edgesGiveWhatThePlainPassGives(Path file) {
    CompiledLines layout = CompiledLines.of(PlantFile.read(file).plant());
    RandomStream chance = new RandomStreams(11).of(1, file.toString());
    for (int h = 0; h < layout.heads; h++) {
      HeadLoads quick = new HeadLoads(layout, layout.stretch[h]);
      PlainLoads plain = new PlainLoads(layout, layout.stretch[h]);
      for (int lot = 0; lot < 60; lot++) {
        draw(plain, chance);
        System.arraycopy(plain.lotDry, 0, quick.lotDry, 0, plain.lotDry.length);
        System.arraycopy(plain.lotWater, 0, quick.lotWater, 0, plain.lotWater.length);
        System.arraycopy(plain.attribute, 0, quick.lot.attribute, 0, plain.attribute.length);
        int[] screen = screens(layout, chance);
        quick.spread(screen);
        plain.spread(screen);
        assertSame(layout, h, quick, plain);
      }
    }
  }

  /** Now and then a lot without some components, so that the lists are made anew. */
  private static void draw(PlainLoads lot, RandomStream chance) {
    double moisture = 0.3 * chance.next();
    double sum = 0;
    for (int c = 0; c < lot.lotDry.length; c++) {
      lot.lotDry[c] = chance.next() < 0.3 ? 0 : chance.next();
      sum += lot.lotDry[c];
    }
    for (int c = 0; c < lot.lotDry.length; c++) {
      double share = sum > 0 ? lot.lotDry[c] / sum : 1.0 / lot.lotDry.length;
      lot.lotDry[c] = (1 - moisture) * share;
      lot.lotWater[c] = moisture * share;
    }
    for (int a = 0; a < lot.attribute.length; a++) {
      lot.attribute[a] = 0.02 * chance.next();
    }
  }

  private static int[] screens(CompiledLines layout, RandomStream chance) {
    int[] screen = new int[layout.machines];
    for (int m = 0; m < screen.length; m++) {
      if (layout.machine[m] instanceof Machine.HammerMill mill) {
        screen[m] = (int) (chance.next() * mill.screens().size());
      }
    }
    return screen;
  }

  private static void assertSame(
      CompiledLines layout, int head, HeadLoads quick, PlainLoads plain) {
    assertThat(quick.load).containsExactly(plain.load);
    assertThat(quick.loadDry).containsExactly(plain.loadDry);
    assertThat(quick.sinkMass).containsExactly(plain.sinkMass);
    assertThat(quick.broken).containsExactly(plain.broken);
    assertThat(quick.dried).isEqualTo(plain.dried);
    for (int node = 0; node < plain.way.length; node++) {
      for (int o = 0; o < plain.way[node].length; o++) {
        assertThat(quick.way[quick.outletStart(node) + o]).isEqualTo(plain.way[node][o]);
      }
    }
    for (int s = 0; s < plain.sinkMass.length; s++) {
      for (int c = 0; c < layout.components; c++) {
        int at = quick.sinkAt(s) + 2 * c;
        assertThat(quick.kg[at]).isEqualTo(plain.sinkDry[s * layout.components + c]);
        assertThat(quick.kg[at + 1]).isEqualTo(plain.sinkWater[s * layout.components + c]);
      }
    }
  }
}
