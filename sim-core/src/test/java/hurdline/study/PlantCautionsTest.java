package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.Note;
import hurdline.plant.Change;
import hurdline.plant.yaml.PlantFile;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlantCautionsTest {
  private static List<Note> of(Change... changes) {
    return new PlantCautions(PlantFile.read(Studied.EXAMPLE).variants().with(changes)).notes();
  }

  @Test
  void wetBalesAreNamedWithTheUsualFigures() {
    List<Note> wet = of(new Change.Value("crops.stalk.moisture", "21 %"));
    assertThat(wet.get(0).title()).isEqualTo("Wet bales");
    assertThat(wet.get(0).text()).contains("stalk", "16 to 18 %", "fire code", "insurer");
    assertThat(of()).noneMatch(note -> note.title().equals("Wet bales"));
  }

  @Test
  void aStopTooShortForLockingOutIsNamed() {
    List<Note> hasty = of(new Change.Value("machines.lint_cleaner.stops.choke.lasts", "3 min"));
    assertThat(hasty)
        .anyMatch(n -> n.title().equals("Short stops") && n.text().contains("lint_cleaner.choke"));
    assertThat(of()).noneMatch(note -> note.title().equals("Short stops"));
  }

  @Test
  void longAndNightShiftsAreNamed() {
    assertThat(of()).anyMatch(note -> note.text().contains("gin_day, gin_night"));
  }
}
