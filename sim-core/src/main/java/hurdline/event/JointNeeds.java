package hurdline.event;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What jobs of one kind need of several resources at once, numbered behind the resources: taken
 * together or not at all, so that nobody who holds one waits for another.
 */
final class JointNeeds {
  private static final int[] NOTHING = {};

  private final int first; // number of the first
  private int[][] parts; // [number] resources: of a single one itself
  private int[][] ranks = {}; // of those behind the resources
  private final int[][] of; // [resource] numbers of those that need it

  /**
   * @param resources how many there are, the endless one counted
   */
  JointNeeds(int resources) {
    first = resources;
    of = new int[resources][];
    Arrays.fill(of, NOTHING);
    parts = IntStream.range(0, resources).mapToObj(one -> new int[] {one}).toArray(int[][]::new);
  }

  /** The number of these needs, which is a new one where they were not known. */
  int number(int[] resources, int[] rankThere) {
    for (int k = first; k < parts.length; k++) {
      if (Arrays.equals(parts[k], resources) && Arrays.equals(ranks[k - first], rankThere)) {
        return k;
      }
    }
    int number = parts.length;
    parts = Arrays.copyOf(parts, number + 1);
    ranks = Arrays.copyOf(ranks, number + 1 - first);
    parts[number] = resources.clone();
    ranks[number - first] = rankThere.clone();
    for (int resource : resources) {
      of[resource] = Arrays.copyOf(of[resource], of[resource].length + 1);
      of[resource][of[resource].length - 1] = number;
    }
    return number;
  }

  /** Resources that a number stands for. */
  int[] parts(int number) {
    return parts[number];
  }

  /** Numbers that stand for a resource and others. */
  int[] of(int resource) {
    return of[resource];
  }

  /** Rank in the queue of a resource. */
  int rank(int number, int resource) {
    int at = 0;
    while (parts[number][at] != resource) {
      at++;
    }
    return ranks[number - first][at];
  }
}
