package hurdline.combined;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Changes that switch a feature of the plant format on, each for things of the plant that are
 * chosen by chance. What comes out may be no plant; whoever asks has it read and drops the change.
 */
final class Features {
  private final PlantTree plant;
  private final Random random;

  Features(PlantTree plant, Random random) {
    this.plant = plant;
    this.random = random;
  }

  /** All of them by name; a patch on the plant, empty where it has nothing that fits. */
  static Map<String, Function<Features, String>> all() {
    Map<String, Function<Features, String>> all = new LinkedHashMap<>();
    all.put("stop", Features::stop);
    all.put("stop by line", Features::stopByLine);
    all.put("planned stop", Features::plannedStop);
    all.put("joint needs", Features::jointNeeds);
    all.put("second of a resource", Features::moreOfAResource);
    all.put("priority of a resource", Features::priorityOfAResource);
    all.put("store", Features::store);
    all.put("orders", Features::orders);
    all.put("freight", Features::freight);
    all.put("market", Features::market);
    all.put("cleanliness", Features::cleanliness);
    all.put("wet product", Features::wetProduct);
    all.put("purge", Features::purge);
    all.put("slow change", Features::slowChange);
    all.put("spouts", Features::spouts);
    all.put("bin", Features::bin);
    all.put("bin levels", Features::binLevels);
    all.put("own hours", Features::ownHours);
    all.put("return to bin", Features::returnToBin);
    all.put("loop", Features::loop);
    all.put("priority of a step", Features::priorityOfAStep);
    all.put("dries", Features::dries);
    all.put("breakage", Features::breakage);
    all.put("rate by", Features::rateBy);
    all.put("outlet by", Features::outletBy);
    all.put("attribute", Features::attribute);
    all.put("spread", Features::spread);
    all.put("form", Features::form);
    all.put("place", Features::place);
    all.put("small places", Features::smallPlaces);
    all.put("pick", Features::pick);
    all.put("full yard", Features::fullYard);
    all.put("lift", Features::lift);
    all.put("fields", Features::fields);
    all.put("loads", Features::loads);
    all.put("weigh and reject", Features::reject);
    all.put("test of loads", Features::fails);
    all.put("weather", Features::weather);
    all.put("trucks", Features::trucks);
    all.put("send home", Features::sendHome);
    all.put("changeover", Features::changeover);
    all.put("split campaign", Features::splitCampaign);
    all.put("more shifts", Features::moreShifts);
    all.put("second year", Features::secondYear);
    all.put("attendance", Features::attendance);
    all.put("terms", Features::terms);
    all.put("grades", Features::grades);
    all.put("basis", Features::basis);
    all.put("tariff", Features::tariff);
    all.put("base load", Features::baseLoad);
    all.put("overtime", Features::overtime);
    all.put("rent", Features::rent);
    all.put("fuel", Features::fuel);
    all.put("cash", Features::cash);
    all.put("mill by orders", Features::millByOrders);
    all.put("mill mix", Features::millMix);
    all.put("second line of a crop", Features::secondLine);
    all.put("two packages", Features::twoPackages);
    all.put("with flow", Features::withFlow);
    all.put("closed days", Features::closedDays);
    all.put("little stock", Features::littleStock);
    return all;
  }

  private <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private String word(String... of) {
    return of[random.nextInt(of.length)];
  }

  private int number(int from, int to) {
    return from + random.nextInt(to - from + 1);
  }

  private boolean often() {
    return random.nextInt(3) > 0;
  }

  private boolean seldom() {
    return random.nextInt(4) == 0;
  }

  private String line() {
    return one(plant.names("lines"));
  }

  private List<String> machines(String... kinds) {
    return plant.names("machines").stream()
        .filter(m -> Stream.of(kinds).anyMatch(plant.text("machines." + m + ".kind")::equals))
        .toList();
  }

  private List<String> bins() {
    return machines("bin");
  }

  private String machine() {
    List<String> all = new ArrayList<>(plant.names("machines"));
    all.removeAll(bins());
    return one(all);
  }

  private List<String> steps(String line) {
    return plant.names("lines." + line + ".steps");
  }

  /** Those that part what they get. */
  private List<String> parting(String line) {
    return steps(line).stream()
        .filter(s -> !plant.list("lines." + line + ".steps." + s + ".outlets").isEmpty())
        .toList();
  }

  private List<String> packed() {
    return plant.names("products").stream()
        .filter(p -> plant.has("products." + p + ".package"))
        .toList();
  }

  private String product() {
    List<String> packed = packed();
    return packed.isEmpty() || seldom() ? one(plant.names("products")) : one(packed);
  }

  private String crop() {
    return one(plant.names("crops"));
  }

  private String ownCrop() {
    return one(
        plant.names("crops").stream().filter(c -> !plant.has("crops." + c + ".form_of")).toList());
  }

  private LocalDate from() {
    return LocalDate.parse(plant.text("calendar.from"));
  }

