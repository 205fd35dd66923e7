package hurdline.command;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.study.replicate.Precision;
import org.junit.jupiter.api.Test;

class AimReaderTest {
  @Test
  void anAimInTonsIsTurnedIntoTonnes() {
    assertThat(AimReader.of("mass.stalk.fed:500ton").halfWidth())
        .isCloseTo(453.59237, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(AimReader.of("money.margin:5000 USD"))
        .isEqualTo(new Precision("money.margin", 5000, false, "money.margin:5000 USD"));
    assertThat(AimReader.of("money.margin:2%"))
        .isEqualTo(new Precision("money.margin", 0.02, true, "money.margin:2%"));
  }

  @Test
  void anAimMayBeInAnyUnitOfItsKindAndInNoOther() {
    assertThat(AimReader.of("mass.stalk.fed:500 kg").halfWidth()).isEqualTo(0.5);
    assertThat(AimReader.of("yard.stalk.peak:40 bales").halfWidth()).isEqualTo(40);
    for (String none :
        java.util.List.of("money.margin:5 bananas", "money.margin:5 kg", "yard.stalk.peak:3 kWh")) {
      org.assertj.core.api.Assertions.assertThatThrownBy(() -> AimReader.of(none))
          .hasMessageContaining(" has another unit than its measure; expected % or ");
    }
  }
}
