package hurdline.sample;

import hurdline.answer.BottleneckRow;
import hurdline.answer.BreakEvenRow;
import hurdline.answer.CashRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.CompareAnswer.Option;
import hurdline.answer.DifferenceRow;
import hurdline.answer.FollowUps;
import hurdline.answer.GainRow;
import hurdline.answer.Header;
import hurdline.answer.Increase;
import hurdline.answer.Increase.Kind;
import hurdline.answer.LifeTerms;
import hurdline.answer.MillRow;
import hurdline.answer.MonthRow;
import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Gaps;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.Replayed;
import hurdline.answer.RunAnswer;
import hurdline.answer.Samples;
import hurdline.answer.Selection;
import hurdline.answer.ServiceLifeRow;
import hurdline.answer.SummaryRow;
import hurdline.answer.TornadoRow;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Invented answers of a comparison, for tests of what is made of them. No figure in here is a
 * result.
 */
public final class SampleCompare {
  private static final double NONE = Double.NaN;
  private static final RunAnswer YEAR = SampleAnswer.year();

  private SampleCompare() {}

  /** Two options, one that pays and one of which it is not sure that it does anything. */
  public static CompareAnswer two() {
    return new CompareAnswer(
        YEAR.header(),
        YEAR.outline(),
        List.of(
            new Option(
                "bigger_mill", "75 hp mill <in place> of the 25 hp one", 140_000, 12, 12_000),
            new Option("bigger_mill+hand", "", 152_000, 2.5, 0)),
        summaries(),
        List.of(
            row("bigger_mill", "mass.stalk.fed", "t", 3_484, 844, 80, true, 3),
            row("bigger_mill", "money.margin", "USD", 167_000, 213_000, 14_000, true, 2),
            row("bigger_mill", "energy.total", "kWh", 0, 0, 0, false, NONE),
            row("bigger_mill+hand", "mass.stalk.fed", "t", 3_484, 4, 20, false, 1_000),
            row("bigger_mill+hand", "money.margin", "USD", 167_000, 0, 0, false, NONE)),
        List.of(),
        List.of(
            new BottleneckRow("base", "stalk_line", "mill", 1_100, 0.57, 0.54, 0.61, "student"),
            new BottleneckRow("base", "stalk_line", "no_bales", 20, 0.01, 0.009, 0.011, "student"),
            new BottleneckRow(
                "bigger_mill", "stalk_line", "feeder", 1_100, 0.67, 0.65, 0.69, "student"),
            new BottleneckRow(
                "bigger_mill", "stalk_line", "mill", 100, 0.05, 0.04, 0.06, "student"),
            new BottleneckRow(
                "bigger_mill+hand", "stalk_line", "feeder", 1_200, 0.8, 0.78, 0.82, "student")),
        months(),
        List.of(
            new MillRow("base", "mill", "coarse", "coarse_hurd", 0.6, 0),
            new MillRow("base", "mill", "fine", "fine_hurd", 0.4, 54.4),
            new MillRow("bigger_mill", "mill", "coarse", "coarse_hurd", 0.6, 0),
            new MillRow("bigger_mill", "mill", "fine", "fine_hurd", 0.4, 54.4)),
        payback(),
        List.of(
            new CashRow("bigger_mill", 0, "USD", -140_000, -140_000, -140_000, -140_000),
            new CashRow("bigger_mill", 1, "USD", 55_000, 2_000, 60_000, 104_000),
            new CashRow("bigger_mill", 12, "USD", 1_390_000, 1_330_000, 1_385_000, 1_460_000),
            new CashRow("bigger_mill+hand", 0, "USD", 0, 0, 0, 0),
            new CashRow("bigger_mill+hand", 2.5, "USD", 10, -20, 10, 30)),
        lives(),
        new LifeTerms(362, "yearly", List.of(), 0.09, 40, LifeTerms.Carried.STOCK_ON_HAND),
        new FollowUps(
            5,
            new Selection(
                "money.margin",
                "USD",
                10_000,
                false,
                0.95,
                40,
                true,
                "bigger_mill",
                List.of(
                    new Selection.Row("base", 167_000, 40, false),
                    new Selection.Row("bigger_mill", 380_400, 61, true),
                    new Selection.Row("bigger_mill+hand", 366_000, 61, false))),
            gains(),
            List.of(
                new TornadoRow(
                    "bigger_mill",
                    "products.fine.price",
                    0.8,
                    1.2,
                    "x",
                    900_000,
                    1_880_000,
                    1_390_000,
                    41_000,
                    36_000),
                new TornadoRow(
                    "bigger_mill",
                    "money.wage",
                    20,
                    30.5,
                    "USD/h",
                    1_400_000,
                    1_380_000,
                    1_390_000,
                    NONE,
                    NONE)),
            List.of(
                new BreakEvenRow(
                    "bigger_mill",
                    "money.crop_prices.stalk",
                    "USD/ton",
                    201.53,
                    42.9,
                    217.5,
                    true,
                    145,
                    1_390_000,
                    198.2,
                    204.9),
                new BreakEvenRow(
                    "bigger_mill",
                    "products.*.price",
                    "x",
                    NONE,
                    0.0585,
                    17.0859375,
                    false,
                    1,
                    1_390_000,
                    NONE,
                    NONE))),
        Stream.concat(SampleFacts.ofComparisons().stream(), SampleFacts.ofFollowUps().stream())
            .toList(),
        YEAR.cautions(),
        YEAR.warnings(),
        new Replayed(List.of(samples(1), samples(2), samples(NONE))));
  }