  private LocalDate to() {
    return LocalDate.parse(plant.text("calendar.to"));
  }

  private LocalDate day() {
    return from().plusDays(random.nextInt((int) (to().toEpochDay() - from().toEpochDay() + 1)));
  }

  private String resource() {
    List<String> known = plant.names("resources");
    return known.isEmpty() || seldom() ? word("helper", "crane") : one(known);
  }

  /** A resource and its count, so that it is there. */
  private String there(String resource) {
    return plant.has("resources." + resource)
        ? ""
        : "\nresources: {" + resource + ": {count: " + number(1, 2) + "}}";
  }

  private String lasting(int low, int high) {
    int mean = number(low, high);
    return switch (random.nextInt(4)) {
      case 0 -> mean + " min";
      case 1 -> "{exponential: {mean: " + mean + " min, low: 1 min}}";
      case 2 ->
          "{triangular: {low: %d min, mode: %d min, high: %d min}}".formatted(low, mean, high + 1);
      default -> "{observed: [%d min, %d min, %d min]}".formatted(low, mean, high);
    };
  }

  private String between(int low, int high, String unit) {
    int mean = number(low, high);
    return switch (random.nextInt(3)) {
      case 0 -> mean + " " + unit;
      case 1 -> "{exponential: {mean: " + mean + " " + unit + "}}";
      default -> "{weibull: {shape: 1.7, scale: " + mean + " " + unit + "}}";
    };
  }

  private String stop(String machine, String extra) {
    String counted = word("running", "mass", "crewed", "calendar");
    String every = counted.equals("mass") ? between(20, 300, "t") : between(3, 90, "h");
    String needs = resource();
    return "machines: {%s: {stops: {s%d: {every: %s, counted: %s, lasts: %s%s%s%s%s}}}}%s"
        .formatted(
            machine,
            number(1, 3),
            every,
            counted,
            lasting(5, 150),
            often() ? "" : ", repair: any-time",
            often() ? "" : ", cost: 70 USD",
            often() ? "" : ", needs: " + needs,
            extra,
            there(needs));
  }

  private String stop() {
    return stop(machine(), "");
  }

  private String stopByLine() {
    String line = line();
    List<String> own = new ArrayList<>(steps(line));
    own.removeAll(bins());
    return stop(
        one(own), ", for: [" + (often() ? line : plant.text("lines." + line + ".crop")) + "]");
  }

  private String plannedStop() {
    TreeSet<String> days = new TreeSet<>();
    for (int k = 0; k < number(1, 4); k++) {
      days.add(day().toString());
    }
    return "machines: {%s: {stops: {plan%d: {on: %s, at: \"%02d:00\", lasts: %d h, repair: %s, cost: 50 USD%s}}}}"
        .formatted(
            machine(),
            number(1, 2),
            days,
            number(0, 23),
            number(1, 30),
            word("any-time", "in-hours"),
            seldom() ? ", repeats: yearly" : "");
  }

  private String jointNeeds() {
    String first = resource();
    String second = resource();
    String both = first.equals(second) ? first : "[" + first + ", " + second + "]";
    List<String> patches = new ArrayList<>();
    for (String package_ : plant.names("packages")) {
      patches.add("packages: {" + package_ + ": {needs: " + both + "}}");
    }
    for (String mill : machines("hammer-mill")) {
      patches.add("machines: {" + mill + ": {needs: " + both + "}}");
    }
    for (String of : plant.names("deliveries")) {
      patches.add("deliveries: {" + of + ": {unload: {lasts: 9 min, needs: " + both + "}}}");
      patches.add("deliveries: {" + of + ": {weigh: {lasts: 3 min, needs: " + both + "}}}");
    }
    if (patches.isEmpty()) {
      return "";
    }
    return one(patches) + there(first) + (there(first).isEmpty() ? there(second) : "");
  }

  private String moreOfAResource() {
    return plant.names("resources").isEmpty()
        ? ""
        : "resources: {" + one(plant.names("resources")) + ": {count: " + number(1, 3) + "}}";
  }

  private String priorityOfAResource() {
    List<String> kinds =
        new ArrayList<>(
            List.of("lift", "load", "weigh", "unload", "package_change", "screen_change"));
    java.util.Collections.shuffle(kinds, random);
    return plant.names("resources").isEmpty()
        ? ""
        : "resources: {"
            + one(plant.names("resources"))
            + ": {priority: "
            + kinds.subList(0, number(1, 6))
            + "}}";
  }

  private String store() {
    List<String> packed = packed();
    if (packed.isEmpty()) {
      return "";
    }
    String product = one(packed);
    String trucks =
        often()
            ? ", pick_ups: {%sat: \"%02d:30\", load: %d ton%s}"
                .formatted(
                    often() ? "days: [Tue, Fri], " : "",
                    number(0, 23),
                    number(4, 22),
                    often() ? "" : ", at_most: " + number(1, 3))
            : "";
    String worth = often() ? ", worth: 90 USD/ton" : "";
    return "products: {%s: {store: hall%s%s}}\nstores: {hall: {holds: %d ton}}"
        .formatted(product, trucks, worth, number(15, 200));
  }

