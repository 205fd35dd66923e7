package hurdline.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {

  @Test
  void theFewestChangesWin() {
    assertThat(Nearest.to("cleanr", List.of("cleaner", "saw", "clean_out"))).contains("cleaner");
    assertThat(Nearest.to("couted", List.of("cost", "counted"))).contains("counted");
  }

  @Test
  void aSwapOfNeighboursIsOneChange() {
    assertThat(Nearest.distance("tabel", "table")).isEqualTo(1);
    assertThat(Nearest.distance("", "abc")).isEqualTo(3);
  }

  @Test
  void aFormerWordOfTheFormatMeansTheOneThatTookItsPlace() {
    assertThat(Nearest.to("precedence", List.of("rate", "priority"))).contains("priority");
    assertThat(Nearest.to("stand_down", List.of("line", "send_home"))).contains("send_home");
    assertThat(Nearest.to("precedence", List.of("rate", "to"))).isEmpty();
  }

  @Test
  void caseIsNoChange() {
    assertThat(Nearest.to("SAW", List.of("saw"))).contains("saw");
  }

  @Test
  void aWordTooFarFromAllHasNone() {
    assertThat(Nearest.to("fan", List.of("separating-saw", "press"))).isEmpty();
    assertThat(Nearest.expected("a machine", "fan", List.of("saw_1", "press")))
        .isEqualTo(Expected.of("a machine, one of saw_1, press"));
    assertThat(Nearest.expected("a machine", "fan", List.of()))
        .isEqualTo(Expected.of("a machine, of which there is none"));
    assertThat(Nearest.expected("a machine", "sow_1", List.of("saw_1", "press")))
        .isEqualTo(new Expected("a machine, perhaps \"saw_1\"", "saw_1"));
  }
}
