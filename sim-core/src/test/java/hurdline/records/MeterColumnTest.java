package hurdline.records;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.problem.LocatedProblem;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Columns of single machines in power.csv; the mill has 25 hp, 18.6 kW. */
class MeterColumnTest {
  @TempDir private Path temp;

  private Records read(String head, String... rows) {
    return new Folder(temp).with("power.csv", head + "\n" + String.join("\n", rows) + "\n").read();
  }

  @Test
  void aHeadWithAMachinesNameAndKWhIsItsMeter() {
    Records records =
        read("hour from;kWh;Mill [kWh];stalk_saw_kwh", "2027-01-05 06:00;236;5,95;40");
    assertThat(records.power().get(0).machineKWh())
        .isEqualTo(Map.of("mill", 5.95, "stalk_saw", 40.0));
    assertThat(records.cautions()).isEmpty();
  }

  @Test
  void aNameThatIsNearIsTakenAndToldAndOthersAreNamed() {
    Records records = read("hour from,kWh,stalk_sow kWh,canteen kWh", "2027-01-05 06:00,236,40,2");
    assertThat(records.power().get(0).machineKWh()).isEqualTo(Map.of("stalk_saw", 40.0));
    assertThat(records.cautions())
        .extracting(LocatedProblem::found)
        .containsExactlyInAnyOrder(
            "column \"stalk_sow\" read as stalk_saw (nearest name)",
            "columns not used: canteen kWh");
  }

  @Test
  void aReadingThatCannotBeIsNotUsedAndABlankOneIsNone() {
    Records records =
        read(
            "hour from,kWh,mill kWh",
            "2027-01-05 06:00,236,1860",
            "2027-01-05 07:00,236,-3",
            "2027-01-05 08:00,236,",
            "2027-01-05 09:00,236,much",
            "2027-01-05 10:00,236,0");
    assertThat(records.power())
        .extracting(PowerRecord::machineKWh)
        .containsExactly(Map.of(), Map.of(), Map.of(), Map.of(), Map.of("mill", 0.0));
    assertThat(records.account().entries())
        .extracting(Account.Entry::why)
        .containsExactly(
            "1860.0 kWh of mill is more than its motor draws: not used",
            "-3.0 kWh of mill is below 0: not used",
            "",
            "\"much\" is no number",
            "");
  }
}