  private String orders() {
    StringBuilder orders = new StringBuilder();
    for (int k = 0; k < number(1, 3); k++) {
      orders.append(orders.isEmpty() ? "" : ", ");
      orders.append(
          "{mass: %d ton, due: %s%s%s}"
              .formatted(
                  number(2, 120),
                  day(),
                  often() ? ", late_penalty: " + number(10, 300) + " USD/d" : "",
                  often() ? "" : ", price: " + number(90, 600) + " USD/ton"));
    }
    return "products: {%s: {orders: [%s]%s}}"
        .formatted(product(), orders, seldom() ? ", sells: orders" : "");
  }

  private String freight() {
    return "products: {%s: {freight: %s}}"
        .formatted(
            product(),
            switch (random.nextInt(3)) {
              case 0 -> number(4, 40) + " USD/ton";
              case 1 -> "{load: " + number(8, 22) + " ton, cost: 480 USD}";
              default -> "{load: 20 ton, packages: " + number(20, 140) + ", cost: 480 USD}";
            });
  }

  private String market() {
    int first = number(5, 200);
    String product = product();
    return "products: {%s: {market: {per: %s, beyond: [[%d ton, 0.7], [%d ton, %s]]}%s}}"
        .formatted(
            product,
            word("month", "year"),
            first,
            first + number(5, 200),
            word("0", "0.3"),
            plant.has("products." + product + ".store") ? ", worth: 70 USD/ton" : "");
  }

  private String component() {
    Object components = plant.at("components");
    List<String> all =
        components instanceof List<?> list
            ? list.stream().map(Object::toString).toList()
            : plant.names("components");
    return all.isEmpty() ? word("hurd", "fines", "short_fiber") : one(all);
  }

  private String cleanliness() {
    List<String> packed = packed();
    return packed.isEmpty()
        ? ""
        : "products: {%s: {cleanliness: {component: %s, %s}}}"
            .formatted(
                one(packed),
                component(),
                word(
                    "line: [[2 %, 1.05], [10 %, 0.8], [40 %, 0.7]]",
                    "steps: [[0 %, 1.05], [5 %, 1], [12 %, 0.6]]"));
  }

  private String wetProduct() {
    return "products: {%s: {moisture: {basis: %s, at_most: %d %%%s}}}"
        .formatted(
            product(),
            word("12 %", "as is", "10.7 %"),
            number(9, 15),
            often() ? ", dock: 40 %" : "");
  }

  private String purge() {
    List<String> packed = packed();
    return packed.isEmpty()
        ? ""
        : "products: {%s: {purge: {packages: %d, factor: %s}}}"
            .formatted(one(packed), number(1, 40), word("0 %", "60 %", "100 %"));
  }

  private String slowChange() {
    if (plant.names("packages").isEmpty()) {
      return "";
    }
    String needs = resource();
    return "packages: {%s: {change: %s%s}}%s"
        .formatted(
            one(plant.names("packages")),
            lasting(1, 12),
            often() ? ", needs: " + needs : "",
            there(needs));
  }

  private String spouts() {
    List<String> fillers = machines("bag-filler");
    List<String> presses = machines("press");
    return !fillers.isEmpty() && (presses.isEmpty() || often())
        ? "machines: {" + one(fillers) + ": {spouts: " + number(1, 3) + "}}"
        : presses.isEmpty()
            ? ""
            : "machines: {" + one(presses) + ": {boxes: " + number(1, 3) + "}}";
  }

  /** A bin in the way from one step to another. */
  private String bin() {
    String line = line();
    List<String> hands =
        steps(line).stream()
            .filter(s -> steps(line).contains(plant.text("lines." + line + ".steps." + s + ".to")))
            .filter(s -> !bins().contains(s))
            .filter(s -> !bins().contains(plant.text("lines." + line + ".steps." + s + ".to")))
            .toList();
    String bin = "pit_" + line + number(1, 2);
    String made =
        "machines: {%s: {kind: bin, holds: %s t%s}}\n"
            .formatted(
                bin,
                word("0.05", "0.4", "3", "20"),
                seldom() ? ", start_at: 0.04 t, stop_at: 0.01 t" : "");
    if (!hands.isEmpty() && seldom()) {
      String step = one(hands);
      String next = plant.text("lines." + line + ".steps." + step + ".to");
      return made
          + "lines: {%s: {steps: {%s: {to: %s}, %s: {to: %s}}}}"
              .formatted(line, step, bin, bin, next);
    }
    List<String> parting = parting(line);
    if (parting.isEmpty()) {
      return "";
    }
    String step = one(parting);
    List<Object> outlets = plant.copy().list("lines." + line + ".steps." + step + ".outlets");
    @SuppressWarnings("unchecked")
    Map<String, Object> outlet = (Map<String, Object>) one(outlets);
    String next = outlet.get("to").toString();
    if (!steps(line).contains(next) || bins().contains(next)) {
      return "";
    }
    outlet.put("to", bin);
    return made
        + "lines: {%s: {steps: {%s: {outlets: %s}, %s: {to: %s}}}}"
            .formatted(line, step, PlantTree.flow(outlets), bin, next);
  }

