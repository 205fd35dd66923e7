package hurdline.combined;

import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.PlantFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A plant that comes with the project with features switched on together, as a seed says.
 *
 * @param base the file it was made from
 * @param features those that were switched on
 */
record CombinedPlant(long seed, String base, List<String> features, PlantTree tree) {
  private static final Path ROOT = Path.of(System.getProperty("hurdline.root"));
  private static final List<Path> BASES = bases();
  private static final int MOST_FEATURES = 14;

  private static List<Path> bases() {
    List<Path> all = new ArrayList<>();
    Path configs = ROOT.resolve("line-configs");
    for (Path folder : List.of(configs, configs.resolve("seasons"), configs.resolve("exact"))) {
      try (Stream<Path> files = Files.list(folder)) {
        files.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(all::add);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    all.add(ROOT.resolve("reports/src/test/resources/hurdline/audit/alder-landing.yaml"));
    all.add(ROOT.resolve("sim-core/src/test/resources/hurdline/plant/yaml/every-key.yaml"));
    return all.stream().filter(file -> !text(file).contains("file: ")).toList();
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static CombinedPlant of(long seed) {
    Random random = new Random(seed * 7_919 + 17);
    boolean small = random.nextInt(5) > 0; // these take milliseconds
    List<Path> among =
        BASES.stream().filter(file -> small == file.toString().contains("exact")).toList();
    Path base = among.get(random.nextInt(among.size()));
    PlantTree tree =
        PlantTree.of(text(base)).with("{options: null, plans: null, choices: null, doubt: null}");
    List<Map.Entry<String, Function<Features, String>>> all =
        List.copyOf(Features.all().entrySet());
    List<String> on = new ArrayList<>();
    for (int left = 3 + random.nextInt(MOST_FEATURES - 2); left > 0; left--) {
      var feature = all.get(random.nextInt(all.size()));
      PlantTree changed = changed(tree, feature.getValue().apply(new Features(tree, random)));
      if (changed != tree) {
        tree = changed;
        on.add(feature.getKey());
      }
    }
    return new CombinedPlant(seed, base.getFileName().toString(), on, tree);
  }

  /** With a patch of a section a line where that makes a plant; else the same. */
  private static PlantTree changed(PlantTree tree, String patch) {
    PlantTree changed = tree;
    for (String part : patch.split("\n")) {
      changed = part.isBlank() ? changed : changed.with(part);
    }
    return changed == tree || !isPlant(changed) ? tree : changed;
  }

  static boolean isPlant(PlantTree tree) {
    try {
      plant(tree);
      return true;
    } catch (ProblemsException e) {
      return false;
    }
  }

  static Plant plant(PlantTree tree) {
    return PlantFile.of("combined.yaml", tree.toString()).plant();
  }

  Plant plant() {
    return plant(tree);
  }

  @Override
  public String toString() {
    return "plant " + seed + " of " + base + " with " + features;
  }
}
