package hurdline.table;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.OrderRow;
import hurdline.answer.RunAnswer;
import hurdline.answer.Trace;
import hurdline.measure.EventKind;
import hurdline.sample.Draft;
import hurdline.sample.SampleAnswer;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RunTablesTest {
  private static final RunAnswer YEAR = SampleAnswer.year();

  private static List<String> linesOf(RunAnswer answer, String file) throws IOException {
    Table table =
        new RunTables(answer)
            .all().stream().filter(t -> t.file().equals(file)).findFirst().orElseThrow();
    StringBuilder out = new StringBuilder();
    table.write(out);
    return out.toString().lines().toList();
  }

  @Test
  void aRunWritesItsFiveTables() {
    assertThat(new RunTables(YEAR).all())
        .extracting(Table::file)
        .containsExactly(
            "measures.csv", "summary.csv", "weeks.csv", "months.csv", "yard_levels.csv");
  }

  @Test
  void ordersHaveATableOfTheirOwn() throws IOException {
    OrderRow order =
        new OrderRow(
            "base",
            "fine_hurd",
            1,
            108.9,
            LocalDate.of(2027, 12, 15),
            40,
            38,
            30,
            0.588,
            0.873,
            321,
            4.5,
            12,
            1.25,
            900);
    RunAnswer answer = Draft.from(YEAR).with(RunAnswer::orders, List.of(order)).made();
    assertThat(linesOf(answer, "orders.csv"))
        .containsExactly(
            "alternative,product,order,mass_t,due,years,met,on_time,on_time_low_95,on_time_high_95,met_day,"
                + "late_days,late_days_95,missing_t,penalty",
            "base,fine_hurd,1,108.9,2027-12-15,40,38,30,0.588,0.873,321,4.5,12,1.25,900");
  }

  @Test
  void measuresHoldEveryReplicationAndCountFromOne() throws IOException {
    List<String> lines = linesOf(YEAR, "measures.csv");
    assertThat(lines.get(0)).isEqualTo("alternative,replication,measure,unit,value");
    assertThat(lines).hasSize(1 + 40 * YEAR.samples().measures().size());
    assertThat(lines.get(1)).isEqualTo("base,1,intake.stalk.fed,bales,7312.4");
    assertThat(lines.get(lines.size() - 1)).isEqualTo("base,40,trucks.stalk.wait.mean,min,");
  }

  @Test
  void theSummaryKeepsAllDigitsAndLeavesTheUndefinedEmpty() throws IOException {
    assertThat(linesOf(SampleAnswer.bare(), "summary.csv"))
        .containsExactly(
            "alternative,measure,unit,mean,low_95,high_95,sd,p05,p50,p95,min,max,replications,interval,definition",
            "base,mass.stalk.fed,t,88,,,,88,88,88,88,88,1,,\"Mass that the feeder has drawn, part bales included.\"");
  }

  @Test
  void weeksMonthsAndLevelsHaveTheirColumns() throws IOException {
    assertThat(linesOf(YEAR, "weeks.csv").get(0))
        .isEqualTo("alternative,week,from,measure,unit,mean,p05,p50,p95");
    assertThat(linesOf(YEAR, "weeks.csv").get(1)).startsWith("base,1,2027-01-04,mass.stalk.fed,t,");
    assertThat(linesOf(YEAR, "months.csv").get(0))
        .isEqualTo("alternative,month,measure,unit,mean,p05,p50,p95");
    assertThat(linesOf(YEAR, "months.csv").get(1))
        .isEqualTo("base,2027-01,energy.total,kWh,54600,50778,54600,57876");
    assertThat(linesOf(YEAR, "yard_levels.csv").get(0))
        .isEqualTo("alternative,date,crop,place,unit,mean,p05,p50,p95");
    assertThat(linesOf(YEAR, "yard_levels.csv").get(3))
        .startsWith("base,2027-01-04,stalk,*,bales,3120,");
  }

  @Test
  void figuresAdjustedForTheDrawnCropHaveATableWhereThereAreAny() throws IOException {
    assertThat(linesOf(SampleAnswer.richYears(), "adjusted.csv"))
        .startsWith(
            "alternative,measure,unit,crop,mean,error,adjusted,adjusted_error,low_95,high_95",
            "base,season.stalk_line.left_over,bales,stalk,2420,65,2302.8,18.5,2265.3,2340.3")
        .hasSize(3);
  }

  @Test
  void aTraceHasAColumnPerHeadAndBin() throws IOException {
    Trace trace =
        new Trace(
            3,
            List.of("feeder", "hurd_bin"),
            List.of("hurd_bin"),
            List.of(
                new Trace.Row(
                    "2027-01-04T06:00:00",
                    "feeder",
                    EventKind.HOURS_BEGIN,
                    Double.NaN,
                    new double[] {3.6, 0},
                    new double[] {0.25})));
    RunAnswer with = withTrace(trace);
    assertThat(linesOf(with, "trace.csv"))
        .containsExactly(
            "replication,clock,where,what,amount,rate.feeder,rate.hurd_bin,level.hurd_bin",
            "3,2027-01-04T06:00:00,feeder,hours begin,,3.6,0,0.25");
  }

  @Test
  void textWithACommaIsQuoted() throws IOException {
    StringBuilder out = new StringBuilder();
    new Table(
            "x.csv",
            List.of("a", "b"),
            () -> List.<Object[]>of(new Object[] {"one, two", "say \"so\""}).stream())
        .write(out);
    assertThat(out.toString()).isEqualTo("a,b\n\"one, two\",\"say \"\"so\"\"\"\n");
  }

  static RunAnswer withTrace(Trace trace) {
    RunAnswer b = SampleAnswer.bare();
    return Draft.from(b)
        .with(RunAnswer::warnings, new ArrayList<>())
        .with(RunAnswer::trace, trace)
        .made();
  }
}
