package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import hurdline.simulation.ProofTable.Published;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What the example gives beside figures that were published of such plants; what comes out goes to
 * {@code line-configs/PROOF.md}. A figure that lies outside says why, and fails here once it lies
 * inside.
 */
@Tag("proof")
class PublishedFiguresProofTest {
  private static final Path EXAMPLE = Path.of("../line-configs/sweetgum-bend.yaml");
  private static final int AT = 18;
  private static final int YEARS = 24;
  private static final double LINT_CLEANER_FT = 16;
  private static final ProofTable TABLE = ProofTable.PAGE;

  @AfterAll
  static void writeThePage() {
    TABLE.writeIfWhole();
  }

  @Test
  void theExampleBesidePublishedFigures() throws IOException {
    TABLE.section(
        AT,
        "The example and published figures",
        "Figures of `line-configs/sweetgum-bend.yaml` over "
            + YEARS
            + " simulated years and those published of gins and decortication lines, to which they were not fitted. This asks "
            + "whether the plant is believable, not whether the program is right. Extracts and abstracts were read, not the whole works. "
            + "*Deviation* is from the nearer end, in percent of it; none where the example lies inside.");
    cotton();
    stalks();
  }

  /** From a season of cotton alone, so that power and demand are the gin's. */
  private void cotton() throws IOException {
    String text = Files.readString(EXAMPLE);
    String season =
        "season:\n  - {line: cotton_line, from: 2027-10-04, to: 2027-12-16, shifts: [gin_day, gin_night]}\n\ncrews:";
    String withoutChoices = text.substring(0, text.indexOf("\nchoices:")); // of other campaigns
    String alone = withoutChoices.replaceFirst("(?s)\nseason:.*?\ncrews:", "\n" + season);
    assertThat(alone).isNotEqualTo(withoutChoices);
    Repeats gin = years(PlantFile.of("cotton_alone.yaml", alone).plant());
    double[] bales = gin.of("product.lint.packages");
    double[] wages = gin.of("money.cotton_line.wages");
    double[] power = gin.of("money.electricity");
    double[] bagging = gin.of("money.cotton_line.packages");
    outside(
        "electricity a bale",
        "kWh",
        25.8,
        39.5,
        per(gin.of("energy.total"), bales),
        "saw gins of 25.8 to 35.8 logged for a season and 39.5 on average in an audit of 20 (Funk and Hardin, *Applied Engineering in "
            + "Agriculture* 28(4), 2012; Hardin and Funk, 2012). The example is a small gin, and fewer bales an hour take more kWh each (same audit).");
    outside(
        "electricity a bale",
        "USD",
        3.79,
        3.79,
        per(power, bales),
        "mean of the USA in 2010 (Valco's survey), at about 0.10 USD/kWh in all; more kWh and 15 years' prices here.");
    inside(
        "wages a bale",
        "USD",
        11.09,
        16.80,
        per(wages, bales),
        "means of the regions in 2010, seasonal and full-time (Valco), of gins that ran 25,000 bales on average; wages have risen since.");
    inside(
        "variable cost a bale: wages, electricity, bagging, fuel, repairs",
        "USD",
        34.97,
        49.31,
        per(sum(wages, power, bagging), bales),
        "2021 and 2022 (Holt and others, Beltwide Cotton Conferences 2024).");
    double[] perHour = gin.of("line.cotton_line.packages_per_hour.lint");
    inside(
        "bales an hour",
        "1/h",
        7,
        35,
        perHour,
        "five model gins of an economic study (Shaw, Cleveland and Ghetti, 1977).");
    outside(
        "bales an hour and foot of lint cleaner",
        "1/h",
        1,
        1,
        Arrays.stream(perHour).map(each -> each / LINT_CLEANER_FT).toArray(),
        "rate of a comparison of lint cleaners (Beltwide abstract 2233); here the module feeder is the bottleneck, not they.");
  }

  private void stalks() {
    Repeats plant = years(PlantFile.read(EXAMPLE).plant());
    outside(
        "stalks fed in a scheduled hour",
        "t/h",
        4,
        6,
        plant.of("line.stalk_line.throughput"),
        "what a new line needs to pay (Pecenka and others, *ISRN Agronomy* 647867, 2012); the example has the small mill whose "
            + "replacement is its question, in a building that is paid for.");
    inside(
        "hurd bags in a scheduled hour",
        "1/h",
        0,
        20,
        sum(
            plant.of("line.stalk_line.packages_per_hour.coarse_hurd"),
            plant.of("line.stalk_line.packages_per_hour.medium_hurd"),
            plant.of("line.stalk_line.packages_per_hour.fine_hurd")),
        "most that makers' pages claim of a bulk bag station.");
    inside(
        "dry matter lost in the yard, of what lay or came there",
        "%",
        0,
        5,
        scaled(
            per(
                plant.of("mass.stalk.lost_in_yard_dry"),
                sum(
                    plant.of("mass.stalk.on_hand_at_start_dry"),
                    plant.of("mass.stalk.weighed_in_dry"))),
            100),
        "below 5 % a season for large bales of corn stover under tarps or a roof (Schon, Darr and others, ASABE paper 131620215, 2013).");
  }

  private static void inside(
      String claim, String unit, double low, double high, double[] each, String why) {
    Published line = add(claim, unit, low, high, each, why);
    assertThat(line.off()).as(line.toString()).isZero();
  }

  private static void outside(
      String claim, String unit, double low, double high, double[] each, String why) {
    Published line = add(claim, unit, low, high, each, why);
    assertThat(line.off()).as(line.toString()).isNotZero();
  }

  private static Published add(
      String claim, String unit, double low, double high, double[] each, String why) {
    double[] got = Repeats.meanAndError(each);
    return TABLE.add(AT, new Published(claim, unit, low, high, got[0], got[1], why));
  }

  private static Repeats years(Plant plant) {
    return new Repeats(plant, 1, YEARS);
  }

  private static double[] per(double[] what, double[] of) {
    return IntStream.range(0, what.length).mapToDouble(i -> what[i] / of[i]).toArray();
  }

  private static double[] scaled(double[] each, double factor) {
    return Arrays.stream(each).map(x -> x * factor).toArray();
  }

  private static double[] sum(double[]... parts) {
    return IntStream.range(0, parts[0].length)
        .mapToDouble(i -> Arrays.stream(parts).mapToDouble(part -> part[i]).sum())
        .toArray();
  }
}
