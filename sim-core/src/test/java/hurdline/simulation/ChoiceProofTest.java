package hurdline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.simulation.ProofTable.Figure;
import hurdline.statistics.LeaderScreening;
import hurdline.statistics.ScreeningYears;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The screening of very many plans on a design problem whose answer is known exactly. */
@Tag("proof")
class ChoiceProofTest {
  private static final ProofTable TABLE = ProofTable.PAGE;
  private static final int AT = 19;
  private static final int SEEDS = 10;
  private static final double BAND = 0.1;

  private static final List<ThreeServers> DESIGNS = ThreeServers.all();
  private static double[] exact;

  @BeforeAll
  static void begin() {
    TABLE.section(
        AT,
        "The best of many designs",
        "Three exponential servers in line with rooms, rates that add up to 20 and rooms that add up to 20: a test problem of the "
            + "ranking-and-selection literature (optimum and problem from memory). The exact throughput of each design is that of its Markov chain, "
            + "solved here; `LeaderScreening` judges by years of 50 jobs. Its error rates in other spaces are held to binomial limits by "
            + "`LeaderScreeningProofTest`, with controls that must fail in `LeaderScreeningTest`.");
    exact = DESIGNS.stream().mapToDouble(ThreeServers::throughput).toArray();
  }

  @AfterAll
  static void write() {
    TABLE.writeIfWhole();
  }

  @Test
  void theExactBestIsThePublishedOne() {
    double best = Arrays.stream(exact).max().orElseThrow();
    figure("throughput of the best design", "1/time", "5.776", best);
    List<ThreeServers> all =
        IntStream.range(0, exact.length)
            .filter(at -> exact[at] > best - 1e-9)
            .mapToObj(DESIGNS::get)
            .toList();
    assertThat(all).hasSize(2);
    assertThat(all.get(0).rates()).containsExactly(6, 7, 7);
    assertThat(all.get(0).second()).isEqualTo(12);
    assertThat(all.get(1).rates()).containsExactly(7, 7, 6);
    assertThat(all.get(1).second()).isEqualTo(8);
    figure("designs", "", "3249", DESIGNS.size());
  }

  /** By hand: with one place in each room and equal rates the chain of 8 states gives 22/39. */
  @Test
  void aYearHasTheThroughputOfTheChainOnAverage() {
    ThreeServers one = new ThreeServers(new int[] {1, 1, 1}, 1, 1);
    assertThat(one.throughput()).isCloseTo(22.0 / 39, within(1e-12));
    ThreeServers best = new ThreeServers(new int[] {6, 7, 7}, 12, 8);
    double[] times = IntStream.range(0, 4_000).mapToDouble(r -> 50 / best.year(1, r)).toArray();
    double[] mean = Repeats.meanAndError(times);
    ProofTable.Row row =
        TABLE.add(
            AT,
            new ProofTable.Row(
                "time of 50 jobs of the best design, simulated as the years are",
                "time",
                50 / best.throughput(),
                mean[0],
                mean[1]));
    assertThat(Math.abs(row.errorsOff())).isLessThan(3.5);
  }

  @Test
  void theDesignThatIsNamedIsWithinItsGapOfTheExactBest() {
    double best = Arrays.stream(exact).max().orElseThrow();
    int held = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      LeaderScreening.Round end = named(seed);
      held += best - exact[end.leader()] <= end.gap() ? 1 : 0;
    }
    figure(
        "choices of " + SEEDS + " in which the best is no more than the gap above the named design",
        "",
        Integer.toString(SEEDS),
        held);
  }

  private static LeaderScreening.Round named(long seed) {
    List<LeaderScreening.Candidate> all =
        IntStream.range(0, DESIGNS.size())
            .mapToObj(at -> new LeaderScreening.Candidate(at, 0, false))
            .toList();
    ScreeningYears terms = new ScreeningYears(10, List.of(10, 20, 40, 80, 160));
    LeaderScreening screening = new LeaderScreening(all, 0.05, terms);
    double[][] years = new double[DESIGNS.size()][0];
    while (!screening.isOver()
        && screening.known().map(LeaderScreening.Round::gap).orElse(1.0) > BAND) {
      int to = terms.before(screening.rounds().size() + 1);
      for (int at : screening.left()) {
        int before = years[at].length;
        years[at] = Arrays.copyOf(years[at], to);
        for (int year = before; year < to; year++) {
          years[at][year] = DESIGNS.get(at).year(seed, year);
        }
      }
      screening.judge(years);
    }
    return screening.known().orElseThrow();
  }

  private static void figure(String claim, String unit, String said, double got) {
    Figure line = TABLE.add(AT, new Figure(claim, unit, said, got));
    assertThat(Math.abs(line.off())).as(line.toString()).isLessThan(0.5);
  }
}
