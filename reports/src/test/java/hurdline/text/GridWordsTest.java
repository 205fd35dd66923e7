package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.sample.SampleGrid;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class GridWordsTest {
  private static final Wording US = new Wording(UnitSystem.US, Locale.ROOT);

  @Test
  void oneKeyIsToldWithWhereTheBestPlantChanges() {
    assertThat(String.join("\n", new GridWords(SampleGrid.line(), US).lines(80)))
        .isEqualTo(
            """
            Sweetgum Bend shared gin, the plant as it stands against bigger<mill>, price of hurd from 100 USD/t to 300 USD/t (3 values), 2027-01-04 to 2027-12-31, 40 replications each, seed 1
            Best by margin: the plant as it stands at 100 USD/t and 200 USD/t, bigger<mill> at 300 USD/t; it changes from the plant as it stands to bigger<mill> near 220 USD/t, significantly between 100 USD/t and 300 USD/t.
            The margin is highest at 300 USD/t with bigger<mill>: 170,000 USD, give or take 4,000, significantly more than at every other value.
            The grid ends there, and beyond it may be more.
            The stalk fed is highest at 300 USD/t with bigger<mill>: 2,650 tons, give or take 20, not significantly more than at 200 USD/t; about 32,000 replications would show which is higher.

                                 mean           95 % interval
            Margin with the plant as it stands
              at 100 USD/t     50,000 USD    46,000 to 54,000
              at 200 USD/t     90,000 USD    86,000 to 94,000
              at 300 USD/t    120,000 USD  116,000 to 124,000
            Margin with bigger<mill>
              at 100 USD/t     20,000 USD    16,000 to 24,000
              at 200 USD/t     80,000 USD    76,000 to 84,000
              at 300 USD/t    170,000 USD  166,000 to 174,000
            Stalk fed with the plant as it stands
              at every value    2,205 ton
            Stalk fed with bigger<mill>
              at 100 USD/t      2,650 ton      2,620 to 2,670
              at 200 USD/t      2,650 ton      2,620 to 2,670
              at 300 USD/t      2,650 ton      2,630 to 2,670

            Best by margin: the plant as it stands at 100 USD/t and 200 USD/t, bigger<mill> at 300 USD/t; it changes from the plant as it stands to bigger<mill> near 220 USD/t, significantly between 100 USD/t and 300 USD/t
            Margin of the plant as it stands: highest at 300 USD/t, 120,000 USD (116,000 to 124,000); significantly different from every other value; the grid ends there, and beyond it may be more
            Margin of bigger<mill>: highest at 300 USD/t, 170,000 USD (166,000 to 174,000); significantly different from every other value; the grid ends there, and beyond it may be more
            Best by stalk fed: bigger<mill> at every value, significantly better than the others everywhere
            Stalk fed of the plant as it stands: the same at every value, 2,205 ton
            Stalk fed of bigger<mill>: highest at 300 USD/t, 2,650 ton (2,630 to 2,670); no significant difference from it: 200 USD/t
            Intervals are those of the mean of 40 simulated years at each value.\
            """);
  }

  @Test
  void twoKeysAreToldByTheirCells() {
    assertThat(new GridWords(SampleGrid.tiles(), US).sentences())
        .isEqualTo(
            List.of(
                "Margin: highest at area x1.2, from 2027-06-01, 136,000 USD (131,000 to 141,000); no significant difference"
                    + " from it: area x0.8, from 2027-06-08; area x1, from 2027-06-01.",
                "Carry-over of stalk: from 0 bales (-20 to 20) at area x0.8, from 2027-06-01 to 200"
                    + " bales (180 to 220) at area x1.2, from 2027-06-01.",
                "Left out, since the plant has problems there: area x1.2, from 2027-06-08."));
  }
}
