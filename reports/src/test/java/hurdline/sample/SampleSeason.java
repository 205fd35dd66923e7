package hurdline.sample;

import hurdline.answer.ChangeoverRow;
import hurdline.answer.DifferenceRow;
import hurdline.answer.MachineWeekRow;
import hurdline.answer.MonthRow;
import hurdline.answer.Outline;
import hurdline.answer.PlanDifference;
import hurdline.answer.Replayed;
import hurdline.answer.RunAnswer;
import hurdline.answer.Samples;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.SeasonAnswer.Entry;
import hurdline.answer.SeasonAnswer.Plan;
import hurdline.answer.SeasonAnswer.Verdict;
import hurdline.answer.SummaryRow;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * An invented answer of season plans, for tests of what is made of it. No figure in here is a
 * result.
 */
public final class SampleSeason {
  private static final RunAnswer YEAR = SampleAnswer.year();
  private static final Outline OUTLINE = YEAR.outline();

  private SampleSeason() {}

  /** Two plans of one file; the second earns more, and finishes one crop of two in most years. */
  public static SeasonAnswer two() {
    return Draft.of(SeasonAnswer.class)
        .with(SeasonAnswer::header, YEAR.header())
        .with(SeasonAnswer::outline, OUTLINE)
        .with(
            SeasonAnswer::plans,
            List.of(
                plan("base", "", ""), plan("two_shifts", "stalks on <two> shifts", "2027-10-01")))
        .with(SeasonAnswer::summary, summary())
        .with(
            SeasonAnswer::differences,
            List.of(
                difference("mass.stalk.fed", "t", 3_400, 600, 90, true),
                difference("money.margin", "USD", 530_000, 40_000, 15_000, true),
                difference("energy.total", "kWh", 900_000, 0, 0, false)))
        .with(SeasonAnswer::months, months())
        .with(
            SeasonAnswer::strips,
            List.of(
                new MachineWeekRow("base", "feeder", 1, "stalk", 38.5, 90),
                new MachineWeekRow("base", "feeder", 41, "seed_cotton", 130, 1_100),
                new MachineWeekRow("base", "mill", 1, "stalk", 39, 60),
                new MachineWeekRow("two_shifts", "feeder", 1, "stalk", 76, 180)))
        .with(
            SeasonAnswer::avoided,
            List.of(
                new ChangeoverRow(
                    "base",
                    date(9, 27),
                    date(10, 1),
                    "USD",
                    31_000,
                    26_000,
                    36_000,
                    "student",
                    true)))
        .with(
            SeasonAnswer::verdict,
            new Verdict("two_shifts", List.of(), "two_shifts", "two_shifts", List.of("base")))
        .with(SeasonAnswer::assumptions, SampleFacts.ofSeasons())
        .with(SeasonAnswer::cautions, YEAR.cautions())
        .with(SeasonAnswer::warnings, YEAR.warnings())
        .with(SeasonAnswer::samples, new Replayed(List.of(samples(1), samples(2))))
        .made();
  }

  /** The same, but the first plan earns more, and less once what it leaves over is taken off. */
  public static SeasonAnswer leavingCropOver(boolean apart) {
    SeasonAnswer of = two();
    return Draft.from(of)
        .with(
            SeasonAnswer::differences,
            List.of(
                difference("money.margin", "USD", 530_000, -40_000, 15_000, true),
                difference(
                    "money.margin_less_forgone",
                    "USD",
                    420_000,
                    50_000,
                    apart ? 20_000 : 60_000,
                    apart)))
        .with(
            SeasonAnswer::verdict,
            new Verdict("base", List.of(), "two_shifts", "two_shifts", List.of("base")))
        .made();
  }

  private static Plan plan(String name, String says, String movedFrom) {
    return new Plan(
        name,
        says,
        "sweetgum-bend.yaml",
        "abc",
        OUTLINE,
        List.of(
            new Entry(
                "stalk_line",
                date(1, 4),
                date(9, 24),
                List.of("day"),
                0,
                "",
                List.of(),
                "season.stalk_line.ended"),
            new Entry(
                "",
                date(9, 27),
                date(10, 1),
                List.of(),
                6,
                "",
                List.of(
                    new SeasonAnswer.Task("lock_out", 2, List.of(), 0, 0.5, true),
                    new SeasonAnswer.Task("ducts", 2, List.of("lock_out"), 0.5, 4.5, false)),
                ""),
            new Entry(
                "cotton_line",
                date(10, 4),
                date(12, 16),
                List.of("gin_day", "gin_night"),
                0,
                movedFrom,
                List.of(),
                "season.cotton_line.ended")));
  }

  private static LocalDate date(int month, int day) {
    return LocalDate.of(2027, month, day);
  }

  private static Samples samples(double value) {
    return new Samples(
        List.of(new Samples.Measured("mass.stalk.fed", "t")), new double[][] {{value}, {3}});
  }

