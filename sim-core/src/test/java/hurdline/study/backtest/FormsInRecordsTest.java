package hurdline.study.backtest;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.BacktestAnswer;
import hurdline.answer.BacktestAnswer.Kind;
import hurdline.answer.BacktestAnswer.Verdict;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.records.RecordedForms;
import hurdline.records.RecordsFolder;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import hurdline.study.replicate.RunSettings;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A season of a plant whose crop comes in bales and in modules, found again by form. */
class FormsInRecordsTest {
  private static final PlantOrigin EGRET =
      Studied.source(Path.of("../line-configs/egret-fork.yaml"));

  @TempDir private static Path folder;

  @BeforeAll
  static void aSeasonOfItsOwn() throws IOException {
    RecordedForms.write(EGRET.variants().with(), 20270816, folder);
  }

  private static BacktestAnswer backtest(Change... changes) {
    Plant plant = EGRET.variants().with(changes);
    PlantChanges chosen = new PlantChanges(PlantChanges.baseName(), List.of(), List.of(changes));
    return new Backtest(
            EGRET,
            chosen,
            RecordsFolder.read(folder, plant),
            "records",
            new RunSettings(99, Optional.empty(), 1, 2, Optional.empty()))
        .simulate((done, of) -> {}, () -> false)
        .orElseThrow();
  }

  private static List<BacktestAnswer.Series> off(BacktestAnswer answer) {
    return answer.series().stream()
        .filter(of -> of.verdict() == Verdict.MISSES || of.verdict() == Verdict.PROBABLY_OFF)
        .toList();
  }

  @Test
  void aSeasonOfThePlantItselfIsNoReasonToDoubtItInAnyForm() {
    BacktestAnswer answer = backtest();
    assertThat(off(answer)).isEmpty();
    for (Kind kind : List.of(Kind.FED, Kind.YARD)) {
      assertThat(answer.series())
          .filteredOn(of -> of.kind() == kind)
          .extracting(BacktestAnswer.Series::of, BacktestAnswer.Series::unit)
          .containsExactly(
              org.assertj.core.groups.Tuple.tuple("stalk", "bales"),
              org.assertj.core.groups.Tuple.tuple("stalk_modules", "modules"));
    }
    assertThat(answer.series())
        .filteredOn(of -> of.kind() == Kind.FED)
        .allSatisfy(of -> assertThat(Math.abs(of.off())).isLessThan(0.02));
  }

  /** As many modules a sixth lighter: less of all products is made of them. */
  @Test
  void aWrongMassOfOneFormIsFound() {
    BacktestAnswer answer =
        backtest(new Change.Value("crops.stalk_modules.module.mass", "3000 lb"));
    assertThat(off(answer)).extracting(BacktestAnswer.Series::of).contains("long_fiber", "hurd");
    assertThat(off(answer)).allSatisfy(of -> assertThat(of.off()).isBetween(0.03, 0.10));
  }
}
