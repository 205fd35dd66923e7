package hurdline.simulation;

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
 * A random valid line of up to twelve machines: a feeder and machines in a row, bins between some
 * of them, stops of all four counts with and without a mechanic, side outlets to a pile, to a belt
 * that stretches share and to a silo that they fill, and ways back within a stretch.
 */
final class AnyLine {
  private static final String[] COUNTED = {"running", "mass", "crewed", "calendar"};

  private static final String MONTH =
      "shifts: {day: {days: [Mon, Tue, Wed, Thu, Fri], from: \"06:00\", to: \"14:30\", rests: [{at: \"10:00\", lasts: 30 min}]}, "
          + "night: {days: [Mon, Wed], from: \"22:00\", to: \"04:00\"}}";

  private final SplittableRandom chance;
  private final Kind kind;

  /** How many times as fast as written: rates are multiplied, times divided by it. */
  private final double pace;

  private final int onHand;
  private final List<String> machines = new ArrayList<>();
  private final List<String> steps = new ArrayList<>();
  private final List<String> limited = new ArrayList<>();
  private final Set<String> asides = new TreeSet<>();

  /** What there is in a line. */
  enum Kind {
    /** Everything, and chance. */
    RANDOM,
    /** Everything, but no chance. */
    STEADY,
    /** Bins and outlets to a pile only. */
    STRAIGHT,
    /** No bins either: one limit holds it all the time. */
    PLAIN
  }

  AnyLine(Kind kind, long seed) {
    this(kind, seed, 1);
  }

  /**
   * @param pace 2 makes the line that does the same in half the time, round the clock in both
   */
  AnyLine(Kind kind, long seed, double pace) {
    chance = new SplittableRandom(seed);
    this.kind = kind;
    this.pace = pace;
    onHand = kind == Kind.RANDOM ? 300 + chance.nextInt(900) : 500;
    build();
  }

  private boolean isRich() {
    return kind == Kind.RANDOM || kind == Kind.STEADY;
  }

  private void build() {
    machines.add("  feeder: {kind: bale-feeder, feed_table: 3 bales" + stops() + "}");
    int count = 1 + chance.nextInt(9);
    String next = name(1);
    step("feeder", rate() + "to: " + next);
    limited.add("feeder");
    int first = 1; // of the present stretch
    for (int m = 1; m <= count; m++) {
      boolean last = m == count;
      boolean bin = kind != Kind.PLAIN && !last && chance.nextInt(3) == 0;
      String to = last ? "tow" : bin ? "bin" + name(m) : name(m + 1);
      machines.add("  " + name(m) + ": {kind: conveyor, power: 5 kW" + stops() + "}");
      boolean hasRate = chance.nextInt(4) > 0 || m == first;
      if (hasRate) {
        limited.add(name(m));
      }
      step(name(m), (hasRate ? rate() : "") + outlets(m, first, to));
      if (bin) {
        machines.add(
            "  bin" + name(m) + ": {kind: bin, holds: " + number(0.2, 8) + " t" + levels() + "}");
        step("bin" + name(m), "to: " + name(m + 1));
        first = m + 1;
      }
    }
    asides();
  }

  /** A belt that several stretches load, and a silo that several fill. */
  private void asides() {
    if (asides.contains("belt")) {
      machines.add("  belt: {kind: conveyor" + stops() + "}");
      step("belt", rate(0.5, 3) + "to: chips");
    }
    if (asides.contains("silo")) {
      machines.add("  silo: {kind: bin, holds: " + number(0.5, 5) + " t" + levels() + "}");
      machines.add("  press: {kind: press" + stops() + "}");
      step("silo", "to: press");
      step("press", rate(0.3, 2) + "to: chips");
    }
  }

  private static String name(int m) {
    return "m%02d".formatted(m);
  }

  private void step(String name, String what) {
    steps.add("      " + name + ": {" + what + "}");
  }

  private String outlets(int m, int first, String to) {
    int way = chance.nextInt(6);
    if (way >= 4 && isRich()) {
      String aside = way == 4 ? "belt" : "silo";
      asides.add(aside);
      return "outlets: [{to: "
          + aside
          + ", takes: {hurd: "
          + number(5, 50)
          + " %, fines: "
          + number(5, 90)
          + " %}}, {to: "
          + to
          + "}]";
    }
    if (way == 1) {
      return "outlets: [{to: chips, takes: {hurd: "
          + number(5, 60)
          + " %, fines: "
          + number(5, 60)
          + " %}}, {to: "
          + to
          + "}]";
    }
    if (way == 2 && isRich() && m > first) {
      return "outlets: [{to: "
          + name(first + chance.nextInt(m - first))
          + ", takes: {fiber: "
          + number(5, 40)
          + " %, hurd: "
          + number(5, 40)
          + " %}}, {to: "
          + to
          + "}]";
    }
    return "to: " + to;
  }

  private String levels() {
    return chance.nextInt(2) == 0 || !isRich() ? "" : ", start_at: 150 kg, stop_at: 50 kg";
  }

  private String rate() {
    return rate(1, 6);
  }

