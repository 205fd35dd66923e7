package hurdline.study.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hurdline.answer.MachineWeekRow;
import hurdline.answer.PlanDifference;
import hurdline.answer.RunAnswer;
import hurdline.answer.Samples;
import hurdline.answer.SeasonAnswer;
import hurdline.measure.Kpi;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.plant.Change;
import hurdline.plant.yaml.PlantFile;
import hurdline.problem.LocatedProblem;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.Studied;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The shipped example under plans of its own, simulated a few times. */
class SeasonTest {
  private static final int REPLICATIONS = 4;
  private static final double YEAR_H = 362 * 24;
  private static final String PLANS =
      """

      plans:
        same_as_ever:
          description: the season as it is, written out once more, and a dearer kilowatt
          with: {money: {electricity: {demand: 17.5 USD/kW/month}}}
        two_shifts:
          with:
            season:
              - {line: stalk_line, from: 2027-01-04, to: 2027-09-24, shifts: [day, swing]}
              - {changeover: 5 d, hands: 6}
              - {line: cotton_line, from: 2027-09-27, to: 2027-12-16, shifts: [gin_day, gin_night]}
      """;
  private static SeasonAnswer answer;

  @BeforeAll
  static void simulate() throws IOException {
    answer = simulated(season(source(PLANS), 2));
  }

  private static PlantOrigin source(String more) throws IOException {
    PlantFile file = PlantFile.of("shared.yaml", Files.readString(Studied.EXAMPLE) + more);
    return new PlantOrigin(file.variants(), "shared.yaml", file.contentHash(), "0", List.of());
  }

  private static Season season(PlantOrigin source, int threads, String... plans) {
    return season(List.of(source), REPLICATIONS, threads, plans);
  }

  private static Season season(
      List<PlantOrigin> sources, int replications, int threads, String... plans) {
    return new Season(
        sources,
        new SeasonAsk(List.of(plans), false),
        PlantChanges.base(),
        (source, changes) ->
            changes.stream()
                .map(change -> LocatedProblem.of("", change.toString(), "nothing", ""))
                .toList(),
        Studied.effort(replications, threads));
  }

  private static SeasonAnswer simulated(Season season) {
    return season.simulate((done, of) -> {}, () -> false).orElseThrow();
  }

  private static double[] series(int plan, String measure) {
    Samples samples = answer.samples().of().get(plan);
    int at = samples.measures().stream().map(Samples.Measured::measure).toList().indexOf(measure);
    return Arrays.stream(samples.values()).mapToDouble(of -> of[at]).toArray();
  }

  @Test
  void thePlansAreTheFilesSeasonAndItsPlans() {
    assertThat(answer.plans())
        .extracting(SeasonAnswer.Plan::name)
        .containsExactly("base", "same_as_ever", "two_shifts");
    assertThat(answer.warnings())
        .extracting(LocatedProblem::found)
        .containsExactlyInAnyOrder("Named[name=same_as_ever]", "Named[name=two_shifts]");
  }

  @Test
  void thePlanBaseIsWhatARunGives() {
    RunAnswer run = Studied.run(Studied.EXAMPLE, Studied.effort(REPLICATIONS, 1));
    assertThat(answer.summary()).containsAll(run.summary());
    List<String> months = run.months().stream().map(Object::toString).toList();
    assertThat(answer.months().subList(0, months.size()).stream().map(Object::toString))
        .isEqualTo(months);
  }

  @Test
  void differencesArePairedAndThoseOfEqualPlansExactlyZero() {
    assertThat(answer.differences())
        .filteredOn(pair -> pair.plan().equals("same_as_ever"))
        .filteredOn(
            pair ->
                !pair.row()
                    .measure()
                    .matches("money.(electricity|demand|margin|margin_less_forgone)"))
        .hasSizeGreaterThan(200)
        .allMatch(pair -> Double.isNaN(pair.row().difference()) || isZero(pair));
    PlanDifference margin =
        answer.difference("two_shifts", "base", Measure.MONEY_MARGIN.of()).orElseThrow();
    double[] base = series(0, Measure.MONEY_MARGIN.of());
    double[] two = series(2, Measure.MONEY_MARGIN.of());
    double mean =
        IntStream.range(0, REPLICATIONS).mapToDouble(r -> two[r] - base[r]).average().orElseThrow();
    assertThat(margin.row().difference()).isCloseTo(mean, within(1e-6 * Math.abs(mean)));
  }

  private static boolean isZero(PlanDifference pair) {
    return pair.row().difference() == 0
        && pair.row().lowJoint() == 0
        && pair.row().highJoint() == 0;
  }

