package hurdline.sample;

import hurdline.answer.AcresRow;
import hurdline.answer.GainRow;
import hurdline.answer.GroundPlan;
import hurdline.answer.Header;
import hurdline.answer.Increase;
import hurdline.answer.Increase.Kind;
import hurdline.answer.LoadRow;
import hurdline.answer.PeakRow;
import hurdline.answer.Replayed;
import hurdline.answer.RunAnswer;
import hurdline.answer.Samples;
import hurdline.answer.SummaryRow;
import hurdline.answer.YardAnswer;
import hurdline.answer.YardLevelRow;
import hurdline.answer.YardSizeRow;
import hurdline.answer.YardSizeRow.Cost;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Invented answers on a yard, for tests of what is made of them. No figure in here is a result. */
public final class SampleYard {
  private static final double NONE = Double.NaN;
  private static final RunAnswer YEAR = SampleAnswer.year();

  private SampleYard() {}

  /** A yard that is too small, in a file with money. */
  public static YardAnswer tooSmall() {
    return Draft.of(YardAnswer.class)
        .with(YardAnswer::header, YEAR.header())
        .with(YardAnswer::outline, YEAR.outline())
        .with(
            YardAnswer::asked,
            new YardAnswer.Asked("stalk", "bales", 0.05, 4_200, "open", 1_200, false))
        .with(
            YardAnswer::summary,
            List.of(
                summary("base", "intake.stalk.held_at_field.peak", "bales", 930, 200),
                summary("base", "yard.place.open.lost", "t", 40, 3),
                summary("base", "yard.place.open.moisture.mean", "share", 0.125, 0.001),
                summary("base", "trucks.stalk.waited_for_room", "d", 66, 19),
                summary(YardAnswer.noLimit(), "yard.stalk.peak", "bales", 4_900, 250)))
        .with(YardAnswer::peaks, peaks())
        .with(
            YardAnswer::withoutLimit,
            new YardAnswer.Size(6_300, 5_700, NONE, 11_000, 0.05, 0.006, 0.169))
        .with(
            YardAnswer::byRule, new YardAnswer.Size(6_400, 5_800, NONE, 11_200, 0.05, 0.006, 0.169))
        .with(YardAnswer::capacity, capacity(true))
        .with(YardAnswer::levels, levels())
        .with(YardAnswer::land, new YardAnswer.Land(0.9, 0, 1.08, 0.005, 1, 1.2))
        .with(
            YardAnswer::acres,
            List.of(
                new AcresRow(1, 910, 0.95, 0.91, 0.99, 10),
                new AcresRow(1.08, 982.8, 0.9, 0.76, 0.97, 30),
                new AcresRow(1.2, 1_092, 0.6, 0.43, 0.75, 220)))
        .with(
            YardAnswer::gains,
            List.of(
                new GainRow(
                    "trucks",
                    new Increase(Kind.TRUCKS, 1, 4),
                    "yard.stalk.peak",
                    "bales",
                    150,
                    90,
                    210,
                    "student",
                    true),
                new GainRow(
                    "bigger_mill",
                    Increase.of(Kind.OPTION),
                    "yard.stalk.peak",
                    "bales",
                    -900,
                    -1_000,
                    -800,
                    "student",
                    true),
                new GainRow(
                    "feeder",
                    Increase.tenth(Kind.RATE),
                    "yard.stalk.peak",
                    "bales",
                    -20,
                    -60,
                    20,
                    "student",
                    false)))
        .with(
            YardAnswer::grounds,
            List.of(
                Draft.of(GroundPlan.class)
                    .with(GroundPlan::place, "open")
                    .with(GroundPlan::bales, 5_200)
                    .with(GroundPlan::stacks, 33)
                    .with(GroundPlan::longBales, 10)
                    .with(GroundPlan::wideBales, 4)
                    .with(GroundPlan::highBales, 4)
                    .with(GroundPlan::longM, 24.4)
                    .with(GroundPlan::wideM, 4.9)
                    .with(GroundPlan::highM, 3.7)
                    .with(GroundPlan::laneM, 6.1)
                    .with(GroundPlan::areaM2, 11_070)
                    .made()))
        .with(YardAnswer::questions, SampleFacts.stored())
        .with(
            YardAnswer::loads,
            List.of(
                new LoadRow(LocalDate.of(2027, 6, 14), "07:42", "bench", 34, 16.2, 0.125, 14.175)))
        .with(YardAnswer::assumptions, SampleFacts.ofYards())
        .with(YardAnswer::cautions, YEAR.cautions())
        .with(YardAnswer::warnings, YEAR.warnings())
        .with(YardAnswer::samples, new Replayed(List.of(samples(1), samples(2))))
        .made();
  }

