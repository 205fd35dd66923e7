package hurdline.study.replicate;

import hurdline.plant.InputDraws;
import java.util.Optional;

/**
 * How much is simulated, and by which draws.
 *
 * @param replications how many; with {@code until} how many to begin with, though never fewer than
 *     40
 * @param until goes on until a measure is known so well
 * @param seed of all chance
 * @param threads replications that are simulated at once; the answer does not hang on it
 * @param trace what is to be shown event by event
 * @param draws joint draws of inputs, each replication being simulated with them too
 */
public record RunSettings(
    int replications,
    Optional<Precision> until,
    long seed,
    int threads,
    Optional<TraceWindow> trace,
    Optional<InputDraws> draws) {
  public RunSettings {
    if (!(replications >= 1)) {
      throw new IllegalArgumentException(
          "replications is " + replications + "; expected from 1 on");
    }
    if (!(threads >= 1)) {
      throw new IllegalArgumentException("threads is " + threads + "; expected from 1 on");
    }
  }

  /** Without draws of inputs. */
  public RunSettings(
      int replications,
      Optional<Precision> until,
      long seed,
      int threads,
      Optional<TraceWindow> trace) {
    this(replications, until, seed, threads, trace, Optional.empty());
  }

  /** The same with draws of inputs. */
  public RunSettings with(InputDraws drawn) {
    return new RunSettings(replications, until, seed, threads, trace, Optional.of(drawn));
  }
}
