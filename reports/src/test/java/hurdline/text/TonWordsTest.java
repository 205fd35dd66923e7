package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.sample.Draft;
import hurdline.sample.SampleAnswer;
import hurdline.sample.SampleRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class TonWordsTest {
  private static final Wording METRIC = new Wording(UnitSystem.METRIC, Locale.ROOT);

  /** 1,000 t fed; revenue less all that is taken is the margin. */
  private static final List<SummaryRow> SUMS =
      List.of(
          SampleRow.of("mass.stalk.fed", "t", 1_000),
          SampleRow.of("money.stalk_line.revenue", "USD", 400_000),
          SampleRow.of("money.stalk_line.crop_cost", "USD", 170_000),
          SampleRow.of("money.stalk_line.stock_change", "USD", -20_000),
          SampleRow.of("money.stalk_line.wages", "USD", 90_000),
          SampleRow.of("money.stalk_line.packages", "USD", 30_000),
          SampleRow.of("money.stalk_line.stops", "USD", 120),
          SampleRow.of("money.stalk_line.margin", "USD", 89_880),
          SampleRow.of("money.electricity", "USD", 20_000),
          SampleRow.of("money.overhead", "USD", 100_000));

  private static List<String> said(int lines, double margin) {
    List<SummaryRow> rows = new ArrayList<>(SUMS);
    rows.add(SampleRow.of("money.margin", "USD", margin));
    RunAnswer year = SampleAnswer.with(rows);
    List<Outline.Line> of = year.outline().lines().subList(0, lines);
    Outline outline = Draft.from(year.outline()).with(Outline::lines, of).made();
    return new TonWords(Draft.from(year).with(RunAnswer::outline, outline).made(), METRIC)
        .sentences();
  }

  @Test
  void ofTheOneLineOfAPlantAllIsTold() {
    assertThat(said(1, -30_120))
        .containsExactly(
            "Over all simulated years a tonne of stalk fed brings 400.0 USD and takes 190.0 for"
                + " stalk, 90.0 in wages, 30.0 for packages and 0.1 for parts and services at stops:"
                + " 89.9 USD are left before electricity and overhead, which take 20.0 and 100.0, so"
                + " that a tonne loses 30.1 USD before interest and tax");
    assertThat(said(1, 20_000).get(0))
        .endsWith("so that a tonne earns 20.0 USD before interest and tax");
  }

  @Test
  void whatSeveralLinesShareIsNotSplit() {
    assertThat(said(2, 20_000))
        .hasSize(1)
        .allSatisfy(
            said -> assertThat(said).endsWith("89.9 USD are left before electricity and overhead"));
  }
}
