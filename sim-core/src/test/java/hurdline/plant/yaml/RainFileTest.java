package hurdline.plant.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hurdline.plant.Change;
import hurdline.plant.Delivery.PastYears;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The CSV of past rain beside a plant file. */
class RainFileTest {
  private static final Path SHIPPED = Path.of("../line-configs");
  private static final Pattern MISTAKE =
      Pattern.compile(
          "\\{\"file\": \"([a-z.]+)\", \"line\": ([0-9]+), \"words\": \\[([^\\]]*)\\]\\}");

  @TempDir Path folder;

  private static List<String> problems(Path plant) {
    return assertThrows(ProblemsException.class, () -> PlantFile.read(plant)).lines();
  }

  /** Dry days of whole years. */
  private static List<String> dry(int from, int to) {
    List<String> rows = new ArrayList<>(List.of("date,rain_mm"));
    LocalDate.of(from, 1, 1)
        .datesUntil(LocalDate.of(to + 1, 1, 1))
        .forEach(day -> rows.add(day + ",0"));
    return rows;
  }

  private Path plant(String changed, String by) throws IOException {
    String text = PlantFiles.text("exact/past_rain.yaml").replace(changed, by);
    return Files.writeString(folder.resolve("p.yaml"), text);
  }

  private void rain(String name, List<String> rows) throws IOException {
    Files.write(folder.resolve(name), rows);
  }

  private static PastYears past(Plant plant) {
    return (PastYears) plant.deliveries().get(0).weather();
  }

  @Test
  void everyMistakeOfBothFilesIsToldOnItsLine() {
    List<String> lines = problems(SHIPPED.resolve("wrong/rain.yaml"));
    List<MatchResult> mistakes =
        MISTAKE.matcher(PlantFiles.text("wrong/rain.expect.json")).results().toList();
    List<String> untold = new ArrayList<>();
    for (MatchResult mistake : mistakes) {
      String place = "/" + mistake.group(1) + ":" + mistake.group(2) + ":";
      List<String> words = List.of(mistake.group(3).replace("\"", "").split(", "));
      if (lines.stream()
          .noneMatch(l -> l.contains(place) && words.stream().allMatch(l::contains))) {
        untold.add(mistake.group());
      }
    }
    assertThat(mistakes).hasSize(15);
    assertThat(untold).as(String.join("\n", lines)).isEmpty();
    assertThat(lines)
        .as("nothing is told besides")
        .hasSize(15)
        .allMatch(l -> l.contains("; expected "));
  }

  @Test
  void swappedColumnsAreToldOnceAndNoDayIsMissedForIt() throws IOException {
    List<String> rows = new ArrayList<>(List.of("rain_mm,date"));
    dry(2021, 2021).stream().skip(1).forEach(row -> rows.add("0," + row.substring(0, 10)));
    rain("past_rain.csv", rows);
    assertThat(problems(plant("", "")))
        .singleElement()
        .asString()
        .endsWith(
            "past_rain.csv:1: the columns are swapped; expected \"date,rain_mm\", the date first");
  }

  @Test
  void aYearThatBeginsLateAndALeapDayLeftOutAreMissing() throws IOException {
    List<String> rows = dry(2020, 2021);
    rows.remove("2020-02-29,0");
    rows.subList(1, 4).clear();
    rows.removeIf(row -> row.startsWith("2021"));
    rain("past_rain.csv", rows);
    List<String> lines = problems(plant("", ""));
    assertThat(lines).hasSize(2);
    assertThat(String.join("\n", lines))
        .contains(
            "past_rain.csv:2: 2020-01-01 to 2020-01-03 are missing",
            "past_rain.csv:58: 2020-02-29 is missing before 2020-03-01");
  }

  /** As a station of the US gives it: inches, month first, T and M, from one autumn to a spring. */
  @Test
  void aStationsFileIsReadAsItComesAndStartedYearsAreLeftOutWithALine() throws IOException {
    List<String> rows = new ArrayList<>(List.of("date,rain_in"));
    LocalDate.of(2019, 10, 4)
        .datesUntil(LocalDate.of(2023, 3, 2))
        .forEach(
            day ->
                rows.add(
                    day.getMonthValue() + "/" + day.getDayOfMonth() + "/" + day.getYear() + ",0"));
    set(rows, "6/1/2020", "0.10");
    set(rows, "6/2/2020", "M");
    set(rows, "6/3/2020", "T");
    set(rows, "6/4/2020", "M");
    set(rows, "6/5/2020", "0.07");
    for (int day = 1; day <= 11; day++) {
      set(rows, "7/" + day + "/2021", "M");
    }
    rain("past_rain.csv", rows);
    PlantFile read = PlantFile.read(plant("", ""));
    assertThat(past(read.plant()).years())
        .extracting(year -> year.year())
        .containsExactly(2020, 2022);
    assertThat(past(read.plant()).years().get(0).wet())
        .containsExactly(MonthDay.of(6, 1), MonthDay.of(6, 2));
    assertThat(read.warnings())
        .extracting(warning -> warning.text())
        .filteredOn(text -> text.contains("left out"))
        .hasSize(3)
        .anyMatch(text -> text.contains("2019 begins on 2019-10-04 and is left out"))
        .anyMatch(text -> text.contains("2023 ends on 2023-03-01 and is left out"))
        .anyMatch(text -> text.contains("2021 has 11 days without a measurement and is left out"));
  }