  @Test
  void allPairsAreSetSideBySideAndWidenedTogether() {
    assertThat(answer.differences().stream().map(d -> d.plan() + "-" + d.against()).distinct())
        .containsExactly("same_as_ever-base", "two_shifts-base", "two_shifts-same_as_ever");
    assertThat(
            answer
                .difference("two_shifts", "base", Measure.MASS_FED.of("stalk"))
                .orElseThrow()
                .row())
        .satisfies(
            row ->
                assertThat(row.highJoint() - row.lowJoint())
                    .isGreaterThan(row.high95() - row.low95()));
  }

  @Test
  void usesOfTheBuildingAddUpToTheCalendarInEveryReplication() {
    for (int plan = 0; plan < 3; plan++) {
      double[] worked = series(plan, "building.hours.staffed");
      double[] stalk = series(plan, "building.hours.alone.stalk_line");
      double[] cotton = series(plan, "building.hours.alone.cotton_line");
      double[] rest = series(plan, "building.hours.changeover");
      double[] uncrewed = series(plan, "building.hours.uncrewed");
      double[] unused = series(plan, "building.hours.unused");
      double[] scheduled = series(plan, "line.stalk_line.hours.scheduled");
      for (int r = 0; r < REPLICATIONS; r++) {
        assertThat(worked[r] + rest[r] + uncrewed[r] + unused[r]).isCloseTo(YEAR_H, within(1e-6));
        assertThat(stalk[r] + cotton[r]).isCloseTo(worked[r], within(1e-6));
        assertThat(stalk[r]).isCloseTo(scheduled[r], within(1e-6));
        assertThat(rest[r]).isPositive();
      }
    }
  }

  /** What no crop has, unused and changeover, and what each has make the machine's own hours. */
  @Test
  void hoursByCropAddUpToEachMachinesHours() {
    for (String machine : List.of("feeder", "mill", "gin_stands", "stalk_fans", "lint_cleaner")) {
      for (State state : State.values()) {
        double[] all = series(0, Measure.MACHINE_HOURS.of(machine, state.word()));
        if (state == State.UNUSED || state == State.CHANGEOVER) {
          continue;
        }
        double[] stalk = series(0, Measure.MACHINE_CROP_HOURS.of(machine, "stalk", state.word()));
        double[] cotton =
            series(0, Measure.MACHINE_CROP_HOURS.of(machine, "seed_cotton", state.word()));
        for (int r = 0; r < REPLICATIONS; r++) {
          assertThat(stalk[r] + cotton[r])
              .as(machine + " " + state)
              .isCloseTo(all[r], within(1e-6));
        }
      }
    }
    assertThat(
            answer.mean("base", Measure.MACHINE_CROP_HOURS.of("gin_stands", "stalk", "full_rate")))
        .isZero();
    assertThat(answer.mean("base", Measure.MACHINE_CROP_HOURS.of("feeder", "stalk", "slowed")))
        .isPositive();
    assertThat(
            answer.mean(
                "base", Measure.MACHINE_CROP_HOURS.of("feeder", "seed_cotton", "full_rate")))
        .isPositive();
  }

  @Test
  void stripsAddUpToTheYear() {
    for (String machine : List.of("feeder", "incline_1")) {
      for (String crop : List.of("stalk", "seed_cotton")) {
        List<MachineWeekRow> rows =
            answer.strips().stream()
                .filter(
                    row ->
                        row.plan().equals("base")
                            && row.machine().equals(machine)
                            && row.crop().equals(crop))
                .toList();
        assertThat(rows.stream().mapToDouble(MachineWeekRow::workedT).sum())
            .isCloseTo(
                answer.mean("base", Measure.MACHINE_CROP_MASS_IN.of(machine, crop)), within(1e-6));
        assertThat(rows.stream().mapToDouble(MachineWeekRow::hours).sum())
            .isCloseTo(
                answer.mean("base", Measure.MACHINE_CROP_HOURS.of(machine, crop, "slowed"))
                    + answer.mean(
                        "base", Measure.MACHINE_CROP_HOURS.of(machine, crop, "full_rate")),
                within(1e-6));
      }
    }
    assertThat(answer.mean("base", Measure.MACHINE_CROP_MASS_IN.of("feeder", "stalk")))
        .isCloseTo(answer.mean("base", Measure.MASS_FED.of("stalk")), within(1e-6));
  }

