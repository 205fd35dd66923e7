package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A crop that comes in two forms: which is fed next, and what both have from one season. */
class FormsTest {
  private static final int[] FORMS = {0, 1};
  private static final String CROPS =
      """
      {stalk: {bale: {mass: 500 kg}, composition: {fiber: 100 %}}, stalk_modules: {form_of: stalk, module: {mass: 2 t}, moisture: 10 %}}
      """;

  /** One of each on hand; a bale comes at 9:00 and at 10:00, a module at 9:30. */
  private static YardRun yard(String pick) {
    return new YardRun(
        TestPlant.oneLine()
            .says("crops", CROPS)
            .says(
                "yard",
                """
                on_hand: {stalk: 1 bales, stalk_modules: 1 modules}
                places: {shed: {holds: 9 bales, crops: [stalk]}, row: {holds: 9 modules, crops: [stalk_modules]}}
                pick: %s
                """,
                pick)
            .says(
                "deliveries",
                """
                stalk: {loads: {every: 1 h, bales: 1, to: 2027-01-01, hours: {from: "08:00", to: "10:30"}}}
                stalk_modules: {loads: {every: 90 min, modules: 1, to: 2027-01-01, hours: {from: "08:00", to: "10:30"}}}
                """)
            .plant());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "oldest-first | 0 1 0 1 0",
        "newest-first | 0 1 0 0 1",
        "driest-first | 1 1 0 0 0",
        "{places: [row, shed]} | 1 1 0 0 0",
        "{places: [shed]} | 0 0 0 1 1"
      })
  void thePickRuleGoesOverAllFormsAsOverOneHeap(String pick, String order) {
    YardRun run = yard(pick);
    List<String> forms = new ArrayList<>();
    run.at(
            11 * YardRun.H,
            nowS -> {
              for (int form = run.stacking.nextForm(FORMS);
                  form >= 0;
                  form = run.stacking.nextForm(FORMS)) {
                forms.add(String.valueOf(form));
                run.lift(form, nowS);
              }
            })
        .run();
    assertThat(String.join(" ", forms)).isEqualTo(order);
  }

  @Test
  void whatCameBackLastGoesFirstWhateverItsForm() {
    YardRun run = yard("oldest-first");
    run.at(
            11 * YardRun.H,
            nowS -> {
              int bale = run.lift(0, nowS);
              int module = run.lift(1, nowS);
              run.stacking.putBackInFront(bale, 300, nowS);
              assertThat(run.stacking.nextForm(FORMS)).isEqualTo(0);
              run.stacking.putBackInFront(module, 900, nowS);
              assertThat(run.stacking.nextForm(FORMS)).isEqualTo(1);
              assertThat(run.lift(1, nowS)).isEqualTo(module);
              assertThat(run.stacking.nextForm(FORMS)).isEqualTo(0);
            })
        .run();
  }

  @Test
  void aFormWhoseBalesAreAllPromisedIsPassedOver() {
    YardRun run = yard("oldest-first");
    run.at(
            YardRun.H,
            nowS -> {
              run.stacking.promise(0, 1);
              assertThat(run.stacking.nextForm(FORMS)).isEqualTo(1);
              run.stacking.promise(1, 1);
              assertThat(run.stacking.nextForm(FORMS)).isNegative();
            })
        .run();
  }

  /** Straw, a crop by itself with the very same fields, has other days and another season. */
  @Test
  void wetDaysAndTheSeasonsYieldAreOneDrawForAllForms() {
    String fields =
        """
        {fields: {bench: {area: 40 ha, yield: 5 t/ha, ready: 2027-01-05, baling: 20 bales/d}}, yield_factor: {normal: {mean: 100 %%, sd: 20 %%, low: 50 %%}},
         weather: {wet_day: 50 %%}, hours: {from: "06:00", to: "18:00"}, trucks: {count: 2, bales: 10, drive: 1 h}}
        """
            .formatted();
    Repeats got =
        new Repeats(
            TestPlant.oneLine()
                .shift("2027-01-01", "2027-01-15", "00:00", "24:00")
                .says("yard", "{places: {barn: {holds: 10000 bales}}}")
                .says(
                    "crops",
                    "{stalk: {bale: {mass: 500 kg}, composition: {fiber: 100 %}}, rounds: {form_of: stalk, bale: {mass: 500 kg}}, straw: {bale: {mass: 500 kg}, composition: {fiber: 100 %}}}")
                .says("deliveries", "{stalk: %s, rounds: %s, straw: %s}", fields, fields, fields)
                .plant(),
            1,
            20);
    double[] both = got.of("intake.stalk.weighed_in");
    double[] rounds = got.of("intake.rounds.weighed_in");
    double[] straw = got.of("intake.straw.weighed_in");
    int alike = 0;
    for (int k = 0; k < both.length; k++) {
      assertThat(both[k]).isEqualTo(2 * rounds[k]);
      alike += straw[k] == rounds[k] ? 1 : 0;
    }
    assertThat(alike).isLessThan(15);
    assertThat(got.of("mass.rounds.drawn")).containsExactly(got.of("mass.stalk.drawn"));
    assertThat(got.of("mass.straw.drawn")).isNotEqualTo(got.of("mass.stalk.drawn"));
  }
}