  private static void set(List<String> rows, String date, String rain) {
    rows.set(rows.indexOf(date + ",0"), date + "," + rain);
  }

  /** Day first reads as a month that is not, or as days that are missing. */
  @Test
  void datesWithTheDayFirstAreRefused() throws IOException {
    List<String> rows = new ArrayList<>(List.of("date,rain_mm"));
    LocalDate.of(2020, 1, 1)
        .datesUntil(LocalDate.of(2021, 1, 1))
        .forEach(
            day ->
                rows.add(
                    day.getDayOfMonth() + "/" + day.getMonthValue() + "/" + day.getYear() + ",0"));
    rain("past_rain.csv", rows);
    assertThat(problems(plant("", ""))).anyMatch(line -> line.contains("is not a date"));
  }

  @Test
  void anEmptyFileAndOneOfRubbishAreTold() throws IOException {
    rain("past_rain.csv", List.of("date,rain_mm"));
    assertThat(problems(plant("", "")))
        .singleElement()
        .asString()
        .contains(":1: no day follows the head");
    List<String> rubbish = new ArrayList<>();
    for (int i = 0; i < 5000; i++) {
      rubbish.add("x" + i);
    }
    rain("past_rain.csv", rubbish);
    assertThat(problems(plant("", "")))
        .hasSize(51)
        .last()
        .asString()
        .contains("4950 more problems are not shown");
  }

  @Test
  void aDayIsWetFromTheGivenRainOnInAnyUnit() throws IOException {
    List<String> rows = dry(2019, 2020);
    rows.set(rows.indexOf("2019-03-01,0"), "2019-03-01,2.54");
    rows.set(rows.indexOf("2019-03-02,0"), "2019-03-02,2.53");
    rows.set(rows.indexOf("2020-02-29,0"), "2020-02-29,40");
    rain("past_rain.csv", rows);
    PastYears past =
        past(PlantFile.read(plant("wet_threshold: 2 mm", "wet_threshold: 0.1 in")).plant());
    assertThat(past.years()).hasSize(2);
    assertThat(past.years().get(0).wet()).containsExactly(MonthDay.of(3, 1));
    assertThat(past.years().get(1).wet()).containsExactly(MonthDay.of(2, 29));
    assertThat(past.dryDays()).isEqualTo(1);
  }

  @Test
  void theMarkThatSpreadsheetsPutBeforeACsvIsNoPartOfIt() throws IOException {
    List<String> rows = dry(2019, 2019);
    rows.set(0, "\uFEFF" + rows.get(0));
    rain("past_rain.csv", rows);
    assertThat(past(PlantFile.read(plant("", "")).plant()).years()).hasSize(1);
    rows.set(0, "\uFEFF" + rows.get(0));
    rain("past_rain.csv", rows);
    assertThat(problems(plant("", ""))).as("a second one").hasSize(1);
  }

  /** Options are made after reading, when the files may be gone. */
  @Test
  void anOptionsRainIsKeptAndEveryRainFileIsInTheHash() throws IOException {
    rain("past_rain.csv", dry(2019, 2019));
    rain("other.csv", dry(2020, 2021));
    String option =
        "options:\n  wetter: {with: {deliveries: {stalk: {weather: {file: other.csv}}}}}\nmoney:";
    Path file = plant("money:", option);
    PlantFile read = PlantFile.read(file);
    List<String> rows = dry(2020, 2021);
    rows.set(5, rows.get(5) + ".1");
    rain("other.csv", rows);
    String changedHash = PlantFile.read(file).contentHash();
    Files.delete(folder.resolve("other.csv"));
    assertThat(past(read.plant()).years()).hasSize(1);
    assertThat(past(read.variants().with(new Change.Named("wetter"))).years()).hasSize(2);
    assertThat(read.contentHash()).hasSize(64).isNotEqualTo(changedHash);
    assertThat(problems(file))
        .singleElement()
        .asString()
        .contains(
            "deliveries.stalk.weather.file: \"other.csv\" cannot be used: there is no such file",
            "wetter");
  }

  @Test
  void aFileThatWasNotReadWithThePlantIsRefused() throws IOException {
    rain("past_rain.csv", dry(2019, 2019));
    rain("other.csv", dry(2020, 2021));
    PlantFile read = PlantFile.read(plant("", ""));
    Change other = new Change.Value("deliveries.stalk.weather.file", "other.csv");
    assertThat(assertThrows(ProblemsException.class, () -> read.variants().with(other)).lines())
        .singleElement()
        .asString()
        .contains("was not read together with the plant file");
  }
}