  private static List<SummaryRow> summary() {
    List<SummaryRow> rows = new ArrayList<>();
    for (int at = 0; at < 2; at++) {
      String plan = at == 0 ? "base" : "two_shifts";
      row(rows, plan, "mass.stalk.fed", "t", 3_400 + 600 * at, 20);
      row(rows, plan, "mass.seed_cotton.fed", "t", 11_700, 60);
      row(rows, plan, "line.stalk_line.hours.scheduled", "h", 2_080 + 900 * at, 0);
      row(rows, plan, "line.cotton_line.hours.scheduled", "h", 1_423, 0);
      row(rows, plan, "building.hours.alone.stalk_line", "h", 2_080 + 900 * at, 0);
      row(rows, plan, "building.hours.alone.cotton_line", "h", 1_423, 0);
      row(rows, plan, "building.hours.staffed", "h", 3_503 + 900 * at, 0);
      row(rows, plan, "building.hours.concurrent", "h", 0, 0);
      row(rows, plan, "building.hours.changeover", "h", 240, 0);
      row(rows, plan, "building.hours.uncrewed", "h", 4_825 - 900 * at, 0);
      row(rows, plan, "building.hours.unused", "h", 120, 0);
      row(rows, plan, "machine.feeder.crop.stalk.hours.starved", "h", 210.4, 3);
      row(rows, plan, "machine.feeder.crop.stalk.hours.blocked", "h", 33, 2);
      row(rows, plan, "machine.feeder.crop.stalk.hours.slowed", "h", 1_800, 4);
      row(rows, plan, "machine.feeder.crop.seed_cotton.hours.full_rate", "h", 1_400, 4);
      row(rows, plan, "machine.feeder.crop.stalk.mass_in", "t", 3_400 + 600 * at, 20);
      row(rows, plan, "machine.feeder.kpi.availability", "share", 0.9, 0.01);
      row(rows, plan, "money.margin", "USD", 530_000 + 40_000 * at, 5_000);
      row(rows, plan, "money.stalk_line.margin", "USD", 200_000 + 40_000 * at, 4_000);
      row(rows, plan, "money.cotton_line.margin", "USD", 600_000, 4_000);
      row(rows, plan, "crew.stalk_line.labor_hours", "h", 12_480 + 5_000 * at, 0);
      row(rows, plan, "season.stalk_line.ended", "d", 264 - 30 * at, 2);
      row(rows, plan, "season.stalk_line.left_over", "bales", 2_000 - 1_900 * at, 100);
      row(rows, plan, "season.stalk_line.margin_forgone", "USD", 110_000 - 90_000 * at, 9_000);
      row(rows, plan, "season.stalk_line.finished", "share", 0.025 + 0.75 * at, 0.1);
      row(rows, plan, "season.cotton_line.finished", "share", 1, 0);
      row(rows, plan, "season.finished", "share", 0.025 + 0.75 * at, 0.1);
    }
    return rows;
  }

  private static void row(
      List<SummaryRow> rows, String plan, String measure, String unit, double mean, double half) {
    rows.add(
        Draft.of(SummaryRow.class)
            .with(SummaryRow::option, plan)
            .with(SummaryRow::measure, measure)
            .with(SummaryRow::unit, unit)
            .with(SummaryRow::mean, mean)
            .with(SummaryRow::low95, mean - half)
            .with(SummaryRow::high95, mean + half)
            .with(SummaryRow::sd, 3 * half)
            .with(SummaryRow::p05, mean - 5 * half)
            .with(SummaryRow::p50, mean)
            .with(SummaryRow::p95, mean + 5 * half)
            .with(SummaryRow::least, mean - 6 * half)
            .with(SummaryRow::most, mean + 6 * half)
            .with(SummaryRow::replications, 40)
            .with(SummaryRow::interval, "student")
            .made());
  }

  private static PlanDifference difference(
      String measure, String unit, double base, double by, double half, boolean apart) {
    return new PlanDifference(
        "base",
        Draft.of(DifferenceRow.class)
            .with(DifferenceRow::option, "two_shifts")
            .with(DifferenceRow::measure, measure)
            .with(DifferenceRow::unit, unit)
            .with(DifferenceRow::baseMean, base)
            .with(DifferenceRow::optionMean, base + by)
            .with(DifferenceRow::difference, by)
            .with(DifferenceRow::low95, by - half)
            .with(DifferenceRow::high95, by + half)
            .with(DifferenceRow::lowJoint, by - half)
            .with(DifferenceRow::highJoint, by + half)
            .with(DifferenceRow::interval, "student")
            .with(DifferenceRow::significant, apart)
            .with(DifferenceRow::replicationsNeeded, apart ? 3 : Double.NaN)
            .with(DifferenceRow::varianceRemoved, half == 0 ? Double.NaN : 0.9)
            .with(DifferenceRow::replications, 40)
            .made());
  }

  private static List<MonthRow> months() {
    List<MonthRow> rows = new ArrayList<>();
    for (String plan : List.of("base", "two_shifts")) {
      for (String month : List.of("2027-01", "2027-10")) {
        double scale = plan.equals("base") ? 1 : 1.9;
        rows.add(
            new MonthRow(
                plan, month, "energy.total", "kWh", 30_000 * scale, 29_000, 30_000, 31_000));
        rows.add(new MonthRow(plan, month, "energy.peak", "kW", 210, 200, 210, 220));
      }
    }
    return rows;
  }
}
