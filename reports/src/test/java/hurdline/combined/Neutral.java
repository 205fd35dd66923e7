package hurdline.combined;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/**
 * A feature that is switched on so that it does nothing: what it may be seen in, and what stays as
 * it was.
 *
 * @param patch empty where the plant has nothing that fits
 * @param apart measures that it brings or names
 */
record Neutral(String name, BiFunction<PlantTree, Random, String> patch, String apart) {

  static List<Neutral> all() {
    return List.of(
        new Neutral(
            "a resource that nobody needs",
            (t, r) -> "resources: {idle: {count: 1}}",
            "resource\\.idle.*"),
        new Neutral(
            "a resource with enough for all", Neutral::enough, "resource\\.(enough|.*wait).*"),
        new Neutral("whole crews", Neutral::wholeCrews, "crew.*(absent|short)"),
        new Neutral("a purge at the whole price", Neutral::fullPurge, "product.*purge.*"),
        new Neutral("a market without end", Neutral::market, ".*(market|beyond).*"),
        new Neutral("a limit that no load passes", Neutral::reject, ".*rejected.*"),
        new Neutral("a release at once", Neutral::release, ".*(kept_apart|failed).*"),
        new Neutral(
            "cleanliness at one price",
            Neutral::cleanliness,
            ".*(price_factor|share|point_cost).*"),
        new Neutral("a cover that costs nothing", Neutral::cover, ".*cover.*"),
        new Neutral(
            "a base load",
            (t, r) -> "base_loads: {extra: {power: 3 kW}}",
            ".*(energy|money|cash|peak|base_load).*"),
        new Neutral(
            "periods at the price", Neutral::periods, ".*(energy\\.same|electricity\\.same).*"),
        new Neutral("a stop that never comes", Neutral::noStop, ".*never.*"),
        new Neutral("a form of which nothing comes", Neutral::form, ".*(_twin|yard\\.place).*"),
        new Neutral("flat factors", Neutral::flat, ""),
        new Neutral("limits far off", Neutral::limits, "yard\\.place.*"),
        new Neutral(
            "rent",
            (t, r) ->
                t.has("money.currency")
                    ? "money: {rent: {line: " + t.names("lines").get(0) + ", fixed: 9 USD/month}}"
                    : "",
            ".*(rent|owner|tenant).*"),
        new Neutral("nothing dries or breaks", Neutral::nothingDries, ".*(dried|drier_fuel).*"),
        new Neutral("grades at the price", Neutral::grades, ".*price_factor.*"),
        new Neutral("an advance without interest", Neutral::advance, ".*advance.*"),
        new Neutral("a freight of nothing", Neutral::freight, ".*freight.*"),
        new Neutral("a stop of all lines", Neutral::forAllLines, ""),
        new Neutral("a buyer who takes it wet", Neutral::atMost, ".*too_wet.*"));
  }

  private static <T> T one(List<T> of, Random random) {
    return of.get(random.nextInt(of.size()));
  }

  /** Every job that needs something needs one of a thousand besides. */
  private static String enough(PlantTree t, Random r) {
    List<String> sections = new ArrayList<>();
    for (String section : List.of("machines", "packages", "deliveries", "yard")) {
      String text = PlantTree.flow(t.at(section));
      if (t.has(section) && text.contains("needs: ")) {
        String more =
            text.replaceAll("needs: ([A-Za-z_]+)", "needs: [$1, zz_enough]")
                .replaceAll("needs: \\[((?:(?!zz_enough)[^\\]])*)\\]", "needs: [$1, zz_enough]");
        sections.add(section + ": " + more);
      }
    }
    return sections.isEmpty()
        ? ""
        : String.join("\n", sections) + "\nresources: {zz_enough: {count: 1000}}";
  }

  private static String wholeCrews(PlantTree t, Random r) {
    List<String> lines = new ArrayList<>();
    for (String line : t.names("crews")) {
      String shifts =
          t.names("crews." + line).stream()
              .filter(shift -> !t.text("crews." + line + "." + shift).equals("0"))
              .map(shift -> shift + ": {least: 1, absence: 0 %}")
              .collect(Collectors.joining(", "));
      lines.add(line + ": {" + shifts + "}");
    }
    return lines.isEmpty() || t.has("hands")
        ? ""
        : "hands: {attendance: {" + String.join(", ", lines) + "}}";
  }

  private static String plainProduct(PlantTree t, Random r, boolean packed) {
    List<String> plain =
        t.names("products").stream()
            .filter(p -> t.has("products." + p + ".package") || !packed)
            .filter(
                p ->
                    List.of("orders", "market", "store", "purge", "cleanliness", "freight").stream()
                        .noneMatch(key -> t.has("products." + p + "." + key)))
            .filter(p -> !t.has("products." + p + ".moisture.at_most"))
            .toList();
    return plain.isEmpty() ? "" : one(plain, r);
  }

  private static String fullPurge(PlantTree t, Random r) {
    String product = plainProduct(t, r, true);
    return product.isEmpty()
        ? ""
        : "products: {" + product + ": {purge: {packages: 5, factor: 100 %}}}";
  }

  private static String market(PlantTree t, Random r) {
    String product = one(t.names("products"), r);
    return t.has("products." + product + ".market") || t.has("products." + product + ".store")
        ? ""
        : "products: {" + product + ": {market: {beyond: [[900000 ton, 0.5]]}}}";
  }

  private static String reject(PlantTree t, Random r) {
    if (t.names("deliveries").isEmpty()) {
      return "";
    }
    String crop = one(t.names("deliveries"), r);
    return t.has("deliveries." + crop + ".weigh") && !t.has("deliveries." + crop + ".reject")
        ? "deliveries: {" + crop + ": {reject: [{by: moisture, above: 99 %}]}}"
        : "";
  }

