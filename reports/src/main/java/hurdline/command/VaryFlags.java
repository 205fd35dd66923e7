package hurdline.command;

import hurdline.answer.GridKey;
import hurdline.study.replicate.RunSettings;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;

/** Which keys of the plant file are varied over a grid. */
final class VaryFlags {
  @CommandLine.Option(
      names = "--vary",
      paramLabel = "KEY=FROM..TO..STEP",
      description =
          "Simulates a grid of values of one key, or given twice of two, such as 2d..10d..1d; dates and"
              + " bare numbers go too, x0.8..x1.4..x0.1 scales what the file says, -14d..+14d..7d moves its dates, and * in"
              + " KEY takes all. Finished cells are kept in --out DIR, and the same call goes on from there.")
  private List<String> varied = new ArrayList<>();

  boolean isGiven() {
    return !varied.isEmpty();
  }

  /**
   * The keys with their values.
   *
   * @throws CallException if they cannot be read, are the same, or make too many cells
   */
  List<GridKey> keys() {
    if (varied.size() > 2) {
      throw new CallException(
          "--vary is given " + varied.size() + " times; expected once or twice");
    }
    List<GridKey> keys = varied.stream().map(VaryReader::of).toList();
    if (keys.stream().map(GridKey::path).distinct().count() < keys.size()) {
      throw new CallException(
          "--vary names \"" + keys.get(0).path() + "\" twice; expected two different keys");
    }
    int cells = keys.stream().mapToInt(key -> key.values().size()).reduce(1, (a, b) -> a * b);
    if (cells > VaryReader.MOST_CELLS) {
      throw new CallException(
          "--vary makes a grid of "
              + cells
              + " cells; expected at most "
              + VaryReader.MOST_CELLS
              + ", so take longer steps");
    }
    return keys;
  }

  /**
   * Refuses a flag that a grid cannot serve.
   *
   * @param flag its name, such as {@code --trace}
   */
  void refuse(String flag, boolean given) {
    if (isGiven() && given) {
      throw new CallException(
          flag + " and --vary do not go together; expected one of them at a time");
    }
  }

  /**
   * Refuses draws of inputs, and an aim, since all cells need the same replications to be set
   * against each other.
   */
  void refuseAim(RunSettings effort) {
    refuse("--until", effort.until().isPresent());
    refuse("--draws", effort.draws().isPresent());
  }
}
