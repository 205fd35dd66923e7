package hurdline.table;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.sample.SampleCompare;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class CompareTablesTest {
  private static List<String> linesOf(String file) throws IOException {
    Table table =
        new CompareTables(SampleCompare.two())
            .all().stream().filter(t -> t.file().equals(file)).findFirst().orElseThrow();
    StringBuilder out = new StringBuilder();
    table.write(out);
    return out.toString().lines().toList();
  }

  @Test
  void measuresHoldEveryReplicationOfBaseAndOptions() throws IOException {
    assertThat(linesOf("measures.csv"))
        .containsExactly(
            "alternative,replication,measure,unit,value",
            "base,1,mass.stalk.fed,t,1",
            "base,2,mass.stalk.fed,t,3",
            "bigger_mill,1,mass.stalk.fed,t,2",
            "bigger_mill,2,mass.stalk.fed,t,3",
            "bigger_mill+hand,1,mass.stalk.fed,t,",
            "bigger_mill+hand,2,mass.stalk.fed,t,3");
  }

  @Test
  void theSummaryHasARowForEach() throws IOException {
    assertThat(linesOf("summary.csv")).hasSize(24);
    assertThat(linesOf("summary.csv").get(12))
        .startsWith("bigger_mill,mass.stalk.fed,t,2400,2391,2409,");
  }

  @Test
  void differencesSayYesOrNoAndLeaveTheUndefinedEmpty() throws IOException {
    assertThat(linesOf("differences.csv"))
        .startsWith(
            "alternative,measure,unit,base_mean,alternative_mean,difference,low_95,high_95,low_joint,high_joint,"
                + "interval,significant,replications_needed,variance_removed,replications",
            "bigger_mill,mass.stalk.fed,t,3484,4328,844,780,908,764,924,student,yes,3,0.82,40")
        .endsWith("bigger_mill+hand,money.margin,USD,167000,167000,0,0,0,0,0,student,no,,,40");
  }

  @Test
  void holdersPaybackAndCashHaveTheirColumns() throws IOException {
    assertThat(linesOf("bottlenecks.csv"))
        .startsWith(
            "alternative,line,cause,hours,share,share_low_95,share_high_95,interval",
            "base,stalk_line,mill,1100,0.57,0.54,0.61,student");
    assertThat(linesOf("payback.csv"))
        .startsWith(
            "alternative,quantity,unit,mean,low_95,high_95,p05,p50,p95",
            "bigger_mill,net_present_value,USD,1390000,1300000,1480000,1330000,1385000,1460000",
            "bigger_mill,internal_rate_of_return,share,,,,,,")
        .contains(
            "bigger_mill,chance_of_loss,share,0.05,0.01,0.17,,,",
            "bigger_mill,added_in_first_year,USD,213000,205000,221000,180000,212000,240000");
    assertThat(linesOf("cash.csv"))
        .startsWith(
            "alternative,year,unit,mean,p05,p50,p95",
            "bigger_mill,0,USD,-140000,-140000,-140000,-140000")
        .endsWith("bigger_mill+hand,2.5,USD,10,-20,10,30");
  }

  @Test
  void gainsHaveTheirColumns() throws IOException {
    assertThat(linesOf("gain.csv"))
        .startsWith(
            "what,measure,unit,gain,low_95,high_95,interval,significant",
            "feeder,mass.stalk.fed,t,20,8,32,student,yes")
        .contains("hurd_bin,mass.stalk.fed,t,2,-7,11,student,no");
  }

  @Test
  void whatTheWorthHangsOnAndWhereItIsNothingHaveTheirColumns() throws IOException {
    assertThat(linesOf("tornado.csv"))
        .startsWith(
            "alternative,input,low,high,unit,net_present_value_at_low,net_present_value_at_high,net_present_value,swing",
            "bigger_mill,products.fine.price,0.8,1.2,x,900000,1880000,1390000,980000",
            "bigger_mill,money.wage,20,30.5,USD/h,1400000,1380000,1390000,20000");
    assertThat(linesOf("break_even.csv"))
        .containsExactly(
            "alternative,input,unit,value,from,to,found",
            "bigger_mill,money.crop_prices.stalk,USD/ton,201.53,42.9,217.5,yes",
            "bigger_mill,products.*.price,x,,0.0585,17.0859375,no");
    assertThat(linesOf("selection.csv"))
        .startsWith(
            "alternative,measure,unit,mean,replications,left",
            "base,money.margin,USD,167000,40,no");
    assertThat(linesOf("service_lives.csv"))
        .startsWith(
            "alternative,life,quantity,unit,value", "bigger_mill,1,net_present_value,USD,1333000")
        .contains(
            "bigger_mill,1,other_internal_rate,share,0.1",
            "bigger_mill,2,other_internal_rate,share,",
            "bigger_mill,38,discounted_payback,yr,");
  }
}
