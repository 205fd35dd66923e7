package hurdline.work;

import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * A random valid line: a feeder and up to seven machines in a row, bins between some of them, stops of all four counts
 * with and without a mechanic, side outlets to a pile, to a belt that stretches share and to a silo that they fill, and
 * ways back within a stretch.
 */
final class AnyLine {
  private static final String[] COUNTED = {"running", "worked", "crewed", "calendar"};

  private final SplittableRandom chance;
  private final boolean withChance;
  private final int onHand;
  private final List<String> machines = new ArrayList<>();
  private final List<String> steps = new ArrayList<>();
  private final List<String> limited = new ArrayList<>();
  private final Set<String> asides = new TreeSet<>();

  private AnyLine(long seed, boolean withChance) {
    chance = new SplittableRandom(seed);
    this.withChance = withChance;
    onHand = withChance ? 300 + chance.nextInt(900) : 500;
  }

  /** With bins, stops and ways back. */
  static AnyLine of(long seed) {
    AnyLine line = new AnyLine(seed, true);
    line.build();
    return line;
  }

  /** Without bins, stops and ways back: one limit holds it all the time. */
  static AnyLine plain(long seed) {
    AnyLine line = new AnyLine(seed, false);
    line.build();
    return line;
  }

  private void build() {
    machines.add("  feeder: {kind: bale-feeder, table: 3 bales" + stops() + "}");
    int count = 1 + chance.nextInt(7);
    String next = name(1);
    step("feeder", rate() + "to: " + next);
    limited.add("feeder");
    int first = 1; // of the present stretch
    for (int m = 1; m <= count; m++) {
      boolean last = m == count;
      boolean bin = withChance && !last && chance.nextInt(3) == 0;
      String to = last ? "tow" : bin ? "bin" + m : name(m + 1);
      machines.add("  " + name(m) + ": {kind: conveyor, power: 5 kW" + stops() + "}");
      boolean hasRate = chance.nextInt(4) > 0 || m == first;
      if (hasRate) {
        limited.add(name(m));
      }
      step(name(m), (hasRate ? rate() : "") + outlets(m, first, to));
      if (bin) {
        machines.add("  bin" + m + ": {kind: bin, holds: " + number(0.2, 8) + " t" + levels() + "}");
        step("bin" + m, "to: " + name(m + 1));
        first = m + 1;
      }
    }
    asides();
  }

  /** A belt that several stretches load, and a silo that several fill. */
  private void asides() {
    if (asides.contains("belt")) {
      machines.add("  belt: {kind: conveyor" + stops() + "}");
      step("belt", "rate: " + number(0.5, 3) + " t/h, to: chips");
    }
    if (asides.contains("silo")) {
      machines.add("  silo: {kind: bin, holds: " + number(0.5, 5) + " t" + levels() + "}");
      machines.add("  press: {kind: press" + stops() + "}");
      step("silo", "to: press");
      step("press", "rate: " + number(0.3, 2) + " t/h, to: chips");
    }
  }

  private static String name(int m) {
    return "m" + m;
  }

  private void step(String name, String what) {
    steps.add("      " + name + ": {" + what + "}");
  }

  private String outlets(int m, int first, String to) {
    int kind = chance.nextInt(6);
    if (kind >= 4 && withChance) {
      String aside = kind == 4 ? "belt" : "silo";
      asides.add(aside);
      return "outlets: [{to: " + aside + ", takes: {hurd: " + number(5, 50) + " %, fines: " + number(5, 90) + " %}}, {to: " + to + "}]";
    }
    if (kind == 1) {
      return "outlets: [{to: chips, takes: {hurd: " + number(5, 60) + " %, fines: " + number(5, 60) + " %}}, {to: " + to + "}]";
    }
    if (kind == 2 && withChance && m > first) {
      return "outlets: [{to: " + name(first + chance.nextInt(m - first)) + ", takes: {fiber: " + number(5, 40) + " %, hurd: "
          + number(5, 40) + " %}}, {to: " + to + "}]";
    }
    return "to: " + to;
  }

  private String levels() {
    return chance.nextInt(2) == 0 ? "" : ", start_at: 150 kg, stop_at: 50 kg";
  }

  private String rate() {
    return "rate: " + number(1, 6) + " t/h, ";
  }