  private String binLevels() {
    return bins().isEmpty()
        ? ""
        : "machines: {%s: {start_at: %s t, stop_at: %s t, holds: %s t}}"
            .formatted(one(bins()), word("0.5", "1.5"), word("0.1", "0.4"), word("1.6", "4", "9"));
  }

  private String binOf(String line) {
    List<String> own = steps(line).stream().filter(bins()::contains).toList();
    return own.isEmpty() ? "" : one(own);
  }

  private String ownHours() {
    String line = line();
    String bin = binOf(line);
    if (bin.isEmpty()) {
      return "";
    }
    return "lines: {%s: {steps: {%s: {own_hours: {shifts: [%s]%s}}}}}"
        .formatted(
            line,
            bin,
            one(plant.names("calendar.shifts")),
            seldom() ? ", from: " + from() + ", to: " + to() : "");
  }

  /** Part of what a step behind a bin handles goes back into that bin. */
  private String returnToBin() {
    String line = line();
    String bin = binOf(line);
    if (bin.isEmpty()) {
      return "";
    }
    String next = plant.text("lines." + line + ".steps." + bin + ".to");
    String path = "lines." + line + ".steps." + next;
    String rest = plant.text(path + ".to");
    if (rest.isEmpty()) {
      return "";
    }
    return "machines: {%s: {start_at: 0.5 t, stop_at: 0.2 t}}\nlines: {%s: {steps: {%s: {to: null, outlets: [{to: %s, takes: {%s: %d %%}}, {to: %s}]}}}}"
        .formatted(bin, line, next, bin, component(), number(5, 40), rest);
  }

  /** A loop inside a stretch: a step sends some of one component back to one before it. */
  private String loop() {
    String line = line();
    List<String> own = new ArrayList<>(steps(line));
    own.removeAll(bins());
    int at = random.nextInt(own.size());
    String step = own.get(at);
    String back = own.get(number(0, at));
    String path = "lines." + line + ".steps." + step;
    String part = component();
    if (plant.has(path + ".to")) {
      return "lines: {%s: {steps: {%s: {to: null, outlets: [{to: %s, takes: {%s: %d %%}}, {to: %s}]}}}}"
          .formatted(line, step, back, part, number(5, 50), plant.text(path + ".to"));
    }
    List<Object> outlets = plant.copy().list(path + ".outlets");
    if (outlets.isEmpty()) {
      return "";
    }
    outlets.add(Map.of("to", back, "takes", Map.of(part, number(1, 8) + " %")));
    return "lines: {%s: {steps: {%s: {outlets: %s}}}}"
        .formatted(line, step, PlantTree.flow(outlets));
  }

  private String priorityOfAStep() {
    String line = line();
    String step = seldom() ? plant.text("lines." + line + ".feed") : binOf(line);
    return step.isEmpty()
        ? ""
        : "lines: {%s: {steps: {%s: {priority: %d}}}}".formatted(line, step, number(0, 3));
  }

  private String step(String line) {
    List<String> own = new ArrayList<>(steps(line));
    own.removeAll(bins());
    return one(own);
  }

  private String dries() {
    String line = line();
    return "lines: {%s: {steps: {%s: {dries: %d %%}}}}".formatted(line, step(line), number(2, 40));
  }

  private String breakage() {
    String line = line();
    return "lines: {%s: {steps: {%s: {breakage: {%s: {into: %s, share: %d %%}}}}}}"
        .formatted(line, step(line), component(), component(), number(2, 30));
  }

  private String rateBy() {
    String line = line();
    String step = step(line);
    String rate = plant.has("lines." + line + ".steps." + step + ".rate") ? "" : "rate: 5 t/h, ";
    return "lines: {%s: {steps: {%s: {%s%s}}}}"
        .formatted(
            line,
            step,
            rate,
            word(
                "rate_by_moisture: [[9 %, 1.1], [14 %, 0.8]]",
                "rate_by_diameter: [[9 mm, 1.1], [14 mm, 0.8]]",
                "rate_by: {soil: [[1 %, 1.1], [6 %, 0.8]]}"));
  }

