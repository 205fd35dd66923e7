package hurdline.table;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.sample.SampleSeason;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeasonTablesTest {
  private static List<String> linesOf(String file) throws IOException {
    Table table =
        new SeasonTables(SampleSeason.two())
            .all().stream().filter(t -> t.file().equals(file)).findFirst().orElseThrow();
    StringBuilder out = new StringBuilder();
    table.write(out);
    return out.toString().lines().toList();
  }

  @Test
  void plansHoldWhatTellsThemApart() throws IOException {
    assertThat(linesOf("plans.csv"))
        .startsWith(
            "alternative,measure,unit,mean,low_95,high_95,interval",
            "base,mass.stalk.fed,t,3400,3380,3420,student")
        .contains("two_shifts,money.margin,USD,570000,565000,575000,student")
        .contains("base,machine.feeder.crop.stalk.hours.starved,h,210.4,207.4,213.4,student");
  }

  @Test
  void differencesNameBothPlans() throws IOException {
    assertThat(linesOf("differences.csv"))
        .startsWith(
            "alternative,against,measure,unit,base_mean,alternative_mean,difference,low_95,high_95,low_joint,"
                + "high_joint,interval,significant,replications_needed,variance_removed,replications",
            "two_shifts,base,mass.stalk.fed,t,3400,4000,600,510,690,510,690,student,yes,3,0.9,40")
        .endsWith("two_shifts,base,energy.total,kWh,900000,900000,0,0,0,0,0,student,no,,,40");
  }

  @Test
  void stripsAndMonthsHaveTheirColumns() throws IOException {
    assertThat(linesOf("machine_weeks.csv"))
        .startsWith("alternative,machine,week,crop,hours,mass_in_t", "base,feeder,1,stalk,38.5,90");
    assertThat(linesOf("months.csv"))
        .startsWith(
            "alternative,month,measure,unit,mean,p05,p50,p95",
            "base,2027-01,energy.total,kWh,30000,29000,30000,31000");
  }

  @Test
  void measuresHoldEveryReplicationUnderThePlansName() throws IOException {
    assertThat(linesOf("measures.csv"))
        .containsExactly(
            "alternative,replication,measure,unit,value",
            "base,1,mass.stalk.fed,t,1",
            "base,2,mass.stalk.fed,t,3",
            "two_shifts,1,mass.stalk.fed,t,2",
            "two_shifts,2,mass.stalk.fed,t,3");
  }
}
