package hurdline.combined;

import hurdline.measure.Measure;
import hurdline.measure.Unit;
import hurdline.plant.Plant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.regex.Pattern;

/** What must hold of any plant whatever is switched on in it; each check says what does not. */
final class CombinedChecks {
  /** Maps whose order says nothing. */
  private static final Pattern UNORDERED =
      Pattern.compile(
          "(|machines\\.([^.]+\\.(stops\\.([^.]+\\.)?)?)?|packages\\.([^.]+\\.)?|resources\\."
              + "|lines\\.[^.]+\\.(steps\\.([^.]+\\.)?)?|products\\.[^.]+\\.|crops\\.[^.]+\\."
              + "|deliveries\\.[^.]+\\.(fields\\.([^.]+\\.)?)?|money\\.([^.]+\\.)?|yard\\.(places\\.[^.]+\\.)?"
              + "|crews\\.([^.]+\\.)?|stores\\.([^.]+\\.)?)");

  /** Of an hour or a tonne, and of the figure: the clock's grain over many events. */
  private static final double GRAIN = 1e-7;

  /** The same where what is below a millionth of a kilogram or a second is another share. */
  private static final double LOOSE = 1e-5;

  private final CombinedPlant combined;
  private final PlantTree tree;
  private final Map<String, List<String>> broken = new LinkedHashMap<>();
  private int made;

  private CombinedChecks(CombinedPlant combined) {
    this.combined = combined;
    tree = combined.tree();
  }

  /** What a plant breaks, by check. */
  static CombinedChecks of(CombinedPlant combined) {
    CombinedChecks checks = new CombinedChecks(combined);
    checks.all();
    return checks;
  }

  Map<String, List<String>> broken() {
    return broken;
  }

  int made() {
    return made;
  }

  private void holds(String what, List<String> not) {
    made++;
    if (!not.isEmpty()) {
      broken.put(what, not);
    }
  }

  private void all() {
    Plant plant = combined.plant();
    Simulated got = Simulated.of(plant);
    Random random = new Random(combined.seed());
    Function<String, DoubleUnaryOperator> same = name -> value -> value;
    holds("books", Books.open(tree, got));
    holds("again", got.unlike(Simulated.again(plant), same, 0));
    holds("traced", got.unlike(Simulated.traced(plant), same, GRAIN));
    holds("plain twin", got.unlike(Simulated.plainly(plant), same, GRAIN));
    holds("shuffled", got.unlike(of(tree.shuffled(random, UNORDERED)), same, 0));
    holds(
        "other units",
        got.unlike(
            of(tree.mapped((path, text) -> Amounts.otherwise(path, text, random))), same, 0));
    holds("money doubled", got.unlike(of(tree.mapped(Amounts::dearer)), dearer(got), 0));
    holds("mass doubled", got.unlike(of(tree.mapped(Amounts::heavier)), heavier(got), LOOSE));
    List<Neutral> neutral = new ArrayList<>(Neutral.all());
    java.util.Collections.shuffle(neutral, random);
    neutral.stream().limit(5).forEach(one -> neutral(one, got, random));
  }

  private void neutral(Neutral one, Simulated got, Random random) {
    PlantTree changed = tree;
    for (String part : one.patch().apply(tree, random).split("\n")) {
      changed = part.isBlank() ? changed : changed.with(part);
    }
    if (changed != tree && CombinedPlant.isPlant(changed)) {
      Pattern apart = Pattern.compile("((week|month|year) \\d+ )?(" + one.apart() + ")");
      holds(
          one.name(),
          got.unlike(
              of(changed), name -> apart.matcher(name).matches() ? null : value -> value, LOOSE));
    }
  }

  private static Simulated of(PlantTree tree) {
    return Simulated.of(CombinedPlant.plant(tree));
  }

  private static Function<String, DoubleUnaryOperator> dearer(Simulated got) {
    return name -> isMoney(got.measure(name)) ? value -> 2 * value : value -> value;
  }

  private static boolean isMoney(Measure measure) {
    return measure.unit() == Unit.MONEY || measure.unit() == Unit.MONEY_PER_TONNE;
  }

  private static Function<String, DoubleUnaryOperator> heavier(Simulated got) {
    return name ->
        got.measure(name) == Measure.BALANCE_RESIDUAL
            ? null
            : switch (got.measure(name).unit()) {
              case TONNE, KILOGRAM, TONNE_PER_HOUR -> value -> 2 * value;
              case MONEY_PER_TONNE -> value -> value / 2;
              default -> value -> value;
            };
  }
}
