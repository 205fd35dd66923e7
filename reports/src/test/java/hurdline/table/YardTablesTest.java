package hurdline.table;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.YardAnswer;
import hurdline.sample.SampleYard;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

class YardTablesTest {
  private static List<String> lines(YardAnswer answer, String file) throws IOException {
    Table table =
        new YardTables(answer)
            .all().stream().filter(t -> t.file().equals(file)).findFirst().orElseThrow();
    StringWriter out = new StringWriter();
    table.write(out);
    return out.toString().lines().toList();
  }

  @Test
  void peaksAreQuantilesWithTheLimitsThatThereAre() throws IOException {
    assertThat(lines(SampleYard.tooSmall(), "peaks.csv"))
        .hasSize(20)
        .startsWith("crop,quantile,unit,value,low_95,high_95", "stalk,p05,bales,4025,,4225")
        .endsWith("stalk,p95,bales,6275,6125,");
  }

  @Test
  void capacityHasARowForEachSize() throws IOException {
    assertThat(lines(SampleYard.tooSmall(), "yard_sizes.csv"))
        .containsExactly(
            "bales,area_m2,chance_of_overflow,low_95,high_95,held_at_field_bales,lost_t,truck_waiting_d,money_per_year,money_low_95,money_high_95,ground_per_year,waiting_per_year,margin_below_no_limit,"
                + "receiving_wages",
            "3500,6125,1,0.91,1,1500,138,130,25000,23000,27000,16000,1000,8000,11000",
            "4200,7350,0.825,0.67,0.93,1250,140,88,25190,23190,27190,16190,1000,8000,11000",
            "5000,8750,0.45,0.29,0.62,1000,142,46,25620,23620,27620,16620,1000,8000,11000",
            "6400,11200,0.05,0.006,0.169,750,144,4,26020,24020,28020,17020,1000,8000,11000");
    assertThat(lines(SampleYard.tooSmall(), "cheapest.csv"))
        .hasSize(5)
        .contains("3500,0,0,0,no")
        .last()
        .asString()
        .endsWith(",yes");
  }

  @Test
  void withoutMoneyItsCellsAreEmptyAndNothingIsCheapest() throws IOException {
    assertThat(lines(SampleYard.stopped(), "yard_sizes.csv"))
        .last()
        .isEqualTo("4200,7350,0.825,0.67,0.93,1250,140,88,,,,,,,");
    assertThat(new YardTables(SampleYard.stopped()).all())
        .extracting(Table::file)
        .doesNotContain("cheapest.csv");
  }

  @Test
  void acresAndGainsAreThereWhereTheyWereAsked() throws IOException {
    assertThat(lines(SampleYard.tooSmall(), "acres.csv"))
        .startsWith(
            "area_factor,acres,chance_finished,low_95,high_95,left_over_bales",
            "1,910,0.95,0.91,0.99,10");
    assertThat(lines(SampleYard.tooSmall(), "gain.csv"))
        .contains(
            "what,measure,unit,gain,low_95,high_95,interval,significant",
            "trucks,yard.stalk.peak,bales,150,90,210,student,yes");
    assertThat(new YardTables(SampleYard.stopped()).all())
        .extracting(Table::file)
        .doesNotContain("acres.csv", "gain.csv");
  }

  @Test
  void loadsAreWhatGrowersArePaidBy() throws IOException {
    assertThat(lines(SampleYard.tooSmall(), "loads.csv"))
        .containsExactly(
            "date,clock,field,bales,weight_t,moisture,dry_t",
            "2027-06-14,07:42,bench,34,16.2,0.125,14.175");
  }

  @Test
  void levelsAreOfEachPlaceAndOfAll() throws IOException {
    assertThat(lines(SampleYard.tooSmall(), "yard_levels.csv"))
        .startsWith(
            "date,crop,place,unit,mean,p05,p50,p95", "2027-01-04,stalk,shed,bales,140,60,140,230")
        .contains("2027-12-31,stalk,*,bales,3750,3670,3750,3840");
    assertThat(lines(SampleYard.tooSmall(), "measures.csv"))
        .contains("base,1,yard.stalk.peak,bales,1", "no limit,1,yard.stalk.peak,bales,2");
  }
}
