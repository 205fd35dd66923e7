package hurdline.answer;

import java.util.List;

/**
 * Every replication of each of several plants.
 *
 * @param of in the order of the answer's plants
 */
public record Replayed(List<Samples> of) {
  public Replayed {
    of = List.copyOf(of);
  }

  public static Replayed none() {
    return new Replayed(List.of());
  }
}
