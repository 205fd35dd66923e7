package hurdline.study.rest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonRest.Kind;
import hurdline.answer.SeasonRest.Quantity;
import hurdline.answer.SeasonRest.Stock;
import hurdline.fit.LineLoads;
import hurdline.measure.Measure;
import hurdline.plant.Plant;
import hurdline.records.RecordedForms;
import hurdline.records.Records;
import hurdline.records.RecordsFolder;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.replicate.RunSettings;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A season under way of a plant whose crop comes in bales and in modules. */
class FormsAsOfTest {
  private static final LocalDate AS_OF = LocalDate.of(2027, 11, 15); // a Monday, when it is counted

  @TempDir private Path folder;

  @Test
  void eachFormGoesOnFromItsOwnStock() throws IOException {
    PlantOrigin egret = Studied.source(Path.of("../line-configs/egret-fork.yaml"));
    Plant plant = egret.variants().with();
    RecordedForms.write(plant, 20270816, folder);
    Records records = RecordsFolder.read(folder, plant);
    RunAnswer answer =
        new RestStudy(
                egret,
                PlantChanges.base(),
                new RunSettings(4, Optional.empty(), 1, 2, Optional.empty()),
                records,
                "records",
                AS_OF,
                new LineLoads(Map.of("stalk_line", Map.of("saw", 0.9))))
            .simulate((done, of) -> {}, () -> false)
            .orElseThrow();
    assertThat(answer.rest().stock())
        .extracting(Stock::crop, Stock::unit, Stock::onHand)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("stalk", "bales", counted(records, "stalk")),
            org.assertj.core.groups.Tuple.tuple(
                "stalk_modules", "modules", counted(records, "stalk_modules")));
    Quantity bales = fed(answer, "stalk");
    Quantity modules = fed(answer, "stalk_modules");
    assertThat(bales.rest() + modules.rest())
        .isCloseTo(answer.mean(Measure.INTAKE_FED.of("stalk")), within(1e-9));
    assertThat(modules.rest())
        .isCloseTo(answer.mean(Measure.INTAKE_FED.of("stalk_modules")), within(1e-9));
    assertThat(bales.soFar()).isPositive();
    assertThat(bales.whole()).isGreaterThan(4 * modules.whole());
  }

  private static double counted(Records records, String crop) {
    return records.yard().stream()
        .filter(row -> row.date().equals(AS_OF) && row.what().equals(crop))
        .findFirst()
        .orElseThrow()
        .value();
  }

  private static Quantity fed(RunAnswer answer, String crop) {
    return answer.rest().quantities().stream()
        .filter(of -> of.kind() == Kind.FED && of.of().equals(crop))
        .findFirst()
        .orElseThrow();
  }
}
