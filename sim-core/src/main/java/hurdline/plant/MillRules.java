package hurdline.plant;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Mills: what chooses their screen, and what is made of it. */
final class MillRules {
  private static final String STAND_STILL = Step.StandStill.word();

  private MillRules() {}

  static void check(Plant plant, Names names, Problems found) {
    plant.machines().stream()
        .filter(Machine.HammerMill.class::isInstance)
        .forEach(mill -> screens((Machine.HammerMill) mill, found));
    for (Line line : plant.lines()) {
      for (Step step : line.steps()) {
        names.mill(step.machine()).ifPresent(mill -> mill(line, step, mill, names, found));
        step.packs()
            .filter(Step.PacksFromMill.class::isInstance)
            .ifPresent(packs -> filler(line, step, (Step.PacksFromMill) packs, names, found));
      }
    }
  }

  private static void screens(Machine.HammerMill mill, Problems found) {
    if (mill.screens().stream().anyMatch(screen -> screen.name().equals(STAND_STILL))) {
      found.add(
          "machines." + mill.name() + ".screens." + STAND_STILL,
          "\"" + STAND_STILL + "\" is what \"then\" says of a mill that mills nothing",
          "another name for the screen");
    }
  }

  private static void mill(
      Line line, Step step, Machine.HammerMill mill, Names names, Problems found) {
    String path = Names.path(line, step);
    List<String> screens = mill.screens().stream().map(Machine.Screen::name).toList();
    if (step.mix() instanceof Step.Shares shares) {
      shares(step, shares, screens, path + ".mix", found);
    } else if (step.mix() instanceof Step.ByOrders orders) {
      orders(step, path, names, found);
      orders.then().ifPresent(then -> then(step, then, screens, path + ".then", found));
    }
    step.makes()
        .forEach(
            (screen, product) -> {
              String at = path + ".makes." + screen;
              found.known(at, screen, screens, "no screen of \"" + mill.name() + "\"", "a screen");
              found.known(at, product, names.products.keySet(), "no product", "a product");
            });
  }

  /** One screen for all is said by its name alone, several as in a mix. */
  private static void then(
      Step step, Step.WithoutOrder then, List<String> screens, String path, Problems found) {
    if (then instanceof Step.Shares shares && shares.isOneForAll()) {
      List<String> known = Stream.concat(screens.stream(), Stream.of(STAND_STILL)).toList();
      String screen = shares.shares().get(0).screen();
      found.known(
          path,
          screen,
          known,
          "no screen of \"" + step.machine() + "\"",
          "a screen, a mix of them or \"" + STAND_STILL + "\"");
    } else if (then instanceof Step.Shares shares) {
      shares(step, shares, screens, path, found);
    }
  }

  private static void shares(
      Step step, Step.Shares mix, List<String> screens, String path, Problems found) {
    Set<String> seen = new HashSet<>();
    double sum = 0;
    for (int i = 0; i < mix.shares().size(); i++) {
      Step.MixShare share = mix.shares().get(i);
      String at = path + "." + i + ".screen";
      found.known(
          at, share.screen(), screens, "no screen of \"" + step.machine() + "\"", "a screen");
      if (!seen.add(share.screen())) {
        found.add(
            at, "the screen \"" + share.screen() + "\" stands here twice", "each screen once");
      }
      sum += share.share();
    }
    if (!mix.shares().isEmpty() && Math.abs(sum - 1) > CropRules.WHOLE) {
      found.add(path, "the shares sum to " + Problems.percent(sum), "shares that sum to 100 %");
    }
  }

  private static void orders(Step step, String path, Names names, Problems found) {
    boolean ordered =
        step.makes().values().stream()
            .anyMatch(
                product ->
                    !names.products.containsKey(product)
                        || !names.products.get(product).orders().isEmpty());
    if (step.makes().isEmpty()) {
      found.add(
          path + ".mix",
          "orders choose the screen, but no screen makes a product",
          "\"makes\", such as \"makes: {fine: fine_hurd}\"");
    } else if (!ordered) {
      found.add(
          path + ".mix",
          "orders choose the screen, but no product that it makes has one",
          "\"orders\" in a product, or a mix of shares");
    }
  }

  private static void filler(
      Line line, Step step, Step.PacksFromMill packs, Names names, Problems found) {
    String name = packs.mill();
    String path = Names.path(line, step) + ".packs";
    List<String> mills =
        names.machines.values().stream()
            .filter(Machine.HammerMill.class::isInstance)
            .map(Machine::name)
            .toList();
    if (!mills.contains(name)) {
      String said =
          names.machines.containsKey(name)
              ? "\"" + name + "\" is no hammer-mill"
              : "\"" + Problems.cut(name) + "\" is no machine";
      found.add(
          path, said, Nearest.expected("\"from-\" and the name of a hammer-mill", name, mills));
      return;
    }
    Optional<Step> mill = Names.step(line, name);
    if (mill.isEmpty()) {
      found.add(
          path,
          "the mill \"" + name + "\" has no step in this line",
          "a mill of this line, or the name of a product");
      return;
    }
    made(line, mill.get(), packs.packaging().isPresent(), names, found);
  }

  /** Each screen that may be in must make a product that has a package, if the filler has none. */
  private static void made(
      Line line, Step mill, boolean fillerHasOne, Names names, Problems found) {
    String path = Names.path(line, mill) + ".makes";
    for (String screen : used(mill, names)) {
      String product = mill.makes().get(screen);
      if (product == null) {
        found.add(
            path,
            "the screen \"" + screen + "\" makes no product for the filler behind it",
            "a product, such as \"" + screen + ": " + screen + "_hurd\"");
      } else if (!fillerHasOne
          && names.products.containsKey(product)
          && names.products.get(product).packaging().isEmpty()) {
        found.add(
            path + "." + screen,
            "the product \"" + product + "\" has no package for the filler to fill",
            "a \"package\" in products." + product + " or in the filler's step");
      }
    }
  }

  private static List<String> used(Step mill, Names names) {
    List<String> screens =
        names.mill(mill.machine()).orElseThrow().screens().stream()
            .map(Machine.Screen::name)
            .toList();
    if (mill.mix() instanceof Step.Shares mix) {
      return mixed(mix).filter(screens::contains).distinct().toList();
    }
    if (mill.mix() instanceof Step.ByOrders orders) {
      Stream<String> then =
          orders.then().filter(Step.Shares.class::isInstance).stream()
              .flatMap(shares -> mixed((Step.Shares) shares));
      return Stream.concat(mill.makes().keySet().stream(), then.filter(screens::contains))
          .distinct()
          .toList();
    }
    return screens.stream().limit(1).toList();
  }

  private static Stream<String> mixed(Step.Shares mix) {
    return mix.shares().stream().map(Step.MixShare::screen);
  }
}
