package hurdline.plant;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Who has the building when: campaigns and the changeovers between them, in the file's order. */
public sealed interface SeasonEntry {

  record Campaign(
      String line, LocalDate from, LocalDate to, List<String> shifts, Optional<StandDown> standDown)
      implements SeasonEntry {
    public Campaign {
      shifts = List.copyOf(shifts);
    }

    public Campaign(String line, LocalDate from, LocalDate to, List<String> shifts) {
      this(line, from, to, shifts, Optional.empty());
    }
  }

  /**
   * When a campaign's crew is sent home.
   *
   * @param below so many bales in places, on the table and in the feeder when a shift would start
   * @param backAt so many bring it back, at the start of a later shift
   */
  record StandDown(int below, int backAt) {
    public StandDown {
      Check.count(1, "below", below);
      Check.count(1, "backAt", backAt);
    }
  }

  /**
   * @param days whole days on which the campaign before it would have worked
   */
  record Changeover(int days, int hands, List<Task> tasks) implements SeasonEntry {
    public Changeover {
      Check.count(0, "days", days);
      Check.count(0, "hands", hands);
      tasks = List.copyOf(tasks);
    }

    public Changeover(int days, int hands) {
      this(days, hands, List.of());
    }
  }

  /**
   * A piece of work of a changeover.
   *
   * @param lastsS working time
   * @param hands of the changeover's that it takes
   * @param after tasks that must be done before it begins
   */
  record Task(String name, double lastsS, int hands, List<String> after) {
    public Task {
      Check.notBelow0("lastsS", lastsS);
      Check.count(1, "hands", hands);
      after = List.copyOf(after);
    }
  }
}
