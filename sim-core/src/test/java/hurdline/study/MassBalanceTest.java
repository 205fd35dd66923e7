package hurdline.study;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.RunAnswer;
import hurdline.answer.Samples;
import hurdline.measure.Measure;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The mass balance closes from the rows of {@code measures.csv} alone, as-is and dry: what came
 * over the scale was lost, fed or is still on hand; what was fed was made, went to waste or the
 * air, was dried off, or lies in a bin.
 */
class MassBalanceTest {
  private static final double TONNE_KG = 1000;

  /** Of all that was weighed in; the sums have some thousand terms. */
  private static final double ROUNDING = 1e-9;

  private static final Map<String, RunAnswer> RUNS = new HashMap<>();

  private static RunAnswer run(String plant) {
    return RUNS.computeIfAbsent(
        plant, name -> Studied.run(Path.of("../line-configs/" + name), Studied.effort(2, 1)));
  }

  /** The sum of the rows of one replication that hold one of the measures. */
  private static double sum(Samples samples, int replication, boolean dry, Measure... measures) {
    return IntStream.range(0, samples.measures().size())
        .filter(
            at ->
                Measure.find(samples.measures().get(at).measure())
                    .filter(
                        match -> List.of(measures).contains(match.measure()) && match.dry() == dry)
                    .isPresent())
        .mapToDouble(at -> samples.values()[replication][at])
        .sum();
  }

  private static double madeT(Samples samples, int replication, boolean dry) {
    double driedT = dry ? 0 : sum(samples, replication, false, Measure.MASS_DRIED);
    return sum(samples, replication, dry, Measure.PRODUCT_MASS, Measure.WASTE_MASS)
        + sum(samples, replication, dry, Measure.AIR_DUST) / TONNE_KG
        + driedT;
  }

  @ParameterizedTest
  @ValueSource(strings = {"sweetgum-bend.yaml", "small.yaml"})
  void whatWasFedWasMadeOrLostOrLiesInABin(String plant) {
    Samples samples = run(plant).samples();
    for (int replication = 0; replication < 2; replication++) {
      for (boolean dry : new boolean[] {false, true}) {
        double fedT = sum(samples, replication, dry, Measure.MASS_FED);
        double leftT = madeT(samples, replication, dry);
        double binsT = sum(samples, replication, dry, Measure.BIN_LEVEL_END);
        assertThat(Math.abs(fedT - leftT - binsT))
            .as("%s of replication %d", dry, replication)
            .isLessThan(ROUNDING * fedT);
        assertThat(binsT).as("without what lies in bins the balance stays open").isGreaterThan(1);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sweetgum-bend.yaml", "small.yaml"})
  void whatWasWeighedInWasLostOrFedOrIsOnHand(String plant) {
    RunAnswer answer = run(plant);
    for (var crop : answer.outline().crops()) {
      for (int replication = 0; replication < 2; replication++) {
        for (boolean dry : new boolean[] {false, true}) {
          Samples only = ofCrop(answer.samples(), crop.name());
          double inT =
              sum(only, replication, dry, Measure.MASS_ON_HAND_AT_START, Measure.MASS_WEIGHED_IN);
          double outT =
              sum(
                  only,
                  replication,
                  dry,
                  Measure.MASS_LOST_IN_YARD,
                  Measure.MASS_FED,
                  Measure.MASS_ON_HAND_AT_END);
          assertThat(inT).isPositive();
          assertThat(Math.abs(inT - outT)).as(crop.name()).isLessThan(ROUNDING * inT);
        }
      }
    }
    assertThat(answer.mean(Measure.MASS_ON_HAND_AT_END.of("stalk")))
        .as("without it the balance stays open")
        .isGreaterThan(1);
  }

  private static Samples ofCrop(Samples all, String crop) {
    int[] its =
        IntStream.range(0, all.measures().size())
            .filter(at -> all.measures().get(at).measure().startsWith("mass." + crop + "."))
            .toArray();
    double[][] values = new double[all.values().length][its.length];
    for (int replication = 0; replication < values.length; replication++) {
      for (int at = 0; at < its.length; at++) {
        values[replication][at] = all.values()[replication][its[at]];
      }
    }
    return new Samples(IntStream.of(its).mapToObj(all.measures()::get).toList(), values);
  }
}
