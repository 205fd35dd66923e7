package hurdline.study.replicate;

import hurdline.plant.Change;
import hurdline.plant.InputDraws;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.Variants;
import hurdline.problem.LocatedProblem;
import hurdline.simulation.CompiledPlant;
import hurdline.unit.AmountsInText;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A plant with joint draws of its inputs, another in each replication.
 *
 * <p>A draw takes the place of what the file and single changes say; where an option, plan or
 * what-if sets the same key, its value stands, for the draws are of what it replaces. Draws of a
 * factor hold for that too.
 */
public final class DrawnPlants {
  private final Variants variants;
  private final List<Change> changes;
  private final InputDraws draws;
  private final UnaryOperator<Plant> then;
  private final CompiledPlant undrawn; // from which each drawn plant takes over what it shares
  private final int[] own; // places of the keys that are drawn in this plant

  /**
   * @param common what is changed in every plant of the study
   * @param changes all that is changed in this one
   * @throws ProblemsException if the plant says something of another form than the draws, or lies
   *     outside all of them
   */
  public DrawnPlants(
      Variants variants, List<Change> common, List<Change> changes, InputDraws draws) {
    this(variants, common, changes, draws, plant -> plant);
  }

  /**
   * @param then what is made of each changed plant
   */
  public DrawnPlants(
      Variants variants,
      List<Change> common,
      List<Change> changes,
      InputDraws draws,
      UnaryOperator<Plant> then) {
    this.then = then;
    this.variants = variants;
    this.changes = List.copyOf(changes);
    this.draws = draws;
    Change[] base = common.toArray(Change[]::new);
    Change[] all = changes.toArray(Change[]::new);
    own =
        IntStream.range(0, draws.keys().size())
            .filter(
                at ->
                    draws.isRelative(at)
                        || variants
                            .text(draws.keys().get(at), base)
                            .equals(variants.text(draws.keys().get(at), all)))
            .toArray();
    refuseOthers(base);
    undrawn = CompiledPlant.of(then.apply(variants.with(all)));
  }

  private void refuseOthers(Change[] base) {
    List<Integer> astray =
        Arrays.stream(own)
            .filter(at -> !draws.isRelative(at) && !draws.keys().get(at).contains("*"))
            .filter(at -> !isAmong(said(at, base), at))
            .boxed()
            .toList();
    if (!astray.isEmpty()) {
      throw new ProblemsException(
          astray.stream()
              .map(
                  at ->
                      LocatedProblem.of(
                          draws.said(),
                          draws.keys().get(at)
                              + (said(at, base).isEmpty()
                                  ? " is not"
                                  : " is \"" + said(at, base) + "\"")
                              + " in the plant, and draws are such as \""
                              + draws.rows().get(0).get(at)
                              + "\"",
                          "the figures that the draws belong to, such as --patch fitted.yaml, in the same form and unit",
                          ""))
              .toList());
    }
  }

  private String said(int at, Change[] base) {
    return variants.text(draws.keys().get(at), base).orElse("");
  }

  /** Whether the plant's own numbers lie within those that are drawn. */
  private boolean isAmong(String said, int at) {
    List<String> column = draws.column(at);
    if (!AmountsInText.form(said).equals(AmountsInText.form(column.get(0)))) {
      return false;
    }
    double[] numbers = AmountsInText.numbers(said);
    return IntStream.range(0, numbers.length)
        .allMatch(
            i -> {
              double[] drawn =
                  column.stream().mapToDouble(value -> AmountsInText.numbers(value)[i]).toArray();
              double least = Arrays.stream(drawn).min().orElseThrow();
              double most = Arrays.stream(drawn).max().orElseThrow();
              return least <= numbers[i] && numbers[i] <= most;
            });
  }

  /**
   * The plant of a replication.
   *
   * @throws ProblemsException if a plant with these draws has problems
   */
  public CompiledPlant plant(int replication) {
    List<String> row = draws.rows().get(draws.row(replication));
    Stream<Change> drawn =
        Arrays.stream(own).mapToObj(at -> new Change.Value(draws.keys().get(at), row.get(at)));
    return undrawn.changedTo(
        then.apply(variants.with(Stream.concat(changes.stream(), drawn).toArray(Change[]::new))));
  }

  /**
   * Binds the plants of so many replications, to see what is wrong with them before any work
   * begins.
   */
  public void check(int replications) {
    for (int one = 1; one <= Math.min(replications, draws.rows().size()); one++) {
      plant(one);
    }
  }

  public InputDraws draws() {
    return draws;
  }
}