  /** {@link #two()} stopped after seven replications and without money. */
  public static CompareAnswer stopped() {
    CompareAnswer of = two();
    Header h = of.header();
    Header header =
        new Header(
            h.plant(),
            h.file(),
            h.contentHash(),
            h.version(),
            h.option(),
            List.of("calendar.to=2027-06-01"),
            h.seed(),
            40,
            7,
            "",
            true,
            "",
            h.from(),
            h.to());
    return new CompareAnswer(
        header,
        of.outline(),
        of.options(),
        of.summary(),
        of.differences().stream()
            .filter(row -> !row.unit().equals("USD"))
            .map(row -> from(row, 7))
            .toList(),
        of.adjusted(),
        of.holders(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        LifeTerms.none(),
        FollowUps.nothing(),
        of.assumptions(),
        of.cautions(),
        of.warnings(),
        of.samples());
  }

  private static DifferenceRow from(DifferenceRow r, int replications) {
    return new DifferenceRow(
        r.option(),
        r.measure(),
        r.unit(),
        r.baseMean(),
        r.optionMean(),
        r.difference(),
        r.low95(),
        r.high95(),
        r.lowJoint(),
        r.highJoint(),
        r.interval(),
        r.toldApart(),
        r.replicationsNeeded(),
        r.varianceRemoved(),
        replications);
  }

  /** In its third month the mill of the option ran nearly empty. */
  public static CompareAnswer idleMill() {
    CompareAnswer of = two();
    List<MonthRow> months = new ArrayList<>(of.months());
    month(months, "bigger_mill", "2027-03", "machine.mill.screen.coarse.mass_in", "t", 0);
    month(months, "bigger_mill", "2027-03", "machine.mill.screen.coarse.energy", "kWh", 0);
    month(months, "bigger_mill", "2027-03", "machine.mill.screen.fine.mass_in", "t", 4);
    month(months, "bigger_mill", "2027-03", "machine.mill.screen.fine.energy", "kWh", 2_500);
    return new CompareAnswer(
        of.header(),
        of.outline(),
        of.options(),
        of.summary(),
        of.differences(),
        of.adjusted(),
        of.holders(),
        months,
        of.mills(),
        of.payback(),
        of.cash(),
        of.lives(),
        of.terms(),
        of.further(),
        of.assumptions(),
        of.cautions(),
        of.warnings(),
        of.samples());
  }

  /** {@link #two()} with other worths, lives and what they rest on. */
  public static CompareAnswer with(
      List<PaybackRow> payback, List<ServiceLifeRow> lives, LifeTerms terms) {
    CompareAnswer of = two();
    return new CompareAnswer(
        of.header(),
        of.outline(),
        of.options(),
        of.summary(),
        of.differences(),
        of.adjusted(),
        of.holders(),
        of.months(),
        of.mills(),
        payback,
        List.of(),
        lives,
        terms,
        FollowUps.nothing(),
        of.assumptions(),
        of.cautions(),
        of.warnings(),
        of.samples());
  }

  /** {@link #two()} with other inputs put to their ends. */
  public static CompareAnswer with(List<TornadoRow> tornado) {
    CompareAnswer of = two();
    FollowUps further = new FollowUps(NONE, Selection.none(), List.of(), tornado, List.of());
    return new CompareAnswer(
        of.header(),
        of.outline(),
        of.options(),
        of.summary(),
        of.differences(),
        of.adjusted(),
        of.holders(),
        of.months(),
        of.mills(),
        of.payback(),
        of.cash(),
        of.lives(),
        of.terms(),
        further,
        of.assumptions(),
        of.cautions(),
        of.warnings(),
        of.samples());
  }

  private static Samples samples(double value) {
    return new Samples(
        List.of(new Samples.Measured("mass.stalk.fed", "t")), new double[][] {{value}, {3}});
  }

  private static SummaryRow summary(String option, double mean) {
    return new SummaryRow(
        option,
        "mass.stalk.fed",
        "t",
        mean,
        mean - 9,
        mean + 9,
        20,
        mean - 30,
        mean,
        mean + 30,
        mean - 40,
        mean + 40,
        40,
        "student");
  }

  private static DifferenceRow row(
      String option,
      String measure,
      String unit,
      double base,
      double by,
      double half,
      boolean apart,
      double needed) {
    return new DifferenceRow(
        option,
        measure,
        unit,
        base,
        base + by,
        by,
        by - 0.8 * half,
        by + 0.8 * half,
        by - half,
        by + half,
        "student",
        apart,
        needed,
        half == 0 ? NONE : 0.82,
        40);
  }

  private static List<PaybackRow> payback() {
    List<PaybackRow> rows = new ArrayList<>();
    String mill = "bigger_mill";
    rows.add(
        new PaybackRow(
            mill,
            Quantity.NET_PRESENT_VALUE,
            "USD",
            1_390_000,
            1_300_000,
            1_480_000,
            1_330_000,
            1_385_000,
            1_460_000,
            Gaps.none(40)));
    rows.add(
        new PaybackRow(
            mill,
            Quantity.INTERNAL_RATE_OF_RETURN,
            "share",
            NONE,
            NONE,
            NONE,
            NONE,
            NONE,
            NONE,
            new Gaps(40, 2, 0, NONE, NONE)));
    rows.add(
        new PaybackRow(
            mill, Quantity.SIMPLE_PAYBACK, "yr", 0.68, 0.36, 1.0, 0.53, 0.64, 0.9, Gaps.none(40)));
    rows.add(
        new PaybackRow(
            mill,
            Quantity.DISCOUNTED_PAYBACK,
            "yr",
            NONE,
            NONE,
            NONE,
            0.57,
            0.7,
            NONE,
            new Gaps(40, 3, 0, NONE, NONE)));
    rows.add(
        new PaybackRow(
            mill,
            Quantity.CHANCE_OF_PAYBACK,
            "share",
            1,
            0.91,
            1,
            NONE,
            NONE,
            NONE,
            Gaps.none(40)));
    rows.add(
        new PaybackRow(
            mill,
            Quantity.CHANCE_OF_LOSS,
            "share",
            0.05,
            0.01,
            0.17,
            NONE,
            NONE,
            NONE,
            Gaps.none(40)));
    rows.add(
        new PaybackRow(
            mill,
            Quantity.ADDED_IN_FIRST_YEAR,
            "USD",
            213_000,
            205_000,
            221_000,
            180_000,
            212_000,
            240_000,
            Gaps.none(40)));
    rows.add(
        new PaybackRow(
            mill,
            Quantity.ADDED_IN_EACH_LATER_YEAR,
            "USD",
            190_000,
            180_000,
            200_000,
            170_000,
            191_000,
            210_000,
            Gaps.none(40)));
    String both = "bigger_mill+hand";
    rows.add(
        new PaybackRow(
            both, Quantity.NET_PRESENT_VALUE, "USD", 10, -5, 25, -20, 10, 30, Gaps.none(2)));
    rows.add(
        new PaybackRow(
            both,
            Quantity.CHANCE_OF_LOSS,
            "share",
            0.5,
            0.01,
            0.99,
            NONE,
            NONE,
            NONE,
            Gaps.none(2)));
    return rows;
  }

  private static List<SummaryRow> summaries() {
    List<SummaryRow> rows = new ArrayList<>();
    rows.add(summary("base", 2_000));
    mill(rows, "base", 900, 5_400, 300, 6_900);
    rows.add(summary("bigger_mill", 2_400));
    mill(rows, "bigger_mill", 1_200, 7_300, 410, 9_500);
    rows.add(summary("bigger_mill+hand", 2_004));
    return rows;
  }

  private static void mill(
      List<SummaryRow> rows,
      String option,
      double coarse,
      double coarseKwh,
      double fine,
      double fineKwh) {
    rows.add(known(option, "machine.mill.screen.coarse.hours", "h", 800));
    rows.add(known(option, "machine.mill.screen.coarse.mass_in", "t", coarse));
    rows.add(known(option, "machine.mill.screen.coarse.energy", "kWh", coarseKwh));
    rows.add(known(option, "machine.mill.screen.fine.hours", "h", 700));
    rows.add(known(option, "machine.mill.screen.fine.mass_in", "t", fine));
    rows.add(known(option, "machine.mill.screen.fine.energy", "kWh", fineKwh));
    rows.add(known(option, "machine.mill.screen_changes", "count", 31));
    rows.add(known(option, "product.fine_hurd.mass", "t", fine));
    rows.add(known(option, "product.fine_hurd.late_days", "d", 3));
    rows.add(known(option, "money.demand", "USD", 40 * coarse));
  }

  private static SummaryRow known(String option, String measure, String unit, double mean) {
    return new SummaryRow(
        option,
        measure,
        unit,
        mean,
        0.98 * mean,
        1.02 * mean,
        mean / 10,
        mean,
        mean,
        mean,
        mean,
        mean,
        40,
        "student");
  }

  private static List<MonthRow> months() {
    List<MonthRow> rows = new ArrayList<>();
    for (String option : List.of("base", "bigger_mill")) {
      double more = option.equals("base") ? 1 : 1.2;
      for (String month : List.of("2027-01", "2027-02")) {
        month(rows, option, month, "energy.peak", "kW", 210 * more);
        month(rows, option, month, "money.demand", "USD", 3_570 * more);
        month(
            rows,
            option,
            month,
            "machine.mill.screen.coarse.mass_in",
            "t",
            month.endsWith("1") ? 70 : 0);
        month(
            rows,
            option,
            month,
            "machine.mill.screen.coarse.energy",
            "kWh",
            month.endsWith("1") ? 420 * more : 0);
        month(
            rows,
            option,
            month,
            "machine.mill.screen.fine.mass_in",
            "t",
            month.endsWith("1") ? 30 : 0);
        month(
            rows,
            option,
            month,
            "machine.mill.screen.fine.energy",
            "kWh",
            month.endsWith("1") ? 690 * more : 0);
      }
    }
    return rows;
  }

  private static void month(
      List<MonthRow> rows, String option, String month, String measure, String unit, double mean) {
    rows.add(new MonthRow(option, month, measure, unit, mean, mean - 1, mean, mean + 1));
  }

  private static List<ServiceLifeRow> lives() {
    List<ServiceLifeRow> rows = new ArrayList<>();
    for (int life = 1; life <= 40; life++) {
      boolean loses = life > 38;
      rows.add(
          new ServiceLifeRow(
              "bigger_mill",
              life,
              loses ? -4_000 : 1_330_000 + 3_000 * life,
              loses ? NONE : 1.5,
              life == 1 ? 0.1 : NONE,
              0.53 + 0.01 * life,
              life > 37 ? NONE : 0.57 + 0.01 * life));
    }
    rows.add(new ServiceLifeRow("bigger_mill+hand", 1, 10, NONE, NONE, NONE, NONE));
    rows.add(new ServiceLifeRow("bigger_mill+hand", 2, -5, NONE, NONE, NONE, NONE));
    return rows;
  }

  private static List<GainRow> gains() {
    List<GainRow> rows = new ArrayList<>();
    gain(rows, "feeder", Increase.tenth(Kind.RATE), 20, 12, 9_000, 8_000);
    gain(rows, "mill", Increase.tenth(Kind.POWER), 190, 14, 52_000, 6_000);
    gain(rows, "hurd_bin", Increase.tenth(Kind.ROOM), 2, 9, -300, 700);
    gain(rows, "resource.bag_hand", new Increase(Kind.COUNT, 1, 1), 64, 13, 21_000, 5_000);
    gain(rows, "shift.day", new Increase(Kind.LONGER_FROM, 3_060, 18_540), 150, 30, -2_000, 9_000);
    return rows;
  }

  private static void gain(
      List<GainRow> rows,
      String what,
      Increase more,
      double fed,
      double fedHalf,
      double margin,
      double marginHalf) {
    rows.add(
        new GainRow(
            what,
            more,
            "mass.stalk.fed",
            "t",
            fed,
            fed - fedHalf,
            fed + fedHalf,
            "student",
            fed > fedHalf));
    rows.add(
        new GainRow(
            what,
            more,
            "money.margin",
            "USD",
            margin,
            margin - marginHalf,
            margin + marginHalf,
            "student",
            margin > marginHalf));
  }
}
