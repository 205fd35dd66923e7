package hurdline.study;

import hurdline.plant.Change;
import hurdline.plant.Doubt;
import hurdline.plant.InputDraws;
import hurdline.plant.Plant;
import hurdline.random.RandomStreams;
import hurdline.study.replicate.DrawnPlants;
import hurdline.study.replicate.ReplicationBudget;
import hurdline.study.replicate.RunSettings;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The joint draws of inputs that a study takes: those given with it, and the plant's doubts. */
public final class StudyInputs {
  private static final int ROWS = 200;

  private final RunSettings effort;
  private final Optional<InputDraws> draws;

  /**
   * @param plant of which the file may say how well its values are known
   */
  public StudyInputs(Plant plant, RunSettings effort) {
    this(plant, effort, ROWS);
  }

  /**
   * @param rows of doubts
   */
  public StudyInputs(Plant plant, RunSettings effort, int rows) {
    this.effort = effort;
    Optional<InputDraws> doubts =
        plant.doubts().isEmpty()
            ? Optional.empty()
            : Optional.of(drawn(plant.doubts(), effort, rows));
    draws = effort.draws().map(given -> doubts.map(given::and).orElse(given)).or(() -> doubts);
  }

  /** A factor for each, whatever the others are. */
  private static InputDraws drawn(List<Doubt> doubts, RunSettings effort, int count) {
    RandomStreams streams = new RandomStreams(effort.seed());
    List<List<String>> rows =
        java.util.stream.IntStream.rangeClosed(1, count)
            .mapToObj(
                row ->
                    doubts.stream()
                        .map(of -> of.factor(streams.of(row, "doubt " + of.key()).nextNormal()))
                        .toList())
            .toList();
    return new InputDraws("doubt", doubts.stream().map(Doubt::key).toList(), rows);
  }

  public Optional<InputDraws> draws() {
    return draws;
  }

  public boolean isGiven() {
    return draws.isPresent();
  }

  /**
   * One of the study's plants with drawn inputs, if there are any.
   *
   * @param common what is changed in every plant
   * @param changes all that is changed in this one
   * @throws hurdline.plant.ProblemsException if draws do not suit the plant
   */
  public Optional<DrawnPlants> plants(
      PlantOrigin source, List<Change> common, List<Change> changes) {
    return plants(source, common, changes, plant -> plant);
  }

  /**
   * The same.
   *
   * @param then what is made of each changed plant
   */
  public Optional<DrawnPlants> plants(
      PlantOrigin source, List<Change> common, List<Change> changes, UnaryOperator<Plant> then) {
    Optional<DrawnPlants> plants =
        draws.map(of -> new DrawnPlants(source.variants(), common, changes, of, then));
    plants.ifPresent(of -> of.check(effort.replications()));
    return plants;
  }

  /** The first replications of a plant once more, with drawn inputs. */
  public static Optional<DrawnResults> simulate(
      Optional<DrawnPlants> plants, int count, ReplicationBudget simulations) {
    return plants.map(of -> new DrawnResults(simulations.drawn(of, count), of.draws()));
  }
}