  private String stops() {
    if (!withChance || chance.nextInt(3) == 0) {
      return "";
    }
    List<String> stops = new ArrayList<>();
    for (int s = 0; s <= chance.nextInt(3); s++) {
      String counted = COUNTED[chance.nextInt(4)];
      String unit = counted.equals("worked") ? " t" : " h";
      double mean = number(3, 60);
      String every = chance.nextInt(2) == 0 ? mean + unit : "{gamma: {mean: " + mean + unit + ", sd: " + number(1, 3) + unit + "}}";
      stops.add(
          "s" + s + ": {every: " + every + ", counted: " + counted + ", lasts: {lognormal: {mean: " + number(5, 90)
              + " min, sd: 4 min}}" + (chance.nextInt(3) == 0 ? ", needs: mechanic" : "")
              + (chance.nextInt(3) == 0 ? ", repair: any time" : "") + "}");
    }
    return ", stops: {" + String.join(", ", stops) + "}";
  }

  private double number(double from, double to) {
    return Double.parseDouble(String.format(Locale.ROOT, "%.3f", from + (to - from) * chance.nextDouble()));
  }

  /** Machines with a rate of their own. */
  List<String> limited() {
    return List.copyOf(limited);
  }

  Plant plant() {
    return plant(machines, steps);
  }

  /** The same plant, its machines and steps written down in another order; what was first stays no more. */
  Plant shuffled(long seed) {
    SplittableRandom order = new SplittableRandom(seed);
    return plant(shuffle(machines, order), shuffle(steps, order));
  }

  private static List<String> shuffle(List<String> lines, SplittableRandom order) {
    List<String> left = new ArrayList<>(lines);
    return IntStream.range(0, lines.size()).mapToObj(i -> left.remove(order.nextInt(left.size()))).toList();
  }

  /** The same plant with one machine's rate a hundredth higher. */
  Plant faster(String machine) {
    String key = "      " + machine + ": {rate: ";
    List<String> changed =
        steps.stream()
            .map(
                step -> {
                  if (!step.startsWith(key)) {
                    return step;
                  }
                  int unit = step.indexOf(" t/h");
                  double rate = Double.parseDouble(step.substring(key.length(), unit));
                  return key + rate * 1.01 + step.substring(unit);
                })
            .toList();
    return plant(machines, changed);
  }

  private Plant plant(List<String> machineLines, List<String> stepLines) {
    return PlantFile.of("any.yaml", text(machineLines, stepLines)).plant();
  }

  private String text(List<String> machineLines, List<String> stepLines) {
    return """
        hurdline: 1
        plant: Any line
        calendar:
          from: 2027-03-01
          to: 2027-03-31
          shifts:
            day: {days: [Mon, Tue, Wed, Thu, Fri], from: "06:00", to: "14:30", rests: [{at: "10:00", lasts: 30 min}]}
            night: {days: [Mon, Wed], from: "22:00", to: "04:00"}
        components: [fiber, hurd, fines]
        crops:
          stalk:
            bale: {mass: %s}
            moisture: %s
            composition: {fiber: 40 %%, hurd: 50 %%, fines: 10 %%}
            composition_spread: %s
        machines:
        %s
        products: {tow: {}, chips: {}}
        lines:
          line:
            crop: stalk
            feed: feeder
            steps:
        %s
        season: [{line: line, from: 2027-03-01, to: 2027-03-30, shifts: [day, night]}]
        resources: {mechanic: {count: 1}, loader: {count: 1}}
        yard:
          on_hand: {stalk: %d bales}
          places: {barn: {holds: 9000 bales, loss: 1 %%/month}}
          set_on_table: %s
        """
        .formatted(
            withChance ? "{normal: {mean: 500 kg, sd: 40 kg, low: 300 kg}}" : "5 t",
            withChance ? "{normal: {mean: 14 %, sd: 2 %, low: 8 %}}" : "14 %",
            withChance ? "5 %" : "0 %",
            String.join("\n", machineLines),
            String.join("\n", stepLines),
            onHand,
            withChance ? "{lasts: {triangular: {low: 1 min, mode: 2 min, high: 6 min}}, needs: loader, bales: 2}" : "{lasts: 0 min}");
  }
}