  private String outletBy() {
    String line = line();
    List<String> parting = parting(line);
    if (parting.isEmpty()) {
      return "";
    }
    String step = one(parting);
    List<Object> outlets = plant.copy().list("lines." + line + ".steps." + step + ".outlets");
    @SuppressWarnings("unchecked")
    Map<String, Object> outlet = (Map<String, Object>) one(outlets);
    if (!(outlet.get("takes") instanceof Map<?, ?> takes) || takes.isEmpty()) {
      return "";
    }
    String part = one(new ArrayList<>(takes.keySet())).toString();
    if (often()) {
      outlet.put(
          "by_moisture", Map.of(part, List.of(List.of("9 %", "1.1"), List.of("15 %", "0.7"))));
    } else {
      outlet.put(
          "by", Map.of("soil", Map.of(part, List.of(List.of("1 %", "1"), List.of("6 %", "0.6")))));
    }
    return "lines: {%s: {steps: {%s: {outlets: %s}}}}"
        .formatted(line, step, PlantTree.flow(outlets));
  }

  private String attribute() {
    return "crops: {%s: {attributes: {soil: {normal: {mean: 3 %%, sd: 1.5 %%, low: 0 %%}}}}}"
        .formatted(ownCrop());
  }

  private String spread() {
    return "crops: {%s: {composition_cv: %d %%, moisture: {normal: {mean: %d %%, sd: 2 %%, low: 5 %%, high: 25 %%}}, diameter: {uniform: {low: 8 mm, high: 15 mm}}}}"
        .formatted(ownCrop(), number(1, 12), number(9, 14));
  }

  private String form() {
    String crop = ownCrop();
    String form = crop + "_form";
    String places = "places: {form_row: {holds: 300 modules, crops: [" + form + "]}}";
    String on = often() ? "on_hand: {" + form + ": " + number(5, 60) + " modules}, " : "";
    String loads =
        often()
            ? "\ndeliveries: {%s: {loads: {every: {exponential: {mean: %d h}}, modules: %d}}}"
                .formatted(form, number(8, 60), number(1, 4))
            : "";
    String own = seldom() ? ", moisture: 11 %" : "";
    return "crops: {%s: {form_of: %s, module: {mass: {normal: {mean: 1800 kg, sd: 120 kg, low: 900 kg}}}%s}}\nyard: {%s%s}%s"
        .formatted(form, crop, own, on, places, loads);
  }

  private String place() {
    String place = one(plant.names("yard.places"));
    String what =
        switch (random.nextInt(6)) {
          case 0 -> "loss: " + number(1, 9) + " %/month";
          case 1 ->
              "moisture: {dry: 10 %, dry_within: "
                  + number(5, 60)
                  + " d"
                  + (often() ? ", wet: 35 %, wet_within: 25 d" : "")
                  + "}";
          case 2 ->
              "stack: {long: 8, wide: 3, high: 2, lane: 20 ft}, cover: {cost: 60 USD, hands: 2, lasts: 40 min, loss: 0.5 %/month}";
          case 3 ->
              "stack: {long: 8, wide: 3, high: 2, lane: 20 ft}, cost: 14 USD/m2, life: 15 yr, limits: {stack_mass: 20 ton, mass: "
                  + number(40, 600)
                  + " ton, value: 40000 USD}";
          case 4 -> "limits: {mass: " + number(40, 600) + " ton}, loss: 2 %/month";
          default -> "loss: 0.7 %/month, moisture: {dry: 9 %, dry_within: 20 d}";
        };
    String crops =
        what.contains("stack")
            ? "\ncrops: {"
                + String.join(
                    ", ",
                    plant.names("crops").stream()
                        .map(
                            c ->
                                c
                                    + ": {"
                                    + (plant.has("crops." + c + ".module") ? "module" : "bale")
                                    + (plant.has("crops." + c + ".bale.diameter")
                                            || plant.has("crops." + c + ".module.diameter")
                                        ? ": {}}"
                                        : ": {long: 8 ft, wide: 4 ft, high: 3 ft}}"))
                        .toList())
                + "}"
            : "";
    return "yard: {places: {" + place + ": {" + what + "}}}" + crops;
  }

  private String smallPlaces() {
    String place = one(plant.names("yard.places"));
    String unit = plant.text("yard.places." + place + ".holds").replaceAll("[0-9. ]", "");
    return "yard: {places: {" + place + ": {holds: " + number(30, 400) + " " + unit + "}}}";
  }

  private String pick() {
    return "yard: {pick: %s}"
        .formatted(
            word(
                "oldest-first",
                "newest-first",
                "driest-first",
                "{places: [" + one(plant.names("yard.places")) + "]}"));
  }

  private String fullYard() {
    return "yard: {when_full: %s, field_loss: %d %%/month}"
        .formatted(word("hold-at-field", "turn-away"), number(0, 6));
  }

  private String lift() {
    String needs = resource();
    String all =
        "yard: {lift: {lasts: %s, needs: %s, bales: %d}}%s"
            .formatted(lasting(1, 12), needs, number(1, 3), there(needs));
    return plant.names("crops").stream().anyMatch(c -> plant.has("crops." + c + ".module"))
        ? all.replace(", bales: ", ", modules: ")
        : all;
  }

