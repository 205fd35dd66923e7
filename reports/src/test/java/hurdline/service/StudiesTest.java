package hurdline.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hurdline.answer.Answer;
import hurdline.answer.RunAnswer;
import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.problem.LocatedProblem;
import hurdline.study.PlantChanges;
import hurdline.study.compare.CompareAsk;
import hurdline.study.option.BreakEvenWork;
import hurdline.study.replicate.ReplicationRange;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.RangeResults;
import hurdline.study.run.Run;
import hurdline.table.RecordFile;
import hurdline.table.RunTables;
import hurdline.table.Table;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudiesTest {
  private static final Path SMALL = Path.of("../line-configs/small.yaml");
  private static final Path STALK = Path.of("../line-configs/stalk.yaml");
  private final Studies studies = new EngineStudies();

  private static RunSettings effort(int replications) {
    return new RunSettings(replications, Optional.empty(), 1, 2, Optional.empty());
  }

  private static PlantChanges days(String lastDay) {
    return new PlantChanges(
        PlantChanges.base().option(),
        List.of(),
        List.of(
            new Change.Value("calendar.to", lastDay), new Change.Value("season.0.to", lastDay)));
  }

  private static String record(Answer answer) throws IOException {
    StringWriter record = new StringWriter();
    RecordFile.write(answer, record);
    return record.toString();
  }

  private static String files(RunAnswer answer) throws IOException {
    StringWriter all = new StringWriter();
    for (Table table : new RunTables(answer).all()) {
      table.write(all.append(table.file()).append('\n'));
    }
    return all.append(record(answer)).toString();
  }

  @Test
  void aTextInMemoryGivesTheAnswerOfItsFile() throws IOException {
    PlantText text = PlantText.of("small.yaml", Files.readString(SMALL));
    assertThat(record(studies.onPaper(text, PlantChanges.base())))
        .isEqualTo(record(studies.onPaper(PlantText.of(SMALL), PlantChanges.base())));
    assertThat(studies.problems(text, PlantChanges.base()))
        .isEqualTo(studies.problems(PlantText.of(SMALL), PlantChanges.base()));
  }

  @Test
  void everyProblemHasItsPlace() {
    List<LocatedProblem> problems =
        studies.problems(
            PlantText.of("here.yaml", "hurdline: 1\nmaschines: x\n"), PlantChanges.base());
    assertThat(problems)
        .hasSizeGreaterThan(1)
        .allMatch(problem -> problem.file().equals("here.yaml"));
    assertThat(problems)
        .anyMatch(
            problem ->
                problem.path().equals("maschines")
                    && problem.line() == 2
                    && problem.nearest().equals("machines"));
    assertThat(studies.problems(PlantText.of(SMALL), days("2028-13-01")))
        .allMatch(problem -> problem.severity() == LocatedProblem.Severity.PROBLEM)
        .anyMatch(problem -> problem.path().equals("calendar.to"));
    assertThatThrownBy(
            () ->
                studies.run(
                    PlantText.of("none.yaml", "hurdline: 1\n"), PlantChanges.base(), effort(1)))
        .isInstanceOf(ProblemsException.class);
  }

  @Test
  void aTextThatNamesARainFileTakesItFromMemory(@TempDir Path dir) throws IOException {
    StringBuilder rain = new StringBuilder("date,rain_mm\n");
    for (java.time.LocalDate day = java.time.LocalDate.of(2020, 1, 1);
        day.getYear() < 2022;
        day = day.plusDays(1)) {
      rain.append(day).append(day.getDayOfMonth() % 9 == 0 ? ",12\n" : ",0\n");
    }
    String yaml = Files.readString(STALK);
    assertThat(yaml)
        .as("this test wants the shipped weather on its line")
        .containsPattern("weather: ?\\{.*\\}");
    String named =
        yaml.replaceFirst("weather: ?\\{.*\\}", "weather: {file: rain.csv, wet_threshold: 2 mm}");
    Path file = Files.writeString(dir.resolve("stalk.yaml"), named);
    Files.writeString(dir.resolve("rain.csv"), rain);
    PlantText text = PlantText.of("stalk.yaml", named, Map.of("rain.csv", rain.toString()));
    assertThat(record(studies.onPaper(text, PlantChanges.base())))
        .isEqualTo(record(studies.onPaper(PlantText.of(file), PlantChanges.base())));
    assertThat(studies.problems(PlantText.of("stalk.yaml", named), PlantChanges.base()))
        .anyMatch(problem -> problem.text().contains("was not read together with the plant file"));
  }

  /** As two computers would: to the byte, in every table and the record. */
  @Test
  void rangesPutTogetherWriteTheFilesOfTheWholeRun() throws IOException {
    PlantText small = PlantText.of(SMALL);
    String whole =
        files(
            studies
                .run(small, days("2027-03-12"), effort(45))
                .simulate((done, of) -> {}, () -> false)
                .orElseThrow());
    Run run = studies.inRanges(small, days("2027-03-12"), effort(45));
    RangeResults last = run.simulate(new ReplicationRange(30, 46), (done, of) -> {}, () -> false);
    RangeResults all = run.simulate(new ReplicationRange(1, 13), (done, of) -> {}, () -> false);
    all.append(run.simulate(new ReplicationRange(13, 30), (done, of) -> {}, () -> false));
    all.append(last);
    assertThat(files(run.answer(all))).isEqualTo(whole);
    assertThat(
            files(
                run.answer(
                    run.simulate(ReplicationRange.first(44), (done, of) -> {}, () -> false))))
        .isNotEqualTo(whole);
  }

  @Test
  void aComparisonSaysWhatItsServiceLivesCostBeforeItStarts() {
    CompareAsk ask =
        new CompareAsk(
            List.of(),
            OptionalDouble.empty(),
            OptionalInt.of(3),
            false,
            Optional.empty(),
            List.of(),
            Optional.empty());
    var compare = studies.compare(PlantText.of(SMALL), PlantChanges.base(), ask, effort(2));
    assertThat(compare.lives())
        .hasValueSatisfying(
            work -> {
              assertThat(work.lives()).isEqualTo(3);
              assertThat(work.threads()).isEqualTo(2);
              assertThat(work.calendars()).isBetween(3, compare.calendars());
            });
    assertThat(studies.run(PlantText.of(SMALL), PlantChanges.base(), effort(2)).lives()).isEmpty();
  }

  /** A price costs no simulation; the power of a motor simulates base and option at each value. */
  @Test
  void searchesForABreakEvenThatSimulateAreSaidBeforeTheyStart() {
    assertThat(breakEven("products.hurd.price").searches()).isZero();
    assertThat(breakEven("products.hurd.price").calendars()).isZero();
    BreakEvenWork power = breakEven("machines.saw.power", "products.hurd.price");
    assertThat(power.searches()).isEqualTo(1);
    int lives = 3;
    int calendarsOfALife = 12; // the option lives 12 years
    assertThat(power.calendarsEach()).isEqualTo(lives * 2 * calendarsOfALife);
    assertThat(power.calendars()).isEqualTo(12 * power.calendarsEach());
  }

  private BreakEvenWork breakEven(String... keys) {
    CompareAsk ask =
        new CompareAsk(
            List.of("bigger_mill"),
            OptionalDouble.empty(),
            OptionalInt.of(3),
            false,
            Optional.empty(),
            List.of(keys),
            Optional.empty());
    return studies
        .compare(PlantText.of(SMALL), PlantChanges.base(), ask, effort(2))
        .lives()
        .orElseThrow()
        .breakEven();
  }
}
