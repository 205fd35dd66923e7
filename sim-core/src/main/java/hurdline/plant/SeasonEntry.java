package hurdline.plant;

import java.time.LocalDate;
import java.util.List;

/** Who has the building when: campaigns and the changeovers between them, in the file's order. */
public sealed interface SeasonEntry {

  record Campaign(String line, LocalDate from, LocalDate to, List<String> shifts)
      implements SeasonEntry {
    public Campaign {
      shifts = List.copyOf(shifts);
    }
  }

  /**
   * @param days whole days on which the campaign before it would have worked
   */
  record Changeover(int days, int hands) implements SeasonEntry {}
}
