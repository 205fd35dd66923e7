package hurdline.plant;

import java.util.List;
import java.util.Optional;

/**
 * Who comes to work of crews, and hands that several lines share.
 *
 * @param shared pools in the order of the file
 */
public record Hands(List<Attendance> attendance, List<Shared> shared) {
  private static final Hands ALL_COME = new Hands(List.of(), List.of());

  public Hands {
    attendance = List.copyOf(attendance);
    shared = List.copyOf(shared);
  }

  /** Whole crews come to every shift. */
  public static Hands allCome() {
    return ALL_COME;
  }

  /** What is said of the crew of a line's shift. */
  public Optional<Attendance> of(String line, String shift) {
    return attendance.stream()
        .filter(one -> one.line().equals(line) && one.shift().equals(shift))
        .findFirst();
  }

  /**
   * A crew that may be short.
   *
   * @param own hands of the line's own; the whole crew where absent
   * @param absence chance that one of them does not come to a shift
   * @param least fewest with whom the line is run
   * @param shares pool that fills up the crew
   */
  public record Attendance(
      String line,
      String shift,
      Optional<Integer> own,
      double absence,
      int least,
      Optional<String> shares) {
    public Attendance {
      Check.share("absence", absence);
      Check.count(1, "least", least);
      own.ifPresent(hands -> Check.count(0, "own", hands));
    }
  }

  /**
   * Hands that lines share.
   *
   * @param hands how many in each shift
   * @param absence chance that one of them does not come to a shift
   */
  public record Shared(String name, int hands, double absence) {
    public Shared {
      Check.count(0, "hands", hands);
      Check.share("absence", absence);
    }
  }
}