  private String rate(double from, double to) {
    return "rate: " + pace * number(from, to) + " t/h, ";
  }

  private String stops() {
    if (!isRich() || chance.nextInt(3) == 0) {
      return "";
    }
    List<String> stops = new ArrayList<>();
    for (int s = 0; s <= chance.nextInt(3); s++) {
      String counted = COUNTED[chance.nextInt(4)];
      boolean onMass = counted.equals("mass");
      String unit = onMass ? " t" : " h";
      double slower = onMass ? 1 : 1 / pace;
      double mean = slower * number(3, 60);
      boolean fixed = chance.nextInt(2) == 0 | kind == Kind.STEADY;
      String every =
          fixed
              ? mean + unit
              : "{gamma: {mean: " + mean + unit + ", sd: " + slower * number(1, 3) + unit + "}}";
      stops.add(
          "s"
              + s
              + ": {every: "
              + every
              + ", counted: "
              + counted
              + ", lasts: "
              + repair()
              + (chance.nextInt(3) == 0 ? ", needs: mechanic" : "")
              + (chance.nextInt(3) == 0 ? ", repair: any-time" : "")
              + "}");
    }
    return ", stops: {" + String.join(", ", stops) + "}";
  }

  private String repair() {
    double mean = number(5, 90) / pace;
    return kind == Kind.STEADY
        ? mean + " min"
        : "{lognormal: {mean: " + mean + " min, sd: " + 4 / pace + " min}}";
  }

  private double number(double from, double to) {
    return Double.parseDouble(
        String.format(Locale.ROOT, "%.3f", from + (to - from) * chance.nextDouble()));
  }

  /** Machines with a rate of their own. */
  List<String> limited() {
    return List.copyOf(limited);
  }

  Plant plant() {
    return plant(machines, steps);
  }

  /**
   * The same plant, its machines and steps written down in another order; what was first stays no
   * more.
   */
  Plant shuffled(long seed) {
    SplittableRandom order = new SplittableRandom(seed);
    return plant(shuffle(machines, order), shuffle(steps, order));
  }

  private static List<String> shuffle(List<String> lines, SplittableRandom order) {
    List<String> left = new ArrayList<>(lines);
    return IntStream.range(0, lines.size())
        .mapToObj(i -> left.remove(order.nextInt(left.size())))
        .toList();
  }

  /**
   * The same plant, every machine called otherwise; a letter more at the end leaves the order of
   * names as it is.
   */
  Plant renamed() {
    return PlantFile.of("any.yaml", renamed(text(machines, steps, MONTH))).plant();
  }

  static String renamed(String text) {
    return text.replaceAll(
        "(?<!kind: )(?<!bale-)\\b(feeder|m\\d\\d|binm\\d\\d|belt|silo|press)\\b", "$1a");
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
    return PlantFile.of("any.yaml", text(machineLines, stepLines, MONTH)).plant();
  }

  /**
   * The same plant round the clock for thirty days over the pace: at pace 2 it does in fifteen what
   * it did in thirty.
   */
  Plant roundTheClock() {
    String days =
        "shifts: {day: {from: \"00:00\", to: \"24:00\"}, night: {days: [Mon], from: \"00:00\", to: \"24:00\"}}";
    String text =
        text(machines, steps, days)
            .replace("2027-03-31", "2027-03-%02d".formatted((int) (30 / pace)))
            .replace("2027-03-30", "2027-03-%02d".formatted((int) (30 / pace)))
            .replace("shifts: [day, night]", "shifts: [day]");
    return PlantFile.of("any.yaml", text).plant();
  }

  private String text(List<String> machineLines, List<String> stepLines, String shifts) {
    boolean random = kind == Kind.RANDOM;
    return """
        hurdline: 1
        plant: Any line
        calendar:
          from: 2027-03-01
          to: 2027-03-31
          %s
        components: [fiber, hurd, fines]
        crops:
          stalk:
            bale: {mass: %s}
            moisture: %s
            composition: {fiber: 40 %%, hurd: 50 %%, fines: 10 %%}
            composition_cv: %s
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
          places: {barn: {holds: 9000 bales%s}}
          lift: %s
        """
        .formatted(
            shifts,
            random
                ? "{normal: {mean: 500 kg, sd: 40 kg, low: 300 kg}}"
                : isRich() ? "500 kg" : "5 t",
            random ? "{normal: {mean: 14 %, sd: 2 %, low: 8 %}}" : "14 %",
            random ? "5 %" : "0 %",
            String.join("\n", machineLines),
            String.join("\n", stepLines),
            onHand,
            pace == 1 && shifts.equals(MONTH) ? ", loss: 1 %/month" : "",
            lift());
  }

  private String lift() {
    return switch (kind) {
      case RANDOM ->
          "{lasts: {triangular: {low: "
              + 1 / pace
              + " min, mode: "
              + 2 / pace
              + " min, high: "
              + 6 / pace
              + " min}}, needs: loader, bales: 2}";
      case STEADY -> "{lasts: " + 3 / pace + " min, needs: loader, bales: 2}";
      case STRAIGHT, PLAIN -> "{lasts: 0 min}";
    };
  }
}