  /**
   * {@link #tooSmall()} stopped after seven replications, without money, before the rule's size was
   * found.
   */
  public static YardAnswer stopped() {
    YardAnswer of = tooSmall();
    Header header =
        Draft.from(of.header())
            .with(Header::option, "turning_away")
            .with(Header::changes, List.of("calendar.to=2027-06-01"))
            .with(Header::replications, 7)
            .with(Header::stopped, true)
            .with(Header::currency, "")
            .made();
    return Draft.of(YardAnswer.class)
        .with(YardAnswer::header, header)
        .with(YardAnswer::outline, of.outline())
        .with(
            YardAnswer::asked,
            new YardAnswer.Asked("stalk", "bales", 0.125, 4_200, "open", 1_200, true))
        .with(YardAnswer::summary, of.summary())
        .with(YardAnswer::peaks, of.peaks())
        .with(YardAnswer::withoutLimit, new YardAnswer.Size(6_300, NONE, NONE, NONE, 0, 0, 0.41))
        .with(YardAnswer::capacity, capacity(false).subList(1, 2))
        .with(YardAnswer::levels, of.levels())
        .with(YardAnswer::assumptions, of.assumptions())
        .with(YardAnswer::cautions, of.cautions())
        .with(YardAnswer::warnings, of.warnings())
        .with(YardAnswer::samples, of.samples())
        .made();
  }

  private static List<PeakRow> peaks() {
    List<PeakRow> rows = new ArrayList<>();
    for (int percent = 5; percent <= 95; percent += 5) {
      double value = 3_900 + 25 * percent;
      rows.add(
          new PeakRow(
              "stalk",
              String.format("p%02d", percent),
              "bales",
              value,
              percent == 5 ? NONE : value - 150,
              percent == 95 ? NONE : value + 200));
    }
    return rows;
  }

  private static List<YardSizeRow> capacity(boolean money) {
    List<YardSizeRow> rows = new ArrayList<>();
    int[] sizes = {3_500, 4_200, 5_000, 6_400};
    double[] chances = {1, 0.825, 0.45, 0.05};
    double[] lows = {0.91, 0.67, 0.29, 0.006};
    double[] highs = {1, 0.93, 0.62, 0.169};
    double[] above = {0, 190, 620, 1_020};
    for (int at = 0; at < sizes.length; at++) {
      double sum = 25_000 + above[at];
      rows.add(
          new YardSizeRow(
              sizes[at],
              1.75 * sizes[at],
              chances[at],
              lows[at],
              highs[at],
              1_500 - 250 * at,
              138 + 2 * at,
              130 - 42 * at,
              money ? cost(sum, above[at], at == 3) : Cost.none()));
    }
    return rows;
  }

  private static Cost cost(double sum, double above, boolean apart) {
    double half = above > 0 ? 400 + 0.3 * above : 0;
    return new Cost(
        sum,
        sum - 2_000,
        sum + 2_000,
        sum - 9_000,
        1_000,
        8_000,
        11_000,
        new Cost.Above(above, above - half, above + half, apart));
  }

  private static List<YardLevelRow> levels() {
    List<YardLevelRow> rows = new ArrayList<>();
    for (String place : List.of("shed", "open", "*")) {
      for (LocalDate date = LocalDate.of(2027, 1, 4);
          date.getYear() == 2027;
          date = date.plusDays(1)) {
        double level = 100 + 10 * date.getDayOfYear();
        rows.add(
            new YardLevelRow(
                YardAnswer.noLimit(),
                date,
                "stalk",
                place,
                "bales",
                level,
                level - 80,
                level,
                level + 90));
      }
    }
    return rows;
  }

  private static Samples samples(double value) {
    return new Samples(
        List.of(new Samples.Measured("yard.stalk.peak", "bales")), new double[][] {{value}, {3}});
  }

  private static SummaryRow summary(
      String option, String measure, String unit, double mean, double half) {
    return Draft.of(SummaryRow.class)
        .with(SummaryRow::option, option)
        .with(SummaryRow::measure, measure)
        .with(SummaryRow::unit, unit)
        .with(SummaryRow::mean, mean)
        .with(SummaryRow::low95, mean - half)
        .with(SummaryRow::high95, mean + half)
        .with(SummaryRow::sd, 2 * half)
        .with(SummaryRow::p05, mean - 3 * half)
        .with(SummaryRow::p50, mean)
        .with(SummaryRow::p95, mean + 3 * half)
        .with(SummaryRow::least, mean - 4 * half)
        .with(SummaryRow::most, mean + 4 * half)
        .with(SummaryRow::replications, 40)
        .with(SummaryRow::interval, "student")
        .made();
  }
}