  private static String release(PlantTree t, Random r) {
    if (t.names("deliveries").isEmpty()) {
      return "";
    }
    String crop = one(t.names("deliveries"), r);
    return t.has("deliveries." + crop + ".release_after")
        ? ""
        : "deliveries: {" + crop + ": {release_after: 0 h, fails: {share: 0 %, cost: 9 USD}}}";
  }

  private static String cleanliness(PlantTree t, Random r) {
    String product = one(t.names("products"), r);
    return t.has("products." + product + ".cleanliness")
        ? ""
        : "products: {%s: {cleanliness: {component: %s, line: [[1 %%, 1], [9 %%, 1]]}}}"
            .formatted(
                product, t.list("components").isEmpty() ? "hurd" : t.list("components").get(0));
  }

  private static String cover(PlantTree t, Random r) {
    String place = one(t.names("yard.places"), r);
    String path = "yard.places." + place;
    return t.has(path + ".stack") && !t.has(path + ".cover") && !t.has(path + ".moisture")
        ? "yard: {places: {" + place + ": {cover: {cost: 0 USD}}}}"
        : "";
  }

  private static String periods(PlantTree t, Random r) {
    String price = t.text("money.electricity.energy");
    return price.isEmpty() || t.has("money.electricity.periods")
        ? ""
        : "money: {electricity: {periods: {same: {from: \"07:15\", to: \"13:00\", energy: "
            + price
            + "}}}}";
  }

  private static List<String> machines(PlantTree t) {
    return t.names("machines").stream()
        .filter(m -> !t.text("machines." + m + ".kind").equals("bin"))
        .toList();
  }

  private static String noStop(PlantTree t, Random r) {
    return "machines: {%s: {stops: {never: {every: 900000 h, counted: %s, lasts: 3 h}}}}"
        .formatted(one(machines(t), r), one(List.of("running", "crewed", "calendar"), r));
  }

  private static String form(PlantTree t, Random r) {
    List<String> crops =
        t.names("crops").stream().filter(c -> !t.has("crops." + c + ".form_of")).toList();
    String crop = one(crops, r);
    String unit = t.has("crops." + crop + ".module") ? "module" : "bale";
    return "crops: {%s_twin: {form_of: %s, %s: %s}}"
        .formatted(crop, crop, unit, PlantTree.flow(t.at("crops." + crop + "." + unit)));
  }

  private static String step(PlantTree t, Random r, String line) {
    List<String> steps =
        t.names("lines." + line + ".steps").stream().filter(machines(t)::contains).toList();
    return one(steps, r);
  }

  private static String flat(PlantTree t, Random r) {
    String line = one(t.names("lines"), r);
    String step = step(t, r, line);
    String path = "lines." + line + ".steps." + step;
    return t.has(path + ".rate") && !t.has(path + ".rate_by_moisture")
        ? "lines: {%s: {steps: {%s: {rate_by_moisture: [[5 %%, 1], [20 %%, 1]]}}}}"
            .formatted(line, step)
        : "";
  }

  private static String limits(PlantTree t, Random r) {
    String place = one(t.names("yard.places"), r);
    return t.has("yard.places." + place + ".limits")
        ? ""
        : "yard: {places: {" + place + ": {limits: {mass: 900000 t}}}}";
  }

  private static String nothingDries(PlantTree t, Random r) {
    String line = one(t.names("lines"), r);
    String step = step(t, r, line);
    String path = "lines." + line + ".steps." + step;
    return t.has(path + ".dries")
        ? ""
        : "lines: {%s: {steps: {%s: {dries: 0 %%}}}}".formatted(line, step);
  }

  private static String grades(PlantTree t, Random r) {
    String crop = t.names("crops").get(0);
    return t.has("money.crop_prices." + crop) && !t.has("money.crop_grades")
        ? "money: {crop_grades: {" + crop + ": [{by: moisture, steps: [[0 %, 1], [12 %, 1]]}]}}"
        : "";
  }

  private static String advance(PlantTree t, Random r) {
    String crop = t.names("crops").get(0);
    return t.has("deliveries." + crop + ".fields")
            && t.has("money.currency")
            && !t.has("money.crop_terms")
        ? "money: {crop_terms: {" + crop + ": {advance: {per_area: 5 USD/acre}}}}"
        : "";
  }

  private static String freight(PlantTree t, Random r) {
    String product = one(t.names("products"), r);
    return t.has("products." + product + ".freight")
        ? ""
        : "products: {" + product + ": {freight: 0 USD/t}}";
  }

  private static String forAllLines(PlantTree t, Random r) {
    List<String> patches = new ArrayList<>();
    for (String machine : machines(t)) {
      List<String> lines =
          t.names("lines").stream().filter(l -> t.has("lines." + l + ".steps." + machine)).toList();
      for (String stop : t.names("machines." + machine + ".stops")) {
        String path = "machines." + machine + ".stops." + stop;
        if (!lines.isEmpty()
            && !t.has(path + ".for")
            && (t.text(path + ".counted").equals("running")
                || t.text(path + ".counted").equals("mass"))) {
          patches.add("machines: {%s: {stops: {%s: {for: %s}}}}".formatted(machine, stop, lines));
        }
      }
    }
    return patches.isEmpty() ? "" : String.join("\n", patches);
  }

  private static String atMost(PlantTree t, Random r) {
    String product = one(t.names("products"), r);
    return t.text("products." + product + ".price").startsWith("-")
            || t.has("products." + product + ".moisture.basis")
            || !t.has("products." + product + ".moisture")
        ? ""
        : "products: {%s: {moisture: {basis: %s, at_most: 99 %%}}}"
            .formatted(product, t.text("products." + product + ".moisture"));
  }
}