  private String fields() {
    List<String> with =
        plant.names("deliveries").stream()
            .filter(c -> plant.has("deliveries." + c + ".fields"))
            .toList();
    if (with.isEmpty()) {
      String crop = crop();
      if (plant.has("crops." + crop + ".module") || plant.has("deliveries." + crop)) {
        return "";
      }
      return "deliveries: {%s: {fields: {acres: {area: %d acre, yield: 3 ton/acre, ready: %s, ready_sd: 4 d, baling: 150 bales/d}}, hours: {from: \"07:00\", to: \"17:00\"}, trucks: {count: 2, bales: 30, load: {lasts: 30 min}, drive: 30 min}}}"
          .formatted(crop, number(40, 300), day());
    }
    String crop = one(with);
    return "deliveries: {%s: {%s}}"
        .formatted(
            crop,
            switch (random.nextInt(4)) {
              case 0 -> "balers: 1";
              case 1 -> "yield_factor: {normal: {mean: 100 %, sd: 20 %, low: 30 %}}";
              case 2 ->
                  "fields: {"
                      + one(plant.names("deliveries." + crop + ".fields"))
                      + ": {moisture: 13 %}}";
              default -> "hands: " + number(1, 3) + ", waiting_cost: 50 USD/h";
            });
  }

  private String loads() {
    String crop = crop();
    String unit = plant.has("crops." + crop + ".module") ? "modules" : "bales";
    LocalDate first = day();
    LocalDate last = first.plusDays(number(5, 60));
    return "deliveries: {%s: {loads: {every: {exponential: {mean: %d h}}, %s: %d%s%s}}}"
        .formatted(
            crop,
            number(2, 30),
            unit,
            number(1, 30),
            often() && !last.isAfter(to()) ? ", from: " + first + ", to: " + last : "",
            often() ? ", hours: {from: \"06:00\", to: \"18:00\"}" : "");
  }

  private String delivered() {
    return plant.names("deliveries").isEmpty() ? "" : one(plant.names("deliveries"));
  }

  private String reject() {
    String crop = delivered();
    return crop.isEmpty()
        ? ""
        : "deliveries: {%s: {weigh: {lasts: 4 min}, reject: [{by: moisture, above: %s %%}]}}"
            .formatted(crop, word("12.2", "12.8", "13.5"));
  }

  private String fails() {
    String crop = delivered();
    return crop.isEmpty()
        ? ""
        : "deliveries: {%s: {release_after: %s%s}}"
            .formatted(
                crop,
                word("6 h", "3 d", "{uniform: {low: 1 d, high: 9 d}}"),
                often() ? ", fails: {share: " + number(1, 30) + " %, cost: 90 USD}" : "");
  }

  private String weather() {
    String crop = delivered();
    return crop.isEmpty()
        ? ""
        : "deliveries: {%s: {weather: {wet_day: 30 %%, wet_after_wet: 50 %%, by_month: {Sep: {wet_day: 12 %%}}, dry_days: %d}}}"
            .formatted(crop, number(0, 2));
  }

  private String trucks() {
    String crop = delivered();
    return crop.isEmpty() || !plant.has("deliveries." + crop + ".trucks")
        ? ""
        : "deliveries: {%s: {trucks: {count: %d}}}".formatted(crop, number(1, 6));
  }

  private List<Integer> campaigns() {
    List<Integer> all = new ArrayList<>();
    for (int at = 0; at < plant.list("season").size(); at++) {
      if (plant.has("season." + at + ".line")) {
        all.add(at);
      }
    }
    return all;
  }

