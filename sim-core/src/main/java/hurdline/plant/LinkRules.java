package hurdline.plant;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Names in lines that must lead somewhere, and what may lead where. */
final class LinkRules {
  private LinkRules() {}

  static void check(Plant plant, Names names, Problems found) {
    for (Line line : plant.lines()) {
      new InLine(line, names, found).check();
    }
  }

  /** The links of one line. */
  private record InLine(Line line, Names names, Problems found) {

    void check() {
      String path = "lines." + line.name();
      found.known(path + ".crop", line.crop(), names.crops.keySet(), "no crop", "a crop");
      form(path + ".crop", names.crops.get(line.crop()));
      feed(path + ".feed");
      alongside(path + ".auxiliaries");
      for (Step step : line.steps()) {
        step(step);
      }
    }

    private void form(String path, Crop crop) {
      if (crop != null && crop.formOf().isPresent()) {
        found.add(
            path,
            "\"" + crop.name() + "\" is a form of \"" + crop.base() + "\"",
            "the crop itself, whose line takes all its forms: \"crop: " + crop.base() + "\"");
      }
    }

    private void feed(String path) {
      Machine feed = names.machines.get(line.feed());
      if (feed == null) {
        found.known(path, line.feed(), feeders(), "no machine", "a bale-feeder");
      } else if (!(feed instanceof Machine.BaleFeeder)) {
        found.add(
            path,
            "the line's feed \"" + line.feed() + "\" is not a bale-feeder",
            Nearest.expected("a machine of kind bale-feeder", line.feed(), feeders()));
      } else if (Names.step(line, line.feed()).isEmpty()) {
        found.add(
            path,
            "the feed \"" + line.feed() + "\" has no step in this line",
            "a step \"" + line.feed() + ": {rate: 3.6 t/h, to: ...}\"");
      }
    }

    private List<String> feeders() {
      return names.machines.values().stream()
          .filter(Machine.BaleFeeder.class::isInstance)
          .map(Machine::name)
          .toList();
    }

    private void alongside(String path) {
      Set<String> seen = new HashSet<>();
      for (int i = 0; i < line.alongside().size(); i++) {
        String name = line.alongside().get(i);
        String at = path + "." + i;
        found.known(at, name, names.machines.keySet(), "no machine", "a machine");
        if (names.isBin(name)) {
          found.add(
              at,
              "\"" + name + "\" is a bin and runs with nothing",
              "a machine that takes no material, such as a fan");
        } else if (Names.step(line, name).isPresent()) {
          found.add(
              at,
              "\"" + name + "\" has a step in this line too",
              "a machine that takes no material of this line");
        } else if (!seen.add(name)) {
          found.add(at, "\"" + name + "\" stands here twice", "each machine once");
        }
      }
    }

    private void step(Step step) {
      String path = Names.path(line, step);
      Machine machine = names.machines.get(step.machine());
      found.known(path, step.machine(), names.machines.keySet(), "no machine", "a machine or bin");
      if (machine instanceof Machine.BaleFeeder && !step.machine().equals(line.feed())) {
        if (names.machines.get(line.feed()) instanceof Machine.BaleFeeder) {
          found.add(
              path,
              "a second bale-feeder; the line is fed by \"" + line.feed() + "\"",
              "one feed in a line");
        }
      } else if (machine instanceof Machine.BaleFeeder && step.rateKgPerS().isEmpty()) {
        found.add(path, "the feed has no \"rate\"", "a rate such as \"rate: 3.6 t/h\"");
      }
      outlets(step);
      packs(step, machine, path);
      components(step, path);
      corrections(step, machine, path);
    }

    private void outlets(Step step) {
      for (int i = 0; i < step.outlets().size(); i++) {
        Step.Outlet outlet = step.outlets().get(i);
        String path = Names.path(line, step, i);
        found.known(
            path + ".to",
            outlet.to(),
            names.aims(),
            "no machine, bin or product",
            "a machine, a bin, a product or \"waste\"");
        Machine to = names.machines.get(outlet.to());
        if (to instanceof Machine.BaleFeeder) {
          found.add(
              path + ".to",
              "\"" + outlet.to() + "\" is a bale-feeder and takes nothing but bales",
              "another machine, a bin, a product or \"waste\"");
        } else if (to != null && Names.step(line, outlet.to()).isEmpty()) {
          found.add(
              path + ".to",
              "\"" + outlet.to() + "\" has no step in this line, so what reaches it goes nowhere",
              "a step \"" + outlet.to() + ": {to: ...}\" in lines." + line.name() + ".steps");
        }
      }
    }

