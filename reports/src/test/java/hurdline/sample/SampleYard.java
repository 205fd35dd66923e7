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
    return new YardAnswer(
        YEAR.header(),
        YEAR.outline(),
        new YardAnswer.Asked("stalk", "bales", 0.05, 4_200, "open", 1_200, false),
        List.of(
            summary("base", "intake.stalk.held_at_field.peak", "bales", 930, 200),
            summary("base", "yard.place.open.lost", "t", 40, 3),
            summary("base", "yard.place.open.moisture.mean", "share", 0.125, 0.001),
            summary("base", "trucks.stalk.waited_for_room", "d", 66, 19),
            summary(YardAnswer.noLimit(), "yard.stalk.peak", "bales", 4_900, 250)),
        peaks(),
        new YardAnswer.Size(6_300, 5_700, NONE, 11_000, 0.05, 0.006, 0.169),
        new YardAnswer.Size(6_400, 5_800, NONE, 11_200, 0.05, 0.006, 0.169),
        capacity(true),
        levels(),
        new YardAnswer.Land(0.9, 1.08, 0.005, 1, 1.2),
        List.of(
            new AcresRow(1, 910, 0.95, 0.91, 0.99, 10),
            new AcresRow(1.08, 982.8, 0.9, 0.76, 0.97, 30),
            new AcresRow(1.2, 1_092, 0.6, 0.43, 0.75, 220)),
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
                false)),
        List.of(new GroundPlan("open", 5_200, 33, 10, 4, 4, 24.4, 4.9, 3.7, 6.1, 11_070)),
        SampleFacts.stored(),
        List.of(new LoadRow(LocalDate.of(2027, 6, 14), "07:42", "bench", 34, 16.2, 0.125, 14.175)),
        SampleFacts.ofYards(),
        YEAR.cautions(),
        YEAR.warnings(),
        new Replayed(List.of(samples(1), samples(2))));
  }

  /**
   * {@link #tooSmall()} stopped after seven replications, without money, before the rule's size was
   * found.
   */
  public static YardAnswer stopped() {
    YardAnswer of = tooSmall();
    Header h = of.header();
    Header header =
        new Header(
            h.plant(),
            h.file(),
            h.contentHash(),
            h.version(),
            "turning_away",
            List.of("calendar.to=2027-06-01"),
            h.seed(),
            40,
            7,
            "",
            true,
            "",
            h.from(),
            h.to());
    return new YardAnswer(
        header,
        of.outline(),
        new YardAnswer.Asked("stalk", "bales", 0.125, 4_200, "open", 1_200, true),
        of.summary(),
        of.peaks(),
        new YardAnswer.Size(6_300, NONE, NONE, NONE, 0, 0, 0.41),
        YardAnswer.Size.none(),
        capacity(false).subList(1, 2),
        of.levels(),
        YardAnswer.Land.none(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        of.assumptions(),
        of.cautions(),
        of.warnings(),
        of.samples());
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
    return new SummaryRow(
        option,
        measure,
        unit,
        mean,
        mean - half,
        mean + half,
        2 * half,
        mean - 3 * half,
        mean,
        mean + 3 * half,
        mean - 4 * half,
        mean + 4 * half,
        40,
        "student");
  }
}