  private String season(List<Object> changed) {
    return "season: " + PlantTree.flow(changed);
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> map(Object of) {
    return (Map<String, Object>) of;
  }

  private String sendHome() {
    if (campaigns().isEmpty()) {
      return "";
    }
    List<Object> season = plant.copy().list("season");
    Map<String, Object> campaign = map(season.get(one(campaigns())));
    String crop = plant.text("lines." + campaign.get("line") + ".crop");
    String unit = plant.has("crops." + crop + ".module") ? "modules" : "bales";
    int below = number(1, 40);
    campaign.put(
        "send_home",
        Map.of("below", below + " " + unit, "back_at", below + number(0, 90) + " " + unit));
    return season(season);
  }

  private String changeover() {
    List<Object> season = plant.copy().list("season");
    int at = number(1, season.size());
    Map<String, Object> changeover = new LinkedHashMap<>();
    changeover.put("changeover", number(0, 4) + " d");
    changeover.put("hands", String.valueOf(number(0, 6)));
    if (at < season.size() && map(season.get(at)).containsKey("changeover")) {
      season.set(at, changeover);
    } else {
      season.add(at, changeover);
    }
    return season(season);
  }

  private String splitCampaign() {
    if (campaigns().isEmpty()) {
      return "";
    }
    List<Object> season = plant.copy().list("season");
    int at = one(campaigns());
    Map<String, Object> first = map(season.get(at));
    LocalDate from = LocalDate.parse(first.get("from").toString());
    LocalDate to = LocalDate.parse(first.get("to").toString());
    int days = (int) (to.toEpochDay() - from.toEpochDay());
    if (days < 20) {
      return "";
    }
    LocalDate ends = from.plusDays(number(5, days - 12));
    LocalDate begins = ends.plusDays(number(1, 10));
    Map<String, Object> second = new LinkedHashMap<>(first);
    first.put("to", ends.toString());
    second.put("from", begins.toString());
    if (often()) {
      second.remove("send_home");
    }
    season.add(at + 1, second);
    return season(season);
  }

  private String moreShifts() {
    if (campaigns().isEmpty()) {
      return "";
    }
    List<Object> season = plant.copy().list("season");
    Map<String, Object> campaign = map(season.get(one(campaigns())));
    List<String> shifts = plant.names("calendar.shifts");
    campaign.put("shifts", List.of(one(shifts)));
    String added = "";
    if (often()) {
      added =
          "\ncalendar: {shifts: {late_run: {days: [Mon, Wed, Thu, Sat], from: \"22:00\", to: \"05:30\", rests: [{at: \"00:30\", lasts: 20 min}]}}}";
      campaign.put("shifts", List.of(one(shifts), "late_run"));
      added += "\ncrews: {" + campaign.get("line") + ": {late_run: " + number(0, 5) + "}}";
    }
    return season(season) + added;
  }

  /** The season once more in the next year, on the same days of the week. */
  private String secondYear() {
    List<Object> season = plant.copy().list("season");
    if (to().isAfter(from().plusDays(400))) {
      return "";
    }
    List<Object> all = new ArrayList<>(season);
    for (Object entry : plant.copy().list("season")) {
      Map<String, Object> next = map(entry);
      for (String key : List.of("from", "to")) {
        if (next.containsKey(key)) {
          next.put(key, LocalDate.parse(next.get(key).toString()).plusDays(364).toString());
        }
      }
      all.add(next);
    }
    return season(all) + "\ncalendar: {to: " + to().plusDays(364) + ", repeats: null}";
  }

  private String attendance() {
    List<String> crews =
        plant.names("crews").stream().filter(l -> !plant.names("crews." + l).isEmpty()).toList();
    if (crews.isEmpty()) {
      return "";
    }
    String line = one(crews);
    String shift = one(plant.names("crews." + line));
    int hands = Integer.parseInt(plant.text("crews." + line + "." + shift));
    if (hands < 2) {
      return "";
    }
    int own = number(hands / 2, hands);
    return "hands: {attendance: {%s: {%s: {least: %d, own: %d, absence: %d %%, shares: spares}}}, shared: {spares: {hands: %d, absence: 10 %%}}}"
        .formatted(line, shift, number(1, hands), own, number(0, 15), number(1, 4));
  }

  private String terms() {
    String crop = ownCrop();
    String advance =
        switch (random.nextInt(3)) {
          case 0 -> "";
          case 1 -> ", advance: {per_area: 50 USD/acre, interest: 9 %/yr, if_short: owed}";
          default ->
              ", advance: {per_mass: 30 USD/ton, paid: "
                  + day()
                  + ", interest: 9 %/yr, if_short: kept}";
        };
    return "money: {crop_terms: {" + crop + ": {per_area: 80 USD/acre" + advance + "}}}";
  }

  private String grades() {
    return "money: {crop_grades: {%s: [{by: %s}]}}"
        .formatted(
            ownCrop(),
            word(
                "moisture, steps: [[0 %, 1], [12 %, 0.9]]",
                "moisture, line: [[9 %, 1.05], [15 %, 0.8]]",
                "soil, line: [[2 %, 1], [6 %, 0.8]]"));
  }

  private String basis() {
    return "money: {moisture_basis: {%s: %s}, crop_prices: {%s: %d USD/ton}}"
        .formatted(ownCrop(), word("12 %", "as is", "10 %"), ownCrop(), number(40, 200));
  }

  private String tariff() {
    return "money: {electricity: {energy: 0.1 USD/kWh, demand: 12 USD/kW/month, periods: {peak: {months: [Jun, Jul, Aug, Sep], days: [Mon, Tue, Wed, Thu, Fri], from: \"12:15\", to: \"20:00\", energy: 0.2 USD/kWh, demand: 6 USD/kW/month}, night: {from: \"21:00\", to: \"06:00\", energy: 0.05 USD/kWh}}, ratchets: [{at_least: 70 %%, of_last: %d, before: 150 kW}], holidays: [%s]}}"
        .formatted(number(1, 12), day());
  }

  private String baseLoad() {
    return "base_loads: {lamps: {power: %d kW, days: [Mon, Tue, Fri], from: \"17:30\", to: \"%s\"}}"
        .formatted(number(2, 20), word("23:00", "04:15"));
  }

  private String overtime() {
    return "money: {wage: 22 USD/h, overtime: {after: %d h, pays: 1.5%s}}"
        .formatted(number(20, 45), often() ? "" : ", for: [" + line() + "]");
  }

  private String rent() {
    return "money: {rent: {line: " + line() + ", fixed: 900 USD/month, fed: 9 USD/ton}}";
  }

  private String fuel() {
    return "money: {drier_fuel: 0.06 USD/kg}";
  }

  private String cash() {
    return "money: {assets: {cost: 500000 USD, age: 1 yr}, loan: {share: 50 %, rate: 7 %/yr, term: 8 yr}, tax: {rate: 20 %, depreciation: {over: 6 yr, method: declining-balance, first_year: half}}}";
  }

  private List<String> mills(String line) {
    return steps(line).stream()
        .filter(machines("hammer-mill")::contains)
        .filter(m -> plant.has("lines." + line + ".steps." + m + ".makes"))
        .toList();
  }

  private String millByOrders() {
    String line = line();
    if (mills(line).isEmpty()) {
      return "";
    }
    String mill = one(mills(line));
    String path = "lines." + line + ".steps." + mill;
    List<String> screens = plant.names(path + ".makes");
    String product = plant.text(path + ".makes." + one(screens));
    String then = seldom() ? "stand-still" : one(screens);
    return "lines: {%s: {steps: {%s: {mix: orders, min_run: %d h%s}}}}\nproducts: {%s: {orders: [{mass: %d ton, due: %s, late_penalty: 60 USD/d}]}}"
        .formatted(
            line,
            mill,
            number(1, 10),
            often() ? ", then: " + then : "",
            product,
            number(5, 80),
            day());
  }

  private String millMix() {
    String line = line();
    if (mills(line).isEmpty()) {
      return "";
    }
    String needs = resource();
    return "lines: {%s: {steps: {%s: {min_run: %d h}}}}\nmachines: {%s: {screen_change: %s, needs: %s}}%s"
        .formatted(
            line,
            mills(line).get(0),
            number(1, 10),
            mills(line).get(0),
            lasting(10, 60),
            needs,
            there(needs));
  }

  /** The same line once more over machines of its own or shared, in other dates. */
  private String secondLine() {
    String line = line();
    if (plant.has("lines.second")) {
      return "";
    }
    List<Object> season = plant.copy().list("season");
    List<Integer> own =
        campaigns().stream().filter(c -> plant.text("season." + c + ".line").equals(line)).toList();
    if (own.isEmpty()) {
      return "";
    }
    int at = one(own);
    Map<String, Object> first = map(season.get(at));
    LocalDate from = LocalDate.parse(first.get("from").toString());
    LocalDate to = LocalDate.parse(first.get("to").toString());
    int days = (int) (to.toEpochDay() - from.toEpochDay());
    if (days < 30) {
      return "";
    }
    LocalDate ends = from.plusDays(number(8, days - 15));
    while (ends.getDayOfWeek() != DayOfWeek.SUNDAY) {
      ends = ends.plusDays(1);
    }
    Map<String, Object> second = new LinkedHashMap<>(first);
    first.put("to", ends.toString());
    second.put("from", ends.plusDays(1).toString());
    second.put("line", "second");
    season.add(at + 1, second);
    return season(season)
        + "\nlines: {second: "
        + PlantTree.flow(plant.at("lines." + line)).replaceAll("title: [^,]*, ", "")
        + "}\ncrews: {second: "
        + PlantTree.flow(plant.at("crews." + line) == null ? Map.of() : plant.at("crews." + line))
        + "}";
  }

  private String twoPackages() {
    for (String line : plant.names("lines")) {
      for (String step : steps(line)) {
        String packs = plant.text("lines." + line + ".steps." + step + ".packs");
        if (!packs.isEmpty() && !packs.startsWith("from-") && seldom()) {
          return "lines: {%s: {steps: {%s: {package: great_bag}}}}\npackages: {great_bag: {mass: %d kg, change: 4 min, cost: 9 USD}}"
              .formatted(line, step, number(150, 900));
        }
      }
    }
    return "";
  }

  private String withFlow() {
    return "machines: {" + machine() + ": {draws: with-flow, power: 30 kW}}";
  }

  private String closedDays() {
    TreeSet<String> days = new TreeSet<>();
    for (int k = 0; k < number(1, 8); k++) {
      days.add(day().toString());
    }
    return "calendar: {closed: " + days + "}";
  }

  private String littleStock() {
    String crop = crop();
    String unit = plant.has("crops." + crop + ".module") ? "modules" : "bales";
    return "yard: {on_hand: {" + crop + ": " + number(0, 300) + " " + unit + "}}";
  }
}
