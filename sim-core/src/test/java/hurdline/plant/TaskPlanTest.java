package hurdline.plant;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.SeasonEntry.Changeover;
import hurdline.plant.SeasonEntry.Task;
import java.util.List;
import org.junit.jupiter.api.Test;

class TaskPlanTest {
  private static final List<Task> TASKS =
      List.of(
          new Task("lock_out", 1, 2, List.of()),
          new Task("ducts", 4, 2, List.of("lock_out")),
          new Task("saw", 6, 3, List.of("lock_out")),
          new Task("trial", 2, 4, List.of("saw", "ducts")));

  private static TaskPlan with(int hands) {
    return new TaskPlan(new Changeover(2, hands, TASKS));
  }

  /** 1, then saw and ducts side by side, 6, then 2. */
  @Test
  void withEnoughHandsTheCriticalPathIsTheWholeLength() {
    assertThat(with(6).lastsS()).isEqualTo(9);
    assertThat(with(6).criticalS()).isEqualTo(9);
    assertThat(with(6).criticalPath()).containsExactly("lock_out", "saw", "trial");
    assertThat(with(6).beginS("ducts")).isEqualTo(1);
  }

  /** Four hands cannot do saw and ducts at once: the longer way first, then the other. */
  @Test
  void withFewHandsTasksWaitForThem() {
    assertThat(with(4).beginS("saw")).isEqualTo(1);
    assertThat(with(4).beginS("ducts")).isEqualTo(7);
    assertThat(with(4).lastsS()).isEqualTo(13);
    assertThat(with(4).criticalS()).as("no matter how many hands").isEqualTo(9);
  }
}