  @Test
  void ratiosAreThoseOfTheHours() {
    double planned = 0;
    double idle = 0;
    for (State state : State.values()) {
      double hours = series(0, Measure.MACHINE_HOURS.of("mill", state.word()))[0];
      planned += state.ordinal() >= State.DOWN.ordinal() ? hours : 0;
      idle += state == State.STARVED || state == State.BLOCKED ? hours : 0;
    }
    double allocation = series(0, Measure.MACHINE_KPI.of("mill", Kpi.ALLOCATION.word()))[0];
    double utilization = series(0, Measure.MACHINE_KPI.of("mill", Kpi.UTILIZATION.word()))[0];
    double availability = series(0, Measure.MACHINE_KPI.of("mill", Kpi.AVAILABILITY.word()))[0];
    assertThat(allocation).isCloseTo(1 - idle / planned, within(1e-9)).isBetween(0.0, 1.0);
    assertThat(availability).isCloseTo(allocation * utilization, within(1e-9));
  }

  @Test
  void aCropIsFinishedWhereNothingIsLeftOver() {
    for (int plan : new int[] {0, 2}) {
      double[] left = series(plan, "season.stalk_line.left_over");
      double[] finished = series(plan, "season.stalk_line.finished");
      double[] cotton = series(plan, "season.cotton_line.finished");
      double[] all = series(plan, "season.finished");
      for (int r = 0; r < REPLICATIONS; r++) {
        assertThat(finished[r]).isEqualTo(left[r] == 0 ? 1 : 0);
        assertThat(all[r]).isEqualTo(finished[r] * cotton[r]);
      }
    }
    assertThat(answer.find("base", "season.finished").orElseThrow().high95())
        .as("Clopper and Pearson's, so that none of four leaves room")
        .isGreaterThan(0.3);
  }

  @Test
  void aCampaignThatBeginsBeforeItsChangeoverIsDoneIsMoved() {
    SeasonAnswer.Entry moved = answer.plans().get(2).entries().get(2);
    assertThat(moved.line()).isEqualTo("cotton_line");
    assertThat(moved.from()).hasToString("2027-10-02");
    assertThat(moved.movedFrom()).isEqualTo("2027-09-27");
    assertThat(answer.plans().get(2).entries().get(1).isChangeover()).isTrue();
  }

  @Test
  void everyCampaignEndsWithinItsOwnDates() {
    for (SeasonAnswer.Plan plan : answer.plans()) {
      for (SeasonAnswer.Entry entry : plan.entries()) {
        assertThat(answer.ended(plan.name(), entry).isPresent()).isEqualTo(!entry.isChangeover());
        answer
            .ended(plan.name(), entry)
            .ifPresent(
                row -> {
                  assertThat(answer.date(row.least())).isBetween(entry.from(), entry.to());
                  assertThat(answer.date(row.most())).isBetween(entry.from(), entry.to());
                });
      }
    }
  }

  @Test
  void theAnswerDoesNotHangOnThreads() throws IOException {
    SeasonAnswer other = simulated(season(source(PLANS), 1));
    assertThat(other.summary()).isEqualTo(answer.summary());
    assertThat(other.differences()).isEqualTo(answer.differences());
    assertThat(other.strips()).isEqualTo(answer.strips());
    assertThat(other.months()).isEqualTo(answer.months());
  }

  @Test
  void stoppedEarlyAllPlansHaveTheSameReplications() throws IOException {
    AtomicInteger done = new AtomicInteger();
    SeasonAnswer some =
        season(List.of(source(PLANS)), 50, 1, "two_shifts", "base")
            .simulate((simulations, of) -> done.set(simulations), () -> done.get() > 0)
            .orElseThrow();
    assertThat(some.header().stopped()).isTrue();
    assertThat(some.plans())
        .extracting(SeasonAnswer.Plan::name)
        .containsExactly("two_shifts", "base");
    assertThat(some.samples().of())
        .allMatch(of -> of.values().length == some.header().replications());
  }

  /**
   * Without its days a changeover costs no wages; what else it is worth the longer campaign brings.
   */
  @Test
  void anAvoidedChangeoverIsWorthWhatThePlanEarnsWithoutIt() throws IOException {
    PlantOrigin source = source(PLANS);
    SeasonAnswer asked =
        simulated(
            new Season(
                List.of(source),
                new SeasonAsk(List.of("base"), true),
                PlantChanges.base(),
                (of, changes) -> List.of(),
                Studied.effort(2, 1)));
    assertThat(asked.avoided())
        .extracting(row -> row.from().toString())
        .containsExactly("2027-09-27", "2027-12-17");
    PlantChanges without =
        new PlantChanges(
            "base",
            List.of(),
            List.of(
                new Change.Value("season.2.changeover", "0 d"),
                new Change.Value("season.1.to", "2027-10-01")));
    double margin =
        Studied.run(Studied.EXAMPLE, without, Studied.effort(2, 1)).mean(Measure.MONEY_MARGIN.of());
    assertThat(asked.avoided().get(0).worth())
        .isCloseTo(margin - asked.mean("base", Measure.MONEY_MARGIN.of()), within(1e-4))
        .isPositive();
  }
}