    private void packs(Step step, Machine machine, String path) {
      if (step.packs().isEmpty()) {
        return;
      }
      if (machine != null && !(machine instanceof Machine.Packer)) {
        found.add(
            path + ".packs",
            "\"" + step.machine() + "\" is neither a bag-filler nor a press",
            "\"to\" or \"outlets\" for a machine that does not pack");
      }
      if (step.packs().get() instanceof Step.PacksProduct packs) {
        found.known(
            path + ".packs",
            packs.product(),
            names.products.keySet(),
            "no product",
            "a product, or \"from-\" and the name of a mill");
        packed(path + ".packs", packs);
      }
    }

    private void packed(String path, Step.PacksProduct packs) {
      String product = packs.product();
      Product known = names.products.get(product);
      if (known != null && known.packaging().isEmpty() && packs.packaging().isEmpty()) {
        found.add(
            path,
            "the product \"" + product + "\" has no package to fill",
            "a \"package\" here or in products." + product + ", or \"to: " + product + "\" here");
      }
    }

    private void components(Step step, String path) {
      Set<String> known = names.components.keySet();
      for (Step.Break breaks : step.breaks()) {
        String at = path + ".breakage." + breaks.component();
        found.known(at, breaks.component(), known, "no component", "a component");
        found.known(at + ".into", breaks.into(), known, "no component", "a component");
        if (breaks.into().equals(breaks.component())) {
          found.add(
              at + ".into",
              "\"" + breaks.into() + "\" would break into itself",
              "another component");
        }
      }
      for (int i = 0; i < step.outlets().size(); i++) {
        Step.Outlet outlet = step.outlets().get(i);
        String at = path + ".outlets." + i;
        outlet
            .takes()
            .orElse(Map.of())
            .keySet()
            .forEach(
                name ->
                    found.known(at + ".takes." + name, name, known, "no component", "a component"));
        corrected(outlet, outlet.byMoisture(), at + ".by_moisture");
        for (LotAttribute attribute : LotAttribute.of(step)) {
          corrected(outlet, attribute.onShares(outlet), at + "." + attribute.sharesKey());
        }
      }
    }

    private void corrected(Step.Outlet outlet, Map<String, Curve> curves, String path) {
      Set<String> taken = outlet.takes().orElse(Map.of()).keySet();
      for (String name : curves.keySet()) {
        if (!taken.contains(name)) {
          found.add(
              path + "." + name,
              "\"" + Problems.cut(name) + "\" has no share in this outlet's \"takes\" to correct",
              taken.isEmpty()
                  ? Expected.of("an outlet with \"takes\"")
                  : Nearest.expected("a component that it takes", name, taken));
        }
      }
    }

    private void corrections(Step step, Machine machine, String path) {
      boolean limited = step.rateKgPerS().isPresent() || machine instanceof Machine.HammerMill;
      correction(step.rateByMoisture(), path + ".rate_by_moisture", limited);
      for (LotAttribute attribute : LotAttribute.of(step)) {
        corrections(attribute, step, path, limited);
      }
    }

    private void corrections(LotAttribute attribute, Step step, String path, boolean limited) {
      Crop crop = names.crops.get(line.crop());
      boolean lacking = crop != null && attribute.of(crop.bale()).isEmpty();
      String onRate = path + "." + attribute.rateKey();
      correction(attribute.onRate(step), onRate, limited);
      if (lacking && !attribute.onRate(step).isNone()) {
        lacks(attribute, onRate);
      }
      for (int i = 0; i < step.outlets().size(); i++) {
        if (lacking && !attribute.onShares(step.outlets().get(i)).isEmpty()) {
          lacks(attribute, path + ".outlets." + i + "." + attribute.sharesKey());
        }
      }
    }

    private void correction(Curve curve, String path, boolean limited) {
      if (!curve.isNone() && !limited) {
        found.add(
            path,
            "there is no \"rate\" here that it could correct",
            "a rate such as \"rate: 4 t/h\" in the same step");
      }
    }

    private void lacks(LotAttribute attribute, String path) {
      found.add(
          path,
          "the line's crop \"" + line.crop() + "\" has no \"" + attribute.word() + "\" to go by",
          attribute.sample(line.crop()));
    }
  }
}
